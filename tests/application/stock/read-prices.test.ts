import { afterAll, beforeAll, expect, test } from "vitest";
import { readPrices } from "#application/stock/read-prices";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { stateDeliveryPrice } from "#application/stock/state-delivery-price";
import { fromCents } from "#domain/money/money";
import { of } from "#domain/quantities/quantity";
import { rational } from "#domain/quantities/rational";
import { aCompany, aMember, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { aFeed, deliveryForm, priceForm } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("each lot has its price, exact where it came at two, and none where nobody wrote one down", async () => {
  const productId = await aFeed(house, company);
  const receive = async (lotNumber: string, count: number, paidForOne: string) =>
    valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), lotNumber, count, paidForOne }));
  await receive("A", 1, "40");
  await receive("A", 2, "$41.00");
  await receive("B", 4, "");
  await receive("C", 4, "");
  await receive("C", 4, "12.50");
  const { lots } = valueOf(await readPrices(house, company.owner.key, { productId }));
  expect(lots.map(({ price }) => price)).toEqual([
    { kind: "on-file", perContainer: { cents: rational(12_200n, 3n) }, isMean: true },
    { kind: "not-on-file" },
    { kind: "not-for-every-delivery" },
  ]);
});

test("each delivery has all that was said of its price, the newest delivery first; the last statement counts for its lot", async () => {
  const productId = await aFeed(house, company);
  const { key, name } = company.owner;
  valueOf(await receiveDelivery(house, key, { ...deliveryForm(house, productId), receivedOn: "2026-04-02", lotNumber: "A", count: 2, paidForOne: "" }));
  valueOf(await receiveDelivery(house, key, { ...deliveryForm(house, productId), receivedOn: "2026-04-01", lotNumber: "B", paidForOne: "40" }));
  const delivery = valueOf(await readPrices(house, key, { productId })).deliveries.find(({ lotNumber }) => lotNumber === "A");
  const form = { ...(await priceForm(house, productId)), delivery: `${delivery?.stockPostingId ?? ""} ${String(delivery?.line)}` };
  valueOf(await stateDeliveryPrice(house, key, form));
  valueOf(await stateDeliveryPrice(house, key, { ...form, requestId: house.newId(), paidForOne: "$39.25", said: "" }));
  const { lots, deliveries } = valueOf(await readPrices(house, key, { productId }));
  expect(lots.map(({ price }) => price)).toEqual([4000n, 3925n].map((cents) => ({ kind: "on-file", perContainer: fromCents(cents), isMean: false })));
  expect(deliveries).toMatchObject([
    {
      lotNumber: "A", container: "bag", containerSize: of("lb", 50n).amount, amount: of("lb", 100n).amount, paidPerContainerCents: 3925n,
      statements: [
        { paidPerContainerCents: null, said: null, statedBy: name, number: 0 },
        { paidPerContainerCents: 3850n, said: "Invoice 1182", statedBy: name, number: 1 },
        { paidPerContainerCents: 3925n, said: null, statedBy: name, number: 2 },
      ],
    },
    { lotNumber: "B", paidPerContainerCents: 4000n, statements: [{ paidPerContainerCents: 4000n, number: 0 }] },
  ]);
});

test("the crew is refused, and another company's product is nobody's", async () => {
  const productId = await aFeed(house, company);
  for (const role of ["applicator", "technician", "inspector"] as const) {
    const { key } = await aMember(house, company, role, `Read ${role}`);
    expect(await readPrices(house, key, { productId })).toMatchObject({ ok: false, refusal: { kind: "not-allowed" } });
  }
  const office = await aMember(house, company, "office", "Read office");
  expect(valueOf(await readPrices(house, office.key, { productId }))).toEqual({ lots: [], deliveries: [] });
  const other = await aCompany(house, "Other Turf");
  expect(await readPrices(house, other.owner.key, { productId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
