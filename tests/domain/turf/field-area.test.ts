import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { of, type Quantity } from "#domain/quantities/quantity";
import { compareRational, decimal, rational, toNumber } from "#domain/quantities/rational";
import { fromSignedAmount } from "#domain/quantities/signed-quantity";
import { type AreaMeasurement, lawnAreaOf, measureArea, type MeasuredShape } from "#domain/turf/field-area";
import { type Corner } from "#domain/turf/polygon-area";

const feet = (value: string) => of("ft", value);

function measured(shape: MeasuredShape): AreaMeasurement {
  const outcome = measureArea(shape);
  if (!outcome.ok) throw new Error(outcome.refusal.sentence);
  return outcome.value;
}

function corner(east: Quantity<"length">, north: Quantity<"length">): Corner {
  return { east: fromSignedAmount("length", east.amount), north: fromSignedAmount("length", north.amount) };
}

describe("shapes that must agree", () => {
  const length = fc
    .bigInt({ min: 10_000n, max: 10n ** 10n })
    .map((amount) => ({ dimension: "length" as const, amount }));

  test("a rectangle is two triangles, a trapezoid with equal sides, and its four corners", () => {
    fc.assert(
      fc.property(length, length, (long, wide) => {
        const { area } = measured({ kind: "rectangle", length: long, width: wide });
        const triangle = measured({ kind: "triangle", base: long, height: wide }).area;
        expect(triangle.amount * 2n - area.amount).toBeLessThanOrEqual(1n);
        expect(area.amount - triangle.amount * 2n).toBeLessThanOrEqual(1n);
        expect(measured({ kind: "trapezoid", parallelSides: [long, long], height: wide }).area).toEqual(area);
        const none = of("ft", 0n);
        const corners = [corner(none, none), corner(long, none), corner(long, wide), corner(none, wide)];
        expect(measured({ kind: "corners", corners }).area).toEqual(area);
      }),
    );
  });

  test("an oval with equal axes is a circle, and so is an average of equal radii", () => {
    fc.assert(
      fc.property(length, (radius) => {
        const across = { dimension: "length" as const, amount: radius.amount * 2n };
        const circle = measured({ kind: "circle", radius }).area;
        expect(measured({ kind: "oval", length: across, width: across }).area).toEqual(circle);
        const average = measured({ kind: "average radius", radii: [radius, radius, radius, radius] });
        expect(average.area).toEqual(circle);
        if (average.uncertainty.kind !== "from-measurements") throw new Error("the radii give their own uncertainty");
        expect(compareRational(average.uncertainty.part, rational(0n))).toBe(0);
      }),
    );
  });

  test("the sum of widths is the trapezoids of the same widths with a point a step past each end", () => {
    fc.assert(
      fc.property(length, fc.array(length, { minLength: 2, maxLength: 12 }), (step, widths) => {
        const point = of("ft", 0n);
        expect(measured({ kind: "offsets, sum of widths", step, widths }).area).toEqual(
          measured({ kind: "offsets, trapezoids", step, widths: [point, ...widths, point] }).area,
        );
      }),
    );
  });

  test("trapezoids count the first and the last width half", () => {
    const widths = ["32", "50", "45", "17"].map(feet);
    const { area } = measured({ kind: "offsets, trapezoids", step: feet("10"), widths });
    expect(area).toEqual(of("sq ft", "1195"));
  });

  test("a rectangle measured in meters has the area of the same one in feet", () => {
    const us = measured({ kind: "rectangle", length: feet("100"), width: feet("50") }).area;
    const metric = measured({ kind: "rectangle", length: of("m", "30.48"), width: of("m", "15.24") }).area;
    expect(metric).toEqual(us);
    expect(us).toEqual(of("sq ft", 5000n));
  });
});

describe("uncertainty", () => {
  test("the rule of thumb for a circle is within five percent, which it states", () => {
    const rule = measured({ kind: "circle by rule of thumb", diameter: feet("50") });
    if (rule.uncertainty.kind !== "stated") throw new Error("the source states it");
    expect(compareRational(rule.uncertainty.part, decimal("0.05"))).toBe(0);
    const circle = measured({ kind: "circle", radius: feet("25") });
    expect(Math.abs(Number(rule.area.amount) / Number(circle.area.amount) - 1)).toBeLessThan(0.05);
  });

  test("uneven radii say how far the squares' average lies above", () => {
    const uneven = measured({ kind: "average radius", radii: ["30", "40", "50", "40"].map(feet) });
    if (uneven.uncertainty.kind !== "from-measurements") throw new Error("the radii give their own uncertainty");
    // Squares average 1650, the average squared is 1600.
    expect(toNumber(uneven.uncertainty.part)).toBeCloseTo(50 / 1600, 12);
  });

  test("a method that gives none says so", () => {
    expect(measured({ kind: "rectangle", length: feet("10"), width: feet("10") }).uncertainty.kind).toBe("not-given");
  });
});

describe("what is refused", () => {
  test("too few of anything, counted in words", () => {
    const said = (shape: MeasuredShape) => {
      const outcome = measureArea(shape);
      return outcome.ok ? "" : outcome.refusal.sentence;
    };
    const [one, here] = [feet("10"), corner(feet("0"), feet("0"))];
    expect(said({ kind: "offsets, trapezoids", step: one, widths: [one] })).toBe("1 width is not enough to make an area; measure at least 2.");
    expect(said({ kind: "average radius", radii: [one] })).toBe("1 radius is not enough to make an area; measure at least 4.");
    expect(said({ kind: "average radius", radii: [one, one] })).toBe("2 radii are not enough to make an area; measure at least 4.");
    expect(said({ kind: "corners", corners: [here] })).toBe("1 corner is not enough to make an area; measure at least 3.");
  });

  const square = [corner(feet("0"), feet("0")), corner(feet("10"), feet("0")), corner(feet("10"), feet("10"))];
  test.each<[string, MeasuredShape, string]>([
    ["no width", { kind: "rectangle", length: feet("10"), width: feet("0") }, "area"],
    ["one width", { kind: "offsets, trapezoids", step: feet("10"), widths: [feet("10")] }, "widths"],
    ["no widths", { kind: "offsets, sum of widths", step: feet("10"), widths: [] }, "widths"],
    ["three radii", { kind: "average radius", radii: ["1", "2", "3"].map(feet) }, "radii"],
    ["radii of nothing", { kind: "average radius", radii: ["0", "0", "0", "0"].map(feet) }, "area"],
    ["corners in line", { kind: "corners", corners: ["0", "10", "5"].map((east) => corner(feet(east), feet("0"))) }, "area"],
    ["two corners", { kind: "corners", corners: square.slice(0, 2) }, "corners"],
    [
      "two corners and the first again",
      { kind: "corners", corners: [...square.slice(0, 2), ...square.slice(0, 1)] },
      "corners",
    ],
    ["crossing sides", { kind: "corners", corners: [...square, corner(feet("5"), feet("0"))] }, "corners"],
  ])("%s", (_name, shape, field) => {
    expect(measureArea(shape)).toMatchObject({ ok: false, refusal: { field } });
  });

  test("a length that is none throws", () => {
    const area = of("sq ft", 1n) as unknown as Quantity<"length">;
    expect(() => measureArea({ kind: "circle", radius: area })).toThrow(BrokenInvariant);
  });
});

describe("a lawn of several pieces", () => {
  const lawn = {
    use: "lawn",
    measurement: measured({ kind: "rectangle", length: feet("100"), width: feet("50") }),
  } as const;
  const bed = {
    use: "cut-out",
    measurement: measured({ kind: "rectangle", length: feet("20"), width: feet("10") }),
  } as const;

  test("is its pieces less its cut-outs", () => {
    expect(lawnAreaOf([lawn, lawn, bed])).toEqual({ ok: true, value: of("sq ft", 9800n) });
    expect(lawnAreaOf([lawn, bed])).toEqual({ ok: true, value: of("sq ft", 4800n) });
    expect(lawnAreaOf([])).toEqual({ ok: true, value: of("sq ft", 0n) });
  });

  test("can't be smaller than what is cut out of it", () => {
    expect(lawnAreaOf([bed])).toMatchObject({ ok: false, refusal: { field: "cut-outs" } });
  });
});
