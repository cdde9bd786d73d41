import { expect, test } from "vitest";
import { halfOf, mixingSteps } from "#domain/mixing/mixing-steps";
import { of } from "#domain/quantities/quantity";
import { IRON, IRON_LABEL, LAWN, SPRAYER, sprayOf } from "../../support/ticket";

const first = (waters: Parameters<typeof mixingSteps>[1], what: "load" | "fill" = "load") => mixingSteps([IRON_LABEL], waters, what)[0];

test("half of the water is that of the load, whatever the tank holds", () => {
  expect(first([of("fl oz", 38n)])).toBe("Put in about half of this load's water (19 fl oz) and start the agitation.");
  expect(first([of("gal", 30n)], "fill")).toBe("Put in about half of this fill's water (15 gal) and start the agitation.");
});

test("loads of one size share a figure, others have their own", () => {
  expect(first([of("gal", 90n), of("gal", 90n)])).toBe("Put in about half of each load's water (45 gal) and start the agitation.");
  expect(first([of("gal", 100n), of("gal", 100n), of("gal", 20n)])).toBe("Put in about half of each load's water (50 gal in loads 1 and 2; 10 gal in load 3) and start the agitation.");
});

test("then each product by itself in the order given, and the rest of the water", () => {
  expect(mixingSteps([IRON_LABEL, { productName: "Dampfield WDG", formulation: "water-dispersible granule" }], [of("gal", 2n)], "load").slice(1)).toEqual([
    "Add Rustwater Iron (soluble liquid); let it mix in before the next.",
    "Add Dampfield WDG (water-dispersible granule); let it mix in before the next.",
    "Fill up with water to the finished volume; keep the agitation on until the tank is empty.",
  ]);
});

test("a small load in a large tank is never told to take more water than it holds", () => {
  // 6 gal in a tank of 100.
  const mix = sprayOf({ lawns: [{ ...LAWN, area: of("sq ft", 4000n) }], treatments: [{ ...IRON, gear: SPRAYER }] });
  expect(mix?.steps[0]).toBe("Put in about half of this load's water (2.98 gal) and start the agitation.");
});

test("half is half, down to the canonical unit", () => {
  expect(halfOf(of("gal", 3n))).toEqual(of("qt", 6n));
  expect(halfOf({ dimension: "volume", amount: 5n })).toEqual({ dimension: "volume", amount: 2n });
});
