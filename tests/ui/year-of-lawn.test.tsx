import { describe, expect, test } from "vitest";
import { type GrowthOfYear, type LedgerOfLawn } from "#application/properties/read-nutrient-ledger";
import { accept, missingFact } from "#domain/foundation/outcome";
import { lawnLedger } from "#domain/scheduling/nutrient-ledger";
import { type GrowthOfMonth } from "#domain/turf/growth-of-months";
import { YearOfLawn } from "../../app/(office)/properties/year-of-lawn";
import { markupOf, tableRowsOf, textOf } from "./read-markup";

const month = (number: number, potential?: number): GrowthOfMonth => {
  const facts = { month: number, daysOfMonth: 30, gaps: [] };
  return potential === undefined ? { kind: "too-few-days", ...facts, daysKept: number === 12 ? 0 : 12 } : { kind: "growth", ...facts, daysKept: 30, meanTemperatureC: 10, potential };
};
const GROWTH: GrowthOfYear = {
  season: "cool-season",
  isGrassAssumed: false,
  source: "Airfield",
  months: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12].map((number) => month(number, [undefined, 0, 0.1, 0.5, 0.984, 0.7][number - 1])),
};
const lawn = (growth: LedgerOfLawn["growth"]): LedgerOfLawn => ({
  ...{ zoneId: "z", letter: "A", name: "Front" },
  ledger: lawnLedger({ year: 2026, state: "IL", pack: undefined, grasses: ["tall fescue"], entries: [] }),
  growth,
});
const drawn = (growth: LedgerOfLawn["growth"], withMonths = true) => markupOf(<YearOfLawn lawn={lawn(growth)} withMonths={withMonths} />);

describe("the year of a lawn beside its growth", () => {
  const markup = drawn(accept(GROWTH));

  test("is drawn where nothing goes down too, with its best month, its source and that it is no target", () => {
    const text = textOf(markup);
    expect(text).toContain("No nitrogen goes down in the year. Growth potential is best in May, 98 %.");
    expect(text).toContain("Growth potential of cool-season grass by the mean air temperature of each month at Airfield (Woods 2014, after Gelernter and Stowell 2005).");
    expect(text).toContain("never its target: in disease weather it would feed.");
    expect(markup).toContain('href="/settings/temperatures"');
  });

  test("names each month's figure in the table, and what a month without one has", () => {
    const months = tableRowsOf(markup.slice(markup.indexOf("Nitrogen by month")));
    expect(months.map((row) => row.slice(-2))).toEqual([
      ["12 of 30 days on file", "no figure"],
      ...["0 %", "10 %", "50 %", "98 %", "70 %"].map((potential) => ["50.0 °F", potential]),
      ...Array.from({ length: 5 }, () => ["12 of 30 days on file", "no figure"]),
      ["no day on file", "no figure"],
    ]);
  });

  test("says so where nobody looked at the grass", () => {
    expect(textOf(drawn(accept({ ...GROWTH, isGrassAssumed: true })))).toContain("cool-season grass, which is assumed and was not looked at, by the mean");
  });

  test("is left out where months are not asked for, and where nothing goes down and no curve is drawn", () => {
    expect(drawn(accept(GROWTH), false)).not.toContain("Growth potential");
    expect(drawn(missingFact("source", "daily temperatures", "No daily temperatures are kept yet."))).not.toContain("Nitrogen by month");
  });
});
