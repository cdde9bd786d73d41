import { describe, expect, test } from "vitest";
import { type DueReach } from "#domain/label/aftercare-constraint";
import { DEFAULT_AFTERCARE_ESTIMATES } from "#domain/mixing/aftercare-instants";
import { keptDryForRain, searchSpan, stayingDry, untilAllIsDown, wateredInAtLatest, wateringNeeds } from "#domain/mixing/watering-bounds";
import { of } from "#domain/quantities/quantity";
import { appliedOf, at, byLaw, CHICAGO, daily, earlierOf, END, FEED, HOUR, hoursAfterEnd, IRON, labelOf, says, START, untilState } from "../../support/aftercare-builders";

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

test("whose estimate a time rests on is kept with it, and nobody's where a label states it", () => {
  const { untilDry } = DEFAULT_AFTERCARE_ESTIMATES;
  const sourcesOf = (all: readonly { readonly estimatedBy: readonly { readonly source: string }[] }[]) => all.map(({ estimatedBy }) => estimatedBy.map(({ source }) => source));
  const dry = (untilLaterOf: Parameters<typeof says<"watering-not-before">>[1]["untilLaterOf"]) =>
    sourcesOf(stayingDry([appliedOf(labelOf("Weedaway", says("watering-not-before", { untilLaterOf })))], { timeZone: CHICAGO, estimates: DEFAULT_AFTERCARE_ESTIMATES }));
  const fromSign = { anchor: "posting", durationMinutes: 60 } as const;
  const notPosted = "common practice: until a sign stands, what counts from it counts from the work";
  expect([dry([untilState("dry")]), dry([untilState("dry"), hoursAfterEnd(12)]), dry([fromSign])]).toEqual([[[untilDry === "unknown" ? "" : untilDry.source]], [[]], [[notPosted]]]);
  const atOnce: DueReach = { anchor: "at-once" };
  const dayFromSign: DueReach = { anchor: "days", from: "posting", days: 1 };
  const due = (by: DueReach | "not-stated", postedAtEpochMilliseconds: number | "not-posted" = "not-posted") => {
    const applied = appliedOf(labelOf("Grub", says("watering-in", { by, depth: "not-stated", rain: "counts" })));
    return sourcesOf(wateringNeeds([{ ...applied, application: { ...applied.application, postedAtEpochMilliseconds } }], visit, CHICAGO));
  };
  expect([due(atOnce), due(hoursAfterEnd(4)), due("not-stated"), due(fromSign), due(dayFromSign), due(fromSign, START)]).toEqual([
    [["common practice: at once is within an hour after the application"]], [[]], [[]], [[notPosted]], [[notPosted]], [[]],
  ]);
  const spoiled = labelOf("Iron", says("rain-that-spoils", { within: fromSign, from: "any" }));
  expect(sourcesOf(keptDryForRain([appliedOf(spoiled), appliedOf(IRON)], "not-known", CHICAGO))).toEqual([[], [notPosted]]);
});

test("a visit lasts until all that counts at it is down", () => {
  expect(untilAllIsDown(visit, [appliedOf(IRON), earlierOf(FEED, END + HOUR)])).toEqual({ fromEpochMilliseconds: START, untilEpochMilliseconds: END + HOUR });
  expect(untilAllIsDown(visit, [earlierOf(FEED, START)])).toEqual(visit);
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

test("what nobody has said was watered in was not by the end of the visit: hours that are past then are none", () => {
  const [thursdays, fridays] = [byLaw(daily(5, 9, [4])), byLaw(daily(12, 16, [5]))];
  const slow = labelOf("Slow", says("watering-in", { by: hoursAfterEnd(72), depth: "not-stated", rain: "counts" }));
  const latest = (applied: Parameters<typeof wateredInAtLatest>[0], localRules: typeof thursdays) => wateredInAtLatest(applied, visit, { localRules, controller: "none" }, CHICAGO);
  // Put down on Wednesday and due on Saturday afternoon; the visit is on Friday from 3 to 4 pm.
  const before = earlierOf(slow, START - 48 * HOUR);
  expect(latest(before, thursdays)).toBeNull();
  expect(latest(before, fridays)).toBeNull();
  expect(latest(before, byLaw(daily(12, 16.5, [5])))).toBe(END + HOUR / 2);
  const early = { startsAtEpochMilliseconds: START, endsAtEpochMilliseconds: START + HOUR / 4, postedAtEpochMilliseconds: "not-posted" } as const;
  expect(latest(appliedOf(slow, { application: early }), fridays)).toBeNull();
});

describe("from when on and until when a time is looked for", () => {
  const searched = (dryUntil: number | null, dueAt: number | null) => {
    const { fromEpochMilliseconds, untilEpochMilliseconds } = searchSpan(visit, { dryUntil, dueAt }, CHICAGO);
    return [fromEpochMilliseconds, untilEpochMilliseconds];
  };
  test("without a date four weeks after the visit", () => {
    expect(searched(null, null)).toEqual([END, at("2026-05-30T00:00-05:00")]);
    expect(searched(END - HOUR, null)).toEqual([END, at("2026-05-30T00:00-05:00")]);
    expect(searched(END + 168 * HOUR, null)).toEqual([END + 168 * HOUR, at("2026-05-30T00:00-05:00")]);
  });
  test("after a long dry time four weeks after that", () => {
    expect(searched(END + 169 * HOUR, null)).toEqual([END + 169 * HOUR, at("2026-06-06T00:00-05:00")]);
  });
  test("until a label's date, however late or early", () => {
    expect(searched(null, END + 1000 * HOUR)).toEqual([END, END + 1000 * HOUR]);
    expect(searched(END + 12 * HOUR, END + HOUR)).toEqual([END + 12 * HOUR, END + HOUR]);
  });
});

describe("what rain would spoil is kept dry from as much water", () => {
  const spoiledFrom = (from: "any" | "0.5") =>
    appliedOf(labelOf(`Spoiled by ${from}`, says("rain-that-spoils", { within: hoursAfterEnd(12), from: from === "any" ? from : of("in", from) })));
  test.each([
    ["any rain, whatever is put down", "any", "0.01", 1],
    ["any rain, even where nobody knows how much is put down", "any", "not-known", 1],
    ["as much rain as water", "0.5", "0.5", 1],
    ["less water than the rain that spoils", "0.5", "0.49", 0],
    ["nobody knows how much is put down", "0.5", "not-known", 0],
  ] as const)("%s", (_name, from, water, count) => {
    const kept = keptDryForRain([spoiledFrom(from), appliedOf(FEED)], water === "not-known" ? water : of("in", water), CHICAGO);
    expect(kept.map(({ end }) => end.atEpochMilliseconds)).toEqual(Array.from({ length: count }, () => END + 12 * HOUR));
  });
});
