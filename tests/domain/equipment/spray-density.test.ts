import fc from "fast-check";
import { expect, test } from "vitest";
import { densityFactor, sprayRateFromWater, waterRateForSpray } from "#domain/equipment/spray-density";
import { densityFromSpecificGravity } from "#domain/quantities/density";
import { compareRates, rateOf, ratioOfRates } from "#domain/quantities/rate";
import { fromNumber, rational, reduce, toNumber } from "#domain/quantities/rational";
import { between } from "../../support/real-numbers";

const gravity = (value: number) => densityFromSpecificGravity(fromNumber(value, 3));
const rate = rateOf("carrier-volume-per-area", 2n, "gal per 1,000 sq ft");

test("water has 1, and four times its density has 2", () => {
  expect(densityFactor(gravity(1))).toEqual(rational(1n));
  expect(densityFactor(gravity(4))).toEqual(rational(2n));
  expect(compareRates(sprayRateFromWater(rate, gravity(1)), rate)).toBe(0);
  expect(reduce(ratioOfRates(sprayRateFromWater(rate, gravity(4)), rate))).toEqual(rational(1n, 2n));
});

test("the way to water and back is exact, and a denser spray comes slower, for any", () => {
  fc.assert(
    fc.property(between(0.7, 2), (specificGravity) => {
      const density = gravity(specificGravity);
      expect(compareRates(sprayRateFromWater(waterRateForSpray(rate, density), density), rate)).toBe(0);
      expect(compareRates(rate, sprayRateFromWater(rate, density))).toBe(Math.sign(specificGravity - 1));
      expect(toNumber(densityFactor(density)) ** 2).toBeCloseTo(specificGravity, 10);
    }),
  );
});
