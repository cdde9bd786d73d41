import { addDays, type CalendarDate } from "#domain/foundation/calendar-date";
import { causesOf, type FindingCause } from "#domain/foundation/finding-causes";
import { accept } from "#domain/foundation/outcome";
import { localTimeAt } from "#domain/weather/local-hours";
import { comingHighsOf } from "#application/days/coming-highs";
import { readDayFacts } from "#application/days/day-facts";
import { type OpenVisits, openVisitsOn } from "#application/days/open-visits";
import { readDaySchema } from "#application/days/read-day.schema";
import { truckOf } from "#application/days/tank-findings";
import { loadFactsOf } from "#application/days/tank-plan-of-day";
import { shopPosition, stopsOfDays } from "#application/days/travel-of-day";
import { type TicketsByVisit, type TruckRow, truckShown, type TruckShown } from "#application/days/truck-shown";
import { dayOf } from "#application/stored-day";
import { useCase, type Work } from "#application/use-case";
import { ticketsOfVisits } from "#application/visits/visit-ticket";

/** A day of all trucks. */
export interface DayShown {
  readonly date: CalendarDate;
  readonly today: CalendarDate;
  readonly forecast: { readonly highF: number; readonly followingHighsF: readonly (number | null)[]; readonly source: string } | null;
  /** By the number of the truck. */
  readonly trucks: readonly TruckShown[];
  /** What stands against the day, by cause, the gravest first. */
  readonly causes: readonly FindingCause[];
  readonly open: OpenVisits;
  readonly totals: {
    readonly stops: number;
    readonly held: number;
    readonly done: number;
    readonly withoutTicket: number;
  };
  readonly knowsShop: boolean;
  /** Trucks that are not out that day. */
  readonly freeVehicles: readonly { readonly vehicleId: string; readonly number: number; readonly name: string }[];
  /** Who may be named as the one who applies. */
  readonly people: readonly { readonly personId: string; readonly name: string }[];
}

/** From this hour of the company's clock on, the day one looks at is tomorrow's. Common practice of planning the evening before. */
const LOOKS_AHEAD_FROM = "15:00";

/** The day on which the place opens: today, and from 3 pm of the company's clock on, tomorrow. */
export function dayToOpen(now: Date, timeZone: string): { readonly today: CalendarDate; readonly opensOn: CalendarDate } {
  const { date, localTime } = localTimeAt(now.getTime(), timeZone);
  return { today: date, opensOn: localTime >= LOOKS_AHEAD_FROM ? addDays(date, 1) : date };
}

/**
 * A day as it stands: trucks with their stops in order, what each puts down and what stands against it, the day's causes,
 * loading and fills per truck, and the open visits that are on no truck. The number of queries does not hang on the
 * number of stops.
 */
export const readDay = useCase("days/read-day", readDaySchema, async (work, input) => {
  const { today, opensOn } = dayToOpen(work.now, work.company.timeZone);
  const date = input.date ?? opensOn;
  const { rows, forecast, freeVehicles, people } = await readTrucks(work, date);
  const stopsByDay = await stopsOfDays(work, rows.map(({ routeDayId }) => routeDayId));
  const visitIds = [...stopsByDay.values()].flatMap((stops) => stops.map(({ visitId }) => visitId));
  const worked = visitIds.length === 0 ? [] : await ticketsOfVisits(work, visitIds);
  const tickets: TicketsByVisit = new Map(worked.map((one) => [one.visit.visitId, one]));
  const facts = await readDayFacts(work, visitIds);
  const load = await loadFactsOf(work, date, worked);
  const shop = await shopPosition(work);
  const trucks = rows.map((row) => truckShown(row, stopsByDay.get(row.routeDayId) ?? [], shop, tickets, facts, load));
  const stops = trucks.flatMap((truck) => truck.stops);
  const toDo = stops.filter(({ visit }) => visit.state === "planned");
  return accept({
    date,
    today,
    forecast,
    trucks,
    causes: causesOf(trucks.flatMap(({ found }) => found)),
    open: await openVisitsOn(work, date),
    totals: {
      stops: stops.length,
      held: toDo.filter(({ isHeld }) => isHeld).length,
      done: stops.length - toDo.length,
      withoutTicket: toDo.filter(({ ticket, visit }) => visit.treatments.length > 0 && ticket?.isOfPresentPlan !== true).length,
    },
    knowsShop: shop !== null,
    freeVehicles,
    people,
  } satisfies DayShown);
});

async function readTrucks(work: Work, date: CalendarDate) {
  const { companyId } = work.company;
  const days = await work.tx.routeDay.findMany({ where: { companyId, date: dayOf(date) } });
  const vehicles = await work.tx.vehicle.findMany({ where: { companyId }, orderBy: { number: "asc" } });
  const everyone = await work.tx.person.findMany({ where: { companyId }, orderBy: [{ name: "asc" }, { personId: "asc" }] });
  const nameOf = new Map(everyone.map(({ personId, name }) => [personId, name]));
  const rows = vehicles.flatMap((vehicle) =>
    days
      .filter((day) => day.vehicleId === vehicle.vehicleId)
      .map((day): TruckRow => ({
        routeDayId: day.routeDayId,
        version: day.version,
        date,
        startsAtMinute: day.startsAtMinute,
        endsAtMinute: day.endsAtMinute,
        vehicleId: vehicle.vehicleId,
        number: vehicle.number,
        name: vehicle.name,
        truck: truckOf(vehicle),
        operatorId: day.operatorId,
        operatorName: nameOf.get(day.operatorId) ?? "",
      })),
  );
  const told = days.find(({ forecastHighF }) => forecastHighF !== null);
  return {
    rows,
    forecast: told === undefined || told.forecastHighF === null || told.forecastSource === null ? null : { highF: told.forecastHighF, followingHighsF: comingHighsOf(told), source: told.forecastSource },
    freeVehicles: vehicles
      .filter(({ vehicleId, stoodDownAt }) => stoodDownAt === null && !days.some((day) => day.vehicleId === vehicleId))
      .map(({ vehicleId, number, name }) => ({ vehicleId, number, name })),
    people: everyone.filter(({ leftOn }) => leftOn === null).map(({ personId, name }) => ({ personId, name })),
  };
}
