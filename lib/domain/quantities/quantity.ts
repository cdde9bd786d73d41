import { BrokenInvariant, invariant } from "#domain/foundation/invariant";
import { decimal, fromNumber as rationalFromNumber, rational, roundQuotient } from "#domain/quantities/rational";
import { type Rational, type RoundingMode } from "#domain/quantities/rational";
import {
  type Dimension,
  type DimensionOf,
  requireDimension,
  type Unit,
  type UnitOf,
  units,
} from "#domain/quantities/units";

/**
 * An amount of one dimension: a whole number, never below zero, of the canonical unit (see units.ts). Differences
 * that may be below zero are a SignedQuantity, fractions of the canonical unit an ExactQuantity.
 */
export interface Quantity<D extends Dimension> {
  readonly dimension: D;
  readonly amount: bigint;
}

/** A value that stands in code or in storage: a fraction, a whole number or a plain decimal such as "13.5". */
export type ExactValue = Rational | bigint | string;

/** Reads an {@link ExactValue}. Throws on text that is no plain decimal. */
export function exactValue(value: ExactValue): Rational {
  if (typeof value === "string") return decimal(value);
  if (typeof value === "bigint") return { numerator: value, denominator: 1n };
  return value;
}

/**
 * Makes a quantity of so many units: `of("lb", "13.5")`. Where the value is not whole in the canonical unit (0.1 lb
 * is, 0.001 lb and 0.01 gal are not) the nearest one is taken, which is at most 3.2 ng or 0.8 pL away; sums that must
 * come out even are formed as ExactQuantity first. Throws below zero.
 */
export function of<U extends Unit>(unit: U, value: ExactValue): Quantity<DimensionOf<U>> {
  const { dimension, canonicalAmount } = units[unit];
  const { numerator, denominator } = exactValue(value);
  invariant(numerator >= 0n && denominator > 0n, "a quantity is not below zero");
  return { dimension, amount: roundQuotient(numerator * canonicalAmount, denominator, "nearest") };
}

/**
 * Makes a quantity from a measured or computed number at an expressly stated number of decimal places. Decimal places
 * are from 0 to 15. Throws below zero, and as fromNumber of rational.ts does.
 */
export function fromNumber<U extends Unit>(unit: U, value: number, decimalPlaces: number): Quantity<DimensionOf<U>> {
  return of(unit, rationalFromNumber(value, decimalPlaces));
}

/** Makes a quantity from an amount of canonical units, as it is stored. Throws below zero. */
export function fromAmount<D extends Dimension>(dimension: D, amount: bigint): Quantity<D> {
  invariant(amount >= 0n, "a quantity is not below zero");
  return { dimension, amount };
}

/** Nothing of a dimension. */
export function zero<D extends Dimension>(dimension: D): Quantity<D> {
  return { dimension, amount: 0n };
}

/** The quantity in a unit of its own dimension, exactly. */
export function inUnit<D extends Dimension>(quantity: Quantity<D>, unit: NoInfer<UnitOf<D>>): Rational {
  const definition = units[unit];
  requireDimension(quantity, definition.dimension);
  return { numerator: quantity.amount, denominator: definition.canonicalAmount };
}

/** True for none at all. */
export function isZero(quantity: Quantity<Dimension>): boolean {
  return quantity.amount === 0n;
}

/** The sum. Throws for two dimensions. */
export function add<D extends Dimension>(left: Quantity<D>, right: Quantity<NoInfer<D>>): Quantity<D> {
  requireDimension(right, left.dimension);
  return { dimension: left.dimension, amount: left.amount + right.amount };
}

/** Takes right from left. Throws when right is the larger: compare first, or ask for a signed difference. */
export function subtract<D extends Dimension>(left: Quantity<D>, right: Quantity<NoInfer<D>>): Quantity<D> {
  requireDimension(right, left.dimension);
  const amount = left.amount - right.amount;
  if (amount < 0n) throw new BrokenInvariant("no more is taken from a quantity than is there");
  return { dimension: left.dimension, amount };
}

/** The sum of a list, which may be empty. */
export function sum<D extends Dimension>(dimension: D, quantities: readonly Quantity<NoInfer<D>>[]): Quantity<D> {
  let amount = 0n;
  for (const quantity of quantities) {
    requireDimension(quantity, dimension);
    amount += quantity.amount;
  }
  return { dimension, amount };
}

/** Below zero when left is the smaller, zero when they are equal, above zero when left is the larger. */
export function compare<D extends Dimension>(left: Quantity<D>, right: Quantity<NoInfer<D>>): -1 | 0 | 1 {
  requireDimension(right, left.dimension);
  if (left.amount < right.amount) return -1;
  return left.amount > right.amount ? 1 : 0;
}

/** The smaller of two; the left one when they are equal. Throws for two dimensions. */
export function smallest<D extends Dimension>(left: Quantity<D>, right: Quantity<NoInfer<D>>): Quantity<D> {
  return compare(left, right) <= 0 ? left : right;
}

/** The larger of two; the left one when they are equal. Throws for two dimensions. */
export function largest<D extends Dimension>(left: Quantity<D>, right: Quantity<NoInfer<D>>): Quantity<D> {
  return compare(left, right) >= 0 ? left : right;
}

/** What part left is of right. Throws when right is zero. */
export function ratio<D extends Dimension>(left: Quantity<D>, right: Quantity<NoInfer<D>>): Rational {
  requireDimension(right, left.dimension);
  return rational(left.amount, right.amount);
}

/** So many times the quantity, to the canonical unit by a named mode. Throws when the factor is below zero. */
export function multiply<D extends Dimension>(
  quantity: Quantity<D>,
  factor: Rational,
  mode: RoundingMode,
): Quantity<D> {
  invariant(factor.numerator >= 0n, "a quantity is not below zero");
  return {
    dimension: quantity.dimension,
    amount: roundQuotient(quantity.amount * factor.numerator, factor.denominator, mode),
  };
}

/**
 * Divides into equal parts; what is left over (less than one canonical unit a part) is given back. Throws for no part
 * or fewer.
 */
export function divide<D extends Dimension>(
  quantity: Quantity<D>,
  parts: bigint,
): { readonly quotient: Quantity<D>; readonly remainder: Quantity<D> } {
  invariant(parts > 0n, "a quantity is divided into one part or more");
  const { dimension, amount } = quantity;
  return {
    quotient: { dimension, amount: amount / parts },
    remainder: { dimension, amount: amount % parts },
  };
}

/**
 * Shares a quantity out by weights so that the shares add up to it exactly: each gets its part rounded down, and the
 * canonical units left over go one each to the largest fractions, the earlier first where they are equal.
 * Throws when there is no weight above zero, or one below.
 */
export function allocate<D extends Dimension>(quantity: Quantity<D>, weights: readonly bigint[]): Quantity<D>[] {
  let total = 0n;
  for (const weight of weights) {
    invariant(weight >= 0n, "a weight is not below zero");
    total += weight;
  }
  invariant(total > 0n, "a quantity is shared out among weights of which one is above zero");
  const shares = weights.map((weight, index) => {
    const product = quantity.amount * weight;
    return { index, amount: product / total, fraction: product % total };
  });
  let leftOver = quantity.amount;
  for (const share of shares) leftOver -= share.amount;
  const byFraction = [...shares].sort((left, right) => {
    if (left.fraction === right.fraction) return left.index - right.index;
    return left.fraction > right.fraction ? -1 : 1;
  });
  for (const share of byFraction.slice(0, Number(leftOver))) share.amount += 1n;
  return shares.map((share) => ({ dimension: quantity.dimension, amount: share.amount }));
}
