import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatRateRange, joinRange, percentRangeWords } from "#domain/quantities/format-rate-range";
import { parseRate } from "#domain/quantities/parse-rate";
import { compareRates, percentByVolume, rateOf } from "#domain/quantities/rate";
import { rational } from "#domain/quantities/rational";

const liquid = (value: string, unit: "pt per acre" | "fl oz per acre" | "fl oz per 1,000 sq ft" | "qt per acre" = "pt per acre") => rateOf("product-volume-per-area", value, unit);

describe("a range of rates", () => {
  test("ends that are written whole stay as they are, and nothing stands beside them", () => {
    expect(formatRateRange(liquid("1", "fl oz per 1,000 sq ft"), liquid("1.5", "fl oz per 1,000 sq ft"), "us")).toEqual({ from: "1 fl oz per 1,000 sq ft", to: "1½ fl oz per 1,000 sq ft", isExact: true });
  });

  test("the lowest is rounded up and the highest down, and a label per acre is said per acre too", () => {
    // 16 fl oz on 43.56 thousand sq ft are 0.36731, 32 are 0.73462.
    expect(formatRateRange(liquid("1"), liquid("2"), "us")).toEqual({ from: "0.368 fl oz per 1,000 sq ft", to: "0.734 fl oz per 1,000 sq ft", isExact: false, otherwise: "1 to 2 pt per acre" });
    expect(formatRateRange(liquid("20", "fl oz per acre"), liquid("30", "fl oz per acre"), "us").otherwise).toBe("20 to 30 fl oz per acre");
    expect(formatRateRange(liquid("1.3", "fl oz per acre"), liquid("2.6", "fl oz per acre"), "us").otherwise).toBe("1.3 to 2.6 fl oz per acre");
    const carrier = (gallons: string) => rateOf("carrier-volume-per-area", gallons, "gal per acre");
    expect(formatRateRange(carrier("20"), carrier("40"), "us")).toMatchObject({ from: "0.46 gal per 1,000 sq ft", to: "0.918 gal per 1,000 sq ft", otherwise: "20 to 40 gal per acre" });
  });

  test("what no label's unit writes out stands alone", () => {
    const seventh = rateOf("product-volume-per-area", rational(1n, 7n), "fl oz per 1,000 sq ft");
    expect(formatRateRange(seventh, liquid("1", "fl oz per 1,000 sq ft"), "us")).toEqual({ from: "0.143 fl oz per 1,000 sq ft", to: "1 fl oz per 1,000 sq ft", isExact: false });
  });

  test("one rate is never above itself", () => {
    expect(formatRateRange(liquid("3"), liquid("3"), "us")).toEqual({ from: "1.1 fl oz per 1,000 sq ft", to: "1.1 fl oz per 1,000 sq ft", isExact: false, otherwise: "3 pt per acre" });
  });

  test("ends that lie close together take more digits", () => {
    const ends = formatRateRange(liquid("2"), liquid("2.001"), "us");
    expect([ends.from, ends.to]).toEqual(["0.7347 fl oz per 1,000 sq ft", "0.7349 fl oz per 1,000 sq ft"]);
  });

  test("whoever types an end as it is shown is within the range", () => {
    const thousandths = fc.bigInt(1n, 400_000n);
    fc.assert(
      fc.property(thousandths, thousandths, fc.constantFrom("pt per acre", "fl oz per 1,000 sq ft", "mL per 100 m2"), (one, other, unit) => {
        const rate = (value: bigint) => rateOf("product-volume-per-area", rational(value, 1000n), unit);
        const [low, high] = one < other ? [rate(one), rate(other)] : [rate(other), rate(one)];
        const { from, to } = formatRateRange(low, high, "us");
        for (const text of [from, to]) {
          const read = parseRate(text, { field: "rate", bases: ["product-volume-per-area"] });
          if (!read.ok) throw new Error(read.refusal.sentence);
          if (one !== other) expect(compareRates(read.value.rate, low)).toBeGreaterThanOrEqual(0);
          expect(compareRates(read.value.rate, high)).toBeLessThanOrEqual(0);
        }
      }),
    );
  });
});

test("a range is joined in one unit, in both where they differ, and said once where it is one rate", () => {
  expect(joinRange("2 lb per 1,000 sq ft", "3 lb per 1,000 sq ft")).toBe("2 to 3 lb per 1,000 sq ft");
  expect(joinRange("8 oz wt per 1,000 sq ft", "3 lb per 1,000 sq ft")).toBe("8 oz wt per 1,000 sq ft to 3 lb per 1,000 sq ft");
  expect(joinRange("3 lb per 1,000 sq ft", "3 lb per 1,000 sq ft")).toBe("3 lb per 1,000 sq ft");
});

test("a range of strengths is said in percent, inward; one strength once", () => {
  expect(percentRangeWords(percentByVolume("0.5"), percentByVolume("1"))).toBe("0.5% v/v to 1% v/v");
  expect(percentRangeWords(percentByVolume("0.25"), percentByVolume("0.25"))).toBe("0.25% v/v");
  expect(percentRangeWords(percentByVolume(rational(1n, 3n)), percentByVolume(rational(2n, 3n)))).toBe("0.334% v/v to 0.666% v/v");
  expect(percentRangeWords(percentByVolume(rational(1n, 3n)), percentByVolume(rational(1001n, 3000n)))).toBe("0.3334% v/v to 0.3336% v/v");
});
