import { type VisitTicket, type WorkedVisit } from "#application/visits/visit-ticket";
import { type VisitRow } from "#application/visits/visit-rows";
import { type Work } from "#application/use-case";
import { tanksHeld } from "#application/days/tanks-held";
import { cleanOutsOfDay } from "#application/days/clean-outs-of-day";
import { containersOnHand } from "#application/days/day-facts";
import { SPRAYER_KINDS } from "#domain/equipment/equipment-kind";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { DEFAULT_HOUSE_SETTINGS, type HouseSettings } from "#domain/company/house-settings";
import { type LoadedStop, type LoadingList, loadingList } from "#domain/mixing/loading-list";
import { type ContainerOnHand, type LoadedProduct, productsToLoad, weightsAlongRoute } from "#domain/mixing/products-to-load";
import { treatmentsForRounding } from "#domain/mixing/rounding-room";
import { planTanks } from "#domain/mixing/tank-plan";
import { type TankPlan } from "#domain/mixing/tank-plan-answer";
import { type LastHeld, type LoadedTruck, type TankAboard } from "#domain/mixing/tank-plan-question";

/** What the books say besides the visits of a day: what products come in, and what the tanks held. */
export interface LoadFacts {
  readonly containers: readonly ContainerOnHand[];
  readonly lastHeld: ReadonlyMap<string, LastHeld>;
  /** By sprayer, the visits before which a clean-out is on file. */
  readonly cleanOuts: ReadonlyMap<string, ReadonlySet<string>>;
  /** By truck, those that ride on it and are not stood down. */
  readonly sprayersOf: ReadonlyMap<string, readonly TankAboard[]>;
  readonly settings: HouseSettings;
}

/** A truck with its id, under which its sprayers are on file. */
export interface TruckOfDay extends LoadedTruck {
  readonly vehicleId: string;
}

/**
 * Reads them for visits of a day as they are worked out now, with no query where there are none. What a tank held hangs on
 * all trucks' visits of the day, whichever of them are asked for. The number of queries does not hang on that of visits.
 */
export async function loadFactsOf(work: Work, date: CalendarDate, worked: readonly Pick<WorkedVisit, "outcome" | "labels" | "settings">[]): Promise<LoadFacts> {
  const [first] = worked;
  // Without a visit nothing is filled, and no setting is asked for.
  if (first === undefined) return { containers: [], lastHeld: new Map(), cleanOuts: new Map(), sprayersOf: new Map(), settings: DEFAULT_HOUSE_SETTINGS };
  const visitIds = await visitsOnRoutes(work, date);
  const treatments = worked.flatMap(({ outcome }) => (outcome.ok ? outcome.value.question.treatments : []));
  const countedBy = new Map(treatments.map(({ productId, onHand }) => [productId, onHand.dimension]));
  return {
    containers: await containersOnHand(work, [...countedBy.keys()], countedBy),
    lastHeld: await tanksHeld(work, { date, visitIds }, first.labels),
    cleanOuts: await cleanOutsOfDay(work, visitIds),
    sprayersOf: await sprayersOnTrucks(work),
    settings: first.settings,
  };
}

async function sprayersOnTrucks({ tx, company: { companyId } }: Work): Promise<LoadFacts["sprayersOf"]> {
  const rows = await tx.equipment.findMany({ where: { companyId, stoodDownAt: null, vehicleId: { not: null }, kind: { in: [...SPRAYER_KINDS] } }, orderBy: [{ name: "asc" }, { equipmentId: "asc" }] });
  return groupedBy(rows, ({ vehicleId }) => vehicleId ?? "");
}

/** The visits on all trucks of a day, truck by truck in the order of its route. */
async function visitsOnRoutes({ tx, company: { companyId } }: Work, date: CalendarDate): Promise<readonly string[]> {
  const rows = await tx.$queryRaw<{ visit_id: string }[]>`
    SELECT s.visit_id FROM route_day d
    JOIN vehicle v ON v.company_id = d.company_id AND v.vehicle_id = d.vehicle_id
    JOIN stop s ON s.company_id = d.company_id AND s.route_day_id = d.route_day_id
    WHERE d.company_id = ${companyId}::uuid AND d.date = ${date}::date ORDER BY v.number, s.position, s.visit_id`;
  return rows.map((row) => row.visit_id);
}

/** A visit as far as loading asks. */
type VisitOfStop = Pick<VisitRow, "visitId"> & { readonly property: Pick<VisitRow["property"], "street" | "tankWater"> };

/**
 * A visit as loading and tanks see it: with nothing to put down where nothing is worked out for it. A treatment of which
 * the lawns may get no more than is planned has that for its highest rate: no fill is rounded up and no rest sent beyond it.
 */
export function loadedStopOf({ visitId, property }: VisitOfStop, worked: Pick<VisitTicket, "ticket" | "question" | "aftercare"> | null): LoadedStop {
  const stop = { visitId, name: property.street, water: property.tankWater };
  if (worked === null) return { ...stop, lawns: [], mixes: [], treatments: [], wantsSign: false };
  const { ticket: { mixes }, question } = worked;
  return { ...stop, lawns: question.lawns, mixes, treatments: treatmentsForRounding(question), wantsSign: wantsSign(worked) };
}

/** Whether a sign is put up at a visit. */
export function wantsSign({ aftercare }: Pick<VisitTicket, "aftercare">): boolean {
  return aftercare.some(({ timeline }) => timeline.steps.some(({ row }) => row === "sign"));
}

/**
 * The tank plan and the loading list of a truck's stops. There is enough aboard for the fills and for the tickets one by one.
 */
export function tankPlanOfDay(
  stops: readonly LoadedStop[],
  truck: TruckOfDay,
  { containers, lastHeld, cleanOuts, sprayersOf, settings }: LoadFacts,
): { readonly plan: TankPlan; readonly loading: LoadingList } {
  const planWith = (products: readonly LoadedProduct[]) =>
    planTanks({
      stops,
      lastHeld,
      truck,
      tanksAboard: sprayersOf.get(truck.vehicleId) ?? [],
      cleanOuts,
      dryWeights: weightsAlongRoute(stops, products),
      settings,
    });
  const byTickets = productsToLoad(stops, containers);
  const first = planWith(byTickets);
  // Fills may take another container than the tickets one by one; its weight is then planned with.
  const products = productsToLoad(stops, containers, first.fills);
  const plan = products.some(({ weight }, index) => weight?.amount !== byTickets[index]?.weight?.amount) ? planWith(products) : first;
  return { plan, loading: loadingList(stops, products, plan) };
}
