import { addDays, type CalendarDate, formatLongDate } from "#domain/foundation/calendar-date";

/** "1 stop", "3 stops". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${String(count)} ${count === 1 ? one : many}`;
}

/** The address of a day. */
export function dayHref(date: CalendarDate): string {
  return `/today?date=${date}`;
}

/** How the day lies to today, for the line above the date. */
export function nearWords(date: CalendarDate, today: CalendarDate): string {
  if (date === today) return "Today";
  if (date === addDays(today, 1)) return "Tomorrow";
  return date === addDays(today, -1) ? "Yesterday" : "Another day";
}

/** "Tuesday, April 14": the year only where it is not this one. */
export function dateWords(date: CalendarDate, today: CalendarDate): string {
  const whole = formatLongDate(date);
  return date.slice(0, 4) === today.slice(0, 4) ? whole.replace(/, \d{4}$/u, "") : whole;
}

/** A time of day as a time field takes it: "07:30". */
export function fieldTime(minute: number): string {
  const two = (value: number) => String(value).padStart(2, "0");
  return `${two(Math.floor(minute / 60) % 24)}:${two(minute % 60)}`;
}

const METERS_A_MILE = 1609.344;

/** "38 mi". */
export function milesWords(meters: number): string {
  return `${String(Math.round(meters / METERS_A_MILE))} mi`;
}
