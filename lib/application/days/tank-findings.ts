import { eachFindingOnce, type Finding, gravestFirst } from "#domain/foundation/finding";
import { type LoadedStop, type LoadingList } from "#domain/mixing/loading-list";
import { type TankPlan } from "#domain/mixing/tank-plan-answer";
import { fromAmount } from "#domain/quantities/quantity";
import { loadedStopOf, type LoadFacts, loadFactsOf, tankPlanOfDay, type TruckOfDay } from "#application/days/tank-plan-of-day";
import { nameOfTruck } from "#application/equipment/add-vehicle";
import { type Work } from "#application/use-case";
import { type TicketOutcome, ticketsOfVisits, type WorkedVisit } from "#application/visits/visit-ticket";

/** A visit as far as the tank plan of its truck asks. */
type VisitInTank = Pick<WorkedVisit, "visit" | "outcome">;

/** The stops of a truck as its tanks see them: what was put down already, or was left, is loaded no more. */
function loadedStopsOf(visits: readonly VisitInTank[]): readonly LoadedStop[] {
  return visits.flatMap(({ visit, outcome }) => (outcome.ok ? [loadedStopOf(visit, visit.state === "planned" ? outcome.value : null)] : []));
}

/** A truck out of its row, whose weights are in canonical units of mass. */
export function truckOf({ vehicleId, number, payload, staysAboard }: { readonly vehicleId: string; readonly number: number; readonly payload: bigint | null; readonly staysAboard: bigint | null }): TruckOfDay {
  return {
    vehicleId,
    name: nameOfTruck(number),
    payload: payload === null ? null : fromAmount("mass", payload),
    staysAboard: staysAboard === null ? "unknown" : fromAmount("mass", staysAboard),
  };
}

/** Plans the tanks of a truck for its visits in their order, and hands the visits back with what the plan says at each of them. */
export function withTanks<Visit extends VisitInTank>(
  visits: readonly Visit[],
  truck: TruckOfDay,
  load: LoadFacts,
): { readonly visits: readonly Visit[]; readonly plan: TankPlan; readonly loading: LoadingList } {
  const stops = loadedStopsOf(visits);
  const { plan, loading } = tankPlanOfDay(stops, truck, load);
  return { visits: withTankFindings(visits, stops, plan), plan, loading };
}

/**
 * The visits of a truck's day with what its tank plan says at each of them among their own findings, so that its holds keep
 * their mix tickets from being issued. A truck that would carry too much holds every stop at which something is put down:
 * any of them can be moved to another truck.
 */
export function withTankFindings<Visit extends VisitInTank>(visits: readonly Visit[], stops: readonly LoadedStop[], { found }: Pick<TankPlan, "found">): readonly Visit[] {
  const laden = new Set(stops.flatMap(({ visitId, mixes }) => (mixes.length > 0 ? [visitId] : [])));
  return visits.map((one) => {
    const { visitId } = one.visit;
    const own = found.filter((each) => (each.visitId === null ? each.finding.level === "hold" && laden.has(visitId) : each.visitId === visitId));
    return own.length === 0 ? one : { ...one, outcome: withFindings(one.outcome, own.map(({ finding }) => finding)) };
  });
}

function withFindings(outcome: TicketOutcome, found: readonly Finding[]): TicketOutcome {
  if (!outcome.ok) return outcome;
  return { ok: true, value: { ...outcome.value, findings: gravestFirst(eachFindingOnce([...outcome.value.findings, ...found])) } };
}

/**
 * Works out one visit with what the tank plan of its truck's day says at it: all of that day's visits are worked out once
 * for it. A visit that is on no day, or over, is worked out alone. Undefined when the company has none of that id. The
 * number of queries does not hang on the number of stops.
 */
export async function visitOnItsDay(work: Work, visitId: string): Promise<WorkedVisit | undefined> {
  const ofDay = await visitsOfItsDay(work, visitId);
  const worked = await ticketsOfVisits(work, ofDay.length === 0 ? [visitId] : ofDay);
  const own = worked.find(({ visit }) => visit.visitId === visitId);
  const stop = own?.visit.stop ?? null;
  if (ofDay.length === 0 || stop === null) return own;
  const { companyId } = work.company;
  const vehicle = await work.tx.vehicle.findUniqueOrThrow({ where: { companyId_vehicleId: { companyId, vehicleId: stop.vehicleId } } });
  const load = await loadFactsOf(work, stop.date, worked);
  return withTanks(worked, truckOf(vehicle), load).visits.find(({ visit }) => visit.visitId === visitId);
}

/** The visits of the truck's day that a planned visit is on, in the order of the route; none where it is on none. */
async function visitsOfItsDay({ tx, company: { companyId } }: Work, visitId: string): Promise<readonly string[]> {
  const rows = await tx.$queryRaw<{ visit_id: string }[]>`
    SELECT other.visit_id FROM stop own
    JOIN visit v ON v.company_id = own.company_id AND v.visit_id = own.visit_id AND v.state = 'planned'
    JOIN stop other ON other.company_id = own.company_id AND other.route_day_id = own.route_day_id
    WHERE own.company_id = ${companyId}::uuid AND own.visit_id = ${visitId}::uuid ORDER BY other.position, other.visit_id`;
  return rows.map((row) => row.visit_id);
}
