import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatFigure, sensibleDecimals } from "#domain/quantities/format-number";
import { parseNumber } from "#domain/quantities/parse-number";
import { compareRational, decimal, rational, subtractRational } from "#domain/quantities/rational";
import { anyRational } from "../../support/quantity-arbitraries";

describe("figures", () => {
  test.each([
    ["13.5", 2, true, "13\u00BD"],
    ["13.5", 2, false, "13.5"],
    ["0.25", 2, true, "\u00BC"],
    ["0.75", 0, true, "\u00BE"],
    ["13.499", 2, true, "13\u00BD"],
    ["13.57", 2, true, "13.57"],
    ["13.5712", 3, true, "13.571"],
    ["1250", 2, true, "1,250"],
    ["1250.25", 0, true, "1,250\u00BC"],
    ["1234567.891", 1, false, "1,234,567.9"],
    ["999.96", 1, false, "1,000"],
    ["0", 3, true, "0"],
    ["0.004", 2, true, "0"],
    ["3.10", 2, false, "3.1"],
  ])("%s at %i decimals, quarters %s, is %s", (value, decimals, quarters, expected) => {
    expect(formatFigure(decimal(value), { decimals, quarters })).toBe(expected);
  });
});

test("what can't be written whole goes one way where that is asked for", () => {
  const style = { decimals: 2, quarters: true } as const;
  expect([formatFigure(decimal("0.7346"), { ...style, rounding: "up" }), formatFigure(decimal("0.7346"), { ...style, rounding: "down" })]).toEqual(["0.74", "0.73"]);
  expect(formatFigure(decimal("0.75"), { ...style, rounding: "up" })).toBe("\u00BE");
});

test.each([
  ["0", 6],
  ["0.0009", 6],
  ["0.001", 5],
  ["0.01", 4],
  ["0.1", 3],
  ["0.9999", 3],
  ["1", 2],
  ["99.9", 2],
  ["100", 1],
  ["999.9", 1],
  ["1000", 0],
])("%s has %i sensible decimals", (value, decimals) => {
  expect(sensibleDecimals(decimal(value))).toBe(decimals);
});

test("a figure reads back within half its last digit, and has no float noise", () => {
  const style = fc.record({ decimals: fc.integer({ min: 0, max: 6 }), quarters: fc.boolean() });
  fc.assert(
    fc.property(anyRational(), style, (value, by) => {
      const figure = formatFigure(value, by);
      expect(figure).toMatch(/^(?:\d{1,3}(?:,\d{3})*(?:\.\d{1,6})?[\u00BC-\u00BE]?|[\u00BC-\u00BE])$/u);
      const back = parseNumber("figure", figure);
      if (!back.ok) throw new Error(back.refusal.sentence);
      const error = subtractRational(back.value, value);
      const size = {
        numerator: error.numerator < 0n ? -error.numerator : error.numerator,
        denominator: error.denominator,
      };
      expect(compareRational(size, rational(1n, 2n * 10n ** BigInt(by.decimals))) <= 0).toBe(true);
    }),
  );
});
