import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { type Outcome } from "#domain/foundation/outcome";
import { densityOf } from "#domain/quantities/density";
import { compareExact, exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { addRates, rateFrom, rateIn, rateOf } from "#domain/quantities/rate";
import { compareRational, decimal, rational, toDecimalString, toNumber } from "#domain/quantities/rational";
import {
  EXTENSION_FACTORS,
  gradeOf,
  MASS_FRACTIONS,
  nutrientsDelivered,
  nutrientsIn,
  parseGrade,
  productForNutrient,
  slowShareOfNitrogen,
} from "#domain/turf/nutrients";
import { anyRational } from "../../support/quantity-arbitraries";

const onePound = rateOf("nutrient-mass-per-area", 1n, "lb per 1,000 sq ft");
const notStated = { kind: "not-stated" } as const;

function valueOf<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(outcome.refusal.sentence);
  return outcome.value;
}

describe("a grade", () => {
  test.each([
    ["28-3-6", gradeOf("28", "3", "6")],
    ["0.5-0.5-0.5", gradeOf("0.5", "0.5", "0.5")],
    ["12 - 0 - 0 - 6Fe", gradeOf("12", "0", "0", "6")],
    ["12-0-0 6% fe", gradeOf("12", "0", "0", "6")],
  ])("%s", (text, grade) => {
    const read = valueOf(parseGrade("grade", text));
    expect(compareRational(read.nitrogenPercent, grade.nitrogenPercent)).toBe(0);
    expect(compareRational(read.phosphatePercent, grade.phosphatePercent)).toBe(0);
    expect(compareRational(read.potashPercent, grade.potashPercent)).toBe(0);
    if (grade.ironPercent === "not-stated" || read.ironPercent === "not-stated") {
      expect(read.ironPercent).toBe(grade.ironPercent);
    } else {
      expect(compareRational(read.ironPercent, grade.ironPercent)).toBe(0);
    }
  });

  test.each(["", "28-3", "28/3/6", "urea", "-1-0-0", "60-30-20", "101-0-0", "1..5-0-0"])("%j is refused", (text) => {
    expect(parseGrade("grade", text)).toMatchObject({ ok: false, refusal: { field: "grade" } });
  });

  test("above 100 percent together, or below zero, throws in code", () => {
    expect(() => gradeOf("60", "30", "20")).toThrow(BrokenInvariant);
    expect(() => gradeOf("-1", "0", "0")).toThrow(BrokenInvariant);
  });
});

describe("slow-release nitrogen", () => {
  const grade = gradeOf("15", "0", "15");

  test("as percent of the product and as percent of the nitrogen", () => {
    const ofProduct = slowShareOfNitrogen(grade, { kind: "slow-percent-of-product", percent: decimal("7") });
    expect(compareRational(valueOf(ofProduct), rational(7n, 15n))).toBe(0);
    const ofNitrogen = slowShareOfNitrogen(grade, { kind: "slow-percent-of-nitrogen", percent: decimal("30") });
    expect(compareRational(valueOf(ofNitrogen), decimal("0.3"))).toBe(0);
  });

  test("is refused when it is not on file, is of nothing, or is more than the whole", () => {
    expect(slowShareOfNitrogen(grade, notStated)).toMatchObject({ ok: false, refusal: { kind: "missing-fact" } });
    const release = { kind: "slow-percent-of-product", percent: decimal("16") } as const;
    expect(slowShareOfNitrogen(grade, release)).toMatchObject({ ok: false, refusal: { found: "16.00%" } });
    expect(slowShareOfNitrogen(gradeOf("0", "0", "50"), release).ok).toBe(false);
    expect(slowShareOfNitrogen(grade, { kind: "slow-percent-of-nitrogen", percent: decimal("101") }).ok).toBe(false);
  });
});

describe("from the nutrient to the product and back", () => {
  test("one pound of nitrogen from 28-3-6 is 100/28 lb", () => {
    const product = valueOf(productForNutrient("N", onePound, gradeOf("28", "3", "6")));
    expect(product).toEqual(rateOf("product-mass-per-area", rational(100n, 28n), "lb per 1,000 sq ft"));
  });

  test("each nutrient by its own percent", () => {
    const grade = gradeOf("10", "20", "40", "5");
    const pounds = (["N", "P2O5", "K2O", "Fe"] as const).map((nutrient) =>
      toNumber(rateIn(valueOf(productForNutrient(nutrient, onePound, grade)), "lb per 1,000 sq ft")),
    );
    expect(pounds).toEqual([10, 5, 2.5, 20]);
  });

  test("a nutrient that is not there, or not on file, is refused", () => {
    expect(productForNutrient("P2O5", onePound, gradeOf("28", "0", "6"))).toMatchObject({
      ok: false,
      refusal: { kind: "bad-input", sentence: "This product has no P2O5." },
    });
    expect(productForNutrient("Fe", onePound, gradeOf("28", "0", "6"))).toMatchObject({
      ok: false,
      refusal: { kind: "missing-fact" },
    });
  });

  test("what is asked for is delivered, quick and slow add up, for any grade and target", () => {
    const percent = fc.bigInt({ min: 1n, max: 50n });
    fc.assert(
      fc.property(anyRational(1n), percent, fc.bigInt({ min: 0n, max: 100n }), (target, nitrogen, slowPercent) => {
        const grade = gradeOf(nitrogen, 5n, 10n);
        const wanted = rateOf("nutrient-mass-per-area", target, "lb per 1,000 sq ft");
        const product = valueOf(productForNutrient("N", wanted, grade));
        const release = { kind: "slow-percent-of-nitrogen", percent: rational(slowPercent) } as const;
        const delivered = valueOf(nutrientsDelivered(product, { grade, release }));
        expect(delivered.nitrogen).toEqual(wanted);
        if (delivered.quickNitrogen === "not-stated" || delivered.slowNitrogen === "not-stated") {
          throw new Error("the release is stated");
        }
        expect(addRates(delivered.quickNitrogen, delivered.slowNitrogen)).toEqual(wanted);
      }),
    );
  });

  test("the same product by volume and by weight brings the same", () => {
    const product = {
      grade: gradeOf("4", "0", "0", "0.4"),
      release: notStated,
      density: densityOf("10.68", "lb per gal"),
    };
    const byVolume = nutrientsDelivered(rateOf("product-volume-per-area", 1n, "gal per acre"), product);
    const byMass = nutrientsDelivered(rateOf("product-mass-per-area", "10.68", "lb per acre"), product);
    expect(byVolume).toEqual(byMass);
  });

  test("by volume without a density is refused by name", () => {
    const product = { grade: gradeOf("4", "0", "0"), release: notStated };
    expect(nutrientsDelivered(rateOf("product-volume-per-area", 1n, "gal per acre"), product)).toMatchObject({
      ok: false,
      refusal: { kind: "missing-fact", field: "density" },
    });
  });

  test("a rate over an area brings what the weight on it holds", () => {
    const product = { grade: gradeOf("16", "4", "8"), release: notStated };
    const delivered = valueOf(
      nutrientsDelivered(rateOf("product-mass-per-area", "6.25", "lb per 1,000 sq ft"), product),
    );
    const held = valueOf(nutrientsIn(exactly("lb", "62.5"), product));
    for (const nutrient of ["nitrogen", "phosphate", "phosphorus", "potash", "potassium"] as const) {
      expect(rateFrom("nutrient-mass-per-area", held[nutrient], of("sq ft", 10_000n))).toEqual(delivered[nutrient]);
    }
  });

  test("what the label does not state stays unstated; no nitrogen is no nitrogen of either kind", () => {
    const unstated = valueOf(nutrientsIn(of("lb", 1n), { grade: gradeOf("10", "0", "0"), release: notStated }));
    expect([unstated.quickNitrogen, unstated.slowNitrogen, unstated.iron]).toEqual(Array(3).fill("not-stated"));
    const potash = valueOf(nutrientsIn(of("lb", 1n), { grade: gradeOf("0", "0", "50"), release: notStated }));
    for (const part of [potash.quickNitrogen, potash.slowNitrogen]) {
      if (part === "not-stated") throw new Error("no nitrogen is neither quick nor slow");
      expect(compareExact(part, exactly("lb", 0n))).toBe(0);
    }
  });

  test("a release that is more than the nitrogen is refused", () => {
    const release = { kind: "slow-percent-of-product", percent: decimal("11") } as const;
    expect(nutrientsIn(of("lb", 1n), { grade: gradeOf("10", "0", "0"), release }).ok).toBe(false);
    expect(
      nutrientsDelivered(rateOf("product-mass-per-area", 1n, "lb per acre"), {
        grade: gradeOf("10", "0", "0"),
        release,
      }).ok,
    ).toBe(false);
  });
});

test("the exact mass fractions follow from the atomic weights, and the extension factors lie within one percent", () => {
  const [phosphorus, potassium, oxygen] = [30.974, 39.098, 15.999];
  const exactPhosphorus = (2 * phosphorus) / (2 * phosphorus + 5 * oxygen);
  const exactPotassium = (2 * potassium) / (2 * potassium + oxygen);
  expect(toDecimalString(MASS_FRACTIONS.phosphorusInPhosphate, 4, "nearest")).toBe(exactPhosphorus.toFixed(4));
  expect(toDecimalString(MASS_FRACTIONS.potassiumInPotash, 4, "nearest")).toBe(exactPotassium.toFixed(4));
  expect(Math.abs(toNumber(EXTENSION_FACTORS.phosphorusInPhosphate) / exactPhosphorus - 1)).toBeLessThan(0.01);
  expect(Math.abs(toNumber(EXTENSION_FACTORS.potassiumInPotash) / exactPotassium - 1)).toBeLessThan(0.01);
});
