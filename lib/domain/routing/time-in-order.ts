import { type Outcome, accept, refuse } from "#domain/foundation/outcome";
import { invariant } from "#domain/foundation/invariant";
import { type RouteDayQuestion, type RouteStop, refuseRouteDay } from "#domain/routing/day-route";
import { type TravelMatrix, travelMeters, travelSeconds } from "#domain/routing/travel-time";

/** A stop where a person put it. Times are seconds of the local day. */
export interface TimedStop {
  readonly stopId: string;
  readonly driveSeconds: number;
  readonly driveMeters: number;
  /** When work begins: on arrival, or when a window opens. */
  readonly startSeconds: number;
  /** How late the crew comes for the last window; zero where it comes in time. */
  readonly lateSeconds: number;
}

/** A day in the order in which it stands. */
export interface TimedDay {
  readonly stops: readonly TimedStop[];
  readonly driveMeters: number;
  readonly returnSeconds: number;
}

/**
 * The times of the stops in the order in which the question lists them, whatever is missed on the way: a crew that
 * comes after the last window begins at once and is late. Pinned positions are not asked about. Refuses what
 * {@link refuseRouteDay} refuses.
 */
export function timeInOrder(question: RouteDayQuestion, travel: TravelMatrix): Outcome<TimedDay> {
  const refusal = refuseRouteDay(question, travel);
  if (refusal !== undefined) return refuse(refusal);
  const stops: TimedStop[] = [];
  let place = question.startPlaceIndex;
  let clock = question.dayStartSeconds;
  for (const stop of question.stops) {
    const driveSeconds = travelSeconds(travel, place, stop.placeIndex);
    const { startSeconds, lateSeconds } = beginning(stop, clock + driveSeconds);
    stops.push({ stopId: stop.stopId, driveSeconds, driveMeters: travelMeters(travel, place, stop.placeIndex), startSeconds, lateSeconds });
    clock = startSeconds + stop.serviceMinutes * 60;
    place = stop.placeIndex;
  }
  const leaves = stops.length > 0;
  const homeMeters = leaves ? travelMeters(travel, place, question.endPlaceIndex) : 0;
  return accept({
    stops,
    driveMeters: stops.reduce((sum, { driveMeters }) => sum + driveMeters, homeMeters),
    returnSeconds: leaves ? clock + travelSeconds(travel, place, question.endPlaceIndex) : clock,
  });
}

function beginning({ windows }: RouteStop, arrivalSeconds: number): { readonly startSeconds: number; readonly lateSeconds: number } {
  if (windows.length === 0) return { startSeconds: arrivalSeconds, lateSeconds: 0 };
  const reached = windows.filter(({ toMinute }) => arrivalSeconds <= toMinute * 60).map(({ fromMinute }) => Math.max(arrivalSeconds, fromMinute * 60));
  if (reached.length > 0) return { startSeconds: Math.min(...reached), lateSeconds: 0 };
  const lastEnd = Math.max(...windows.map(({ toMinute }) => toMinute * 60));
  invariant(arrivalSeconds > lastEnd, "a crew that reaches no window comes after the last");
  return { startSeconds: arrivalSeconds, lateSeconds: arrivalSeconds - lastEnd };
}
