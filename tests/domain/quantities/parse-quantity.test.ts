import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exactly, settle } from "#domain/quantities/exact-quantity";
import { parseQuantity, unitsOffered } from "#domain/quantities/parse-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { rational } from "#domain/quantities/rational";
import { type Dimension, type Unit } from "#domain/quantities/units";

const anyDimension = { field: "amount", dimensions: ["mass", "volume", "area"] } as const;
const product = { field: "amount", dimensions: ["mass", "volume"] } as const;

describe("what people type", () => {
  const table: readonly (readonly [string, Unit, bigint, bigint])[] = [
    ["2 1/2 lb", "lb", 5n, 2n],
    ["3 fl oz", "fl oz", 3n, 1n],
    ["1,250 sq ft", "sq ft", 1250n, 1n],
    ["1/4 acre", "acre", 1n, 4n],
    ["\u00BC acre", "acre", 1n, 4n],
    ["2\u00BDlb", "lb", 5n, 2n],
    ["50#", "lb", 50n, 1n],
    ["16 oz wt", "oz wt", 16n, 1n],
    ["16 oz. wt.", "oz wt", 16n, 1n],
    ["12 000 m2", "m2", 12_000n, 1n],
    ["12\u00A0000 m\u00B2", "m2", 12_000n, 1n],
    ["2 lb 4 oz", "oz wt", 36n, 1n],
    ["2 lb, 4 oz wt", "oz wt", 36n, 1n],
    ["2 lb and 4 1/2 oz", "oz wt", 73n, 2n],
    ["1 gal 24 fl oz", "fl oz", 152n, 1n],
    ["1 gal 24 oz", "fl oz", 152n, 1n],
    ["1 qt 8 oz", "fl oz", 40n, 1n],
    ["1 pt 8 oz", "fl oz", 24n, 1n],
    ["1 cup 2 oz", "fl oz", 10n, 1n],
    ["  3 lb ", "lb", 3n, 1n],
    ["1 gal 2 qt 1 pt", "pt", 13n, 1n],
    ["3 kg 200 g", "g", 3200n, 1n],
    ["5 M sq ft", "sq ft", 5000n, 1n],
    ["2.5M sq ft", "sq ft", 2500n, 1n],
    ["0 lb", "lb", 0n, 1n],
    ["3 tons", "short ton", 3n, 1n],
  ];
  test.each(table)("%j", (text, unit, numerator, denominator) => {
    const outcome = parseQuantity(text, anyDimension);
    if (!outcome.ok) throw new Error(outcome.refusal.sentence);
    const expected: Quantity<Dimension> = settle(exactly(unit, rational(numerator, denominator)), "nearest");
    expect(outcome.value.quantity).toEqual(expected);
    expect(outcome.value.typed).toBe(text);
  });

  test("a field that shows a unit takes a bare number", () => {
    const outcome = parseQuantity("0.8", { field: "amount", dimensions: ["volume"], unitWhenNone: "fl oz" });
    expect(outcome).toMatchObject({ ok: true, value: { unit: "fl oz", typed: "0.8" } });
  });
});

describe("what is refused, and what is said", () => {
  const table: readonly (readonly [string, string, string])[] = [
    [
      "16 oz",
      "fl oz, oz wt",
      '"16 oz" could be ounces by weight or fluid ounces. Write oz wt or fl oz, as the label means it.',
    ],
    [
      "0.8",
      "lb, oz wt, kg, g, gal, fl oz, L, mL",
      '"0.8" has no unit. Write one of: lb, oz wt, kg, g, gal, fl oz, L, mL.',
    ],
    [
      "2 bags",
      "lb, oz wt, kg, g, gal, fl oz, L, mL",
      '"bags" is not a unit that is known here. Write one of: lb, oz wt, kg, g, gal, fl oz, L, mL.',
    ],
    [
      "5 acres",
      "lb, oz wt, kg, g, gal, fl oz, L, mL",
      '"5 acres" is an area; here it takes a weight or a volume: lb, oz wt, kg, g, gal, fl oz, L, mL.',
    ],
    [
      "5M",
      "1,000 sq ft, M sq ft",
      'The M in "5M" could be a thousand, a million or meters. Write 1,000 sq ft if that is meant.',
    ],
    [
      "2,5 lb",
      "a number such as 2.5, 2 1/2, \u00BD or 1,250",
      '"2,5" has a comma where a point belongs. Write 2.5 if that is meant.',
    ],
    ["-2 lb", "a number such as 2.5, 2 1/2, \u00BD or 1,250", '"-2" is below zero; an amount is zero or more.'],
    ["lb", "a number such as 2.5, 2 1/2, \u00BD or 1,250", "There is no number here."],
    [
      "2 lb 20 oz",
      "one number and unit, or a compound such as 2 lb 4 oz",
      '"2 lb 20 oz" does not add up as one amount. Write it in one unit, or as in 2 lb 4 oz.',
    ],
    [
      "2.5 lb 4 oz",
      "one number and unit, or a compound such as 2 lb 4 oz",
      '"2.5 lb 4 oz" does not add up as one amount. Write it in one unit, or as in 2 lb 4 oz.',
    ],
    [
      "4 oz wt 2 lb",
      "one number and unit, or a compound such as 2 lb 4 oz",
      '"4 oz wt 2 lb" does not add up as one amount. Write it in one unit, or as in 2 lb 4 oz.',
    ],
    [
      "2 lb 4 fl oz",
      "one number and unit, or a compound such as 2 lb 4 oz",
      '"2 lb 4 fl oz" does not add up as one amount. Write it in one unit, or as in 2 lb 4 oz.',
    ],
    ["99999999999999 lb", "a smaller amount", '"99999999999999 lb" is more than can be kept on file.'],
  ];
  test.each(table)("%j", (text, allowed, sentence) => {
    expect(parseQuantity(text, product)).toEqual({
      ok: false,
      refusal: { kind: "bad-input", field: "amount", found: text, allowed, sentence },
    });
  });

  test.each(["", "2 lb 16 oz", "NaN lb", "Infinity lb", "1e3 lb", "2 lb/acre", "2 lb 4", "lb 2", "2 2 lb", "1/0 lb"])(
    "%j",
    (text) => {
      expect(parseQuantity(text, product).ok).toBe(false);
    },
  );

  test("an ounce is asked about even where only a weight is taken", () => {
    const outcome = parseQuantity("8 oz", { field: "amount", dimensions: ["mass"] });
    expect(outcome).toMatchObject({ ok: false, refusal: { allowed: "fl oz, oz wt" } });
  });

  test("any text gets an answer, and no answer is below zero", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 40 }), (text) => {
        const outcome = parseQuantity(text, { ...product, unitWhenNone: "lb" });
        if (outcome.ok) expect(outcome.value.quantity.amount >= 0n).toBe(true);
        else expect(outcome.refusal.field).toBe("amount");
      }),
    );
  });
});

test("the units offered follow the dimensions asked for", () => {
  expect(unitsOffered(["area"])).toBe("sq ft, acre, m\u00B2, ha");
  expect(unitsOffered(["length"])).toBe("ft, in, m");
});
