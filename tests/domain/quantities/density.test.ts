import fc from "fast-check";
import { expect, test } from "vitest";
import { BrokenInvariant } from "#domain/foundation/invariant";
import {
  densityFromSpecificGravity,
  densityFromWeighing,
  densityIn,
  densityOf,
  type DensityUnit,
  massOf,
  massRateOf,
  volumeOf,
  volumeRateOf,
  WATER,
} from "#domain/quantities/density";
import { compareExact, measureInUnit } from "#domain/quantities/exact-quantity";
import { of, type Quantity, zero } from "#domain/quantities/quantity";
import { rateIn, rateOf } from "#domain/quantities/rate";
import { compareRational, decimal, toDecimalString } from "#domain/quantities/rational";
import { anyQuantity, anyRational } from "../../support/quantity-arbitraries";

test("a gallon at 10.68 lb per gal weighs that", () => {
  const density = densityOf("10.68", "lb per gal");
  expect(compareRational(measureInUnit(massOf(of("gal", 1n), density), "lb"), decimal("10.68"))).toBe(0);
  expect(compareRational(densityIn(density, "lb per gal"), decimal("10.68"))).toBe(0);
});

test("a specific gravity compares with water at 4 degrees: 8.3454 lb per gal, 1 kg per L", () => {
  const water = densityFromSpecificGravity("1");
  expect(toDecimalString(densityIn(water, "lb per gal"), 4, "nearest")).toBe("8.3454");
  expect(water).toEqual(densityOf("1", "g per mL"));
  expect(WATER).toEqual(water);
});

test("one weighing gives the density", () => {
  expect(densityFromWeighing(of("oz wt", 20n), of("pt", 1n))).toEqual(densityOf(10n, "lb per gal"));
  expect(() => densityFromWeighing(zero("mass"), of("pt", 1n))).toThrow(BrokenInvariant);
  expect(() => densityFromWeighing(of("lb", 1n), zero("volume"))).toThrow(BrokenInvariant);
});

test.each(["0", "-1"])("a density of %s throws", (value) => {
  expect(() => densityOf(value, "lb per gal")).toThrow(BrokenInvariant);
});

test("a unit that is none throws, and so does a mass in the place of a volume", () => {
  for (const unit of ["gal per lb", "lb per lb", "gal per gal"] as unknown as DensityUnit[]) {
    expect(() => densityOf("1", unit)).toThrow(BrokenInvariant);
  }
  const density = densityOf("1", "kg per L");
  expect(() => massOf(of("lb", 1n) as unknown as Quantity<"volume">, density)).toThrow(BrokenInvariant);
  expect(() => volumeOf(of("gal", 1n) as unknown as Quantity<"mass">, density)).toThrow(BrokenInvariant);
});

test("to mass and back is the same volume", () => {
  fc.assert(
    fc.property(anyQuantity("volume"), anyRational(1n), (volume, value) => {
      const density = densityOf(value, "lb per gal");
      expect(compareExact(volumeOf(massOf(volume, density), density), volume)).toBe(0);
    }),
  );
});

test("a rate by volume is a rate by mass and back", () => {
  const density = densityOf("10", "lb per gal");
  const rate = rateOf("product-volume-per-area", 1n, "gal per acre");
  expect(compareRational(rateIn(massRateOf(rate, density), "lb per acre"), decimal("10"))).toBe(0);
  fc.assert(
    fc.property(anyRational(), (value) => {
      const byVolume = rateOf("product-volume-per-area", value, "fl oz per 1,000 sq ft");
      expect(volumeRateOf(massRateOf(byVolume, density), density)).toEqual(byVolume);
    }),
  );
});
