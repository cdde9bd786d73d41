import { lockCompany } from "#adapters/postgres/company-work";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { invariant } from "#domain/foundation/invariant";
import { type Outcome } from "#domain/foundation/outcome";
import { timeInOrder } from "#domain/routing/time-in-order";
import { conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { questionOfDay, shopPosition, type StopOfDay, stopsOfDays } from "#application/days/travel-of-day";
import { calendarDayOf } from "#application/stored-day";
import { type Work } from "#application/use-case";

/** A truck's day that nobody else changes until this is done. */
export interface DayUnderChange {
  readonly routeDayId: string;
  readonly date: CalendarDate;
  readonly vehicleId: string;
  readonly truck: string;
  readonly operatorId: string;
  readonly startsAtMinute: number;
  readonly endsAtMinute: number;
  readonly version: number;
  readonly stops: readonly StopOfDay[];
}

/** Locks the company and reads a truck's day as it then stands; undefined when the company has no such day. */
export async function dayUnderChange(work: Work, routeDayId: string): Promise<DayUnderChange | undefined> {
  await lockCompany(work.tx);
  const { companyId } = work.company;
  const day = await work.tx.routeDay.findUnique({ where: { companyId_routeDayId: { companyId, routeDayId } } });
  if (day === null) return undefined;
  const vehicle = await work.tx.vehicle.findUniqueOrThrow({ where: { companyId_vehicleId: { companyId, vehicleId: day.vehicleId } } });
  return {
    routeDayId,
    date: calendarDayOf(day.date),
    vehicleId: day.vehicleId,
    truck: `Truck ${String(vehicle.number)}`,
    operatorId: day.operatorId,
    startsAtMinute: day.startsAtMinute,
    endsAtMinute: day.endsAtMinute,
    version: day.version,
    stops: (await stopsOfDays(work, [routeDayId])).get(routeDayId) ?? [],
  };
}

/** A visit that may still be planned, with its place, or why not. Lock the company first. */
export async function visitUnderChange(work: Work, visitId: string) {
  const { companyId } = work.company;
  const visit = await work.tx.visit.findUnique({ where: { companyId_visitId: { companyId, visitId } } });
  if (visit === null) return notFound("visit");
  if (visit.state !== "planned") return conflict("Somebody has been there already: what was done, or not done, stays on its day.");
  const stop = await work.tx.stop.findUnique({ where: { companyId_visitId: { companyId, visitId } } });
  return { ok: true as const, value: { visit, stop } };
}

export const NO_SUCH_DAY = notFound("truck on that day");

/** What became of a day's times. */
export interface RetimedDay {
  readonly version: number;
  /** When the truck is back, in minutes of the local day; null where a position is missing. */
  readonly returnsAtMinute: number | null;
}

/**
 * Numbers a day's stops in the order given and times them anew; stops that are not named come after them in their old
 * order. Where the shop's or a property's position is not on file the times are emptied: an old time would be a wrong one.
 * Arrival is when work begins: nobody is on the ground before its window opens.
 */
export async function settleOrder(work: Work, routeDayId: string, order?: readonly string[]): Promise<RetimedDay> {
  const { companyId } = work.company;
  const day = await work.tx.routeDay.update({ where: { companyId_routeDayId: { companyId, routeDayId } }, data: { version: { increment: 1 } } });
  const standing = (await stopsOfDays(work, [routeDayId])).get(routeDayId) ?? [];
  const placeIn = new Map(order?.map((visitId, index) => [visitId, index]));
  const stops = [...standing].sort((one, other) => (placeIn.get(one.visitId) ?? standing.length) - (placeIn.get(other.visitId) ?? standing.length));
  const hours = { date: calendarDayOf(day.date), startsAtMinute: day.startsAtMinute, endsAtMinute: day.endsAtMinute };
  const asked = questionOfDay(await shopPosition(work), hours, stops);
  const timed = asked.kind === "missing" ? undefined : timeInOrder(asked.question, asked.travel);
  invariant(timed?.ok !== false, "a day on file can be timed");
  for (const [index, { visitId }] of stops.entries()) {
    const times = timed?.value.stops[index];
    await work.tx.stop.update({
      where: { companyId_visitId: { companyId, visitId } },
      data: {
        position: index + 1,
        arrivesAtMinute: times === undefined ? null : minuteOf(times.startSeconds),
        driveMinutes: times === undefined ? null : Math.ceil(times.driveSeconds / 60),
      },
    });
  }
  return { version: day.version, returnsAtMinute: timed === undefined ? null : Math.ceil(timed.value.returnSeconds / 60) };
}

const LAST_MINUTE = 1439;

/** A day that runs past midnight is late beyond what a time of day can say; it stays at the last minute. */
function minuteOf(secondsOfDay: number): number {
  return Math.min(LAST_MINUTE, Math.ceil(secondsOfDay / 60));
}

/** When the truck is back as the day stands, in minutes of the local day; null where a position is missing. */
export async function returnOf(work: Work, day: DayUnderChange): Promise<number | null> {
  const asked = questionOfDay(await shopPosition(work), day, day.stops);
  if (asked.kind === "missing") return null;
  const timed = timeInOrder(asked.question, asked.travel);
  return timed.ok ? Math.ceil(timed.value.returnSeconds / 60) : null;
}

/** A person who may be named as the one who applies: of this company and still with it. */
export async function operatorOf(work: Work, operatorId: string): Promise<Outcome<{ readonly name: string }, UseCaseRefusal>> {
  const { companyId } = work.company;
  const person = await work.tx.person.findUnique({ where: { companyId_personId: { companyId, personId: operatorId } } });
  if (person === null) return notFound("person");
  return person.leftOn === null ? { ok: true, value: { name: person.name } } : conflict(`${person.name} has left the company. Choose someone else.`);
}
