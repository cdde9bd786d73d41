import { measureText, wrapText } from "./measure-text";
import { type Label, placeLabel } from "./place-on-plan";
import { type Box, type Point, boxAround, boxesMeet } from "./plane-geometry";

/** A lawn on the plan. Feet on the ground, x to the east and y to the north from any corner; sizes in square feet. */
export interface PlanLawn {
  readonly id: string;
  readonly letter: string;
  readonly name: string;
  readonly outline: readonly Point[];
  /** Within the outline, before anything is taken off. */
  readonly sizeSquareFeet: number;
  readonly takenOffSquareFeet: number;
  readonly keptClearSquareFeet: number;
  readonly treatedSquareFeet: number;
  /** How and when it was measured: "wheel, April 2, 2026". */
  readonly measured: string;
  /** The measured sides and ties: thin dotted lines, as they were walked. */
  readonly measuredLines?: readonly (readonly [Point, Point])[];
  /** What was measured along some of those lines, to be written at them. */
  readonly sides?: readonly { readonly from: Point; readonly to: Point; readonly words: string }[];
  /** Where a lawn lies in several pieces: all but the one that carries its label. */
  readonly morePieces?: readonly (readonly Point[])[];
}

/** Anything on the plan that is no lawn. A bed and a drive are hatched: nothing goes down there. */
export interface PlanArea {
  readonly id: string;
  readonly kind: "bed" | "drive" | "building" | "water" | "kept-clear";
  /** What is written at it: "house", "pond", "25 ft kept clear". */
  readonly name: string;
  readonly outline: readonly Point[];
  /** Of water: how far from it the lawns are kept clear. That ground is drawn within the lawns. */
  readonly keptClearFeet?: number;
}

/** What the plan is drawn from. */
export interface PlanGround {
  readonly lawns: readonly PlanLawn[];
  readonly areas: readonly PlanArea[];
}

/** The room that a plan may take, in pixels, and the size of its letters. */
export interface PlanRoom {
  readonly widthPixels: number;
  readonly heightPixels: number;
  readonly textPixels: number;
  readonly sizeTextPixels: number;
}

/** The wide, the medium and the narrow form. */
export const planRooms = {
  wide: { widthPixels: 640, heightPixels: 560, textPixels: 13, sizeTextPixels: 14 },
  medium: { widthPixels: 448, heightPixels: 520, textPixels: 13, sizeTextPixels: 14 },
  narrow: { widthPixels: 288, heightPixels: 460, textPixels: 16, sizeTextPixels: 16 },
} as const satisfies Record<string, PlanRoom>;

/** A CSS inch, which is also an inch on paper. */
const inchPixels = 96;
const edgePixels = 4;
/** The scale bar, its words and the arrow need this much. */
const leastFootPixels = 280;

/** The scales of plans on paper: so many feet to the inch. */
const scalesFeetPerInch = [10, 20, 40, 60, 100, 200, 400, 1000] as const;

/** The largest scale at which the ground fits into the room; the smallest of all where none does. */
export function chooseScale(ground: Box, room: PlanRoom): number {
  const fits = scalesFeetPerInch.find(
    (feet) =>
      (ground.width * inchPixels) / feet + 2 * edgePixels <= room.widthPixels &&
      (ground.height * inchPixels) / feet + 2 * edgePixels <= room.heightPixels,
  );
  return fits ?? scalesFeetPerInch[scalesFeetPerInch.length - 1] ?? 1000;
}

/** A shape on the drawing, in pixels. */
export interface DrawnShape<Thing> {
  readonly thing: Thing;
  readonly outline: readonly Point[];
}

/** A label as drawn: of a lawn or of an area, with its name in lines. */
export interface PlanLabelLayout extends Label {
  readonly id: string;
  readonly nameLines: readonly string[];
  readonly lawn?: PlanLawn;
  readonly area?: PlanArea;
}

/** The length of a measured line as drawn along it: the middle of its words, and their turn in degrees. */
export interface SideLayout {
  readonly words: string;
  readonly at: Point;
  readonly turnDegrees: number;
}

/** The plan as drawn: shapes and labels in pixels, y downward. */
export interface PlanLayout {
  readonly feetPerInch: number;
  readonly pixelsPerFoot: number;
  readonly lawns: readonly DrawnShape<PlanLawn>[];
  readonly areas: readonly DrawnShape<PlanArea>[];
  readonly measuredLines: readonly (readonly [Point, Point])[];
  readonly sides: readonly SideLayout[];
  /** Pieces of lawns beside the ones that carry the labels. */
  readonly morePieces: readonly (readonly Point[])[];
  readonly labels: readonly PlanLabelLayout[];
  readonly widthPixels: number;
  readonly heightPixels: number;
  /** Half of the scale bar, in feet. */
  readonly barHalfFeet: number;
}

/** Lays the plan out to scale with north up. Labels go inside their shape where they fit, else beside with a leader. */
export function layOutPlan(ground: PlanGround, room: PlanRoom): PlanLayout {
  const points = [...ground.lawns, ...ground.areas].flatMap((shape) => shape.outline).concat(...ground.lawns.flatMap((lawn) => lawn.morePieces ?? []));
  const bounds = points.length === 0 ? { x: 0, y: 0, width: 10, height: 10 } : boxAround(points);
  const feetPerInch = chooseScale(bounds, room);
  const pixelsPerFoot = inchPixels / feetPerInch;
  const toPixels = (point: Point): Point => ({
    x: edgePixels + (point.x - bounds.x) * pixelsPerFoot,
    y: edgePixels + (bounds.y + bounds.height - point.y) * pixelsPerFoot,
  });
  const draw = <Thing extends PlanLawn | PlanArea>(thing: Thing) => ({ thing, outline: thing.outline.map(toPixels) });
  const lawns = ground.lawns.map(draw);
  const areas = ground.areas.map(draw);
  const planHeight = bounds.height * pixelsPerFoot + 2 * edgePixels;
  const labels = placeLabels(lawns, areas, room, planHeight);
  const lowest = Math.max(planHeight, ...labels.map((label) => label.box.y + label.box.height + edgePixels));
  const rightmost = Math.max(
    bounds.width * pixelsPerFoot + 2 * edgePixels,
    ...labels.map((label) => label.box.x + label.box.width + edgePixels),
  );
  return {
    feetPerInch,
    pixelsPerFoot,
    lawns,
    areas,
    measuredLines: ground.lawns.flatMap((lawn) =>
      (lawn.measuredLines ?? []).map(([from, to]) => [toPixels(from), toPixels(to)] as const),
    ),
    sides: ground.lawns.flatMap((lawn) =>
      (lawn.sides ?? []).flatMap(({ from, to, words }) => placeSide(toPixels(from), toPixels(to), words, { labels, room })),
    ),
    morePieces: ground.lawns.flatMap((lawn) => (lawn.morePieces ?? []).map((piece) => piece.map(toPixels))),
    labels,
    widthPixels: Math.ceil(Math.min(room.widthPixels, Math.max(rightmost, leastFootPixels))),
    heightPixels: Math.ceil(lowest),
    barHalfFeet: feetPerInch / 2,
  };
}

/** From a line to the middle of its words. */
const sideDistancePixels = 9;

/** Words along a line that is long enough for them and free of labels; they never stand on their head. */
function placeSide(from: Point, to: Point, words: string, { labels, room }: { readonly labels: readonly PlanLabelLayout[]; readonly room: PlanRoom }): readonly SideLayout[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const width = measureText(words, room.textPixels);
  if (length < width + 12) return [];
  const [start, end] = from.x < to.x || (from.x === to.x && from.y > to.y) ? [from, to] : [to, from];
  const angle = Math.atan2(end.y - start.y, end.x - start.x);
  const at = {
    x: (from.x + to.x) / 2 + Math.sin(angle) * sideDistancePixels,
    y: (from.y + to.y) / 2 - Math.cos(angle) * sideDistancePixels,
  };
  const halfWide = (Math.abs(Math.cos(angle)) * width + Math.abs(Math.sin(angle)) * room.textPixels) / 2;
  const halfHigh = (Math.abs(Math.sin(angle)) * width + Math.abs(Math.cos(angle)) * room.textPixels) / 2;
  const box = { x: at.x - halfWide, y: at.y - halfHigh, width: 2 * halfWide, height: 2 * halfHigh };
  if (box.x < 0 || box.y < 0 || labels.some((label) => boxesMeet(label.box, box))) return [];
  return [{ words, at, turnDegrees: (angle * 180) / Math.PI }];
}

/** The first line of a lawn's label; its name is the second. */
export function lawnSizeWords(lawn: PlanLawn): string {
  return `${lawn.sizeSquareFeet.toLocaleString("en-US")} sq ft`;
}

/** The sizes of a lawn's label, in pixels. */
export const lawnLabel = { discPixels: 26, gapPixels: 8, nameMostPixels: 170 } as const;

/** The distance from one line of letters to the next. */
export function planLinePixels(textPixels: number): number {
  return textPixels + 4;
}

function placeLabels(
  lawns: readonly DrawnShape<PlanLawn>[],
  areas: readonly DrawnShape<PlanArea>[],
  room: PlanRoom,
  planHeight: number,
): readonly PlanLabelLayout[] {
  const placed: PlanLabelLayout[] = [];
  const frame = { width: room.widthPixels, planHeight };
  const shapes = [...lawns, ...areas].map((shape) => shape.outline);
  for (const { thing, outline } of lawns) {
    const nameLines = wrapText(thing.name, lawnLabel.nameMostPixels, room.textPixels);
    const widths = nameLines.map((line) => measureText(line, room.textPixels));
    const sizeWidth = measureText(lawnSizeWords(thing), room.sizeTextPixels, 700);
    const size = {
      width: lawnLabel.discPixels + lawnLabel.gapPixels + Math.max(sizeWidth, ...widths),
      height: room.sizeTextPixels + 6 + nameLines.length * planLinePixels(room.textPixels),
    };
    const cutOut = areas.map((area) => area.outline);
    placed.push({ id: thing.id, lawn: thing, nameLines, ...placeLabel({ size, outline, cutOut, shapes, placed, frame }) });
  }
  const named = areas.map((area) => {
    const nameLines = wrapText(area.thing.name, lawnLabel.nameMostPixels, room.textPixels);
    const width = Math.max(...nameLines.map((line) => measureText(line, room.textPixels))) + 8;
    return { ...area, nameLines, size: { width, height: nameLines.length * planLinePixels(room.textPixels) + 2 } };
  });
  // The widest first: it has the fewest places to go to.
  for (const { thing, outline, nameLines, size } of named.toSorted((one, other) => other.size.width - one.size.width)) {
    const cutOut = areas.filter((area) => area.thing !== thing).map((area) => area.outline);
    placed.push({ id: thing.id, area: thing, nameLines, ...placeLabel({ size, outline, cutOut, shapes, placed, frame }) });
  }
  return placed;
}
