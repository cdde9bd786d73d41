import { describe, expect, test } from "vitest";
import { seedingFindings, seedingMayNots, type ZoneSeeding } from "#domain/mixing/seeding-aftercare";
import { day } from "../../support/domain-answers";
import { appliedOf, at, CHICAGO, earlierOf, labelOf, says } from "../../support/aftercare-builders";

const days = (count: number) => ({ anchor: "calendar-day", days: count }) as const;
// Longer under slit-seeded grass than under broadcast seed: Keeley and Zhou, Weed Technology 19(1), 2005, about 6 and 11 weeks.
const barrier = labelOf("Barrier PE", {
  ...says("seeding-after", { intervals: [{ method: "broadcast", until: days(42) }, { method: "slit", until: days(77) }] }),
  ...says("seeding-before", { within: days(60) }),
});
const seeding = (date: string, standing: ZoneSeeding["standing"], method: ZoneSeeding["method"] = "broadcast"): ZoneSeeding => ({ date: day(date), method, standing });
const rules = (seedings: readonly ZoneSeeding[], products = [appliedOf(barrier)]) =>
  seedingFindings(products, seedings, CHICAGO).map(({ rule }) => rule);

test("the lawn is closed to seed for the longest of the intervals", () => {
  expect(seedingMayNots([appliedOf(barrier)], CHICAGO)).toMatchObject([{ row: "seeding", end: { atEpochMilliseconds: at("2026-07-17T00:00-05:00") } }]);
});

describe("seed after a product, by its own method", () => {
  test.each([
    ["the day before broadcast is free", seeding("2026-06-11", "planned"), ["seeding-too-soon-after"]],
    ["the day it is free", seeding("2026-06-12", "planned"), []],
    ["the same day slit-seeded", seeding("2026-06-12", "planned", "slit"), ["seeding-too-soon-after"]],
    ["slit-seeded when that is free", seeding("2026-07-17", "planned", "slit"), []],
    ["planned for a day before the visit", seeding("2026-01-10", "planned"), []],
  ])("%s", (_name, one, expected) => expect(rules([one])).toEqual(expected));

  test("of an earlier visit, over the zone's history", () => {
    expect(rules([seeding("2026-05-20", "planned")], [earlierOf(barrier, at("2026-04-10T12:00-05:00"))])).toEqual(["seeding-too-soon-after"]);
    expect(rules([seeding("2026-05-22", "planned")], [earlierOf(barrier, at("2026-04-10T12:00-05:00"))])).toEqual([]);
  });

  test("a method without an interval says that it is missing", () => {
    const broadcastOnly = labelOf("Barrier PE", says("seeding-after", { intervals: [{ method: "broadcast", until: days(42) }] }));
    const [finding] = seedingFindings([appliedOf(broadcastOnly)], [seeding("2027-05-01", "planned", "slit")], CHICAGO);
    expect(finding).toMatchObject({ level: "hold", answerableBy: "nobody", rule: "seeding-interval-missing" });
  });
});

describe("a product after seed", () => {
  test.each([
    ["done within the interval", seeding("2026-03-02", "done"), ["too-soon-after-seeding"]],
    ["done the day before it", seeding("2026-03-01", "done"), []],
    ["done on the day of the visit", seeding("2026-05-01", "done"), ["too-soon-after-seeding"]],
  ])("%s", (_name, one, expected) => expect(rules([one])).toEqual(expected));
  test("is not asked of an earlier visit, which is done", () => {
    expect(rules([seeding("2026-03-02", "done")], [earlierOf(barrier, at("2026-04-10T12:00-05:00"))])).toEqual([]);
  });
});
