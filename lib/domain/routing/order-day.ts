import { type Outcome, accept, badInput, refuse } from "#domain/foundation/outcome";
import { appendInOrder, insertCheapest, insertGroups } from "#domain/routing/cheapest-insertion";
import { type DayRoute, type PlannedStop, type RouteDayQuestion, refuseRouteDay } from "#domain/routing/day-route";
import {
  type DayProblem,
  type StopIndex,
  type TimedOrder,
  compareOrders,
  defined,
  earliestStart,
  layOutDay,
  servedWeight,
  timeOrder,
} from "#domain/routing/day-timing";
import { whyLeftOut } from "#domain/routing/left-out-reason";
import { hasPinned, isSettled, mergePinned } from "#domain/routing/pinned-order";
import { improveOrder } from "#domain/routing/route-moves";
import { type TravelMatrix, travelMeters, travelSeconds } from "#domain/routing/travel-time";

/** How often the day is begun anew with what was left out going in first. */
const ROUNDS_FOR_LEFT_OUT = 4;

/** With pinned stops, up to this many stops are weighed against each other at every insertion. */
const MOST_STOPS_JUDGED_TOGETHER = 60;

/**
 * Orders one crew's stops of one day: serve the heaviest sum of what is due, then the least overtime, then the least
 * driving, then the earliest return; windows, the longest overtime and pinned positions are always kept. A stop that
 * finds no place is left out with the reason; a pinned one gives way only if its position can't be kept.
 *
 * The search builds orders by cheapest insertion and improves them until no change of a known kind helps. It is good,
 * not perfect, and the same question always has the same answer: of equals, the stop listed first goes first. Given the
 * order in which the day stands (stop ids, unknown ones skipped), the answer is never worse than that order, where it
 * can be kept as it stands and names every pinned stop.
 *
 * Refuses what {@link refuseRouteDay} refuses, and a `standingOrder` that names a stop twice.
 */
export function orderDay(
  question: RouteDayQuestion,
  travel: TravelMatrix,
  standingOrder: readonly string[] = [],
): Outcome<DayRoute> {
  const refusal = refuseRouteDay(question, travel);
  if (refusal !== undefined) return refuse(refusal);
  const twice = standingOrder.find((stopId, index) => standingOrder.indexOf(stopId) !== index);
  if (twice !== undefined) {
    return badInput("standingOrder", twice, "each stop once", `The standing order names the stop ${twice} twice.`);
  }
  const problem = layOutDay(question, travel);
  const ids = question.stops.map(({ stopId }) => stopId);
  const standing = standingOrder.map((stopId) => ids.indexOf(stopId)).filter((stop) => stop >= 0);
  return accept(writeDay(question, travel, problem, searchOrder(problem, standing)));
}

function searchOrder(problem: DayProblem, standing: readonly StopIndex[]): TimedOrder {
  const all = Array.from({ length: problem.stopCount }, (_, stop) => stop);
  let best = improveFully(problem, build(problem, [], all, standing));
  const consider = (groups: readonly (readonly StopIndex[])[]) => {
    const found = improveFully(problem, build(problem, groups, all, []));
    if (compareOrders(problem, found, best) < 0) best = found;
    return found;
  };
  consider(byWeight(problem, all));
  consider(byDeadline(problem, all).map((stop) => [stop]));
  let eager: readonly StopIndex[] = [];
  let last = best;
  for (let round = 0; round < ROUNDS_FOR_LEFT_OUT && best.order.length < all.length; round += 1) {
    const { order } = last;
    const leftOut = all.filter((stop) => !order.includes(stop));
    eager = [...leftOut, ...eager.filter((stop) => !leftOut.includes(stop))];
    last = consider(eager.map((stop) => [stop]));
  }
  return best;
}

function byDeadline(problem: DayProblem, stops: readonly StopIndex[]): StopIndex[] {
  const deadline = (stop: StopIndex) => {
    const ends = defined(problem.windows[stop]).map(({ to }) => to);
    return ends.length === 0 ? Number.MAX_VALUE : Math.max(...ends);
  };
  return [...stops].sort((one, other) => deadline(one) - deadline(other) || one - other);
}

/** Stops of one weight together, the heaviest first. */
function byWeight(problem: DayProblem, stops: readonly StopIndex[]): StopIndex[][] {
  const weights = [...new Set(problem.weights)].sort((one, other) => other - one);
  return weights.map((weight) => stops.filter((stop) => problem.weights[stop] === weight));
}

/**
 * Builds an order: pinned stops first, then a standing order, then the groups, then whatever fits. When too few stops
 * fit for the last pinned position, that stop is left out and the rest built again.
 */
function build(
  problem: DayProblem,
  groups: readonly (readonly StopIndex[])[],
  all: readonly StopIndex[],
  standing: readonly StopIndex[],
): TimedOrder {
  const isPinned = (stop: StopIndex) => defined(problem.pins[stop]) > 0;
  const empty = defined(timeOrder(problem, []));
  const unpinned = [...groups, all].map((group) => group.filter((stop) => !isPinned(stop)));
  const standingUnpinned = standing.filter((stop) => !isPinned(stop));
  let pinned = mergePinned(problem, all.filter(isPinned));
  // Judging every place of every stop between pinned ones grows with the fourth power: on a long day one by one.
  const isLong = pinned.length > 0 && all.length > MOST_STOPS_JUDGED_TOGETHER;
  const inTurn = isLong ? insertGroups(problem, empty, unpinned).order.map((stop) => [stop]) : [];
  for (;;) {
    const begun = appendInOrder(problem, empty, pinned);
    pinned = begun.order.slice(0, -1);
    const withStanding = appendInOrder(problem, begun, standingUnpinned);
    const remaining = isLong ? unpinned.flat().map((stop) => [stop]) : unpinned;
    const built = insertGroups(problem, withStanding, [...inTurn, ...remaining]);
    if (isSettled(problem, built.order)) return built;
  }
}

/** Improves, puts in what has room then, and exchanges what is served for what is left out, until nothing helps. */
function improveFully(problem: DayProblem, built: TimedOrder): TimedOrder {
  let current = improveOrder(problem, built);
  for (;;) {
    const next = withOneMore(problem, current) ?? withExchanges(problem, current);
    if (next === current) return current;
    current = improveOrder(problem, next);
  }
}

function leftOutOf(problem: DayProblem, { order }: TimedOrder): StopIndex[] {
  const served = new Set(order);
  return Array.from({ length: problem.stopCount }, (_, stop) => stop).filter((stop) => !served.has(stop));
}

function withOneMore(problem: DayProblem, timed: TimedOrder): TimedOrder | undefined {
  return insertCheapest(problem, timed, leftOutOf(problem, timed));
}

/** Left-out stops in the place of served ones that aren't pinned, wherever that makes a better day. */
function withExchanges(problem: DayProblem, timed: TimedOrder): TimedOrder {
  let current = timed;
  const isLong = timed.order.length > MOST_STOPS_JUDGED_TOGETHER && hasPinned(problem, timed.order);
  for (const served of timed.order) {
    const leftOut = leftOutOf(problem, current);
    if (leftOut.length === 0) return current;
    if (defined(problem.pins[served]) > 0) continue;
    const rest = timeOrder(problem, mergePinned(problem, current.order.filter((stop) => stop !== served)));
    if (rest === undefined) continue;
    const weight = defined(problem.weights[served]);
    for (const stop of leftOut.filter((candidate) => defined(problem.weights[candidate]) >= weight)) {
      const inItsPlace = () => timeOrder(problem, current.order.map((other) => (other === served ? stop : other)));
      const changed = isLong && current.order.includes(served) ? inItsPlace() : insertCheapest(problem, rest, [stop]);
      if (changed === undefined || !isSettled(problem, changed.order)) continue;
      if (compareOrders(problem, changed, current) < 0) current = changed;
    }
  }
  return current;
}

function writeDay(question: RouteDayQuestion, travel: TravelMatrix, problem: DayProblem, timed: TimedOrder): DayRoute {
  const stops: PlannedStop[] = [];
  let place = question.startPlaceIndex;
  let clock = problem.dayStartSeconds;
  for (const [index, stopIndex] of timed.order.entries()) {
    const stop = defined(question.stops[stopIndex]);
    const driveSeconds = travelSeconds(travel, place, stop.placeIndex);
    const driveMeters = travelMeters(travel, place, stop.placeIndex);
    const arrivalSeconds = clock + driveSeconds;
    const startSeconds = earliestStart(problem, stopIndex, arrivalSeconds);
    const waitSeconds = startSeconds - arrivalSeconds;
    clock = startSeconds + stop.serviceMinutes * 60;
    place = stop.placeIndex;
    stops.push({ stopId: stop.stopId, position: index + 1, driveSeconds, driveMeters, arrivalSeconds, waitSeconds, startSeconds, departureSeconds: clock });
  }
  const leaves = stops.length > 0;
  const homeDriveSeconds = leaves ? travelSeconds(travel, place, question.endPlaceIndex) : 0;
  const homeDriveMeters = leaves ? travelMeters(travel, place, question.endPlaceIndex) : 0;
  const sum = (of: (stop: PlannedStop) => number) => stops.reduce((total, stop) => total + of(stop), 0);
  const totals = {
    servedWeight: servedWeight(problem, timed.order),
    driveSeconds: sum((stop) => stop.driveSeconds) + homeDriveSeconds,
    driveMeters: sum((stop) => stop.driveMeters) + homeDriveMeters,
    waitSeconds: sum((stop) => stop.waitSeconds),
    serviceSeconds: sum((stop) => stop.departureSeconds - stop.startSeconds),
    overtimeSeconds: Math.max(0, timed.returnSeconds - problem.dayEndSeconds),
  };
  const leftOut = leftOutOf(problem, timed).map((stop) => whyLeftOut(problem, timed, stop, defined(question.stops[stop])));
  return { travelBasis: travel.basis, stops, homeDriveSeconds, homeDriveMeters, returnSeconds: timed.returnSeconds, totals, leftOut };
}
