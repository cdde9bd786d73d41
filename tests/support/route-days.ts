import fc from "fast-check";
import { type DayRoute, type RouteDayQuestion, type RouteStop } from "#domain/routing/day-route";
import { orderDay } from "#domain/routing/order-day";
import { type TravelMatrix } from "#domain/routing/travel-time";

/** A matrix whose meters are ten times its seconds. */
export function travelOf(seconds: readonly (readonly number[])[]): TravelMatrix {
  const meters = seconds.map((row) => row.map((value) => value * 10));
  return { basis: { kind: "by-road", words: "Made up." }, seconds, meters };
}

/** Travel in the plane, as many seconds as units of length, rounded. */
export function planeTravel(points: readonly (readonly [number, number])[]): TravelMatrix {
  return travelOf(points.map(([x, y]) => points.map(([a, b]) => Math.round(Math.hypot(x - a, y - b)))));
}

/** A stop that takes no time, at any time, at the place of its number. */
export function stopAt(placeIndex: number, more: Partial<RouteStop> = {}): RouteStop {
  return { stopId: `stop ${placeIndex}`, placeIndex, serviceMinutes: 0, windows: [], dueWeight: 1, ...more };
}

/** A whole day from place 0 and back, without overtime. */
export function dayOf(stops: readonly RouteStop[], more: Partial<RouteDayQuestion> = {}): RouteDayQuestion {
  return { startPlaceIndex: 0, endPlaceIndex: 0, dayStartSeconds: 0, dayEndSeconds: 86_400, longestOvertimeSeconds: 0, stops, ...more };
}

/** The answer, where the question is known to be sound. */
export function answerOf(question: RouteDayQuestion, travel: TravelMatrix, standingOrder: readonly string[] = []): DayRoute {
  const outcome = orderDay(question, travel, standingOrder);
  if (!outcome.ok) throw new Error(outcome.refusal.sentence);
  return outcome.value;
}

export function orderOf(route: DayRoute): string[] {
  return route.stops.map(({ stopId }) => stopId);
}

/** What an order is worth: more weight, then less overtime, then less driving. */
export interface Worth {
  readonly weight: number;
  readonly overtime: number;
  readonly drive: number;
}

export function worthOf({ totals }: DayRoute): Worth {
  return { weight: totals.servedWeight, overtime: totals.overtimeSeconds, drive: totals.driveSeconds };
}

/** Whether one worth beats another. */
export function isBetter(one: Worth, other: Worth): boolean {
  if (one.weight !== other.weight) return one.weight > other.weight;
  return one.overtime === other.overtime ? one.drive < other.drive : one.overtime < other.overtime;
}

/** The best worth over every order of every choice of stops, tried one after the other. Pinned positions are kept. */
export function bestByTryingAll(question: RouteDayQuestion, { seconds }: TravelMatrix): Worth {
  let best: Worth = { weight: 0, overtime: 0, drive: 0 };
  const way = (from: number, to: number) => seconds[from]?.[to] ?? Infinity;
  const go = (place: number, clock: number, drive: number, weight: number, taken: readonly RouteStop[]) => {
    const back = clock + way(place, question.endPlaceIndex);
    const overtime = Math.max(0, back - question.dayEndSeconds);
    const found = { weight, overtime, drive: drive + way(place, question.endPlaceIndex) };
    if (taken.length > 0 && overtime <= question.longestOvertimeSeconds && isBetter(found, best)) best = found;
    for (const stop of question.stops) {
      if (taken.includes(stop) || (stop.pinnedPosition ?? taken.length + 1) !== taken.length + 1) continue;
      const arrival = clock + way(place, stop.placeIndex);
      const open = stop.windows.filter(({ toMinute }) => arrival <= toMinute * 60).map(({ fromMinute }) => Math.max(arrival, fromMinute * 60));
      const start = stop.windows.length === 0 ? arrival : Math.min(...open);
      if (start === Infinity) continue;
      go(stop.placeIndex, start + stop.serviceMinutes * 60, drive + way(place, stop.placeIndex), weight + stop.dueWeight, [...taken, stop]);
    }
  };
  go(question.startPlaceIndex, question.dayStartSeconds, 0, 0, []);
  return best;
}

/** What a made-up day may have. */
export interface DayShape {
  readonly mostStops: number;
  readonly windows: boolean;
  readonly pins: boolean;
  readonly shortDays: boolean;
}

/** A day made up by fast-check: points in the plane with ways that differ there and back. */
export function madeUpDay(shape: DayShape): fc.Arbitrary<{ readonly question: RouteDayQuestion; readonly travel: TravelMatrix }> {
  const point = fc.tuple(fc.integer({ min: 0, max: 3000 }), fc.integer({ min: 0, max: 3000 }));
  const window = fc.tuple(fc.integer({ min: 0, max: 500 }), fc.integer({ min: 0, max: 180 })).map(([from, length]) => ({ fromMinute: from, toMinute: from + length }));
  const stop = fc.record({
    serviceMinutes: fc.integer({ min: 0, max: 60 }),
    dueWeight: fc.integer({ min: 1, max: 3 }),
    windows: shape.windows ? fc.array(window, { maxLength: 2 }) : fc.constant([]),
    isPinned: shape.pins ? fc.integer({ min: 0, max: 3 }).map((value) => value === 0) : fc.constant(false),
  });
  return fc
    .record({
      places: fc.array(fc.tuple(point, stop), { minLength: 1, maxLength: shape.mostStops }),
      depots: fc.tuple(point, point),
      uphill: fc.integer({ min: 0, max: 20 }),
      dayMinutes: shape.shortDays ? fc.integer({ min: 60, max: 600 }) : fc.constant(1440),
      overtimeMinutes: shape.shortDays ? fc.integer({ min: 0, max: 60 }) : fc.constant(0),
      pinSeed: fc.integer({ min: 0, max: 1000 }),
    })
    .map(({ places, depots, uphill, dayMinutes, overtimeMinutes, pinSeed }) => {
      const points = [...depots, ...places.map(([where]) => where)];
      const seconds = points.map(([x, y]) => points.map(([a, b]) => Math.round(Math.hypot(x - a, y - b) + (Math.max(0, b - y) * uphill) / 100)));
      const stops = places.map(([, { isPinned, ...rest }], index) =>
        stopAt(index + 2, { ...rest, ...(isPinned ? { pinnedPosition: ((index + pinSeed) % places.length) + 1 } : {}) }),
      );
      const day = { endPlaceIndex: 1, dayEndSeconds: dayMinutes * 60, longestOvertimeSeconds: overtimeMinutes * 60 };
      return { question: dayOf(stops, day), travel: travelOf(seconds) };
    });
}
