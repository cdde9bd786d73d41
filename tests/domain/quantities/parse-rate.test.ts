import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseRate } from "#domain/quantities/parse-rate";
import { percentByVolume, type Rate, type RateBasis, rateOf } from "#domain/quantities/rate";
import { rational } from "#domain/quantities/rational";

const productBases = [
  "product-mass-per-area",
  "product-volume-per-area",
  "product-volume-per-spray-volume",
  "product-mass-per-spray-volume",
] as const;
const field = { field: "rate", bases: productBases };

describe("what people type", () => {
  const table: readonly (readonly [string, Rate<RateBasis>])[] = [
    ["2.5 lb/1,000 sq ft", rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft")],
    ["2.5 lb per 1,000 sq ft", rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft")],
    ["2.5 lb per thousand square feet", rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft")],
    ["2.5 lb/1000", rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft")],
    ["2.5 lb/M", rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft")],
    ["2.5 lb/M sq ft", rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft")],
    ["2\u00BD lb / 1,000", rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft")],
    ["1 1/2 gal/1,000", rateOf("product-volume-per-area", "1.5", "gal per 1,000 sq ft")],
    ["1/4 lb/acre", rateOf("product-mass-per-area", "0.25", "lb per acre")],
    ["3 pt/A", rateOf("product-volume-per-area", "3", "pt per acre")],
    ["3 pt/a", rateOf("product-volume-per-area", "3", "pt per acre")],
    ["3 pints per acre", rateOf("product-volume-per-area", "3", "pt per acre")],
    ["1 lb 8 oz per acre", rateOf("product-mass-per-area", "1.5", "lb per acre")],
    ["2 lb/500 sq ft", rateOf("product-mass-per-area", "4", "lb per 1,000 sq ft")],
    ["20 kg/ha", rateOf("product-mass-per-area", "20", "kg per ha")],
    ["0.05 m3/ha", rateOf("product-volume-per-area", "0.05", "m3 per ha")],
    ["0.05 m\u00B3 per ha", rateOf("product-volume-per-area", "0.05", "m3 per ha")],
    ["1/2 ft^3 per 1,000 sq ft", rateOf("product-volume-per-area", "0.5", "cu ft per 1,000 sq ft")],
    ["5 g per m\u00B2", rateOf("product-mass-per-area", "5", "g per m2")],
    ["50 mL/100 m2", rateOf("product-volume-per-area", "50", "mL per 100 m2")],
    ["0.8 fl oz per gal", rateOf("product-volume-per-spray-volume", "0.8", "fl oz per gal")],
    ["1 qt/100 gal", rateOf("product-volume-per-spray-volume", "1", "qt per 100 gal")],
    ["1 oz wt/gal", rateOf("product-mass-per-spray-volume", "1", "oz wt per gal")],
    ["0.5%", percentByVolume("0.5")],
    ["100%", percentByVolume("100")],
    [" 2 1/2 lb / 1,000 ", rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft")],
    ["1\u00B9\u2044\u2082 fl oz/1,000 sq ft", rateOf("product-volume-per-area", "1.5", "fl oz per 1,000 sq ft")],
    ["0.5 % v/v", percentByVolume("0.5")],
    ["\u00BD% by volume", percentByVolume("0.5")],
  ];
  test.each(table)("%j", (text, rate) => {
    expect(parseRate(text, field)).toEqual({ ok: true, value: { typed: text, rate } });
  });

  test("the field's own bases decide what the rate counts", () => {
    expect(parseRate("1 lb/1,000", { field: "rate", bases: ["nutrient-mass-per-area"] })).toMatchObject({
      ok: true,
      value: { rate: rateOf("nutrient-mass-per-area", 1n, "lb per 1,000 sq ft") },
    });
  });

  test("a field that shows a unit takes a bare number", () => {
    const outcome = parseRate("2 1/2", {
      field: "rate",
      bases: ["carrier-volume-per-area"],
      unitWhenNone: "gal per 1,000 sq ft",
    });
    expect(outcome).toEqual({
      ok: true,
      value: { typed: "2 1/2", rate: rateOf("carrier-volume-per-area", rational(5n, 2n), "gal per 1,000 sq ft") },
    });
    expect(
      parseRate("0.5", { field: "rate", bases: ["product-volume-per-spray-volume"], unitWhenNone: "% v/v" }),
    ).toMatchObject({ ok: true, value: { rate: percentByVolume("0.5") } });
  });
});

describe("what is refused, and what is said", () => {
  test.each([" 3 lb ", " 101 % ", " 3 lb per 0 acre ", " 3 kg/M ", " 3 lb per 3 lb "])("%j is named without the spaces around it", (text) => {
    const outcome = parseRate(text, field);
    expect(outcome).toMatchObject({ ok: false, refusal: { found: text.trim() } });
    expect(outcome.ok ? "" : outcome.refusal.sentence).toContain(`"${text.trim()}"`);
  });

  test("a bare number is refused where the field shows no unit", () => {
    expect(parseRate("2.5", field)).toMatchObject({ ok: false, refusal: { found: "2.5", allowed: expect.stringContaining("per") as string } });
  });

  test.each([
    ["an amount", "12345678.1234567 lb/acre"],
    ["what it is over", "1 lb/1234567890.12345678 acre"],
  ])("more figures than storage holds, in %s", (_which, text) => {
    const outcome = parseRate(text, field);
    expect(outcome.ok ? "" : outcome.refusal.sentence).toBe(`"${text}" has more figures than can be kept on file.`);
  });

  const mass = { field: "rate", bases: ["product-mass-per-area"] } as const;
  const table: readonly (readonly [string, string])[] = [
    ["3 oz/1,000", '"3 oz" could be ounces by weight or fluid ounces. Write oz wt or fl oz, as the label means it.'],
    ["5 kg/1,000", '"5 kg/1,000" does not say 1,000 of what. Write it as in 3.5 lb per 1,000 sq ft.'],
    ["5 lb/500", '"5 lb/500" does not say 500 of what. Write it as in 3.5 lb per 1,000 sq ft.'],
    ["5 kg/M", 'The M in "5 kg/M" could be a thousand, a million or meters. Write 1,000 sq ft if that is meant.'],
    ["2 kg/a", 'The a in "2 kg/a" could be an acre or an are, which is 100 m\u00B2. Write ha, 100 m2 or acre.'],
    ["2 kg per A", 'The a in "2 kg per A" could be an acre or an are, which is 100 m\u00B2. Write ha, 100 m2 or acre.'],
    ["2 kg/10 a", 'The a in "2 kg/10 a" could be an acre or an are, which is 100 m\u00B2. Write ha, 100 m2 or acre.'],
    ["5 lb/m", '"5 lb/m" is another kind of rate. Write it as in 3.5 lb per 1,000 sq ft.'],
    ["10\u00B2 lb/acre", 'A figure in "10\u00B2" is raised, lowered or in a ring. Write it as 2.5, 2 1/2 or 1,250.'],
    ["5 lb", '"5 lb" does not say how much per what. Write it as in 3.5 lb per 1,000 sq ft.'],
    ["5", '"5" does not say how much per what. Write it as in 3.5 lb per 1,000 sq ft.'],
    ["", "There is no number here."],
    ["5 lb/0 sq ft", '"5 lb/0 sq ft" is a rate over nothing.'],
    ["5 lb/lawn", '"lawn" is not known as what a rate is over. Write it as in 3.5 lb per 1,000 sq ft.'],
    ["5 lb/gal", '"5 lb/gal" is another kind of rate. Write it as in 3.5 lb per 1,000 sq ft.'],
    ["2 gal/acre", '"2 gal" is a volume; here it takes a weight: lb, oz wt, kg, g.'],
    ["0.5%", '"0.5%" is a percentage; here it takes a rate as in 3.5 lb per 1,000 sq ft.'],
    ["2,5 lb/acre", '"2,5" has a comma where a point belongs. Write 2.5 if that is meant.'],
    ["-5 lb/acre", '"-5" is below zero; an amount is zero or more.'],
    ["5 lb/2,5 acre", '"2,5" has a comma where a point belongs. Write 2.5 if that is meant.'],
    ["2.5 lb/1.000 sq ft", '"2.5 lb/1.000 sq ft" may be over 1,000 or over 1. Write 1,000 if that is meant.'],
    ["2.5 lb per 1.000", '"2.5 lb per 1.000" may be over 1,000 or over 1. Write 1,000 if that is meant.'],
    ["0.12345678901234567 lb/acre", '"0.12345678901234567 lb/acre" has more figures than can be kept on file.'],
  ];
  test.each(table)("%j", (text, sentence) => {
    expect(parseRate(text, mass)).toMatchObject({
      ok: false,
      refusal: { field: "rate", found: text === "" ? "nothing" : text, sentence },
    });
  });

  test("more product than finished spray", () => {
    expect(parseRate("101%", field)).toMatchObject({ ok: false, refusal: { allowed: "at most 100%" } });
    expect(parseRate("x%", field).ok).toBe(false);
  });

  test("any text gets an answer", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 40 }), (text) => {
        const outcome = parseRate(text, { ...field, unitWhenNone: "lb per acre" });
        if (!outcome.ok) expect(outcome.refusal.field).toBe("rate");
      }),
    );
  });
});
