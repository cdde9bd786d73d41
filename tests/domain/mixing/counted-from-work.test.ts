import { describe, expect, test } from "vitest";
import { type DueReach, type LabelAftercare } from "#domain/label/aftercare-constraint";
import { type AftercareReason } from "#domain/mixing/aftercare-step";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { dueReasons, keepOffReasons, statedTimes } from "#domain/mixing/counted-from-work";
import { appliedOf, CHICAGO, END, HOUR, hoursAfterEnd, labelOf, says, START, untilState } from "../../support/aftercare-builders";

type Kind = AftercareReason["kind"];
const reasonOf = (kind: Kind, more: Partial<AftercareReason> = {}): AftercareReason => ({ productName: "Evenfeed 18", kind, labelWords: `words on ${kind}`, basis: "label", source: "label, directions for use", ...more });
const of = (facts: Partial<LabelAftercare["facts"]>, more: Partial<AppliedProduct> = {}) => appliedOf(labelOf("Evenfeed 18", facts), more);
const off = (untilLaterOf: Parameters<typeof says<"people-and-pets">>[1]["untilLaterOf"]) => of(says("people-and-pets", { untilLaterOf }));

/** The times behind one reason: what each counts from and its words, or that the calendar sets it, and how many hours after the work it is. */
function times(kind: Kind, ...products: readonly AppliedProduct[]) {
  return statedTimes([reasonOf(kind)], products, CHICAGO).map(({ counted, atEpochMilliseconds: at }) => [counted === null ? "calendar" : `${counted.from}: ${counted.words}`, (at - END) / HOUR]);
}

test("hours and days say how long after which end of the work", () => {
  expect(times("people-and-pets", off([hoursAfterEnd(4)]))).toEqual([["application-end: 4 hours after the work ends", 4]]);
  expect(times("people-and-pets", off([{ anchor: "application-start", durationMinutes: 90 }]))).toEqual([["application-start: 90 minutes after the work starts", 0.5]]);
  expect(times("mowing-after", of(says("mowing-after", { untilLaterOf: [{ anchor: "days", from: "not-said", days: 2 }] })))).toEqual([["application-end: 2 full days (48 hours) after the work ends", 48]]);
  expect(times("mowing-after", of(says("mowing-after", { untilLaterOf: [{ anchor: "days", from: "application-start", days: 2 }] })))).toEqual([["application-start: 2 full days (48 hours) after the work starts", 47]]);
  expect(times("watering-not-before", of(says("watering-not-before", { untilLaterOf: [hoursAfterEnd(1)] })))).toEqual([["application-end: 1 hour after the work ends", 1]]);
  expect(times("rain-that-spoils", of(says("rain-that-spoils", { within: hoursAfterEnd(6), from: "any" })))).toEqual([["application-end: 6 hours after the work ends", 6]]);
});

test("a date of the calendar does not move with the hour of the work, and a state of the lawn is no time", () => {
  expect(times("people-and-pets", off([{ anchor: "calendar-day", days: 1 }]))).toEqual([["calendar", 8]]);
  expect(times("people-and-pets", off([untilState("dry")]))).toEqual([]);
  const seeding = says("seeding-after", { intervals: [{ method: "any", until: { anchor: "calendar-month", months: 4 } }, { method: "broadcast", until: { anchor: "mowings", count: 2 } }] });
  expect(times("seeding-after", of(seeding)).map(([words]) => words)).toEqual(["calendar"]);
});

test("every time of a statement is named, not only the longest", () => {
  expect(times("people-and-pets", off([hoursAfterEnd(12), { anchor: "calendar-day", days: 1 }, untilState("dry")]))).toEqual([["application-end: 12 hours after the work ends", 12], ["calendar", 8]]);
});

test("what is due says within which time, and days that do not say from when count from the start", () => {
  const due = (by: DueReach) => of(says("watering-in", { by, depth: "not-stated", rain: "not-stated" }));
  expect(times("watering-in", due(hoursAfterEnd(24)))).toEqual([["application-end: 24 hours after the work ends", 24]]);
  expect(times("watering-in", due({ anchor: "days", from: "not-said", days: 2 }))).toEqual([["application-start: 2 full days (48 hours) after the work starts", 47]]);
  expect(times("watering-in", due({ anchor: "days", from: "application-end", days: 1 }))).toEqual([["application-end: 1 full day (24 hours) after the work ends", 24]]);
  expect(times("watering-in", due({ anchor: "at-once" }))).toEqual([["application-end: 1 hour after the work ends", 1]]);
  expect(times("watering-in", due({ anchor: "calendar-day", days: 1 }))).toEqual([["calendar", 32]]);
  expect(times("watering-in", of(says("watering-in", { by: "not-stated", depth: "not-stated", rain: "not-stated" })))).toEqual([]);
});

describe("signs", () => {
  type Down = Parameters<typeof says<"posting-sign">>[1]["mayComeDown"];
  const sign = (mayComeDown: Down, upBy: "at-start" | "immediately-following" = "at-start", facts: Partial<LabelAftercare["facts"]> = {}, posted: number | "not-posted" = "not-posted") =>
    times("posting-sign", of({ ...says("posting-sign", { upBy, mayComeDown }), ...facts }, { application: { startsAtEpochMilliseconds: START, endsAtEpochMilliseconds: END, postedAtEpochMilliseconds: posted } }));
  const elapsed = (anchor: "application-end" | "posting", orReentryIfLater = false): Down => ({ trigger: "elapsed", anchor, durationMinutes: 1440, orReentryIfLater });
  test("stand from the work, or from when they are up", () => {
    expect(sign(elapsed("application-end"))).toEqual([["application-end: 24 hours after the work ends", 24]]);
    expect(sign(elapsed("posting"))).toEqual([["posting: 24 hours after the sign is up", 23]]);
    expect(sign(elapsed("posting"), "immediately-following")).toEqual([["posting: 24 hours after the sign is up", 24]]);
    expect(sign(elapsed("posting"), "at-start", {}, END + HOUR)).toEqual([["posting: 24 hours after the sign is up", 25]]);
    expect(sign({ trigger: "days-after-completion", daysAfter: 1, orReentryIfLater: false })).toEqual([["application-end: 1 full day (24 hours) after the work ends", 24]]);
  });
  test("until the day following, which is of the calendar, or until something that is no such time", () => {
    expect(sign({ trigger: "day-following", daysFollowing: 1, orReentryIfLater: false })).toEqual([["calendar", 8]]);
    expect(sign({ trigger: "sunset-of-day-following", daysFollowing: 1, orReentryIfLater: false })).toEqual([]);
    expect(sign({ trigger: "state", state: "dry", orReentryIfLater: false })).toEqual([]);
    expect(sign({ trigger: "no-time-required" })).toEqual([]);
  });
  test("until people may come back too, where that is later", () => {
    const people = says("people-and-pets", { untilLaterOf: [hoursAfterEnd(48)] });
    expect(sign(elapsed("application-end", true), "at-start", people).map(([words]) => words)).toEqual(["application-end: 24 hours after the work ends", "application-end: 48 hours after the work ends"]);
    expect(sign({ trigger: "state", state: "dry", orReentryIfLater: true }, "at-start", people)).toEqual([["application-end: 48 hours after the work ends", 48]]);
    expect(sign({ trigger: "state", state: "dry", orReentryIfLater: true })).toEqual([]);
    expect(sign(elapsed("application-end"), "at-start", people)).toHaveLength(1);
  });
});

describe("a time is that of the very statement that a reason gives", () => {
  const FOUR = says("people-and-pets", { untilLaterOf: [hoursAfterEnd(4)] });
  const by = (more: Partial<AftercareReason>, ...products: readonly AppliedProduct[]) => statedTimes([reasonOf("people-and-pets", more)], products, CHICAGO).length;
  test("in its words, from its source, of its product", () => {
    expect(by({}, of(FOUR))).toBe(1);
    expect(by({ labelWords: "other words" }, of(FOUR))).toBe(0);
    expect(by({ source: "a law" }, of(FOUR))).toBe(0);
    expect(by({}, appliedOf(labelOf("Ferrox Foliar", FOUR)))).toBe(0);
  });
  test("put down in this visit: the same product of other work ended at another time", () => {
    const crossing = of(FOUR, { appliedIn: "earlier-visit" });
    expect(by({}, of(FOUR), crossing)).toBe(1);
    expect(by({}, crossing)).toBe(0);
  });
});

test("what was minded as the product went down is no time of aftercare", () => {
  const all = of({ ...says("leaf-at-application", { state: "dry" }), ...says("soil-at-application", { state: "moist" }), ...says("mowing-before", { within: { anchor: "calendar-day", days: 1 } }), ...says("seeding-before", { within: { anchor: "calendar-day", days: 1 } }) });
  for (const kind of ["leaf-at-application", "soil-at-application", "mowing-before", "seeding-before"] as const) expect(times(kind, all)).toEqual([]);
});

test("of a watering's reasons some keep it off, some ask for it", () => {
  const reasons = (["rain-that-spoils", "watering-in", "watering-not-before", "people-and-pets"] as const).map((kind) => reasonOf(kind));
  expect(keepOffReasons(reasons).map(({ kind }) => kind)).toEqual(["rain-that-spoils", "watering-not-before"]);
  expect(dueReasons(reasons).map(({ kind }) => kind)).toEqual(["watering-in"]);
});
