import { readAmount } from "#domain/equipment/typed-test";
import { invariant } from "#domain/foundation/invariant";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { type Dimension } from "#domain/quantities/units";

// What a schema has let through, as whole canonical units. It throws on what no schema lets through.

/** The amount that was typed. */
export function amountOf(field: string, typed: string, dimension: Dimension): bigint {
  const read = readAmount(field, typed, dimension);
  invariant(read.ok, `the schema has read ${field}`);
  return read.value.amount;
}

/** The amount that was typed, or none where nothing was. */
export function amountOrNone(field: string, typed: string, dimension: Dimension): bigint | null {
  return typed === "" ? null : amountOf(field, typed, dimension);
}

/** The quantity that was typed, zero included. */
export function quantityOf<D extends Dimension>(field: string, typed: string, dimension: D): Quantity<D> {
  const read = parseQuantity(typed, { field, dimensions: [dimension] });
  invariant(read.ok, `the schema has read ${field}`);
  return fromAmount(dimension, read.value.quantity.amount);
}

/** A stored amount in the units that suit its size: "100 gal", "3.06 gal", "1,850 lb". */
export function shown(dimension: Dimension, amount: bigint): string {
  return formatQuantity(fromAmount(dimension, amount), "us");
}

/** The same, or null for an amount that nobody knows. */
export function shownOrNone(dimension: Dimension, amount: bigint | null): string | null {
  return amount === null ? null : shown(dimension, amount);
}

/**
 * What a form means by an amount that it showed before: the stored one, unrounded, where the typed text is still the one
 * shown, else what was typed.
 */
export function keptOrTyped<Kept extends bigint | null>(dimension: Dimension, kept: Kept, typed: string, read: () => Kept): Kept {
  return (shownOrNone(dimension, kept) ?? "") === typed ? kept : read();
}
