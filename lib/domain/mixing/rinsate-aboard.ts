/** A run as far as what was rinsed out before it asks. */
export interface RinsedRun {
  /** What comes out at its first stop and rides along; nothing where the tank is rinsed at the shop. */
  readonly rinsate: bigint;
  /** The fills for which the truck comes back to the shop, in order: on the way to a stop, or in the middle of it. */
  readonly fillsAtShop: readonly { readonly beginsAt: number; readonly isMidway: boolean }[];
}

/** Rinsate that rides along, in canonical units of volume. */
export interface RinsateAboard {
  readonly volume: bigint;
  /** The first stop on the way to which it is not aboard any more: the truck has been back at the shop. */
  readonly until: number;
}

/**
 * What of rinsed tanks rides along: from the stop at which it came out until the truck is back at the shop to fill the same
 * tank, else to the end of the route. `atEnds` is what is aboard when each run ends.
 */
export function rinsateAlong(runs: readonly RinsedRun[], stops: number): { readonly rides: readonly RinsateAboard[]; readonly atEnds: readonly bigint[] } {
  const rides: RinsateAboard[] = [];
  let aboard = 0n;
  const atEnds = runs.map(({ rinsate, fillsAtShop: [back] }) => {
    aboard += rinsate;
    if (back !== undefined) {
      if (aboard > 0n) rides.push({ volume: aboard, until: back.isMidway ? back.beginsAt + 1 : back.beginsAt });
      aboard = 0n;
    }
    return aboard;
  });
  if (aboard > 0n) rides.push({ volume: aboard, until: stops });
  return { rides, atEnds };
}
