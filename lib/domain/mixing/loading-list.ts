import { wholeBagsFor } from "#domain/quantities/rounding";
import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { groupedBy } from "#domain/foundation/grouping";
import { type Density, densityFromSpecificGravity, massOf } from "#domain/quantities/density";
import { type Measure, settle } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { compare, fromAmount, type Quantity, sum } from "#domain/quantities/quantity";
import { type Dimension } from "#domain/quantities/units";
import { type Container, containersOf } from "#domain/stock/container-words";
import { type FillOfRoute, type TreatedStop } from "#domain/mixing/fills-of-route";
import { neededOf } from "#domain/mixing/mix-ticket";
import { type ProductAmount } from "#domain/mixing/spray-mix";

/** What a product comes in, as the lot that is taken next has it. */
export interface ContainerOnHand {
  readonly productId: string;
  readonly container: Container;
  readonly size: Quantity<Dimension>;
  readonly lotNumber: string;
}

/** A stop of the truck with what is left behind there. */
export interface LoadedStop extends TreatedStop {
  readonly wantsSign: boolean;
}

/** One product to load. */
export interface LoadedProduct {
  readonly productId: string;
  readonly productName: string;
  readonly needed: ProductAmount;
  /** Whole containers, "3 bags of 50 lb", or the amount itself where nobody knows what the product comes in. */
  readonly words: string;
  readonly lotNumber: string | null;
  /** What of it is aboard by mass; null where the label's density is not on file. */
  readonly weight: Quantity<"mass"> | null;
}

/** What a truck takes along for a day. */
export interface LoadingList {
  readonly products: readonly LoadedProduct[];
  /** Water of all fills together. */
  readonly water: Quantity<"volume">;
  readonly signs: number;
  readonly stakes: number;
  readonly notices: number;
  readonly protectiveGear: readonly string[];
  readonly spillKit: readonly string[];
  /** Products in whole containers and the fullest fill of each tank; gear, tank and people are not in it. */
  readonly weightAboard: Quantity<"mass">;
  readonly findings: readonly Finding[];
}

/** A truck as far as loading asks. */
export interface LoadedTruck {
  readonly name: string;
  /** The most that may be loaded; null: not on file. */
  readonly payload: Quantity<"mass"> | null;
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

/** Water in a tank: 1 kg/L, 8.3454 lb/gal. */
const WATER: Density = densityFromSpecificGravity("1");

/**
 * What goes on a truck for its stops: products in total and by whole container, water, one sign with its stake for each
 * stop that has to be posted and one notice for each stop where something goes down (common practice), gear and spill
 * kit. The weight counts whole containers and the fullest fill of each tank, since water for the next fill comes when
 * it is filled; past the truck's payload it is a hold.
 */
export function loadingList(stops: readonly LoadedStop[], fills: readonly FillOfRoute[], truck: LoadedTruck, containers: readonly ContainerOnHand[]): LoadingList {
  const products = productsOf(stops, containers);
  const signs = stops.filter(({ wantsSign }) => wantsSign).length;
  const weightAboard = sum("mass", [...products.flatMap(({ weight }) => weight ?? []), ...fullestFills(fills).map(({ water }) => settle(massOf(water, WATER), "up"))]);
  return {
    products,
    water: sum("volume", fills.map(({ water }) => water)),
    signs,
    stakes: signs,
    notices: stops.filter(({ mixes }) => mixes.length > 0).length,
    protectiveGear: products.length === 0 ? [] : PROTECTIVE_GEAR,
    spillKit: products.length === 0 ? [] : SPILL_KIT,
    weightAboard,
    findings: [...overPayload(weightAboard, truck), ...unweighed(products)],
  };
}

function productsOf(stops: readonly LoadedStop[], containers: readonly ContainerOnHand[]): readonly LoadedProduct[] {
  const needs = stops.flatMap(({ mixes, treatments }) =>
    neededOf(mixes).flatMap(({ line, amount }) => treatments.filter((one) => one.line === line).map(({ productId, label }) => ({ productId, label, amount }))),
  );
  // A product planned by weight here and by volume there is two lines: nothing turns one into the other by itself.
  const groups = groupedBy(needs, ({ productId, amount }) => `${productId} ${amount.dimension}`);
  return [...groups.values()].flatMap((group): readonly LoadedProduct[] => {
    const [first] = group;
    if (first === undefined) return [];
    const { productId, label } = first;
    const { dimension } = first.amount;
    const needed = fromAmount(dimension, group.reduce((total, { amount }) => total + amount.amount, 0n)) as ProductAmount;
    if (needed.amount === 0n) return [];
    const container = containers.find((one) => one.productId === productId && one.size.dimension === dimension && one.size.amount > 0n);
    const whole = container === undefined ? undefined : wholeBagsFor<"mass" | "volume">(needed, container.size as ProductAmount);
    const loaded = whole === undefined ? needed : (whole.total as ProductAmount);
    return [
      {
        productId,
        productName: label.productName,
        needed,
        words: container === undefined || whole === undefined ? formatQuantity(needed, "us") : containersOf(whole.bags, container.container, container.size),
        lotNumber: container?.lotNumber ?? null,
        weight: weightOf(loaded, label.density),
      },
    ];
  });
}

function weightOf(amount: ProductAmount, density: Density | "unknown"): Quantity<"mass"> | null {
  if (amount.dimension === "mass") return amount;
  const volume: Measure<"volume"> = amount;
  return density === "unknown" ? null : settle(massOf(volume, density), "up");
}

/** Of each tank the fill that holds the most. */
function fullestFills(fills: readonly FillOfRoute[]): readonly FillOfRoute[] {
  return [...groupedBy(fills, ({ gear }) => gear.equipmentId).values()].flatMap((own) =>
    own.reduce<FillOfRoute[]>((fullest, fill) => (fullest[0] === undefined || compare(fill.finished, fullest[0].finished) > 0 ? [fill] : fullest), []),
  );
}

function overPayload(weight: Quantity<"mass">, { name, payload }: LoadedTruck): readonly Finding[] {
  if (payload === null) {
    if (weight.amount === 0n) return [];
    return [
      takeCare({
        rule: "payload-not-on-file",
        source: "house",
        what: `What ${name} may carry is not on file.`,
        figure: `Products and water weigh ${formatQuantity(weight, "us")}.`,
        toDo: "Enter the payload from the door sticker, less what stays on the truck.",
        about: [name],
      }),
    ];
  }
  if (compare(weight, payload) <= 0) return [];
  return [
    hold("office", {
      rule: "above-payload",
      source: "house",
      what: `${name} would carry more than it may.`,
      figure: `Products and water weigh ${formatQuantity(weight, "us")}; the payload is ${formatQuantity(payload, "us")}.`,
      toDo: "Fill the tank less and refill, or move stops to another truck.",
      about: [name],
    }),
  ];
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
