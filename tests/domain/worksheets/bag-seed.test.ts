import { expect, test } from "vitest";
import { BAG_SEED_EXAMPLE, bagSeedWorksheet } from "#domain/worksheets/bag-seed";
import { answersOf, refusedFields, stepsOf, worked } from "../../support/worked";

const typed = BAG_SEED_EXAMPLE.typed;

test("overseeding with tall fescue takes half of the handbook's rate from the bag, 3 to 4 lb, whatever is on the tag", () => {
  const outcome = bagSeedWorksheet(typed);
  expect(answersOf(outcome)).toEqual(["24 lb", "4 lb per 1,000 sq ft"]);
  expect(answersOf(bagSeedWorksheet({ ...typed, rate: "6" }))).toEqual(["18 lb", "3 lb per 1,000 sq ft"]);
  expect(stepsOf(outcome)).toEqual([
    "Overseeding: 8 lb ÷ 2 = 4 lb per 1,000 sq ft.",
    "Seed from the bag: 6,000 sq ft ÷ 1,000 sq ft × 4 lb = 24 lb.",
    "In two directions, half each: 24 lb ÷ 2 = 12 lb; at half the rate: 4 lb ÷ 2 = 2 lb per 1,000 sq ft.",
  ]);
  expect(worked(outcome).working).toMatchObject({ formula: "Seed from the bag = its rate × area. Overseeding takes half the rate for bare ground.", source: "the rate's own; half rate: University of Nebraska-Lincoln" });
  expect(worked(outcome).tables[0]?.rows).toContainEqual(["tall fescue", "6 to 8", "3 to 4", "University of Nebraska-Lincoln"]);
});

test("bare ground takes the rate as it is", () => {
  const outcome = bagSeedWorksheet({ ...typed, use: "bare ground" });
  expect(answersOf(outcome)).toEqual(["48 lb", "8 lb per 1,000 sq ft"]);
  expect(worked(outcome).working).toMatchObject({ formula: "Seed from the bag = its rate × area.", source: "the rate's own" });
  expect(stepsOf(outcome)).toHaveLength(2);
});

test("refused by field", () => {
  expect(refusedFields(bagSeedWorksheet({ rate: "", use: "", area: "1 lb" }))).toEqual(["rate", "use", "area"]);
});
