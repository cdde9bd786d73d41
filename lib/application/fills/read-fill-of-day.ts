import { accept } from "#domain/foundation/outcome";
import { underAMark } from "#domain/mixing/tank-fill";
import { type FillOfRoute } from "#domain/mixing/tank-plan-answer";
import { truckOf, withTanks } from "#application/days/tank-findings";
import { loadFactsOf } from "#application/days/tank-plan-of-day";
import { readFillOfDaySchema } from "#application/fills/read-fill-of-day.schema";
import { type FillToMake } from "#application/fills/read-planned-fill";
import { notFound } from "#application/refusal";
import { calendarDayOf } from "#application/stored-day";
import { useCase } from "#application/use-case";
import { ticketsOfVisits, type WorkedVisit } from "#application/visits/visit-ticket";

/**
 * One fill of a truck's day as the day's tank plan has it now, with what is split between fills and what the tank holds
 * already: the one of that letter, while it still serves the same visits. Null where the plan has changed since: a fill that
 * was recorded is in it no more, and the letters of those after it have moved up.
 */
export const readFillOfDay = useCase("fills/read-fill-of-day", readFillOfDaySchema, async (work, { routeDayId, letter, visitIds }) => {
  const { companyId } = work.company;
  const day = await work.tx.routeDay.findUnique({ where: { companyId_routeDayId: { companyId, routeDayId } } });
  if (day === null) return notFound("day");
  const date = calendarDayOf(day.date);
  const stops = await work.tx.stop.findMany({ where: { companyId, routeDayId }, orderBy: [{ position: "asc" }, { visitId: "asc" }] });
  const vehicle = await work.tx.vehicle.findUniqueOrThrow({ where: { companyId_vehicleId: { companyId, vehicleId: day.vehicleId } } });
  const worked = stops.length === 0 ? [] : await ticketsOfVisits(work, stops.map(({ visitId }) => visitId));
  const { plan } = withTanks(worked, truckOf(vehicle), await loadFactsOf(work, date, worked));
  const fill = plan.fills.find((one) => one.letter === letter && isFor(one, visitIds));
  return accept({ date, fill: fill === undefined ? null : fillToMake(fill, worked) });
});

function isFor(fill: FillOfRoute, visitIds: readonly string[]): boolean {
  return fill.visitIds.length === visitIds.length && fill.visitIds.every((visitId) => visitIds.includes(visitId));
}

function fillToMake({ letter, gear, visitIds, finished, products }: FillOfRoute, worked: readonly WorkedVisit[]): FillToMake {
  const visits = visitIds.flatMap((visitId) => worked.flatMap(({ visit }) => (visit.visitId === visitId ? [visit] : [])));
  return {
    equipmentId: gear.equipmentId,
    gearName: gear.name,
    capacity: gear.capacity,
    visits: visits.map(({ visitId, name, property, stop }) => ({ visitId, name, street: property.street, vehicleId: stop?.vehicleId ?? null })),
    plan: { visitIds, finished, products },
    findings: underAMark(products, `fill ${letter}`),
  };
}
