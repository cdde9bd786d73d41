import { afterAll, beforeAll, expect, test } from "vitest";
import { addProduct } from "#application/products/add-product";
import { retireProduct } from "#application/products/retire-product";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE, saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const FORM = { name: "Greenmere 32-0-0", form: "granular", countedBy: "mass" } as const;

test("puts the product on the shelf, and the audit trail says who", async () => {
  const { productId } = valueOf(await addProduct(house, company.owner.key, { ...FORM, name: "  Greenmere 32-0-0 " }));
  const [row] = await house.ask("select name, form, counted_by, retired_at, version, created_at from product where product_id = $1", [productId]);
  expect(row).toEqual({ name: "Greenmere 32-0-0", form: "granular", counted_by: "mass", retired_at: null, version: 1, created_at: house.now() });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "product-added", subject_id: productId, details: FORM });
});

test("a name stands once, in whatever case, until the product is retired", async () => {
  const { productId } = valueOf(await addProduct(house, company.owner.key, { ...FORM, name: "Wardlow" }));
  expect(await addProduct(house, company.owner.key, { ...FORM, name: "WARDLOW" })).toMatchObject({ refusal: { fields: { name: saying("Wardlow is in the shed already") } } });
  valueOf(await retireProduct(house, company.owner.key, { productId, version: 1 }));
  expect(await addProduct(house, company.owner.key, { ...FORM, name: "WARDLOW" })).toMatchObject({ ok: true });
});

test("eight at once with one name make one product", async () => {
  const answers = await Promise.all(Array.from({ length: 8 }, () => addProduct(house, company.owner.key, { ...FORM, name: "Once" })));
  expect(answers.filter((answer) => answer.ok)).toHaveLength(1);
});

test.each([["name", ""], ["form", "gas"], ["countedBy", "length"]])("%s as %j is refused at its field", async (field, value) => {
  const answer = await addProduct(house, company.owner.key, { ...FORM, [field]: value });
  expect(answer).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
});
