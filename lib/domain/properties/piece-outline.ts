import { type Quantity } from "#domain/quantities/quantity";
import { toNumber } from "#domain/quantities/rational";
import { type SignedQuantity } from "#domain/quantities/signed-quantity";
import { units } from "#domain/quantities/units";
import { type MeasuredShape } from "#domain/turf/field-area";
import { invariant } from "#domain/foundation/invariant";

// Drawings are made of floating feet: a plan is to scale, never a source of figures.

/** A point of the plan in feet, to the east and to the north. */
export interface PlanPoint {
  readonly x: number;
  readonly y: number;
}

/** A line that was walked or taped, with its length in feet. */
export interface MeasuredLine {
  readonly from: PlanPoint;
  readonly to: PlanPoint;
  readonly feet: number;
}

/** A piece as it is drawn: once round its edge, and what was measured. */
export interface DrawnPiece {
  readonly outline: readonly PlanPoint[];
  readonly measuredLines: readonly MeasuredLine[];
}

type Length = Quantity<"length">;
const CIRCLE_CORNERS = 48;

function feet(length: Length): number {
  return toNumber({ numerator: length.amount, denominator: units.ft.canonicalAmount });
}

function signedFeet(length: SignedQuantity<"length">): number {
  return toNumber({ numerator: length.signedAmount, denominator: units.ft.canonicalAmount });
}

function line(from: PlanPoint, to: PlanPoint): MeasuredLine {
  return { from, to, feet: Math.hypot(to.x - from.x, to.y - from.y) };
}

function around(corners: readonly PlanPoint[]): readonly MeasuredLine[] {
  return corners.map((from, index) => {
    const to = corners[(index + 1) % corners.length];
    invariant(to !== undefined, "each corner has a next one");
    return line(from, to);
  });
}

function drawRectangle(length: Length, width: Length): DrawnPiece {
  const [right, top] = [feet(length), feet(width)];
  const origin = { x: 0, y: 0 };
  return {
    outline: [origin, { x: right, y: 0 }, { x: right, y: top }, { x: 0, y: top }],
    measuredLines: [line(origin, { x: right, y: 0 }), line({ x: right, y: 0 }, { x: right, y: top })],
  };
}

/** The foot of the height is drawn in the middle of the base: the area does not depend on it. */
function drawTriangle(base: Length, height: Length): DrawnPiece {
  const foot = { x: feet(base) / 2, y: 0 };
  const apex = { x: foot.x, y: feet(height) };
  const [left, right] = [{ x: 0, y: 0 }, { x: feet(base), y: 0 }];
  return { outline: [left, right, apex], measuredLines: [line(left, right), line(foot, apex)] };
}

/** The two parallel sides are drawn about one middle: the area does not depend on it. */
function drawTrapezoid(sides: readonly [Length, Length], height: Length): DrawnPiece {
  const [bottom, top, up] = [feet(sides[0]), feet(sides[1]), feet(height)];
  const inset = (bottom - top) / 2;
  const outline = [{ x: 0, y: 0 }, { x: bottom, y: 0 }, { x: bottom - inset, y: up }, { x: inset, y: up }];
  const middle = bottom / 2;
  return {
    outline,
    measuredLines: [line({ x: 0, y: 0 }, { x: bottom, y: 0 }), line({ x: inset, y: up }, { x: bottom - inset, y: up }), line({ x: middle, y: 0 }, { x: middle, y: up })],
  };
}

function onCircle(radius: number, part: number): PlanPoint {
  return { x: radius * Math.cos(2 * Math.PI * part), y: radius * Math.sin(2 * Math.PI * part) };
}

function drawCircle(radius: Length): DrawnPiece {
  const outline = Array.from({ length: CIRCLE_CORNERS }, (_, index) => onCircle(feet(radius), index / CIRCLE_CORNERS));
  return { outline, measuredLines: [line({ x: 0, y: 0 }, { x: feet(radius), y: 0 })] };
}

/** The edge where the radii end, at even angles from the east to the left. */
function drawRadii(radii: readonly Length[]): DrawnPiece {
  const outline = radii.map((radius, index) => onCircle(feet(radius), index / radii.length));
  return { outline, measuredLines: outline.map((end) => line({ x: 0, y: 0 }, end)) };
}

/** Whether the widths were taken from a straight edge, or to both sides of a line through the middle. */
export type OffsetLine = "edge" | "middle";

function drawOffsets(step: Length, widths: readonly Length[], isPointed: boolean, from: OffsetLine): DrawnPiece {
  const share = from === "edge" ? 0 : -0.5;
  const across = widths.map((width, index) => {
    const x = feet(step) * (isPointed ? index + 1 : index);
    return line({ x, y: share * feet(width) }, { x, y: (share + 1) * feet(width) });
  });
  const end = feet(step) * (isPointed ? widths.length + 1 : widths.length - 1);
  const [first, last] = [{ x: 0, y: 0 }, { x: end, y: 0 }];
  const points = isPointed ? { first: [first], last: [last] } : { first: [], last: [] };
  const outline = [...points.first, ...across.map((each) => each.from), ...points.last, ...across.map((each) => each.to).toReversed()];
  return { outline: withoutTwins(outline), measuredLines: [line(first, last), ...across.filter((each) => each.feet > 0)] };
}

/** A width of nothing makes two corners in one place. */
function withoutTwins(outline: readonly PlanPoint[]): readonly PlanPoint[] {
  return outline.filter((point, index) => {
    const before = outline.at(index - 1);
    return before?.x !== point.x || before.y !== point.y;
  });
}

/** Draws a shape with its first corner, the middle of its circle or the beginning of its line at 0, 0, unturned. */
export function drawPiece(shape: MeasuredShape, offsetLine: OffsetLine): DrawnPiece {
  switch (shape.kind) {
    case "rectangle":
      return drawRectangle(shape.length, shape.width);
    case "triangle":
      return drawTriangle(shape.base, shape.height);
    case "trapezoid":
      return drawTrapezoid(shape.parallelSides, shape.height);
    case "circle":
      return drawCircle(shape.radius);
    case "circle by rule of thumb":
      return drawCircle({ dimension: "length", amount: shape.diameter.amount / 2n });
    case "oval":
    case "oval by rule of thumb": {
      const [along, across] = [feet(shape.length) / 2, feet(shape.width) / 2];
      const outline = Array.from({ length: CIRCLE_CORNERS }, (_, index) => onCircle(1, index / CIRCLE_CORNERS)).map(({ x, y }) => ({ x: x * along, y: y * across }));
      return { outline, measuredLines: [line({ x: -along, y: 0 }, { x: along, y: 0 }), line({ x: 0, y: -across }, { x: 0, y: across })] };
    }
    case "offsets, sum of widths":
    case "offsets, trapezoids":
      return drawOffsets(shape.step, shape.widths, shape.kind === "offsets, sum of widths", offsetLine);
    case "average radius":
      return drawRadii(shape.radii);
    case "corners": {
      const outline = shape.corners.map(({ east, north }) => ({ x: signedFeet(east), y: signedFeet(north) }));
      return { outline, measuredLines: around(outline) };
    }
  }
}

/** Where a piece lies on the plan. */
export interface PiecePlace {
  readonly x: SignedQuantity<"length">;
  readonly y: SignedQuantity<"length">;
  /** To the left, about the piece's own 0, 0. */
  readonly turnDegrees: number;
}

/** Turns a drawn piece and moves it to its place. */
export function placeOnPlan(piece: DrawnPiece, place: PiecePlace): DrawnPiece {
  const angle = (place.turnDegrees * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const [right, up] = [signedFeet(place.x), signedFeet(place.y)];
  const move = ({ x, y }: PlanPoint): PlanPoint => ({ x: right + x * cosine - y * sine, y: up + x * sine + y * cosine });
  return {
    outline: piece.outline.map(move),
    measuredLines: piece.measuredLines.map(({ from, to, feet: length }) => ({ from: move(from), to: move(to), feet: length })),
  };
}
