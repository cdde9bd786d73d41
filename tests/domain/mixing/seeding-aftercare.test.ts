import { describe, expect, test } from "vitest";
import { type LabelAftercare } from "#domain/label/aftercare-constraint";
import { seedingFindings, seedingMayNots, type ZoneSeeding } from "#domain/mixing/seeding-aftercare";
import { day } from "../../support/domain-answers";
import { appliedOf, at, CHICAGO, earlierOf, labelOf, says } from "../../support/aftercare-builders";

const days = (count: number) => ({ anchor: "calendar-day", days: count }) as const;
const labelDays = (count: number) => ({ anchor: "days", from: "not-said", days: count }) as const;
const mowings = (count: number) => ({ anchor: "mowings", count }) as const;
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

  test("of other work wants care and a new plan, and holds nothing up: it can't be left out any more", () => {
    const waits = (until: { readonly anchor: "calendar-day"; readonly days: number } | { readonly anchor: "mowings"; readonly count: number }, method: "any" | "slit" = "any") => labelOf("Preem", says("seeding-after", { intervals: [{ method, until }] }));
    const found = (label: LabelAftercare, date: string) => seedingFindings([earlierOf(label, at("2026-04-01T10:00-05:00"))], [{ date: day(date), method: "broadcast", standing: "planned" }], CHICAGO);
    expect(found(waits({ anchor: "calendar-day", days: 120 }), "2026-06-01")).toMatchObject([
      {
        level: "take-care",
        rule: "seeding-too-soon-after",
        what: "Seeding (broadcast) is planned for Monday, Jun 1, 2026, too soon after Preem (put down Wednesday, Apr 1, 2026).",
        figure: "Not before Thursday, Jul 30, 2026, 12 am.",
        toDo: "Preem (put down Wednesday, Apr 1, 2026) is down already: plan the seeding anew, for Thursday, Jul 30, 2026, 12 am, or later.",
      },
    ]);
    expect(found(waits({ anchor: "mowings", count: 3 }), "2026-04-03")).toMatchObject([
      { level: "take-care", figure: "Not before it has been mowed 3 times.", toDo: "Preem (put down Wednesday, Apr 1, 2026) is down already: plan the seeding anew, for when it has been mowed 3 times." },
    ]);
    expect(found(waits({ anchor: "calendar-day", days: 1 }, "slit"), "2026-06-01")).toMatchObject([
      { level: "take-care", rule: "seeding-interval-missing", toDo: "Read the label again, or sow by another method, or take the seeding out of the plan." },
    ]);
  });
  test("of an earlier visit, over the zone's history", () => {
    expect(rules([seeding("2026-05-20", "planned")], [earlierOf(barrier, at("2026-04-10T12:00-05:00"))])).toEqual(["seeding-too-soon-after"]);
    expect(rules([seeding("2026-05-22", "planned")], [earlierOf(barrier, at("2026-04-10T12:00-05:00"))])).toEqual([]);
  });

  test("of a method that nobody knows the longest interval counts", () => {
    const unknown = (date: string) => seeding(date, "planned", "unknown");
    expect(rules([unknown("2026-06-12")])).toEqual(["seeding-too-soon-after"]);
    expect(rules([unknown("2026-07-16")])).toEqual(["seeding-too-soon-after"]);
    expect(rules([unknown("2026-07-17")])).toEqual([]);
    expect(seedingFindings([appliedOf(barrier)], [unknown("2026-06-12")], CHICAGO)[0]?.what).toBe("Seeding is planned for Friday, Jun 12, 2026, too soon after Barrier PE.");
  });

  test("three lawns are listed as a sentence lists them", () => {
    const [finding] = seedingFindings([appliedOf(barrier)], [{ ...seeding("2026-06-11", "planned"), lawnNames: ["Front", "Side", "Back"] }], CHICAGO);
    expect(finding?.what).toBe("Seeding of Front, Side and Back (broadcast) is planned for Thursday, Jun 11, 2026, too soon after Barrier PE.");
  });

  test("of a method that nobody knows, one without an interval wants care", () => {
    const broadcastOnly = labelOf("Barrier PE", says("seeding-after", { intervals: [{ method: "broadcast", until: days(42) }] }));
    const found = (date: string) => seedingFindings([appliedOf(broadcastOnly)], [seeding(date, "planned", "unknown")], CHICAGO).map(({ level, rule }) => `${level} ${rule}`);
    expect(found("2026-06-11")).toEqual(["hold seeding-too-soon-after", "take-care seeding-interval-missing"]);
    expect(found("2026-06-12")).toEqual(["take-care seeding-interval-missing"]);
    const [finding] = seedingFindings([appliedOf(broadcastOnly)], [seeding("2026-06-12", "planned", "unknown")], CHICAGO);
    expect(finding?.what).toBe("Seeding is planned for Friday, Jun 12, 2026, and the label of Barrier PE states no interval for slit seed.");
  });

  test("a method without an interval says that it is missing", () => {
    const broadcastOnly = labelOf("Barrier PE", says("seeding-after", { intervals: [{ method: "broadcast", until: days(42) }] }));
    const [finding] = seedingFindings([appliedOf(broadcastOnly)], [seeding("2027-05-01", "planned", "slit")], CHICAGO);
    expect(finding).toMatchObject({ level: "hold", answerableBy: "nobody", rule: "seeding-interval-missing" });
  });
});

describe("work that begins or ends at midnight", () => {
  const label = labelOf("Barrier PE", { ...says("seeding-after", { intervals: [{ method: "any", until: days(1) }] }), ...says("seeding-before", { within: days(1) }) });
  const night = (from: string, until: string) => appliedOf(label, { application: { startsAtEpochMilliseconds: at(from), endsAtEpochMilliseconds: at(until), postedAtEpochMilliseconds: "not-posted" } });
  test("seed of the day that ends as the work begins was before it", () => {
    const work = [night("2026-05-02T00:00-05:00", "2026-05-02T01:00-05:00")];
    expect(rules([seeding("2026-05-01", "planned")], work)).toEqual(["too-soon-after-seeding"]);
    expect(rules([seeding("2026-05-02", "planned")], work)).toEqual(["seeding-too-soon-after", "too-soon-after-seeding"]);
    expect(rules([seeding("2026-04-30", "planned")], work)).toEqual([]);
  });
  test("seed of the day that begins as the work ends is after it", () => {
    const work = [night("2026-05-01T23:00-05:00", "2026-05-02T00:00-05:00")];
    expect(rules([seeding("2026-05-02", "planned")], work)).toEqual(["seeding-too-soon-after"]);
    expect(rules([seeding("2026-05-02", "done")], work)).toEqual([]);
    expect(rules([seeding("2026-05-03", "planned")], work)).toEqual([]);
  });
});

test("days of a label end at their hour, so that the day on which they do is not wholly free", () => {
  const label = labelOf("Barrier PE", says("seeding-after", { intervals: [{ method: "any", until: labelDays(42) }] }));
  expect(rules([seeding("2026-06-12", "planned")], [appliedOf(label)])).toEqual(["seeding-too-soon-after"]);
  expect(rules([seeding("2026-06-13", "planned")], [appliedOf(label)])).toEqual([]);
});

describe("mowings instead of a time", () => {
  const waiting = labelOf("Clovergone", {
    ...says("seeding-after", { intervals: [{ method: "any", until: mowings(2) }] }),
    ...says("seeding-before", { within: mowings(2) }),
  });
  const found = (seedings: readonly ZoneSeeding[], label = waiting) =>
    seedingFindings([appliedOf(label)], seedings, CHICAGO).map((finding) => `${finding.level} ${finding.rule}`);

  test("the lawn is closed to seed without a time, until it has been mowed so often", () => {
    expect(seedingMayNots([appliedOf(waiting)], CHICAGO)).toMatchObject([{ end: { atEpochMilliseconds: null, isEstimate: true, waitsFor: ["mowed twice"] } }]);
  });

  test.each([
    ["too soon for two mowings", seeding("2026-05-02", "planned"), ["hold seeding-too-soon-after"]],
    ["two mowings may have been", seeding("2026-05-03", "planned"), ["take-care seeding-waits-for-mowings"]],
    ["seed that is down is not asked again", seeding("2026-06-03", "done"), []],
  ])("seed after it: %s", (_name, one, expected) => expect(found([one])).toEqual(expected));

  test("a time and mowings are both kept", () => {
    const both = labelOf("Clovergone", says("seeding-after", { intervals: [{ method: "any", until: mowings(2) }, { method: "broadcast", until: labelDays(28) }] }));
    expect(found([seeding("2026-05-20", "planned")], both)).toEqual(["hold seeding-too-soon-after"]);
    expect(found([seeding("2026-06-20", "planned")], both)).toEqual(["take-care seeding-waits-for-mowings"]);
  });

  test.each([
    ["on the day before", seeding("2026-04-30", "done"), ["hold too-soon-after-seeding"]],
    ["two mowings may have been", seeding("2026-04-29", "done"), ["take-care new-seed-waits-for-mowings"]],
    ["within the year", seeding("2025-05-02", "done"), ["take-care new-seed-waits-for-mowings"]],
    ["a year ago", seeding("2025-05-01", "done"), []],
    ["after it", seeding("2026-05-02", "done"), []],
  ])("new seed before it: %s", (_name, one, expected) => expect(found([one])).toEqual(expected));

  test("says what to ask, and where the label says so", () => {
    expect(seedingFindings([appliedOf(waiting)], [seeding("2026-04-01", "done")], CHICAGO)).toMatchObject([
      {
        source: "label",
        what: "The lawn was seeded on Wednesday, Apr 1, 2026, and how often it has been mowed since is not on file.",
        figure: "Not on new seed until it has been mowed twice.",
        toDo: "Ask the customer, and leave Clovergone out if it has not been mowed twice.",
        citation: "label, directions for use",
        about: ["Clovergone"],
      },
    ]);
    expect(seedingFindings([appliedOf(waiting)], [seeding("2026-05-20", "planned")], CHICAGO)[0]?.what).toBe(
      "Seeding (broadcast) is planned for Wednesday, May 20, 2026, and the label of Clovergone wants the lawn mowed twice before it.",
    );
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

test("the lawns of a seeding are named where the visit has several, and one that was only planned is said to be", () => {
  const waiting = labelOf("Clovergone", says("seeding-before", { within: mowings(2) }));
  const whatOf = (one: ZoneSeeding, label = barrier) => seedingFindings([appliedOf(label)], [one], CHICAGO).map(({ what }) => what);
  const [front, both] = [{ lawnNames: ["Front"] }, { lawnNames: ["Front", "Side"] }];
  expect(whatOf({ ...seeding("2026-06-11", "planned", "slit"), ...front })).toEqual(["Seeding of Front (slit) is planned for Thursday, Jun 11, 2026, too soon after Barrier PE."]);
  expect(whatOf({ ...seeding("2026-03-02", "done"), ...both })).toEqual(["Barrier PE comes too soon after the seeding of Front and Side on Monday, Mar 2, 2026."]);
  expect(whatOf(seeding("2026-03-02", "planned"))).toEqual(["Barrier PE comes too soon after the planned seeding of Monday, Mar 2, 2026."]);
  expect(whatOf(seeding("2026-04-30", "done"), waiting)).toEqual(["Clovergone comes too soon after the seeding of Thursday, Apr 30, 2026."]);
  const notCounted = ", and how often it has been mowed since is not on file.";
  expect(whatOf({ ...seeding("2026-04-01", "done"), ...both }, waiting)).toEqual([`Front and Side were seeded on Wednesday, Apr 1, 2026${notCounted}`]);
  expect(whatOf({ ...seeding("2026-04-01", "planned"), ...front }, waiting)).toEqual([`Front was to be seeded on Wednesday, Apr 1, 2026${notCounted}`]);
});
