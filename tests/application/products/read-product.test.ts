import { afterAll, beforeAll, expect, test } from "vitest";
import { readProduct } from "#application/products/read-product";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_PREVENTER_TEXT } from "../../support/label-texts";
import { aConfirmedLabel, aFeed } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("gives the label as it was typed and as it is meant", async () => {
  const productId = await aFeed(house, company);
  await aConfirmedLabel(house, company, productId, A_PREVENTER_TEXT);
  const { product } = valueOf(await readProduct(house, company.owner.key, { productId }));
  expect(product).toMatchObject({ productId, form: "granular", dimension: "mass", version: 1, retiredAt: null });
  const { confirmed } = product.label;
  expect(confirmed?.text.uses[0]?.wateringIn).toBe("0.5 in within 7 days, rain counts");
  expect(confirmed?.facts.uses[0]?.aftercare.facts["watering-in"]).toMatchObject({ by: { anchor: "days", from: "not-said", days: 7 }, basis: "label" });
});

test("another company's product, an id of nobody and one that is none are no products", async () => {
  const other = await aCompany(house, "Other Turf");
  const theirs = await aFeed(house, other);
  for (const productId of [theirs, house.newId()]) {
    expect(await readProduct(house, company.owner.key, { productId })).toMatchObject({ refusal: { kind: "not-found" } });
  }
  expect(await readProduct(house, company.owner.key, { productId: "nonsense" })).toMatchObject({ refusal: { kind: "bad-input" } });
});
