import fc from "fast-check";
import { expect, test } from "vitest";
import { BrokenInvariant } from "#domain/foundation/invariant";
import {
  addExact,
  compareExact,
  type ExactQuantity,
  exactly,
  fromExactAmount,
  measureInUnit,
  multiplyExact,
  ratioExact,
  settle,
  sumExact,
} from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { compareRational, rational } from "#domain/quantities/rational";
import { anyRational } from "../../support/quantity-arbitraries";

test("a hundred hundredths of a gallon are a gallon when they are summed before they are rounded", () => {
  const hundredths = Array.from({ length: 100 }, () => exactly("gal", "0.01"));
  expect(settle(sumExact("volume", hundredths), "nearest")).toEqual(of("gal", 1n));
});

test("settling rounds by the named mode, and leaves a whole quantity alone", () => {
  const thousandth = exactly("lb", "0.001");
  expect(settle(thousandth, "down").amount).toBe(72_574_779n);
  expect(settle(thousandth, "up").amount).toBe(72_574_780n);
  expect(settle(of("lb", 1n), "up")).toEqual(of("lb", 1n));
});

test("below zero throws", () => {
  expect(() => exactly("lb", "-1")).toThrow(BrokenInvariant);
  expect(() => fromExactAmount("mass", rational(-1n, 2n))).toThrow(BrokenInvariant);
  expect(() => multiplyExact(of("lb", 1n), rational(-1n))).toThrow(BrokenInvariant);
});

test("two dimensions never meet", () => {
  const volume = exactly("gal", 1n) as unknown as ExactQuantity<"mass">;
  expect(() => addExact(of("lb", 1n), volume)).toThrow(BrokenInvariant);
  expect(() => sumExact("mass", [volume])).toThrow(BrokenInvariant);
  expect(() => compareExact(of("lb", 1n), volume)).toThrow(BrokenInvariant);
  expect(() => ratioExact(of("lb", 1n), volume)).toThrow(BrokenInvariant);
  expect(() => measureInUnit(volume, "lb")).toThrow(BrokenInvariant);
});

test("a part of a quantity has its part as its ratio", () => {
  fc.assert(
    fc.property(anyRational(1n), anyRational(), (whole, part) => {
      const quantity = exactly("gal", whole);
      expect(compareRational(ratioExact(multiplyExact(quantity, part), quantity), part)).toBe(0);
      expect(compareRational(measureInUnit(quantity, "gal"), whole)).toBe(0);
    }),
  );
});

test("settling is within one canonical unit, and keeps the order", () => {
  fc.assert(
    fc.property(anyRational(), anyRational(), (left, right) => {
      const [low, high] = compareRational(left, right) <= 0 ? [left, right] : [right, left];
      const [settledLow, settledHigh] = [
        settle(exactly("fl oz", low), "nearest"),
        settle(exactly("fl oz", high), "nearest"),
      ];
      expect(compareExact(settledLow, settledHigh) <= 0).toBe(true);
      expect(compareExact(settle(exactly("fl oz", low), "down"), exactly("fl oz", low)) <= 0).toBe(true);
      expect(compareExact(settle(exactly("fl oz", low), "up"), exactly("fl oz", low)) >= 0).toBe(true);
    }),
  );
});
