import { describe, expect, test } from "vitest";
import { DEFAULT_AFTERCARE_ESTIMATES } from "#domain/mixing/aftercare-instants";
import { searchSpan, stayingDry, wateredInAtLatest, wateringNeeds } from "#domain/mixing/watering-bounds";
import { appliedOf, at, byLaw, CHICAGO, daily, earlierOf, END, FEED, HOUR, IRON, labelOf, says, START, untilState } from "../../support/aftercare-builders";

const visit = { fromEpochMilliseconds: START, untilEpochMilliseconds: END };
const anyTime = { localRules: "none", controller: "none" } as const;

test("what must stay dry, and until when", () => {
  const drying = labelOf("Weedaway", says("watering-not-before", { untilLaterOf: [untilState("dry")] }));
  const ends = stayingDry([appliedOf(IRON), appliedOf(drying), appliedOf(FEED)], { timeZone: CHICAGO, estimates: DEFAULT_AFTERCARE_ESTIMATES });
  expect(ends.map(({ applied, end }) => [applied.label.productName, end.atEpochMilliseconds, end.isEstimate])).toEqual([
    ["Ferrox Foliar", END + 12 * HOUR, false],
    ["Weedaway", END + 2 * HOUR, true],
  ]);
});

describe("what must be watered in", () => {
  const needs = (...products: Parameters<typeof wateringNeeds>[0]) =>
    wateringNeeds(products, visit, CHICAGO).map(({ dueAtEpochMilliseconds, isOverdue }) => [dueAtEpochMilliseconds, isOverdue]);
  test("by its own date", () => expect(needs(appliedOf(FEED))).toEqual([[END + 24 * HOUR, false]]));
  test("without a date", () => {
    expect(needs(appliedOf(labelOf("A", says("watering-in", { by: "not-stated", depth: "not-stated", rain: "counts" }))))).toEqual([[null, false]]);
  });
  test("of an earlier visit, while it still runs", () => expect(needs(earlierOf(FEED, START - 10 * HOUR))).toEqual([[START + 14 * HOUR, false]]));
  test("of an earlier visit whose date has passed: still, without a date", () => expect(needs(earlierOf(FEED, START - 30 * HOUR))).toEqual([[null, true]]));
  test("of an earlier visit whose date passes during this one", () => {
    expect(needs(earlierOf(FEED, START - 23.5 * HOUR))).toEqual([[null, true]]);
    expect(needs(earlierOf(FEED, END - 24 * HOUR))).toEqual([[null, true]]);
    expect(needs(earlierOf(FEED, END - 24 * HOUR + 1))).toEqual([[END + 1, false]]);
  });
  test("no more when it was watered in, and not known when nobody said so", () => {
    expect(needs(earlierOf(FEED, START - 10 * HOUR, { wateredInAtEpochMilliseconds: START - HOUR }))).toEqual([]);
    expect(needs(earlierOf(FEED, START - 10 * HOUR, { wateredInAtEpochMilliseconds: "unknown" }))).toEqual([]);
  });
});

describe("watered in at the latest", () => {
  test.each([
    ["its own date", appliedOf(FEED), anyTime, END + 24 * HOUR],
    ["the last permitted hours before it", appliedOf(FEED), { localRules: byLaw(daily(5, 9)), controller: "none" } as const, at("2026-05-02T09:00-05:00")],
    ["no hours before it", appliedOf(FEED), { localRules: byLaw(daily(5, 9, [2])), controller: "none" } as const, null],
    ["when it was", earlierOf(FEED, START - 10 * HOUR, { wateredInAtEpochMilliseconds: START - HOUR }), anyTime, START - HOUR],
    ["nobody knows", earlierOf(FEED, START - 10 * HOUR, { wateredInAtEpochMilliseconds: "unknown" }), anyTime, null],
    ["not to be watered in", appliedOf(IRON), anyTime, null],
  ])("%s", (_name, applied, hours, expected) => expect(wateredInAtLatest(applied, visit, hours, CHICAGO)).toBe(expected));
});

test("without a date the search ends with the fourteenth day after", () => {
  expect(searchSpan(visit, CHICAGO)).toEqual({ fromEpochMilliseconds: END, untilEpochMilliseconds: at("2026-05-16T00:00-05:00") });
});
