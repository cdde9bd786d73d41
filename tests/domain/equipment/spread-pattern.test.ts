import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type PanLine } from "#domain/equipment/pan-line";
import {
  coefficientOfVariationPercent,
  judgeVariation,
  overlappedCatches,
  searchSwaths,
  USUAL_VARIATION_LIMIT,
  variationAtSwath,
} from "#domain/equipment/spread-pattern";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { exactly, measureInUnit, multiplyExact } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { addRational, compareRational, rational, toNumber, ZERO } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";

const line = (...catches: number[]): PanLine => ({
  spacing: of("ft", 1n),
  catches: catches.map((grams) => rational(BigInt(grams))),
  middle: (catches.length - 1) / 2,
});
const feet = (value: string) => exactly("ft", value);
const flat = line(0, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 0);
const triangle = line(0, 1, 2, 3, 4, 3, 2, 1, 0);
/** Falls off on the left only. */
const slanted = line(0, 1, 2, 3, 4, 4, 4, 4, 0);

const lawn = (pans: PanLine, swath: string, pattern: "round-and-round" | "back-and-forth" = "round-and-round") =>
  valueOf(overlappedCatches(pans, feet(swath), pattern)).map(toNumber);

describe("overlapped passes", () => {
  test("of a triangle come out even at half its foot", () => {
    expect(lawn(triangle, "4")).toEqual([4, 4, 4, 4]);
    expect(lawn(triangle, "2")).toEqual([8, 8]);
    expect(valueOf(variationAtSwath(triangle, feet("4"), "round-and-round")).variationPercent).toBe(0);
  });

  test("leave a gap where the swath is wider than the throw", () => {
    expect(lawn(triangle, "8")).toEqual([4, 3, 2, 1, 0, 1, 2, 3]);
  });

  test("lie right on left round and round, and right on right back and forth", () => {
    expect(lawn(slanted, "6")).toEqual([4, 4, 4, 5, 2, 3]);
    // Between the first pass and the turned one two good sides meet, on the other side of the first two thin ones.
    expect(lawn(slanted, "6", "back-and-forth")).toEqual([4, 4, 4, 8, 4, 4, 4, 3, 2, 2, 2, 3]);
  });

  test("lose and add nothing, whichever way they are driven, for any line and whole swath", () => {
    const pans = fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 5, maxLength: 15 });
    fc.assert(
      fc.property(pans, fc.nat(), fc.nat(), (grams, wide, place) => {
        const swath = 2 + (wide % (grams.length - 1));
        const middle = place % grams.length;
        const catches = grams.map((value, index) => rational(BigInt(index === middle ? value + 1 : value)));
        const drawn = { spacing: of("ft", 1n), catches, middle };
        const total = catches.reduce(addRational, ZERO);
        const roundAndRound = valueOf(overlappedCatches(drawn, feet(String(swath)), "round-and-round")).reduce(addRational, ZERO);
        const backAndForth = valueOf(overlappedCatches(drawn, feet(String(swath)), "back-and-forth")).reduce(addRational, ZERO);
        expect(compareRational(roundAndRound, total)).toBe(0);
        expect(compareRational(backAndForth, addRational(total, total))).toBe(0);
      }),
    );
  });

  test("of an even line are the same both ways", () => {
    const once = lawn(triangle, "5");
    expect(lawn(triangle, "5", "back-and-forth")).toEqual([...once, ...once]);
  });

  test("wider than the line of pans is refused, however wide", () => {
    for (const wide of ["9.1", "1000000000"]) {
      expect(refusalOf(overlappedCatches(triangle, feet(wide), "round-and-round"))).toMatchObject({ field: "swath", allowed: "up to 9 ft" });
      expect(refusalOf(variationAtSwath(triangle, feet(wide), "back-and-forth"))).toMatchObject({ field: "swath" });
    }
  });

  test("under two pan spacings, and of a line without a pattern, are refused", () => {
    expect(refusalOf(overlappedCatches(triangle, feet("1.9"), "round-and-round"))).toMatchObject({ field: "swath", allowed: "2 ft or more" });
    expect(refusalOf(variationAtSwath(triangle, feet("1.9"), "round-and-round")).field).toBe("swath");
    expect(refusalOf(overlappedCatches(line(0, 4, 0), feet("2"), "round-and-round")).field).toBe("catches");
    expect(refusalOf(searchSwaths(line(0, 4, 0), "round-and-round", 15)).field).toBe("catches");
  });
});

describe("the search", () => {
  const ranges = (limitPercent: number) =>
    valueOf(searchSwaths(flat, "round-and-round", limitPercent)).accepted.map(({ from, to }) => [from, to].map((swath) => toNumber(measureInUnit(swath, "ft"))));

  test("finds every range that is even enough, and does not take variation to rise with the swath", () => {
    const found = ranges(15);
    expect(found.length).toBeGreaterThan(1);
    expect(found.at(-1)).toEqual([10.5, 11]);
    const { table } = valueOf(searchSwaths(flat, "round-and-round", 15));
    const at = (swath: number) => table.find((row) => toNumber(measureInUnit(row.swath, "ft")) === swath)?.variationPercent ?? Number.NaN;
    expect([at(5.5) <= 15, at(8) > 15, at(11) <= 15, at(12) > 15]).toEqual([true, true, true, true]);
  });

  test("goes from two spacings to the length of the line, by halves", () => {
    const swaths = valueOf(searchSwaths(flat, "round-and-round", 15)).table.map(({ swath }) => toNumber(measureInUnit(swath, "ft")));
    expect(swaths).toEqual(Array.from({ length: 21 }, (_, index) => 2 + index / 2));
  });

  test("accepts nothing under an impossible limit and all without one", () => {
    expect(ranges(-1)).toEqual([]);
    expect(ranges(Number.POSITIVE_INFINITY)).toEqual([[2, 12]]);
  });
});

describe("the coefficient of variation", () => {
  test("is that of a sample", () => {
    expect(coefficientOfVariationPercent([9, 11])).toBeCloseTo(14.1421, 4);
    expect(coefficientOfVariationPercent([5, 5, 5])).toBe(0);
  });

  test("does not depend on the unit", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: 2, maxLength: 20 }), (values) => {
        expect(coefficientOfVariationPercent(values.map((value) => value * 28.35))).toBeCloseTo(coefficientOfVariationPercent(values), 9);
      }),
    );
  });

  test("throws for one value and for nothing", () => {
    expect(() => coefficientOfVariationPercent([5])).toThrow(BrokenInvariant);
    expect(() => coefficientOfVariationPercent([0, 0])).toThrow(BrokenInvariant);
  });
});

test("a striped swath is a finding with its figure, by the benchmark or the company's own limit", () => {
  const wide = { swath: multiplyExact(of("ft", 1n), rational(14n)), variationPercent: 15.04 };
  expect(judgeVariation({ ...wide, variationPercent: 15 }, USUAL_VARIATION_LIMIT)).toEqual([]);
  expect(judgeVariation(wide, USUAL_VARIATION_LIMIT)).toMatchObject([{ level: "take-care", source: "handbook", citation: USUAL_VARIATION_LIMIT.citation, figure: "The coefficient of variation is 15%; up to 15% is even enough." }]);
  expect(judgeVariation(wide, { percent: 10 })[0]).toMatchObject({ source: "house", what: "At a swath of 14 ft the spread comes out striped." });
  expect(judgeVariation(wide, { percent: 10 })[0]).not.toHaveProperty("citation");
});
