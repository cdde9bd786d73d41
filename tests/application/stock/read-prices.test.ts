import { afterAll, beforeAll, expect, test } from "vitest";
import { readPrices } from "#application/stock/read-prices";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { rational } from "#domain/quantities/rational";
import { aCompany, aMember, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { aFeed, deliveryForm } from "../../support/shed";

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

test("the crew is refused, and another company's product is nobody's", async () => {
  const productId = await aFeed(house, company);
  for (const role of ["applicator", "technician", "inspector"] as const) {
    const { key } = await aMember(house, company, role, `Read ${role}`);
    expect(await readPrices(house, key, { productId })).toMatchObject({ ok: false, refusal: { kind: "not-allowed" } });
  }
  const office = await aMember(house, company, "office", "Read office");
  expect(valueOf(await readPrices(house, office.key, { productId }))).toEqual({ lots: [] });
  const other = await aCompany(house, "Other Turf");
  expect(await readPrices(house, other.owner.key, { productId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
