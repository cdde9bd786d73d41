import {
  type Box,
  type Point,
  boxAround,
  boxesMeet,
  innermostPoint,
  isBoxInside,
  meetsOutline,
  segmentMeetsBox,
} from "./plane-geometry";

/** Where a label stands: within its shape, or beside it with a leader to a point inside. */
export interface Label {
  readonly box: Box;
  readonly leader?: { readonly from: Point; readonly to: Point };
}

/** What a label needs to know of the drawing. Everything in pixels. */
export interface LabelQuestion {
  readonly size: { readonly width: number; readonly height: number };
  /** The shape that it names, and what lies upon that shape. */
  readonly outline: readonly Point[];
  readonly cutOut: readonly (readonly Point[])[];
  /** All shapes of the drawing. A label with a leader covers none of them. */
  readonly shapes: readonly (readonly Point[])[];
  readonly placed: readonly Label[];
  readonly frame: { readonly width: number; readonly planHeight: number };
}

const stepPixels = 4;
const clearPixels = 4;

/** Finds the label's place. There is always one: below the plan there is as much room as is needed. */
export function placeLabel(question: LabelQuestion): Label {
  const anchor = innermostPoint(question.outline, question.cutOut, stepPixels);
  return placeInside(question, anchor) ?? placeBeside(question, anchor);
}

function grown(box: Box, by: number): Box {
  return { x: box.x - by, y: box.y - by, width: box.width + 2 * by, height: box.height + 2 * by };
}

function placeInside(question: LabelQuestion, anchor: Point): Label | undefined {
  const { size, outline, cutOut, placed } = question;
  const around = boxAround(outline);
  const candidates: { readonly box: Box; readonly distance: number }[] = [];
  for (let y = around.y; y <= around.y + around.height - size.height; y += stepPixels) {
    for (let x = around.x; x <= around.x + around.width - size.width; x += stepPixels) {
      const box = { x, y, ...size };
      candidates.push({ box, distance: Math.hypot(x + size.width / 2 - anchor.x, y + size.height / 2 - anchor.y) });
    }
  }
  const best = candidates
    .toSorted((one, other) => one.distance - other.distance)
    .find(({ box }) => {
      const wide = grown(box, clearPixels);
      return (
        isBoxInside(wide, outline) &&
        !cutOut.some((hole) => meetsOutline(wide, hole)) &&
        !placed.some((label) => labelMeets(label, wide))
      );
    });
  return best === undefined ? undefined : { box: best.box };
}

function placeBeside(question: LabelQuestion, anchor: Point): Label {
  const { size, shapes, placed, frame } = question;
  const rowsBelow = 1 + placed.length;
  const candidates: { readonly label: Label; readonly length: number }[] = [];
  for (let y = clearPixels; y <= frame.planHeight + rowsBelow * (size.height + 2 * clearPixels); y += stepPixels) {
    for (let x = clearPixels; x <= frame.width - size.width - clearPixels; x += stepPixels) {
      const box = { x, y, ...size };
      const from = nearestOnBox(anchor, box);
      candidates.push({ label: { box, leader: { from, to: anchor } }, length: Math.hypot(from.x - anchor.x, from.y - anchor.y) });
    }
  }
  const best = candidates
    .toSorted((one, other) => one.length - other.length)
    .find(({ label }) => {
      const wide = grown(label.box, clearPixels);
      return (
        !shapes.some((shape) => meetsOutline(wide, shape)) &&
        !placed.some(
          (other) =>
            labelMeets(other, wide) ||
            (label.leader !== undefined && segmentMeetsBox(label.leader.from, label.leader.to, grown(other.box, clearPixels))),
        )
      );
    });
  const below = { x: clearPixels, y: frame.planHeight + (rowsBelow - 1) * (size.height + 2 * clearPixels), ...size };
  return best?.label ?? { box: below, leader: { from: nearestOnBox(anchor, below), to: anchor } };
}

function labelMeets(label: Label, box: Box): boolean {
  return boxesMeet(label.box, box) || (label.leader !== undefined && segmentMeetsBox(label.leader.from, label.leader.to, box));
}

function nearestOnBox(point: Point, box: Box): Point {
  return {
    x: Math.min(Math.max(point.x, box.x), box.x + box.width),
    y: Math.min(Math.max(point.y, box.y), box.y + box.height),
  };
}
