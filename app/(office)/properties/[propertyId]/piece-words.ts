import { type PieceMeasure, type PieceShape, type PieceUse } from "#domain/properties/lawn-pieces";

export const USE_WORDS: Readonly<Record<PieceUse, string>> = { lawn: "Lawn", "cut-out": "Cut out", water: "Water" };

export const SHAPE_WORDS: Readonly<Record<PieceShape, string>> = {
  rectangle: "Rectangle",
  offsets: "Widths along a line",
  triangle: "Triangle",
  trapezoid: "Trapezoid",
  circle: "Circle",
  "average-radius": "Distances from a middle",
  corners: "Corners",
};

/** What to do on the ground to get the figures of a shape. */
export const SHAPE_SENTENCES: Readonly<Record<PieceShape, string>> = {
  rectangle: "Measure two sides that meet at a right angle.",
  offsets: "Walk a straight line through the lawn or along its straight edge, and measure across at even steps.",
  triangle: "Measure one side, and straight across from it to the corner that is farthest.",
  trapezoid: "Measure the two parallel sides, and straight across between them.",
  circle: "Measure from the middle to the edge.",
  "average-radius": "Stand in the middle, and measure to the edge at even angles all the way round.",
  corners: "Give each corner by how far east and how far north of one fixed point it lies, in order round the lawn.",
};

interface MeasureWords {
  readonly label: string;
  readonly hint?: string;
}

/** The label and the hint of each measure that is typed; the rest are choices. */
export const MEASURE_WORDS: Readonly<Record<Exclude<PieceMeasure, "ends" | "line">, MeasureWords>> = {
  length: { label: "Length", hint: "To the east on the plan. A number alone is feet; 12 ft 6 in is read too." },
  width: { label: "Width", hint: "To the north on the plan." },
  base: { label: "Base" },
  height: { label: "Straight across" },
  side: { label: "One parallel side" },
  otherSide: { label: "The other parallel side" },
  radius: { label: "Middle to edge" },
  step: { label: "From one width to the next" },
  widths: { label: "Widths, in their order", hint: "With commas between, for example: 18, 22, 25 ft 6 in, 24." },
  radii: { label: "Distances from the middle", hint: "Four or more, with commas between, at even angles." },
  corners: { label: "Corners", hint: "One corner a line: how far east, a comma, how far north." },
};
