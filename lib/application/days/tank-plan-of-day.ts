import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { type VisitTicket } from "#application/visits/visit-ticket";
import { type VisitRow } from "#application/visits/visit-rows";
import { type Work } from "#application/use-case";
import { type DayOfTanks, tanksHeld } from "#application/days/tanks-held";
import { cleanOutsOfDay } from "#application/days/clean-outs-of-day";
import { containersOnHand } from "#application/days/day-facts";
import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";
import { type LoadedStop, type LoadingList, loadingList } from "#domain/mixing/loading-list";
import { type ContainerOnHand, type LoadedProduct, productsToLoad, weightsAlongRoute } from "#domain/mixing/products-to-load";
import { treatmentsForRounding } from "#domain/mixing/rounding-room";
import { planTanks } from "#domain/mixing/tank-plan";
import { type TankPlan } from "#domain/mixing/tank-plan-answer";
import { type LastHeld, type TreatedStop } from "#domain/mixing/tank-plan-question";
import { type Quantity } from "#domain/quantities/quantity";
import { TANK_MARK } from "#application/visits/ticket-facts";

/** What the books say besides the visits of a day: what products come in, and what the tanks held. */
export interface LoadFacts {
  readonly containers: readonly ContainerOnHand[];
  readonly lastHeld: ReadonlyMap<string, LastHeld>;
  /** By sprayer, the visits before which a clean-out is on file. */
  readonly cleanOuts: ReadonlyMap<string, ReadonlySet<string>>;
}

/** Reads them for the visits of a day, with no query where there are none. The number of queries does not hang on that of visits. */
export async function loadFactsOf(work: Work, day: DayOfTanks, treatments: readonly TicketTreatment[]): Promise<LoadFacts> {
  const { visitIds } = day;
  if (visitIds.length === 0) return { containers: [], lastHeld: new Map(), cleanOuts: new Map() };
  const countedBy = new Map(treatments.map(({ productId, onHand }) => [productId, onHand.dimension]));
  return {
    containers: await containersOnHand(work, [...countedBy.keys()], countedBy),
    lastHeld: await tanksHeld(work, day),
    cleanOuts: await cleanOutsOfDay(work, visitIds),
  };
}

/**
 * Whether there is water at a stop is on file nowhere: the plan takes it as unknown and says so. The payload is entered
 * less what stays on the truck, as its field asks.
 */
export const WATER_AT_STOPS: TreatedStop["water"] = "unknown";

/** Water behind the mix leaves the least of it in the line. Common practice; a house may do otherwise once it can say so. */
const LINE_AT_THE_END = "pushed-out-with-water";

/** A visit as far as loading asks. */
type VisitOfStop = Pick<VisitRow, "visitId"> & { readonly property: Pick<VisitRow["property"], "street"> };

/**
 * A visit as loading and tanks see it: with nothing to put down where nothing is worked out for it. A treatment of which
 * the lawns may get no more than is planned has that for its highest rate: no fill is rounded up and no rest sent beyond it.
 */
export function loadedStopOf({ visitId, property }: VisitOfStop, worked: Pick<VisitTicket, "ticket" | "question" | "aftercare"> | null): LoadedStop {
  const stop = { visitId, name: property.street, water: WATER_AT_STOPS };
  if (worked === null) return { ...stop, lawns: [], mixes: [], treatments: [], wantsSign: false };
  const { ticket: { mixes }, question } = worked;
  return { ...stop, lawns: question.lawns, mixes, treatments: treatmentsForRounding(question), wantsSign: wantsSign(worked) };
}

/** Whether a sign is put up at a visit. */
export function wantsSign({ aftercare }: Pick<VisitTicket, "aftercare">): boolean {
  return aftercare.some(({ timeline }) => timeline.steps.some(({ row }) => row === "sign"));
}

/** The tank plan and the loading list of a truck's stops: there is enough aboard for the fills and for the tickets one by one. */
export function tankPlanOfDay(
  stops: readonly LoadedStop[],
  truck: { readonly name: string; readonly payload: Quantity<"mass"> | null },
  { containers, lastHeld, cleanOuts }: LoadFacts,
): { readonly plan: TankPlan; readonly loading: LoadingList } {
  const planWith = (products: readonly LoadedProduct[]) =>
    planTanks({
      stops,
      lastHeld,
      truck: { ...truck, staysAboard: "counted-in-payload" },
      cleanOuts,
      dryWeights: weightsAlongRoute(stops, products),
      settings: { tankLoads: DEFAULT_HOUSE_SETTINGS.tankLoads, tankMark: TANK_MARK, lineAtTheEnd: LINE_AT_THE_END },
    });
  const byTickets = productsToLoad(stops, containers);
  const first = planWith(byTickets);
  // Fills may take another container than the tickets one by one; its weight is then planned with.
  const products = productsToLoad(stops, containers, first.fills);
  const plan = products.some(({ weight }, index) => weight?.amount !== byTickets[index]?.weight?.amount) ? planWith(products) : first;
  return { plan, loading: loadingList(stops, products, plan) };
}
