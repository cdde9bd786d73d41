import { type Outcome, accept, badInput } from "#domain/foundation/outcome";
import { utcOffsetAt } from "#domain/foundation/utc-offset";

/** A day of the calendar without a time of day, as ISO 8601 writes it: 2026-04-14. */
export type CalendarDate = string & { readonly calendarDate: unique symbol };

const MILLISECONDS_A_DAY = 86_400_000;

/** The first and last instants of the years that a calendar date is read in, 1900 to 2199, in universal time. */
export const EARLIEST_EPOCH_MILLISECONDS = Date.UTC(1900, 0, 1);
export const LATEST_EPOCH_MILLISECONDS = Date.UTC(2200, 0, 1) - 1;

function dayNumber(date: CalendarDate): number {
  const [year, month, day] = partsOf(date);
  return Date.UTC(year, month - 1, day) / MILLISECONDS_A_DAY;
}

function partsOf(date: CalendarDate): readonly [year: number, month: number, day: number] {
  return [Number(date.slice(0, 4)), Number(date.slice(5, 7)), Number(date.slice(8, 10))];
}

/**
 * Reads YYYY-MM-DD between the years 1900 and 2199; refuses days that the calendar does not have. Refused at `field`.
 */
export function parseCalendarDate(field: string, text: string): Outcome<CalendarDate> {
  const trimmed = text.trim();
  const isWritten = /^(19|20|21)\d{2}-\d{2}-\d{2}$/.test(trimmed);
  const milliseconds = isWritten ? Date.parse(`${trimmed}T00:00:00Z`) : Number.NaN;
  const isReal = !Number.isNaN(milliseconds) && calendarDateOf(milliseconds) === trimmed;
  if (!isReal) {
    return badInput(field, text, "a day between 1900-01-01 and 2199-12-31", "Give the date as year-month-day, for example 2026-04-14.");
  }
  return accept(trimmed as CalendarDate);
}

/**
 * Days as they are written, by their number since 1970: a day's work asks thousands of times for the same few weeks, and
 * writing a date takes ten times as long as looking here.
 */
const WRITTEN_DAYS = new Map<number, CalendarDate>();
const MOST_DAYS_KEPT = 10_000;

/** The day, in universal time, on which an instant (milliseconds since 1970) falls. Throws where that is no instant. */
export function calendarDateOf(epochMilliseconds: number): CalendarDate {
  const day = Math.floor(epochMilliseconds / MILLISECONDS_A_DAY);
  const known = WRITTEN_DAYS.get(day);
  if (known !== undefined) return known;
  const written = new Date(epochMilliseconds).toISOString().slice(0, "2026-04-14".length) as CalendarDate;
  if (WRITTEN_DAYS.size >= MOST_DAYS_KEPT) WRITTEN_DAYS.clear();
  WRITTEN_DAYS.set(day, written);
  return written;
}

/** The day on which an instant (milliseconds since 1970) falls at a place with this IANA time zone. Throws where it is none. */
export function calendarDateIn(timeZone: string, epochMilliseconds: number): CalendarDate {
  return calendarDateOf(epochMilliseconds + utcOffsetAt(epochMilliseconds, timeZone));
}

/**
 * The day that lies a number of whole days after (or, negative, before) another. Throws beyond what a clock can count.
 */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  return calendarDateOf((dayNumber(date) + days) * MILLISECONDS_A_DAY);
}

/** The first instant of a day in universal time. In milliseconds since 1970. */
export function startOfDateInUniversalTime(date: CalendarDate): number {
  return dayNumber(date) * MILLISECONDS_A_DAY;
}

/** Whole days from one day to another; negative when the second is earlier. */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return dayNumber(to) - dayNumber(from);
}

// Made once: making a format costs many times what formatting does, and a day's screen writes thousands of dates.
const LONG_FORMAT = new Intl.DateTimeFormat("en-US", { timeZone: "UTC", weekday: "long", year: "numeric", month: "long", day: "numeric" });
const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"] as const;
const SHORT_MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

/** "Tuesday, April 14, 2026". */
export function formatLongDate(date: CalendarDate): string {
  return LONG_FORMAT.format(dayNumber(date) * MILLISECONDS_A_DAY);
}

/** "Apr 14, 2026". */
export function formatShortDate(date: CalendarDate): string {
  const [year, month, day] = partsOf(date);
  return `${SHORT_MONTHS[month - 1] ?? ""} ${String(day)}, ${String(year)}`;
}

/** "March", by the number of the month; nothing where there is no such month. */
export function monthWords(month: number): string {
  return MONTHS[month - 1] ?? "";
}
