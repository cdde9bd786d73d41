import { capitalized } from "#domain/foundation/capitalized";
import { accept, badInput, type InputRefusal, type Outcome } from "#domain/foundation/outcome";
import { inOneUnit, lengthParts, type LengthsField } from "#domain/quantities/list-of-lengths";
import { parseLength } from "#domain/quantities/parse-length";
import { plainCharacters } from "#domain/quantities/parse-number";
import { decimal, toNumber } from "#domain/quantities/rational";
import { inUnit, isZero, type Quantity } from "#domain/quantities/quantity";
import { negate, signed, type SignedQuantity } from "#domain/quantities/signed-quantity";
import { type Corner } from "#domain/turf/polygon-area";
import { type AreaMeasurement, FARTHEST_FEET, lawnAreaOf, type MeasuredPiece, type MeasuredShape, measureArea } from "#domain/turf/field-area";
import { placeOnPlan, type DrawnPiece, drawPiece } from "#domain/properties/piece-outline";

/** The shapes in which lawns are measured, in the order in which they are offered. */
export const PIECE_SHAPES = ["rectangle", "offsets", "triangle", "trapezoid", "circle", "average-radius", "corners"] as const;
export type PieceShape = (typeof PIECE_SHAPES)[number];

/** Grass; a bed, house, drive or pool within it that is taken off; or water beside it, which is drawn and counts nothing. */
export const PIECE_USES = ["lawn", "cut-out", "water"] as const;
export type PieceUse = (typeof PIECE_USES)[number];

/** What is typed for each shape. `step` and `widths` go along a line; `corners` are pairs, east and north. */
export const SHAPE_MEASURES = {
  rectangle: ["length", "width"],
  offsets: ["step", "widths", "ends", "line"],
  triangle: ["base", "height"],
  trapezoid: ["side", "otherSide", "height"],
  circle: ["radius"],
  "average-radius": ["radii"],
  corners: ["corners"],
} as const satisfies Readonly<Record<PieceShape, readonly string[]>>;
/** The name of something that is typed of a piece. */
export type PieceMeasure = (typeof SHAPE_MEASURES)[PieceShape][number];
/** All of them, each once. */
export const PIECE_MEASURES: readonly PieceMeasure[] = [...new Set(PIECE_SHAPES.flatMap((shape): readonly PieceMeasure[] => SHAPE_MEASURES[shape]))];

/**
 * A piece as it is stored: every figure as it was typed. `x` and `y` say where its first corner (the middle of a circle,
 * the beginning of a line) lies on the plan, in feet east and north; `turn` how far it is turned, in degrees to the left.
 */
export type TypedPiece = {
  readonly use: PieceUse;
  readonly shape: PieceShape;
  readonly name: string;
  readonly x: string;
  readonly y: string;
  readonly turn: string;
} & Readonly<Partial<Record<PieceMeasure, string>>>;

/** A piece that was read: its exact area, and how it is drawn. */
export interface LawnPiece {
  readonly use: PieceUse;
  readonly measurement: AreaMeasurement;
  readonly name: string;
  readonly shape: PieceShape;
  readonly drawn: DrawnPiece;
}

type Length = Quantity<"length">;

function readLength(field: string, text: string | undefined, what: string): Outcome<Length> {
  const typed = (text ?? "").trim();
  if (typed === "") return badInput(field, "nothing", "a length, such as 40 ft or 12 ft 6 in", `Give ${what}.`);
  const read = parseLength(typed, { field, unitWhenNone: "ft" });
  if (!read.ok) {
    // Among several lengths it must be plain which one is meant.
    const { allowed, sentence } = read.refusal;
    return badInput(field, typed, allowed, sentence.includes(typed) ? sentence : `"${typed}" is no length. ${sentence}`);
  }
  if (inFeet(read.value.quantity) > FARTHEST_FEET) {
    return badInput(field, typed, "at most 10,000 ft", `"${typed}" is longer than any lawn.`);
  }
  return accept(read.value.quantity);
}

/** A length above zero: a side, a radius, a step. */
function readSide(field: string, text: string | undefined, what: string): Outcome<Length> {
  const read = readLength(field, text, what);
  if (read.ok && isZero(read.value)) return badInput(field, text ?? "", "more than nothing", `${capitalized(what)} is more than nothing.`);
  return read;
}

function inFeet(length: Length): number {
  return toNumber(inUnit(length, "ft"));
}

/** Lengths between commas, semicolons or line ends. A width of nothing is one: there the shape is pinched. */
function readLengths(field: string, text: string | undefined, what: string): Outcome<readonly Length[]> {
  const parts = lengthParts(text ?? "", { field, unitWhenNone: "ft" });
  if (!parts.ok) return parts;
  if (parts.value.length === 0) return badInput(field, "nothing", "lengths between commas, such as 18, 22, 25", `Give ${what}, with commas between.`);
  const lengths: Length[] = [];
  for (const part of parts.value) {
    const read = readLength(field, part, what);
    if (!read.ok) return read;
    lengths.push(read.value);
  }
  return accept(lengths);
}

/** A distance on the plan that may be west or south: "-12 ft". */
function readSigned(field: string, text: string): Outcome<SignedQuantity<"length">> {
  const typed = text.trim().replace(/^[\u2010-\u2013\u2212]/u, "-");
  const read = readLength(field, typed.replace(/^-\s*/u, ""), "a distance in feet, 0 for none");
  if (!read.ok) return read;
  return accept(typed.startsWith("-") ? negate(signed(read.value)) : signed(read.value));
}

const CORNERS: LengthsField = { field: "corners", unitWhenNone: "ft" };

/** The distances of all corners, a unit after the very last being that of all, and one after a corner that of both of its. */
function cornerParts(pairs: readonly (readonly [string, string])[]): Outcome<readonly string[]> {
  const all = inOneUnit(pairs.flat(), CORNERS);
  if (all.ok) return all;
  const eachPair = pairs.flatMap((pair) => {
    const read = inOneUnit(pair, CORNERS);
    return read.ok ? read.value : pair;
  });
  return inOneUnit(eachPair, CORNERS);
}

/** Where one distance may end and the next begin. */
const BETWEEN_DISTANCES = / (?=-?[\d.])/gu;
/** "9 250" is two distances to who writes corners, and 9,250 to who parts thousands: never one of a corner's. */
const PARTED_THOUSANDS = /\d \d{3}(?![\d/])/u;

function isDistance(plain: string): boolean {
  return !PARTED_THOUSANDS.test(plain) && readSigned("corners", plain).ok;
}

/**
 * The distances of one corner, which a comma parts; without one, the only space at which both sides are distances does.
 * "40 1/2" and "40 ft 6 in" are one distance each, and nobody can tell whether that was meant.
 */
function distancesOf(pair: string): readonly string[] {
  if (pair.includes(",")) return pair.split(/,\s/u.test(pair) ? /,\s+|,$/u : /,/u).map((part) => part.trim()).filter((part) => part !== "");
  const plain = plainCharacters(pair);
  if (isDistance(plain)) return [plain];
  const ways = [...plain.matchAll(BETWEEN_DISTANCES)].map(({ index }) => [plain.slice(0, index), plain.slice(index + 1)]).filter((sides) => sides.every(isDistance));
  return ways.length === 1 ? (ways[0] ?? []) : [plain];
}

function readCorners(text: string | undefined): Outcome<readonly Corner[]> {
  const pairs: (readonly [string, string])[] = [];
  for (const pair of (text ?? "").split(/[;\n]/u).map((part) => part.trim()).filter((part) => part !== "")) {
    const [east, north, ...more] = distancesOf(pair);
    if (east === undefined || north === undefined || more.length > 0) {
      return badInput("corners", pair, "two distances a line, such as 40, 25", `"${pair}" is no corner: write how far east and how far north, with a comma between.`);
    }
    pairs.push([east, north]);
  }
  const parts = cornerParts(pairs);
  if (!parts.ok) return parts;
  const corners: Corner[] = [];
  for (const place of pairs.keys()) {
    const [east, north] = [readSigned("corners", parts.value[2 * place] ?? ""), readSigned("corners", parts.value[2 * place + 1] ?? "")];
    if (!east.ok) return east;
    if (!north.ok) return north;
    corners.push({ east: east.value, north: north.value });
  }
  return accept(corners);
}

/** The lengths under their names, or the first refusal among them. */
function together<Name extends string>(read: Readonly<Record<Name, Outcome<Length>>>): Outcome<Readonly<Record<Name, Length>>> {
  const lengths: Partial<Record<Name, Length>> = {};
  for (const [name, answer] of Object.entries(read) as [Name, Outcome<Length>][]) {
    if (!answer.ok) return answer;
    lengths[name] = answer.value;
  }
  return accept(lengths as Readonly<Record<Name, Length>>);
}

function readOffsets(piece: TypedPiece): Outcome<MeasuredShape> {
  const step = readSide("step", piece.step, "the distance from one width to the next");
  if (!step.ok) return step;
  const widths = readLengths("widths", piece.widths, "the widths in their order");
  if (!widths.ok) return widths;
  const kind = piece.ends === "points" ? "offsets, sum of widths" : "offsets, trapezoids";
  return accept({ kind, step: step.value, widths: widths.value });
}

function readShape(piece: TypedPiece): Outcome<MeasuredShape> {
  switch (piece.shape) {
    case "rectangle": {
      const sides = together({ length: readSide("length", piece.length, "the length"), width: readSide("width", piece.width, "the width") });
      return sides.ok ? accept({ kind: "rectangle", ...sides.value }) : sides;
    }
    case "triangle": {
      const sides = together({ base: readSide("base", piece.base, "the base"), height: readSide("height", piece.height, "the height over the base") });
      return sides.ok ? accept({ kind: "triangle", ...sides.value }) : sides;
    }
    case "trapezoid": {
      const sides = together({
        side: readSide("side", piece.side, "one of the parallel sides"),
        otherSide: readSide("otherSide", piece.otherSide, "the other parallel side"),
        height: readSide("height", piece.height, "the distance between the parallel sides"),
      });
      return sides.ok ? accept({ kind: "trapezoid", parallelSides: [sides.value.side, sides.value.otherSide], height: sides.value.height }) : sides;
    }
    case "circle": {
      const radius = readSide("radius", piece.radius, "the radius");
      return radius.ok ? accept({ kind: "circle", radius: radius.value }) : radius;
    }
    case "offsets":
      return readOffsets(piece);
    case "average-radius": {
      const radii = readLengths("radii", piece.radii, "the distances from the middle to the edge");
      return radii.ok ? accept({ kind: "average radius", radii: radii.value }) : radii;
    }
    case "corners": {
      const corners = readCorners(piece.corners);
      return corners.ok ? accept({ kind: "corners", corners: corners.value }) : corners;
    }
  }
}

/** Which typed field a refusal of the measuring itself belongs to. */
function atField(piece: TypedPiece, refusal: InputRefusal): InputRefusal {
  const [first] = SHAPE_MEASURES[piece.shape];
  const field = refusal.field === "radii" || refusal.field === "corners" || refusal.field === "widths" ? refusal.field : first;
  return { ...refusal, field };
}

function readTurn(text: string): Outcome<number> {
  const typed = text.trim().replace(/\s*(°|deg|degrees)$/iu, "");
  if (!/^-?\d{1,3}(\.\d{1,2})?$/u.test(typed)) {
    return badInput("turn", text, "degrees from -360 to 360", `"${text}" is no angle. Write degrees to the left, 0 for none.`);
  }
  const degrees = typed.startsWith("-") ? -toNumber(decimal(typed.slice(1))) : toNumber(decimal(typed));
  return Math.abs(degrees) <= 360 ? accept(degrees) : badInput("turn", text, "degrees from -360 to 360", "A turn is at most once round.");
}

/**
 * Reads one piece as it was typed: its area exactly by `measureArea`, its outline for the drawing in feet on the plan.
 * A number without a unit is feet. Refused at its field: what is missing, what is no length, and what `measureArea`
 * refuses.
 */
export function readLawnPiece(piece: TypedPiece): Outcome<LawnPiece> {
  const shape = readShape(piece);
  if (!shape.ok) return shape;
  const measurement = measureArea(shape.value);
  if (!measurement.ok) return { ok: false, refusal: atField(piece, measurement.refusal) };
  const x = readSigned("x", piece.x);
  if (!x.ok) return x;
  const y = readSigned("y", piece.y);
  if (!y.ok) return y;
  const turn = readTurn(piece.turn);
  if (!turn.ok) return turn;
  const drawn = placeOnPlan(drawPiece(shape.value, piece.line === "middle" ? "middle" : "edge"), { x: x.value, y: y.value, turnDegrees: turn.value });
  return accept({ use: piece.use, name: piece.name, shape: piece.shape, measurement: measurement.value, drawn });
}

/** A lawn as it was measured, piece by piece; water among them counts nothing. */
export interface MeasuredLawn {
  readonly area: Quantity<"area">;
  readonly pieces: readonly LawnPiece[];
}

/**
 * Reads a lawn's pieces and adds them up. Refused: what `readLawnPiece` refuses (the field is led by the piece's place,
 * "2.width"), no piece that is lawn, and cut-outs as large as the lawn.
 */
export function readLawn(typed: readonly TypedPiece[]): Outcome<MeasuredLawn> {
  const pieces: LawnPiece[] = [];
  for (const [place, piece] of typed.entries()) {
    const read = readLawnPiece(piece);
    if (!read.ok) return { ok: false, refusal: { ...read.refusal, field: `${String(place)}.${read.refusal.field}` } };
    pieces.push(read.value);
  }
  const counted = pieces.flatMap(({ use, measurement }): MeasuredPiece[] => (use === "water" ? [] : [{ use, measurement }]));
  const area = lawnAreaOf(counted);
  if (!area.ok) return area;
  if (isZero(area.value)) {
    return badInput("pieces", "no grass", "a piece of lawn that is larger than what is cut out", "Nothing is left of this lawn: its first piece is lawn, and what is cut out is smaller.");
  }
  return accept({ area: area.value, pieces });
}
