import { type Outcome, accept, badInput, missingFact } from "#domain/foundation/outcome";

/** Something known for one calendar day, named as ISO 8601 writes it: "2026-05-04". */
export interface Dated {
  readonly date: string;
}

const CALENDAR_DATE = /^(\d{4})-(\d{2})-(\d{2})$/;
const ONE_DAY_MILLISECONDS = 86_400_000;

function utcMidnight(date: string): number {
  const [, year, month, day] = CALENDAR_DATE.exec(date) ?? [];
  return Date.UTC(Number(year), Number(month) - 1, Number(day));
}

function dateOf(epochMilliseconds: number): string {
  return new Date(epochMilliseconds).toISOString().slice(0, 10);
}

/** Whether a text names a day of the calendar in the form "2026-05-04": 2026-02-30 is none. */
export function isCalendarDate(text: string): boolean {
  if (!CALENDAR_DATE.test(text)) return false;
  const midnight = utcMidnight(text);
  return Number.isFinite(midnight) && dateOf(midnight) === text;
}

/** The date so many days later, or earlier when the number is negative. The date must be one of the calendar. */
export function addCalendarDays(date: string, days: number): string {
  return dateOf(utcMidnight(date) + days * ONE_DAY_MILLISECONDS);
}

/** Whole days from the first date to the second; negative when the second is earlier. */
export function calendarDaysBetween(earlier: string, later: string): number {
  return Math.round((utcMidnight(later) - utcMidnight(earlier)) / ONE_DAY_MILLISECONDS);
}

/** The number of the day in its year, from 1 (January 1) to 366: J in FAO-56. */
export function dayOfYear(date: string): number {
  return calendarDaysBetween(`${date.slice(0, 4)}-01-01`, date) + 1;
}

/** The month of a date, from 1 to 12. */
export function monthOf(date: string): number {
  return Number(date.slice(5, 7));
}

/**
 * The days of a series from one date through another, both included, in order and without a gap.
 *
 * Refuses a text that is no date, dates out of order or named twice, and a missing day, which it names: a sum
 * over a gap would be too low without showing it.
 */
export function unbrokenDays<Day extends Dated>(
  series: readonly Day[],
  from: string,
  through: string,
): Outcome<readonly Day[]> {
  const notDate = [from, through, ...series.map(({ date }) => date)].find((date) => !isCalendarDate(date));
  if (notDate !== undefined) {
    return badInput("date", notDate, "a date such as 2026-05-04", `"${notDate}" is not a date of the calendar.`);
  }
  if (through < from) {
    return badInput("through", through, `${from} or later`, `The period ends on ${through}, before it begins on ${from}.`);
  }
  const outOfOrder = series.find(({ date }, index) => index > 0 && date <= (series[index - 1]?.date ?? ""));
  if (outOfOrder !== undefined) {
    return badInput("date", outOfOrder.date, "each day once, in order", `The day ${outOfOrder.date} stands twice or out of order.`);
  }
  const days = series.filter(({ date }) => date >= from && date <= through);
  const missing = firstMissingDate(days, from, through);
  if (missing === undefined) return accept(days);
  return missingFact(missing, "a reading for each day", `There is no reading for ${missing}.`);
}

function firstMissingDate(days: readonly Dated[], from: string, through: string): string | undefined {
  const gap = days.findIndex(({ date }, index) => date !== addCalendarDays(from, index));
  if (gap !== -1) return addCalendarDays(from, gap);
  return days.length > calendarDaysBetween(from, through) ? undefined : addCalendarDays(from, days.length);
}
