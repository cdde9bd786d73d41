import { invariant } from "#domain/foundation/invariant";
import {
  canonicalAmountOf,
  type ExactQuantity,
  fromExactAmount,
  type Measure,
} from "#domain/quantities/exact-quantity";
import { divideRational, multiplyRational, type Rational } from "#domain/quantities/rational";
import { requireDimension, VOLUMES_PER_AREA_TIMES_LENGTH } from "#domain/quantities/units";

function requireAboveZero(amount: Rational, what: string): void {
  invariant(amount.numerator > 0n, `${what} is above zero`);
}

/**
 * The material that covers an area to a depth, loose as it is spread, exactly (area times depth; geometry): 0.77 cu yd
 * for 1/4 in on 1,000 sq ft.
 */
export function topdressingVolume(area: Measure<"area">, depth: Measure<"length">): ExactQuantity<"volume"> {
  requireDimension(area, "area");
  requireDimension(depth, "length");
  const product = multiplyRational(canonicalAmountOf(area), canonicalAmountOf(depth));
  return fromExactAmount("volume", multiplyRational(product, VOLUMES_PER_AREA_TIMES_LENGTH));
}

/** How deep a volume lies on an area, exactly. Throws when the area is zero. Source: geometry. */
export function topdressingDepth(volume: Measure<"volume">, area: Measure<"area">): ExactQuantity<"length"> {
  requireDimension(volume, "volume");
  requireDimension(area, "area");
  const perDepth = multiplyRational(canonicalAmountOf(area), VOLUMES_PER_AREA_TIMES_LENGTH);
  requireAboveZero(perDepth, "an area that is covered");
  return fromExactAmount("length", divideRational(canonicalAmountOf(volume), perDepth));
}

/** How much area a volume covers to a depth, exactly. Throws when the depth is zero. Source: geometry. */
export function topdressingArea(volume: Measure<"volume">, depth: Measure<"length">): ExactQuantity<"area"> {
  requireDimension(volume, "volume");
  requireDimension(depth, "length");
  const perArea = multiplyRational(canonicalAmountOf(depth), VOLUMES_PER_AREA_TIMES_LENGTH);
  requireAboveZero(perArea, "a depth that covers");
  return fromExactAmount("area", divideRational(canonicalAmountOf(volume), perArea));
}
