import { readAmount } from "#domain/equipment/typed-test";
import { invariant } from "#domain/foundation/invariant";
import { parseQuantity } from "#domain/quantities/parse-quantity";
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

/** The volume that was typed, zero included. */
export function volumeOf(field: string, typed: string) {
  const read = parseQuantity(typed, { field, dimensions: ["volume"] });
  invariant(read.ok, `the schema has read ${field}`);
  return read.value.quantity;
}
