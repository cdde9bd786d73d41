import { averageMeasure, percentInWords } from "#domain/equipment/repeats";
import { rectangleArea } from "#domain/equipment/measured-space";
import { invariant } from "#domain/foundation/invariant";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { type WorkingInput } from "#domain/foundation/working";
import { inUnit as inUnitOfStep, sumLine } from "#domain/mixing/ticket-working-words";
import { type DrawnPiece, drawPiece, type OffsetLine } from "#domain/properties/piece-outline";
import { addExact, compareExact, exactly, type ExactQuantity, type Measure, multiplyExact, settle, sumExact } from "#domain/quantities/exact-quantity";
import { sensibleDecimals } from "#domain/quantities/format-number";
import { formatQuantity, formatQuantityIn, writeQuantityIn } from "#domain/quantities/format-quantity";
import { lengthParts, type LengthsField } from "#domain/quantities/list-of-lengths";
import { inUnit, type Quantity } from "#domain/quantities/quantity";
import { type Rational } from "#domain/quantities/rational";
import { type AreaMeasurement, FARTHEST_FEET, measureArea, type MeasuredShape } from "#domain/turf/field-area";
import { withTyped } from "#domain/worksheets/figure-words";
import { readAmountField, readChoice, readListField, readTogether, refuseOne } from "#domain/worksheets/read-fields";
import { type Refusals, type Typed, type WorkedWorksheet, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";

/** How a shape that was measured by its widths ends: at the first and last width, or in a point one step beyond. */
const OFFSET_ENDS = ["widths", "points"] as const;

/** The fields of each shape. */
export type RectangleField = "length" | "width";
export type TriangleField = "base" | "height";
export type TrapezoidField = "side" | "otherSide" | "height";
export type CircleField = "radius";
export type OffsetsField = "step" | "widths" | "ends" | "line";
export type AverageRadiusField = "radii";

/** A worked area with its outline to scale. */
export interface WorkedArea extends WorkedWorksheet {
  readonly drawn: DrawnPiece;
  readonly squareFeet: Rational;
}

const GROUNDS = "Grounds Maintenance, Calculate areas, http://grounds-mag.com/mag/grounds_maintenance_calculate_areas/";
const COMMON = "common practice";

export const RECTANGLE_EXAMPLE: WorksheetExample<RectangleField> = { typed: { length: "90 ft", width: "50 ft" }, from: GROUNDS };
export const TRIANGLE_EXAMPLE: WorksheetExample<TriangleField> = { typed: { base: "125 ft", height: "75 ft" }, from: GROUNDS };
export const TRAPEZOID_EXAMPLE: WorksheetExample<TrapezoidField> = { typed: { side: "50 ft", otherSide: "70 ft", height: "30 ft" }, from: GROUNDS };
export const CIRCLE_EXAMPLE: WorksheetExample<CircleField> = { typed: { radius: "30 ft" }, from: `${GROUNDS}, which takes 3.14 for pi and prints 2,826` };
export const OFFSETS_EXAMPLE: WorksheetExample<OffsetsField> = { typed: { step: "10 ft", widths: "32, 50, 45, 17", ends: "points", line: "edge" }, from: GROUNDS };
export const AVERAGE_RADIUS_EXAMPLE: WorksheetExample<AverageRadiusField> = { typed: { radii: "32, 36, 41, 38, 33, 30, 29, 31" }, from: "made up" };

/** One shape's words: what the formula is, what was measured, how it goes step by step. */
interface Told {
  readonly shape: MeasuredShape;
  readonly title: string;
  readonly formula: string;
  readonly inputs: readonly WorkingInput[];
  readonly steps: (area: string) => readonly string[];
  readonly source: string;
  readonly offsetLine?: OffsetLine;
}

type Length = ExactQuantity<"length">;

const FARTHEST = exactly("ft", BigInt(FARTHEST_FEET));

function readSide(field: string, what: string, text: string): Outcome<Length> {
  const read = readAmountField({ field, what, such: "40 ft or 12 ft 6 in" }, text, { dimension: "length", unitWhenNone: "ft" });
  if (!read.ok || compareExact(read.value, FARTHEST) <= 0) return read;
  return badInput(field, text.trim(), "up to 10,000 ft", `"${text.trim()}" is longer than any lawn.`);
}

function readSides(field: string, what: string, text: string): Outcome<readonly [Length, ...Length[]]> {
  const parts = lengthParts(text, inFeet(field));
  return parts.ok ? readListField({ field, what, such: "32, 50, 45, 17" }, parts.value, (part) => readSide(field, what, part)) : parts;
}

function inFeet(field: string): LengthsField {
  return { field, unitWhenNone: "ft" };
}

/** Sides that were read, as they were typed and each with its unit. */
function typedSides(field: string, text: string): readonly string[] {
  const parts = lengthParts(text, inFeet(field));
  invariant(parts.ok, "the sides were read");
  return parts.value;
}

function whole(length: Length): Quantity<"length"> {
  return settle(length, "nearest");
}

const HALF = { numerator: 1n, denominator: 2n };

/** A length in a line of arithmetic, to a thousandth of a foot or finer. */
function feet(length: Length): string {
  return inUnitOfStep(length, "ft");
}

/** An area in a line of arithmetic: always in square feet. */
function squareFeet(area: Measure<"area">): string {
  return inUnitOfStep(area, "sq ft");
}

/** The sides as they go in, each with what was typed where that reads differently. */
function typedFeet(lengths: readonly Length[], typed: readonly string[]): string {
  return lengths.map((length, place) => withTyped(feet(length), typed[place] ?? "")).join(", ");
}

/** The digits of a pocket calculator. */
const PI_WORDS = "3.1415927";

function finish(told: Told, fieldOf: (refused: string) => string): WorksheetOutcome<WorkedArea> {
  const measured = measureArea(told.shape);
  if (!measured.ok) return refuseOne({ ...measured.refusal, field: fieldOf(measured.refusal.field) });
  const { area } = measured.value;
  const steps = [...told.steps(squareFeet(area)), ...spreadStep(measured.value)];
  const answer = writeQuantityIn(area, "sq ft", Math.min(1, sensibleDecimals(inUnit(area, "sq ft"))));
  const otherWords = `${formatQuantityIn(area, "acre", 3)}, ${formatQuantity(area, "metric")}`;
  return accept({
    answers: [{ ...answer, of: otherWords }],
    working: {
      title: `Area of a ${told.title.toLowerCase()}`,
      formula: told.formula,
      inputs: told.inputs,
      steps: [...steps, `In acres: ${squareFeet(area)} ÷ 43,560 sq ft = ${inUnitOfStep(area, "acre")}.`],
      result: `${answer.figure} ${answer.unit} (${otherWords}).`,
      source: told.source,
    },
    findings: [],
    tables: [],
    drawn: drawPiece(told.shape, told.offsetLine ?? "edge"),
    squareFeet: inUnit(area, "sq ft"),
  });
}

/** How far the radii differ is how far this method may be off. */
function spreadStep({ uncertainty }: AreaMeasurement): readonly string[] {
  return uncertainty.kind === "from-measurements" ? [`Going by how the distances differ, it may be off by ${percentInWords(uncertainty.part)}. The more distances, the better.`] : [];
}

/**
 * Length times width, in square feet. Refused by field: what is missing or no length, and a side of nothing or over
 * 10,000 ft.
 */
export function rectangleWorksheet(typed: Typed<RectangleField>): WorksheetOutcome<WorkedArea> {
  const read = readTogether({ length: readSide("length", "the length", typed.length), width: readSide("width", "the width", typed.width) });
  if (!read.ok) return read;
  const { length, width } = read.value;
  return finish(
    {
      shape: { kind: "rectangle", length: whole(length), width: whole(width) },
      title: "Rectangle",
      formula: "Area = length × width.",
      inputs: [{ name: "Length", figure: withTyped(feet(length), typed.length) }, { name: "Width", figure: withTyped(feet(width), typed.width) }],
      steps: (area) => [`${feet(length)} × ${feet(width)} = ${area}.`],
      source: GROUNDS,
    },
    () => "length",
  );
}

/** Half of base times height. Refused by field. Refuses as rectangleWorksheet does. */
export function triangleWorksheet(typed: Typed<TriangleField>): WorksheetOutcome<WorkedArea> {
  const read = readTogether({ base: readSide("base", "the base", typed.base), height: readSide("height", "the height over the base", typed.height) });
  if (!read.ok) return read;
  const { base, height } = read.value;
  return finish(
    {
      shape: { kind: "triangle", base: whole(base), height: whole(height) },
      title: "Triangle",
      formula: "Area = base × height ÷ 2. The height stands square on the base.",
      inputs: [{ name: "Base", figure: withTyped(feet(base), typed.base) }, { name: "Height", figure: withTyped(feet(height), typed.height) }],
      steps: (area) => [`${feet(base)} × ${feet(height)} = ${squareFeet(rectangleArea(base, height))}.`, `Half of it: ${squareFeet(rectangleArea(base, height))} ÷ 2 = ${area}.`],
      source: GROUNDS,
    },
    () => "base",
  );
}

/**
 * Half of the sum of the parallel sides, times the distance between them. Refused by field. Refuses as
 * rectangleWorksheet does.
 */
export function trapezoidWorksheet(typed: Typed<TrapezoidField>): WorksheetOutcome<WorkedArea> {
  const read = readTogether({
    side: readSide("side", "one of the parallel sides", typed.side),
    otherSide: readSide("otherSide", "the other parallel side", typed.otherSide),
    height: readSide("height", "the distance between them", typed.height),
  });
  if (!read.ok) return read;
  const { side, otherSide, height } = read.value;
  const sum = addExact(side, otherSide);
  return finish(
    {
      shape: { kind: "trapezoid", parallelSides: [whole(side), whole(otherSide)], height: whole(height) },
      title: "Trapezoid",
      formula: "Area = (one parallel side + the other) ÷ 2 × the distance between them.",
      inputs: [{ name: "Parallel sides", figure: typedFeet([side, otherSide], [typed.side, typed.otherSide]) }, { name: "Distance between them", figure: withTyped(feet(height), typed.height) }],
      steps: (area) => [`${feet(side)} + ${feet(otherSide)} = ${feet(sum)}.`, `Half of it: ${feet(sum)} ÷ 2 = ${feet(multiplyExact(sum, HALF))}.`, `${feet(multiplyExact(sum, HALF))} × ${feet(height)} = ${area}.`],
      source: GROUNDS,
    },
    () => "side",
  );
}

/** Pi times the radius squared. Refused by field. Refuses as rectangleWorksheet does. */
export function circleWorksheet(typed: Typed<CircleField>): WorksheetOutcome<WorkedArea> {
  const read = readTogether({ radius: readSide("radius", "the radius", typed.radius) });
  if (!read.ok) return read;
  const { radius } = read.value;
  return finish(
    {
      shape: { kind: "circle", radius: whole(radius) },
      title: "Circle",
      formula: `Area = pi × radius × radius, with pi = ${PI_WORDS}.`,
      inputs: [{ name: "Radius (half of the way across)", figure: withTyped(feet(radius), typed.radius) }],
      steps: (area) => [`${feet(radius)} × ${feet(radius)} = ${squareFeet(rectangleArea(radius, radius))}.`, `${squareFeet(rectangleArea(radius, radius))} × ${PI_WORDS} = ${area}.`],
      source: GROUNDS,
    },
    () => "radius",
  );
}

function readOffsets(typed: Typed<OffsetsField>) {
  return readTogether({
    step: readSide("step", "the distance from one width to the next", typed.step),
    widths: readSides("widths", "the widths in their order", typed.widths),
    ends: readChoice("ends", typed.ends, OFFSET_ENDS),
    line: readChoice("line", typed.line, ["edge", "middle"] as const),
  });
}

/**
 * Widths at even steps along a line: all of them where it ends in points, else the first and the last half. Refused by
 * field: what rectangleWorksheet refuses, under two widths, and no answer about the ends or the line. Source of the sum
 * of widths: Grounds Maintenance, Calculate areas; of the halves: common practice.
 */
export function offsetsWorksheet(typed: Typed<OffsetsField>): WorksheetOutcome<WorkedArea> {
  const read = readOffsets(typed);
  if (!read.ok) return read;
  const { step, widths, ends, line } = read.value;
  const isPointed = ends === "points";
  const [first, last] = [widths[0], widths.at(-1) ?? widths[0]];
  const counted = isPointed ? sumExact("length", widths) : sumExact("length", [...widths.slice(1, -1), multiplyExact(first, HALF), multiplyExact(last, HALF)]);
  const list = widths.map(feet).join(" + ");
  const halved = [`${feet(first)} ÷ 2`, ...widths.slice(1, -1).map(feet), `${feet(last)} ÷ 2`].join(" + ");
  return finish(
    {
      shape: { kind: isPointed ? "offsets, sum of widths" : "offsets, trapezoids", step: whole(step), widths: widths.map(whole) },
      title: "Shape by its widths",
      formula: isPointed ? "Area = sum of the widths × the step. The shape ends in a point one step past each end." : "Area = (half the first width + all between + half the last) × the step.",
      inputs: [{ name: "From width to width", figure: withTyped(feet(step), typed.step) }, { name: "Widths", figure: typedFeet(widths, typedSides("widths", typed.widths)) }, { name: "Ends", figure: isPointed ? "in a point one step past each end" : "at the first and the last width" }],
      steps: (area) => [`${isPointed ? list : halved} = ${feet(counted)}.`, `${feet(counted)} × ${feet(step)} = ${area}.`],
      source: isPointed ? GROUNDS : COMMON,
      offsetLine: line,
    },
    (refused) => (refused === "widths" ? "widths" : "step"),
  );
}

/**
 * Pi times the square of the average distance from the middle to the edge. Refused by field: what rectangleWorksheet
 * refuses, and under four. Common practice.
 */
export function averageRadiusWorksheet(typed: Typed<AverageRadiusField>): WorksheetOutcome<WorkedArea> {
  const read: Outcome<{ readonly radii: readonly [Length, ...Length[]] }, Refusals> = readTogether({ radii: readSides("radii", "the distances from the middle to the edge", typed.radii) });
  if (!read.ok) return read;
  const { radii } = read.value;
  const average = averageMeasure("length", radii);
  return finish(
    {
      shape: { kind: "average radius", radii: radii.map(whole) },
      title: "Round shape by its average radius",
      formula: `Area = pi × average distance × average distance, with pi = ${PI_WORDS}. The distances go from one middle point to the edge, at even angles.`,
      inputs: [{ name: "Distances to the edge", figure: typedFeet(radii, typedSides("radii", typed.radii)) }],
      steps: (area) => [
        `All together: ${sumLine(radii, sumExact("length", radii), "ft")}.`,
        `Average of the ${radii.length} distances: ${feet(sumExact("length", radii))} ÷ ${radii.length} = ${feet(average)}.`,
        `${feet(average)} × ${feet(average)} = ${squareFeet(rectangleArea(average, average))}.`,
        `${squareFeet(rectangleArea(average, average))} × ${PI_WORDS} = ${area}.`,
      ],
      source: COMMON,
    },
    () => "radii",
  );
}
