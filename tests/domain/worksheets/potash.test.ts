import { expect, test } from "vitest";
import { POTASH_EXAMPLE, potashWorksheet } from "#domain/worksheets/potash";
import { answersOf, firstSentence, refusedFields, stepsOf, worked } from "../../support/worked";

const TYPED = { recommended: "3 lb per 1,000 sq ft", table: "State lab, Mehlich 3, lawns", grade: "0-0-50", area: "5,000 sq ft", cap: "1.25", capBy: "the label" };
const rulesOf = (typed: typeof TYPED) => worked(potashWorksheet(typed)).findings.map(({ level, rule }) => `${level} ${rule}`);

test("what the lab recommends by its own table, split at the most in one application", () => {
  const outcome = potashWorksheet(TYPED);
  expect(answersOf(outcome)).toEqual(["10 lb"]);
  expect(stepsOf(outcome)).toEqual([
    "Against the most: 3 lb ÷ 1¼ lb = 2.4, so 3 applications.",
    "K2O in each of 3 applications: 3 lb ÷ 3 = 1 lb per 1,000 sq ft.",
    "Product for one pound of K2O: 1 lb ÷ 50% = 2 lb.",
    "Product rate: 2 lb × 1 lb = 2 lb per 1,000 sq ft.",
    "On the area: 5,000 sq ft ÷ 1,000 sq ft × 2 lb = 10 lb.",
    "In all: 3 × 10 lb = 30 lb.",
  ]);
  expect(worked(outcome).working).toMatchObject({ source: expect.stringContaining("State lab, Mehlich 3, lawns; most in one application: the label") as string });
  expect(rulesOf(TYPED)).toEqual(["note potash-table-of-one-lab"]);
});

test("within the most it is one application; without one nothing is split, and that wants care", () => {
  expect(stepsOf(potashWorksheet({ ...TYPED, recommended: "1" }))[0]).toBe("1 lb per 1,000 sq ft is within the most of 1¼ lb per 1,000 sq ft: one application.");
  expect(answersOf(potashWorksheet(POTASH_EXAMPLE.typed))).toEqual(["6¼ lb"]);
  expect(rulesOf({ ...TYPED, cap: "", capBy: "" })).toEqual(["note potash-table-of-one-lab", "take-care potash-without-cap"]);
});

test("nitrogen that comes along is held against what is never passed at a time", () => {
  expect(rulesOf({ ...TYPED, grade: "20-0-10", recommended: "1" })).toContain("take-care nitrogen-in-one-application");
});

test("refused by field, and no table is ever guessed", () => {
  expect(refusedFields(potashWorksheet({ recommended: "", table: " ", grade: "", area: "", cap: "x", capBy: "" }))).toEqual(["recommended", "table", "grade", "area", "cap"]);
  expect(firstSentence(potashWorksheet({ ...TYPED, table: "" }))).toContain("its method and its table");
  expect(refusedFields(potashWorksheet({ ...TYPED, table: "x".repeat(201) }))).toEqual(["table"]);
  expect(refusedFields(potashWorksheet({ ...TYPED, cap: "" }))).toEqual(["cap"]);
  expect(refusedFields(potashWorksheet({ ...TYPED, capBy: "" }))).toEqual(["capBy"]);
  expect(refusedFields(potashWorksheet({ ...TYPED, grade: "32-0-0" }))).toEqual(["grade"]);
});
