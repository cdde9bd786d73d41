import { type LawnOnFile } from "#application/properties/read-property";
import { PIECE_SHAPES, type PieceShape, type PieceUse, readLawnPiece } from "#domain/properties/lawn-pieces";

/** Between two lawns on a plan where nobody has said yet how they lie. */
const GAP_FEET = 10;

/** Where a new piece is offered to lie: a cut-out within its lawn, water and more lawn to the right of what is drawn. */
export function offerPlace(lawns: readonly LawnOnFile[], use: PieceUse, lawn?: LawnOnFile): { readonly x: string; readonly y: string } {
  const near = use === "cut-out" && lawn !== undefined ? [lawn] : lawns;
  const points = near
    .flatMap(({ pieces }) => pieces)
    .flatMap((piece) => {
      const read = readLawnPiece(piece);
      return read.ok ? read.value.drawn.outline : [];
    });
  if (points.length === 0) return { x: "0", y: "0" };
  const [left, right, bottom] = [Math.min(...points.map(({ x }) => x)), Math.max(...points.map(({ x }) => x)), Math.min(...points.map(({ y }) => y))];
  if (use === "cut-out") return { x: String(Math.round(left + GAP_FEET)), y: String(Math.round(bottom + GAP_FEET)) };
  return { x: String(Math.round(right + GAP_FEET)), y: String(Math.round(bottom)) };
}

/** The shape that an address names, or the first of all. */
export function shapeOf(word: string | undefined): PieceShape {
  return PIECE_SHAPES.find((shape) => shape === word) ?? "rectangle";
}
