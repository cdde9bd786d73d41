import { invariant } from "#domain/foundation/invariant";
import { canonicalAmountOf, type ExactQuantity, fromExactAmount, type Measure } from "#domain/quantities/exact-quantity";
import { formatFigure } from "#domain/quantities/format-number";
import {
  addRational,
  compareRational,
  divideRational,
  multiplyRational,
  type Rational,
  rational,
  reduce,
  subtractRational,
  ZERO,
} from "#domain/quantities/rational";
import { type Dimension } from "#domain/quantities/units";

/** How far a calibration may be off, as far as its own repeats tell. One run tells nothing. */
export type Uncertainty =
  | {
      readonly kind: "spread-of-repeats";
      /** The largest distance of one repeat from the average, as a part of the average. */
      readonly part: Rational;
      /** How many repeats the least repeated measurement had. */
      readonly repeats: number;
    }
  | { readonly kind: "not-given" };

/** The average, exactly. Throws for none. */
export function averageOf(values: readonly Rational[]): Rational {
  invariant(values.length > 0, "an average is of something");
  return reduce(divideRational(values.reduce(addRational, ZERO), rational(BigInt(values.length))));
}

/** The average of what was measured, exactly. Throws for none. */
export function averageMeasure<D extends Dimension>(dimension: D, measures: readonly Measure<D>[]): ExactQuantity<D> {
  return fromExactAmount(dimension, averageOf(measures.map(canonicalAmountOf)));
}

/** A value's distance from an average, as a part of the average; below zero when it is the smaller. Throws at zero. */
export function distanceFrom(average: Rational, value: Rational): Rational {
  return reduce(divideRational(subtractRational(value, average), average));
}

function sizeOf(value: Rational): Rational {
  return value.numerator < 0n ? { ...value, numerator: -value.numerator } : value;
}

/**
 * The repeat farthest from the average, as a part of the average, without its sign. Throws for none and at zero. Common
 * practice.
 */
export function largestDistance(values: readonly Rational[]): Rational {
  const average = averageOf(values);
  return values
    .map((value) => sizeOf(distanceFrom(average, value)))
    .reduce((largest, distance) => (compareRational(distance, largest) > 0 ? distance : largest), ZERO);
}

/** What the repeats of one measurement tell: nothing when there is only one. */
export function uncertaintyOf(values: readonly Rational[]): Uncertainty {
  if (values.length < 2) return { kind: "not-given" };
  return { kind: "spread-of-repeats", part: largestDistance(values), repeats: values.length };
}

/**
 * What is known of a product or quotient of measurements: the parts added up, as if all were off the same way. Not
 * given when any of them was measured once. Common practice.
 */
export function combinedUncertainty(uncertainties: readonly Uncertainty[]): Uncertainty {
  let part = ZERO;
  let repeats = Number.POSITIVE_INFINITY;
  for (const uncertainty of uncertainties) {
    if (uncertainty.kind === "not-given") return uncertainty;
    part = addRational(part, uncertainty.part);
    repeats = Math.min(repeats, uncertainty.repeats);
  }
  return uncertainties.length === 0 ? { kind: "not-given" } : { kind: "spread-of-repeats", part: reduce(part), repeats };
}

/** Whether a part, whatever its sign, is more than so many percent. Not when it is exactly so many. */
export function isMoreThanPercent(part: Rational, percent: Rational): boolean {
  return compareRational(multiplyRational(sizeOf(part), rational(100n)), percent) > 0;
}

/** A part as it is read in a sentence, without its sign: "12.5%". */
export function percentInWords(part: Rational): string {
  return `${formatFigure(multiplyRational(sizeOf(part), rational(100n)), { decimals: 1, quarters: false })}%`;
}
