import { type CalendarDate, addDays, calendarDateOf, startOfDateInUniversalTime } from "#domain/foundation/calendar-date";
import { type Outcome, accept, badInput } from "#domain/foundation/outcome";
import { instantOfClock, utcOffsetAt } from "#domain/foundation/utc-offset";
import { ONE_HOUR_MILLISECONDS } from "#domain/turf/hourly-series";

/** One hour of a local day, from an instant until another: shorter than an hour only where a zone shifts by less. */
export interface LocalHour {
  readonly startsAtEpochMilliseconds: number;
  readonly endsAtEpochMilliseconds: number;
  /** What a clock on the wall shows at its start: "01:00". On the day when clocks go back it shows this twice. */
  readonly localTime: string;
  /** Minutes to add to UTC for local time; it tells the two apart. */
  readonly utcOffsetMinutes: number;
}

/** A span of time between two instants. */
export interface Span {
  readonly fromEpochMilliseconds: number;
  readonly untilEpochMilliseconds: number;
}

/** An instant as a person in a time zone reads it. */
export interface LocalTime {
  readonly date: CalendarDate;
  readonly localTime: string;
  readonly utcOffsetMinutes: number;
}

const ONE_MINUTE_MILLISECONDS = 60_000;
const ONE_HOUR_MINUTES = 60;
const ONE_DAY_MINUTES = 1_440;

/** Whether a name is a time zone known here: "America/New_York". */
export function isTimeZone(name: string): boolean {
  return name.includes("/") || name === "UTC" ? !Number.isNaN(utcOffsetAt(0, name)) : false;
}

/** What clock and calendar show in a time zone at an instant. The zone must be a known one. */
export function localTimeAt(epochMilliseconds: number, timeZone: string): LocalTime {
  const shownMilliseconds = epochMilliseconds + utcOffsetAt(epochMilliseconds, timeZone);
  const minuteOfDay = minuteOfDayAt(epochMilliseconds, timeZone);
  return {
    date: calendarDateOf(shownMilliseconds),
    localTime: `${twoDigits(Math.floor(minuteOfDay / ONE_HOUR_MINUTES))}:${twoDigits(minuteOfDay % ONE_HOUR_MINUTES)}`,
    utcOffsetMinutes: utcOffsetMinutesAt(epochMilliseconds, timeZone),
  };
}

function twoDigits(value: number): string {
  return String(value).padStart(2, "0");
}

/** The minute of the day (0 is midnight) that a clock in a time zone shows at an instant. The zone must be a known one. */
export function minuteOfDayAt(epochMilliseconds: number, timeZone: string): number {
  const minutes = Math.floor((epochMilliseconds + utcOffsetAt(epochMilliseconds, timeZone)) / ONE_MINUTE_MILLISECONDS);
  return ((minutes % ONE_DAY_MINUTES) + ONE_DAY_MINUTES) % ONE_DAY_MINUTES;
}

/** Minutes to add to UTC for the local time of a zone at an instant. The zone must be a known one. */
export function utcOffsetMinutesAt(epochMilliseconds: number, timeZone: string): number {
  return Math.trunc(utcOffsetAt(epochMilliseconds, timeZone) / ONE_MINUTE_MILLISECONDS);
}

/** The instant at which a clock in a time zone shows a date and hour; see instantOfMinute for hours that come twice or never. */
function instantAt(date: CalendarDate, hour: number, timeZone: string): number {
  return instantOfMinute(date, hour * ONE_HOUR_MINUTES, timeZone);
}

/**
 * The instant, in milliseconds since 1970, at which a clock in a time zone shows a minute of a day (0 is midnight).
 * Where it skips that minute, as long after the change as that minute lies after the start of the gap: 2:30 in a gap
 * from 2 to 3 becomes 3:30. Where it shows it twice, the first. The zone must be a known one.
 */
export function instantOfMinute(date: CalendarDate, minuteOfDay: number, timeZone: string): number {
  return instantOfClock(startOfDateInUniversalTime(date) + minuteOfDay * ONE_MINUTE_MILLISECONDS, timeZone);
}

/**
 * From the first instant of a local day until that of the next: 24 h, or 23 or 25 when clocks change. Refuses what is
 * no time zone (`timeZone`).
 */
export function localDay(date: CalendarDate, timeZone: string): Outcome<Span> {
  const refusal = refuseZone(timeZone);
  return (
    refusal ??
    accept({
      fromEpochMilliseconds: instantAt(date, 0, timeZone),
      untilEpochMilliseconds: instantAt(addDays(date, 1), 0, timeZone),
    })
  );
}

/**
 * From noon of a local day until noon of the next, as the Pythium models count a day. Refuses what is no time zone
 * (`timeZone`).
 */
export function noonToNoon(date: CalendarDate, timeZone: string): Outcome<Span> {
  const refusal = refuseZone(timeZone);
  return (
    refusal ??
    accept({
      fromEpochMilliseconds: instantAt(date, 12, timeZone),
      untilEpochMilliseconds: instantAt(addDays(date, 1), 12, timeZone),
    })
  );
}

/** The hours of a local day in order: 24, or 23 or 25 when clocks change. Refuses what is no time zone (`timeZone`). */
export function localHours(date: CalendarDate, timeZone: string): Outcome<readonly LocalHour[]> {
  const day = localDay(date, timeZone);
  if (!day.ok) return day;
  const { fromEpochMilliseconds, untilEpochMilliseconds } = day.value;
  const count = Math.ceil((untilEpochMilliseconds - fromEpochMilliseconds) / ONE_HOUR_MILLISECONDS);
  return accept(
    Array.from({ length: count }, (_, index) => {
      const startsAtEpochMilliseconds = fromEpochMilliseconds + index * ONE_HOUR_MILLISECONDS;
      const endsAtEpochMilliseconds = Math.min(
        startsAtEpochMilliseconds + ONE_HOUR_MILLISECONDS,
        untilEpochMilliseconds,
      );
      const { localTime, utcOffsetMinutes } = localTimeAt(startsAtEpochMilliseconds, timeZone);
      return { startsAtEpochMilliseconds, endsAtEpochMilliseconds, localTime, utcOffsetMinutes };
    }),
  );
}

function refuseZone(timeZone: string) {
  if (isTimeZone(timeZone)) return undefined;
  return badInput(
    "timeZone",
    timeZone,
    "a time zone such as America/New_York",
    `"${timeZone}" is not a known time zone.`,
  );
}
