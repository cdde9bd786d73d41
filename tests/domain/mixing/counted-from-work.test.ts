import { describe, expect, test } from "vitest";
import { type DueReach, type LabelAftercare } from "#domain/label/aftercare-constraint";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { type AftercareStep } from "#domain/mixing/aftercare-step";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { beginningCountedFromWork, countedFromWork } from "#domain/mixing/counted-from-work";
import { aftercareQuestion, appliedOf, CHICAGO, earlierOf, END, HOUR, hoursAfterEnd, labelOf, says, START, untilState } from "../../support/aftercare-builders";
import { valueOf } from "../../support/domain-answers";

/** What the ends of a row's steps are counted from. */
function counted(row: AftercareStep["row"], ...products: readonly AppliedProduct[]) {
  const { steps } = valueOf(aftercareTimeline(aftercareQuestion(products)));
  return steps.filter((step) => step.row === row && !step.words.startsWith("Put the sign up")).map((step) => countedFromWork(step, products, CHICAGO));
}

const of = (facts: Partial<LabelAftercare["facts"]>) => appliedOf(labelOf("Evenfeed 18", facts));
const off = (untilLaterOf: Parameters<typeof says<"people-and-pets">>[1]["untilLaterOf"]) => of(says("people-and-pets", { untilLaterOf }));

test("hours and days say how long after which end of the work", () => {
  expect(counted("people-and-pets", off([hoursAfterEnd(4)]))).toEqual(["4 hours after the work ends"]);
  expect(counted("people-and-pets", off([{ anchor: "application-start", durationMinutes: 90 }]))).toEqual(["90 minutes after the work starts"]);
  expect(counted("mowing", of(says("mowing-after", { untilLaterOf: [{ anchor: "days", from: "not-said", days: 2 }] })))).toEqual(["2 full days (48 hours) after the work ends"]);
  expect(counted("watering", of(says("watering-not-before", { untilLaterOf: [hoursAfterEnd(1)] })))).toEqual(["1 hour after the work ends"]);
});

test("a date of the calendar and a state of the lawn are not counted from the work's hour", () => {
  expect(counted("people-and-pets", off([{ anchor: "calendar-day", days: 1 }]))).toEqual([null]);
  expect(counted("people-and-pets", off([untilState("dry")]))).toEqual([null]);
  expect(counted("people-and-pets", off([untilState("watered-in")]))).toEqual([null]);
  expect(counted("seeding", of(says("seeding-after", { intervals: [{ method: "any", until: { anchor: "calendar-month", months: 4 } }] })))).toEqual([null]);
});

test("of several that overlap the one that ends last is meant", () => {
  const short = appliedOf(labelOf("Ferrox Foliar", says("people-and-pets", { untilLaterOf: [hoursAfterEnd(2)] })));
  expect(counted("people-and-pets", short, off([hoursAfterEnd(6)]))).toEqual(["6 hours after the work ends"]);
  expect(counted("people-and-pets", short, off([untilState("dust-settled"), { anchor: "calendar-day", days: 2 }]))).toEqual([null]);
});

test("what an earlier visit put down does not move with this one", () => {
  const earlier = earlierOf(labelOf("Slowdry", says("people-and-pets", { untilLaterOf: [hoursAfterEnd(48)] })), START - 3_600_000);
  expect(counted("people-and-pets", earlier, off([hoursAfterEnd(4)]))).toEqual([null]);
});

test("what is due says within which time, and days that do not say from when count from the start", () => {
  const due = (by: DueReach) => of(says("watering-in", { by, depth: "not-stated", rain: "not-stated" }));
  expect(counted("watering", due(hoursAfterEnd(24)))).toEqual(["24 hours after the work ends"]);
  expect(counted("watering", due({ anchor: "days", from: "not-said", days: 2 }))).toEqual(["2 full days (48 hours) after the work starts"]);
  expect(counted("watering", of(says("watering-in", { by: "not-stated", depth: "not-stated", rain: "not-stated" })))).toEqual([null]);
  expect(counted("watering", due({ anchor: "calendar-day", days: 1 }))).toEqual([null]);
  expect(counted("watering", due({ anchor: "at-once" }))).toEqual(["1 hour after the work ends"]);
});

test("rain that would spoil keeps water off for as long, and signs stand from the work or from their own posting", () => {
  const rain = of({ ...says("rain-that-spoils", { within: hoursAfterEnd(6), from: "any" }), ...says("watering-in", { by: hoursAfterEnd(24), depth: "not-stated", rain: "not-stated" }) });
  expect(counted("watering", rain)[0]).toBe("6 hours after the work ends");
  const sign = (mayComeDown: Parameters<typeof says<"posting-sign">>[1]["mayComeDown"]) => of(says("posting-sign", { upBy: "at-start", mayComeDown }));
  expect(counted("sign", sign({ trigger: "elapsed", anchor: "application-end", durationMinutes: 1440, orReentryIfLater: false }))).toEqual(["24 hours after the work ends"]);
  expect(counted("sign", sign({ trigger: "elapsed", anchor: "posting", durationMinutes: 1440, orReentryIfLater: false }))).toEqual(["24 hours after the sign is up"]);
  expect(counted("sign", sign({ trigger: "days-after-completion", daysAfter: 1, orReentryIfLater: false }))).toEqual(["1 full day (24 hours) after the work ends"]);
  expect(counted("sign", sign({ trigger: "day-following", daysFollowing: 1, orReentryIfLater: false }))).toEqual([null]);
});

describe("an end is counted by the very statement that it comes from", () => {
  const FOUR = says("people-and-pets", { untilLaterOf: [hoursAfterEnd(4)] });
  const reason = { productName: "Evenfeed 18", kind: "people-and-pets", labelWords: "words on people-and-pets", basis: "label", source: "label, directions for use" } as const;
  const by = (more: Partial<typeof reason> | { readonly labelWords: string } | { readonly source: string }, products: readonly AppliedProduct[], end: number | null = END + 4 * HOUR) =>
    countedFromWork({ endsAtEpochMilliseconds: end, reasons: [{ ...reason, ...more }] }, products, CHICAGO);
  test("in its words, from its source", () => {
    expect(by({}, [of(FOUR)])).toBe("4 hours after the work ends");
    expect(by({ labelWords: "other words" }, [of(FOUR)])).toBeNull();
    expect(by({ source: "a law" }, [of(FOUR)])).toBeNull();
  });
  test("of its product, put down in this visit", () => {
    const calendar = off([{ anchor: "calendar-day", days: 1 }]);
    expect(by({}, [calendar, appliedOf(labelOf("Ferrox Foliar", FOUR))])).toBeNull();
    // The same product of other work that ended an hour later, which waits four hours from then.
    const crossing = appliedOf(labelOf("Evenfeed 18", FOUR), { appliedIn: "earlier-visit", application: { startsAtEpochMilliseconds: START, endsAtEpochMilliseconds: END + HOUR, postedAtEpochMilliseconds: "not-posted" } });
    expect(by({}, [of(FOUR), crossing], END + 5 * HOUR)).toBeNull();
  });
  test("and none where none can be given", () => {
    const fromPosting = off([{ anchor: "posting", durationMinutes: 60 }]);
    const notPosted = { ...fromPosting, application: { ...fromPosting.application, postedAtEpochMilliseconds: "not-posted" as const } };
    expect(by({}, [notPosted], null)).toBeNull();
  });
  test("days from the end of the work are that also where they are due", () => {
    const due = (from: "application-start" | "application-end") => {
      const by: DueReach = { anchor: "days", from, days: 1 };
      return of(says("watering-in", { by, depth: "not-stated", rain: "not-stated" }));
    };
    expect(counted("watering", due("application-end"))).toEqual(["1 full day (24 hours) after the work ends"]);
    expect(counted("watering", due("application-start"))).toEqual(["1 full day (24 hours) after the work starts"]);
  });
});

describe("what a beginning is counted from", () => {
  const FEED_IN_A_DAY = says("watering-in", { by: hoursAfterEnd(24), depth: "not-stated", rain: "not-stated" });
  /** The beginning of the watering: its words, and how many hours after the work it is as planned. */
  function begins(...products: readonly AppliedProduct[]) {
    const watered = [...products, appliedOf(labelOf("Harrowgate 32", FEED_IN_A_DAY))];
    const { steps } = valueOf(aftercareTimeline(aftercareQuestion(watered)));
    const found = steps.filter(({ row, kind }) => row === "watering" && kind === "must").map((step) => beginningCountedFromWork(step, watered, CHICAGO));
    return found.map((one) => (one === null ? null : [one.words, (one.atEpochMilliseconds - END) / HOUR]));
  }
  const dry = (untilLaterOf: Parameters<typeof says<"watering-not-before">>[1]["untilLaterOf"]) => of(says("watering-not-before", { untilLaterOf }));
  test("the latest time of a label before which the lawn is not watered", () => {
    expect(begins(dry([hoursAfterEnd(12)]))).toEqual([["12 hours after the work ends", 12]]);
    const short = appliedOf(labelOf("Ferrox Foliar", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(6)] })));
    expect(begins(short, dry([hoursAfterEnd(12)]))).toEqual([["12 hours after the work ends", 12]]);
  });
  test("rain that would spoil, where water is as much", () => {
    expect(begins(of(says("rain-that-spoils", { within: hoursAfterEnd(6), from: "any" })))).toEqual([["6 hours after the work ends", 6]]);
  });
  test("a stated time beside a later state of the lawn", () => {
    expect(begins(dry([hoursAfterEnd(1), untilState("dry")]))).toEqual([["1 hour after the work ends", 1]]);
  });
  test("nothing where the calendar or a state alone sets it, where it is over with the work, or where an earlier visit sets it", () => {
    expect(begins(dry([{ anchor: "calendar-day", days: 1 }]))).toEqual([null]);
    expect(begins(dry([untilState("dry")]))).toEqual([null]);
    expect(begins(dry([{ anchor: "application-start", durationMinutes: 60 }]))).toEqual([null]);
    expect(begins(earlierOf(labelOf("Slowdry", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(12)] })), START - HOUR))).toEqual([null]);
    expect(begins()).toEqual([null]);
  });
  test("told of reasons in any order, and of none that ends after it, is of something else, or of other work", () => {
    const reasonOf = (productName: string, kind: "watering-not-before" | "watering-in" = "watering-not-before") => ({ productName, kind, labelWords: `words on ${kind}`, basis: "label", source: "label, directions for use" }) as const;
    const wait = (productName: string, hours: number, more: Partial<AppliedProduct> = {}) => appliedOf(labelOf(productName, says("watering-not-before", { untilLaterOf: [hoursAfterEnd(hours)] })), more);
    const told = (hours: number, products: readonly AppliedProduct[], ...reasons: readonly ReturnType<typeof reasonOf>[]) => beginningCountedFromWork({ startsAtEpochMilliseconds: END + hours * HOUR, reasons }, products, CHICAGO)?.words ?? null;
    const [short, long] = [wait("Short", 6), wait("Long", 12)];
    for (const reasons of [[reasonOf("Short"), reasonOf("Long")], [reasonOf("Long"), reasonOf("Short")]]) {
      expect(told(12, [short, long], ...reasons)).toBe("12 hours after the work ends");
      expect(told(8, [short, long], ...reasons)).toBe("6 hours after the work ends");
      expect(told(5, [short, long], ...reasons)).toBeNull();
    }
    expect(told(12, [appliedOf(labelOf("Calendar", says("watering-not-before", { untilLaterOf: [{ anchor: "calendar-day", days: 0 }] }))), short], reasonOf("Calendar"))).toBeNull();
    expect(told(30, [appliedOf(labelOf("Harrowgate 32", FEED_IN_A_DAY))], reasonOf("Harrowgate 32", "watering-in"))).toBeNull();
    expect(told(12, [wait("Short", 6, { appliedIn: "earlier-visit" })], reasonOf("Short"))).toBeNull();
    expect(told(12, [wait("None", 0)], reasonOf("None"))).toBeNull();
  });
});
