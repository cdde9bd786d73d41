import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { compareExact, exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { compareRates, rateOf } from "#domain/quantities/rate";
import { compareRational, decimal, rational } from "#domain/quantities/rational";
import {
  bulkRateFor,
  bulkSeedFor,
  overseedingRate,
  pricePerPureLiveSeed,
  pureLivePart,
  pureLiveSeedIn,
  purityOfMixture,
  seedingRates,
  seedingRatesOf,
  seedsPerPound,
  seedsPerSquareFoot,
} from "#domain/turf/seed";
import { anyQuantity } from "../../support/quantity-arbitraries";

describe("pure live seed", () => {
  test("is purity times germination", () => {
    const part = pureLivePart(decimal("48"), decimal("80"));
    expect(part.ok && compareRational(part.value, decimal("0.384"))).toBe(0);
  });

  test.each([
    ["0", "80", "purity", "0.00%"],
    ["101", "80", "purity", "101.00%"],
    ["98", "0", "germination", "0.00%"],
    ["98", "100.5", "germination", "100.50%"],
  ])("purity %s and germination %s are refused", (purity, germination, field, found) => {
    expect(pureLivePart(decimal(purity), decimal(germination))).toMatchObject({ ok: false, refusal: { field, found } });
  });

  test("bulk holds the pure live seed it was asked for, for any lot", () => {
    const percent = fc.bigInt({ min: 1n, max: 100n }).map((value) => rational(value));
    fc.assert(
      fc.property(anyQuantity("mass"), percent, percent, (needed, purity, germination) => {
        const part = pureLivePart(purity, germination);
        if (!part.ok) throw new Error(part.refusal.sentence);
        const bulk = bulkSeedFor(needed, part.value);
        expect(compareExact(pureLiveSeedIn(bulk, part.value), needed)).toBe(0);
        expect(compareExact(bulk, needed) >= 0).toBe(true);
      }),
    );
  });

  test("a rate in pure live seed becomes a rate from the bag", () => {
    const rate = rateOf("seed-mass-per-area", 1n, "lb per 1,000 sq ft");
    expect(bulkRateFor(rate, decimal("0.5"))).toEqual(rateOf("product-mass-per-area", 2n, "lb per 1,000 sq ft"));
  });

  test.each(["0", "-0.1", "1.01"])("a part of %s throws", (part) => {
    expect(() => bulkSeedFor(of("lb", 1n), decimal(part))).toThrow(BrokenInvariant);
    expect(() => pureLiveSeedIn(of("lb", 1n), decimal(part))).toThrow(BrokenInvariant);
    expect(() => pricePerPureLiveSeed(decimal("2.5"), decimal(part))).toThrow(BrokenInvariant);
    expect(() => bulkRateFor(rateOf("seed-mass-per-area", 1n, "lb per acre"), decimal(part))).toThrow(BrokenInvariant);
  });
});

test("the kinds of a mixture add up, and not above one hundred", () => {
  const total = purityOfMixture([decimal("30"), decimal("32"), decimal("27")]);
  expect(total.ok && compareRational(total.value, decimal("89"))).toBe(0);
  expect(purityOfMixture([decimal("60"), decimal("50")])).toMatchObject({ ok: false, refusal: { found: "110.00%" } });
  expect(purityOfMixture([]).ok).toBe(false);
});

test("a pound of bluegrass on 1,000 sq ft is 1,500 seeds on each", () => {
  const rate = rateOf("seed-mass-per-area", 1n, "lb per 1,000 sq ft");
  expect(compareRational(seedsPerSquareFoot(rate, seedsPerPound["Kentucky bluegrass"]), rational(1500n))).toBe(0);
});

describe("the table", () => {
  test("goes from low to high, with a source", () => {
    for (const rate of seedingRates) {
      expect(compareRates(rate.lowest, rate.highest) <= 0).toBe(true);
      expect(rate.source.name).not.toBe("");
    }
  });

  test("overseeds at half the bare ground rate of the same source", () => {
    const [bare] = seedingRatesOf("tall fescue", "bare ground").filter((rate) => rate.source.name.includes("Nebraska"));
    const [over] = seedingRatesOf("tall fescue", "overseeding");
    if (bare === undefined || over === undefined) throw new Error("Nebraska has both");
    expect(over.lowest).toEqual(overseedingRate(bare.lowest));
    expect(over.highest).toEqual(rateOf("seed-mass-per-area", 4n, "lb per 1,000 sq ft"));
    expect(seedingRatesOf("zoysiagrass", "overseeding")).toEqual([]);
  });
});

test("seed is weighed, exactly", () => {
  expect(compareExact(bulkSeedFor(exactly("lb", 20n), decimal("0.384")), exactly("lb", rational(20_000n, 384n)))).toBe(
    0,
  );
});
