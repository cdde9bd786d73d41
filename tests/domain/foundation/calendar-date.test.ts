import fc from "fast-check";
import { expect, test } from "vitest";
import {
  addDays, type CalendarDate, EARLIEST_EPOCH_MILLISECONDS, LATEST_EPOCH_MILLISECONDS, calendarDateIn, calendarDateOf, daysBetween, formatLongDate, formatShortDate, monthWords, parseCalendarDate,
} from "#domain/foundation/calendar-date";

const FIRST = "1900-01-01" as CalendarDate;
const LAST = "2199-12-31" as CalendarDate;
const days = fc.integer({ min: 0, max: daysBetween(FIRST, LAST) }).map((count) => addDays(FIRST, count));

function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

test("every day of the three centuries is read as it is written, and no other text of that shape", () => {
  const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const two = (count: number) => String(count).padStart(2, "0");
  fc.assert(
    fc.property(fc.integer({ min: 1900, max: 2199 }), fc.integer({ min: 0, max: 14 }), fc.integer({ min: 0, max: 33 }), (year, month, day) => {
      const text = `${String(year)}-${two(month)}-${two(day)}`;
      const length = month === 2 && isLeapYear(year) ? 29 : (lengths[month - 1] ?? 0);
      const parsed = parseCalendarDate("day", text);
      expect(parsed.ok).toBe(day >= 1 && day <= length);
      if (parsed.ok) expect(parsed.value).toBe(text);
    }),
  );
});

test.each(["", " ", "2026-4-1", "20260414", "14.04.2026", "1899-12-31", "2200-01-01", "2026-04-14T00:00:00Z", "2026-04-14\u0000", "+2026-04-14", "２０２６-04-14"])(
  "%j is no day, and the refusal says what was found and what is allowed",
  (text) => {
    expect(parseCalendarDate("the day", text)).toMatchObject({
      ok: false,
      refusal: { kind: "bad-input", field: "the day", found: text, allowed: "a day between 1900-01-01 and 2199-12-31" },
    });
  },
);

test("space around a day is not part of it", () => expect(parseCalendarDate("day", " 2026-04-14\n")).toEqual({ ok: true, value: "2026-04-14" }));

test("adding days and counting them are each other's reverse, and additions add up", () => {
  const count = fc.integer({ min: -3000, max: 3000 });
  fc.assert(
    fc.property(days, count, count, (day, one, other) => {
      expect(daysBetween(day, addDays(day, one))).toBe(one);
      expect(addDays(addDays(day, one), other)).toBe(addDays(day, one + other));
    }),
  );
});

test("counting is antisymmetric, adds up over a third day, and agrees with the order of the text", () => {
  fc.assert(
    fc.property(days, days, days, (from, over, to) => {
      expect(daysBetween(from, to) + daysBetween(to, from)).toBe(0);
      expect(daysBetween(from, over) + daysBetween(over, to)).toBe(daysBetween(from, to));
      expect(Math.sign(daysBetween(from, to))).toBe(from < to ? 1 : from > to ? -1 : 0);
    }),
  );
});

test("a year has 365 days, a leap year 366, whatever the clock changes", () => {
  for (let year = 1900; year < 2199; year += 1) {
    const begin = `${String(year)}-01-01` as CalendarDate;
    expect(daysBetween(begin, `${String(year + 1)}-01-01` as CalendarDate)).toBe(isLeapYear(year) ? 366 : 365);
  }
});

test("every moment of a universal day falls on that day", () => {
  fc.assert(
    fc.property(days, fc.integer({ min: 0, max: 86_399_999 }), (day, milliseconds) => {
      expect(calendarDateOf(Date.parse(`${day}T00:00:00Z`) + milliseconds)).toBe(day);
    }),
  );
});

test.each([
  ["America/Indiana/Indianapolis", "2026-04-15T03:59:59Z", "2026-04-14"],
  ["America/Indiana/Indianapolis", "2026-04-15T04:00:00Z", "2026-04-15"],
  ["America/Chicago", "2026-01-01T05:59:59Z", "2025-12-31"],
  ["America/Phoenix", "2026-07-01T06:59:59Z", "2026-06-30"],
  ["Pacific/Honolulu", "2026-03-01T09:59:59Z", "2026-02-28"],
  // The night in which the clocks go forward, and the one in which they go back.
  ["America/New_York", "2026-03-09T03:59:59Z", "2026-03-08"],
  ["America/New_York", "2026-11-02T04:59:59Z", "2026-11-01"],
])("in %s %s is %s", (timeZone, instant, day) => {
  expect(calendarDateIn(timeZone, Date.parse(instant))).toBe(day);
});

test("a zone that is none is a defect of the caller", () => {
  expect(() => calendarDateIn("America/Nowhere", 0)).toThrow(RangeError);
});

test("days are shown in American English, whatever the zone of the machine", () => {
  expect(formatLongDate("2026-04-14" as CalendarDate)).toBe("Tuesday, April 14, 2026");
  expect(formatShortDate("2026-04-14" as CalendarDate)).toBe("Apr 14, 2026");
});

test("months have their names, and what is no month has none", () => {
  expect([1, 3, 12, 0, 13].map(monthWords)).toEqual(["January", "March", "December", "", ""]);
});

test("the first and last instants are of the first and last day that are read", () => {
  expect([EARLIEST_EPOCH_MILLISECONDS, LATEST_EPOCH_MILLISECONDS].map(calendarDateOf)).toEqual([FIRST, LAST]);
  expect([EARLIEST_EPOCH_MILLISECONDS - 1, LATEST_EPOCH_MILLISECONDS + 1].map(calendarDateOf)).toEqual(["1899-12-31", "2200-01-01"]);
});
