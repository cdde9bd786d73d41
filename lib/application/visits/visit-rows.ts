import { comingHighsOf, type HighColumns } from "#application/days/coming-highs";
import { wateringOf } from "#application/properties/watering-on-file";
import { calendarDayOf } from "#application/stored-day";
import { type Work } from "#application/use-case";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type TankWater, tankWaterOf } from "#domain/properties/tank-water";
import { groupedBy } from "#domain/foundation/grouping";
import { type UsState } from "#domain/company/us-state";
import { invariant } from "#domain/foundation/invariant";
import { type UseRate } from "#domain/label/label-facts";
import { USE_RATE_BASES } from "#domain/label/label-rates";
import { type SpotWork } from "#domain/mixing/ticket-question";
import { rateFromAmounts } from "#domain/quantities/rate";
import { type MowingDay, mowingDayOf } from "#domain/properties/mowing-day";
import { type WateringOfProperty } from "#domain/properties/watering-fact";

// Visits with their tasks, properties and places on routes, as rows: a few queries for any number of visits.

/** One product of a visit as it was planned. */
export interface PlannedTreatment {
  readonly kind: "treatment";
  readonly line: number;
  readonly productId: string;
  readonly labelUse: string;
  readonly rate: UseRate;
  readonly rateText: string;
  /** There only for spot work; without it it goes all over its lawns. */
  readonly spot?: SpotWork;
  readonly reason: string;
  readonly equipmentId: string | null;
  readonly zoneIds: readonly string[];
}

/** Work without a product. */
export interface PlannedLook {
  readonly kind: "look";
  readonly line: number;
  readonly reason: string;
  readonly zoneIds: readonly string[];
}

export type VisitState = "planned" | "done" | "part-done" | "not-done";

/** A visit's place on a truck's day. */
export interface StopOfVisit {
  readonly routeDayId: string;
  readonly date: CalendarDate;
  readonly vehicleId: string;
  readonly operatorId: string;
  readonly position: number;
  readonly arrivesAtMinute: number | null;
  readonly driveMinutes: number | null;
  readonly isPinned: boolean;
  readonly startsAtMinute: number;
  readonly forecastHighF: number | null;
  /** Of the three days after, in their order. */
  readonly forecastFollowingHighsF: readonly (number | null)[];
}

export interface VisitRow {
  readonly visitId: string;
  readonly version: number;
  readonly name: string;
  readonly roundId: string | null;
  readonly opensOn: CalendarDate;
  readonly closesOn: CalendarDate;
  readonly state: VisitState;
  readonly window: { readonly fromMinute: number; readonly untilMinute: number } | null;
  readonly serviceMinutes: number;
  readonly secondLookAfterDays: number | null;
  readonly looksAgainAtId: string | null;
  readonly treatments: readonly PlannedTreatment[];
  readonly looks: readonly PlannedLook[];
  readonly stop: StopOfVisit | null;
  readonly property: WateringOfProperty & {
    readonly propertyId: string;
    readonly street: string;
    readonly city: string;
    readonly state: UsState;
    readonly zip: string;
    readonly position: { readonly latitude: number; readonly longitude: number } | null;
    readonly accessNote: string | null;
    readonly dogNote: string | null;
    /** Whether a tank can be filled there. */
    readonly tankWater: TankWater;
    /** Null where nobody has said. */
    readonly mowingDay: MowingDay | null;
  };
  readonly client: { readonly clientId: string; readonly name: string; readonly phone: string | null };
}

/** The visits of these ids, in the order of the ids; those that the company does not have are left out. */
export async function visitRows(work: Work, visitIds: readonly string[]): Promise<readonly VisitRow[]> {
  const { companyId } = work.company;
  const ofVisits = { companyId, visitId: { in: [...visitIds] } };
  const visits = await work.tx.visit.findMany({ where: ofVisits });
  const properties = await work.tx.property.findMany({ where: { companyId, propertyId: { in: visits.map(({ propertyId }) => propertyId) } } });
  const clients = await work.tx.client.findMany({ where: { companyId, clientId: { in: properties.map(({ clientId }) => clientId) } } });
  const tasks = await work.tx.visitTask.findMany({ where: ofVisits, orderBy: { line: "asc" } });
  const taskZones = await work.tx.visitTaskZone.findMany({ where: ofVisits });
  const stops = await work.tx.stop.findMany({ where: ofVisits });
  const days = await work.tx.routeDay.findMany({ where: { companyId, routeDayId: { in: stops.map(({ routeDayId }) => routeDayId) } } });
  const zonesOf = groupedBy(taskZones, ({ visitId, line }) => `${visitId} ${String(line)}`);
  const tasksOf = groupedBy(tasks, ({ visitId }) => visitId);
  const propertyOf = new Map(properties.map((property) => [property.propertyId, property]));
  const clientOf = new Map(clients.map((client) => [client.clientId, client]));
  const stopOf = new Map(stops.map((stop) => [stop.visitId, stop]));
  const dayOf = new Map(days.map((day) => [day.routeDayId, day]));
  const rowOf = new Map(
    visits.flatMap((visit): readonly (readonly [string, VisitRow])[] => {
      const property = propertyOf.get(visit.propertyId);
      const client = property === undefined ? undefined : clientOf.get(property.clientId);
      if (property === undefined || client === undefined) return [];
      const stop = stopOf.get(visit.visitId);
      const zoneIdsOf = (line: number) => (zonesOf.get(`${visit.visitId} ${String(line)}`) ?? []).map(({ zoneId }) => zoneId);
      const own = tasksOf.get(visit.visitId) ?? [];
      return [
        [
          visit.visitId,
          {
            visitId: visit.visitId,
            version: visit.version,
            name: visit.name,
            roundId: visit.roundId,
            opensOn: calendarDayOf(visit.opensOn),
            closesOn: calendarDayOf(visit.closesOn),
            state: visit.state as VisitState,
            window: windowOf(visit),
            serviceMinutes: visit.serviceMinutes,
            secondLookAfterDays: visit.secondLookAfterDays,
            looksAgainAtId: visit.looksAgainAtId,
            treatments: own.flatMap((task) => treatmentOf(task, zoneIdsOf(task.line))),
            looks: own.flatMap(({ kind, line, reason }) => (kind === "look" ? [{ kind: "look" as const, line, reason, zoneIds: zoneIdsOf(line) }] : [])),
            stop: stop === undefined ? null : stopOnDay(stop, dayOf.get(stop.routeDayId)),
            property: {
              propertyId: property.propertyId,
              street: property.street,
              city: property.city,
              state: property.state as UsState,
              zip: property.zip,
              position: property.latitude === null || property.longitude === null ? null : { latitude: property.latitude, longitude: property.longitude },
              accessNote: property.accessNote,
              dogNote: property.dogNote,
              tankWater: tankWaterOf(property.tankWater),
              mowingDay: mowingDayOf(property),
              ...wateringOf(property),
            },
            client: { clientId: client.clientId, name: client.name, phone: client.phone },
          },
        ],
      ];
    }),
  );
  return visitIds.flatMap((visitId) => rowOf.get(visitId) ?? []);
}

function windowOf({ windowFromMinute, windowUntilMinute }: { windowFromMinute: number | null; windowUntilMinute: number | null }): VisitRow["window"] {
  return windowFromMinute === null || windowUntilMinute === null ? null : { fromMinute: windowFromMinute, untilMinute: windowUntilMinute };
}

interface TaskColumns {
  readonly kind: string;
  readonly line: number;
  readonly productId: string | null;
  readonly labelUse: string | null;
  readonly rateBasis: string | null;
  readonly rateAmount: bigint | null;
  readonly ratePer: bigint | null;
  readonly rateText: string | null;
  readonly spotShareBasisPoints: number | null;
  readonly reason: string;
  readonly equipmentId: string | null;
}

/** A rate as its columns have it. */
export function useRateOf(basis: string, amount: bigint, per: bigint): UseRate {
  const known = USE_RATE_BASES.find((one) => one === basis);
  invariant(known !== undefined, "a stored rate is over area or in the finished spray");
  return rateFromAmounts(known, amount, per);
}

function treatmentOf(task: TaskColumns, zoneIds: readonly string[]): readonly PlannedTreatment[] {
  const { kind, line, productId, labelUse, rateBasis, rateAmount, ratePer, rateText, spotShareBasisPoints, reason, equipmentId } = task;
  if (kind !== "treatment" || productId === null || labelUse === null || rateBasis === null || rateAmount === null || ratePer === null || rateText === null) return [];
  return [{ kind, line, productId, labelUse, rate: useRateOf(rateBasis, rateAmount, ratePer), rateText, ...(spotShareBasisPoints === null ? {} : { spot: { shareBasisPoints: spotShareBasisPoints } }), reason, equipmentId, zoneIds }];
}

interface StopColumns {
  readonly routeDayId: string;
  readonly position: number;
  readonly arrivesAtMinute: number | null;
  readonly driveMinutes: number | null;
  readonly isPinned: boolean;
}

interface DayColumns extends HighColumns {
  readonly date: Date;
  readonly vehicleId: string;
  readonly operatorId: string;
  readonly startsAtMinute: number;
  readonly forecastHighF: number | null;
}

function stopOnDay(stop: StopColumns, day: DayColumns | undefined): StopOfVisit | null {
  if (day === undefined) return null;
  const { routeDayId, position, arrivesAtMinute, driveMinutes, isPinned } = stop;
  const { vehicleId, operatorId, startsAtMinute, forecastHighF } = day;
  return { routeDayId, date: calendarDayOf(day.date), vehicleId, operatorId, position, arrivesAtMinute, driveMinutes, isPinned, startsAtMinute, forecastHighF, forecastFollowingHighsF: comingHighsOf(day) };
}
