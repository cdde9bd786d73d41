import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { missingFact } from "#domain/foundation/outcome";
import { aboveAtOnce, broughtInYear, capOf, isAboveCap, overYear, uncountedOf } from "#domain/mixing/nutrient-caps";
import { rateOf } from "#domain/quantities/rate";
import { LAWN, PAST } from "../../support/ticket";

const pounds = (value: string) => rateOf("nutrient-mass-per-area", value, "lb per 1,000 sq ft");
const cap = { most: pounds("0.9"), citation: "an invented rule" };

test("a most on file is a cap, and what is not on file is none", () => {
  expect(capOf({ onFile: true, value: { poundsPer1000SqFt: "0.9" }, citation: "an invented rule", standing: "read" })).toEqual(cap);
  expect([capOf(undefined), isAboveCap(pounds("99"), undefined)]).toEqual([undefined, false]);
});

test("a rate at the cap is not above it", () => {
  expect(["0.89", "0.9", "0.91"].map((value) => isAboveCap(pounds(value), cap))).toEqual([false, false, true]);
});

test("the year of a day is its calendar year, and what can't be counted of it is said once", () => {
  const unread = missingFact("analysis", "a grade", "The analysis of Otherwise 5 is not on file.");
  const on = (day: string, nutrients: typeof PAST.nutrients = PAST.nutrients) => ({ ...PAST, on: day as CalendarDate, nutrients });
  const lawn = { ...LAWN, history: [on("2025-12-31"), on("2026-01-01", unread), on("2026-12-31", unread), on("2027-01-01")] };
  const brought = broughtInYear(lawn, "2026-04-14");
  expect(brought).toEqual([unread, unread]);
  expect(uncountedOf(brought)).toEqual(["The analysis of Otherwise 5 is not on file."]);
});

test("what is above a cap says both figures and by whose words", () => {
  const said = { rule: "nitrogen-above-the-law", what: "Front gets too much.", toDo: "Lower the rate." };
  expect(aboveAtOnce(said, { planned: pounds("1"), ofWhat: " of P2O5", more: " More." }, cap, "Front")).toEqual({
    ...said, level: "hold", answerableBy: "license-holder", source: "law", citation: "an invented rule", about: ["Front"], figure: "Planned is 1 lb per 1,000 sq ft of P2O5; the law's most is 0.9 lb per 1,000 sq ft. More.",
  });
});

test("a year holds where it is above the cap, and where a feed of it can't be counted", () => {
  const words = { name: "phosphate", ofWhat: " of P2O5", toDo: "Lower the rate." } as const;
  const year = (value: string, uncounted: readonly string[] = []) => overYear({ lawnName: "Front", year: pounds(value), before: pounds("0.5"), uncounted }, cap, words).map(({ rule, figure }) => [rule, figure]);
  expect(year("0.9")).toEqual([]);
  expect(year("1")).toEqual([["phosphate-of-the-year-above-the-law", "It had \u00BD lb per 1,000 sq ft and has 1 lb per 1,000 sq ft of P2O5 after this visit; the law's most is 0.9 lb per 1,000 sq ft."]]);
  expect(year("0.9", ["Not known."])).toEqual([["phosphate-of-the-year-undecided", "Not known. The law's most in a year is 0.9 lb per 1,000 sq ft of P2O5."]]);
  expect(overYear({ lawnName: "Front", year: pounds("9"), before: pounds("8"), uncounted: ["Not known."] }, undefined, words)).toEqual([]);
});
