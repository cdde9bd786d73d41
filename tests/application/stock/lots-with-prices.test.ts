import { afterAll, beforeAll, expect, test } from "vitest";
import { lotsWithPrices } from "#application/stock/lots-with-prices";
import { moveStock } from "#application/stock/move-stock";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { fromCents } from "#domain/money/money";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { inWorkOf } from "../../support/crew-day";
import { openHouse, type TestHouse } from "../../support/house";
import { aFeed, aTruck, deliveryForm, lotOf, moveForm } from "../../support/shed";

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

test("another company's lots have no price here", async () => {
  const other = await aCompany(house, "Other Turf");
  const productId = await aFeed(house, other);
  valueOf(await receiveDelivery(house, other.owner.key, { ...deliveryForm(house, productId), paidForOne: "33.75" }));
  const lotId = await lotOf(house, productId);
  expect(await inWorkOf(house, company, (work) => lotsWithPrices(work, [{ lotId }]))).toEqual([{ lotId, price: { kind: "not-on-file" } }]);
});
