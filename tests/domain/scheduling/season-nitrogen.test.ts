import { expect, test } from "vitest";
import { accept, missingFact } from "#domain/foundation/outcome";
import { rateOf } from "#domain/quantities/rate";
import { besideYearlyRange, sumNitrogen } from "#domain/scheduling/season-nitrogen";
import { annualNitrogenRangesOf } from "#domain/turf/annual-nitrogen";

const rate = (value: string) => rateOf("nutrient-mass-per-area", value, "lb per 1,000 sq ft");
const nitrogen = (value: string, slow?: string) => accept({ nitrogen: rate(value), slow: slow === undefined ? ("not-stated" as const) : rate(slow) });
const unread = missingFact("analysis", "a grade", "The analysis of Greenmere has not been read.");
const [range] = annualNitrogenRangesOf("Kentucky bluegrass").filter(({ region }) => region === "Pennsylvania");
if (range === undefined) throw new Error("the table has Pennsylvania");

test("treatments on the same ground add up, and what is missing is named once", () => {
  expect(sumNitrogen([nitrogen("0.8", "0.2"), nitrogen("0.75", "0.5"), nitrogen("0", "0")])).toEqual({ known: rate("1.55"), slow: rate("0.7"), isReleaseMissing: false, missing: [] });
  expect(sumNitrogen([nitrogen("0.8"), unread, unread])).toEqual({ known: rate("0.8"), slow: rate("0"), isReleaseMissing: true, missing: ["The analysis of Greenmere has not been read."] });
  expect(sumNitrogen([]).known.amount).toBe(0n);
});

test.each([
  ["2.9", "below"],
  ["3", "within"],
  ["4", "within"],
  ["4.1", "above"],
])("%s lb beside 3 to 4 lb is %s", (sum, answer) => {
  expect(besideYearlyRange(sumNitrogen([nitrogen(sum)]), range)).toBe(answer);
});

test("with something missing only too much is certain", () => {
  expect(besideYearlyRange(sumNitrogen([nitrogen("3.5"), unread]), range)).toBe("not-known");
  expect(besideYearlyRange(sumNitrogen([nitrogen("4.5"), unread]), range)).toBe("above");
});
