import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clockSpans, datesIn, dayIn, refuseImpossiblePeriods, weekdayOf } from "#domain/mixing/clock-periods";
import { localTimeAt } from "#domain/weather/local-hours";
import { day } from "../../support/domain-answers";
import { at, CHICAGO } from "../../support/aftercare-builders";

const period = (weekday: number, fromMinuteOfDay: number, untilMinuteOfDay: number) => ({ weekday, fromMinuteOfDay, untilMinuteOfDay });
const SUNDAY = 0;
const iso = (spans: ReturnType<typeof clockSpans>) =>
  spans.map(({ fromEpochMilliseconds, untilEpochMilliseconds }) =>
    [fromEpochMilliseconds, untilEpochMilliseconds].map((instant) => new Date(instant).toISOString().slice(0, 16)).join(" "),
  );

describe("hours of the clock as instants", () => {
  const spring = dayIn(day("2026-03-08"), CHICAGO);
  const fall = dayIn(day("2026-11-01"), CHICAGO);
  test.each([
    ["an ordinary morning", period(SUNDAY, 300, 540), dayIn(day("2026-05-03"), CHICAGO), ["2026-05-03T10:00 2026-05-03T14:00"]],
    ["spring: over the hour that is skipped", period(SUNDAY, 60, 240), spring, ["2026-03-08T07:00 2026-03-08T09:00"]],
    ["spring: inside it there is nothing", period(SUNDAY, 125, 170), spring, []],
    ["spring: from within it", period(SUNDAY, 150, 240), spring, ["2026-03-08T08:00 2026-03-08T09:00"]],
    ["spring: until within it, not an hour longer", period(SUNDAY, 0, 150), spring, ["2026-03-08T06:00 2026-03-08T08:00"]],
    ["fall: what comes twice is in twice", period(SUNDAY, 60, 90), fall, ["2026-11-01T06:00 2026-11-01T06:30", "2026-11-01T07:00 2026-11-01T07:30"]],
    ["fall: over it, in one piece", period(SUNDAY, 0, 180), fall, ["2026-11-01T05:00 2026-11-01T09:00"]],
    ["another weekday", period(1, 0, 1440), fall, []],
  ])("%s", (_name, one, within, expected) => expect(iso(clockSpans([one], within, CHICAGO))).toEqual(expected));

  test("odd and even dates go by the date there, and two odd ones follow each other after a 31st", () => {
    const within = { fromEpochMilliseconds: at("2026-05-29T00:00-05:00"), untilEpochMilliseconds: at("2026-06-03T00:00-05:00") };
    const datesOf = (datesOfMonth: "odd" | "even") => clockSpans([{ datesOfMonth, fromMinuteOfDay: 1200, untilMinuteOfDay: 1320 }], within, CHICAGO).map((span) => localTimeAt(span.fromEpochMilliseconds, CHICAGO).date);
    expect(datesOf("odd")).toEqual(["2026-05-29", "2026-05-31", "2026-06-01"]);
    expect(datesOf("even")).toEqual(["2026-05-30", "2026-06-02"]);
  });

  test("hours over midnight are two periods and come out as one span", () => {
    const within = { fromEpochMilliseconds: at("2026-05-02T12:00-05:00"), untilEpochMilliseconds: at("2026-05-03T12:00-05:00") };
    const periods = [period(6, 1320, 1440), period(SUNDAY, 0, 360)];
    expect(iso(clockSpans(periods, within, CHICAGO))).toEqual(["2026-05-03T03:00 2026-05-03T11:00"]);
  });

  test("an instant is in when and only when the clock there shows a time of the period", () => {
    const zones = fc.constantFrom(CHICAGO, "Australia/Lord_Howe", "America/Santiago", "Asia/Kolkata");
    const minutes = fc.integer({ min: 0, max: 1440 });
    fc.assert(
      fc.property(fc.constantFrom("2026-03-07", "2026-04-04", "2026-09-05", "2026-10-03", "2026-10-31"), zones, minutes, minutes, fc.integer({ min: 0, max: 2 * 1440 }), (date, timeZone, one, other, after) => {
        const { fromEpochMilliseconds } = dayIn(day(date), timeZone);
        const within = { fromEpochMilliseconds, untilEpochMilliseconds: fromEpochMilliseconds + 2 * 86_400_000 };
        const [from, until] = [Math.min(one, other), Math.max(one, other) + 1];
        const spans = clockSpans([period(SUNDAY, from, until)], within, timeZone);
        const instant = fromEpochMilliseconds + after * 60_000;
        const shown = localTimeAt(instant, timeZone);
        const [hour = 0, minute = 0] = shown.localTime.split(":").map(Number);
        const isShown = weekdayOf(shown.date) === SUNDAY && hour * 60 + minute >= from && hour * 60 + minute < until;
        const isIn = spans.some((span) => span.fromEpochMilliseconds <= instant && instant < span.untilEpochMilliseconds);
        expect(isIn).toBe(isShown && instant < within.untilEpochMilliseconds);
      }),
      { numRuns: 300 },
    );
  });
});

test("dates of a span leave out the day at whose first instant it ends", () => {
  const fromEpochMilliseconds = at("2026-05-01T16:00-05:00");
  expect(datesIn({ fromEpochMilliseconds, untilEpochMilliseconds: at("2026-05-03T00:00-05:00") }, CHICAGO)).toEqual(["2026-05-01", "2026-05-02"]);
  expect(datesIn({ fromEpochMilliseconds, untilEpochMilliseconds: fromEpochMilliseconds }, CHICAGO)).toEqual(["2026-05-01"]);
});

test.each([
  ["2026-05-03", 0],
  ["2026-05-09", 6],
  ["1969-12-31", 3],
])("%s is weekday %d", (date, weekday) => expect(weekdayOf(day(date))).toBe(weekday));

test.each([
  ["an eighth day", period(7, 0, 60)],
  ["no length", period(1, 60, 60)],
  ["over midnight", period(1, 1300, 60)],
  ["part of a minute", period(1, 0.5, 60)],
  ["past midnight", period(1, 0, 1441)],
  ["dates that are neither odd nor even", { datesOfMonth: "all" as never, fromMinuteOfDay: 0, untilMinuteOfDay: 60 }],
  ["odd dates without length", { datesOfMonth: "odd", fromMinuteOfDay: 60, untilMinuteOfDay: 60 }],
] as const)("%s is refused", (_name, one) => expect(refuseImpossiblePeriods("controller", [one])?.refusal.field).toBe("controller"));

test("whole days are accepted", () => {
  expect(refuseImpossiblePeriods("controller", [period(6, 0, 1440), { datesOfMonth: "even", fromMinuteOfDay: 0, untilMinuteOfDay: 1440 }])).toBeUndefined();
});
