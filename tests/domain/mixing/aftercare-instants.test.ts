import { describe, expect, test } from "vitest";
import {
  type ApplicationTimes,
  DEFAULT_AFTERCARE_ESTIMATES,
  dueBy,
  endAt,
  endOf,
  endOnState,
  latestEnd,
  notBefore,
  reachesBackTo,
  startOfDateMonthsAfter,
} from "#domain/mixing/aftercare-instants";
import { day } from "../../support/domain-answers";
import { at, CHICAGO, END, HOUR, hoursAfterEnd, START, untilState } from "../../support/aftercare-builders";

const unposted: ApplicationTimes = { startsAtEpochMilliseconds: START, endsAtEpochMilliseconds: END, postedAtEpochMilliseconds: "not-posted" };
const posted = { ...unposted, postedAtEpochMilliseconds: START - HOUR };
const days = (count: number) => ({ anchor: "calendar-day", days: count }) as const;
const labelDays = (count: number, from: "application-start" | "application-end" | "posting" | "not-said" = "not-said") => ({ anchor: "days", from, days: count }) as const;
const elapsed = (anchor: "application-start" | "application-end" | "posting", hours: number) => ({ anchor, durationMinutes: hours * 60 }) as const;
const instantOf = (end: { readonly atEpochMilliseconds: number | null }) => end.atEpochMilliseconds;
/** Ended at 11:30 pm of the night in which clocks change. */
const nightOf = (text: string): ApplicationTimes => ({ ...unposted, startsAtEpochMilliseconds: at(text) - HOUR, endsAtEpochMilliseconds: at(text) });

describe("each reach from its own anchor", () => {
  test.each([
    ["start", elapsed("application-start", 4), START + 4 * HOUR],
    ["end", elapsed("application-end", 4), END + 4 * HOUR],
    ["posting", elapsed("posting", 4), START + 3 * HOUR],
    ["the day following begins at midnight", days(1), at("2026-05-02T00:00-05:00")],
    ["months", { anchor: "calendar-month", months: 4 } as const, at("2026-09-01T00:00-05:00")],
  ])("%s", (_name, reach, expected) => expect(instantOf(notBefore(reach, posted, CHICAGO))).toBe(expected));

  test("a sign that does not stand yet is counted from the end, as an estimate", () => {
    expect(notBefore(elapsed("posting", 4), unposted, CHICAGO)).toEqual(endAt(END + 4 * HOUR, true));
    expect(dueBy(elapsed("posting", 4), unposted, CHICAGO)).toBe(START + 4 * HOUR);
  });

  test("a day that is due is due by its end, and work over midnight counts from the day that is safe", () => {
    expect(dueBy(days(1), unposted, CHICAGO)).toBe(at("2026-05-03T00:00-05:00"));
    const overMidnight = { ...unposted, startsAtEpochMilliseconds: at("2026-05-01T23:30-05:00"), endsAtEpochMilliseconds: at("2026-05-02T00:30-05:00") };
    expect(dueBy(days(0), overMidnight, CHICAGO)).toBe(at("2026-05-02T00:00-05:00"));
    expect(instantOf(notBefore(days(1), overMidnight, CHICAGO))).toBe(at("2026-05-03T00:00-05:00"));
  });
});

describe("the nights in which clocks change", () => {
  test.each([
    ["March: 12 h end an hour later on the clock", "2026-03-07T20:00-06:00", elapsed("application-end", 12), "2026-03-08T09:00-05:00"],
    ["November: 12 h end an hour earlier on the clock", "2026-10-31T20:00-05:00", elapsed("application-end", 12), "2026-11-01T07:00-06:00"],
    ["March: 24 h are not the same time of the day following", "2026-03-07T16:00-06:00", elapsed("application-end", 24), "2026-03-08T17:00-05:00"],
    ["March: two days following are 47 h long", "2026-03-07T23:30-06:00", days(2), "2026-03-09T00:00-05:00"],
    ["November: two days following are 49 h long", "2026-10-31T23:30-05:00", days(2), "2026-11-02T00:00-06:00"],
  ])("%s", (_name, ended, reach, expected) => expect(instantOf(notBefore(reach, nightOf(ended), CHICAGO))).toBe(at(expected)));
});

describe("days on a label, read both ways", () => {
  const lasting = (from: string, until: string): ApplicationTimes => ({ ...unposted, startsAtEpochMilliseconds: at(from), endsAtEpochMilliseconds: at(until) });
  const friday = lasting("2026-05-01T08:00-05:00", "2026-05-01T23:00-05:00");

  test.each([
    ["1 day is not over at the midnight an hour later", labelDays(1), "2026-05-02T23:00-05:00"],
    ["counted from the start where the label says so", labelDays(2, "application-start"), "2026-05-03T08:00-05:00"],
    ["counted from the end where the label says so", labelDays(1, "application-end"), "2026-05-02T23:00-05:00"],
  ])("%s", (_name, reach, expected) => expect(notBefore(reach, friday, CHICAGO)).toEqual(endAt(at(expected))));

  test.each([
    ["within 1 day is not due as late as the end of that day", labelDays(1), "2026-05-02T08:00-05:00"],
    ["counted from the end where the label says so", labelDays(1, "application-end"), "2026-05-02T23:00-05:00"],
    ["counted from the start where the label says so", labelDays(2, "application-start"), "2026-05-03T08:00-05:00"],
  ])("%s", (_name, reach, expected) => expect(dueBy(reach, friday, CHICAGO)).toBe(at(expected)));

  test("where a skipped hour turns the start and the end round, the end counts for what is due", () => {
    const early = lasting("2026-03-07T02:04-06:00", "2026-03-07T03:00-06:00");
    expect(dueBy(labelDays(1), early, CHICAGO)).toBe(at("2026-03-08T03:00-05:00"));
    expect(dueBy(labelDays(1, "application-start"), early, CHICAGO)).toBe(at("2026-03-08T03:04-05:00"));
  });

  test("where an hour that comes twice turns them round, the start counts for what must not be", () => {
    const twice = lasting("2026-11-01T01:59-05:00", "2026-11-01T01:10-06:00");
    expect(instantOf(notBefore(labelDays(1), twice, CHICAGO))).toBe(at("2026-11-02T01:59-06:00"));
    expect(instantOf(notBefore(labelDays(1, "application-end"), twice, CHICAGO))).toBe(at("2026-11-02T01:10-06:00"));
  });

  test("from posting, or what stands in for it before the sign is up", () => {
    expect(notBefore(labelDays(1, "posting"), posted, CHICAGO)).toMatchObject({ atEpochMilliseconds: START + 23 * HOUR, isEstimate: false });
    expect(notBefore(labelDays(1, "posting"), unposted, CHICAGO)).toMatchObject({ atEpochMilliseconds: END + 24 * HOUR, isEstimate: true });
    expect(dueBy(labelDays(1, "posting"), posted, CHICAGO)).toBe(START + 23 * HOUR);
    expect(dueBy(labelDays(1, "posting"), unposted, CHICAGO)).toBe(START + 24 * HOUR);
  });

  // In March the night has 23 h, in November 25.
  test.each([
    ["March", "2026-03-07T16:00-06:00", "2026-03-08T17:00-05:00", "2026-03-08T16:00-05:00"],
    ["March, 24 h past the end of the shorter day", "2026-03-07T23:30-06:00", "2026-03-09T00:30-05:00", "2026-03-08T23:30-05:00"],
    ["March, the hour that clocks skip", "2026-03-07T02:30-06:00", "2026-03-08T03:30-05:00", "2026-03-08T03:30-05:00"],
    ["November, the hour that comes twice", "2026-10-31T01:30-05:00", "2026-11-01T01:30-06:00", "2026-11-01T01:30-05:00"],
    ["November, just before that hour", "2026-10-31T00:30-05:00", "2026-11-01T00:30-05:00", "2026-11-01T00:30-05:00"],
    ["November", "2026-10-31T16:00-05:00", "2026-11-01T16:00-06:00", "2026-11-01T15:00-06:00"],
  ])("the later of both for what must not be, the earlier for what is due: %s", (_name, moment, later, earlier) => {
    const work = lasting(moment, moment);
    expect(instantOf(notBefore(labelDays(1), work, CHICAGO))).toBe(at(later));
    expect(dueBy(labelDays(1), work, CHICAGO)).toBe(at(earlier));
  });

  test.each([
    ["to the first instant of that day", "2026-05-01T15:00-05:00", 2, "2026-04-29T00:00-05:00"],
    ["24 h where they reach back farther", "2026-03-09T00:30-05:00", 1, "2026-03-07T23:30-06:00"],
    ["the first instant in November too", "2026-11-02T00:30-06:00", 1, "2026-11-01T00:00-05:00"],
  ])("back %s", (_name, moment, count, expected) => {
    expect(reachesBackTo({ anchor: "days", from: "application-start", days: count }, lasting(moment, moment), CHICAGO)).toBe(at(expected));
  });
});

test("at once is within the hour after the work", () => {
  expect(dueBy({ anchor: "at-once" }, posted, CHICAGO)).toBe(END + HOUR);
});

test("months end on the same day, or on the first of the next month where there is none", () => {
  expect(startOfDateMonthsAfter(day("2026-01-31"), 1, CHICAGO)).toBe(at("2026-03-01T00:00-06:00"));
  expect(startOfDateMonthsAfter(day("2026-10-15"), 3, CHICAGO)).toBe(at("2027-01-15T00:00-06:00"));
  expect(startOfDateMonthsAfter(day("2026-12-31"), 2, CHICAGO)).toBe(at("2027-03-01T00:00-06:00"));
});

test("back from the start, by hours or to the beginning of a day", () => {
  expect(reachesBackTo(elapsed48, unposted, CHICAGO)).toBe(START - 48 * HOUR);
  expect(reachesBackTo(days(2), unposted, CHICAGO)).toBe(at("2026-04-29T00:00-05:00"));
});
const elapsed48 = { anchor: "application-start", durationMinutes: 48 * 60 } as const;

describe("the later of a label's conditions", () => {
  const context = { timeZone: CHICAGO, estimates: DEFAULT_AFTERCARE_ESTIMATES, wateredInAtEpochMilliseconds: END + 20 * HOUR };
  test.each([
    ["dry", [untilState("dry")], END + 2 * HOUR, true],
    ["dust", [untilState("dust-settled")], END + HOUR / 2, true],
    ["watered in", [untilState("watered-in")], END + 20 * HOUR, true],
    ["watered in and dry", [untilState("watered-in-and-dry")], END + 22 * HOUR, true],
    ["hours", [hoursAfterEnd(24)], END + 24 * HOUR, false],
    ["dry or four hours: hours are later, and are no estimate", [untilState("dry"), hoursAfterEnd(4)], END + 4 * HOUR, false],
    ["dry or two hours: as late as the estimate, and none", [untilState("dry"), hoursAfterEnd(2)], END + 2 * HOUR, false],
  ])("%s", (_name, untils, expected, isEstimate) => {
    expect(endOf(untils, unposted, context)).toMatchObject({ atEpochMilliseconds: expected, isEstimate });
  });
  test("without an estimate, or a time for watering, there is no time, only what is waited for", () => {
    const blind = { ...context, estimates: { ...DEFAULT_AFTERCARE_ESTIMATES, untilDry: "unknown" as const }, wateredInAtEpochMilliseconds: null };
    expect(endOf([untilState("dry"), hoursAfterEnd(4)], unposted, blind)).toEqual({ ...endOnState("dry"), notBeforeEpochMilliseconds: END + 4 * HOUR });
    expect(instantOf(endOf([untilState("watered-in-and-dry")], unposted, blind))).toBeNull();
  });
  test("the latest stated time stands beside what is estimated or can't be given", () => {
    expect(endOf([hoursAfterEnd(1), untilState("dry"), hoursAfterEnd(0.5)], unposted, context)).toEqual({ ...endOnState("dry", END + 2 * HOUR), notBeforeEpochMilliseconds: END + HOUR });
    expect(endOf([untilState("dry"), hoursAfterEnd(4)], unposted, context)).toEqual({ ...endAt(END + 4 * HOUR), waitsFor: ["dry"] });
    expect(endOf([untilState("dry")], unposted, context).notBeforeEpochMilliseconds).toBeNull();
  });
  test("what is waited for is named once", () => {
    const dry = endOf([untilState("dry")], unposted, context);
    expect(latestEnd([dry, dry]).waitsFor).toEqual(["dry"]);
  });
  test("the estimates to begin with say that they are common practice", () => {
    for (const estimate of Object.values(DEFAULT_AFTERCARE_ESTIMATES)) expect(estimate).toMatchObject({ basis: "common-practice" });
  });
});
