import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";
import { type LoadedStop, type LoadingList, loadingList } from "#domain/mixing/loading-list";
import { type ContainerOnHand, productsToLoad, weightsAlongRoute } from "#domain/mixing/products-to-load";
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

/**
 * Whether there is water at a stop is on file nowhere: the plan takes it as unknown and says so. The payload is entered
 * less what stays on the truck, as its field asks.
 */
export const WATER_AT_STOPS: TreatedStop["water"] = "unknown";

/** Water behind the mix leaves the least of it in the line. Common practice; a house may do otherwise once it can say so. */
const LINE_AT_THE_END = "pushed-out-with-water";

/** The tank plan and the loading list of a truck's stops. */
export function tankPlanOfDay(
  stops: readonly LoadedStop[],
  truck: { readonly name: string; readonly payload: Quantity<"mass"> | null },
  { containers, lastHeld, cleanOuts }: LoadFacts,
): { readonly plan: TankPlan; readonly loading: LoadingList } {
  const products = productsToLoad(stops, containers);
  const plan = planTanks({
    stops,
    lastHeld,
    truck: { ...truck, staysAboard: "counted-in-payload" },
    cleanOuts,
    dryWeights: weightsAlongRoute(stops, products),
    settings: { tankLoads: DEFAULT_HOUSE_SETTINGS.tankLoads, tankMark: TANK_MARK, lineAtTheEnd: LINE_AT_THE_END },
  });
  return { plan, loading: loadingList(stops, products, plan) };
}
