import { afterAll, beforeAll, expect, test } from "vitest";
import { listStock } from "#application/stock/list-stock";
import { moveStock } from "#application/stock/move-stock";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { retireProduct } from "#application/products/retire-product";
import { of } from "#domain/quantities/quantity";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { aDelivery, aFeed, aLiquid, aTank, aTruck, deliveryForm, moveForm } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

async function stockOf(productId: string) {
  return valueOf(await listStock(house, company.owner.key, { productId })).products[0];
}

test("what is on hand by lot and location, the first to expire first, with what has expired", async () => {
  const productId = await aFeed(house, company);
  await aDelivery(house, company, productId);
  valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), count: 1, lotNumber: "OLD", expiresOn: "2026-04-13" }));
  valueOf(await receiveDelivery(house, company.owner.key, { ...deliveryForm(house, productId), count: 1, lotNumber: "TODAY", expiresOn: "2026-04-14" }));
  valueOf(await moveStock(house, company.owner.key, { ...moveForm(house, productId, `vehicle:${await aTruck(house, company)}`), amount: "30 lb" }));
  const stock = await stockOf(productId);
  expect(stock).toMatchObject({ dimension: "mass", isRetired: false, mustBeCounted: false, amount: of("lb", "700").amount });
  expect(stock?.lots.map(({ number, isExpired, amount, at }) => [number, isExpired, amount, at.map(({ kind }) => kind)])).toEqual([
    ["OLD", true, of("lb", "50").amount, ["shop", "truck"]],
    ["TODAY", false, of("lb", "50").amount, ["shop"]],
    ["L-1", false, of("lb", "600").amount, ["shop"]],
  ]);
});

test("a location below zero must be counted", async () => {
  const productId = await aFeed(house, company);
  await aDelivery(house, company, productId);
  await house.ask("update stock_balance b set amount = -5 from lot l, stock_location s where l.lot_id = b.lot_id and s.stock_location_id = b.stock_location_id and s.kind = 'shop' and l.product_id = $1", [productId]);
  expect(await stockOf(productId)).toMatchObject({ mustBeCounted: true, amount: -5n });
});

test("a product without stock stands there with nothing; a retired one only while something is left", async () => {
  const [bare, gone, left] = [await aLiquid(house, company), await aFeed(house, company), await aFeed(house, company)];
  await aDelivery(house, company, left);
  for (const productId of [gone, left]) valueOf(await retireProduct(house, company.owner.key, { productId, version: 1 }));
  expect(await stockOf(bare)).toMatchObject({ dimension: "volume", amount: 0n, lots: [] });
  expect(await stockOf(gone)).toBeUndefined();
  expect(await stockOf(left)).toMatchObject({ isRetired: true });
});

test("the places are the shop, the trucks by number and the tanks, and none of another company", async () => {
  const own = await aCompany(house, "Place Turf");
  const [truck, tank] = [await aTruck(house, own), await aTank(house, own)];
  const { places, products } = valueOf(await listStock(house, own.owner.key, {}));
  expect(places.map(({ value }) => value)).toEqual(["shop", `vehicle:${truck}`, `equipment:${tank}`]);
  expect(places.map(({ name }) => name)).toEqual(["Shop", expect.stringMatching(/^Truck \d+, Box truck$/) as unknown, "Skid tank"]);
  expect(products).toEqual([]);
});
