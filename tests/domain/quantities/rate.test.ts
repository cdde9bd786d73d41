import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { compareExact, exactly, measureInUnit, settle } from "#domain/quantities/exact-quantity";
import { of, type Quantity, zero } from "#domain/quantities/quantity";
import {
  addRates,
  compareRates,
  concentrationInSpray,
  coverage,
  deriveRate,
  percentByVolume,
  percentByVolumeOf,
  type Rate,
  rateFrom,
  rateFromAmounts,
  rateIn,
  rateOf,
  type RateUnit,
  ratioOfRates,
  scaleRate,
  times,
} from "#domain/quantities/rate";
import { compareRational, decimal, rational, toDecimalString } from "#domain/quantities/rational";
import { GREATEST_STORED_AMOUNT } from "#domain/quantities/units";
import { anyQuantity, anyRational } from "../../support/quantity-arbitraries";

describe("making a rate", () => {
  test("is a pair of whole numbers in lowest terms that fit a 64 bit column", () => {
    const rate = rateOf("product-mass-per-area", "3.57", "lb per 1,000 sq ft");
    expect(rateFromAmounts("product-mass-per-area", rate.amount * 7n, rate.per * 7n)).toEqual(rate);
    expect(rate.amount < GREATEST_STORED_AMOUNT && rate.per < GREATEST_STORED_AMOUNT).toBe(true);
    expect(compareRational(rateIn(rate, "lb per 1,000 sq ft"), decimal("3.57"))).toBe(0);
  });

  test("below zero and over nothing throw; zero is a rate", () => {
    expect(() => rateOf("product-mass-per-area", "-1", "lb per acre")).toThrow(BrokenInvariant);
    expect(() => rateFromAmounts("product-mass-per-area", 1n, 0n)).toThrow(BrokenInvariant);
    expect(() => rateFrom("product-mass-per-area", of("lb", 1n), zero("area"))).toThrow(BrokenInvariant);
    expect(rateOf("nutrient-mass-per-area", "0", "lb per acre")).toEqual(
      rateOf("nutrient-mass-per-area", "0", "kg per ha"),
    );
  });

  test("a unit that is none, or is another basis's, throws even when the types were told otherwise", () => {
    const wrong = [
      "lb per gal",
      "fl oz per acre",
      "lb",
      "lb per mile",
    ] as unknown as RateUnit<"product-mass-per-area">[];
    for (const unit of wrong) expect(() => rateOf("product-mass-per-area", 1n, unit)).toThrow(BrokenInvariant);
  });

  test("an amount of another dimension throws even when the types were told otherwise", () => {
    const volume = of("gal", 1n) as unknown as Quantity<"mass">;
    const mass = of("lb", 1n) as unknown as Quantity<"area">;
    expect(() => rateFrom("product-mass-per-area", volume, of("acre", 1n))).toThrow(BrokenInvariant);
    expect(() => rateFrom("product-mass-per-area", of("lb", 1n), mass)).toThrow(BrokenInvariant);
    const rate = rateOf("product-mass-per-area", 1n, "lb per acre");
    expect(() => times(rate, mass)).toThrow(BrokenInvariant);
    expect(() => coverage(rate, volume)).toThrow(BrokenInvariant);
  });
});

describe("conversions", () => {
  test.each([
    ["lb per 1,000 sq ft", "lb per acre", "43.56000"],
    ["lb per 1,000 sq ft", "kg per ha", "48.82428"],
    ["lb per 1,000 sq ft", "g per m2", "4.88243"],
    ["oz wt per 1,000 sq ft", "g per m2", "0.30515"],
    ["kg per ha", "lb per acre", "0.89218"],
    ["kg per 100 m2", "lb per 1,000 sq ft", "2.04816"],
  ] as const)("one %s is so many %s", (from, to, expected) => {
    expect(toDecimalString(rateIn(rateOf("product-mass-per-area", 1n, from), to), 5, "nearest")).toBe(expected);
  });

  test.each([
    ["gal per 1,000 sq ft", "gal per acre", "43.56000"],
    ["fl oz per 1,000 sq ft", "gal per acre", "0.34031"],
    ["gal per acre", "L per ha", "9.35396"],
    ["pt per acre", "fl oz per 1,000 sq ft", "0.36731"],
    ["L per 100 m2", "L per ha", "100.00000"],
  ] as const)("one %s is so many %s", (from, to, expected) => {
    expect(toDecimalString(rateIn(rateOf("carrier-volume-per-area", 1n, from), to), 5, "nearest")).toBe(expected);
  });

  test("fluid ounces per gallon and percent by volume", () => {
    const rate = rateOf("product-volume-per-spray-volume", "1.28", "fl oz per gal");
    expect(rate).toEqual(percentByVolume("1"));
    expect(compareRational(percentByVolumeOf(rate), rational(1n))).toBe(0);
  });

  test("there and back is the same rate", () => {
    fc.assert(
      fc.property(anyRational(), (value) => {
        const rate = rateOf("product-mass-per-area", value, "lb per 1,000 sq ft");
        expect(rateOf("product-mass-per-area", rateIn(rate, "kg per ha"), "kg per ha")).toEqual(rate);
      }),
    );
  });
});

describe("a rate over an area", () => {
  test("is exact", () => {
    const rate = rateOf("product-mass-per-area", rational(25n, 7n), "lb per 1,000 sq ft");
    const total = times(rate, of("sq ft", 6000n));
    expect(compareRational(measureInUnit(total, "lb"), rational(150n, 7n))).toBe(0);
    expect(compareExact(coverage(rate, total), of("sq ft", 6000n))).toBe(0);
  });

  test("nothing is covered at no rate", () => {
    expect(() => coverage(rateOf("product-mass-per-area", 0n, "lb per acre"), of("lb", 1n))).toThrow(BrokenInvariant);
  });

  test("what was put down is the rate again", () => {
    fc.assert(
      fc.property(anyRational(), anyQuantity("area", 1n), (value, area) => {
        const rate = rateOf("product-volume-per-area", value, "fl oz per 1,000 sq ft");
        expect(rateFrom("product-volume-per-area", times(rate, area), area)).toEqual(rate);
      }),
    );
  });

  test("two areas need together what they need apart", () => {
    fc.assert(
      fc.property(anyRational(), anyQuantity("area"), anyQuantity("area"), (value, one, other) => {
        const rate = rateOf("product-mass-per-area", value, "lb per acre");
        const together = times(rate, { dimension: "area", amount: one.amount + other.amount });
        const apart = {
          dimension: "mass" as const,
          exactAmount: {
            numerator: times(rate, one).exactAmount.numerator + times(rate, other).exactAmount.numerator,
            denominator: times(rate, one).exactAmount.denominator,
          },
        };
        expect(compareExact(together, apart)).toBe(0);
      }),
    );
  });

  test("the same job in pounds and acres and in kilograms and hectares needs the same to a canonical unit", () => {
    fc.assert(
      fc.property(anyRational(), anyRational(), (rateValue, areaValue) => {
        const us = times(rateOf("product-mass-per-area", rateValue, "lb per acre"), exactly("acre", areaValue));
        const metricRate = rateIn(rateOf("product-mass-per-area", rateValue, "lb per acre"), "kg per ha");
        const metricArea = measureInUnit(exactly("acre", areaValue), "ha");
        const metric = times(rateOf("product-mass-per-area", metricRate, "kg per ha"), exactly("ha", metricArea));
        expect(settle(us, "nearest")).toEqual(settle(metric, "nearest"));
      }),
    );
  });
});

describe("rates among themselves", () => {
  const half = rateOf("nutrient-mass-per-area", "0.5", "lb per 1,000 sq ft");

  test("add up, scale and compare", () => {
    const one = addRates(half, half);
    expect(one).toEqual(rateOf("nutrient-mass-per-area", 1n, "lb per 1,000 sq ft"));
    expect(scaleRate(one, rational(1n, 2n))).toEqual(half);
    expect(scaleRate(half, rational(3n, 2n))).toEqual(rateOf("nutrient-mass-per-area", "0.75", "lb per 1,000 sq ft"));
    expect([compareRates(half, one), compareRates(one, half), compareRates(one, one)]).toEqual([-1, 1, 0]);
    expect(compareRational(ratioOfRates(half, one), rational(1n, 2n))).toBe(0);
    expect(() => scaleRate(one, rational(-1n))).toThrow(BrokenInvariant);
  });

  test("of two bases throw even when the types were told otherwise", () => {
    const product = rateOf("product-mass-per-area", 1n, "lb per acre") as unknown as Rate<"nutrient-mass-per-area">;
    expect(() => addRates(half, product)).toThrow(BrokenInvariant);
    expect(() => compareRates(half, product)).toThrow(BrokenInvariant);
    expect(() => ratioOfRates(half, product)).toThrow(BrokenInvariant);
  });

  test("are counted as something else of the same dimensions only", () => {
    const product = rateOf("product-mass-per-area", 4n, "lb per 1,000 sq ft");
    expect(deriveRate("nutrient-mass-per-area", product, rational(1n, 8n))).toEqual(half);
    expect(deriveRate("nutrient-mass-per-area", product, rational(3n, 24n))).toEqual(half);
    const inSpray = rateOf("product-mass-per-spray-volume", 1n, "lb per gal") as unknown as Rate<"product-mass-per-area">;
    expect(() => deriveRate("nutrient-mass-per-area", inSpray, rational(1n))).toThrow(BrokenInvariant);
    const volume = rateOf("product-volume-per-area", 1n, "gal per acre") as unknown as Rate<"product-mass-per-area">;
    expect(() => deriveRate("nutrient-mass-per-area", volume, rational(1n))).toThrow(BrokenInvariant);
  });

  test("product over carrier is the concentration of the spray", () => {
    const carrier = rateOf("carrier-volume-per-area", 2n, "gal per 1,000 sq ft");
    expect(concentrationInSpray(rateOf("product-volume-per-area", "1.5", "fl oz per 1,000 sq ft"), carrier)).toEqual(
      rateOf("product-volume-per-spray-volume", "0.75", "fl oz per gal"),
    );
    expect(concentrationInSpray(rateOf("product-mass-per-area", 1n, "oz wt per 1,000 sq ft"), carrier)).toEqual(
      rateOf("product-mass-per-spray-volume", "0.5", "oz wt per gal"),
    );
    const none = rateOf("carrier-volume-per-area", 0n, "gal per acre");
    expect(() => concentrationInSpray(rateOf("product-mass-per-area", 1n, "lb per acre"), none)).toThrow(
      BrokenInvariant,
    );
  });
});
