import { tzOffset } from "@date-fns/tz";

const ONE_DAY_MILLISECONDS = 86_400_000;
const ONE_SECOND_MILLISECONDS = 1_000;
const ONE_MINUTE_SECONDS = 60;

/** One day of universal time as the clocks of a zone have it: no zone has ever changed its clocks twice in one. */
interface OffsetsOfDay {
  readonly beforeMilliseconds: number;
  /** Infinity on all days but the few on which clocks change. */
  readonly changesAtEpochMilliseconds: number;
  readonly afterMilliseconds: number;
}

/**
 * What the library said of a zone's days, so that it is asked twice for a day and not for each instant of it: asking
 * means writing a date in words and reading the offset out of it, which takes a hundred times as long as looking here.
 * A zone's offsets never change under its name while a process runs.
 */
const DAYS_BY_ZONE = new Map<string, Map<number, OffsetsOfDay>>();

/** More days than a year of weather and a season's visits need; a zone that has more is begun anew. */
const MOST_DAYS_KEPT = 2_000;

/** Milliseconds to add to universal time for the clocks of a zone at an instant, or NaN where the name is no zone. */
export function utcOffsetAt(epochMilliseconds: number, timeZone: string): number {
  const day = Math.floor(epochMilliseconds / ONE_DAY_MILLISECONDS);
  const offsets = DAYS_BY_ZONE.get(timeZone)?.get(day) ?? offsetsOfDay(day, timeZone);
  return epochMilliseconds < offsets.changesAtEpochMilliseconds ? offsets.beforeMilliseconds : offsets.afterMilliseconds;
}

/**
 * The instant, in milliseconds since 1970, at which the clocks of a zone show a time (in milliseconds since 1970,
 * written as if it were universal): the first of two; where they skip it, as long after it as they skip.
 */
export function instantOfClock(shownMilliseconds: number, timeZone: string): number {
  const dayBefore = utcOffsetAt(shownMilliseconds - ONE_DAY_MILLISECONDS, timeZone);
  const dayAfter = utcOffsetAt(shownMilliseconds + ONE_DAY_MILLISECONDS, timeZone);
  const [first, second] = [shownMilliseconds - dayBefore, shownMilliseconds - dayAfter];
  const isShownAtFirst = utcOffsetAt(first, timeZone) === dayBefore;
  if (isShownAtFirst || utcOffsetAt(second, timeZone) !== dayAfter) return first;
  return second;
}

function offsetsOfDay(day: number, timeZone: string): OffsetsOfDay {
  const [from, until] = [day * ONE_DAY_MILLISECONDS, (day + 1) * ONE_DAY_MILLISECONDS];
  const [beforeMilliseconds, afterMilliseconds] = [askLibrary(from, timeZone), askLibrary(until, timeZone)];
  const isOneOffset = beforeMilliseconds === afterMilliseconds;
  const changesAtEpochMilliseconds = isOneOffset ? Infinity : changeBetween(from, until, timeZone, beforeMilliseconds);
  const offsets = { beforeMilliseconds, changesAtEpochMilliseconds, afterMilliseconds };
  // What is no zone is not kept: a name that somebody typed must not stay in memory.
  if (Number.isNaN(beforeMilliseconds)) return offsets;
  const days = DAYS_BY_ZONE.get(timeZone) ?? new Map<number, OffsetsOfDay>();
  if (days.size >= MOST_DAYS_KEPT) days.clear();
  DAYS_BY_ZONE.set(timeZone, days.set(day, offsets));
  return offsets;
}

/** The first instant of the later offset, to the second, by halving the time between. */
function changeBetween(from: number, until: number, timeZone: string, beforeMilliseconds: number): number {
  let [lastBefore, firstAfter] = [from, until];
  while (firstAfter - lastBefore > ONE_SECOND_MILLISECONDS) {
    const middle = Math.floor((lastBefore + firstAfter) / 2 / ONE_SECOND_MILLISECONDS) * ONE_SECOND_MILLISECONDS;
    if (askLibrary(middle, timeZone) === beforeMilliseconds) lastBefore = middle;
    else firstAfter = middle;
  }
  return firstAfter;
}

/** The library counts in minutes, with parts of one for offsets older than standard time. */
function askLibrary(epochMilliseconds: number, timeZone: string): number {
  return Math.round(tzOffset(timeZone, new Date(epochMilliseconds)) * ONE_MINUTE_SECONDS) * ONE_SECOND_MILLISECONDS;
}
