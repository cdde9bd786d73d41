import { type Finding, hold } from "#domain/foundation/finding";
import { groupedBy } from "#domain/foundation/grouping";
import { invariant } from "#domain/foundation/invariant";
import { type ExactQuantity, type Measure, multiplyExact, settle } from "#domain/quantities/exact-quantity";
import { allocate, fromAmount, type Quantity, smallest, sum } from "#domain/quantities/quantity";
import { concentrationInSpray, type Rate, rateFrom, times } from "#domain/quantities/rate";
import { rational, roundQuotient } from "#domain/quantities/rational";
import { amountOfMarks, marksWithin } from "#domain/quantities/rounding";
import { FORMULATIONS, type LabelFacts, type ProductRate, type UseRate } from "#domain/label/label-facts";
import { highestOf, measureOut, smallerOf } from "#domain/mixing/granular-mix";
import { loadMarks, unworkable } from "#domain/mixing/load-marks";
import { mixingSteps } from "#domain/mixing/mixing-steps";
import { leastSpray, leftOver, marksFor, moreThanTaken, passedLabel } from "#domain/mixing/spray-volume";
import { plannedStrength, rateOnGround, strengthOf } from "#domain/mixing/stated-rate";
import { type TicketSettings, type TicketSprayer, type TicketTool, type TicketTreatment } from "#domain/mixing/ticket-question";
import { type TreatedLawn } from "#domain/mixing/treated-area";

/** A treatment that is sprayed. */
export type SprayTreatment = TicketTreatment & { readonly gear: TicketSprayer };

/** Sprays of one machine at one output on the same lawns, and of spot work on the same share of them, go into one tank. */
export function tanksOf(treatments: readonly SprayTreatment[]): readonly (readonly SprayTreatment[])[] {
  const tanks = groupedBy(treatments, ({ gear: { equipmentId, carrier }, zoneIds, spot }) =>
    JSON.stringify([equipmentId, String(carrier.rate.amount), String(carrier.rate.per), [...new Set(zoneIds)].toSorted(), spot?.shareBasisPoints ?? "all over"]),
  );
  return [...tanks.values()];
}

/** An amount of product: by weight or by volume, as it is measured. */
export type ProductAmount = Quantity<"mass"> | Quantity<"volume">;

/** One product in a spray, wherever an amount of it is said. */
export interface SprayedAmount {
  readonly line: number;
  readonly amount: ProductAmount;
  /** In marks of the tool; null where no tool measures it. */
  readonly marks: bigint | null;
}

/** What a visit takes of one product in a spray, under the line of its treatment. */
export interface SprayedProduct {
  readonly line: number;
  readonly productName: string;
  readonly toolName: string | null;
  /** For the visit: the sum of the loads, and of what goes on the lawns and what is left. */
  readonly total: ProductAmount;
  /** In the finished spray, exactly: what every filling of this mix keeps to. */
  readonly concentration: Rate<"product-volume-per-spray-volume"> | Rate<"product-mass-per-spray-volume">;
}

/** One filling of the tank for this visit alone. */
export interface TankLoad {
  readonly number: number;
  readonly finished: Quantity<"volume">;
  readonly products: readonly SprayedAmount[];
  /** Finished volume less what the liquid products take up; nothing where they don't fit, which is held. */
  readonly water: Quantity<"volume">;
}

/** What one lawn gets of a spray. */
export interface SprayedLawn extends TreatedLawn {
  /** What its ground takes, before any mark of a gauge. */
  readonly finished: Quantity<"volume">;
  readonly products: readonly SprayedAmount[];
}

/** What is left in the tank when the ground has what it takes; nothing where all of it goes down. */
export interface SprayRest {
  readonly finished: Quantity<"volume">;
  readonly products: readonly SprayedAmount[];
}

/** What pages and papers call it in the list of lawns. */
export const LEFT_IN_TANK = "Left in the tank";

/** A tank of one or more products on the same lawns. */
export interface SprayMix {
  readonly kind: "spray";
  readonly gearName: string;
  readonly carrier: TicketSprayer["carrier"];
  /** In the loads of this visit mixed alone: what its ground takes, to the mark of the gauge. */
  readonly finished: Quantity<"volume">;
  readonly products: readonly SprayedProduct[];
  readonly loads: readonly TankLoad[];
  readonly lawns: readonly SprayedLawn[];
  /**
   * There where each product is mixed at its strength in the spray, so that the ground gets its rates out of what it takes and
   * no more goes down. Without it the products for the ground are in all of the spray, which is spread evenly.
   */
  readonly rest?: SprayRest;
  readonly steps: readonly string[];
}

/**
 * In the order in which they go into the tank: by formulation, and by name where two are of one kind. A fertilizer that
 * is no pesticide goes in before all but water-soluble bags (Manitoba Guide to Crop Protection, quoted by the Canola
 * Council of Canada, 2013).
 */
export function inMixingOrder(treatments: readonly SprayTreatment[]): readonly SprayTreatment[] {
  return treatments.toSorted(
    ({ label: left }, { label: right }) =>
      turnInTank(left) - turnInTank(right) ||
      FORMULATIONS.indexOf(left.formulation) - FORMULATIONS.indexOf(right.formulation) ||
      left.productName.localeCompare(right.productName, "en"),
  );
}

/** Bags, then fertilizers, then the rest. */
export function turnInTank({ analysis, epaRegistrationNumber, formulation }: LabelFacts): 0 | 1 | 2 {
  if (formulation === "water-soluble bag") return 0;
  return analysis !== "none" && analysis !== "unknown" && epaRegistrationNumber === "none" ? 1 : 2;
}

/**
 * What ground takes of a spray: its area at what the sprayer puts out, before any mark of a gauge, down to the
 * canonical unit. So much out of any fill that is no stronger than a label's highest rate makes it puts no more than
 * that rate on the ground. Source: Oklahoma State, Sprayer Calibration: area times what the sprayer puts out.
 */
export function sprayForGround({ rate }: TicketSprayer["carrier"], lawns: readonly Pick<TreatedLawn, "treatedArea">[]): Quantity<"volume"> {
  return settle(times(rate, sum("area", lawns.map(({ treatedArea }) => treatedArea))), "down");
}

/** What a rate comes to on an area, exactly: by weight or by volume, as the rate is. */
export function rateTimes(rate: ProductRate, area: Measure<"area">): ExactQuantity<"mass"> | ExactQuantity<"volume"> {
  return rate.basis === "product-mass-per-area" ? times(rate, area) : times(rate, area);
}

/** What an amount on an area comes to as a rate: by weight or by volume, as it was measured. Throws when the area is zero. */
export function rateOver(amount: ProductAmount, area: Quantity<"area">): ProductRate {
  return amount.dimension === "mass" ? rateFrom("product-mass-per-area", amount, area) : rateFrom("product-volume-per-area", amount, area);
}

/**
 * What the rate of a product really becomes over the visit, after rounding: its strength where it is planned by strength,
 * and on the ground what the sprayer puts out of it or, where all of it is spread there, what that comes to.
 */
export function rateBecame(treatment: Pick<TicketTreatment, "line" | "asStated">, { products, lawns, finished, rest, carrier }: Pick<SprayMix, "products" | "lawns" | "finished" | "rest" | "carrier">): UseRate | undefined {
  const total = products.find(({ line }) => line === treatment.line)?.total;
  if (total === undefined) return undefined;
  if (plannedStrength(treatment) !== undefined) return strengthOf(total, finished);
  if (rest !== undefined) return rateOnGround(strengthOf(total, finished), carrier.rate);
  return rateOver(total, sum("area", lawns.map(({ treatedArea }) => treatedArea)));
}

/**
 * The product in a volume of finished spray at the concentration that gives the rate. Exact. Throws at a carrier rate
 * of zero.
 */
export function inFinished(rate: ProductRate, carrier: TicketSprayer["carrier"], finished: Quantity<"volume">): ExactQuantity<"mass"> | ExactQuantity<"volume"> {
  return rate.basis === "product-mass-per-area"
    ? times(concentrationInSpray(rate, carrier.rate), finished)
    : times(concentrationInSpray(rate, carrier.rate), finished);
}

/**
 * Works a spray out for one visit: finished volume from the carrier rate and the treated area, to a mark of the
 * tank's gauge (see spray-volume.ts); loads by the tank's size; each product of each load rounded by itself to its tool's mark, never above
 * the label's highest rate on the ground that the load covers, nor above the concentration which that rate makes in the
 * load (by half a canonical unit at most). Where any product of the tank is planned by strength, and where all of the spray
 * would be more than a label wants on the ground, every product is measured for the load's own volume and what the ground
 * does not take is left: what is drawn then puts no more than the highest rate on it. The loads add up to the visit; the
 * lawns and the rest add up to its products, and the lawns to what
 * their ground takes of spray, which is what is drawn for them from a fill for several visits. There is no mix, but
 * a hold, where the sprayer puts out nothing, where its tank is smaller than one mark of the gauge, and where it would be
 * filled more often than any day takes. Products that don't fit into the water are a hold too; the mix then has no water.
 * Throws when there is no treatment or no area.
 */
export function mixSpray(
  treatments: readonly SprayTreatment[],
  lawns: readonly TreatedLawn[],
  settings: TicketSettings,
): { readonly mix: SprayMix | undefined; readonly findings: readonly Finding[] } {
  const ordered = inMixingOrder(treatments);
  const gear = ordered[0]?.gear;
  const area = sum("area", lawns.map(({ treatedArea }) => treatedArea));
  invariant(gear !== undefined && area.amount > 0n, "a spray has products and ground");
  if (gear.carrier.rate.amount === 0n) return { mix: undefined, findings: [putsOutNothing(gear)] };
  const taken = sprayForGround(gear.carrier, lawns);
  const marks = marksFor(times(gear.carrier.rate, area), settings.tankMark, leastSpray(ordered, gear.carrier.rate, area));
  // Half a canonical unit is allowed for, because sizes are stored whole.
  const perTank = marksWithin(gear.capacity, settings.tankMark);
  const findings = unworkable(gear, marks, perTank);
  if (findings.length > 0) return { mix: undefined, findings };
  const shares = loadMarks(marks, perTank, settings.tankLoads).map((share) => ({ share, finished: smallest(amountOfMarks(settings.tankMark, share), gear.capacity) }));
  const finished = sum("volume", shares.map((load) => load.finished));
  const left = leftOver(finished, taken);
  const isAtStrength = ordered.some((treatment) => plannedStrength(treatment) !== undefined) || (left.amount > 0n && passedLabel(ordered, finished, area) !== undefined);
  const loads = shares.map(({ share, ...load }, index) => tankLoad(ordered, { ...load, number: index + 1, ground: multiplyExact(area, rational(share, marks)), carrier: gear.carrier, isAtStrength }));
  const products = ordered.map((treatment) => sprayedProduct(treatment, gear, loads));
  const rest = isAtStrength ? restOf(left, finished, products) : undefined;
  const mix: SprayMix = {
    kind: "spray",
    gearName: gear.name,
    carrier: gear.carrier,
    finished,
    products,
    loads,
    lawns: sharedOut(lawns, taken, products, rest),
    ...(rest === undefined ? {} : { rest }),
    steps: mixingSteps(ordered.map(({ label }) => label), loads.map(({ water }) => water), "load"),
  };
  return { mix, findings: moreThanTaken({ gear, products: ordered, finished, area, isAtStrength }) };
}

function putsOutNothing({ name }: TicketSprayer): Finding {
  return hold("office", { rule: "sprayer-puts-out-nothing", source: "house", what: `${name} is entered as putting out no spray.`, toDo: "Calibrate it, or enter what it puts out.", about: [name] });
}

/** Of each product what goes down is its part of what is drawn, to the nearest canonical unit, and what is left is the rest of it. */
function restOf(left: Quantity<"volume">, finished: Quantity<"volume">, products: readonly SprayedProduct[]): SprayRest {
  const drawn = finished.amount - left.amount;
  return {
    finished: left,
    products: products.map(({ line, total }) => ({ line, amount: { ...total, amount: total.amount - roundQuotient(total.amount * drawn, finished.amount, "nearest") }, marks: null })),
  };
}

function sharedOut(lawns: readonly TreatedLawn[], taken: Quantity<"volume">, products: readonly SprayedProduct[], rest: SprayRest | undefined): readonly SprayedLawn[] {
  const weights = lawns.map(({ treatedArea }) => treatedArea.amount);
  const volumes = allocate(taken, weights);
  const perLawn = products.map(({ line, total }) => {
    const left = rest?.products.find((product) => product.line === line)?.amount.amount;
    return { line, shares: allocate<"mass" | "volume">(left === undefined ? total : { ...total, amount: total.amount - left }, weights) };
  });
  return lawns.map((lawn, index) => ({
    ...lawn,
    finished: shareOf(volumes, index),
    products: perLawn.map(({ line, shares }): SprayedAmount => ({ line, amount: shareOf(shares, index), marks: null })),
  }));
}

function shareOf<Share>(shares: readonly Share[], index: number): Share {
  const share = shares[index];
  invariant(share !== undefined, "every lawn has its share");
  return share;
}

interface LoadShare {
  readonly number: number;
  readonly finished: Quantity<"volume">;
  /** The part of the visit's ground that this load covers. */
  readonly ground: ExactQuantity<"area">;
  readonly carrier: TicketSprayer["carrier"];
  readonly isAtStrength: boolean;
}

function tankLoad(treatments: readonly SprayTreatment[], { number, finished, ground, carrier, isAtStrength }: LoadShare): TankLoad {
  const products = treatments.map((treatment): SprayedAmount => {
    const { line, rate } = treatment;
    const ceiling = highestOf(treatment);
    const strongest = inFinished(ceiling, carrier, finished);
    const [wanted, most] = isAtStrength
      ? [inFinished(rate, carrier, finished), strongest]
      : [rateTimes(rate, ground), smallerOf<"mass" | "volume">(rateTimes(ceiling, ground), strongest)];
    const measured = measureOut<"mass" | "volume">(wanted, most, fittingTool(treatment));
    return { line, amount: measured.amount, marks: measured.marks };
  });
  return { number, finished, products, water: waterBeside(products, finished) };
}

/**
 * The water of a filling: its finished volume less what the liquid products that were measured out take up; nothing
 * where they don't fit. Volumes are taken to add up (common practice).
 */
export function waterBeside(products: readonly { readonly amount: ProductAmount }[], finished: Quantity<"volume">): Quantity<"volume"> {
  const liquid = products.reduce((total, { amount }) => total + (amount.dimension === "volume" ? amount.amount : 0n), 0n);
  return fromAmount("volume", liquid < finished.amount ? finished.amount - liquid : 0n);
}

/** The tool that measures a product, where it measures by what the plan counts: a cup is no tool for what is weighed. */
export function fittingTool({ tool, rate }: SprayTreatment): TicketTool | undefined {
  if (tool === "none") return undefined;
  return tool.mark.dimension === (rate.basis === "product-mass-per-area" ? "mass" : "volume") ? tool : undefined;
}

function sprayedProduct(treatment: SprayTreatment, gear: TicketSprayer, loads: readonly TankLoad[]): SprayedProduct {
  const { line, label, rate } = treatment;
  const amounts = loads.map(({ products }) => products.find((product) => product.line === line)?.amount);
  const amount = amounts.reduce((total, part) => total + (part?.amount ?? 0n), 0n);
  return {
    line,
    productName: label.productName,
    toolName: fittingTool(treatment)?.name ?? null,
    total: rate.basis === "product-mass-per-area" ? { dimension: "mass", amount } : { dimension: "volume", amount },
    concentration: concentrationInSpray(rate, gear.carrier.rate),
  };
}
