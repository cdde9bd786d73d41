import { type LeftOutReason, type LeftOutStop, type RouteStop } from "#domain/routing/day-route";
import {
  type DayProblem,
  type StopIndex,
  type TimedOrder,
  departureFrom,
  driveBetween,
  earliestStart,
  timeOrder,
} from "#domain/routing/day-timing";
import { isSettled, orderWith } from "#domain/routing/pinned-order";

/** A time of the local day as a clock shows it: "16:05". Parts of a minute count as a whole one. */
export function clockTime(secondsOfDay: number): string {
  const minutes = Math.ceil(secondsOfDay / 60);
  const twoDigits = (value: number) => String(value).padStart(2, "0");
  return `${twoDigits(Math.floor(minutes / 60))}:${twoDigits(minutes % 60)}`;
}

/**
 * Why a stop found no place in an order, as a sentence. First what no order could change: the way to it and home again
 * against its windows and the day. Then its pinned position. Then the order that was found: if it had a place but for
 * the day's end, the day is over; else the windows, its own or others', stand against it.
 */
export function whyLeftOut(problem: DayProblem, timed: TimedOrder, stop: StopIndex, asked: RouteStop): LeftOutStop {
  const { stopId } = asked;
  const because = (reason: LeftOutReason, sentence: string): LeftOutStop => ({ stopId, reason, sentence });
  const arrival = problem.dayStartSeconds + driveBetween(problem, problem.startNode, stop);
  const windows = windowWords(asked);
  const limit = limitWords(problem);
  if (earliestStart(problem, stop, arrival) === Infinity) {
    return because("window-passed-on-arrival", `Even as the first stop it is reached at ${clockTime(arrival)} only; work there must begin ${windows}.`);
  }
  const alone = backFromAlone(problem, stop);
  if (alone > problem.latestReturnSeconds) {
    const back = `Even as the only stop, with the way there and back, it takes until ${clockTime(alone)}`;
    const waits = earliestStart(problem, stop, arrival) > arrival;
    if (waits) return because("window-too-late-for-day", `${back}, since work there must begin ${windows}; ${limit}.`);
    return because("day-too-short", `${back}; ${limit}.`);
  }
  if (asked.pinnedPosition !== undefined) {
    const count = timed.order.length;
    const served = count === 1 ? "1 stop fits" : `${count} stops fit`;
    return because("pinned-position-out-of-reach", `It is pinned to position ${asked.pinnedPosition}, which can't be kept: ${served} into the day without it.`);
  }
  const back = earliestBackWith(problem, timed, stop);
  if (back < Infinity) {
    return because("day-is-over", `With it the day, in this order, would last until ${clockTime(back)} at least; ${limit}.`);
  }
  const own = windows === "" ? "" : ` Work there must begin ${windows}.`;
  return because("windows-of-day", `At no place in this order is it reached in time without breaking another stop's window.${own}`);
}

function backFromAlone(problem: DayProblem, stop: StopIndex): number {
  const departure = departureFrom(problem, stop, problem.startNode, problem.dayStartSeconds);
  return departure + driveBetween(problem, stop, problem.endNode);
}

/** The earliest return with the stop at any place of the order, were the day endless; Infinity when a window forbids each. */
function earliestBackWith(problem: DayProblem, timed: TimedOrder, stop: StopIndex): number {
  const endless = { ...problem, latestReturnSeconds: Infinity };
  let earliest = Infinity;
  for (let position = 0; position <= timed.order.length; position += 1) {
    const order = orderWith(endless, timed.order, stop, position);
    if (isSettled(endless, order)) earliest = Math.min(earliest, timeOrder(endless, order)?.returnSeconds ?? Infinity);
  }
  return earliest;
}

function limitWords({ dayEndSeconds, latestReturnSeconds }: DayProblem): string {
  if (dayEndSeconds === latestReturnSeconds) return `the day ends at ${clockTime(dayEndSeconds)}`;
  return `the day ends at ${clockTime(dayEndSeconds)}, with overtime at ${clockTime(latestReturnSeconds)}`;
}

function windowWords({ windows }: RouteStop): string {
  const spans = windows.map(({ fromMinute, toMinute }) => `between ${clockTime(fromMinute * 60)} and ${clockTime(toMinute * 60)}`);
  return spans.join(" or ");
}
