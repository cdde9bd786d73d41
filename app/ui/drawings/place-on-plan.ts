import {
  type Box,
  type Point,
  boxAround,
  boxesMeet,
  innerPoints,
  isBoxInside,
  isInside,
  meetsOutline,
  segmentMeetsBox,
  segmentMeetsOutline,
} from "./plane-geometry";

/** Where a label stands: within its shape, or beside it with a leader to a point inside. */
export interface Label {
  readonly box: Box;
  readonly leader?: Leader;
}

/** A line from a label to its shape. */
export interface Leader {
  readonly from: Point;
  readonly to: Point;
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

const leastStepPixels = 4;
/** A shape is tried for its label at this many places, about. */
const insidePlaces = 1500;
const dotDistancePixels = 8;
/** Beside the shapes so many places are tried along the width of the drawing, about. */
const besidePlaces = 48;
const clearPixels = 4;
/** A leader that crosses another shape must be shorter by this much to be chosen. */
const crossingCostPixels = 400;
const shortestLeaderPixels = 10;

/** Finds the label's place. There is always one: below the plan there is as much room as is needed. */
export function placeLabel(question: LabelQuestion): Label {
  const inner = innerPoints(question.outline, question.cutOut, dotDistancePixels);
  return placeInside(question) ?? placeBeside(question, inner);
}

function grown(box: Box, by: number): Box {
  return { x: box.x - by, y: box.y - by, width: box.width + 2 * by, height: box.height + 2 * by };
}

function middleOf(box: Box): Point {
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

function distance(one: Point, other: Point): number {
  // Not Math.hypot: it guards against overflow, which takes ten times as long, and a drawing has no such figures.
  return Math.sqrt((one.x - other.x) ** 2 + (one.y - other.y) ** 2);
}

function placeInside({ size, outline, cutOut, placed }: LabelQuestion): Label | undefined {
  const around = boxAround(outline);
  const middle = middleOf(around);
  const step = Math.max(leastStepPixels, Math.sqrt((around.width * around.height) / insidePlaces));
  const candidates: Box[] = [];
  for (let y = around.y; y <= around.y + around.height - size.height; y += step) {
    for (let x = around.x; x <= around.x + around.width - size.width; x += step) {
      candidates.push({ x, y, ...size });
    }
  }
  const box = candidates
    .toSorted((one, other) => distance(middleOf(one), middle) - distance(middleOf(other), middle))
    .find((candidate) => {
      const wide = grown(candidate, clearPixels);
      return (
        isBoxInside(wide, outline) &&
        !cutOut.some((hole) => meetsOutline(wide, hole)) &&
        !placed.some((label) => labelMeets(label, wide))
      );
    });
  return box === undefined ? undefined : { box };
}

function placeBeside(question: LabelQuestion, inner: readonly Point[]): Label {
  const { size, shapes, placed, frame } = question;
  const rowPixels = size.height + 2 * clearPixels;
  const filled = Math.max(frame.planHeight, ...placed.map(({ box }) => box.y + box.height + clearPixels));
  const lowest = filled + 2 * rowPixels;
  const step = frame.width / besidePlaces;
  const candidates: { readonly box: Box; readonly leader: Leader; readonly length: number }[] = [];
  for (let y = clearPixels; y <= lowest; y += step) {
    for (let x = clearPixels; x <= frame.width - size.width - clearPixels; x += step) {
      const box = { x, y, ...size };
      const leader = shortestLeader(box, inner);
      const length = distance(leader.from, leader.to);
      if (length >= shortestLeaderPixels) candidates.push({ box, leader, length });
    }
  }
  let best: { readonly label: Label; readonly cost: number } | undefined;
  // From the shortest leader on: as soon as one is longer than the best costs, none after it can be better.
  for (const { box, leader, length } of candidates.toSorted((one, other) => one.length - other.length)) {
    if (best !== undefined && length >= best.cost) break;
    const wide = grown(box, clearPixels);
    if (shapes.some((shape) => meetsOutline(wide, shape)) || placed.some((other) => clashes(other, wide, leader))) continue;
    const cost = length + crossingCostPixels * crossedShapes(leader, question);
    if (best === undefined || cost < best.cost) best = { label: { box, leader }, cost };
  }
  // Only where every other leader would cross a label; the drawing lays the labels over the leaders.
  const below = { x: clearPixels, y: filled + 2 * clearPixels, ...size };
  return best?.label ?? { box: below, leader: shortestLeader(below, inner) };
}

function shortestLeader(box: Box, inner: readonly Point[]): Leader {
  let best: { readonly leader: Leader; readonly length: number } | undefined;
  for (const to of inner) {
    const from = nearestOnBox(to, box);
    const length = distance(from, to);
    if (best === undefined || length < best.length) best = { leader: { from, to }, length };
  }
  return best?.leader ?? { from: middleOf(box), to: middleOf(box) };
}

/** How many shapes a leader runs over, save its own, what its point lies upon, and what lies beside that. */
function crossedShapes(leader: Leader, { outline, shapes }: LabelQuestion): number {
  return shapes.filter(
    (shape) => shape !== outline && !isInside(leader.to, shape) && segmentMeetsOutline(leader.from, leader.to, shape),
  ).length;
}

function clashes(other: Label, box: Box, leader: Leader): boolean {
  return labelMeets(other, box) || segmentMeetsBox(leader.from, leader.to, grown(other.box, clearPixels));
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
