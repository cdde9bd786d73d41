import fc from "fast-check";
import { type Quantity } from "#domain/quantities/quantity";
import { type Rational } from "#domain/quantities/rational";
import { type Dimension } from "#domain/quantities/units";

export const dimensions = ["volume", "mass", "area", "length"] as const;

/** Fractions from zero up, and below zero where asked for. */
export function anyRational(least = 0n, most = 10n ** 12n): fc.Arbitrary<Rational> {
  return fc.record({
    numerator: fc.bigInt({ min: least, max: most }),
    denominator: fc.bigInt({ min: 1n, max: 10n ** 6n }),
  });
}

/** Quantities from nothing to some hundred thousand gallons or some million pounds. */
export function anyQuantity<D extends Dimension>(dimension: D, least = 0n): fc.Arbitrary<Quantity<D>> {
  return fc.bigInt({ min: least, max: 10n ** 18n }).map((amount) => ({ dimension, amount }));
}
