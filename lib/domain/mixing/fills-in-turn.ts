import { fromAmount, type Quantity } from "#domain/quantities/quantity";

/**
 * How a volume of spray comes out of fills that are emptied one after the other: of each what it has, and of the last one
 * the rest, whether it has that or not, for what was sprayed came out of something. Adds up to the volume.
 * @param had of each fill in the order in which they are emptied, in canonical units; below nothing counts as nothing
 */
export function inTurn(volume: Quantity<"volume">, had: readonly bigint[]): readonly Quantity<"volume">[] {
  let rest = volume.amount;
  return had.map((amount, index) => {
    const has = amount < 0n ? 0n : amount;
    const part = index === had.length - 1 || has > rest ? rest : has;
    rest -= part;
    return fromAmount("volume", part);
  });
}
