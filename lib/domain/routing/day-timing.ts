import { invariant } from "#domain/foundation/invariant";
import { type RouteDayQuestion } from "#domain/routing/day-route";
import { type TravelMatrix, travelSeconds } from "#domain/routing/travel-time";

/** A stop by its place in the question's list. */
export type StopIndex = number;

/** When work may begin at one stop, in seconds of the local day. */
interface WindowSeconds {
  readonly from: number;
  readonly to: number;
}

/** A question laid out for searching: stops as numbers, times in seconds, drives in one table. */
export interface DayProblem {
  readonly stopCount: number;
  /** Row and column of the crew's start and end in the table of drives, behind the stops. */
  readonly startNode: number;
  readonly endNode: number;
  readonly dayStartSeconds: number;
  readonly dayEndSeconds: number;
  /** The day's end with the longest overtime. */
  readonly latestReturnSeconds: number;
  readonly serviceSeconds: readonly number[];
  readonly weights: readonly number[];
  readonly windows: readonly (readonly WindowSeconds[])[];
  /** The pinned position from 1, or zero for a stop that isn't pinned. */
  readonly pins: readonly number[];
  /** Drive from node to node, row after row. */
  readonly drives: Float64Array;
}

/** An order whose times are worked out. */
export interface TimedOrder {
  readonly order: readonly StopIndex[];
  /** When the crew leaves each stop. */
  readonly departures: readonly number[];
  readonly returnSeconds: number;
  readonly driveSeconds: number;
}

/** Lays out a question that has been found sound. */
export function layOutDay(question: RouteDayQuestion, travel: TravelMatrix): DayProblem {
  const { stops } = question;
  const places = [...stops.map(({ placeIndex }) => placeIndex), question.startPlaceIndex, question.endPlaceIndex];
  const drives = new Float64Array(places.length * places.length);
  for (const [row, from] of places.entries()) {
    for (const [column, to] of places.entries()) drives[row * places.length + column] = travelSeconds(travel, from, to);
  }
  return {
    stopCount: stops.length,
    startNode: stops.length,
    endNode: stops.length + 1,
    dayStartSeconds: question.dayStartSeconds,
    dayEndSeconds: question.dayEndSeconds,
    latestReturnSeconds: question.dayEndSeconds + question.longestOvertimeSeconds,
    serviceSeconds: stops.map(({ serviceMinutes }) => serviceMinutes * 60),
    weights: stops.map(({ dueWeight }) => dueWeight),
    windows: stops.map(({ windows }) => windows.map(({ fromMinute, toMinute }) => ({ from: fromMinute * 60, to: toMinute * 60 }))),
    pins: stops.map(({ pinnedPosition }) => pinnedPosition ?? 0),
    drives,
  };
}

/** The seconds from one node to another. */
export function driveBetween(problem: DayProblem, from: number, to: number): number {
  return defined(problem.drives[from * (problem.stopCount + 2) + to]);
}

/**
 * When work at a stop can begin at the earliest for a crew that arrives at a time, both in seconds of the day; Infinity
 * when its windows are over.
 */
export function earliestStart(problem: DayProblem, stop: StopIndex, arrivalSeconds: number): number {
  const windows = defined(problem.windows[stop]);
  if (windows.length === 0) return arrivalSeconds;
  let earliest = Infinity;
  for (const { from, to } of windows) {
    if (arrivalSeconds <= to) earliest = Math.min(earliest, Math.max(arrivalSeconds, from));
  }
  return earliest;
}

/**
 * When the crew leaves a stop, in seconds of the day, to which it comes from a node that it left at such a second;
 * Infinity when it is too late there.
 */
export function departureFrom(problem: DayProblem, stop: StopIndex, fromNode: number, leftSeconds: number): number {
  const start = earliestStart(problem, stop, leftSeconds + driveBetween(problem, fromNode, stop));
  return start + defined(problem.serviceSeconds[stop]);
}

/**
 * The times of an order, or undefined when a window is missed or the crew is back later than it may. Beginning each
 * stop as early as can be is best for all that follow, so an order fails here only if it can't be kept at all.
 */
export function timeOrder(problem: DayProblem, order: readonly StopIndex[]): TimedOrder | undefined {
  if (order.length === 0) return { order, departures: [], returnSeconds: problem.dayStartSeconds, driveSeconds: 0 };
  const departures: number[] = [];
  let node = problem.startNode;
  let clock = problem.dayStartSeconds;
  let driveSeconds = 0;
  for (const stop of order) {
    driveSeconds += driveBetween(problem, node, stop);
    clock = departureFrom(problem, stop, node, clock);
    if (clock === Infinity) return undefined;
    departures.push(clock);
    node = stop;
  }
  const home = driveBetween(problem, node, problem.endNode);
  const returnSeconds = clock + home;
  if (returnSeconds > problem.latestReturnSeconds) return undefined;
  return { order, departures, returnSeconds, driveSeconds: driveSeconds + home };
}

/**
 * For each position the latest arrival from which the rest of the order can still be kept with a return by the given
 * time; one more for the crew's end place.
 */
export function latestArrivals(problem: DayProblem, order: readonly StopIndex[], returnBySeconds: number): number[] {
  const latest = new Array<number>(order.length + 1).fill(returnBySeconds);
  let nextNode = problem.endNode;
  for (let position = order.length - 1; position >= 0; position -= 1) {
    const stop = defined(order[position]);
    const bound = defined(latest[position + 1]) - driveBetween(problem, stop, nextNode) - defined(problem.serviceSeconds[stop]);
    latest[position] = latestStart(problem, stop, bound);
    nextNode = stop;
  }
  return latest;
}

function latestStart(problem: DayProblem, stop: StopIndex, boundSeconds: number): number {
  const windows = defined(problem.windows[stop]);
  if (windows.length === 0) return boundSeconds;
  let latest = -Infinity;
  for (const { from, to } of windows) {
    if (from <= boundSeconds) latest = Math.max(latest, Math.min(boundSeconds, to));
  }
  return latest;
}

/** The sum of the weights of the stops in an order. */
export function servedWeight(problem: DayProblem, order: readonly StopIndex[]): number {
  return order.reduce((sum, stop) => sum + defined(problem.weights[stop]), 0);
}

/**
 * Below zero when the first order is the better one: it serves more of what is due, or as much with less overtime, or
 * with less driving, or is back earlier. Zero when the goals don't tell them apart. The size says nothing.
 */
export function compareOrders(problem: DayProblem, one: TimedOrder, other: TimedOrder): number {
  const overtime = ({ returnSeconds }: TimedOrder) => Math.max(0, returnSeconds - problem.dayEndSeconds);
  return (
    servedWeight(problem, other.order) - servedWeight(problem, one.order) ||
    overtime(one) - overtime(other) ||
    one.driveSeconds - other.driveSeconds ||
    one.returnSeconds - other.returnSeconds
  );
}

/** The entry of a list at a place that the code itself has worked out. Throws where there is none. */
export function defined<Value>(value: Value | undefined): Value {
  invariant(value !== undefined, "a position lies within its list");
  return value;
}
