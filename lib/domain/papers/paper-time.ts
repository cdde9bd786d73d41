// Times as papers print them: the company's or the site's own clock, with ordinary spaces, because a narrow one is a
// letter that a font or a search may not know.
import { type CalendarDate, formatLongDate } from "#domain/foundation/calendar-date";
import { clockWordsInFull } from "#domain/foundation/clock-words";
import { localTimeAt } from "#domain/weather/local-hours";

/** The time of an instant on a time zone's clock: "8:50 am". */
export function clockOnPaper(epochMilliseconds: number, timeZone: string): string {
  const [hour, minute] = localTimeAt(epochMilliseconds, timeZone).localTime.split(":").map(Number) as [number, number];
  return clockWordsInFull(hour * 60 + minute);
}

/** A day without its weekday: "April 14, 2026". */
export function dateOnPaper(date: CalendarDate): string {
  return formatLongDate(date).replace(/^\w+, /u, "");
}

/** The local day of an instant with its weekday: "Tuesday, April 14, 2026". */
export function dayOnPaper(epochMilliseconds: number, timeZone: string): string {
  return formatLongDate(localTimeAt(epochMilliseconds, timeZone).date);
}

/** Day and time of an instant: "April 14, 2026, 8:50 am". */
export function momentOnPaper(epochMilliseconds: number, timeZone: string): string {
  return `${dateOnPaper(localTimeAt(epochMilliseconds, timeZone).date)}, ${clockOnPaper(epochMilliseconds, timeZone)}`;
}

/** From one instant to another of the same day: "9:12 am to 9:31 am". */
export function spanOnPaper(fromEpochMilliseconds: number, untilEpochMilliseconds: number, timeZone: string): string {
  return `${clockOnPaper(fromEpochMilliseconds, timeZone)} to ${clockOnPaper(untilEpochMilliseconds, timeZone)}`;
}
