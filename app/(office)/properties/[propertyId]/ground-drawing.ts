import { type LawnOnFile } from "#application/properties/read-property";
import { type LawnPiece, readLawn } from "#domain/properties/lawn-pieces";
import { toNumber } from "#domain/quantities/rational";
import { add, inUnit, type Quantity, sum } from "#domain/quantities/quantity";
import { type PlanArea, type PlanLawn } from "#ui/drawings/lawn-plan";
import { keptClearArea, originWords } from "./ground-words";

/** What a plan is drawn from. */
export interface GroundDrawing {
  readonly lawns: readonly PlanLawn[];
  readonly areas: readonly PlanArea[];
}

function wholeSquareFeet(area: Quantity<"area">): number {
  return Math.round(toNumber(inUnit(area, "sq ft")));
}

function total(pieces: readonly LawnPiece[]): Quantity<"area"> {
  return pieces.reduce((whole, piece) => add(whole, piece.measurement.area), sum("area", []));
}

/** "38 ft", with tenths only where there are any. */
function sideWords(feet: number): string {
  return `${String(Math.round(feet * 10) / 10)} ft`;
}

/** The largest piece carries the lawn's label. */
function largestFirst(pieces: readonly LawnPiece[]): readonly LawnPiece[] {
  return [...pieces].sort((one, other) => Number(other.measurement.area.amount - one.measurement.area.amount));
}

function drawLawn(lawn: LawnOnFile, pieces: readonly LawnPiece[]): PlanLawn | undefined {
  const grass = largestFirst(pieces.filter(({ use }) => use === "lawn"));
  const cutOut = pieces.filter(({ use }) => use === "cut-out");
  const [first, ...more] = grass;
  if (first === undefined) return undefined;
  const lines = grass.flatMap(({ drawn }) => drawn.measuredLines);
  const keptClear = sum("area", lawn.waterEdges.flatMap((edge) => keptClearArea(edge) ?? []));
  const [off, clear] = [wholeSquareFeet(total(cutOut)), wholeSquareFeet(keptClear)];
  const size = wholeSquareFeet(lawn.area);
  return {
    id: lawn.zoneId,
    letter: lawn.letter,
    name: lawn.name,
    outline: first.drawn.outline,
    morePieces: more.map(({ drawn }) => drawn.outline),
    sizeSquareFeet: size + off,
    takenOffSquareFeet: off,
    keptClearSquareFeet: clear,
    treatedSquareFeet: Math.max(0, size - clear),
    measured: originWords(lawn),
    measuredLines: lines.map(({ from, to }) => [from, to]),
    sides: lines.map(({ from, to, feet }) => ({ from, to, words: sideWords(feet) })),
  };
}

/** How far a lawn's waters are kept clear of, in feet, where that is known of any. */
function widestEdgeFeet(lawn: LawnOnFile): number | undefined {
  const widths = lawn.waterEdges.flatMap(({ width }) => (width === null ? [] : [toNumber(inUnit(width, "ft"))]));
  return widths.length === 0 ? undefined : Math.max(...widths);
}

function drawAreas(lawn: LawnOnFile, pieces: readonly LawnPiece[]): readonly PlanArea[] {
  const keptClearFeet = widestEdgeFeet(lawn);
  return pieces.flatMap((piece, place): readonly PlanArea[] => {
    const id = `${lawn.zoneId}-${String(place)}`;
    const { outline } = piece.drawn;
    switch (piece.use) {
      case "lawn":
        return [];
      case "cut-out":
        return [{ id, kind: "bed", name: piece.name === "" ? "cut out" : piece.name, outline }];
      case "water": {
        const name = piece.name === "" ? "water" : piece.name;
        if (keptClearFeet === undefined) return [{ id, kind: "water", name, outline }];
        return [{ id, kind: "water", name: `${name}, ${sideWords(keptClearFeet)} kept clear`, outline, keptClearFeet }];
      }
    }
  });
}

/** The plan of all lawns that were measured piece by piece. Those with an area only have no shape to draw. */
export function drawGround(lawns: readonly LawnOnFile[]): GroundDrawing {
  const drawn = lawns.map((lawn) => {
    const read = readLawn(lawn.pieces);
    return { lawn, pieces: read.ok ? read.value.pieces : [] };
  });
  return {
    lawns: drawn.flatMap(({ lawn, pieces }) => drawLawn(lawn, pieces) ?? []),
    areas: drawn.flatMap(({ lawn, pieces }) => drawAreas(lawn, pieces)),
  };
}
