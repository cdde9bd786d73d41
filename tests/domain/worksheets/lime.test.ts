import { expect, test } from "vitest";
import { LIME_BY_LAB_EXAMPLE, LIME_BY_TABLE_EXAMPLE, LIME_CAPS, limeByLabWorksheet, limeByTableWorksheet } from "#domain/worksheets/lime";
import { rateOf } from "#domain/quantities/rate";
import { publishedLimeCaps } from "#domain/turf/lime";
import { answersOf, firstSentence, refusedFields, stepsOf, worked } from "../../support/worked";

test("the caps that are offered are the published ones, in their order", () => {
  expect(publishedLimeCaps.map(({ perApplication }) => perApplication)).toEqual(LIME_CAPS.map((pounds) => rateOf("product-mass-per-area", pounds, "lb per 1,000 sq ft")));
});

test("lime by the table, split at the cap", () => {
  const outcome = limeByTableWorksheet(LIME_BY_TABLE_EXAMPLE.typed);
  expect(answersOf(outcome)).toEqual(["1,000 lb", "500 lb"]);
  expect(stepsOf(outcome)).toEqual([
    "The table's row at or below 7.8 is 7.8, and to pH 7.0 it has 180 lb per 1,000 sq ft of calcium carbonate.",
    "Lime from the bag: 180 lb ÷ 90% = 200 lb per 1,000 sq ft.",
    "Against the cap: 200 lb ÷ 100 lb = 2, so 2 applications, 4 to 6 months apart.",
    "In each of 2 applications: 200 lb ÷ 2 = 100 lb per 1,000 sq ft.",
    "On the area: 5,000 sq ft ÷ 1,000 sq ft × 200 lb = 1,000 lb.",
    "Each time: 1,000 lb ÷ 2 = 500 lb.",
  ]);
  expect(worked(outcome).findings).toMatchObject([{ level: "note" }]);
});

test("lime by the lab's own recommendation, in one application where the cap allows", () => {
  expect(answersOf(limeByLabWorksheet(LIME_BY_LAB_EXAMPLE.typed))).toEqual(["900 lb", "225 lb"]);
  expect(stepsOf(limeByLabWorksheet({ ...LIME_BY_LAB_EXAMPLE.typed, recommended: "40" }))[1]).toBe("40 lb per 1,000 sq ft is within the cap of 50 lb per 1,000 sq ft: one application.");
});

test("acres become square feet before the rate is taken", () => {
  const steps = stepsOf(limeByLabWorksheet({ ...LIME_BY_LAB_EXAMPLE.typed, recommended: "200", area: "3 acres" }));
  expect(steps.slice(-3)).toEqual(["Area in square feet: 3 acres × 43,560 sq ft = 130,680 sq ft.", "On the area: 130,680 sq ft ÷ 1,000 sq ft × 200 lb = 26,136 lb.", "Each time: 26,136 lb ÷ 4 = 6,534 lb."]);
});

test("refused by field", () => {
  expect(refusedFields(limeByTableWorksheet({ acidity: "", targetPh: "7", equivalent: "300", area: "", cap: "" }))).toEqual(["acidity", "targetPh", "equivalent", "area", "cap"]);
  expect(firstSentence(limeByTableWorksheet({ ...LIME_BY_TABLE_EXAMPLE.typed, acidity: "30" }))).toContain("says nothing about 30");
  expect(refusedFields(limeByLabWorksheet({ ...LIME_BY_LAB_EXAMPLE.typed, recommended: "2 gal/1,000" }))).toEqual(["recommended"]);
});
