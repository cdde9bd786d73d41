import { type Finding, takeCare } from "#domain/foundation/finding";
import { type ExactQuantity, type Measure, multiplyExact, settle } from "#domain/quantities/exact-quantity";
import { type Quantity, sum } from "#domain/quantities/quantity";
import { type Rate, rateFrom, times } from "#domain/quantities/rate";
import { divideRational, rational, roundToWhole } from "#domain/quantities/rational";
import { roundToGraduation } from "#domain/quantities/rounding";
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
  /** How many times the hopper is filled, at least. */
  readonly hopperFills: bigint;
}

/**
 * Weighs a spread product out for each lawn: rate times treated area, rounded by itself to the scale's nearest mark and
 * never above the label's highest rate on that area (or the planned rate, where that is above it and held for it). The
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
  const highest = use.rates.basis === "product-mass-per-area" ? use.rates.high : rate;
  const half = rational(1n, settings.granularPasses === "two-at-half-rate-crosswise" ? 2n : 1n);
  const measured = lawns.map((lawn): GranularLawn => {
    const wanted = times(rate, lawn.treatedArea);
    const { amount, marks } = measureOut(wanted, times(highest, lawn.treatedArea), tool);
    if (tool !== undefined && marks === null && wanted.exactAmount.numerator > 0n) findings.push(belowFirstMark(label.productName, lawn.name, tool.name));
    return {
      ...lawn,
      amount,
      marks,
      perPass: multiplyExact(amount, half),
      rate: lawn.treatedArea.amount === 0n ? null : rateFrom("product-mass-per-area", amount, lawn.treatedArea),
    };
  });
  const total = sum("mass", measured.map(({ amount }) => amount));
  const hopperFills = roundToWhole(divideRational(rational(total.amount), rational(gear.capacity.amount)), "up");
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

/** To the tool's nearest mark under a maximum; as it is, to the canonical unit below, where no tool measures it. */
export function measureOut<D extends "mass" | "volume">(
  wanted: ExactQuantity<D>,
  neverAbove: Measure<NoInfer<D>>,
  tool: { readonly mark: Measure<NoInfer<D>> } | undefined,
): { readonly amount: Quantity<D>; readonly marks: bigint | null } {
  if (tool === undefined) return { amount: settle(wanted, "down"), marks: null };
  const rounding = roundToGraduation(wanted, tool.mark, { mode: "nearest", neverAbove: largerOf(wanted, neverAbove) });
  if (rounding.kind === "below-first-mark") return { amount: settle(wanted, "down"), marks: null };
  return { amount: rounding.rounded, marks: rounding.marks };
}

/** A plan above the label's maximum is held for that and computed as planned, so that the figures show it. */
function largerOf<D extends "mass" | "volume">(wanted: ExactQuantity<D>, maximum: Measure<NoInfer<D>>): Measure<D> {
  const isAbove = settle(wanted, "up").amount > settle(maximum, "up").amount;
  return isAbove ? wanted : maximum;
}

export function belowFirstMark(productName: string, where: string, toolName: string): Finding {
  return takeCare({
    rule: "below-first-mark",
    source: "house",
    what: `${productName} for ${where} is less than half a mark of the ${toolName}.`,
    toDo: "Measure it with a finer tool; the amount is given unrounded.",
    about: [productName, where],
  });
}

export function noTool(productName: string, kind: string): Finding {
  return takeCare({
    rule: "no-measuring-tool",
    source: "house",
    what: `${kind[0]?.toUpperCase() ?? ""}${kind.slice(1)} for ${productName} is not on file.`,
    toDo: "Enter the tool and its marks; until then amounts are not rounded to one.",
    about: [productName],
  });
}

