import { formatQuantity } from "#domain/quantities/format-quantity";
import { fromAmount } from "#domain/quantities/quantity";
import { type Dimension } from "#domain/quantities/units";

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
