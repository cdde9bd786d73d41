import { afterAll, beforeAll, expect, test } from "vitest";
import { addProduct } from "#application/products/add-product";
import { listProducts } from "#application/products/list-products";
import { retireProduct } from "#application/products/retire-product";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { aConfirmedLabel, aLabelEntry } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("every product by name with how its label stands, the retired ones last, and no other company's", async () => {
  const add = async (name: string) => valueOf(await addProduct(house, company.owner.key, { name, form: "granular", countedBy: "mass" })).productId;
  const [old, typed, , confirmed] = [await add("A retired one"), await add("Typed"), await add("Bare"), await add("Confirmed")];
  valueOf(await retireProduct(house, company.owner.key, { productId: old, version: 1 }));
  await aLabelEntry(house, company, typed);
  await aConfirmedLabel(house, company, confirmed);
  const other = await aCompany(house, "Other Turf");
  valueOf(await addProduct(house, other.owner.key, { name: "Theirs", form: "liquid", countedBy: "volume" }));
  const { products } = valueOf(await listProducts(house, company.owner.key, {}));
  expect(products.map(({ name, label, retiredAt }) => [name, label.latest?.number, label.confirmed?.number, retiredAt !== null])).toEqual([
    ["Bare", undefined, undefined, false],
    ["Confirmed", 1, 1, false],
    ["Typed", 1, undefined, false],
    ["A retired one", undefined, undefined, true],
  ]);
});
