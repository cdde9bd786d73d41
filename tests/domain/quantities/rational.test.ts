import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BrokenInvariant } from "#domain/foundation/invariant";
import {
  addRational,
  compareRational,
  decimal,
  divideRational,
  fromNumber,
  greatestCommonDivisor,
  multiplyRational,
  negateRational,
  rational,
  type RoundingMode,
  reduce,
  roundQuotient,
  roundToWhole,
  subtractRational,
  toDecimalString,
  toNumber,
} from "#domain/quantities/rational";
import { anyRational } from "../../support/quantity-arbitraries";

const signedRational = anyRational(-(10n ** 12n));

describe("making a fraction", () => {
  test("the sign moves to the numerator", () => {
    expect(rational(3n, -4n)).toEqual({ numerator: -3n, denominator: 4n });
  });

  test("a denominator of zero throws", () => {
    expect(() => rational(1n, 0n)).toThrow(BrokenInvariant);
    expect(() => divideRational(rational(1n), rational(0n))).toThrow(BrokenInvariant);
  });

  test.each([
    ["0", 0n, 1n],
    ["13.5", 135n, 10n],
    ["-0.25", -25n, 100n],
    ["007.10", 710n, 100n],
  ])("the decimal %s", (text, numerator, denominator) => {
    expect(decimal(text)).toEqual({ numerator, denominator });
  });

  test.each(["", ".5", "5.", "1e3", "NaN", "Infinity", "1,000", " 1", "+1", "0x10", "1.2.3"])(
    "%j is no plain decimal",
    (text) => {
      expect(() => decimal(text)).toThrow(BrokenInvariant);
    },
  );

  test("a number enters at stated decimal places only", () => {
    expect(fromNumber(0.1 + 0.2, 2)).toEqual({ numerator: 30n, denominator: 100n });
    expect(fromNumber(-1.26, 1)).toEqual({ numerator: -13n, denominator: 10n });
    expect(fromNumber(2.6, 0)).toEqual({ numerator: 3n, denominator: 1n });
    expect(fromNumber(0.5, 15)).toEqual({ numerator: 500_000_000_000_000n, denominator: 10n ** 15n });
    expect(() => fromNumber(Number.MAX_SAFE_INTEGER, 0)).toThrow(BrokenInvariant);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e16])("%s does not enter", (value) => {
    expect(() => fromNumber(value, 2)).toThrow(BrokenInvariant);
  });

  test.each([-1, 16, 1.5])("%s decimal places are refused", (places) => {
    expect(() => fromNumber(1, places)).toThrow(BrokenInvariant);
  });
});

describe("arithmetic is exact", () => {
  test("a third thrice is one", () => {
    const third = rational(1n, 3n);
    expect(compareRational(addRational(addRational(third, third), third), rational(1n))).toBe(0);
  });

  test("what is added is taken away again", () => {
    fc.assert(
      fc.property(signedRational, signedRational, (left, right) => {
        expect(compareRational(subtractRational(addRational(left, right), right), left)).toBe(0);
      }),
    );
  });

  test("what is multiplied is divided again", () => {
    fc.assert(
      fc.property(signedRational, anyRational(1n), (left, right) => {
        expect(compareRational(divideRational(multiplyRational(left, right), right), left)).toBe(0);
      }),
    );
  });

  test("the order turns round with the sign", () => {
    fc.assert(
      fc.property(signedRational, signedRational, (left, right) => {
        expect(compareRational(negateRational(right), negateRational(left))).toBe(compareRational(left, right));
      }),
    );
  });

  test("lowest terms are the same fraction, and have no common divisor", () => {
    fc.assert(
      fc.property(signedRational, (value) => {
        const lowest = reduce(value);
        expect(compareRational(lowest, value)).toBe(0);
        expect(greatestCommonDivisor(lowest.numerator, lowest.denominator)).toBe(1n);
      }),
    );
  });
});

describe("rounding a quotient", () => {
  const table: readonly (readonly [bigint, bigint, Record<RoundingMode, bigint>])[] = [
    [5n, 2n, { nearest: 3n, "half-even": 2n, down: 2n, up: 3n }],
    [7n, 2n, { nearest: 4n, "half-even": 4n, down: 3n, up: 4n }],
    [-5n, 2n, { nearest: -3n, "half-even": -2n, down: -3n, up: -2n }],
    [4n, 3n, { nearest: 1n, "half-even": 1n, down: 1n, up: 2n }],
    [5n, 3n, { nearest: 2n, "half-even": 2n, down: 1n, up: 2n }],
    [-4n, 3n, { nearest: -1n, "half-even": -1n, down: -2n, up: -1n }],
    [6n, 3n, { nearest: 2n, "half-even": 2n, down: 2n, up: 2n }],
    [-6n, 3n, { nearest: -2n, "half-even": -2n, down: -2n, up: -2n }],
  ];
  test.each(table)("%s over %s", (dividend, divisor, expected) => {
    const modes: readonly RoundingMode[] = ["nearest", "half-even", "down", "up"];
    for (const mode of modes) expect([mode, roundQuotient(dividend, divisor, mode)]).toEqual([mode, expected[mode]]);
  });

  test("a larger fraction never rounds to a smaller whole number", () => {
    const mode = fc.constantFrom<RoundingMode>("nearest", "half-even", "down", "up");
    fc.assert(
      fc.property(signedRational, signedRational, mode, (left, right, by) => {
        const [low, high] = compareRational(left, right) <= 0 ? [left, right] : [right, left];
        expect(roundToWhole(low, by) <= roundToWhole(high, by)).toBe(true);
      }),
    );
  });
});

describe("as decimals", () => {
  test.each([
    [rational(150n, 7n), 2, "21.43"],
    [rational(2n, 3n), 0, "1"],
    [rational(-1n, 3n), 3, "-0.333"],
    [rational(-1n, 1000n), 2, "0.00"],
    [rational(1n, 200n), 2, "0.01"],
    [rational(12_345n), 1, "12345.0"],
  ])("%o to %i digits is %s", (value, digits, expected) => {
    expect(toDecimalString(value, digits, "nearest")).toBe(expected);
  });

  test.each([-1, 0.5, Number.NaN])("%s digits are refused", (digits) => {
    expect(() => toDecimalString(rational(1n), digits, "nearest")).toThrow(BrokenInvariant);
  });

  test("they read back within half a unit of the last digit", () => {
    fc.assert(
      fc.property(signedRational, fc.integer({ min: 0, max: 8 }), (value, digits) => {
        const back = decimal(toDecimalString(value, digits, "nearest"));
        const error = subtractRational(back, value);
        const size = error.numerator < 0n ? negateRational(error) : error;
        expect(compareRational(size, rational(1n, 2n * 10n ** BigInt(digits))) <= 0).toBe(true);
      }),
    );
  });

  test("as a floating point number they are right to fifteen figures", () => {
    expect(toNumber(rational(1n, 3n))).toBeCloseTo(1 / 3, 15);
    expect(toNumber(rational(10n ** 30n, 10n ** 29n * 3n))).toBeCloseTo(10 / 3, 14);
  });
});
