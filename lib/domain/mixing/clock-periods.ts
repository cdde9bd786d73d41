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

/**
 * Hours of the clock on such days: from a minute of the day until before another. Hours over midnight are two periods.
 */
export type ClockPeriod = ClockDays & ClockHours;

/** Hours of a day in minutes after midnight: from one until before another. */
export interface ClockHours {
  readonly fromMinuteOfDay: number;
  /** At most 1,440, the midnight that ends the day. */
  readonly untilMinuteOfDay: number;
}

/**
 * Refuses a period that is on no day of the week, on neither odd nor even dates, or ends before it begins. At `field`;
 * undefined when all are fine.
 */
export function refuseImpossiblePeriods(field: string, periods: readonly ClockPeriod[]): Refused | undefined {
  const wrong = periods.find(
    (period) =>
      !isPossible(period) ||
      !isWhole(period.fromMinuteOfDay, 0, MINUTES_A_DAY) ||
      !isWhole(period.untilMinuteOfDay, 0, MINUTES_A_DAY) ||
      period.fromMinuteOfDay >= period.untilMinuteOfDay,
  );
  if (wrong === undefined) return undefined;
  const days = "weekday" in wrong ? `day ${wrong.weekday}` : `${wrong.datesOfMonth} dates`;
  return badInput(
    field,
    `${days}, minute ${wrong.fromMinuteOfDay} to ${wrong.untilMinuteOfDay}`,
    "a day from 0 to 6 or odd or even dates, and whole minutes of the day that end after they begin",
    "Hours for watering must be on a day of the week or on odd or even dates and end after they begin; hours over midnight are two.",
  );
}

function isPossible(days: ClockDays): boolean {
  return "weekday" in days ? isWhole(days.weekday, 0, 6) : ["odd", "even"].includes(days.datesOfMonth);
}

/** Those of some periods that are on a date. */
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
    const ofDay = periodsOn(date, periods);
    return ofDay.length === 0 ? [] : offsetStretches(date, timeZone).flatMap((stretch) => onClock(date, ofDay, stretch));
  });
  return intersectSpans(joinSpans(spans), [within]);
}

interface OffsetStretch extends Span {
  readonly utcOffsetMinutes: number;
}

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
