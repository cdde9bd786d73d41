import { afterAll, beforeAll, expect, test } from "vitest";
import { addRound } from "#application/programs/add-round";
import { productUseKey } from "#application/programs/treatment-fields.schema";
import { retireProduct } from "#application/products/retire-product";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { aLabeledFeed, aProgram, roundForm, treatmentRow } from "../../support/season";
import { aFeed, aLabelEntry } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
let programId: string;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
  programId = await aProgram(house, company);
});
afterAll(() => house.close());

/** What the form of a round with this choice says at the choice. */
async function saidOf(productUse: string): Promise<string> {
  const form = { ...roundForm(programId, house.newId()), treatments: { "0": { productUse, rate: "2.5 lb/1,000 sq ft", reason: "feed" } } };
  const answer = await addRound(house, company.owner.key, form);
  if (answer.ok || answer.refusal.kind !== "bad-input") throw new Error("it was not refused at a field");
  return answer.refusal.fields["treatments.0.productUse"] ?? "";
}

test("a product is one of the shed, not retired, with a confirmed label that has the use", async () => {
  expect(await saidOf(productUseKey(house.newId(), "Established lawns"))).toContain("not in the shed");
  const unread = await aFeed(house, company);
  expect(await saidOf(productUseKey(unread, "Established lawns"))).toContain("Nobody has confirmed the label");
  await aLabelEntry(house, company, unread);
  expect(await saidOf(productUseKey(unread, "Established lawns"))).toContain("Nobody has confirmed the label");
  const feed = await aLabeledFeed(house, company);
  expect(await saidOf(productUseKey(feed, "New lawns"))).toContain("has no use named New lawns");
  valueOf(await retireProduct(house, company.owner.key, { productId: feed, version: 1 }));
  expect(await saidOf(productUseKey(feed, "Established lawns"))).toContain("was retired");
});

test("another company's product is none", async () => {
  const other = await aCompany(house, "Other Turf");
  expect(await saidOf(productUseKey(await aLabeledFeed(house, other), "Established lawns"))).toContain("not in the shed");
});

test("the same use of a product twice is refused at the second", async () => {
  const feed = await aLabeledFeed(house, company);
  const form = { ...roundForm(programId, feed), treatments: { "0": treatmentRow(feed), "3": treatmentRow(feed) } };
  expect(await addRound(house, company.owner.key, form)).toMatchObject({ refusal: { fields: { "treatments.3.productUse": expect.stringContaining("twice") as string } } });
});
