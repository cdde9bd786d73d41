import { groupedBy } from "#domain/foundation/grouping";
import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { invariant } from "#domain/foundation/invariant";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { type ExactQuantity, type Measure } from "#domain/quantities/exact-quantity";
import { formatQuantitiesApart, formatQuantity } from "#domain/quantities/format-quantity";
import { compare, type Quantity, sum } from "#domain/quantities/quantity";
import { type Rate, times } from "#domain/quantities/rate";
import { reduce, roundQuotient } from "#domain/quantities/rational";
import { measureOut } from "#domain/mixing/granular-mix";
import { type ProductAmount, type SprayMix } from "#domain/mixing/spray-mix";
import { type TicketTool } from "#domain/mixing/ticket-question";

export type SprayConcentration = Rate<"product-volume-per-spray-volume"> | Rate<"product-mass-per-spray-volume">;

/** One visit that a fill is meant to serve, as its mix ticket has it. */
export interface FillStop {
  readonly visitId: string;
  readonly finished: Quantity<"volume">;
  readonly products: readonly { readonly productId: string; readonly productName: string; readonly concentration: SprayConcentration }[];
}

/** What goes into the tank for a list of visits that share their rates. */
export interface PlannedFill {
  readonly visitIds: readonly string[];
  readonly finished: Quantity<"volume">;
  readonly products: readonly {
    readonly productId: string;
    readonly productName: string;
    readonly amount: ProductAmount;
    readonly marks: bigint | null;
  }[];
  /** More than the tank holds: it takes a second fill. */
  readonly findings: readonly Finding[];
}

/** What two stops have alike when one fill may serve both: the same products at the same concentrations. */
export function mixKeyOf({ products }: Pick<FillStop, "products">): string {
  const parts = products.map(({ productId, concentration }) => {
    const { numerator, denominator } = reduce({ numerator: concentration.amount, denominator: concentration.per });
    return `${productId} ${concentration.basis} ${String(numerator)}/${String(denominator)}`;
  });
  return parts.toSorted().join("; ");
}

/** The visits that may be served by one fill: the same products at the same concentrations. In the order of the route. */
export function visitsThatShare(stops: readonly FillStop[]): readonly (readonly FillStop[])[] {
  return [...groupedBy(stops, mixKeyOf).values()];
}

/** The product in so much finished spray, exactly. */
export function amountIn(concentration: SprayConcentration, finished: Measure<"volume">): ExactQuantity<"mass"> | ExactQuantity<"volume"> {
  return concentration.basis === "product-mass-per-spray-volume" ? times(concentration, finished) : times(concentration, finished);
}

/**
 * One filling for visits that share their rates: their finished volumes together, and each product at its concentration,
 * rounded down to its tool's mark so that no lawn gets more than planned. Refuses visits that do not share one mix, and
 * none at all. More than the tank holds is a hold that says by how much.
 */
export function planFill(
  stops: readonly FillStop[],
  tank: { readonly name: string; readonly capacity: Quantity<"volume"> },
  toolOf: (productId: string) => TicketTool | undefined,
): Outcome<PlannedFill> {
  const [first] = stops;
  if (first === undefined) return badInput("visits", "none", "one visit or more", "A fill serves one visit or more.");
  if (visitsThatShare(stops).length > 1) {
    return badInput("visits", "different mixes", "visits with the same products at the same rates", "These visits do not share one mix; each mix is a fill of its own.");
  }
  const finished = sum("volume", stops.map((stop) => stop.finished));
  return accept({ visitIds: stops.map(({ visitId }) => visitId), finished, products: productsIn(first, finished, toolOf), findings: tooMuch(finished, tank) });
}

/** What of each product goes into so much finished spray: at its concentration, rounded down to its tool's mark. */
export function productsIn({ products }: Pick<FillStop, "products">, finished: Quantity<"volume">, toolOf: (productId: string) => TicketTool | undefined): PlannedFill["products"] {
  return products.map(({ productId, productName, concentration }) => {
    const wanted = amountIn(concentration, finished);
    const tool = toolOf(productId);
    const fitting = tool?.mark.dimension === wanted.dimension ? tool : undefined;
    const { amount, marks } = measureOut<"mass" | "volume">(wanted, wanted, fitting);
    return { productId, productName, amount: amount, marks };
  });
}

function tooMuch(finished: Quantity<"volume">, tank: { readonly name: string; readonly capacity: Quantity<"volume"> }): readonly Finding[] {
  if (compare(finished, tank.capacity) <= 0) return [];
  const [needed, held] = formatQuantitiesApart(finished, tank.capacity, "us");
  return [
    hold("office", {
      rule: "fill-above-capacity",
      source: "house",
      what: `${tank.name} does not hold that much.`,
      figure: `The visits need ${needed}; the tank holds ${held}.`,
      toDo: "Take visits off this fill and fill again for them.",
      about: [tank.name],
    }),
  ];
}

/** So much of one lot that went into a fill. */
export interface LotInFill {
  readonly lotId: string;
  readonly amount: bigint;
}

/** A fill as it was recorded, with what was drawn from it since. */
export interface FillOnRecord {
  readonly finished: Quantity<"volume">;
  readonly lots: readonly LotInFill[];
  readonly drawn: Quantity<"volume">;
}

/** What a draw takes out of a fill: of each lot, and whether more was sprayed than the tank could hold. */
export interface FillDrawn {
  readonly lots: readonly LotInFill[];
  readonly leftInTank: Quantity<"volume">;
  readonly findings: readonly Finding[];
}

/**
 * Gallons really sprayed, turned back into product: of each lot the part that the volume is of the fill. The parts are
 * taken between running totals, so that the draws of an emptied tank add up to what went in, to the last canonical unit.
 * More than the tank had left takes what was left, and says so: what happened is recorded as it happened.
 */
export function drawFromFill(fill: FillOnRecord, sprayed: Quantity<"volume">, fillName: string): FillDrawn {
  invariant(fill.finished.amount > 0n, "a fill holds something");
  const before = least(fill.drawn.amount, fill.finished.amount);
  const after = least(fill.drawn.amount + sprayed.amount, fill.finished.amount);
  const partOf = (amount: bigint, drawn: bigint) => roundQuotient(amount * drawn, fill.finished.amount, "nearest");
  const lots = fill.lots.map(({ lotId, amount }) => ({ lotId, amount: partOf(amount, after) - partOf(amount, before) }));
  const left = fill.finished.amount - after;
  const excess = fill.drawn.amount + sprayed.amount - fill.finished.amount;
  const findings = excess <= 0n ? [] : [moreThanFilled(fillName, { dimension: "volume", amount: excess })];
  return { lots, leftInTank: { dimension: "volume", amount: left }, findings };
}

function least(left: bigint, right: bigint): bigint {
  return left < right ? left : right;
}

function moreThanFilled(fillName: string, excess: Quantity<"volume">): Finding {
  return takeCare({
    rule: "more-sprayed-than-filled",
    source: "stock",
    what: `More was sprayed than ${fillName} held.`,
    figure: `${formatQuantity(excess, "us")} are not accounted for.`,
    toDo: "Check the meter and the fill, and amend the record that is wrong.",
    about: [fillName],
  });
}

/** What a visit's mix ticket asks of a fill, or undefined where nothing is sprayed. */
export function fillStopOf(visitId: string, mix: SprayMix, productIdOf: (line: number) => string): FillStop {
  return {
    visitId,
    finished: mix.finished,
    products: mix.products.map(({ line, productName, concentration }) => ({ productId: productIdOf(line), productName, concentration })),
  };
}
