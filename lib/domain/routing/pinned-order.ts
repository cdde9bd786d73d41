import { type DayProblem, type StopIndex, defined } from "#domain/routing/day-timing";

/**
 * The stops in order with the pinned ones at their positions and the others, in the order given, in between. Where
 * there are too few others to reach a position, the pinned ones follow at the end, too early: see {@link isSettled}.
 */
export function mergePinned(problem: DayProblem, stops: readonly StopIndex[]): StopIndex[] {
  const isPinned = (stop: StopIndex) => defined(problem.pins[stop]) > 0;
  const pinned = stops.filter(isPinned).sort((one, other) => defined(problem.pins[one]) - defined(problem.pins[other]));
  if (pinned.length === 0) return [...stops];
  const others = stops.filter((stop) => !isPinned(stop));
  const merged: StopIndex[] = [];
  let nextPinned = 0;
  let nextOther = 0;
  while (merged.length < stops.length) {
    const stop = pinned[nextPinned];
    const isDue = stop !== undefined && (problem.pins[stop] === merged.length + 1 || nextOther === others.length);
    if (isDue) nextPinned += 1;
    else nextOther += 1;
    merged.push(isDue ? stop : defined(others[nextOther - 1]));
  }
  return merged;
}

/** The order with one more stop before a position (from 0), or a pinned one at its own; pinned ones keep theirs. */
export function orderWith(problem: DayProblem, order: readonly StopIndex[], stop: StopIndex, position: number): StopIndex[] {
  return mergePinned(problem, [...order.slice(0, position), stop, ...order.slice(position)]);
}

/** Whether each pinned stop of an order is at its position. */
export function isSettled(problem: DayProblem, order: readonly StopIndex[]): boolean {
  return order.every((stop, index) => problem.pins[stop] === 0 || problem.pins[stop] === index + 1);
}

/** Whether any stop of an order is pinned. */
export function hasPinned(problem: DayProblem, order: readonly StopIndex[]): boolean {
  return order.some((stop) => defined(problem.pins[stop]) > 0);
}
