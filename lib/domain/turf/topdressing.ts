import { invariant } from "#domain/foundation/invariant";
import {
  canonicalAmountOf,
  type ExactQuantity,
  fromExactAmount,
  type Measure,
} from "#domain/quantities/exact-quantity";
import { divideRational, multiplyRational, type Rational } from "#domain/quantities/rational";
import { VOLUMES_PER_AREA_TIMES_LENGTH } from "#domain/quantities/units";

function requireAboveZero(amount: Rational, what: string): void {
  invariant(amount.numerator > 0n, `${what} is above zero`);
}

/** The material that covers an area to a depth, loose as it is spread, exactly: 0.77 cu yd for 1/4 in on 1,000 sq ft. */
export function topdressingVolume(area: Measure<"area">, depth: Measure<"length">): ExactQuantity<"volume"> {
  invariant(area.dimension === "area" && depth.dimension === "length", "a volume is an area times a depth");
  const product = multiplyRational(canonicalAmountOf(area), canonicalAmountOf(depth));
  return fromExactAmount("volume", multiplyRational(product, VOLUMES_PER_AREA_TIMES_LENGTH));
}

/** How deep a volume lies on an area, exactly. Throws when the area is zero. */
export function topdressingDepth(volume: Measure<"volume">, area: Measure<"area">): ExactQuantity<"length"> {
  invariant(volume.dimension === "volume" && area.dimension === "area", "a depth is a volume over an area");
  const perDepth = multiplyRational(canonicalAmountOf(area), VOLUMES_PER_AREA_TIMES_LENGTH);
  requireAboveZero(perDepth, "an area that is covered");
  return fromExactAmount("length", divideRational(canonicalAmountOf(volume), perDepth));
}

/** How much area a volume covers to a depth, exactly. Throws when the depth is zero. */
export function topdressingArea(volume: Measure<"volume">, depth: Measure<"length">): ExactQuantity<"area"> {
  invariant(volume.dimension === "volume" && depth.dimension === "length", "an area is a volume over a depth");
  const perArea = multiplyRational(canonicalAmountOf(depth), VOLUMES_PER_AREA_TIMES_LENGTH);
  requireAboveZero(perArea, "a depth that covers");
  return fromExactAmount("area", divideRational(canonicalAmountOf(volume), perArea));
}
