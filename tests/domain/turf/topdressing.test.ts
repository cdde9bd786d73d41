import fc from "fast-check";
import { expect, test } from "vitest";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { compareExact } from "#domain/quantities/exact-quantity";
import { of, type Quantity, zero } from "#domain/quantities/quantity";
import { topdressingArea, topdressingDepth, topdressingVolume } from "#domain/turf/topdressing";
import { anyQuantity } from "../../support/quantity-arbitraries";

test("an inch on 324 sq ft is a cubic yard; a millimeter on a square meter is a liter", () => {
  expect(compareExact(topdressingVolume(of("sq ft", 324n), of("in", 1n)), of("cu yd", 1n))).toBe(0);
  expect(compareExact(topdressingVolume(of("m2", 1n), of("mm", 1n)), of("L", 1n))).toBe(0);
});

test("volume, depth and area lead back to one another", () => {
  fc.assert(
    fc.property(anyQuantity("area", 1n), anyQuantity("length", 1n), (area, depth) => {
      const volume = topdressingVolume(area, depth);
      expect(compareExact(topdressingDepth(volume, area), depth)).toBe(0);
      expect(compareExact(topdressingArea(volume, depth), area)).toBe(0);
    }),
  );
});

test("over nothing, or with the wrong dimension, throws", () => {
  expect(() => topdressingDepth(of("cu yd", 1n), zero("area"))).toThrow(BrokenInvariant);
  expect(() => topdressingArea(of("cu yd", 1n), zero("length"))).toThrow(BrokenInvariant);
  const mass = of("lb", 1n);
  expect(() => topdressingVolume(mass as unknown as Quantity<"area">, of("in", 1n))).toThrow(BrokenInvariant);
  expect(() => topdressingDepth(mass as unknown as Quantity<"volume">, of("m2", 1n))).toThrow(BrokenInvariant);
  expect(() => topdressingArea(mass as unknown as Quantity<"volume">, of("in", 1n))).toThrow(BrokenInvariant);
});
