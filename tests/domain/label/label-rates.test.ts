import { describe, expect, test } from "vitest";
import { compareToLabel, readRange, readRates } from "#domain/label/label-rates";
import { percentByVolume, rateOf } from "#domain/quantities/rate";
import { readAs } from "../../support/domain-answers";

const BASES = ["product-mass-per-area", "product-volume-per-area"] as const;
const pounds = (value: string) => rateOf("product-mass-per-area", value, "lb per 1,000 sq ft");

describe("a range of rates", () => {
  test.each([
    ["2 to 3 lb per 1,000 sq ft", "2", "3"],
    ["2 lb to 3 lb per 1,000 sq ft", "2", "3"],
    ["2 lb per 1,000 sq ft to 3 lb per 1,000 sq ft", "2", "3"],
    ["2 1/2 to 4 lb/1,000 sq ft", "2.5", "4"],
    ["1/2 to 3 lb/M", "0.5", "3"],
    ["1 to 1-1/2 lb per 1,000 sq ft", "1", "1.5"],
    ["1-\u00BD to 2-\u00BD lb per 1,000 sq ft", "1.5", "2.5"],
    ["1-1/2 lb to 2-1/2 lb per 1,000 sq ft", "1.5", "2.5"],
    ["3 lb per 1,000 sq ft", "3", "3"],
    ["32 oz wt to 3 lb per 1,000 sq ft", "2", "3"],
    ["2 lb to 3 lb 8 oz per 1,000 sq ft", "2", "3.5"],
    ["1 lb 8 oz to 2 lb per 1,000 sq ft", "1.5", "2"],
  ])("%s", (value, low, high) => expect(readRange(value, BASES)).toMatchObject({ value: { low: pounds(low), high: pounds(high) } }));

  test("by volume", () => {
    expect(readRange("1 to 2 fl oz per 1,000 sq ft", BASES)).toMatchObject({
      value: { low: rateOf("product-volume-per-area", "1", "fl oz per 1,000 sq ft"), high: rateOf("product-volume-per-area", "2", "fl oz per 1,000 sq ft") },
    });
  });

  test.each(["1/2 to 3/4 fl oz per 1,000 sq ft", "\u00BD to \u00BE fl oz per 1,000 sq ft", "1/2 fl oz to 3/4 fl oz per 1,000 sq ft", "\u00B9\u2044\u2082 to \u00B3\u2044\u2084 fl oz per 1,000 sq ft", "\u00BD fl oz/1,000 sq ft to \u00BE fl oz/1,000 sq ft"])(
    "fractions are read however they were typed: %s",
    (value) => {
      const ounces = (numerator: bigint) => rateOf("product-volume-per-area", { numerator, denominator: 4n }, "fl oz per 1,000 sq ft");
      expect(readRange(value, BASES)).toMatchObject({ value: { low: ounces(2n), high: ounces(3n) } });
    },
  );

  test.each(["2 to 2 lb 8 oz per 1,000 sq ft", "8 to 1 lb 4 oz wt per 1,000 sq ft", "1 to 1 gal 2 qt/acre"])("a bare first number before a second of two units is asked about: %s", (value) => {
    expect(readRange(value, BASES)).toMatchObject({ ok: false, refusal: expect.stringMatching(/Write both with their units/u) as unknown });
  });

  test("a cubed unit is one unit", () => {
    expect(readRange("0.04 to 0.05 m3/ha", BASES)).toMatchObject({
      value: { low: rateOf("product-volume-per-area", "0.04", "m3 per ha"), high: rateOf("product-volume-per-area", "0.05", "m3 per ha") },
    });
    expect(readRange("4 to 5 m\u00B3/100 ha", BASES)).toMatchObject({ value: { low: rateOf("product-volume-per-area", "0.04", "m3 per ha") } });
  });

  test("a point that may part thousands is asked about", () => {
    expect(readRange("2 to 3 lb per 1.000 sq ft", BASES)).toMatchObject({ refusal: expect.stringMatching(/Write 1,000 if that is meant/u) as unknown });
  });

  test.each(["3 to 2 lb per 1,000 sq ft", "0 lb per 1,000 sq ft", "2 lb to 3 fl oz per 1,000 sq ft", "2 to 3 lb", "2 to 3", "lots"])("%s is refused", (value) => {
    expect(readRange(value, BASES).ok).toBe(false);
  });

  test.each(["11/2 lb per 1,000 sq ft", "1 to 11/2 lb per 1,000 sq ft", "11/2 to 12 lb per 1,000 sq ft", "1 lb to 11\u20442 lb per 1,000 sq ft"])("a mixed number that has lost its space is asked about: %s", (value) => {
    expect(readRange(value, BASES)).toMatchObject({ refusal: expect.stringMatching(/Write 1 1\/2, or 5\.5\./u) as unknown });
  });

  test.each(["1 to 2-3 lb per 1,000 sq ft", "1 to 2 - 3 lb per 1,000 sq ft"])("a third end is refused: %s", (value) => {
    expect(readRange(value, BASES).ok).toBe(false);
  });

  test("ounces alone are asked about: by weight or fluid", () => {
    expect(readRange("1 to 2 oz per 1,000 sq ft", BASES)).toMatchObject({ refusal: expect.stringMatching(/oz wt or fl oz/) as unknown });
  });
});

describe("rates in the finished spray", () => {
  const ounces = (value: string) => rateOf("product-volume-per-spray-volume", value, "fl oz per gal");

  test("are read by volume, by weight and in percent", () => {
    expect(readRates("1 to 1.5 fl oz per gal")).toMatchObject({ value: { rates: { basis: "product-volume-per-spray-volume", low: ounces("1"), high: ounces("1.5") } } });
    expect(readRates("0.5 oz wt/gal")).toMatchObject({ value: { rates: { basis: "product-mass-per-spray-volume", low: rateOf("product-mass-per-spray-volume", "0.5", "oz wt per gal") } } });
    for (const typed of ["1 to 2% v/v", "1% to 2% v/v", "1 % v/v to 2 % v/v", "1 to 2 %"]) expect(readRates(typed), typed).toMatchObject({ value: { rates: { low: percentByVolume("1"), high: percentByVolume("2") } } });
  });

  test("have what the label says beside them", () => {
    expect(readRates("1.5 fl oz/gal; spray to wet; no more than 3 fl oz per 1,000 sq ft; spots no more than 10% of the lawn")).toMatchObject({
      value: { besideRates: { isToWet: true, mostOnArea: rateOf("product-volume-per-area", "3", "fl oz per 1,000 sq ft"), mostSpotShareBasisPoints: 1000 } },
    });
    expect(readRates("2 to 3 lb per 1,000 sq ft; spots at most 5 %")).toMatchObject({ value: { rates: { basis: "product-mass-per-area" }, besideRates: { mostSpotShareBasisPoints: 500 } } });
    expect(readRates("2 to 3 lb per 1,000 sq ft")).not.toHaveProperty("value.besideRates");
  });

  test.each([
    ["2 lb per 1,000 sq ft; spray to wet", /goes with a rate in the finished spray/u],
    ["2 lb per 1,000 sq ft; no more than 3 lb per 1,000 sq ft", /write it as a range/u],
    ["1.5 fl oz per gal; no more than 3 lb per acre", /two kinds/u],
    ["1.5 fl oz per gal; no more than 0 fl oz per acre", /allows none/u],
    ["1.5 fl oz per gal; spots no more than 120%", /more than the whole lawn/u],
    ["1.5 fl oz per gal; spray to wet; to wet", /twice/u],
    ["1.5 fl oz per gal; in the morning", /not known after a rate/u],
    ["1.5 fl oz per gal to 2 fl oz per 1,000 sq ft", /one/iu],
  ])("%s is refused", (typed, sentence) => expect(readRates(typed)).toMatchObject({ ok: false, refusal: expect.stringMatching(sentence) as unknown }));

  test("are held against a plan by the same measure alone", () => {
    const { rates } = readAs(readRates("1 to 1.5 fl oz per gal"));
    expect([compareToLabel(ounces("0.5"), rates, "low"), compareToLabel(ounces("1.5"), rates, "high"), compareToLabel(percentByVolume("2"), rates, "high")]).toEqual([-1, 0, 1]);
    expect(compareToLabel(rateOf("product-volume-per-area", "1", "fl oz per 1,000 sq ft"), rates, "low")).toBeUndefined();
  });
});
