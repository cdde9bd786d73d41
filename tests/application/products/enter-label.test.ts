import { afterAll, beforeAll, expect, test } from "vitest";
import { confirmLabel } from "#application/products/confirm-label";
import { enterLabel } from "#application/products/enter-label";
import { readProduct } from "#application/products/read-product";
import { retireProduct } from "#application/products/retire-product";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_PREVENTER_TEXT, aFeedText, aUseText } from "../../support/label-texts";
import { A_SENTENCE, saying } from "../../support/said";
import { aFeed, labelForm } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

async function productOf(productId: string) {
  return valueOf(await readProduct(house, company.owner.key, { productId })).product;
}

test("keeps what was typed as it was typed, with the next number, and counts for nothing before it is confirmed", async () => {
  const productId = await aFeed(house, company);
  const { number } = valueOf(await enterLabel(house, company.owner.key, labelForm(productId, A_PREVENTER_TEXT)));
  expect(number).toBe(1);
  const [row] = await house.ask<{ facts: Record<string, unknown> }>("select facts from label_entry where product_id = $1", [productId]);
  expect(row?.facts["general"]).toEqual(A_PREVENTER_TEXT.general);
  const { label, name } = await productOf(productId);
  expect(label.confirmed).toBeUndefined();
  expect(label.latest).toMatchObject({ number: 1, enteredBy: company.owner.name, facts: { productName: name, signalWord: "CAUTION" } });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({
    deed: "label-entered", subject_id: productId, details: { productName: name, number: 1, uses: ["Crabgrass, spring"] },
  });
});

test("a second use is added, and one use is entered anew without touching the other", async () => {
  const productId = await aFeed(house, company);
  const form = labelForm(productId);
  valueOf(await enterLabel(house, company.owner.key, form));
  valueOf(await enterLabel(house, company.owner.key, { ...form, basedOnNumber: 1, useIndex: 1, ...aUseText({ useName: "New seed", rates: "4 lb per 1,000 sq ft" }) }));
  valueOf(await enterLabel(house, company.owner.key, { ...form, basedOnNumber: 2, useIndex: 0, ...aUseText({ useName: "Old lawns" }) }));
  const { latest } = (await productOf(productId)).label;
  expect(latest?.number).toBe(3);
  expect(latest?.facts.uses.map(({ useName }) => useName)).toEqual(["Old lawns", "New seed"]);
});

test("entering a confirmed label anew leaves the confirmed one standing", async () => {
  const productId = await aFeed(house, company);
  const { labelEntryId } = valueOf(await enterLabel(house, company.owner.key, labelForm(productId)));
  valueOf(await confirmLabel(house, company.owner.key, { labelEntryId }));
  valueOf(await enterLabel(house, company.owner.key, { ...labelForm(productId, aFeedText({ signalWord: "none" })), basedOnNumber: 1 }));
  const { latest, confirmed } = (await productOf(productId)).label;
  expect([latest?.number, latest?.confirmation, confirmed?.number, confirmed?.facts.signalWord]).toEqual([2, undefined, 1, "unknown"]);
});

test("of two who enter at once one is told, and eight at once make one entry", async () => {
  const productId = await aFeed(house, company);
  const answers = await Promise.all(Array.from({ length: 8 }, () => enterLabel(house, company.owner.key, labelForm(productId))));
  expect(answers.filter((answer) => answer.ok)).toHaveLength(1);
  expect(answers.find((answer) => !answer.ok)).toMatchObject({ refusal: { kind: "conflict", sentence: saying("Someone else has entered this label") } });
});

test.each([
  ["density", "10 oz per gal"],
  ["rates", "2 oz per 1,000 sq ft"],
  ["wateringNotBefore", "until watered in"],
  ["formulation", "soluble liquid"],
])("%s as %s is refused at its field", async (field, value) => {
  const productId = await aFeed(house, company);
  const before = await house.books();
  const answer = await enterLabel(house, company.owner.key, { ...labelForm(productId), [field]: value });
  expect(answer).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
  expect(await house.books()).toEqual(before);
});

test("what the product on file is decides, not what the form says of it", async () => {
  const form = { ...labelForm(await aFeed(house, company)), form: "liquid", formulation: "soluble liquid" } as const;
  expect(await enterLabel(house, company.owner.key, form)).toMatchObject({ refusal: { fields: { formulation: saying("spread dry") } } });
});

test("a use that follows one that is not there, a name of another use, and an ingredient that another use counts are refused", async () => {
  const productId = await aFeed(house, company);
  const form = labelForm(productId, A_PREVENTER_TEXT);
  expect(await enterLabel(house, company.owner.key, { ...form, useIndex: 1 })).toMatchObject({ refusal: { fields: { useIndex: A_SENTENCE } } });
  valueOf(await enterLabel(house, company.owner.key, form));
  expect(await enterLabel(house, company.owner.key, { ...form, basedOnNumber: 1, useIndex: 1 })).toMatchObject({ refusal: { fields: { useName: saying("Another use") } } });
  expect(await enterLabel(house, company.owner.key, { ...form, ...aUseText(), basedOnNumber: 1, useIndex: 1, activeIngredients: "none" })).toMatchObject({
    refusal: { fields: { activeIngredients: saying("Another use") } },
  });
});

test("the label of a product that is retired or nobody's", async () => {
  const productId = await aFeed(house, company);
  valueOf(await retireProduct(house, company.owner.key, { productId, version: 1 }));
  expect(await enterLabel(house, company.owner.key, labelForm(productId))).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await enterLabel(house, company.owner.key, labelForm(house.newId()))).toMatchObject({ refusal: { kind: "not-found" } });
});
