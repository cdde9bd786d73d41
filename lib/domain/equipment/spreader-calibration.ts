import { lengthOfArea } from "#domain/equipment/measured-space";
import { averageOf, type Uncertainty, uncertaintyOf } from "#domain/equipment/repeats";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { canonicalAmountOf, type ExactQuantity, isNothing, type Measure } from "#domain/quantities/exact-quantity";
import { type Rate, rateFromAmounts, scaleRate } from "#domain/quantities/rate";
import { divideRational } from "#domain/quantities/rational";

type ProductRate = Rate<"product-mass-per-area">;

/** One run at a setting: what the spreader put out over an area, collected in a catcher or weighed before and after. */
export interface CollectedRun {
  readonly collected: Measure<"mass">;
  /** What the spreader covers in that run: its effective swath times the length of the course. */
  readonly area: Measure<"area">;
}

/** The rate at one setting, what it was worked out from, and how far it may be off. */
export interface SpreaderRate {
  /** All that went in. */
  readonly runs: readonly CollectedRun[];
  readonly method: "collected-over-area";
  readonly rate: ProductRate;
  readonly uncertainty: Uncertainty;
}

/**
 * The rate at one setting: the average over the runs of mass over area, exactly. Refused: no run (`runs`), one without
 * an `area`, one in which nothing was `collected`. Source: Kopec, University of Arizona (April 1999),
 * http://turf.arizona.edu/tips499.htm
 */
export function rateFromCollected(runs: readonly CollectedRun[]): Outcome<SpreaderRate> {
  if (runs.length === 0) return missingFact("runs", "one run or more", "No run with the spreader was collected.");
  if (runs.some(({ area }) => isNothing(area))) {
    return badInput("area", "0 sq ft", "more than nothing", "The test area is zero; measure the course and the swath.");
  }
  if (runs.some(({ collected }) => isNothing(collected))) {
    return badInput("collected", "0 lb", "more than nothing", "Nothing was collected in a run; open the spreader and run again.");
  }
  const rates = runs.map(({ collected, area }) => divideRational(canonicalAmountOf(collected), canonicalAmountOf(area)));
  const { numerator, denominator } = averageOf(rates);
  const rate = rateFromAmounts("product-mass-per-area", numerator, denominator);
  return accept({ runs, method: "collected-over-area", rate, uncertainty: uncertaintyOf(rates) });
}

/** How often a lawn is gone over: once with overlap, or twice crosswise at half the rate. */
export type SpreaderPasses = "one-pass" | "two-passes-crosswise";

/**
 * The rate to set the spreader to for a wanted rate on the lawn: half of it when the lawn is gone over twice. Source:
 * UMass Extension, Rotary Spreader Calibration.
 */
export function ratePerPass(wanted: ProductRate, passes: SpreaderPasses): ProductRate {
  return passes === "one-pass" ? wanted : scaleRate(wanted, { numerator: 1n, denominator: 2n });
}

/** The course to walk at a swath for a test area, exactly: its area over the swath. Refused: no `swath`. */
export function courseFor(area: Measure<"area">, swath: Measure<"length">): Outcome<ExactQuantity<"length">> {
  if (isNothing(swath)) return badInput("swath", "0 ft", "more than nothing", "The swath is zero; measure it with a line of pans.");
  return accept(lengthOfArea(area, swath));
}
