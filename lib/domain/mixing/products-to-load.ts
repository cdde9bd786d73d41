import { groupedBy } from "#domain/foundation/grouping";
import { type Density, massOf } from "#domain/quantities/density";
import { type Measure, settle } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { wholeBagsFor } from "#domain/quantities/rounding";
import { type Dimension } from "#domain/quantities/units";
import { type Container, containersOf } from "#domain/stock/container-words";
import { type LabelFacts } from "#domain/label/label-facts";
import { neededTreatments } from "#domain/mixing/mix-ticket";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { type FillOfRoute } from "#domain/mixing/tank-plan-answer";
import { type TreatedStop } from "#domain/mixing/tank-plan-question";

/** What a product comes in, as the lot that is taken next has it. */
export interface ContainerOnHand {
  readonly productId: string;
  readonly container: Container;
  readonly size: Quantity<Dimension>;
  readonly lotNumber: string;
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

interface Need {
  readonly productId: string;
  readonly label: LabelFacts;
  readonly amount: ProductAmount;
}

function needsOf({ mixes, treatments }: Pick<TreatedStop, "mixes" | "treatments">): readonly Need[] {
  return neededTreatments(mixes, treatments).map(({ treatment: { productId, label }, amount }) => ({ productId, label, amount }));
}

/** What goes into the fills of a route. */
type FilledProducts = readonly Pick<FillOfRoute, "products">[];

/** A product planned by weight here and by volume there is two lines: nothing turns one into the other by itself. */
function lineOf({ productId, amount: { dimension } }: Pick<Need, "productId" | "amount">): string {
  return `${productId} ${dimension}`;
}

/**
 * By line, how much more of a product the fills take than the loads of the stops' own tickets, which are measured out one
 * by one; below nothing where they take less.
 */
function moreInFills(stops: readonly TreatedStop[], fills: FilledProducts): ReadonlyMap<string, bigint> {
  const more = new Map<string, bigint>();
  const add = (line: string, amount: bigint) => more.set(line, (more.get(line) ?? 0n) + amount);
  for (const product of fills.flatMap(({ products }) => products)) add(lineOf(product), product.amount.amount);
  for (const { mixes, treatments } of stops) {
    for (const need of needsOf({ mixes: mixes.filter(({ kind }) => kind === "spray"), treatments })) add(lineOf(need), -need.amount.amount);
  }
  return more;
}

/**
 * All that the stops need of each product, in whole containers of the lot that is taken next: by their own tickets or, where
 * it is more, by the fills of the route.
 */
export function productsToLoad(stops: readonly TreatedStop[], containers: readonly ContainerOnHand[], fills: FilledProducts = []): readonly LoadedProduct[] {
  const more = moreInFills(stops, fills);
  return [...groupedBy(stops.flatMap(needsOf), lineOf)].flatMap(([line, group]): readonly LoadedProduct[] => {
    const [first] = group;
    if (first === undefined) return [];
    const { productId, label } = first;
    const { dimension } = first.amount;
    const moreOfLine = more.get(line) ?? 0n;
    const needed = fromAmount(dimension, group.reduce((total, { amount }) => total + amount.amount, moreOfLine > 0n ? moreOfLine : 0n)) as ProductAmount;
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

function weightOf(amount: ProductAmount, density: Density | "unknown", mode: "up" | "down" = "up"): Quantity<"mass"> | null {
  if (amount.dimension === "mass") return amount;
  const volume: Measure<"volume"> = amount;
  return density === "unknown" ? null : settle(massOf(volume, density), mode);
}

/**
 * What the products weigh when the truck comes to each stop: all that is loaded, less what the stops before it took. What is
 * in a tank already weighs what it weighed in its jug. What has no density on file is left out, which the loading list says.
 */
export function weightsAlongRoute(stops: readonly TreatedStop[], products: readonly LoadedProduct[]): readonly Quantity<"mass">[] {
  let aboard = products.reduce((total, { weight }) => total + (weight?.amount ?? 0n), 0n);
  return stops.map((stop) => {
    const here = fromAmount("mass", aboard);
    for (const { amount, label } of needsOf(stop)) aboard -= weightOf(amount, label.density, "down")?.amount ?? 0n;
    return here;
  });
}
