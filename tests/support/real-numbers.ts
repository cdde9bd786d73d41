import fc from "fast-check";

/**
 * Numbers from one through another, evenly, in thousandths. fc.double draws evenly from the numbers that a double can
 * hold, and nearly all of those lie next to zero: as temperatures or wind they would all be the same one.
 */
export function between(lowest: number, highest: number): fc.Arbitrary<number> {
  return fc
    .integer({ min: Math.ceil(lowest * 1000), max: Math.floor(highest * 1000) })
    .map((thousandths) => thousandths / 1000);
}
