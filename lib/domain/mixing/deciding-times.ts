import { calendarDateIn } from "#domain/foundation/calendar-date";
import { dayIn } from "#domain/mixing/clock-periods";
import { type StatedTime } from "#domain/mixing/counted-from-work";
import { type Span } from "#domain/weather/local-hours";

/** Work that is planned for some hours of a day, and may be done at any others of it. */
export interface PlannedWork {
  readonly planned: Span;
  readonly timeZone: string;
}

/**
 * Of times that must all be over those that may be the last of them at whatever hour of its day the work is done. The one that
 * is the last as planned comes first; of two at one time the one that moves with the work.
 */
export function mayBeLast(times: readonly StatedTime[], work: PlannedWork): readonly StatedTime[] {
  return deciding(times, work, 1);
}

/** Of times of which the first counts those that may be it at whatever hour of its day the work is done, in the same way. */
export function mayBeFirst(times: readonly StatedTime[], work: PlannedWork): readonly StatedTime[] {
  return deciding(times, work, -1);
}

/** 1 where the latest of several times decides, -1 where the earliest does. */
type Decides = 1 | -1;

function deciding(times: readonly StatedTime[], work: PlannedWork, decides: Decides): readonly StatedTime[] {
  const inOrder = times.toSorted((one, other) => decides * (other.atEpochMilliseconds - one.atEpochMilliseconds) || Number(one.counted === null) - Number(other.counted === null));
  const fixed = inOrder.find(({ counted }) => counted === null);
  const moving = movingOnes(inOrder, work.planned, decides);
  const ranges = inOrder.filter((time) => time === fixed || moving.includes(time)).map((time) => ({ time, ...rangeOf(time, work) }));
  // The latest that a time may come is what may make it the last of all, and the earliest what leaves that to another.
  const mayPass = (one: TimeRange, other: TimeRange) => (decides === 1 ? one.latest > other.earliest : one.earliest < other.latest);
  return ranges.filter((one) => ranges.every((other) => other === one || mayPass(one, other))).map(({ time }) => time);
}

interface TimeRange {
  readonly earliest: number;
  readonly latest: number;
}

/** Between which instants a time may come, whenever the work starts and ends on the day that it is planned for. */
function rangeOf({ atEpochMilliseconds: at, counted }: StatedTime, { planned, timeZone }: PlannedWork): TimeRange {
  if (counted === null) return { earliest: at, latest: at };
  const { fromEpochMilliseconds: starts, untilEpochMilliseconds: ends } = planned;
  const day = dayIn(calendarDateIn(timeZone, starts), timeZone);
  const [first, last] = { "application-start": [starts, starts], "application-end": [ends, ends], posting: [starts, ends] }[counted.from] as [number, number];
  return { earliest: at - Math.max(0, last - day.fromEpochMilliseconds), latest: at + Math.max(0, day.untilEpochMilliseconds - first) };
}

/** Of what moves with the work the time that decides for each end of it that is counted from. */
function movingOnes(inOrder: readonly StatedTime[], { fromEpochMilliseconds: starts, untilEpochMilliseconds: ends }: Span, decides: Decides): readonly StatedTime[] {
  const firstFrom = (anchor: string) => inOrder.find(({ counted }) => counted?.from === anchor);
  const [fromStart, fromEnd, fromPosting] = ["application-start", "application-end", "posting"].map(firstFrom);
  const all = [fromStart, fromEnd, fromPosting].flatMap((time) => time ?? []);
  const isCovered = fromStart !== undefined && fromEnd !== undefined && fromEnd.atEpochMilliseconds - ends >= fromStart.atEpochMilliseconds - starts;
  // As long after the end of the work is never before as long after its start, however long the work takes.
  const dropped = isCovered ? (decides === 1 ? fromStart : fromEnd) : undefined;
  return inOrder.filter((time) => all.includes(time) && time !== dropped);
}
