import { expect, test } from "vitest";
import { CANS_EXAMPLE, cansWorksheet, KNOWN_RATE_EXAMPLE, knownRateWorksheet } from "#domain/worksheets/irrigation";
import { answersOf, firstSentence, refusedFields, stepsOf, worked } from "../../support/worked";

test("minutes from a known rate, in cycles with a rest", () => {
  const outcome = knownRateWorksheet(KNOWN_RATE_EXAMPLE.typed);
  expect(answersOf(outcome)).toEqual(["24 min", "12 + 12 min"]);
  expect(stepsOf(outcome)).toEqual([
    "Minutes: 60 × ½ in ÷ 1.28 in = 23.4375 min.",
    "In whole minutes, upwards, 24 min give: 1.28 in × 24 ÷ 60 = 0.512 in.",
    "Cycle and soak: 12, then 12 min, with 30 min of rest between.",
    "From first to last: 12 + 30 + 12 = 54 min.",
  ]);
});

test("without a cycle it is one run", () => {
  expect(answersOf(knownRateWorksheet({ ...KNOWN_RATE_EXAMPLE.typed, rate: "1.28", longestRun: "", soak: "" }))).toEqual(["24 min"]);
});

test("a station without a rate is told how to be tested", () => {
  const outcome = knownRateWorksheet({ ...KNOWN_RATE_EXAMPLE.typed, rate: "" });
  expect(answersOf(outcome)).toEqual(["½ in"]);
  expect(stepsOf(outcome)[0]).toContain("Set out eight straight-sided cans");
  expect(worked(outcome).working.result).toContain("Its rate has not been tested.");
});

test("minutes from cans", () => {
  const outcome = cansWorksheet(CANS_EXAMPLE.typed);
  expect(answersOf(outcome)).toEqual(["18 min"]);
  expect(stepsOf(outcome).slice(0, 7)).toEqual([
    "The 8 cans together: 0.2 in + ¼ in + 0.22 in + 0.18 in + 0.24 in + 0.23 in + 0.19 in + ¼ in = 1.76 in.",
    "Average of the 8 cans: 1.76 in ÷ 8 = 0.22 in.",
    "In an hour: 0.22 in × 60 ÷ 15 = 0.88 in an hour.",
    "The driest quarter, 2 of the cans together: 0.18 in + 0.19 in = 0.37 in.",
    "Average of the driest quarter, 2 of the cans: 0.37 in ÷ 2 = 0.185 in.",
    "Evenness (DU), the driest quarter over all: 0.185 in ÷ 0.22 in = 84.0909%.",
    "For the driest quarter to get the whole depth, so many times the minutes: 1 ÷ 84.0909% = 1.1892.",
  ]);
  expect(worked(outcome).findings).toEqual([]);
});

test("wind and a wind that was not taken are findings, and an empty can counts", () => {
  expect(worked(cansWorksheet({ ...CANS_EXAMPLE.typed, wind: "9" })).findings).toMatchObject([{ rule: "can-test-in-wind" }]);
  expect(worked(cansWorksheet({ ...CANS_EXAMPLE.typed, wind: "" })).findings).toMatchObject([{ rule: "can-test-wind-not-taken" }]);
  expect(stepsOf(cansWorksheet({ ...CANS_EXAMPLE.typed, cans: "0, 0.2, 0.2, 0.2" }))[1]).toBe("Average of the 4 cans: 0.6 in ÷ 4 = 0.15 in.");
});

test("a driest quarter without water can't be watered evenly, which is a finding and no minutes", () => {
  const outcome = cansWorksheet({ ...CANS_EXAMPLE.typed, cans: "0.20, 0, 0.22, 0.18, 0.24, 0.23, 0, 0.25" });
  expect(worked(outcome).findings).toMatchObject([{ level: "take-care", rule: "can-test-dry-quarter", figure: "The 2 driest cans were empty: the DU is 0%." }]);
  expect(stepsOf(outcome)).toContain("Evenness (DU), the driest quarter over all: 0 in ÷ 0.165 in = 0%.");
  expect(stepsOf(outcome).join(" ")).not.toContain("so many times");
  expect(worked(cansWorksheet({ ...CANS_EXAMPLE.typed, cans: "0, 0.2, 0.2, 0.2" })).findings).toMatchObject([{ figure: "The driest can was empty: the DU is 0%." }]);
});

test("refused by field: what is missing, half a cycle, too few cans", () => {
  expect(refusedFields(knownRateWorksheet({ depth: "", rate: "fast", longestRun: "0", soak: "1.5" }))).toEqual(["depth", "rate", "longestRun", "soak"]);
  expect(refusedFields(knownRateWorksheet({ ...KNOWN_RATE_EXAMPLE.typed, longestRun: "" }))).toEqual(["longestRun"]);
  expect(refusedFields(knownRateWorksheet({ ...KNOWN_RATE_EXAMPLE.typed, soak: "" }))).toEqual(["soak"]);
  expect(refusedFields(cansWorksheet({ ...CANS_EXAMPLE.typed, cans: "0.2, 0.2, 0.2" }))).toEqual(["cans"]);
  expect(refusedFields(cansWorksheet({ ...CANS_EXAMPLE.typed, cans: "0, 0, 0, 0" }))).toEqual(["cans"]);
  expect(refusedFields(cansWorksheet({ ...CANS_EXAMPLE.typed, soak: "5" }))).toEqual(["longestRun"]);
  expect(refusedFields(cansWorksheet({ depth: "", cans: "", minutes: "", wind: "x", longestRun: "", soak: "" }))).toEqual(["depth", "cans", "minutes", "wind"]);
});

test("absurd water is refused: more than a foot, a station of more than a foot an hour, a run of more than a day", () => {
  const refused = (change: object) => knownRateWorksheet({ ...KNOWN_RATE_EXAMPLE.typed, ...change });
  expect(refusedFields(refused({ depth: "99999999" }))).toEqual(["depth"]);
  expect(firstSentence(refused({ depth: "99999999" }))).toBe('"99999999" is no answer for the depth of water: it takes up to 12 in.');
  expect(refusedFields(refused({ rate: "12.1 in per hour" }))).toEqual(["rate"]);
  expect(refusedFields(refused({ depth: "12.01" }))).toEqual(["depth"]);
  expect(firstSentence(refused({ depth: "2", rate: "0.05", longestRun: "", soak: "" }))).toContain("more than a day");
  expect(firstSentence(refused({ depth: "2", rate: "0.05", longestRun: "", soak: "" }))).toBe("2 in would take 2400 min, more than a day: see whether the depth and what the station gives are right.");
  expect(answersOf(refused({ depth: "1.2", rate: "0.05", longestRun: "", soak: "" }))).toEqual(["1440 min"]);
});

test("a unit after the last can is that of all, is told beside each, and is asked about where others have none", () => {
  const outcome = cansWorksheet({ ...CANS_EXAMPLE.typed, cans: "2, 3, 0, 3 mm", minutes: "60" });
  expect(answersOf(outcome)).toEqual(answersOf(cansWorksheet({ ...CANS_EXAMPLE.typed, cans: "2 mm, 3 mm, 0 mm, 3 mm", minutes: "60" })));
  expect(worked(outcome).working.inputs.find(({ name }) => name === "In the cans")?.figure).toContain("(2 mm), 0.11811 in (3 mm), 0 in, 0.11811 in (3 mm)");
  expect(refusedFields(cansWorksheet({ ...CANS_EXAMPLE.typed, cans: "2, 3 mm, 2, 3" }))).toEqual(["cans"]);
});

test("cans with decimal commas are refused, and not read as more cans", () => {
  expect(refusedFields(cansWorksheet({ ...CANS_EXAMPLE.typed, cans: "0,2; 0,25; 0,22; 0,18" }))).toEqual(["cans"]);
  expect(refusedFields(cansWorksheet({ ...CANS_EXAMPLE.typed, cans: "0,2, 0,25, 0,22, 0,18" }))).toEqual(["cans"]);
});

test("a rate of next to nothing is refused, however long the list of runs would be", () => {
  expect(refusedFields(knownRateWorksheet({ ...KNOWN_RATE_EXAMPLE.typed, rate: "0.0000000001", longestRun: "1", soak: "1" }))).toEqual(["depth"]);
});
