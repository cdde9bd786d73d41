import { afterAll, beforeAll, expect, test } from "vitest";
import { listMovements } from "#application/stock/list-movements";
import { moveStock } from "#application/stock/move-stock";
import { of } from "#domain/quantities/quantity";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { aDelivery, aFeed, aTruck, moveForm } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("what moved of a product, the newest first, from where to where and by whom", async () => {
  const productId = await aFeed(house, company);
  await aDelivery(house, company, productId);
  house.pass(10);
  valueOf(await moveStock(house, company.owner.key, { ...moveForm(house, productId, `vehicle:${await aTruck(house, company)}`), note: "for tomorrow" }));
  const { movements } = valueOf(await listMovements(house, company.owner.key, { productId }));
  expect(movements.map(({ kind, from, to, toKind, amount, note, lotNumber, personName }) => ({ kind, from, to, toKind, amount, note, lotNumber, personName }))).toEqual([
    { kind: "move", from: "Shop", to: "Box truck", toKind: "truck", amount: of("lb", "100").amount, note: "for tomorrow", lotNumber: "L-1", personName: company.owner.name },
    { kind: "receive", from: "Supplier", to: "Shop", toKind: "shop", amount: of("lb", "600").amount, note: null, lotNumber: "L-1", personName: company.owner.name },
  ]);
});

test("another company's product is nobody's", async () => {
  const other = await aCompany(house, "Other Turf");
  const productId = await aFeed(house, other);
  await aDelivery(house, other, productId);
  expect(await listMovements(house, company.owner.key, { productId })).toMatchObject({ refusal: { kind: "not-found" } });
});
