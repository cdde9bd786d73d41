import { describe, expect, test } from "vitest";
import { PIECE_MEASURES, PIECE_SHAPES, readLawn, readLawnPiece, SHAPE_MEASURES, type TypedPiece } from "#domain/properties/lawn-pieces";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { of } from "#domain/quantities/quantity";
import { refusalOf, valueOf } from "../../support/domain-answers";

const PLACE = { use: "lawn", name: "", x: "0", y: "0", turn: "0" } as const;

/** Twice the floating area of an outline, for holding the drawing against the exact figure. */
function drawnSquareFeet(piece: TypedPiece): number {
  const { outline } = valueOf(readLawnPiece(piece)).drawn;
  const twice = outline.reduce((total, { x, y }, index) => {
    const next = outline[(index + 1) % outline.length] ?? { x: 0, y: 0 };
    return total + x * next.y - next.x * y;
  }, 0);
  return Math.abs(twice) / 2;
}

const EXAMPLES: readonly (readonly [string, TypedPiece, number])[] = [
  ["rectangle", { ...PLACE, shape: "rectangle", length: "40", width: "60 ft" }, 2400],
  ["rectangle in feet and inches", { ...PLACE, shape: "rectangle", length: "12' 6\"", width: "10" }, 125],
  ["triangle", { ...PLACE, shape: "triangle", base: "40", height: "30" }, 600],
  ["trapezoid", { ...PLACE, shape: "trapezoid", side: "40", otherSide: "20", height: "10" }, 300],
  ["offsets that end at a width, from an edge", { ...PLACE, shape: "offsets", step: "10", widths: "20, 24, 20", ends: "widths", line: "edge" }, 440],
  ["offsets that end at a width, from the middle", { ...PLACE, shape: "offsets", step: "10", widths: "20; 24; 20", ends: "widths", line: "middle" }, 440],
  ["offsets that end in points", { ...PLACE, shape: "offsets", step: "10", widths: "20, 24, 20", ends: "points", line: "middle" }, 640],
  ["corners", { ...PLACE, shape: "corners", corners: "0, 0\n40, 0\n40 ft, 30 ft\n0, 30" }, 1200],
  ["corners to the west and south", { ...PLACE, shape: "corners", corners: "-20, -10; 20, -10; 20, 10; -20, 10" }, 800],
];

test.each(EXAMPLES)("%s: the area is exact and the drawing has the same", (_name, piece, squareFeet) => {
  expect(valueOf(readLawnPiece(piece)).measurement.area).toEqual(of("sq ft", BigInt(squareFeet)));
  expect(drawnSquareFeet(piece)).toBeCloseTo(squareFeet, 6);
});

describe("a unit after the last length is that of all", () => {
  const same = (piece: TypedPiece, spelled: TypedPiece) => expect(valueOf(readLawnPiece(piece))).toEqual(valueOf(readLawnPiece(spelled)));

  test("of widths and radii", () => {
    const offsets = { ...PLACE, shape: "offsets", step: "3 m", ends: "widths", line: "edge" } as const;
    same({ ...offsets, widths: "10, 12, 11, 9 m" }, { ...offsets, widths: "10 m, 12 m, 11 m, 9 m" });
    same({ ...PLACE, shape: "average-radius", radii: "10, 11, 12, 10 m" }, { ...PLACE, shape: "average-radius", radii: "10 m, 11 m, 12 m, 10 m" });
  });

  test.each(["0, 0; 12, 0; 12, 9; -1, 9 m", "0, 0 m; 12, 0 m; 12, 9 m; -1, 9 m", "0, 0\n12 m, 0\n12, 9 m\n-1, 9 m", "0, 0; -1, 9; 12, 9; 12, 0 m"])("of corners: %j", (corners) => {
    const meters = valueOf(readLawnPiece({ ...PLACE, shape: "corners", corners: "0 m, 0 m; 12 m, 0 m; 12 m, 9 m; -1 m, 9 m" })).measurement;
    expect(valueOf(readLawnPiece({ ...PLACE, shape: "corners", corners })).measurement).toEqual(meters);
  });

  test.each([
    ["widths", { shape: "offsets", step: "3 m", widths: "10 m, 12, 11, 9" }],
    ["radii", { shape: "average-radius", radii: "10, 11 m, 12, 10 m" }],
    ["corners", { shape: "corners", corners: "0, 0; 12 m, 0; 12, 9; 0, 9" }],
    ["corners", { shape: "corners", corners: "0, 0; 12 m, 4; 12 m, 9 m" }],
  ] as const)("and is asked about where others have none: %s of %o", (field, piece) => {
    expect(refusalOf(readLawnPiece({ ...PLACE, ...piece }))).toMatchObject({ field, sentence: expect.stringMatching(/a unit after each/u) as string });
  });
});

describe("the corners of a rectangle", () => {
  const area = (corners: string) => valueOf(readLawnPiece({ ...PLACE, shape: "corners", corners })).measurement.area;

  test.each([
    "0, 0; 40 1/2, 0; 40 1/2, 20; 0, 20",
    "0, 0; 40\u00BD, 0; 40-\u00BD, 20; 0, 20",
    "0, 0; 40 ft 6 in, 0; 40 ft 6 in, 20 ft; 0, 20 ft",
    "0, 0; 40' 6\", 0; 40'6, 20; 0, 20",
    "0 0\n40 1/2 0\n40 1/2 20\n0 20",
    "0 0\n40.5 0\n40 ft 6 in 20 ft\n0 20 ft",
    "0 0; -40.5 0; -40 1/2 -20; 0 -20",
    "0,0;40.5,0;40.5,20;0,20",
  ])("hold mixed numbers, feet and inches: %j", (corners) => expect(area(corners)).toEqual(of("sq ft", 810n)));

  test("of large grounds may be written with a comma or without", () => {
    for (const corners of ["0, 0; 1,250, 0; 1,250, 250; 0, 250", "0 0; 1250 0; 1250 250; 0 250"]) expect(area(corners)).toEqual(of("sq ft", 312_500n));
    expect(area("0 0; 9 0; 9 250; 0 250")).toEqual(of("sq ft", 2250n));
  });

  test.each(["40 1/2", "40 ft 6 in", "40' 6\"", "40", "1 2 3", "40 - 25", "1,250,300", "1 200 300", "40, 25, 30"])("%j alone is no corner, and a comma is asked for", (corner) => {
    expect(refusalOf(readLawnPiece({ ...PLACE, shape: "corners", corners: `0, 0; ${corner}; 40, 20` }))).toMatchObject({ field: "corners", found: corner, sentence: expect.stringMatching(/with a comma between/u) as string });
  });
});

test("a circle and an average radius are drawn within one percent of their area", () => {
  const circle: TypedPiece = { ...PLACE, shape: "circle", radius: "10" };
  expect(formatQuantityIn(valueOf(readLawnPiece(circle)).measurement.area, "sq ft", 1)).toBe("314.2 sq ft");
  expect(drawnSquareFeet(circle) / 314.159).toBeGreaterThan(0.99);
  const radii: TypedPiece = { ...PLACE, shape: "average-radius", radii: Array.from({ length: 36 }, () => "10").join(", ") };
  expect(drawnSquareFeet(radii) / 314.159).toBeGreaterThan(0.99);
});

test("where a piece lies and how it is turned moves the drawing and never the area", () => {
  const piece: TypedPiece = { ...PLACE, shape: "rectangle", length: "40", width: "10", x: "-5", y: "12 ft", turn: "90" };
  const { drawn, measurement } = valueOf(readLawnPiece(piece));
  expect(measurement.area).toEqual(of("sq ft", 400n));
  expect(drawn.outline.map(({ x, y }) => [Math.round(x), Math.round(y)])).toEqual([[-5, 12], [-5, 52], [-15, 52], [-15, 12]]);
});

describe("refused at the field that is wrong", () => {
  test.each([
    ["length", { shape: "rectangle", width: "10" }], ["width", { shape: "rectangle", length: "10", width: "wide" }], ["width", { shape: "rectangle", length: "10", width: "0" }],
    ["radius", { shape: "circle", radius: "5 gal" }], ["widths", { shape: "offsets", step: "10", widths: "20" }], ["widths", { shape: "offsets", step: "10", widths: "" }],
    ["step", { shape: "offsets", step: "", widths: "20, 20" }], ["step", { shape: "offsets", step: "10", widths: "0, 0" }],
    ["radii", { shape: "average-radius", radii: "10, 10, 10" }], ["corners", { shape: "corners", corners: "0,0; 10,0" }],
    ["corners", { shape: "corners", corners: "0,0; 10,10; 10,0; 0,10" }], ["corners", { shape: "corners", corners: "0,0; 10; 10,10" }],
    ["height", { shape: "triangle", base: "10", height: "11,000" }], ["x", { shape: "circle", radius: "5", x: "far" }], ["turn", { shape: "circle", radius: "5", turn: "left" }],
    ["turn", { shape: "circle", radius: "5", turn: "361" }],
  ] as const)("%s", (field, piece) => {
    expect(refusalOf(readLawnPiece({ ...PLACE, ...piece })).field).toBe(field);
  });
});

test("of several lengths the complaint names the one that can't be read", () => {
  for (const wrong of ["wide", "12 gal", "9.9.9"]) {
    const refusal = refusalOf(readLawnPiece({ ...PLACE, shape: "offsets", step: "10", widths: `20, ${wrong}, 22`, ends: "widths", line: "edge" }));
    expect(refusal).toMatchObject({ field: "widths", found: wrong });
    expect(refusal.sentence).toContain(wrong);
  }
});

describe("a lawn", () => {
  const lawn: TypedPiece = { ...PLACE, shape: "rectangle", length: "60", width: "40" };
  const bed: TypedPiece = { ...PLACE, use: "cut-out", name: "Rose bed", shape: "rectangle", length: "12", width: "10", x: "5", y: "5" };

  test("is its pieces less what is cut out", () => {
    const read = valueOf(readLawn([lawn, bed]));
    expect(read.area).toEqual(of("sq ft", 2280n));
    expect(read.pieces.map(({ use, name }) => [use, name])).toEqual([["lawn", ""], ["cut-out", "Rose bed"]]);
  });

  test("is refused without lawn, with more cut out than there is, and names the piece that is wrong", () => {
    expect(refusalOf(readLawn([])).field).toBe("pieces");
    expect(refusalOf(readLawn([bed])).field).toBe("cut-outs");
    expect(refusalOf(readLawn([lawn, { ...lawn, use: "cut-out" }])).field).toBe("pieces");
    expect(refusalOf(readLawn([lawn, { ...bed, width: "" }])).field).toBe("1.width");
  });
});

test("every shape has measures, and all of them stand in the list of measures once", () => {
  expect(new Set(PIECE_MEASURES)).toEqual(new Set(PIECE_SHAPES.flatMap((shape): readonly string[] => SHAPE_MEASURES[shape])));
  expect(new Set(PIECE_MEASURES).size).toBe(PIECE_MEASURES.length);
});
