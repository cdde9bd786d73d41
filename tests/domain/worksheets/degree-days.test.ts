import { describe, expect, test } from "vitest";
import { DEGREE_DAYS_EXAMPLE, degreeDaysWorksheet } from "#domain/worksheets/degree-days";
import { answersOf, firstSentence, refusedFields, stepsOf, worked } from "../../support/worked";

const typed = DEGREE_DAYS_EXAMPLE.typed;

test("the running sum, and the day on which a number is reached", () => {
  const outcome = degreeDaysWorksheet(typed);
  expect(answersOf(outcome)).toEqual(["12.5 degree days °F", "Mar 3, 2026"]);
  expect(stepsOf(outcome)).toEqual([
    "Mar 1, 2026: high 65, low 40.",
    "High and low: 65 + 40 = 105.",
    "Half of it less the base: 105 ÷ 2 − 50 = 2.5 degree days.",
    "The same for each day; every day stands in the table.",
    "Days above 0 added up: 2.5 + 10 = 12.5 degree days.",
  ]);
  expect(worked(outcome).tables[0]?.rows.map((row) => row.at(-1))).toEqual(["2.5", "2.5", "12.5"]);
});

test("days without dates follow from the first, a heading is no day, and 86/50 cuts at both ends", () => {
  const outcome = degreeDaysWorksheet({ days: "high,low\n90,-4\n88,60", start: "2026-06-01", method: "86-50", base: "", threshold: "500" });
  expect(answersOf(outcome)).toEqual(["41 degree days °F", "not yet"]);
  expect(stepsOf(outcome)[0]).toBe("Jun 1, 2026: high 90, low -4, counted as 86 and 50.");
  expect(stepsOf(outcome)[2]).toBe("Half of it less the base: 136 ÷ 2 − 50 = 18 degree days.");
});

test("the reset method counts a warm afternoon, and a start later than the first line leaves days out", () => {
  expect(answersOf(degreeDaysWorksheet({ ...typed, method: "reset", threshold: "" }))).toEqual(["22.5 degree days °F"]);
  expect(answersOf(degreeDaysWorksheet({ ...typed, start: "2026-03-03", threshold: "" }))).toEqual(["10 degree days °F"]);
});

test("a cold spell has no degree days and is told with its first day", () => {
  expect(stepsOf(degreeDaysWorksheet({ ...typed, days: "2026-03-02, 60, 35", threshold: "" }))[1]).toBe("Half of high and low together is not above the base of 50, which makes 0 degree days.");
});

test("rows add up as they are printed, also from halves and hundredths, and a low below zero is taken off", () => {
  const { tables, working } = worked(degreeDaysWorksheet({ ...typed, days: "2026-03-01, 70.1, 45\n2026-03-02, 65.1, 45.05\n2026-03-03, 104, -3", threshold: "" }));
  expect(tables[0]?.rows.map((row) => row.slice(-2))).toEqual([["7.55", "7.55"], ["5.075", "12.625"], ["0.5", "13.125"]]);
  expect(working.steps.at(-1)).toBe("Days above 0 added up: 7.55 + 5.075 + 0.5 = 13.125 degree days.");
  expect(stepsOf(degreeDaysWorksheet({ ...typed, days: "60, 50\n".repeat(32), start: "2026-03-01", threshold: "" })).at(-1)).toBe("The same for each day; every day stands in the table, with the sum up to it.");
  expect(stepsOf(degreeDaysWorksheet({ ...typed, days: "2026-03-03, 104, -3", threshold: "" }))[1]).toBe("High and low: 104 − 3 = 101.");
});

describe("refused by field", () => {
  test("all that is missing at once", () => {
    expect(refusedFields(degreeDaysWorksheet({ days: "", start: "spring", method: "", base: "", threshold: "0" }))).toEqual(["days", "start", "method", "base", "threshold"]);
  });

  test.each([
    ["2026-03-01, 65", "it takes from -60 to 135 °F", "days"],
    ["65, 40", "The lines have no dates", "start"],
    ["2026-03-01, 65, 40, 3", "is no day", "days"],
    ["2026-03-01, 165, 40", "it takes from -60 to 135 °F", "days"],
    ["2026-03-01, 40, 65", "is above its highest", "days"],
    ["2026-03-01, 65, 40\n2026-03-03, 65, 40", "There is no reading for 2026-03-02.", "days"],
  ])("%s", (days, words, field) => {
    const outcome = degreeDaysWorksheet({ ...typed, days });
    expect(refusedFields(outcome)).toEqual([field]);
    expect(firstSentence(outcome)).toContain(words);
  });

  test("a start after the last day", () => {
    expect(refusedFields(degreeDaysWorksheet({ ...typed, start: "2026-04-01" }))).toEqual(["start"]);
  });

  test("more lines than a year and a bit", () => {
    expect(firstSentence(degreeDaysWorksheet({ ...typed, days: "65, 40\n".repeat(401) }))).toContain("at most 400 days");
  });
});
