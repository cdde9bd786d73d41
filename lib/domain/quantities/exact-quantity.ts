import { invariant } from "#domain/foundation/invariant";
import { type ExactValue, exactValue, type Quantity } from "#domain/quantities/quantity";
import {
  addRational,
  compareRational,
  divideRational,
  multiplyRational,
  type Rational,
  roundToWhole,
  type RoundingMode,
  ZERO,
} from "#domain/quantities/rational";
import {
  type Dimension,
  type DimensionOf,
  requireDimension,
  type Unit,
  type UnitOf,
  units,
} from "#domain/quantities/units";

/**
 * An amount as an exact fraction of the canonical unit, never below zero: what a rate times an area is before its one
 * named rounding, or one mark of a measuring tool (a hundredth of a gallon is no whole number of canonical units).
 */
export interface ExactQuantity<D extends Dimension> {
  readonly dimension: D;
  readonly exactAmount: Rational;
}

/** A quantity or an exact one, where a computation takes either. */
export type Measure<D extends Dimension> = Quantity<D> | ExactQuantity<D>;

/** Makes an exact quantity of so many units: `exactly("lb", "0.1")`. Throws below zero. */
export function exactly<U extends Unit>(unit: U, value: ExactValue): ExactQuantity<DimensionOf<U>> {
  const { dimension, canonicalAmount } = units[unit];
  const { numerator, denominator } = exactValue(value);
  return fromExactAmount(dimension, { numerator: numerator * canonicalAmount, denominator });
}

/** Makes an exact quantity from a fraction of canonical units. Throws below zero. */
export function fromExactAmount<D extends Dimension>(dimension: D, exactAmount: Rational): ExactQuantity<D> {
  invariant(exactAmount.numerator >= 0n && exactAmount.denominator > 0n, "a quantity is not below zero");
  return { dimension, exactAmount };
}

/** The measure in canonical units, as a fraction. */
export function canonicalAmountOf(measure: Measure<Dimension>): Rational {
  return "amount" in measure ? { numerator: measure.amount, denominator: 1n } : measure.exactAmount;
}

/** True for none at all. */
export function isNothing(measure: Measure<Dimension>): boolean {
  return canonicalAmountOf(measure).numerator === 0n;
}

/** The measure in a unit of its own dimension, exactly. */
export function measureInUnit<D extends Dimension>(measure: Measure<D>, unit: NoInfer<UnitOf<D>>): Rational {
  const definition = units[unit];
  requireDimension(measure, definition.dimension);
  const { numerator, denominator } = canonicalAmountOf(measure);
  return { numerator, denominator: denominator * definition.canonicalAmount };
}

/** The one named rounding that turns an exact quantity into a whole number of canonical units. */
export function settle<D extends Dimension>(measure: Measure<D>, mode: RoundingMode): Quantity<D> {
  if ("amount" in measure) return measure;
  return { dimension: measure.dimension, amount: roundToWhole(measure.exactAmount, mode) };
}

/** The sum, exactly. Throws for two dimensions. */
export function addExact<D extends Dimension>(left: Measure<D>, right: Measure<NoInfer<D>>): ExactQuantity<D> {
  requireDimension(right, left.dimension);
  return {
    dimension: left.dimension,
    exactAmount: addRational(canonicalAmountOf(left), canonicalAmountOf(right)),
  };
}

/** The sum of a list, which may be empty. */
export function sumExact<D extends Dimension>(
  dimension: D,
  measures: readonly Measure<NoInfer<D>>[],
): ExactQuantity<D> {
  let exactAmount = ZERO;
  for (const measure of measures) {
    requireDimension(measure, dimension);
    exactAmount = addRational(exactAmount, canonicalAmountOf(measure));
  }
  return { dimension, exactAmount };
}

/** So many times the measure, exactly. Throws when the factor is below zero. */
export function multiplyExact<D extends Dimension>(measure: Measure<D>, factor: Rational): ExactQuantity<D> {
  return fromExactAmount(measure.dimension, multiplyRational(canonicalAmountOf(measure), factor));
}

/** Below zero when left is the smaller, zero when they are equal, above zero when left is the larger. */
export function compareExact<D extends Dimension>(left: Measure<D>, right: Measure<NoInfer<D>>): -1 | 0 | 1 {
  requireDimension(right, left.dimension);
  return compareRational(canonicalAmountOf(left), canonicalAmountOf(right));
}

/** What part left is of right, exactly. Throws when right is zero. */
export function ratioExact<D extends Dimension>(left: Measure<D>, right: Measure<NoInfer<D>>): Rational {
  requireDimension(right, left.dimension);
  return divideRational(canonicalAmountOf(left), canonicalAmountOf(right));
}
