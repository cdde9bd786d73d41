import { expect, test } from "vitest";
import { accept, missingFact } from "#domain/foundation/outcome";
import { rateOf } from "#domain/quantities/rate";
import { besideRangeWords, besideYearlyRange, endsOfRange, poundsApart, sumNitrogen } from "#domain/scheduling/season-nitrogen";
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

const [about] = annualNitrogenRangesOf("fine fescue").filter(({ region }) => region === "Pennsylvania");
if (about === undefined) throw new Error("the table has Pennsylvania");

test.each([
  ["1.79", "below"],
  ["1.9964", "within"],
  ["2.001", "within"],
  ["2.2", "within"],
  ["2.21", "above"],
])("%s lb beside about 2 lb is %s", (sum, answer) => {
  expect(besideYearlyRange(sumNitrogen([nitrogen(sum)]), about)).toBe(answer);
});

test("how it lies, in words: a single figure is about so much", () => {
  const words = (["below", "within", "above", "not-known"] as const).map((beside) => [besideRangeWords(beside, range), besideRangeWords(beside, about)]);
  expect(words).toEqual([
    ["less than the 3 to 4 published for Kentucky bluegrass in Pennsylvania", "less than about 2, as published for fine fescue in Pennsylvania"],
    ["within the 3 to 4 published for Kentucky bluegrass in Pennsylvania", "about 2, as published for fine fescue in Pennsylvania"],
    ["more than the 3 to 4 published for Kentucky bluegrass in Pennsylvania", "more than about 2, as published for fine fescue in Pennsylvania"],
    ["beside the 3 to 4 published for Kentucky bluegrass in Pennsylvania", "beside about 2, as published for fine fescue in Pennsylvania"],
  ]);
});

test("a figure never reads like the end of a range that it is not", () => {
  expect(endsOfRange(range)).toEqual([rate("3"), rate("4")]);
  expect(endsOfRange(about)).toEqual([]);
  const written = (value: string) => poundsApart(rate(value), endsOfRange(range), 2);
  expect([written("3"), written("2.998"), written("4.00001"), written("3.5")]).toEqual(["3.00", "2.998", "4.00001", "3.50"]);
  expect(poundsApart(rate("2.998"), [], 2)).toBe("3.00");
});
