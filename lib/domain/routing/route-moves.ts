import {
  type DayProblem,
  type StopIndex,
  type TimedOrder,
  compareOrders,
  defined,
  departureFrom,
  driveBetween,
  latestArrivals,
  timeOrder,
} from "#domain/routing/day-timing";

/** The longest run of stops that is moved elsewhere in one piece. */
const LONGEST_RUN = 3;

/** An order with what makes a change of it cheap to judge. */
interface JudgedOrder {
  readonly timed: TimedOrder;
  /** Driving from the start to each position, and, the whole order the other way round, from each position back. */
  readonly forward: readonly number[];
  readonly backward: readonly number[];
  readonly latest: readonly number[];
  /** How many pinned stops lie before each position. */
  readonly pinnedBefore: readonly number[];
}

/** A run of the order, forward or turned round. */
interface Run {
  readonly first: number;
  readonly last: number;
  readonly isTurned: boolean;
}

/** The stops from one position through another are replaced by the same stops in another order, run by run. */
interface Move {
  readonly first: number;
  readonly last: number;
  readonly extraDriveSeconds: number;
  readonly runs: readonly Run[];
}

/**
 * Improves an order by turning a part of it round (2-opt, Croes 1958), moving a run of up to three stops elsewhere,
 * either way round (Or 1976), and exchanging two stops, until none of these helps. The stops stay the same, windows
 * are kept, pinned stops don't move, and the day never ends later than before or, where that is later, than it should.
 */
export function improveOrder(problem: DayProblem, timed: TimedOrder): TimedOrder {
  let current = timed;
  let better = sweep(problem, current);
  while (better !== current) {
    current = better;
    better = sweep(problem, current);
  }
  return current;
}

/** Looks once at every part of the order and makes each change that helps where it is found. */
function sweep(problem: DayProblem, timed: TimedOrder): TimedOrder {
  const count = timed.order.length;
  let judged = judge(problem, timed);
  for (let first = 0; first < count - 1; first += 1) {
    for (let last = first + 1; last < count; last += 1) {
      const better = bestChange(problem, judged, movesWithin(problem, judged, first, last));
      if (better !== undefined) judged = judge(problem, better);
    }
  }
  return judged.timed;
}

function bestChange(problem: DayProblem, judged: JudgedOrder, moves: readonly Move[]): TimedOrder | undefined {
  const isLate = judged.timed.returnSeconds > problem.dayEndSeconds;
  let best: TimedOrder | undefined;
  for (const move of moves) {
    // Less driving is all that helps, unless the day is too long: then more driving may save waiting.
    if (!isLate && move.extraDriveSeconds >= 0) continue;
    const changed = changedOrder(problem, judged, move);
    if (changed !== undefined && compareOrders(problem, changed, best ?? judged.timed) < 0) best = changed;
  }
  return best;
}

function judge(problem: DayProblem, timed: TimedOrder): JudgedOrder {
  const { order } = timed;
  const forward = [0];
  const backward = [0];
  const pinnedBefore = [0];
  for (const [position, stop] of order.entries()) {
    pinnedBefore.push(defined(pinnedBefore[position]) + (problem.pins[stop] === 0 ? 0 : 1));
    if (position === 0) continue;
    const before = defined(order[position - 1]);
    forward.push(defined(forward[position - 1]) + driveBetween(problem, before, stop));
    backward.push(defined(backward[position - 1]) + driveBetween(problem, stop, before));
  }
  const latest = latestArrivals(problem, order, Math.max(problem.dayEndSeconds, timed.returnSeconds));
  return { timed, forward, backward, latest, pinnedBefore };
}

function changedOrder(problem: DayProblem, judged: JudgedOrder, move: Move): TimedOrder | undefined {
  const { order, departures } = judged.timed;
  let clock = move.first === 0 ? problem.dayStartSeconds : defined(departures[move.first - 1]);
  let node = nodeAt(problem, order, move.first - 1);
  for (const { first, last, isTurned } of move.runs) {
    for (let step = 0; step <= last - first; step += 1) {
      const stop = defined(order[isTurned ? last - step : first + step]);
      clock = departureFrom(problem, stop, node, clock);
      if (clock > problem.latestReturnSeconds) return undefined;
      node = stop;
    }
  }
  const next = move.last + 1;
  if (clock + driveBetween(problem, node, nodeAt(problem, order, next)) > defined(judged.latest[next])) return undefined;
  const middle = move.runs.flatMap((run) => stopsOf(order, run));
  return timeOrder(problem, [...order.slice(0, move.first), ...middle, ...order.slice(next)]);
}

function movesWithin(problem: DayProblem, judged: JudgedOrder, first: number, last: number): Move[] {
  const moves: Move[] = [];
  if (isFree(judged, first, last)) {
    moves.push(rearranged(problem, judged, first, last, [{ first, last, isTurned: true }]));
    moves.push(...runsMoved(problem, judged, first, last));
  }
  if (last > first + 1 && isFree(judged, first, first) && isFree(judged, last, last)) {
    moves.push(exchange(problem, judged, first, last));
  }
  return moves;
}

/** Whether no stop from one position through another is pinned. */
function isFree({ pinnedBefore }: JudgedOrder, first: number, last: number): boolean {
  return pinnedBefore[last + 1] === pinnedBefore[first];
}

function nodeAt(problem: DayProblem, order: readonly StopIndex[], position: number): number {
  return order[position] ?? (position < 0 ? problem.startNode : problem.endNode);
}

function withinRun({ forward, backward }: JudgedOrder, { first, last, isTurned }: Run): number {
  const along = isTurned ? backward : forward;
  return defined(along[last]) - defined(along[first]);
}

function stopsOf(order: readonly StopIndex[], { first, last, isTurned }: Run): StopIndex[] {
  const stops = order.slice(first, last + 1);
  return isTurned ? stops.reverse() : stops;
}

/** The move that puts runs, which together are the stops from the first to the last position, one after the other. */
function rearranged(problem: DayProblem, judged: JudgedOrder, first: number, last: number, runs: readonly Run[]): Move {
  const { order } = judged.timed;
  let node = nodeAt(problem, order, first - 1);
  let drive = 0;
  for (const run of runs) {
    drive += driveBetween(problem, node, defined(order[run.isTurned ? run.last : run.first])) + withinRun(judged, run);
    node = defined(order[run.isTurned ? run.first : run.last]);
  }
  const after = nodeAt(problem, order, last + 1);
  const now =
    driveBetween(problem, nodeAt(problem, order, first - 1), defined(order[first])) +
    withinRun(judged, { first, last, isTurned: false }) +
    driveBetween(problem, defined(order[last]), after);
  const extraDriveSeconds = drive + driveBetween(problem, node, after) - now;
  return { first, last, extraDriveSeconds, runs };
}

/** The runs at either end of a part of the order, moved to its other end. */
function runsMoved(problem: DayProblem, judged: JudgedOrder, first: number, last: number): Move[] {
  const moves: Move[] = [];
  for (let length = 1; length <= Math.min(LONGEST_RUN, last - first); length += 1) {
    for (const isTurned of length === 1 ? [false] : [false, true]) {
      const ahead = { first, last: first + length - 1, isTurned };
      moves.push(rearranged(problem, judged, first, last, [{ first: first + length, last, isTurned: false }, ahead]));
      const behind = { first: last - length + 1, last, isTurned };
      moves.push(rearranged(problem, judged, first, last, [behind, { first, last: last - length, isTurned: false }]));
    }
  }
  return moves;
}

function exchange(problem: DayProblem, judged: JudgedOrder, first: number, last: number): Move {
  return rearranged(problem, judged, first, last, [
    { first: last, last, isTurned: false },
    { first: first + 1, last: last - 1, isTurned: false },
    { first, last: first, isTurned: false },
  ]);
}
