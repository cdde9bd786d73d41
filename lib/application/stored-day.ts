import { type CalendarDate, calendarDateOf } from "#domain/foundation/calendar-date";

// A DATE column travels as the Date of its midnight in universal time; the domain knows days only.

/** A day as the database driver wants it. */
export function dayOf(date: CalendarDate): Date {
  return new Date(`${date}T00:00:00Z`);
}

/** A day, or none, as the database driver wants it. */
export function dayOrNone(date: CalendarDate | null): Date | null {
  return date === null ? null : dayOf(date);
}

/** A day as the domain knows it. */
export function calendarDayOf(stored: Date): CalendarDate {
  return calendarDateOf(stored.getTime());
}

/** A day, or none, as the domain knows it. */
export function calendarDayOrNone(stored: Date | null): CalendarDate | null {
  return stored === null ? null : calendarDayOf(stored);
}
