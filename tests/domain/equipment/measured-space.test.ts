import fc from "fast-check";
import { expect, test } from "vitest";
import { depthOnArea, lengthOfArea, rectangleArea, roundOpeningArea, volumeAlong } from "#domain/equipment/measured-space";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { compareExact, exactly, measureInUnit } from "#domain/quantities/exact-quantity";
import { of, zero } from "#domain/quantities/quantity";
import { toNumber } from "#domain/quantities/rational";
import { anyQuantity } from "../../support/quantity-arbitraries";

test("an acre is 66 by 660 ft, and a square inch is 6.4516 square centimeters", () => {
  expect(compareExact(rectangleArea(of("ft", 66n), of("ft", 660n)), of("acre", 1n))).toBe(0);
  expect(compareExact(rectangleArea(of("in", 1n), of("in", 1n)), exactly("m2", "0.00064516"))).toBe(0);
});

test("231 cubic inches are a gallon, also as a column on a square", () => {
  const column = volumeAlong(rectangleArea(of("in", 11n), of("in", 7n)), of("in", 3n));
  expect(compareExact(column, of("gal", 1n))).toBe(0);
});

test("a round opening has a quarter of pi of the square around it", () => {
  expect(toNumber(measureInUnit(roundOpeningArea(of("m", 2n)), "m2"))).toBeCloseTo(Math.PI, 14);
});

test("length times width and depth times area come back exactly, for any", () => {
  fc.assert(
    fc.property(anyQuantity("length", 1n), anyQuantity("length", 1n), anyQuantity("area", 1n), (length, width, area) => {
      expect(compareExact(lengthOfArea(rectangleArea(length, width), width), length)).toBe(0);
      expect(compareExact(depthOnArea(volumeAlong(area, length), area), length)).toBe(0);
    }),
  );
});

test("nothing to cover by and nothing to stand on throw", () => {
  expect(() => lengthOfArea(of("sq ft", 1n), zero("length"))).toThrow(BrokenInvariant);
  expect(() => depthOnArea(of("gal", 1n), zero("area"))).toThrow(BrokenInvariant);
});
