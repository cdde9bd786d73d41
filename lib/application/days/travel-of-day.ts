import { type CalendarDate, daysBetween } from "#domain/foundation/calendar-date";
import { invariant } from "#domain/foundation/invariant";
import { type RouteDayQuestion, type RouteStop } from "#domain/routing/day-route";
import { estimateTravel, type Position, type TravelEstimate, type TravelMatrix } from "#domain/routing/travel-time";
import { calendarDayOf } from "#application/stored-day";
import { type Work } from "#application/use-case";

/**
 * How the house guesses drives until it has roads: straight lines times 1.3 at 25 mph, and two minutes for each way to
 * park and to leave. An estimate of the house: between 1.2 and 1.4 roads are longer than straight lines in towns, and
 * 25 mph is what a truck with a tank makes between lawns, lights included. Common practice, not measured.
 */
export const HOUSE_TRAVEL: TravelEstimate = { detourFactor: 1.3, speedMetersPerSecond: 11.176, secondsPerWay: 120 };

/** What every screen and paper says beside a time that rests on the estimate. */
export const HOUSE_TRAVEL_WORDS = "Drives are an estimate of the house: the straight line times 1.3, at 25 mph, plus 2 minutes for each way.";

/** A stop as its row has it, with what its visit and property say of its time and place. */
export interface StopOfDay {
  readonly visitId: string;
  readonly position: number;
  readonly isPinned: boolean;
  /** False once somebody has been there: its place in the order is history. */
  readonly isPlanned: boolean;
  readonly street: string;
  readonly place: Position | null;
  readonly serviceMinutes: number;
  readonly window: { readonly fromMinute: number; readonly untilMinute: number } | null;
  readonly closesOn: CalendarDate;
}

/** A truck's day as far as its times hang on it. */
export interface HoursOfDay {
  readonly date: CalendarDate;
  readonly startsAtMinute: number;
  readonly endsAtMinute: number;
}

/** The stops of some route days in their order, by day, with four queries for all of them. */
export async function stopsOfDays(work: Work, routeDayIds: readonly string[]): Promise<ReadonlyMap<string, readonly StopOfDay[]>> {
  const { companyId } = work.company;
  const stops = await work.tx.stop.findMany({
    where: { companyId, routeDayId: { in: [...routeDayIds] } },
    orderBy: [{ position: "asc" }, { visitId: "asc" }],
  });
  const visits = await work.tx.visit.findMany({ where: { companyId, visitId: { in: stops.map(({ visitId }) => visitId) } } });
  const properties = await work.tx.property.findMany({
    where: { companyId, propertyId: { in: visits.map(({ propertyId }) => propertyId) } },
    select: { propertyId: true, street: true, latitude: true, longitude: true },
  });
  const visitOf = new Map(visits.map((visit) => [visit.visitId, visit]));
  const propertyOf = new Map(properties.map((property) => [property.propertyId, property]));
  const byDay = new Map<string, StopOfDay[]>(routeDayIds.map((routeDayId) => [routeDayId, []]));
  for (const { visitId, routeDayId, position, isPinned } of stops) {
    const visit = visitOf.get(visitId);
    const property = visit === undefined ? undefined : propertyOf.get(visit.propertyId);
    invariant(visit !== undefined && property !== undefined, "a stop is a visit at a property");
    const { latitude, longitude } = property;
    const { windowFromMinute, windowUntilMinute } = visit;
    byDay.get(routeDayId)?.push({
      visitId,
      position,
      isPinned,
      isPlanned: visit.state === "planned",
      street: property.street,
      place: latitude === null || longitude === null ? null : { latitudeDegrees: latitude, longitudeDegrees: longitude },
      serviceMinutes: visit.serviceMinutes,
      window: windowFromMinute === null || windowUntilMinute === null ? null : { fromMinute: windowFromMinute, untilMinute: windowUntilMinute },
      closesOn: calendarDayOf(visit.closesOn),
    });
  }
  return byDay;
}

/** Where the trucks start and end: the shop, or null where nobody has said where it is. */
export async function shopPosition(work: Work): Promise<Position | null> {
  const shop = await work.tx.stockLocation.findFirst({
    where: { companyId: work.company.companyId, kind: "shop" },
    orderBy: [{ createdAt: "asc" }, { stockLocationId: "asc" }],
  });
  const { latitude, longitude } = shop ?? { latitude: null, longitude: null };
  return latitude === null || longitude === null ? null : { latitudeDegrees: latitude, longitudeDegrees: longitude };
}

/** A question that can be answered, or what is missing for it, as sentences. */
export type QuestionOfDay =
  | { readonly kind: "whole"; readonly question: RouteDayQuestion; readonly travel: TravelMatrix }
  | { readonly kind: "missing"; readonly sentences: readonly string[] };

/** The question of one truck's day: from the shop and back, the stops in the order in which they stand. */
export function questionOfDay(shop: Position | null, day: HoursOfDay, stops: readonly StopOfDay[]): QuestionOfDay {
  const homeless = stops.filter(({ place }) => place === null).map(({ street }) => street);
  const sentences = [
    ...(shop === null ? ["Where the shop is is not on file."] : []),
    ...(homeless.length === 0 ? [] : [`Where ${homeless.join(" and ")} ${homeless.length === 1 ? "lies" : "lie"} is not on file.`]),
  ];
  if (shop === null || sentences.length > 0) return { kind: "missing", sentences };
  const travel = estimateTravel([shop, ...stops.flatMap(({ place }) => place ?? [])], HOUSE_TRAVEL);
  invariant(travel.ok, "positions on file lie on the earth");
  return {
    kind: "whole",
    travel: travel.value,
    question: {
      startPlaceIndex: 0,
      endPlaceIndex: 0,
      dayStartSeconds: day.startsAtMinute * 60,
      dayEndSeconds: day.endsAtMinute * 60,
      longestOvertimeSeconds: 0,
      stops: stops.map((stop, index) => routeStopOf(stop, index, day.date)),
    },
  };
}

function routeStopOf({ visitId, isPinned, isPlanned, serviceMinutes, window, closesOn }: StopOfDay, index: number, date: CalendarDate): RouteStop {
  return {
    stopId: visitId,
    placeIndex: index + 1,
    serviceMinutes,
    // The customer lets the crew on the ground until then, so work begins early enough to be done.
    windows: window === null || !isPlanned ? [] : [{ fromMinute: window.fromMinute, toMinute: Math.max(window.fromMinute, window.untilMinute - serviceMinutes) }],
    dueWeight: dueWeight(date, closesOn),
    ...(isPinned || !isPlanned ? { pinnedPosition: index + 1 } : {}),
  };
}

/** A visit that closes within so many days weighs more by each day that it is nearer; past its window it weighs the most. */
const WEIGHED_DAYS = 14;

function dueWeight(date: CalendarDate, closesOn: CalendarDate): number {
  return 1 + Math.max(0, Math.min(WEIGHED_DAYS + 1, WEIGHED_DAYS - daysBetween(date, closesOn)));
}
