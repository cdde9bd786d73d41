import fc from "fast-check";
import { expect, test } from "vitest";
import { calendarDayOf, calendarDayOrNone, dayOf, dayOrNone } from "#application/stored-day";
import { addDays, type CalendarDate } from "#domain/foundation/calendar-date";

test("a day comes back as the day it was, whatever the time zone of the machine", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 100_000 }), (days) => {
      const day = addDays("1900-01-01" as CalendarDate, days);
      expect(calendarDayOf(dayOf(day))).toBe(day);
      expect(calendarDayOrNone(dayOrNone(day))).toBe(day);
      expect(dayOf(day).toISOString()).toBe(`${day}T00:00:00.000Z`);
    }),
  );
});

test("no day stays none", () => {
  expect(dayOrNone(null)).toBeNull();
  expect(calendarDayOrNone(null)).toBeNull();
});
