import { type RangeCheck, refuseOutOfRange } from "#domain/turf/physical-range";
import { accept, type Outcome } from "#domain/foundation/outcome";
import {
  canonicalAmountOf,
  type ExactQuantity,
  exactly,
  type Measure,
  multiplyExact,
  ratioExact,
} from "#domain/quantities/exact-quantity";
import { invariant } from "#domain/foundation/invariant";
import { fromNumber, type Rational, toNumber } from "#domain/quantities/rational";

/**
 * The sizes of ISO 10625 that crews meet. The flow of a size is its number times 0.4 L/min at 3 bar: 04 gives 1.60, 20
 * gives 8.00. A color is named only where a text that quotes the standard names it; 035 changed its shade in the
 * edition of 2018 and has none here. That 10 and 15 exist is from memory. Source: two public texts that quote ISO 10625
 * (read second-hand, the standard itself was not).
 *
 * The convention is the metric one, at 3 bar. "A tenth of a gallon a minute at 40 psi for each 01" gives 1.3 % less
 * and is another convention; both lie within the 5 % that the standard allows a new tip.
 */
export const nozzleSizes = {
  "01": { litersPerMinute: "0.4", color: "orange" },
  "015": { litersPerMinute: "0.6", color: "green" },
  "02": { litersPerMinute: "0.8", color: "yellow" },
  "025": { litersPerMinute: "1.0", color: "lilac" },
  "03": { litersPerMinute: "1.2", color: "blue" },
  "035": { litersPerMinute: "1.4" },
  "04": { litersPerMinute: "1.6", color: "red" },
  "05": { litersPerMinute: "2.0", color: "brown" },
  "06": { litersPerMinute: "2.4", color: "gray" },
  "08": { litersPerMinute: "3.2", color: "white" },
  "10": { litersPerMinute: "4.0" },
  "15": { litersPerMinute: "6.0" },
  "20": { litersPerMinute: "8.0" },
} as const satisfies Readonly<Record<string, { readonly litersPerMinute: string; readonly color?: string }>>;

/** A size of ISO 10625 that is on file, as it stands on the tip. */
export type NozzleSize = keyof typeof nozzleSizes;

/** True for a size that is on file. */
export function isNozzleSize(text: string): text is NozzleSize {
  return Object.hasOwn(nozzleSizes, text);
}

/** Pounds per square inch in a bar: 100,000 Pa over 6,894.757 293 168 Pa. Source: NIST SP 811 Appendix B.8. */
export const PSI_PER_BAR = 100_000 / 6_894.757_293_168;

/** The pressure at which the sizes of ISO 10625 have their flow: 3 bar, 43.5 psi. */
export const ISO_PRESSURE_PSI = 3 * PSI_PER_BAR;

/** How far a new tip may be from its size at that pressure, in percent. Source: as for the sizes. */
export const NEW_TIP_TOLERANCE_PERCENT = 5;

/** A tip's flow of water as its maker or the standard states it, at one pressure. */
export interface RatedFlow {
  readonly flowPerMinute: Measure<"volume">;
  readonly atPressurePsi: number;
  /** Who states it: "ISO 10625", the maker's sheet, a catch of the new tip. */
  readonly statedBy: string;
}

/** The flow that the standard gives a size, at 3 bar. Source: as for the sizes. */
export function ratedFlowOfSize(size: NozzleSize): RatedFlow {
  const flowPerMinute = exactly("L", nozzleSizes[size].litersPerMinute);
  return { flowPerMinute, atPressurePsi: ISO_PRESSURE_PSI, statedBy: `ISO 10625, size ${size}` };
}

/** The pressures that sprayers for turf work at, generously: beyond them a gauge or a unit is wrong. Common practice. */
const PRESSURE_PSI = { lowest: 1, highest: 1000 } as const;

/** Asks for a pressure at the tip in psi. */
function pressureRange(field: string, words: string, pressurePsi: number): RangeCheck {
  return { field, words, value: pressurePsi, ...PRESSURE_PSI, unit: "psi" };
}

/** A root is kept to this many decimal places, and is exact from there on. */
const ROOT_DECIMALS = 12;

/** The square root of a number from zero up as a fraction, to twelve decimal places. Throws below zero. */
export function squareRoot(value: number): Rational {
  return fromNumber(Math.sqrt(value), ROOT_DECIMALS);
}

/**
 * A tip's flow per minute at another pressure: Q2 = Q1 sqrt(P2/P1), so that four times the pressure doubles the flow.
 * Refused outside 1 to 1,000 psi, at `pressurePsi` or `ratedPressurePsi`. Source: a nozzle maker's table of 2025 (3.22
 * L/min at 2 bar, 6.43 at 8 bar), read second-hand.
 */
export function flowAtPressure(rated: RatedFlow, pressurePsi: number): Outcome<ExactQuantity<"volume">> {
  const refused = refuseOutOfRange([
    pressureRange("pressurePsi", "The pressure at the tip", pressurePsi),
    pressureRange("ratedPressurePsi", "The pressure of the rated flow", rated.atPressurePsi),
  ]);
  if (refused !== undefined) return refused;
  return accept(multiplyExact(rated.flowPerMinute, squareRoot(pressurePsi / rated.atPressurePsi)));
}

/**
 * The pressure in psi at which a tip gives a flow: P2 = P1 (Q2/Q1)^2, which is {@link flowAtPressure} turned round.
 * Refused outside 1 to 1,000 psi, at `pressurePsi` or `ratedPressurePsi`, where another tip is wanted. Throws when the
 * rated flow is zero.
 */
export function pressureForFlow(rated: RatedFlow, flowPerMinute: Measure<"volume">): Outcome<number> {
  invariant(canonicalAmountOf(rated.flowPerMinute).numerator > 0n, "a tip has a flow");
  const pressurePsi = rated.atPressurePsi * toNumber(ratioExact(flowPerMinute, rated.flowPerMinute)) ** 2;
  const refused = refuseOutOfRange([
    pressureRange("ratedPressurePsi", "The pressure of the rated flow", rated.atPressurePsi),
    pressureRange("pressurePsi", "The pressure that this flow takes", pressurePsi),
  ]);
  return refused ?? accept(pressurePsi);
}
