import { addDays, type CalendarDate, calendarDateIn, formatShortDate } from "#domain/foundation/calendar-date";
import { clockWords } from "#domain/foundation/clock-words";
import { weekdayOf } from "#domain/mixing/clock-periods";
import { minuteOfDayAt, utcOffsetMinutesAt } from "#domain/weather/local-hours";

const ONE_MINUTE_MILLISECONDS = 60_000;
const WEEKDAYS = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"] as const;

/** The name of a day of the week, 0 for Sunday. */
export function weekdayWords(weekday: number): string {
  return WEEKDAYS[weekday] ?? "";
}

/** "Saturday, Mar 7, 2026". */
export function dateWords(date: CalendarDate): string {
  return `${weekdayWords(weekdayOf(date))}, ${formatShortDate(date)}`;
}

/**
 * What an instant is to the reader. What starts or is due drops its seconds; what must be waited for goes to the next
 * minute. A due time at midnight is said as the end of the day before.
 */
export type InstantUse = "start" | "due" | "end";

/**
 * An instant as a person there reads it: "Saturday, Mar 7, 2026, 3:10 pm". An hour that comes twice says which of the
 * two it is.
 */
export function localWords(epochMilliseconds: number, timeZone: string, use: InstantUse): string {
  const minutes = epochMilliseconds / ONE_MINUTE_MILLISECONDS;
  const whole = (use === "end" ? Math.ceil(minutes) : Math.floor(minutes)) * ONE_MINUTE_MILLISECONDS;
  const date = calendarDateIn(timeZone, whole);
  const minuteOfDay = minuteOfDayAt(whole, timeZone);
  if (use === "due" && minuteOfDay === 0) return `the end of ${dateWords(addDays(date, -1))}`;
  return `${dateWords(date)}, ${clockWords(minuteOfDay)}${whichOfTwo(whole, timeZone)}`;
}

/** Clocks go back by an hour, or by half an hour in a few places. */
const STEPS_BACK_MINUTES = [60, 30] as const;
const LONGEST_STEP_MINUTES = 60;

/** Which of two it is where clocks go back and show an instant's time twice: " (before clocks go back)"; nothing at any other time. */
export function whichOfTwo(epochMilliseconds: number, timeZone: string): string {
  const offsetAt = (stepMinutes: number) => utcOffsetMinutesAt(epochMilliseconds + stepMinutes * ONE_MINUTE_MILLISECONDS, timeZone);
  const here = offsetAt(0);
  if (offsetAt(LONGEST_STEP_MINUTES) === here && offsetAt(-LONGEST_STEP_MINUTES) === here) return "";
  // A clock shows the same again where its offset has changed by as much as the time that went by.
  const showsTheSame = (stepMinutes: number) => offsetAt(stepMinutes) - here === -stepMinutes;
  if (STEPS_BACK_MINUTES.some((step) => showsTheSame(step))) return " (before clocks go back)";
  return STEPS_BACK_MINUTES.some((step) => showsTheSame(-step)) ? " (after clocks go back)" : "";
}
