import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BrokenInvariant } from "#domain/foundation/invariant";
import {
  add,
  allocate,
  compare,
  divide,
  exactValue,
  fromAmount,
  fromNumber,
  inUnit,
  isZero,
  largest,
  multiply,
  of,
  type Quantity,
  ratio,
  smallest,
  subtract,
  sum,
  zero,
} from "#domain/quantities/quantity";
import { compareRational, decimal, rational } from "#domain/quantities/rational";
import { type Dimension, type Unit, units } from "#domain/quantities/units";
import { anyQuantity, anyRational } from "../../support/quantity-arbitraries";

/** What storage or another program might hand over: the type says mass, the value says volume. */
const volumeCalledMass = { dimension: "volume", amount: 5n } as unknown as Quantity<"mass">;

describe("making a quantity", () => {
  test("of so many units, exactly", () => {
    expect(of("lb", "13.5")).toEqual({ dimension: "mass", amount: 979_759_519_200n });
    expect(of("gal", 1n)).toEqual(of("fl oz", 128n));
    expect(of("acre", rational(1n, 4n))).toEqual(of("sq ft", "10890"));
    expect(of("tbsp", 1n)).toEqual(of("tsp", 3n));
    expect(of("lb", 1n)).toEqual(of("oz wt", 16n));
  });

  test("what is not whole goes to the nearest canonical unit", () => {
    expect(of("lb", "0.001").amount).toBe(72_574_779n);
    expect(of("oz wt", "0.125").amount).toBe(566_990_463n);
    expect(of("gal", "0.01").amount).toBe(24_226_635_418n);
  });

  test.each(["-1", "NaN", "Infinity", "1e3", ""])("%j throws", (text) => {
    expect(() => of("lb", text)).toThrow(BrokenInvariant);
  });

  test("below zero throws, however it comes", () => {
    expect(() => of("lb", rational(-1n, 3n))).toThrow(BrokenInvariant);
    expect(() => fromAmount("mass", -1n)).toThrow(BrokenInvariant);
    expect(() => fromNumber("lb", -0.5, 1)).toThrow(BrokenInvariant);
    expect(() => fromNumber("lb", Number.NaN, 1)).toThrow(BrokenInvariant);
    expect(() => fromNumber("lb", Number.POSITIVE_INFINITY, 1)).toThrow(BrokenInvariant);
  });

  test("a measured number enters at stated decimal places", () => {
    expect(fromNumber("gal", 0.1 + 0.2, 1)).toEqual(of("gal", "0.3"));
  });

  test("exact values are fractions, whole numbers and decimals", () => {
    expect(exactValue(7n)).toEqual(rational(7n));
    expect(exactValue("0.5")).toEqual(decimal("0.5"));
    expect(exactValue(rational(2n, 3n))).toEqual(rational(2n, 3n));
  });

  test("a unit's value comes back within half a canonical unit", () => {
    const names = Object.keys(units) as Unit[];
    fc.assert(
      fc.property(fc.constantFrom(...names), anyRational(), (unit, value) => {
        const quantity: Quantity<Dimension> = of(unit, value);
        const error = quantity.amount * value.denominator - value.numerator * units[unit].canonicalAmount;
        expect(2n * (error < 0n ? -error : error) <= value.denominator).toBe(true);
      }),
    );
  });
});

describe("arithmetic", () => {
  test("adds, takes away, sums", () => {
    expect(add(of("lb", 1n), of("oz wt", 8n))).toEqual(of("lb", "1.5"));
    expect(subtract(of("gal", 1n), of("fl oz", 28n))).toEqual(of("fl oz", 100n));
    expect(sum("area", [of("sq ft", 1000n), of("sq ft", 250n)])).toEqual(of("sq ft", 1250n));
    expect(sum("mass", [])).toEqual(zero("mass"));
    expect(isZero(subtract(of("lb", 2n), of("lb", 2n)))).toBe(true);
    expect(isZero(fromAmount("mass", 1n))).toBe(false);
    expect(fromAmount("mass", 0n)).toEqual(zero("mass"));
  });

  test("more than is there can't be taken", () => {
    expect(() => subtract(of("lb", 1n), of("lb", 2n))).toThrow(BrokenInvariant);
    expect(() => subtract(zero("mass"), fromAmount("mass", 1n))).toThrow(BrokenInvariant);
  });

  test("two dimensions never meet, even when the types were told otherwise", () => {
    const mass = of("lb", 1n);
    expect(() => add(mass, volumeCalledMass)).toThrow(BrokenInvariant);
    expect(() => subtract(mass, volumeCalledMass)).toThrow(BrokenInvariant);
    expect(() => sum("mass", [mass, volumeCalledMass])).toThrow(BrokenInvariant);
    expect(() => compare(mass, volumeCalledMass)).toThrow(BrokenInvariant);
    expect(() => ratio(mass, volumeCalledMass)).toThrow(BrokenInvariant);
    expect(() => inUnit(volumeCalledMass, "lb")).toThrow(BrokenInvariant);
  });

  test("a sum is the same in any order, and taking its parts away leaves nothing", () => {
    fc.assert(
      fc.property(fc.array(anyQuantity("volume"), { maxLength: 20 }), (list) => {
        const total = sum("volume", list);
        expect(sum("volume", list.toReversed())).toEqual(total);
        const left = list.reduce((rest, part) => subtract(rest, part), total);
        expect(isZero(left)).toBe(true);
      }),
    );
  });

  test("compare says which of two is the smaller, and when neither is", () => {
    const [less, more] = [fromAmount("mass", 4n), fromAmount("mass", 5n)];
    expect([compare(less, more), compare(more, less), compare(more, fromAmount("mass", 5n))]).toEqual([-1, 1, 0]);
  });

  test("compare agrees with smallest and largest", () => {
    fc.assert(
      fc.property(anyQuantity("mass"), anyQuantity("mass"), (left, right) => {
        const order = compare(left, right);
        expect(smallest(left, right)).toEqual(order <= 0 ? left : right);
        expect(largest(left, right)).toEqual(order >= 0 ? left : right);
        expect(order + compare(right, left)).toBe(0);
      }),
    );
  });

  test("in another unit, exactly", () => {
    expect(compareRational(inUnit(of("sq ft", 43_560n), "acre"), rational(1n))).toBe(0);
    expect(compareRational(ratio(of("qt", 1n), of("gal", 1n)), rational(1n, 4n))).toBe(0);
    expect(() => ratio(of("qt", 1n), zero("volume"))).toThrow(BrokenInvariant);
  });

  test("multiplies by a fraction, by a named mode", () => {
    const three = fromAmount("mass", 3n);
    expect(multiply(three, rational(1n, 2n), "down").amount).toBe(1n);
    expect(multiply(three, rational(1n, 2n), "up").amount).toBe(2n);
    expect(multiply(three, rational(5n, 3n), "nearest").amount).toBe(5n);
    expect(multiply(three, rational(0n), "up")).toEqual(zero("mass"));
    expect(() => multiply(three, rational(-1n, 2n), "down")).toThrow(BrokenInvariant);
  });
});

describe("sharing out", () => {
  test("equal parts and what is left over", () => {
    const { quotient, remainder } = divide(fromAmount("mass", 10n), 3n);
    expect([quotient.amount, remainder.amount]).toEqual([3n, 1n]);
    expect(() => divide(of("lb", 1n), 0n)).toThrow(BrokenInvariant);
  });

  test("canonical units left over go to the largest fractions, then to the earlier", () => {
    expect(allocate(fromAmount("mass", 10n), [1n, 1n, 1n]).map((share) => share.amount)).toEqual([4n, 3n, 3n]);
    expect(allocate(fromAmount("mass", 10n), [1n, 4n, 2n]).map((share) => share.amount)).toEqual([1n, 6n, 3n]);
    expect(allocate(fromAmount("mass", 10n), [0n, 5n]).map((share) => share.amount)).toEqual([0n, 10n]);
  });

  test("no weight to share by, or one below zero, throws", () => {
    expect(() => allocate(of("lb", 1n), [])).toThrow(BrokenInvariant);
    expect(() => allocate(of("lb", 1n), [0n, 0n])).toThrow(BrokenInvariant);
    expect(() => allocate(of("lb", 1n), [2n, -1n])).toThrow(BrokenInvariant);
  });

  test("the shares add up, and none is a whole canonical unit away from its due", () => {
    const weights = fc.array(fc.bigInt({ min: 0n, max: 10n ** 9n }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(anyQuantity("volume"), weights, (quantity, list) => {
        const total = list.reduce((left, right) => left + right, 0n);
        fc.pre(total > 0n);
        const shares = allocate(quantity, list);
        expect(sum("volume", shares)).toEqual(quantity);
        for (const [index, share] of shares.entries()) {
          const error = share.amount * total - quantity.amount * (list[index] ?? 0n);
          expect((error < 0n ? -error : error) < total).toBe(true);
        }
      }),
    );
  });
});
