import { roundOpeningArea, volumeAlong } from "#domain/equipment/measured-space";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { canonicalAmountOf, type ExactQuantity, type Measure, sumExact } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { coverage, type Rate } from "#domain/quantities/rate";

/** A hose from the tank to the gun or boom, by its inner diameter. What is printed on a hose is the inner one. */
export interface Hose {
  readonly name: string;
  readonly length: Measure<"length">;
  readonly innerDiameter: Measure<"length">;
}

/** What stays between the tank's outlet and the tips, and under the outlet. A part that holds nothing is written as zero. */
export interface SprayPlumbing {
  readonly hoses: readonly Hose[];
  /** The pump with its filter and fittings, or unknown when nobody has drained and measured it. */
  readonly pump: Measure<"volume"> | "unknown";
  /** What the pump can't draw from the bottom of the tank, or unknown. */
  readonly tankRemainder: Measure<"volume"> | "unknown";
}

/** What stays in the plumbing of a sprayer. */
export interface HoldUp {
  readonly hoses: readonly { readonly name: string; readonly volume: ExactQuantity<"volume"> }[];
  /** Hoses and pump: what reaches the next lawn before the new mix does. */
  readonly inLine: ExactQuantity<"volume">;
  /** The same with what the tank keeps: what a clean-out has to deal with. */
  readonly total: ExactQuantity<"volume">;
}

/**
 * What a hose holds when it is full: a quarter of pi times the diameter squared times the length, exactly. 300 ft of
 * half-inch hose hold 3.06 gal. Refused: a hose without `length` or `innerDiameter`. Source: US National Wildfire
 * Coordinating Group, volume of water in hose.
 */
export function hoseVolume(hose: Hose): Outcome<ExactQuantity<"volume">> {
  for (const [field, words, measure] of [
    ["length", "length", hose.length],
    ["innerDiameter", "inner diameter", hose.innerDiameter],
  ] as const) {
    if (canonicalAmountOf(measure).numerator > 0n) continue;
    const sentence = `The ${words} of ${hose.name} is ${formatQuantity(measure, "us")}; measure it.`;
    return badInput(field, formatQuantity(measure, "us"), "more than nothing", sentence);
  }
  return accept(volumeAlong(roundOpeningArea(hose.innerDiameter), hose.length));
}

/**
 * What hoses, pump and tank keep. Refused: a hose that hoseVolume refuses, and a `pump` or a `tankRemainder` that is
 * unknown, because an unknown part is never taken for an empty one.
 */
export function holdUpOf(plumbing: SprayPlumbing): Outcome<HoldUp> {
  const hoses: { readonly name: string; readonly volume: ExactQuantity<"volume"> }[] = [];
  for (const hose of plumbing.hoses) {
    const volume = hoseVolume(hose);
    if (!volume.ok) return volume;
    hoses.push({ name: hose.name, volume: volume.value });
  }
  const { pump, tankRemainder } = plumbing;
  if (pump === "unknown") {
    return missingFact("pump", "a volume, zero included", "What the pump holds is not known. Drain it into a measure once.");
  }
  if (tankRemainder === "unknown") {
    const sentence = "What the tank keeps under its outlet is not known. Pump it dry once and drain the rest into a measure.";
    return missingFact("tankRemainder", "a volume, zero included", sentence);
  }
  const inLine = sumExact("volume", [...hoses.map(({ volume }) => volume), pump]);
  return accept({ hoses, inLine, total: sumExact("volume", [inLine, tankRemainder]) });
}

/**
 * How much of the next lawn gets the last mix first: what is in the line, at the carrier rate. Throws at a carrier rate
 * of zero, which no calibration gives.
 */
export function areaUnderLastMix(inLine: Measure<"volume">, carrier: Rate<"carrier-volume-per-area">): ExactQuantity<"area"> {
  return coverage(carrier, inLine);
}
