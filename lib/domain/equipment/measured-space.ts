import { invariant } from "#domain/foundation/invariant";
import {
  canonicalAmountOf,
  type ExactQuantity,
  fromExactAmount,
  type Measure,
} from "#domain/quantities/exact-quantity";
import { decimal, divideRational, multiplyRational, type Rational } from "#domain/quantities/rational";
import { LENGTHS_SQUARED_PER_AREA, requireDimension, VOLUMES_PER_AREA_TIMES_LENGTH } from "#domain/quantities/units";

/** Pi to 35 digits: far beyond what a tape can tell, so that a round opening is as exact as its diameter. */
const PI = decimal("3.14159265358979323846264338327950288");
const QUARTER: Rational = { numerator: 1n, denominator: 4n };
const AREA_PER_LENGTHS_SQUARED: Rational = { numerator: 1n, denominator: LENGTHS_SQUARED_PER_AREA };

/**
 * The area of a rectangle, exactly (geometry): what a nozzle covers over a course, what a spreader's width does. Throws
 * for what is no length.
 */
export function rectangleArea(length: Measure<"length">, width: Measure<"length">): ExactQuantity<"area"> {
  requireDimension(length, "length");
  requireDimension(width, "length");
  const product = multiplyRational(canonicalAmountOf(length), canonicalAmountOf(width));
  return fromExactAmount("area", multiplyRational(product, AREA_PER_LENGTHS_SQUARED));
}

/**
 * The area of a round opening of this inner diameter: a hose, a catch can. A quarter of pi times the diameter squared,
 * exact but for pi, which has 35 digits (geometry).
 */
export function roundOpeningArea(diameter: Measure<"length">): ExactQuantity<"area"> {
  const square = rectangleArea(diameter, diameter);
  return fromExactAmount("area", multiplyRational(square.exactAmount, multiplyRational(PI, QUARTER)));
}

/**
 * The length that an area has at a width, exactly: the course to walk for 1,000 sq ft. Throws when the width is zero.
 * Source: geometry.
 */
export function lengthOfArea(area: Measure<"area">, width: Measure<"length">): ExactQuantity<"length"> {
  requireDimension(area, "area");
  requireDimension(width, "length");
  const perLength = multiplyRational(canonicalAmountOf(width), AREA_PER_LENGTHS_SQUARED);
  invariant(perLength.numerator > 0n, "a width that covers is above zero");
  return fromExactAmount("length", divideRational(canonicalAmountOf(area), perLength));
}

/**
 * The volume of a body of the same area all along: water in a hose, water that stands on a lawn. Exact. Source:
 * geometry.
 */
export function volumeAlong(area: Measure<"area">, length: Measure<"length">): ExactQuantity<"volume"> {
  requireDimension(area, "area");
  requireDimension(length, "length");
  const product = multiplyRational(canonicalAmountOf(area), canonicalAmountOf(length));
  return fromExactAmount("volume", multiplyRational(product, VOLUMES_PER_AREA_TIMES_LENGTH));
}

/** How deep a volume stands on an area, exactly. Throws when the area is zero. Source: geometry. */
export function depthOnArea(volume: Measure<"volume">, area: Measure<"area">): ExactQuantity<"length"> {
  requireDimension(volume, "volume");
  requireDimension(area, "area");
  const perDepth = multiplyRational(canonicalAmountOf(area), VOLUMES_PER_AREA_TIMES_LENGTH);
  invariant(perDepth.numerator > 0n, "an area on which a volume stands is above zero");
  return fromExactAmount("length", divideRational(canonicalAmountOf(volume), perDepth));
}
