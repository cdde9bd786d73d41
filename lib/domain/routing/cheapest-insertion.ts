import {
  type DayProblem,
  type StopIndex,
  type TimedOrder,
  defined,
  departureFrom,
  driveBetween,
  latestArrivals,
  timeOrder,
} from "#domain/routing/day-timing";
import { hasPinned, isSettled, mergePinned, orderWith } from "#domain/routing/pinned-order";

/** Where one more stop would go, and what it costs. */
interface Insertion {
  readonly stop: StopIndex;
  readonly position: number;
  readonly isOvertime: boolean;
  readonly extraDriveSeconds: number;
}

/**
 * Puts in the one stop of several that costs the least driving at its best position, places without overtime before
 * those with it; undefined when none of them fits. Of equals the one listed first goes in, at the earliest position.
 */
export function insertCheapest(
  problem: DayProblem,
  timed: TimedOrder,
  candidates: readonly StopIndex[],
): TimedOrder | undefined {
  const everybody = [...timed.order, ...candidates];
  if (hasPinned(problem, everybody)) return insertAmongPinned(problem, timed, candidates);
  const best = cheapestOf(problem, timed, candidates);
  if (best === undefined) return undefined;
  return defined(timeOrder(problem, orderWith(problem, timed.order, best.stop, best.position)));
}

/** Inserts group after group, each until nothing of it fits any more. */
export function insertGroups(
  problem: DayProblem,
  timed: TimedOrder,
  groups: readonly (readonly StopIndex[])[],
): TimedOrder {
  let current = timed;
  for (const group of groups) {
    let waiting = group.filter((stop) => !current.order.includes(stop));
    let next = insertCheapest(problem, current, waiting);
    while (next !== undefined) {
      const { order } = next;
      current = next;
      waiting = waiting.filter((stop) => !order.includes(stop));
      next = insertCheapest(problem, current, waiting);
    }
  }
  return current;
}

/**
 * Appends stops in the order given, leaving out what doesn't fit; the whole order is taken as it is when it can be
 * kept.
 */
export function appendInOrder(problem: DayProblem, timed: TimedOrder, stops: readonly StopIndex[]): TimedOrder {
  const whole = timeOrder(problem, mergePinned(problem, [...timed.order, ...stops]));
  if (whole !== undefined) return whole;
  let current = timed;
  for (const stop of stops) current = timeOrder(problem, mergePinned(problem, [...current.order, stop])) ?? current;
  return current;
}

/** Without pinned stops each place is judged in a few steps: the rest of the day bears a delay until a known time. */
function cheapestOf(problem: DayProblem, timed: TimedOrder, candidates: readonly StopIndex[]): Insertion | undefined {
  const { order, departures } = timed;
  const latest = latestArrivals(problem, order, problem.latestReturnSeconds);
  const latestWithoutOvertime = latestArrivals(problem, order, problem.dayEndSeconds);
  let best: Insertion | undefined;
  for (const stop of candidates) {
    for (let position = 0; position <= order.length; position += 1) {
      const from = position === 0 ? problem.startNode : defined(order[position - 1]);
      const to = position === order.length ? problem.endNode : defined(order[position]);
      const skipped = order.length === 0 ? 0 : driveBetween(problem, from, to);
      const extraDriveSeconds = driveBetween(problem, from, stop) + driveBetween(problem, stop, to) - skipped;
      const left = position === 0 ? problem.dayStartSeconds : defined(departures[position - 1]);
      const arrival = departureFrom(problem, stop, from, left) + driveBetween(problem, stop, to);
      if (arrival > defined(latest[position])) continue;
      const isOvertime = arrival > defined(latestWithoutOvertime[position]);
      const insertion = { stop, position, isOvertime, extraDriveSeconds };
      if (best === undefined || isCheaper(insertion, best)) best = insertion;
    }
  }
  return best;
}

/** With pinned stops one more stop moves others across them, so each place is judged by timing the whole order. */
function insertAmongPinned(
  problem: DayProblem,
  timed: TimedOrder,
  candidates: readonly StopIndex[],
): TimedOrder | undefined {
  const wasSettled = isSettled(problem, timed.order);
  let best: { readonly insertion: Insertion; readonly timed: TimedOrder } | undefined;
  for (const stop of candidates) {
    const lastPosition = problem.pins[stop] === 0 ? timed.order.length : 0;
    for (let position = 0; position <= lastPosition; position += 1) {
      const next = timeOrder(problem, orderWith(problem, timed.order, stop, position));
      if (next === undefined || (wasSettled && !isSettled(problem, next.order))) continue;
      const isOvertime = next.returnSeconds > problem.dayEndSeconds;
      const insertion = { stop, position, isOvertime, extraDriveSeconds: next.driveSeconds - timed.driveSeconds };
      if (best === undefined || isCheaper(insertion, best.insertion)) best = { insertion, timed: next };
    }
  }
  return best?.timed;
}

function isCheaper(one: Insertion, other: Insertion): boolean {
  if (one.isOvertime !== other.isOvertime) return other.isOvertime;
  return one.extraDriveSeconds < other.extraDriveSeconds;
}
