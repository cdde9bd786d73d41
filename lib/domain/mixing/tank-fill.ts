import { groupedBy } from "#domain/foundation/grouping";
import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { invariant } from "#domain/foundation/invariant";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { type ExactQuantity, type Measure } from "#domain/quantities/exact-quantity";
import { formatQuantitiesApart, formatQuantity } from "#domain/quantities/format-quantity";
import { compare, fromAmount, type Quantity, smallest, sum } from "#domain/quantities/quantity";
import { concentrationInSpray, times } from "#domain/quantities/rate";
import { reduce, roundQuotient } from "#domain/quantities/rational";
import { type LabelFacts, type SprayRate } from "#domain/label/label-facts";
import { mixedFor } from "#domain/mixing/fill-sizes";
import { belowFirstMark, highestOf, measureOut } from "#domain/mixing/granular-mix";
import { mixingSteps } from "#domain/mixing/mixing-steps";
import { type ProductAmount, sprayForGround, type SprayMix, waterBeside } from "#domain/mixing/spray-mix";
import { type TicketTool, type TicketTreatment } from "#domain/mixing/ticket-question";

/** One visit that a fill is meant to serve, as its mix ticket has it. */
export interface FillStop {
  readonly visitId: string;
  /** What its ground takes, before any mark of a gauge: what is drawn from the fill for it. */
  readonly finished: Quantity<"volume">;
  readonly products: readonly ProductOfFill[];
}

/** A product as a fill takes it. */
export interface ProductOfFill {
  readonly productId: string;
  readonly productName: string;
  readonly formulation: LabelFacts["formulation"];
  readonly concentration: SprayRate;
  /** The strongest that rounding may make it: what the highest rate that is left open makes at what the sprayer puts out. */
  readonly strongest: SprayRate;
}

/** What goes into the tank for a list of visits that share their rates. */
export interface PlannedFill {
  readonly visitIds: readonly string[];
  readonly finished: Quantity<"volume">;
  readonly products: readonly {
    readonly productId: string;
    readonly productName: string;
    readonly amount: ProductAmount;
    readonly toolName: string | null;
    readonly marks: bigint | null;
  }[];
  /** More than the tank holds, which takes a second fill, and amounts under the first mark of their tool. */
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
export function amountIn(concentration: SprayRate, finished: Measure<"volume">): ExactQuantity<"mass"> | ExactQuantity<"volume"> {
  return concentration.basis === "product-mass-per-spray-volume" ? times(concentration, finished) : times(concentration, finished);
}

/** The tank that a fill is for. */
export interface TankToFill {
  readonly name: string;
  readonly capacity: Quantity<"volume">;
  /** The mark of the gauge or meter by which water goes into it. */
  readonly mark: Measure<"volume">;
}

/**
 * One filling for visits that share their rates: what their ground takes together, up to the next mark of the gauge,
 * and each product at its concentration to the nearest mark of its tool, never stronger than the highest rate makes it
 * at any of the visits: what a visit draws then puts no more than that on its ground. Refuses at `visits` those that do
 * not share one mix, and none at all. More than the tank holds is a hold that says by how much.
 */
export function planFill(
  stops: readonly FillStop[],
  tank: TankToFill,
  toolOf: (productId: string) => TicketTool | undefined,
): Outcome<PlannedFill> {
  const [first] = stops;
  if (first === undefined) return badInput("visits", "none", "one visit or more", "A fill serves one visit or more.");
  if (visitsThatShare(stops).length > 1) {
    return badInput("visits", "different mixes", "visits with the same products at the same rates", "These visits do not share one mix; each mix is a fill of its own.");
  }
  const taken = sum("volume", stops.map((stop) => stop.finished));
  const mixed = fromAmount("volume", mixedFor(taken.amount, stops.length, tank.mark));
  const finished = compare(taken, tank.capacity) <= 0 ? smallest(mixed, tank.capacity) : mixed;
  const products = productsIn({ products: productsOfAll(stops) }, finished, toolOf);
  return accept({ visitIds: stops.map(({ visitId }) => visitId), finished, products, findings: [...tooMuch(taken, tank), ...underAMark(products, `a fill of ${tank.name}`)] });
}

/** The products of stops that share a mix, each no stronger than every one of the stops lets it be. Throws without a stop. */
export function productsOfAll(stops: readonly FillStop[]): readonly ProductOfFill[] {
  const [first, ...others] = stops;
  invariant(first !== undefined, "a fill serves a stop");
  return first.products.map((product) => {
    const strongest = others
      .flatMap(({ products }) => products.filter(({ productId }) => productId === product.productId))
      .reduce((least, other) => (isWeaker(other.strongest, least) ? other.strongest : least), product.strongest);
    return { ...product, strongest };
  });
}

/** Whether one strength of a product is less than another of the same kind. */
export function isWeaker(one: SprayRate, other: SprayRate): boolean {
  return one.amount * other.per < other.amount * one.per;
}

/** What of each product goes into so much finished spray: at its concentration, to its tool's nearest mark that is not too strong. */
export function productsIn({ products }: Pick<FillStop, "products">, finished: Quantity<"volume">, toolOf: (productId: string) => TicketTool | undefined): PlannedFill["products"] {
  return products.map(({ productId, productName, concentration, strongest }) => {
    const wanted = amountIn(concentration, finished);
    const tool = toolOf(productId);
    const fitting = tool?.mark.dimension === wanted.dimension ? tool : undefined;
    const { amount, marks } = measureOut<"mass" | "volume">(wanted, amountIn(strongest, finished), fitting);
    return { productId, productName, amount, toolName: fitting?.name ?? null, marks };
  });
}

/** What is said of products of which a fill takes less than a mark of their tool. */
export function underAMark(products: PlannedFill["products"], fillName: string): readonly Finding[] {
  return products.flatMap(({ productName, toolName, marks, amount }) => (toolName === null || marks !== null || amount.amount === 0n ? [] : [belowFirstMark(productName, fillName, toolName)]));
}

/** What a fill is mixed from, and the order of work at the tank. */
export interface MixedFill {
  readonly products: PlannedFill["products"];
  /** Finished volume less what the liquid products take up. */
  readonly water: Quantity<"volume">;
  readonly steps: readonly string[];
}

/** How so much finished spray of a mix is made. */
export function mixFill(mix: Pick<FillStop, "products">, finished: Quantity<"volume">, toolOf: (productId: string) => TicketTool | undefined): MixedFill {
  const products = productsIn(mix, finished, toolOf);
  const water = waterBeside(products, finished);
  return { products, water, steps: mixingSteps(mix.products, [water], "fill") };
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
  /** Below nothing where more was found in the tank than ever went in. */
  readonly drawn: { readonly dimension: "volume"; readonly amount: bigint };
}

/** What a draw takes out of a fill: of each lot, and whether more was sprayed than the tank could hold. */
export interface FillDrawn {
  readonly lots: readonly LotInFill[];
  readonly leftInTank: Quantity<"volume">;
  readonly findings: readonly Finding[];
}

/**
 * Gallons really sprayed, turned back into product: of each lot the part that the volume is of the fill. The parts are
 * taken between running totals, so that the draws of an emptied tank add up to what went in, to the last canonical
 * unit. More than the tank had left takes what was left, and says so: what happened is recorded as it happened. Throws
 * for a fill of nothing.
 */
export function drawFromFill(fill: FillOnRecord, sprayed: Quantity<"volume">, fillName: string): FillDrawn {
  invariant(fill.finished.amount > 0n, "a fill holds something");
  const before = least(fill.drawn.amount, fill.finished.amount);
  const after = least(fill.drawn.amount + sprayed.amount, fill.finished.amount);
  const lots = fill.lots.map(({ lotId, amount }) => ({ lotId, amount: partOf(amount, after, fill) - partOf(amount, before, fill) }));
  const left = fill.finished.amount - after;
  const excess = fill.drawn.amount + sprayed.amount - fill.finished.amount;
  const findings = excess <= 0n ? [] : [moreThanFilled(fillName, { dimension: "volume", amount: excess })];
  return { lots, leftInTank: { dimension: "volume", amount: left }, findings };
}

function partOf(amount: bigint, drawn: bigint, { finished }: Pick<FillOnRecord, "finished">): bigint {
  return roundQuotient(amount * drawn, finished.amount, "nearest");
}

/** What of each lot is still in a fill of which so much is gone: what went in less all draws together, to the last canonical unit. */
export function lotsLeftIn(fill: Pick<FillOnRecord, "finished" | "lots">, gone: bigint): readonly LotInFill[] {
  const after = least(gone, fill.finished.amount);
  return fill.lots.map(({ lotId, amount }) => ({ lotId, amount: amount - partOf(amount, after, fill) }));
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
    toDo: "Name the other fill too, where it came out of two. Else check the meter and the fill, and amend the record that is wrong.",
    about: [fillName],
  });
}

/**
 * What a visit's mix ticket asks of a fill: of spray what its ground takes, and not what the ticket's own loads come to on
 * the gauge. The treatments are those of the ticket as rounding may take them (treatmentsForRounding).
 */
export function fillStopOf(visitId: string, mix: SprayMix, treatmentOf: (line: number) => TicketTreatment): FillStop {
  return {
    visitId,
    finished: sprayForGround(mix.carrier, mix.lawns),
    products: mix.products.map(({ line, productName, concentration }) => {
      const treatment = treatmentOf(line);
      const { productId, label: { formulation } } = treatment;
      return { productId, productName, formulation, concentration, strongest: concentrationInSpray(highestOf(treatment), mix.carrier.rate) };
    }),
  };
}
