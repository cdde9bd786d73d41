import { invariant } from "#domain/foundation/invariant";
import { type Quantity } from "#domain/quantities/quantity";
import { roundQuotient } from "#domain/quantities/rational";
import { type SignedQuantity } from "#domain/quantities/signed-quantity";
import { LENGTHS_SQUARED_PER_AREA } from "#domain/quantities/units";

/** A corner on a flat grid, east and north of any point chosen as the origin. */
export interface Corner {
  readonly east: SignedQuantity<"length">;
  readonly north: SignedQuantity<"length">;
}

interface Side {
  readonly from: Corner;
  readonly to: Corner;
}

function sidesOf(corners: readonly Corner[]): Side[] {
  return corners.map((from, index) => {
    const to = corners[(index + 1) % corners.length];
    invariant(to !== undefined, "each corner has a next one");
    return { from, to };
  });
}

/**
 * The corners without repeats of the one before: drawing tools end where they began, and record a pause twice. One alone,
 * which comes before itself, stays.
 */
export function withoutRepeats(corners: readonly Corner[]): Corner[] {
  const kept = corners.filter((corner, index) => {
    const previous = corners.at(index - 1);
    return corner.east.signedAmount !== previous?.east.signedAmount || corner.north.signedAmount !== previous.north.signedAmount;
  });
  return kept.length === 0 ? corners.slice(0, 1) : kept;
}

/** Twice the area left of the way from `from` by `to` to `other`: above zero for a turn to the left. */
function turn(from: Corner, to: Corner, other: Corner): bigint {
  return (
    (to.east.signedAmount - from.east.signedAmount) * (other.north.signedAmount - from.north.signedAmount) -
    (to.north.signedAmount - from.north.signedAmount) * (other.east.signedAmount - from.east.signedAmount)
  );
}

function isBetween(value: bigint, one: bigint, other: bigint): boolean {
  return one <= other ? one <= value && value <= other : other <= value && value <= one;
}

/** Whether a corner that lies in line with a side lies on it. */
function isOnSide(side: Side, corner: Corner): boolean {
  return (
    isBetween(corner.east.signedAmount, side.from.east.signedAmount, side.to.east.signedAmount) &&
    isBetween(corner.north.signedAmount, side.from.north.signedAmount, side.to.north.signedAmount)
  );
}

function sign(value: bigint): -1 | 0 | 1 {
  if (value === 0n) return 0;
  return value < 0n ? -1 : 1;
}

function meet(one: Side, other: Side): boolean {
  const otherFrom = sign(turn(one.from, one.to, other.from));
  const otherTo = sign(turn(one.from, one.to, other.to));
  const oneFrom = sign(turn(other.from, other.to, one.from));
  const oneTo = sign(turn(other.from, other.to, one.to));
  if (otherFrom * otherTo < 0 && oneFrom * oneTo < 0) return true;
  return (
    (otherFrom === 0 && isOnSide(one, other.from)) ||
    (otherTo === 0 && isOnSide(one, other.to)) ||
    (oneFrom === 0 && isOnSide(other, one.from)) ||
    (oneTo === 0 && isOnSide(other, one.to))
  );
}

/**
 * Whether any two sides of the outline that are not neighbors cross, touch or lie on one another. A side that folds
 * back onto its neighbor is found too, because the side after it then begins on the first; three corners can't cross.
 * Exact; the time grows with the square of the corners.
 */
export function haveCrossingSides(corners: readonly Corner[]): boolean {
  const sides = sidesOf(corners);
  return sides.some((side, index) =>
    sides.some((other, otherIndex) => {
      const areNeighbors = otherIndex === index + 1 || (index === 0 && otherIndex === sides.length - 1);
      return otherIndex > index && !areNeighbors && meet(side, other);
    }),
  );
}

/**
 * The area within an outline whose sides don't cross, whichever way round its corners are listed. Half the sum of the
 * cross products of its sides, to the nearest canonical area. Source: geometry (the shoelace formula).
 */
export function areaOfCorners(corners: readonly Corner[]): Quantity<"area"> {
  let twice = 0n;
  for (const { from, to } of sidesOf(corners)) {
    twice += from.east.signedAmount * to.north.signedAmount - to.east.signedAmount * from.north.signedAmount;
  }
  const size = twice < 0n ? -twice : twice;
  return { dimension: "area", amount: roundQuotient(size, 2n * LENGTHS_SQUARED_PER_AREA, "nearest") };
}
