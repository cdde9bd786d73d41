import { type Finding, takeCare } from "#domain/foundation/finding";
import { type Quantity, sum } from "#domain/quantities/quantity";
import { type LoadedProduct } from "#domain/mixing/products-to-load";
import { type TankPlan } from "#domain/mixing/tank-plan-answer";
import { type TreatedStop } from "#domain/mixing/tank-plan-question";

/** A stop of the truck with what is left behind there. */
export interface LoadedStop extends TreatedStop {
  readonly wantsSign: boolean;
}

/** What a truck takes along for a day. */
export interface LoadingList {
  readonly products: readonly LoadedProduct[];
  /** Water of all fills together. */
  readonly water: Quantity<"volume">;
  /** Clean water that pushes mixes out of pump and hose where there is none. Tanks are rinsed where there is water. */
  readonly cleanWater: Quantity<"volume">;
  readonly signs: number;
  readonly stakes: number;
  readonly notices: number;
  readonly protectiveGear: readonly string[];
  readonly spillKit: readonly string[];
  /** What the truck carries where it carries most: products in whole containers, what is in the tanks, clean water and rinsate; gear and people are not in it. */
  readonly weightAboard: Quantity<"mass">;
  readonly findings: readonly Finding[];
}

/** What labels of lawn products ask for the most; the label of each product wins. Common practice. */
const PROTECTIVE_GEAR = [
  "Long sleeves, long pants, shoes and socks: as each label says",
  "Chemical-resistant gloves: as each label says",
  "Eye protection: as each label says",
  "Soap, water and towels; a change of clothes",
];

/** Control it, contain it, clean it up. Common practice. */
const SPILL_KIT = ["Absorbent and a shovel", "Broom, bags and a drum for what is swept up", "Numbers to call, and the labels of everything aboard"];

/**
 * What goes on a truck for its stops: products in total and by whole container, water, one sign with its stake for each
 * stop that has to be posted and one notice for each stop where something goes down (common practice), gear and spill
 * kit. Weight and what is found of the truck as a whole are those of the tank plan.
 */
export function loadingList(stops: readonly LoadedStop[], products: readonly LoadedProduct[], { fills, mixes, heaviest, found }: TankPlan): LoadingList {
  const signs = stops.filter(({ wantsSign }) => wantsSign).length;
  return {
    products,
    water: sum("volume", fills.map(({ water }) => water)),
    cleanWater: sum("volume", mixes.map(({ end: { waterAlong } }) => waterAlong)),
    signs,
    stakes: signs,
    notices: stops.filter((stop) => stop.mixes.length > 0).length,
    protectiveGear: products.length === 0 ? [] : PROTECTIVE_GEAR,
    spillKit: products.length === 0 ? [] : SPILL_KIT,
    weightAboard: heaviest.weight,
    findings: [...found.flatMap(({ visitId, finding }) => (visitId === null ? [finding] : [])), ...unweighed(products)],
  };
}

function unweighed(products: readonly LoadedProduct[]): readonly Finding[] {
  return products
    .filter(({ weight }) => weight === null)
    .map(({ productName }) =>
      takeCare({
        rule: "density-not-on-file",
        source: "label",
        what: `What ${productName} weighs is not on file; it is not in the weight aboard.`,
        toDo: "Enter its density from the label or the safety data sheet.",
        about: [productName],
      }),
    );
}
