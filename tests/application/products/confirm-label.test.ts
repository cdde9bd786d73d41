import { afterAll, beforeAll, expect, test } from "vitest";
import { confirmLabel } from "#application/products/confirm-label";
import { enterLabel } from "#application/products/enter-label";
import { readProduct } from "#application/products/read-product";
import { retireProduct } from "#application/products/retire-product";
import { aCompany, aMember, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { saying } from "../../support/said";
import { aFeed, aLabelEntry, labelForm } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("the label counts from then on, and the record says who typed and who confirmed", async () => {
  const productId = await aFeed(house, company);
  const { labelEntryId } = await aLabelEntry(house, company, productId);
  const applicator = await aMember(house, company, "applicator", "Kit Arden");
  house.pass(5);
  valueOf(await confirmLabel(house, applicator.key, { labelEntryId }));
  const { product } = valueOf(await readProduct(house, company.owner.key, { productId }));
  expect(product.label.confirmed).toMatchObject({ labelEntryId, enteredBy: company.owner.name, confirmation: { by: "Kit Arden", at: house.now() } });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "label-confirmed", person_name: "Kit Arden", subject_id: productId, details: { number: 1 } });
});

test("an entry that was overtaken by a newer one can't be confirmed", async () => {
  const productId = await aFeed(house, company);
  const { labelEntryId } = await aLabelEntry(house, company, productId);
  valueOf(await enterLabel(house, company.owner.key, { ...labelForm(productId), basedOnNumber: 1 }));
  expect(await confirmLabel(house, company.owner.key, { labelEntryId })).toMatchObject({ refusal: { kind: "conflict", sentence: saying("entered anew") } });
});

test("eight at once confirm once", async () => {
  const { labelEntryId } = await aLabelEntry(house, company, await aFeed(house, company));
  const answers = await Promise.all(Array.from({ length: 8 }, () => confirmLabel(house, company.owner.key, { labelEntryId })));
  expect(answers.filter((answer) => answer.ok)).toHaveLength(1);
  expect(await house.ask("select 1 from label_confirmation where label_entry_id = $1", [labelEntryId])).toHaveLength(1);
});

test("a retired product's label, an id of nobody, and one that is none", async () => {
  const productId = await aFeed(house, company);
  const { labelEntryId } = await aLabelEntry(house, company, productId);
  valueOf(await retireProduct(house, company.owner.key, { productId, version: 1 }));
  expect(await confirmLabel(house, company.owner.key, { labelEntryId })).toMatchObject({ refusal: { kind: "conflict", sentence: saying("retired") } });
  expect(await confirmLabel(house, company.owner.key, { labelEntryId: house.newId() })).toMatchObject({ refusal: { kind: "not-found" } });
  expect(await confirmLabel(house, company.owner.key, { labelEntryId: "nonsense" })).toMatchObject({ refusal: { kind: "bad-input" } });
});
