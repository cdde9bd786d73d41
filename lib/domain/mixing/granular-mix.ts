import { capitalized } from "#domain/foundation/capitalized";
import { distanceFrom, isMoreThanPercent } from "#domain/equipment/repeats";
import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { compareExact, type ExactQuantity, type Measure, multiplyExact, settle } from "#domain/quantities/exact-quantity";
import { formatRatesApart } from "#domain/quantities/format-rate";
import { type Quantity, sum } from "#domain/quantities/quantity";
import { compareRates, type Rate, rateFrom, times } from "#domain/quantities/rate";
import { divideRational, rational, roundToWhole } from "#domain/quantities/rational";
import { roundToGraduation } from "#domain/quantities/rounding";
import { type AreaRates, citationOfUse, type ProductRate, type UseRate } from "#domain/label/label-facts";
import { compareToLabel } from "#domain/label/label-rates";
import { NEAR_ENOUGH_PERCENT, roundedOffPlan } from "#domain/mixing/rounded-rate";
import { statedOf } from "#domain/mixing/stated-rate";
import { type TicketSettings, type TicketSpreader, type TicketTool, type TicketTreatment } from "#domain/mixing/ticket-question";
import { type TreatedLawn } from "#domain/mixing/treated-area";

/** What one lawn gets of a spread product. */
export interface GranularLawn extends TreatedLawn {
  /** What to weigh out. */
  readonly amount: Quantity<"mass">;
  /** In marks of the tool; null where no tool measures it. */
  readonly marks: bigint | null;
  /** What goes on in each pass; exact, half of the amount in two passes. */
  readonly perPass: ExactQuantity<"mass">;
  /** What the rate really becomes after rounding; null on a lawn where nothing goes down. */
  readonly rate: Rate<"product-mass-per-area"> | null;
}

/** One product spread dry: what each lawn gets, and the setting. */
export interface GranularMix {
  readonly kind: "granular";
  readonly line: number;
  readonly productName: string;
  readonly gearName: string;
  readonly setting: TicketSpreader["setting"];
  readonly passes: TicketSettings["granularPasses"];
  readonly toolName: string | null;
  readonly lawns: readonly GranularLawn[];
  readonly total: Quantity<"mass">;
  /** How many times the hopper is filled, at least; zero where its size is entered as nothing, which is held. */
  readonly hopperFills: bigint;
}

/**
 * Weighs a spread product out for each lawn: rate times treated area, rounded by itself to the scale's nearest mark and
 * never above the label's highest rate on that area (or the planned rate, where that is above it and held for it); by
 * half a canonical unit of mass at most, which no scale shows, because stored areas are whole numbers of theirs. The
 * lawns add up to the visit exactly. An amount under the first mark is kept unrounded and says so.
 */
export function mixGranular(
  treatment: TicketTreatment & { readonly gear: TicketSpreader },
  rate: Rate<"product-mass-per-area">,
  lawns: readonly TreatedLawn[],
  settings: TicketSettings,
): { readonly mix: GranularMix; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const { label, use, gear, line } = treatment;
  const tool = massTool(treatment.tool);
  const ceiling = ceilingOf(rate, use.rates);
  const half = rational(1n, settings.granularPasses === "two-at-half-rate-crosswise" ? 2n : 1n);
  const measured = lawns.map((lawn): GranularLawn => {
    const wanted = times(rate, lawn.treatedArea);
    const { amount, marks } = measureOut(wanted, times(ceiling, lawn.treatedArea), tool);
    if (tool !== undefined && marks === null && wanted.exactAmount.numerator > 0n) findings.push(belowFirstMark(label.productName, lawn.name, tool.name));
    const became = lawn.treatedArea.amount === 0n ? null : rateFrom("product-mass-per-area", amount, lawn.treatedArea);
    if (marks !== null && became !== null) findings.push(...roundedBelowLowest(treatment, became, lawn.name));
    return { ...lawn, amount, marks, perPass: multiplyExact(amount, half), rate: became };
  });
  const total = sum("mass", measured.map(({ amount }) => amount));
  const ground = sum("area", lawns.map(({ treatedArea }) => treatedArea));
  const isTooLowSaid = findings.some(({ rule }) => rule === "rounded-below-lowest");
  if (ground.amount > 0n && !isTooLowSaid) findings.push(...roundedOffPlan(treatment, rateFrom("product-mass-per-area", total, ground), "Weighed out"));
  const isHopper = gear.capacity.amount > 0n;
  if (!isHopper) findings.push(holdsNothing(gear.name));
  const hopperFills = isHopper ? roundToWhole(divideRational(rational(total.amount), rational(gear.capacity.amount)), "up") : 0n;
  const mix: GranularMix = {
    kind: "granular",
    line,
    productName: label.productName,
    gearName: gear.name,
    setting: gear.setting,
    passes: settings.granularPasses,
    toolName: tool?.name ?? null,
    lawns: measured,
    total,
    hopperFills,
  };
  return { mix, findings: tool === undefined ? [noTool(label.productName, "a scale"), ...findings] : findings };
}

function massTool(tool: TicketTool | "none"): TicketTool<"mass"> | undefined {
  if (tool === "none" || tool.mark.dimension !== "mass") return undefined;
  return tool as TicketTool<"mass">;
}

/**
 * To the tool's nearest mark under a maximum; as it is, to the canonical unit below, where no tool measures it. Throws
 * for a tool whose marks are not apart.
 */
export function measureOut<D extends "mass" | "volume">(
  wanted: ExactQuantity<D>,
  neverAbove: ExactQuantity<NoInfer<D>>,
  tool: { readonly mark: Measure<NoInfer<D>> } | undefined,
): { readonly amount: Quantity<D>; readonly marks: bigint | null } {
  const rounding = tool === undefined ? undefined : roundToGraduation(wanted, tool.mark, { mode: "nearest", neverAbove });
  if (rounding === undefined || rounding.kind === "below-first-mark") return { amount: settle(smallerOf(wanted, neverAbove), "down"), marks: null };
  return { amount: rounding.rounded, marks: rounding.marks };
}

/** The smaller of two exact quantities. */
export function smallerOf<D extends "mass" | "volume">(left: ExactQuantity<D>, right: ExactQuantity<NoInfer<D>>): ExactQuantity<D> {
  return compareExact(left, right) <= 0 ? left : right;
}

/**
 * The rate that rounding may reach: the label's highest, or the plan's own where that is above it. Such a plan is held
 * for it and computed as planned, so that the figures show it; so is one by another measure than its label's.
 */
export function ceilingOf<B extends ProductRate["basis"]>(rate: Rate<B>, rates: AreaRates): Rate<B> {
  const high = rates.high as Rate<ProductRate["basis"]>;
  return high.basis === rate.basis && compareRates<ProductRate["basis"]>(high, rate) > 0 ? (high as Rate<B>) : rate;
}

/** The rate that rounding may reach of a treatment, by weight or by volume as it is planned: see {@link ceilingOf}. */
export function highestOf({ rate, use: { rates } }: Pick<TicketTreatment, "rate" | "use">): ProductRate {
  return rate.basis === "product-mass-per-area" ? ceilingOf(rate, rates) : ceilingOf(rate, rates);
}

/** Says so where the marks of a tool bring a plan within the label's range below its lowest rate, by more than counts as near enough: no tool hits a rate of which a label gives but one. */
export function roundedBelowLowest(treatment: TicketTreatment, became: UseRate, where: string): readonly Finding[] {
  const { label } = treatment;
  const { rate, rates } = statedOf(treatment);
  const planned = compareToLabel(rate, rates, "low");
  if (planned === undefined || planned < 0 || compareToLabel(became, rates, "low") !== -1) return [];
  if (!isMoreThanPercent(distanceFrom(rational(rates.low.amount, rates.low.per), rational(became.amount, became.per)), NEAR_ENOUGH_PERCENT)) return [];
  const [below, lowest] = formatRatesApart<UseRate["basis"]>(became, rates.low, "us");
  return [
    takeCare({
      rule: "rounded-below-lowest",
      source: "label",
      what: `Measured to a mark, ${label.productName} for ${where} comes below the label's lowest rate.`,
      figure: `It becomes ${below}; the label's lowest is ${lowest}.`,
      toDo: compareToLabel(rate, rates, "high") === 0 ? "Measure it with a finer tool." : "Measure it with a finer tool, or plan a little more.",
      citation: citationOfUse(label.productName, treatment.use.useName),
      about: [label.productName, where],
    }),
  ];
}

function holdsNothing(gearName: string): Finding {
  return hold("office", {
    rule: "hopper-without-size",
    source: "house",
    what: `The hopper of ${gearName} is entered as holding nothing.`,
    toDo: "Enter how much it holds.",
    about: [gearName],
  });
}

/** Wants care where less is put down at a place than one mark of the tool shows. */
export function belowFirstMark(productName: string, where: string, toolName: string): Finding {
  return takeCare({
    rule: "below-first-mark",
    source: "house",
    what: `${productName} for ${where} is less than one mark of the ${toolName}.`,
    toDo: "Measure it with a finer tool; the amount is given unrounded.",
    about: [productName, where],
  });
}

/** Wants care where nothing on file measures a product; `kind` says what would, as in "a scale". */
export function noTool(productName: string, kind: string): Finding {
  return takeCare({
    rule: "no-measuring-tool",
    source: "house",
    what: `${capitalized(kind)} for ${productName} is not on file.`,
    toDo: "Enter the tool and its marks; until then amounts are not rounded to one.",
    about: [productName],
  });
}
