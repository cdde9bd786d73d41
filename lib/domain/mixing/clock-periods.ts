import { addDays, type CalendarDate, calendarDateIn, daysBetween, startOfDateInUniversalTime } from "#domain/foundation/calendar-date";
import { invariant } from "#domain/foundation/invariant";
import { badInput } from "#domain/foundation/outcome";
import { type Refused } from "#domain/turf/physical-range";
import { localDay, type Span, utcOffsetMinutesAt } from "#domain/weather/local-hours";
import { intersectSpans, joinSpans } from "#domain/mixing/span-set";

const ONE_MINUTE_MILLISECONDS = 60_000;
const MINUTES_A_DAY = 1_440;

/**
 * The days on which hours stand: one day of the week (0 is Sunday), or the odd or the even dates of each month. Towns and
 * water utilities name dates so (common practice); after a month of 31 days two odd dates follow each other.
 */
export type ClockDays = { readonly weekday: number } | { readonly datesOfMonth: "odd" | "even" };

/** Hours of the clock that begin on such days, from a minute of the day until before another. */
export type ClockPeriod = ClockDays & ClockHours;

/** Hours in minutes after the midnight that begins their day: from one until before another. */
export interface ClockHours {
  readonly fromMinuteOfDay: number;
  /** 1,440 is the midnight that ends the day. More runs on into the next day, whichever that is: 1,740 until its 5 am. */
  readonly untilMinuteOfDay: number;
}

/**
 * Refuses a period that is on no day of the week, on neither odd nor even dates, begins on no minute of its day, ends before
 * it begins or runs for more than a day. At `field`; undefined when all are fine.
 */
export function refuseImpossiblePeriods(field: string, periods: readonly ClockPeriod[]): Refused | undefined {
  const wrong = periods.find(
    (period) =>
      !isPossible(period) ||
      !isWhole(period.fromMinuteOfDay, 0, MINUTES_A_DAY - 1) ||
      !isWhole(period.untilMinuteOfDay, period.fromMinuteOfDay + 1, period.fromMinuteOfDay + MINUTES_A_DAY),
  );
  if (wrong === undefined) return undefined;
  const days = "weekday" in wrong ? `day ${wrong.weekday}` : `${wrong.datesOfMonth} dates`;
  return badInput(
    field,
    `${days}, minute ${wrong.fromMinuteOfDay} to ${wrong.untilMinuteOfDay}`,
    "a day from 0 to 6 or odd or even dates, and whole minutes that end after they begin, within a day",
    "Hours for watering must be on a day of the week or on odd or even dates and end after they begin, within a day.",
  );
}

function isPossible(days: ClockDays): boolean {
  return "weekday" in days ? isWhole(days.weekday, 0, 6) : ["odd", "even"].includes(days.datesOfMonth);
}

/** The hours that a clock shows on a date: those of its own periods, and what runs on from the day before. */
function hoursOn(date: CalendarDate, periods: readonly ClockPeriod[]): readonly ClockHours[] {
  const runOn = periodsOn(addDays(date, -1), periods).filter(({ untilMinuteOfDay }) => untilMinuteOfDay > MINUTES_A_DAY);
  return [...runOn.map(({ untilMinuteOfDay }) => ({ fromMinuteOfDay: 0, untilMinuteOfDay: untilMinuteOfDay - MINUTES_A_DAY })), ...periodsOn(date, periods)];
}

/** Those of some periods that begin on a date. */
function periodsOn(date: CalendarDate, periods: readonly ClockPeriod[]): readonly ClockPeriod[] {
  const weekday = weekdayOf(date);
  const isOdd = Number(date.slice(-2)) % 2 === 1;
  return periods.filter((days) => ("weekday" in days ? days.weekday === weekday : isOdd === (days.datesOfMonth === "odd")));
}

function isWhole(value: number, lowest: number, highest: number): boolean {
  return Number.isInteger(value) && value >= lowest && value <= highest;
}

/** The day of the week of a date, 0 for Sunday to 6. */
export function weekdayOf(date: CalendarDate): number {
  return new Date(startOfDateInUniversalTime(date)).getUTCDay();
}

/** The local day of a date. Throws where the time zone is not a known one. */
export function dayIn(date: CalendarDate, timeZone: string): Span {
  const day = localDay(date, timeZone);
  invariant(day.ok, "the time zone was checked before it was used");
  return day.value;
}

/** The dates that a span touches, in order. Throws where the time zone is not a known one. */
export function datesIn(span: Span, timeZone: string): readonly CalendarDate[] {
  const first = calendarDateIn(timeZone, span.fromEpochMilliseconds);
  const last = calendarDateIn(timeZone, Math.max(span.fromEpochMilliseconds, span.untilEpochMilliseconds - 1));
  return Array.from({ length: daysBetween(first, last) + 1 }, (_, index) => addDays(first, index));
}

/**
 * The instants within a span at which a wall clock shows a time in one of the periods. An hour that comes twice is in
 * twice; an hour that is skipped is not in, and nothing after it is in by mistake.
 */
export function clockSpans(periods: readonly ClockPeriod[], within: Span, timeZone: string): readonly Span[] {
  const spans = datesIn(within, timeZone).flatMap((date) => {
    const ofDay = hoursOn(date, periods);
    return ofDay.length === 0 ? [] : offsetStretches(date, timeZone).flatMap((stretch) => onClock(date, ofDay, stretch));
  });
  return intersectSpans(joinSpans(spans), [within]);
}

interface OffsetStretch extends Span {
  readonly utcOffsetMinutes: number;
}

/** A stretch ends with its day at the latest, and with it what runs on: the next day has that on its own clock. */
function onClock(date: CalendarDate, periods: readonly ClockHours[], stretch: OffsetStretch): readonly Span[] {
  const midnight = startOfDateInUniversalTime(date) - stretch.utcOffsetMinutes * ONE_MINUTE_MILLISECONDS;
  const shown = periods.map(({ fromMinuteOfDay, untilMinuteOfDay }) => ({
    fromEpochMilliseconds: midnight + fromMinuteOfDay * ONE_MINUTE_MILLISECONDS,
    untilEpochMilliseconds: midnight + untilMinuteOfDay * ONE_MINUTE_MILLISECONDS,
  }));
  return intersectSpans(shown, [stretch]);
}

/** A local day cut where its clock changes, once at most. */
function offsetStretches(date: CalendarDate, timeZone: string): readonly OffsetStretch[] {
  const { fromEpochMilliseconds, untilEpochMilliseconds } = dayIn(date, timeZone);
  const offsetAt = (instant: number) => utcOffsetMinutesAt(instant, timeZone);
  const before = offsetAt(fromEpochMilliseconds);
  const after = offsetAt(untilEpochMilliseconds - 1);
  if (before === after) return [{ fromEpochMilliseconds, untilEpochMilliseconds, utcOffsetMinutes: before }];
  let stillBefore = 0;
  let alreadyAfter = Math.ceil((untilEpochMilliseconds - fromEpochMilliseconds) / ONE_MINUTE_MILLISECONDS);
  while (alreadyAfter - stillBefore > 1) {
    const middle = Math.floor((stillBefore + alreadyAfter) / 2);
    if (offsetAt(fromEpochMilliseconds + middle * ONE_MINUTE_MILLISECONDS) === before) stillBefore = middle;
    else alreadyAfter = middle;
  }
  const change = fromEpochMilliseconds + alreadyAfter * ONE_MINUTE_MILLISECONDS;
  return [
    { fromEpochMilliseconds, untilEpochMilliseconds: change, utcOffsetMinutes: before },
    { fromEpochMilliseconds: change, untilEpochMilliseconds, utcOffsetMinutes: after },
  ];
}
