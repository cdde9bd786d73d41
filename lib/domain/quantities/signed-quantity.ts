import { invariant } from "#domain/foundation/invariant";
import { type Quantity } from "#domain/quantities/quantity";
import { type Dimension, requireDimension } from "#domain/quantities/units";

/**
 * A difference, which may be below zero: the day's difference of a fill, a count difference, one side of a stock
 * entry. Its field has a name of its own, so that it can't be passed where a quantity is wanted.
 */
export interface SignedQuantity<D extends Dimension> {
  readonly dimension: D;
  readonly signedAmount: bigint;
}

/** Makes a signed quantity from an amount of canonical units, as it is stored. */
export function fromSignedAmount<D extends Dimension>(dimension: D, signedAmount: bigint): SignedQuantity<D> {
  return { dimension, signedAmount };
}

/** The quantity as a difference above or at zero. */
export function signed<D extends Dimension>(quantity: Quantity<D>): SignedQuantity<D> {
  return { dimension: quantity.dimension, signedAmount: quantity.amount };
}

/** Left less right, below zero when right is the larger. */
export function difference<D extends Dimension>(left: Quantity<D>, right: Quantity<NoInfer<D>>): SignedQuantity<D> {
  requireDimension(right, left.dimension);
  return { dimension: left.dimension, signedAmount: left.amount - right.amount };
}

/** The same difference on the other side of zero. */
export function negate<D extends Dimension>(quantity: SignedQuantity<D>): SignedQuantity<D> {
  return { dimension: quantity.dimension, signedAmount: -quantity.signedAmount };
}

/** The sum of two differences. Throws for two dimensions. */
export function addSigned<D extends Dimension>(
  left: SignedQuantity<D>,
  right: SignedQuantity<NoInfer<D>>,
): SignedQuantity<D> {
  requireDimension(right, left.dimension);
  return { dimension: left.dimension, signedAmount: left.signedAmount + right.signedAmount };
}

/** The sum of a list, which may be empty. A group of stock entries that balances sums to zero. */
export function sumSigned<D extends Dimension>(
  dimension: D,
  quantities: readonly SignedQuantity<NoInfer<D>>[],
): SignedQuantity<D> {
  let signedAmount = 0n;
  for (const quantity of quantities) {
    requireDimension(quantity, dimension);
    signedAmount += quantity.signedAmount;
  }
  return { dimension, signedAmount };
}

/** How far the difference is from zero, and on which side. */
export function magnitude<D extends Dimension>(
  quantity: SignedQuantity<D>,
): { readonly side: "below" | "zero" | "above"; readonly size: Quantity<D> } {
  const { dimension, signedAmount } = quantity;
  if (signedAmount < 0n) return { side: "below", size: { dimension, amount: -signedAmount } };
  return { side: signedAmount === 0n ? "zero" : "above", size: { dimension, amount: signedAmount } };
}

/** The difference as a quantity. Throws below zero: look at {@link magnitude} first. */
export function unsigned<D extends Dimension>(quantity: SignedQuantity<D>): Quantity<D> {
  invariant(quantity.signedAmount >= 0n, "a quantity is not below zero");
  return { dimension: quantity.dimension, amount: quantity.signedAmount };
}
