import { type CalendarDate, addDays, daysBetween, parseCalendarDate } from "#domain/foundation/calendar-date";
import { type Outcome, accept, badInput, missingFact } from "#domain/foundation/outcome";
import { type Refused } from "#domain/turf/physical-range";

/** Something known for one day of the calendar. */
export interface Dated {
  readonly date: CalendarDate;
}

/** Days from one through another, both included. */
export interface DatePeriod {
  readonly from: CalendarDate;
  readonly through: CalendarDate;
}

/** Refuses what is no day of the calendar, though its type says that it is one. Undefined where it is a day. */
export function refuseUnrealDate(field: string, date: CalendarDate): Refused | undefined {
  const read = parseCalendarDate(field, date);
  return read.ok ? undefined : read;
}

/** The number of the day in its year, from 1 (January 1) to 366: J in FAO-56. NaN outside the years 1900 to 2199. */
export function dayOfYear(date: CalendarDate): number {
  const newYear = parseCalendarDate("date", `${date.slice(0, 4)}-01-01`);
  return newYear.ok ? daysBetween(newYear.value, date) + 1 : Number.NaN;
}

/**
 * The days of a series within a period, in order and without a gap.
 *
 * Refuses a period that ends before it begins (`through`), one whose ends are no days of the calendar, days out of
 * order or named twice, and a missing day, which it names: a sum over a gap would be too low without showing it.
 */
export function unbrokenDays<Day extends Dated>(series: readonly Day[], period: DatePeriod): Outcome<readonly Day[]> {
  const { from, through } = period;
  const unreal = refuseUnrealDate("from", from) ?? refuseUnrealDate("through", through);
  if (unreal !== undefined) return unreal;
  if (through < from) {
    return badInput(
      "through",
      through,
      `${from} or later`,
      `The period ends on ${through}, before it begins on ${from}.`,
    );
  }
  const outOfOrder = series.find(({ date }, index) => index > 0 && date <= (series[index - 1]?.date ?? ""));
  if (outOfOrder !== undefined) {
    const { date } = outOfOrder;
    return badInput("date", date, "each day once, in order", `The day ${date} stands twice or out of order.`);
  }
  const days = series.filter(({ date }) => date >= from && date <= through);
  const missing = firstMissingDate(days, period);
  return missing === undefined
    ? accept(days)
    : missingFact(missing, "a reading for each day", `There is no reading for ${missing}.`);
}

function firstMissingDate(days: readonly Dated[], { from, through }: DatePeriod): CalendarDate | undefined {
  const gap = days.findIndex(({ date }, index) => date !== addDays(from, index));
  if (gap !== -1) return addDays(from, gap);
  return days.length > daysBetween(from, through) ? undefined : addDays(from, days.length);
}

/** The days of a series, in order of time, as stretches of days that follow one another. */
export function stretchesOf(series: readonly Dated[]): readonly DatePeriod[] {
  const stretches: DatePeriod[] = [];
  for (const { date } of series) {
    const last = stretches.at(-1);
    if (last !== undefined && addDays(last.through, 1) === date) stretches[stretches.length - 1] = { from: last.from, through: date };
    else stretches.push({ from: date, through: date });
  }
  return stretches;
}

/**
 * The days of a period on which a series has nothing, each stretch of them as one period, in order. The series is in order
 * of time; what lies outside the period does not matter.
 */
export function gapsIn(series: readonly Dated[], { from, through }: DatePeriod): readonly DatePeriod[] {
  const gaps: DatePeriod[] = [];
  let next = from;
  for (const { date } of series) {
    if (date < next || date > through) continue;
    if (date > next) gaps.push({ from: next, through: addDays(date, -1) });
    next = addDays(date, 1);
  }
  return next > through ? gaps : [...gaps, { from: next, through }];
}
