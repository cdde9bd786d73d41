import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatPercentByVolume, formatRate, formatRateIn, formatRatesApart, spokenUnitOf } from "#domain/quantities/format-rate";
import { parseRate } from "#domain/quantities/parse-rate";
import { compareRates, percentByVolume, rateIn, rateOf } from "#domain/quantities/rate";
import { rational, subtractRational } from "#domain/quantities/rational";
import { anyRational } from "../../support/quantity-arbitraries";

describe("as the trade says it", () => {
  test.each([
    [
      rateOf("product-mass-per-area", rational(25n, 7n), "lb per 1,000 sq ft"),
      "3.57 lb per 1,000 sq ft",
      "17.44 g per m\u00B2",
    ],
    [rateOf("product-mass-per-area", "0.25", "lb per 1,000 sq ft"), "4 oz wt per 1,000 sq ft", "1.22 g per m\u00B2"],
    [
      rateOf("product-volume-per-area", "1.5", "fl oz per 1,000 sq ft"),
      "1\u00BD fl oz per 1,000 sq ft",
      "47.75 mL per 100 m\u00B2",
    ],
    [
      rateOf("carrier-volume-per-area", "1.5", "gal per 1,000 sq ft"),
      "1\u00BD gal per 1,000 sq ft",
      "6.11 L per 100 m\u00B2",
    ],
    [
      rateOf("carrier-volume-per-area", "0.92", "gal per 1,000 sq ft"),
      "0.92 gal per 1,000 sq ft",
      "3.75 L per 100 m\u00B2",
    ],
    [rateOf("nutrient-mass-per-area", "0.75", "lb per 1,000 sq ft"), "\u00BE lb per 1,000 sq ft", "3.66 g per m\u00B2"],
    [rateOf("nutrient-mass-per-area", "0", "lb per 1,000 sq ft"), "0 lb per 1,000 sq ft", "0 g per m\u00B2"],
    [rateOf("active-ingredient-mass-per-area", "0.5", "lb per acre"), "\u00BD lb per acre", "0.56 kg per ha"],
    [rateOf("seed-mass-per-area", "7", "lb per 1,000 sq ft"), "7 lb per 1,000 sq ft", "34.18 g per m\u00B2"],
    [rateOf("product-volume-per-spray-volume", "0.8", "fl oz per gal"), "0.8 fl oz per gal", "6.25 mL per L"],
    [rateOf("product-mass-per-spray-volume", "1", "oz wt per gal"), "1 oz wt per gal", "7.49 g per L"],
  ])("%#: %o", (rate, us, metric) => {
    expect([formatRate(rate, "us"), formatRate(rate, "metric")]).toEqual([us, metric]);
  });

  test("in a chosen unit at chosen decimals", () => {
    const rate = rateOf("product-mass-per-area", "3.5712", "lb per 1,000 sq ft");
    expect(formatRateIn(rate, "lb per 1,000 sq ft", 3)).toBe("3.571 lb per 1,000 sq ft");
    expect(formatRateIn(rate, "lb per acre")).toBe("155.6 lb per acre");
    expect(formatRateIn(rateOf("product-mass-per-area", 1n, "g per ha"), "kg per ha", 1)).toBe("under 0.1 kg per ha");
    expect(formatPercentByVolume(percentByVolume("0.5"), 2)).toBe("0.5% v/v");
  });
});

test("a rate as it is shown reads back within half of its last digit", () => {
  fc.assert(
    fc.property(anyRational(0n, 10n ** 4n), fc.integer({ min: 0, max: 5 }), (value, decimals) => {
      const unit = "lb per 1,000 sq ft";
      const rate = rateOf("product-mass-per-area", value, unit);
      const text = formatRateIn(rate, unit, decimals);
      fc.pre(!text.startsWith("under"));
      const back = parseRate(text, { field: "rate", bases: ["product-mass-per-area"] });
      if (!back.ok) throw new Error(back.refusal.sentence);
      const error = subtractRational(rateIn(back.value.rate, unit), value);
      const size = error.numerator < 0n ? -error.numerator : error.numerator;
      expect(size * 2n * 10n ** BigInt(decimals) <= error.denominator).toBe(true);
    }),
  );
});

describe("two rates side by side", () => {
  const pounds = (value: string) => rateOf("nutrient-mass-per-area", value, "lb per 1,000 sq ft");
  test.each([
    ["0.7", "0.70012", "0.7", "0.7001"],
    ["3", "3.001", "3", "3.001"],
    ["1.5", "1.5001", "1\u00BD", "1.5001"],
    ["2", "3", "2", "3"],
    ["0.8", "0.8", "0.8", "0.8"],
    ["0.0000001", "0.0000002", "0.0000001", "0.0000002"],
  ])("%s and %s", (one, other, left, right) => {
    expect(formatRatesApart(pounds(one), pounds(other), "us")).toEqual([`${left} lb per 1,000 sq ft`, `${right} lb per 1,000 sq ft`]);
  });

  test("read the same where they are the same, and only there", () => {
    const rate = anyRational(0n, 10n ** 4n).map((value) => rateOf("nutrient-mass-per-area", value, "lb per 1,000 sq ft"));
    fc.assert(
      fc.property(rate, rate, (one, other) => {
        const [left, right] = formatRatesApart(one, other, "us");
        expect(left === right).toBe(compareRates(one, other) === 0);
      }),
    );
  });
});

test("one way only, where it is asked for", () => {
  const rate = rateOf("product-volume-per-area", 2n, "pt per acre");
  expect([undefined, "up", "down"].map((rounding) => formatRateIn(rate, "fl oz per 1,000 sq ft", 3, rounding as "up" | "down" | undefined))).toEqual(["0.735 fl oz per 1,000 sq ft", "0.735 fl oz per 1,000 sq ft", "0.734 fl oz per 1,000 sq ft"]);
  expect(formatPercentByVolume(percentByVolume(rational(1n, 3n)), 2, "up")).toBe("0.34% v/v");
});

test("the unit in which a rate is said goes by its size", () => {
  expect([1n, 200n].map((ounces) => spokenUnitOf(rateOf("product-volume-per-area", ounces, "fl oz per 1,000 sq ft"), "us"))).toEqual(["fl oz per 1,000 sq ft", "gal per 1,000 sq ft"]);
});
