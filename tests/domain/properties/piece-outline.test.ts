import { describe, expect, test } from "vitest";
import { drawPiece, placeOnPlan } from "#domain/properties/piece-outline";
import { of } from "#domain/quantities/quantity";
import { signed } from "#domain/quantities/signed-quantity";

const feet = (value: string) => of("ft", value);

describe("measured lines say what was walked", () => {
  test.each([
    ["rectangle", drawPiece({ kind: "rectangle", length: feet("40"), width: feet("25") }, "edge"), [40, 25]],
    ["triangle", drawPiece({ kind: "triangle", base: feet("40"), height: feet("25") }, "edge"), [40, 25]],
    ["trapezoid", drawPiece({ kind: "trapezoid", parallelSides: [feet("40"), feet("30")], height: feet("25") }, "edge"), [40, 30, 25]],
    ["circle", drawPiece({ kind: "circle", radius: feet("7") }, "edge"), [7]],
    ["offsets", drawPiece({ kind: "offsets, trapezoids", step: feet("10"), widths: [feet("20"), feet("0"), feet("15")] }, "edge"), [20, 20, 15]],
    ["pointed offsets", drawPiece({ kind: "offsets, sum of widths", step: feet("10"), widths: [feet("20"), feet("15")] }, "middle"), [30, 20, 15]],
  ] as const)("%s", (_name, piece, lengths) => {
    expect(piece.measuredLines.map((line) => Math.round(line.feet))).toEqual(lengths);
    for (const { from, to, feet: length } of piece.measuredLines) expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeCloseTo(length, 9);
  });
});

test("offsets from an edge keep that edge straight; from the middle they reach to both sides", () => {
  const shape = { kind: "offsets, trapezoids", step: feet("10"), widths: [feet("20"), feet("30")] } as const;
  expect(drawPiece(shape, "edge").outline).toEqual([{ x: 0, y: 0 }, { x: 10, y: 0 }, { x: 10, y: 30 }, { x: 0, y: 20 }]);
  expect(drawPiece(shape, "middle").outline).toEqual([{ x: 0, y: -10 }, { x: 10, y: -15 }, { x: 10, y: 15 }, { x: 0, y: 10 }]);
});

test("rules of thumb and ovals are drawn as what they stand for", () => {
  const bounds = (piece: { readonly outline: readonly { readonly x: number }[] }) => Math.round(Math.max(...piece.outline.map(({ x }) => x)));
  expect(bounds(drawPiece({ kind: "circle by rule of thumb", diameter: feet("20") }, "edge"))).toBe(10);
  expect(bounds(drawPiece({ kind: "oval", length: feet("40"), width: feet("20") }, "edge"))).toBe(20);
});

test("a turn keeps every measured length", () => {
  const piece = drawPiece({ kind: "rectangle", length: feet("40"), width: feet("25") }, "edge");
  const placed = placeOnPlan(piece, { x: signed(feet("3")), y: signed(feet("4")), turnDegrees: 33 });
  expect(placed.outline[0]).toEqual({ x: 3, y: 4 });
  for (const { from, to, feet: length } of placed.measuredLines) expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeCloseTo(length, 9);
});
