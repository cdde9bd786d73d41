import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ClockDays, clockSpans, datesIn, dayIn, refuseImpossiblePeriods, weekdayOf } from "#domain/mixing/clock-periods";
import { localTimeAt } from "#domain/weather/local-hours";
import { day } from "../../support/domain-answers";
import { at, CHICAGO } from "../../support/aftercare-builders";
import { dateAfter, firstMinuteOf, shownAt, weekdayOn } from "../../support/wall-clock";

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

  test("hours over midnight come out as one span, as one period that runs on or as two, also where only the morning is asked for", () => {
    const within = { fromEpochMilliseconds: at("2026-05-02T12:00-05:00"), untilEpochMilliseconds: at("2026-05-03T12:00-05:00") };
    for (const periods of [[period(6, 1320, 1440), period(SUNDAY, 0, 360)], [period(6, 1320, 1800)]]) {
      expect(iso(clockSpans(periods, within, CHICAGO))).toEqual(["2026-05-03T03:00 2026-05-03T11:00"]);
      expect(iso(clockSpans(periods, { ...within, fromEpochMilliseconds: at("2026-05-03T02:00-05:00") }, CHICAGO))).toEqual(["2026-05-03T07:00 2026-05-03T11:00"]);
    }
  });

  test("what runs on goes by the next day's own clock: until 5 am there, however long the night is", () => {
    const night = (from: string, until: string) => iso(clockSpans([{ weekday: 6, fromMinuteOfDay: 1320, untilMinuteOfDay: 1740 }], { fromEpochMilliseconds: at(from), untilEpochMilliseconds: at(until) }, CHICAGO));
    expect(night("2026-03-07T12:00-06:00", "2026-03-08T12:00-05:00")).toEqual(["2026-03-08T04:00 2026-03-08T10:00"]);
    expect(night("2026-10-31T12:00-05:00", "2026-11-01T12:00-06:00")).toEqual(["2026-11-01T03:00 2026-11-01T11:00"]);
  });

  test("odd dates run on into an even one, and on the 31st into the 1st", () => {
    const within = { fromEpochMilliseconds: at("2026-05-29T12:00-05:00"), untilEpochMilliseconds: at("2026-06-02T12:00-05:00") };
    expect(iso(clockSpans([{ datesOfMonth: "odd", fromMinuteOfDay: 1320, untilMinuteOfDay: 1740 }], within, CHICAGO))).toEqual(["2026-05-30T03:00 2026-05-30T10:00", "2026-06-01T03:00 2026-06-01T10:00", "2026-06-02T03:00 2026-06-02T10:00"]);
  });

  test("a minute is in when and only when the clock on the wall shows a time of a period then", () => {
    const zones = fc.constantFrom(CHICAGO, "Australia/Lord_Howe", "America/Santiago", "America/Havana", "Pacific/Chatham", "Asia/Kolkata");
    const minutes = fc.integer({ min: 1, max: 1440 });
    const days = fc.oneof(fc.record({ weekday: fc.constantFrom(0, 5, 6) }), fc.record({ datesOfMonth: fc.constantFrom("odd" as const, "even" as const) }));
    fc.assert(
      fc.property(fc.constantFrom("2026-03-07", "2026-04-04", "2026-09-05", "2026-09-26", "2026-10-03", "2026-10-31"), zones, fc.array(fc.record({ days, one: fc.integer({ min: 0, max: 1439 }), length: minutes }), { minLength: 1, maxLength: 3 }), (date, zone, all) => {
        const from = firstMinuteOf(zone, date);
        const within = { fromEpochMilliseconds: from, untilEpochMilliseconds: from + 2 * 86_400_000 };
        const periods = all.map(({ days: on, one, length }) => ({ ...on, fromMinuteOfDay: one, untilMinuteOfDay: one + length }));
        const spans = clockSpans(periods, within, zone);
        for (let instant = from - 60_000; instant <= within.untilEpochMilliseconds; instant += 60_000) {
          const shown = shownAt(zone, instant);
          const isDay = (on: ClockDays, date: string) => ("weekday" in on ? weekdayOn(date) === on.weekday : (Number(date.slice(8)) % 2 === 1) === (on.datesOfMonth === "odd"));
          const isShownOn = (date: string, minute: number) => periods.some((one) => isDay(one, date) && one.fromMinuteOfDay <= minute && minute < one.untilMinuteOfDay);
          const isShown = isShownOn(shown.date, shown.minute) || isShownOn(dateAfter(shown.date, -1), shown.minute + 1440);
          const isIn = spans.some((span) => span.fromEpochMilliseconds <= instant && instant < span.untilEpochMilliseconds);
          if (isIn !== (isShown && from <= instant && instant < within.untilEpochMilliseconds)) expect(new Date(instant).toISOString()).toBe(isIn ? "out" : "in");
        }
      }),
      { numRuns: 150 },
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
  ["a day before Sunday", period(-1, 0, 60)],
  ["before midnight", period(1, -1, 60)],
  ["no length", period(1, 60, 60)],
  ["over midnight", period(1, 1300, 60)],
  ["part of a minute", period(1, 0.5, 60)],
  ["more than a day", period(1, 60, 1501)],
  ["from a midnight that is another day's", period(1, 1440, 1500)],
  ["dates that are neither odd nor even", { datesOfMonth: "all" as never, fromMinuteOfDay: 0, untilMinuteOfDay: 60 }],
  ["odd dates without length", { datesOfMonth: "odd", fromMinuteOfDay: 60, untilMinuteOfDay: 60 }],
] as const)("%s is refused", (_name, one) => expect(refuseImpossiblePeriods("controller", [one])?.refusal.field).toBe("controller"));

test("whole days are accepted, from whatever hour on", () => {
  expect(refuseImpossiblePeriods("controller", [period(6, 0, 1440), period(6, 300, 1740), period(0, 1439, 2879), { datesOfMonth: "even", fromMinuteOfDay: 0, untilMinuteOfDay: 1440 }])).toBeUndefined();
});
