import { expect, test } from "vitest";
import { compareRates, rateOf } from "#domain/quantities/rate";
import { ABOUT_PERCENT, annualNitrogenRanges, annualNitrogenRangesIn, annualNitrogenRangesOf, isOneFigure, rangeFigures, rangeHeldAgainst, sourceOfRange } from "#domain/turf/annual-nitrogen";

test("every range goes from low to high and names its source", () => {
  for (const range of annualNitrogenRanges) {
    expect(compareRates(range.lowest, range.highest) <= 0).toBe(true);
    expect(range.lowest.amount > 0n).toBe(true);
    expect(range.source.name).not.toBe("");
    expect(range.source.address).not.toBe("");
  }
});

test("one source says one thing of one grass in one region", () => {
  const keys = annualNitrogenRanges.map((range) => [range.grass, range.region, range.source.name].join("|"));
  expect(new Set(keys).size).toBe(keys.length);
});

test("the ranges of one grass are all of its own", () => {
  const ranges = annualNitrogenRangesOf("fine fescue");
  expect(ranges.map((range) => range.region)).toEqual(["Virginia", "Pennsylvania", "Illinois"]);
  expect(ranges.every((range) => range.grass === "fine fescue")).toBe(true);
});

test("the ranges of a grass in a state are those of its own regions, each range in one state", () => {
  expect(annualNitrogenRangesIn("IL", "tall fescue").map(({ region }) => region)).toEqual(["Illinois"]);
  expect(annualNitrogenRangesIn("FL", "bermudagrass").map(({ region }) => region)).toEqual(["north Florida", "central Florida", "south Florida"]);
  expect(annualNitrogenRangesIn("IN", "tall fescue")).toEqual([]);
  expect(annualNitrogenRangesIn("IL", "buffalograss")).toEqual([]);
  const inStates = (["FL", "NC", "VA", "GA", "IL", "PA"] as const).flatMap((state) => annualNitrogenRanges.flatMap(({ grass }) => annualNitrogenRangesIn(state, grass)));
  expect(new Set(inStates).size).toBe(annualNitrogenRanges.length);
});

test("a single figure is about so much, and says what its source adds; a range is what it is", () => {
  const pounds = (value: string) => rateOf("nutrient-mass-per-area", value, "lb per 1,000 sq ft");
  const [one] = annualNitrogenRangesIn("PA", "tall fescue");
  const [range] = annualNitrogenRangesIn("IL", "tall fescue");
  if (one === undefined || range === undefined) throw new Error("The table has both.");
  expect([one, range].map(isOneFigure)).toEqual([true, false]);
  expect([one, range].map(rangeFigures)).toEqual(["about 2", "2 to 4"]);
  expect(ABOUT_PERCENT).toBe(10n);
  expect(rangeHeldAgainst(one)).toEqual({ lowest: pounds("1.8"), highest: pounds("2.2") });
  expect(rangeHeldAgainst(range)).toMatchObject({ lowest: pounds("2"), highest: pounds("4") });
  expect([one, range].map(sourceOfRange)).toEqual(["Penn State (Landschoot), Feast or Famine Fertility: about 2, said of fescues", "University of Illinois, 1995"]);
});
