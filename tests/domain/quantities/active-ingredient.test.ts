import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BrokenInvariant } from "#domain/foundation/invariant";
import {
  activeIngredientIn,
  activeIngredientRate,
  massInVolume,
  percentByWeight,
  productMassRateFor,
  productVolumeRateFor,
  takesDensity,
} from "#domain/quantities/active-ingredient";
import { densityOf } from "#domain/quantities/density";
import { compareExact, exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { anyRational } from "../../support/quantity-arbitraries";

const density = densityOf("9", "lb per gal");
const byWeight = percentByWeight("40");
const byVolume = massInVolume("3.6", "lb per gal");

describe("all four ways agree when 40% by weight at 9 lb per gal is 3.6 lb per gal", () => {
  const mass = rateOf("product-mass-per-area", "2.25", "lb per acre");
  const volume = rateOf("product-volume-per-area", 1n, "qt per acre");
  const active = rateOf("active-ingredient-mass-per-area", "0.9", "lb per acre");

  test("the active ingredient on an acre", () => {
    for (const rate of [mass, volume]) {
      for (const concentration of [byWeight, byVolume]) {
        expect(activeIngredientRate(rate, concentration, density)).toEqual({ ok: true, value: active });
      }
    }
  });

  test("the product for a rate of active ingredient", () => {
    for (const concentration of [byWeight, byVolume]) {
      expect(productVolumeRateFor(active, concentration, density)).toEqual({ ok: true, value: volume });
      expect(productMassRateFor(active, concentration, density)).toEqual({ ok: true, value: mass });
    }
  });

  test("the active ingredient in a jug and in a bag", () => {
    const inJug = activeIngredientIn(of("gal", 1n), byVolume);
    const inBag = activeIngredientIn(of("lb", 9n), byWeight);
    if (!inJug.ok || !inBag.ok) throw new Error("both need no density");
    expect(compareExact(inJug.value, exactly("lb", "3.6"))).toBe(0);
    expect(compareExact(inBag.value, exactly("lb", "3.6"))).toBe(0);
  });
});

test("without a density, measured one way and stated the other is refused by name", () => {
  const refused = [
    activeIngredientRate(rateOf("product-volume-per-area", 1n, "qt per acre"), byWeight),
    activeIngredientRate(rateOf("product-mass-per-area", 1n, "lb per acre"), byVolume),
    activeIngredientIn(of("gal", 1n), byWeight),
    productVolumeRateFor(rateOf("active-ingredient-mass-per-area", 1n, "lb per acre"), byWeight),
    productMassRateFor(rateOf("active-ingredient-mass-per-area", 1n, "lb per acre"), byVolume),
  ];
  for (const outcome of refused) {
    expect(outcome).toMatchObject({ ok: false, refusal: { kind: "missing-fact", field: "density" } });
  }
});

test("a label's own statement needs no density", () => {
  expect(activeIngredientRate(rateOf("product-mass-per-area", 1n, "lb per acre"), byWeight).ok).toBe(true);
  expect(activeIngredientRate(rateOf("product-volume-per-area", 1n, "qt per acre"), byVolume).ok).toBe(true);
});

test("a percentage by weight is a part of the weight, up to all of it", () => {
  const [half, whole] = [percentByWeight("50"), percentByWeight("100")].map((concentration) => activeIngredientIn(of("lb", 4n), concentration));
  if (half?.ok !== true || whole?.ok !== true) throw new Error("by weight needs no density");
  expect(compareExact(half.value, of("lb", 2n))).toBe(0);
  expect(compareExact(whole.value, of("lb", 4n))).toBe(0);
});

test.each(["0", "-1", "100.1"])("%s percent by weight throws", (percent) => {
  expect(() => percentByWeight(percent)).toThrow(BrokenInvariant);
});

test("product for active ingredient and back is the same rate", () => {
  fc.assert(
    fc.property(anyRational(), anyRational(1n), (rateValue, strength) => {
      const active = rateOf("active-ingredient-mass-per-area", rateValue, "lb per acre");
      const concentration = massInVolume(strength, "lb per gal");
      const product = productVolumeRateFor(active, concentration);
      if (!product.ok) throw new Error("the label's own statement needs no density");
      expect(activeIngredientRate(product.value, concentration)).toEqual({ ok: true, value: active });
    }),
  );
});

test("a density is taken exactly where the way is refused without one", () => {
  for (const [dimension, product] of [["mass", of("lb", 2n)], ["volume", of("qt", 1n)]] as const) {
    for (const concentration of [byWeight, byVolume]) {
      expect(takesDensity(dimension, concentration)).toBe(!activeIngredientIn(product, concentration).ok);
    }
  }
});
