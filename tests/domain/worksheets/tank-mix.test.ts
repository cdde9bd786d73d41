import { expect, test } from "vitest";
import { MIX_KINDS, MIX_ROWS, TANK_MIX_EXAMPLE, tankMixWorksheet } from "#domain/worksheets/tank-mix";
import { answersOf, firstSentence, refusedFields, worked } from "../../support/worked";

const typed = TANK_MIX_EXAMPLE.typed;
const emptyRows = Object.fromEntries(MIX_ROWS.flatMap((row) => [[`name${row}`, ""], [`rate${row}`, ""], [`kind${row}`, ""]])) as typeof typed;

test("full and part tanks, in mixing order", () => {
  const outcome = tankMixWorksheet(typed);
  expect(answersOf(outcome)).toEqual(["43,560 sq ft", "30 gal"]);
  expect(worked(outcome).tables[0]?.rows).toEqual([
    ["Herbicide", "32 fl oz", "16 fl oz", "48 fl oz"],
    ["Surfactant", "6.4 fl oz", "3.2 fl oz", "9.6 fl oz"],
    ["Water", "19.7 gal", "9.85 gal", "29.55 gal"],
    ["Finished spray", "20 gal", "10 gal", "30 gal"],
  ]);
  expect(worked(outcome).findings).toMatchObject([{ rule: "jar-test" }]);
});

test("kinds go in by their place, not by their row, and what is spread dry is no kind", () => {
  const outcome = tankMixWorksheet({ ...typed, kind1: "surfactant", kind2: "wettable powder", rate2: "2 oz wt per 1,000 sq ft" });
  expect(worked(outcome).tables[0]?.rows.map(([name]) => name)).toEqual(["Surfactant", "Herbicide", "Water", "Finished spray"]);
  expect(MIX_KINDS).not.toContain("dry granule");
  expect(MIX_KINDS.slice(0, 3)).toEqual(["water-soluble bag", "fertilizer or water conditioner", "soluble powder"]);
});

test("whole tanks have no part tank, and one product takes no jar test", () => {
  const outcome = tankMixWorksheet({ ...emptyRows, tank: "20", carrier: "20 gal/acre", area: "2 acres", name1: "", rate1: "1 oz wt per gal", kind1: "wettable powder" });
  expect(worked(outcome).tables[0]?.rows).toEqual([["Product 1", "1 lb 4 oz wt", "2 lb 8 oz wt"], ["Water", "20 gal", "40 gal"], ["Finished spray", "20 gal", "40 gal"]]);
  expect(worked(outcome).findings).toEqual([]);
});

test("a job that fills no tank has one tank, and no column of a full one", () => {
  const outcome = tankMixWorksheet({ ...typed, tank: "100 gal", carrier: "2 gal per 1,000 sq ft", area: "3,000 sq ft", rate1: "32 fl oz per acre", rate2: "0.25% v/v" });
  expect(worked(outcome).answers[1]).toMatchObject({ figure: "6", unit: "gal", of: "finished spray for 3,000 sq ft: one tank of 6 gal" });
  // By hand: 32 fl oz × 3,000 ÷ 43,560 = 2.2 fl oz; 768 fl oz × 0.25% = 1.92 fl oz.
  expect(worked(outcome).tables[0]).toMatchObject({
    columns: [{ head: "Product" }, { head: "The tank" }],
    rows: [["Herbicide", "2.2 fl oz"], ["Surfactant", "1.92 fl oz"], ["Water", "5.97 gal"], ["Finished spray", "6 gal"]],
  });
  expect(worked(outcome).working.steps.filter((step) => /full tank|part tank|whole job/u.test(step))).toEqual([]);
  expect(worked(outcome).working.steps).toContain("Surfactant, the tank: 6 gal × 0.32 fl oz = 1.92 fl oz.");
});

test("four products are a matter for care", () => {
  const more = { name3: "Iron", rate3: "2 fl oz/1,000", kind3: "fertilizer or water conditioner", name4: "Dye", rate4: "0.1% v/v", kind4: "soluble liquid" } as const;
  expect(worked(tankMixWorksheet({ ...typed, ...more })).findings).toMatchObject([{ rule: "many-in-the-tank" }, { rule: "jar-test" }]);
});

test("refused by field, ounces asked back, no room for water", () => {
  expect(refusedFields(tankMixWorksheet({ ...emptyRows, tank: "", carrier: "2 lb", area: "1 gal" }))).toEqual(["tank", "carrier", "area", "rate1"]);
  expect(refusedFields(tankMixWorksheet({ ...typed, kind2: "paste" }))).toEqual(["kind2"]);
  expect(firstSentence(tankMixWorksheet({ ...typed, rate1: "32 oz/acre" }))).toContain("Write oz wt or fl oz");
  expect(firstSentence(tankMixWorksheet({ ...typed, rate1: "20 gal per acre" }))).toContain("no room for water");
});
