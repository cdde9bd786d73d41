import { afterAll, beforeAll, expect, test } from "vitest";
import { deliveriesOfLots, lotsWithPrices } from "#application/stock/lots-with-prices";
import { moveStock } from "#application/stock/move-stock";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { stateDeliveryPrice } from "#application/stock/state-delivery-price";
import { fromCents } from "#domain/money/money";
import { rational } from "#domain/quantities/rational";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { inWorkOf } from "../../support/crew-day";
import { openHouse, type TestHouse } from "../../support/house";
import { aFeed, aTruck, deliveryForm, lotOf, moveForm, priceForm } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("only deliveries have a say: what is carried about changes no price, and lots stay in their order with all they had", async () => {
  const productId = await aFeed(house, company);
  valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), paidForOne: "33.75" }));
  const lotId = await lotOf(house, productId);
  valueOf(await moveStock(house, company.owner.key, { ...moveForm(house, productId, `vehicle:${await aTruck(house, company)}`), lotId }));
  const unknown = house.newId();
  const lots = await inWorkOf(house, company, (work) => lotsWithPrices(work, [{ lotId: unknown, own: 1 }, { lotId, own: 2 }]));
  expect(lots).toEqual([
    { lotId: unknown, own: 1, price: { kind: "not-on-file" } },
    { lotId, own: 2, price: { kind: "on-file", perContainer: fromCents(3375n), isMean: false } },
  ]);
});

test("what was said of a delivery later counts for its lot, and two of a lot make the mean", async () => {
  const productId = await aFeed(house, company);
  const receive = async (count: number, paidForOne: string) => valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), count, paidForOne }));
  await receive(1, "40");
  await receive(2, "");
  const lotId = await lotOf(house, productId);
  const priceNow = () => inWorkOf(house, company, async (work) => (await lotsWithPrices(work, [{ lotId }]))[0]?.price);
  expect(await priceNow()).toEqual({ kind: "not-for-every-delivery" });
  const deliveries = await inWorkOf(house, company, (work) => deliveriesOfLots(work, [lotId]));
  const open = deliveries.find(({ paidWithDelivery }) => paidWithDelivery === null);
  const form = { ...(await priceForm(house, productId)), delivery: `${open?.stockPostingId ?? ""} ${String(open?.line)}`, paidForOne: "41" };
  valueOf(await stateDeliveryPrice(house, company.owner.key, form));
  expect(await priceNow()).toEqual({ kind: "on-file", perContainer: { cents: rational(12_200n, 3n) }, isMean: true });
  valueOf(await stateDeliveryPrice(house, company.owner.key, { ...form, requestId: house.newId(), paidForOne: "none" }));
  expect(await priceNow()).toEqual({ kind: "not-for-every-delivery" });
});

test("another company's lots have no price here", async () => {
  const other = await aCompany(house, "Other Turf");
  const productId = await aFeed(house, other);
  valueOf(await receiveDelivery(house, other.owner.key, { ...deliveryForm(house, productId), paidForOne: "33.75" }));
  const lotId = await lotOf(house, productId);
  expect(await inWorkOf(house, company, (work) => lotsWithPrices(work, [{ lotId }]))).toEqual([{ lotId, price: { kind: "not-on-file" } }]);
});
