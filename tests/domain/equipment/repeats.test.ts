import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { averageMeasure, averageOf, combinedUncertainty, distanceFrom, isMoreThanPercent, largestDistance, percentInWords, uncertaintyOf } from "#domain/equipment/repeats";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { compareRational, decimal, multiplyRational, type Rational, rational, ZERO } from "#domain/quantities/rational";
import { anyRational } from "../../support/quantity-arbitraries";

const all = (...texts: string[]) => texts.map(decimal);

test("an average is exact", () => {
  expect(averageOf(all("1", "2", "4"))).toEqual(rational(7n, 3n));
  expect(() => averageOf([])).toThrow(BrokenInvariant);
});

test("so is the average of what was measured, whatever the units it was measured in", () => {
  expect(compareRational(measureInUnit(averageMeasure("mass", [of("lb", 1n), of("oz wt", 8n)]), "lb"), decimal("0.75"))).toBe(0);
  expect(() => averageMeasure("mass", [])).toThrow(BrokenInvariant);
});

test("a distance keeps its sign, and the largest one has none", () => {
  expect(distanceFrom(decimal("10"), decimal("9"))).toEqual(rational(-1n, 10n));
  expect(largestDistance(all("8", "11", "11"))).toEqual(rational(1n, 5n));
});

describe("uncertainty", () => {
  test("one run tells nothing, three tell their spread", () => {
    expect(uncertaintyOf(all("8"))).toEqual({ kind: "not-given" });
    expect(uncertaintyOf(all("8", "11", "11"))).toEqual({ kind: "spread-of-repeats", part: rational(1n, 5n), repeats: 3 });
  });

  test("of a product is the sum of its parts, and the fewest repeats", () => {
    const [first, second] = [uncertaintyOf(all("9", "11")), uncertaintyOf(all("8", "11", "11"))];
    expect(combinedUncertainty([first, second])).toEqual({ kind: "spread-of-repeats", part: rational(3n, 10n), repeats: 2 });
    expect(combinedUncertainty([first, { kind: "not-given" }])).toEqual({ kind: "not-given" });
    expect(combinedUncertainty([])).toEqual({ kind: "not-given" });
  });

  test("does not depend on the unit nor on the order, and holds every repeat", () => {
    fc.assert(
      fc.property(fc.array(anyRational(1n), { minLength: 2, maxLength: 6 }), anyRational(1n), (values, unit) => {
        const largest = largestDistance(values);
        const scaled = values.map((value) => multiplyRational(value, unit)).reverse();
        expect(compareRational(largestDistance(scaled), largest)).toBe(0);
        const average = averageOf(values);
        const distances = values.map((value) => distanceFrom(average, value));
        const farther = (distance: Rational) => compareRational(multiplyRational(distance, distance), multiplyRational(largest, largest)) > 0;
        expect(distances.filter(farther)).toEqual([]);
        expect(compareRational(averageOf(distances), ZERO)).toBe(0);
      }),
    );
  });
});

test("percents are compared and said without a sign", () => {
  expect([decimal("0.1"), decimal("-0.1"), decimal("0.1001"), decimal("-0.1001")].map((part) => isMoreThanPercent(part, decimal("10")))).toEqual([false, false, true, true]);
  expect([percentInWords(decimal("-0.125")), percentInWords(decimal("0.1")), percentInWords(rational(1n, 3n)), percentInWords(rational(7n, 15n))]).toEqual(["12.5%", "10%", "33.3%", "46.7%"]);
});
