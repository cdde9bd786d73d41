import { afterAll, beforeAll, expect, test } from "vitest";
import { retireProduct } from "#application/products/retire-product";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { aFeed } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("retires once, keeps the product, and the audit trail says who", async () => {
  const productId = await aFeed(house, company);
  valueOf(await retireProduct(house, company.owner.key, { productId, version: 1 }));
  expect(await house.ask("select retired_at, version from product where product_id = $1", [productId])).toEqual([{ retired_at: house.now(), version: 2 }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "product-retired", subject_id: productId });
  for (const version of [1, 2]) expect(await retireProduct(house, company.owner.key, { productId, version })).toMatchObject({ refusal: { kind: "conflict" } });
});

test("an id of nobody is no product", async () => {
  expect(await retireProduct(house, company.owner.key, { productId: house.newId(), version: 1 })).toMatchObject({ refusal: { kind: "not-found" } });
});
