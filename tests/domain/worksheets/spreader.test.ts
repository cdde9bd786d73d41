import { expect, test } from "vitest";
import { PAN_LINE_EXAMPLE, panLineWorksheet, TEST_AREA_EXAMPLE, testAreaWorksheet } from "#domain/worksheets/spreader";
import { answersOf, refusedFields, stepsOf, worked } from "../../support/worked";

test("a spreader's rate is what it gave over the area, held against half the rate for two passes", () => {
  const outcome = testAreaWorksheet(TEST_AREA_EXAMPLE.typed);
  expect(answersOf(outcome)).toEqual(["2.5 lb per 1,000 sq ft"]);
  expect(stepsOf(outcome)).toEqual([
    "In pounds: 5 oz wt ÷ 16 oz wt × 1 lb = 0.3125 lb.",
    "Rate: 0.3125 lb ÷ 125 sq ft × 1,000 sq ft = 2½ lb per 1,000 sq ft.",
    "Wanted in each of two passes: 5 lb ÷ 2 = 2½ lb per 1,000 sq ft.",
    "It is within 5% of what is wanted: the setting holds.",
  ]);
  expect(worked(outcome).findings).toEqual([]);
});

test("runs are added up, in pounds where they weigh a pound", () => {
  expect(stepsOf(testAreaWorksheet({ ...TEST_AREA_EXAMPLE.typed, area: "500 sq ft", collected: "1 lb\n1.5 lb", wanted: "" }))).toEqual([
    "All runs: 1 lb + 1½ lb = 2½ lb.",
    "Average of the 2 runs: 2½ lb ÷ 2 = 1¼ lb.",
    "Rate: 1¼ lb ÷ 500 sq ft × 1,000 sq ft = 2½ lb per 1,000 sq ft.",
  ]);
});

test("half the wanted rate in one pass is a matter for care", () => {
  expect(worked(testAreaWorksheet({ ...TEST_AREA_EXAMPLE.typed, passes: "one-pass" })).findings).toMatchObject([{ rule: "calibration-off-the-wanted-rate" }]);
  expect(stepsOf(testAreaWorksheet({ ...TEST_AREA_EXAMPLE.typed, wanted: "" }))).toHaveLength(2);
});

test("a spreader's refusals stand at their fields", () => {
  expect(refusedFields(testAreaWorksheet({ area: "", collected: " ", wanted: "5 gal", passes: "" }))).toEqual(["area", "collected", "wanted", "passes"]);
  expect(refusedFields(testAreaWorksheet({ ...TEST_AREA_EXAMPLE.typed, collected: "5 oz" }))).toEqual(["collected"]);
});

test("a line of pans gives swath, evenness and the swaths that are even enough", () => {
  const outcome = panLineWorksheet(PAN_LINE_EXAMPLE.typed);
  expect(answersOf(outcome)).toEqual(["12 ft", "0% CV"]);
  expect(stepsOf(outcome)).toContain("At 4 ft: 3 + 1 = 4.");
  expect(worked(outcome).working.result).toBe("Swath 12 ft (3.66 m); CV 0% at 12 ft. Even enough: 4 ft to 13 ft.");
});

const ofEffective = (change: Partial<typeof PAN_LINE_EXAMPLE.typed>) => worked(panLineWorksheet({ ...PAN_LINE_EXAMPLE.typed, ...change })).answers[0]?.of;

test("the passes go by the effective swath only where the lawn comes out even at it", () => {
  expect(ofEffective({})).toBe("effective swath: make the passes this far apart");
  // By the swath that was typed the effective one does not become another.
  expect(ofEffective({ swath: "16 ft" })).toBe("effective swath: make the passes this far apart");
  const uneven = { catches: "0, 2, 6, 9, 6, 4, 6, 9, 6, 2, 0" };
  expect(answersOf(panLineWorksheet({ ...PAN_LINE_EXAMPLE.typed, ...uneven }))).toEqual(["16 ft", "30.5% CV"]);
  expect(ofEffective(uneven)).toBe("effective swath: not even enough, with a CV of 30.5%. Make the passes 4 ft to 7 ft apart");
  expect(ofEffective({ ...uneven, swath: "6 ft" })).toBe("effective swath: not even enough, with a CV of 30.5%. Make the passes 4 ft to 7 ft apart");
});

test("where no swath is even enough the spreader is set anew, and a swath too narrow to judge says so", () => {
  expect(ofEffective({ catches: "0, 0, 30, 0, 5, 9, 5, 0, 30, 0, 0" })).toBe("effective swath: not even enough, with a CV of 38.9%. No swath is: set the spreader anew before it goes on a lawn");
  expect(ofEffective({ catches: "0, 0, 0, 2, 1, 9, 1, 2, 0, 0, 0", swath: "6 ft" })).toBe("effective swath: too narrow for pans this far apart to show how even it comes out. No swath is: set the spreader anew before it goes on a lawn");
});

test("a swath too wide comes out striped", () => {
  const outcome = panLineWorksheet({ ...PAN_LINE_EXAMPLE.typed, swath: "16 ft", pattern: "back-and-forth" });
  expect(answersOf(outcome)[1]).toBe("29.8% CV");
  expect(worked(outcome).findings).toMatchObject([{ rule: "spread-uneven" }]);
});

test("a line of pans is refused by field", () => {
  expect(refusedFields(panLineWorksheet({ spacing: "", catches: "0, 1, 2, 1", swath: "x", pattern: "" }))).toEqual(["spacing", "catches", "swath", "pattern"]);
  expect(refusedFields(panLineWorksheet({ ...PAN_LINE_EXAMPLE.typed, catches: "4, 4, 4, 4, 4" }))).toEqual(["catches"]);
  expect(refusedFields(panLineWorksheet({ ...PAN_LINE_EXAMPLE.typed, catches: "1, 2, 1" }))).toEqual(["catches"]);
  expect(refusedFields(panLineWorksheet({ ...PAN_LINE_EXAMPLE.typed, swath: "1 ft" }))).toEqual(["swath"]);
});
