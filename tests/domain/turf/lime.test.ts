import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { type Outcome } from "#domain/foundation/outcome";
import { compareRates, rateFromAmounts, rateOf, scaleRate } from "#domain/quantities/rate";
import { compareRational, decimal, rational } from "#domain/quantities/rational";
import { limingMaterialFor, publishedLimeCaps, recommendLime, splitLime, type TargetPh } from "#domain/turf/lime";

const method = "Mehlich buffer, exchangeable acidity";
const pounds = (value: string) => rateOf("product-mass-per-area", value, "lb per 1,000 sq ft");

function valueOf<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(outcome.refusal.sentence);
  return outcome.value;
}

describe("the recommendation", () => {
  test("between two rows takes the one below, and says so", () => {
    const recommendation = valueOf(recommendLime({ method, exchangeableAcidity: decimal("8.9") }, "7.0"));
    expect(recommendation.calciumCarbonateEquivalent).toEqual(pounds("180"));
    expect(compareRational(recommendation.rowAcidity, decimal("8.4"))).toBe(0);
  });

  test.each(["1.9", "0", "25.8", "40"])("an acidity of %s is outside the table", (acidity) => {
    expect(recommendLime({ method, exchangeableAcidity: decimal(acidity) }, "6.5")).toMatchObject({
      ok: false,
      refusal: { field: "exchangeable acidity", allowed: "2.0 to 25.7 meq per 100 g" },
    });
  });

  test("a test by another method is refused by name", () => {
    expect(recommendLime({ method: "another", name: "SMP buffer" }, "6.5")).toMatchObject({
      ok: false,
      refusal: { field: "lime test", found: "SMP buffer" },
    });
  });

  test("more acidity never asks for less lime, and a higher pH never for less", () => {
    const acidity = fc.bigInt({ min: 20n, max: 257n }).map((tenths) => rational(tenths, 10n));
    const lime = (value: { numerator: bigint; denominator: bigint }, target: TargetPh) =>
      valueOf(recommendLime({ method, exchangeableAcidity: value }, target)).calciumCarbonateEquivalent;
    fc.assert(
      fc.property(acidity, acidity, (one, other) => {
        const [low, high] = compareRational(one, other) <= 0 ? [one, other] : [other, one];
        for (const target of ["7.0", "6.5", "6.0"] as const) {
          expect(compareRates(lime(low, target), lime(high, target)) <= 0).toBe(true);
        }
        expect(compareRates(lime(low, "6.0"), lime(low, "6.5")) <= 0).toBe(true);
        expect(compareRates(lime(low, "6.5"), lime(low, "7.0")) <= 0).toBe(true);
      }),
    );
  });
});

describe("the material", () => {
  test("of 80 percent takes a quarter more", () => {
    expect(limingMaterialFor(pounds("100"), "80")).toEqual({ ok: true, value: pounds("125") });
    expect(limingMaterialFor(pounds("100"), "108").ok).toBe(true);
  });

  test.each(["0", "-5", "251"])("of %s percent is refused", (percent) => {
    expect(limingMaterialFor(pounds("100"), percent)).toMatchObject({
      ok: false,
      refusal: { field: "calcium carbonate equivalent" },
    });
  });
});

describe("the split", () => {
  test("needs a cap above zero", () => {
    const [cap] = publishedLimeCaps;
    if (cap === undefined) throw new Error("there are published caps");
    expect(() => splitLime(pounds("100"), { ...cap, perApplication: pounds("0") })).toThrow(BrokenInvariant);
  });

  test("is one application up to the cap, and none of nothing is split", () => {
    for (const cap of publishedLimeCaps) {
      expect(splitLime(cap.perApplication, cap)).toEqual({ applications: 1, each: cap.perApplication, cap });
      expect(splitLime(pounds("0"), cap).applications).toBe(1);
    }
  });

  test("never passes the cap, adds up, and has no application too many", () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 1n, max: 1000n }), fc.constantFrom(...publishedLimeCaps), (amount, cap) => {
        const material = rateOf("product-mass-per-area", amount, "lb per 1,000 sq ft");
        const split = splitLime(material, cap);
        expect(compareRates(split.each, cap.perApplication) <= 0).toBe(true);
        expect(scaleRate(split.each, rational(BigInt(split.applications)))).toEqual(material);
        const fewer = BigInt(split.applications - 1);
        const reach = rateFromAmounts(
          "product-mass-per-area",
          cap.perApplication.amount * fewer,
          cap.perApplication.per,
        );
        expect(compareRates(reach, material) < 0).toBe(true);
      }),
    );
  });
});
