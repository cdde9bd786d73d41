import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { caughtAt, effectiveSwath, type PanLine, refusePanLine } from "#domain/equipment/pan-line";
import { addExact, compareExact } from "#domain/quantities/exact-quantity";
import { of, zero } from "#domain/quantities/quantity";
import { decimal, rational, reduce, ZERO } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";

const line = (...catches: number[]): PanLine => ({
  spacing: of("ft", 1n),
  catches: catches.map((grams) => decimal(String(grams))),
  middle: (catches.length - 1) / 2,
});
const even = line(0, 1, 2, 4, 4, 4, 2, 1, 0);

describe("the effective swath", () => {
  test("reaches to where half of the middle falls", () => {
    const swath = valueOf(effectiveSwath(even));
    expect(compareExact(swath.swath, of("ft", 4n))).toBe(0);
    expect(compareExact(swath.left, of("ft", 2n))).toBe(0);
    expect(swath.findings).toEqual([]);
  });

  test("is found between two pans on the straight line", () => {
    expect(compareExact(valueOf(effectiveSwath(line(0, 0, 4, 0, 0))).swath, of("ft", 1n))).toBe(0);
    expect(compareExact(valueOf(effectiveSwath(line(0, 1, 3, 4, 3, 1, 0))).swath, of("ft", 3n))).toBe(0);
  });

  test("of a spreader that throws to one side says so", () => {
    const swath = valueOf(effectiveSwath(line(0, 0, 2, 4, 4, 4, 4, 2, 0)));
    expect(compareExact(swath.left, of("ft", 2n))).toBe(0);
    expect(compareExact(swath.right, of("ft", 3n))).toBe(0);
    expect(swath.findings).toMatchObject([{ level: "take-care", rule: "spreader-throws-to-one-side", what: "The spreader throws farther to the right." }]);
  });

  test("of a line that ends while something still falls has a note", () => {
    expect(valueOf(effectiveSwath(line(0.5, 1, 2, 4, 2, 1, 0))).findings).toMatchObject([{ level: "note", rule: "pan-line-short" }]);
  });

  test("is left and right together, does not depend on the unit, and turns round with the line", () => {
    const side = fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(side, side, fc.integer({ min: 1, max: 400 }), fc.integer({ min: 2, max: 9 }), (left, right, middle, unit) => {
        const catches = [0, ...left, middle, ...right, 0].map((grams) => rational(BigInt(grams)));
        const drawn = { spacing: of("ft", 1n), catches, middle: left.length + 1 };
        const found = valueOf(effectiveSwath(drawn));
        expect(compareExact(found.swath, addExact(found.left, found.right))).toBe(0);
        const scaled = { ...drawn, catches: catches.map(({ numerator }) => rational(numerator * BigInt(unit), 7n)) };
        expect(compareExact(valueOf(effectiveSwath(scaled)).swath, found.swath)).toBe(0);
        const turned = valueOf(effectiveSwath({ ...drawn, catches: [...catches].reverse(), middle: right.length + 1 }));
        expect([compareExact(turned.left, found.right), compareExact(turned.right, found.left)]).toEqual([0, 0]);
      }),
    );
  });

  test("is refused when the line is too short", () => {
    expect(refusalOf(effectiveSwath(line(3, 4, 4, 2, 0)))).toMatchObject({ field: "catches", found: "more than half at the end on the left" });
    expect(refusalOf(effectiveSwath(line(0, 2, 4, 4, 3))).found).toContain("right");
  });
});

test("pans that are too few are counted in words", () => {
  expect(refusePanLine(line(4))?.refusal.sentence).toBe("1 pan shows no pattern; set out at least 5.");
  expect(refusePanLine(line(0, 4, 0))?.refusal.sentence).toBe("3 pans show no pattern; set out at least 5.");
});

test.each([
  ["catches", line(0, 4, 0)],
  ["catches", line(0, -1, 4, 0, 0)],
  ["catches", line(...Array.from({ length: 201 }, () => 1))],
  ["spacing", { ...even, spacing: zero("length") }],
  ["middle", { ...even, middle: 9 }],
  ["middle", { ...even, middle: 0 }],
])("a line without a pattern is refused: %s", (field, wrong) => {
  expect(refusePanLine(wrong)?.refusal.field).toBe(field);
  expect(refusalOf(effectiveSwath(wrong)).field).toBe(field);
});

test("what falls at a place is on the line between two pans, and nothing beyond them", () => {
  const places = ["-4.5", "-4", "-3.5", "0", "1.25", "4", "4.5"].map((place) => reduce(caughtAt(even, decimal(place))));
  expect(places).toEqual([ZERO, ZERO, rational(1n, 2n), rational(4n), rational(7n, 2n), ZERO, ZERO]);
  expect(refusePanLine(even)).toBeUndefined();
});
