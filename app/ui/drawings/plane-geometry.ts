/** A point: in feet with y to the north on the ground, in pixels with y downward on the drawing. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** An upright rectangle by its corner and size. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The area inside an outline that does not cross itself, in the square of its unit (the shoelace formula). */
export function outlineArea(outline: readonly Point[]): number {
  return Math.abs(edges(outline).reduce((sum, [from, to]) => sum + from.x * to.y - to.x * from.y, 0)) / 2;
}

/** The smallest box around all points. There must be one. */
export function boxAround(points: readonly Point[]): Box {
  const xs = points.map((point) => point.x);
  const ys = points.map((point) => point.y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** True if the point is inside the outline (a ray to the right crosses it an odd number of times). */
export function isInside(point: Point, outline: readonly Point[]): boolean {
  let inside = false;
  let from = outline.at(-1);
  for (const to of outline) {
    if (from !== undefined && from.y > point.y !== to.y > point.y) {
      if (point.x < ((to.x - from.x) * (point.y - from.y)) / (to.y - from.y) + from.x) inside = !inside;
    }
    from = to;
  }
  return inside;
}

/** True if the whole box is inside the outline. */
export function isBoxInside(box: Box, outline: readonly Point[]): boolean {
  return corners(box).every((corner) => isInside(corner, outline)) && !crosses(box, outline);
}

/** True if box and outline share any point. */
export function meetsOutline(box: Box, outline: readonly Point[]): boolean {
  const [first] = outline;
  return crosses(box, outline) || isInside({ x: box.x, y: box.y }, outline) || (first !== undefined && isInBox(first, box));
}

/** True if the two boxes share any point. */
export function boxesMeet(one: Box, other: Box): boolean {
  return (
    one.x <= other.x + other.width &&
    other.x <= one.x + one.width &&
    one.y <= other.y + other.height &&
    other.y <= one.y + one.height
  );
}

/** True if the stretch between two points touches the box. */
export function segmentMeetsBox(from: Point, to: Point, box: Box): boolean {
  if (isInBox(from, box) || isInBox(to, box)) return true;
  const [right, bottom] = [box.x + box.width, box.y + box.height];
  if (Math.max(from.x, to.x) < box.x || Math.min(from.x, to.x) > right) return false;
  if (Math.max(from.y, to.y) < box.y || Math.min(from.y, to.y) > bottom) return false;
  const around = corners(box);
  return edges(around).some(([start, end]) => segmentsCross(from, to, start, end));
}

/** How far the point is from the nearest edge of the outline. */
export function distanceToOutline(point: Point, outline: readonly Point[]): number {
  return Math.min(...edges(outline).map(([from, to]) => distanceToSegment(point, from, to)));
}

/** True if the stretch between two points crosses the outline or lies within it. */
export function segmentMeetsOutline(from: Point, to: Point, outline: readonly Point[]): boolean {
  return isInside(from, outline) || edges(outline).some(([start, end]) => segmentsCross(from, to, start, end));
}

/** How many points of its own grid a shape is tried at, and how many of those are handed back at most. */
const gridPoints = 300;
const mostInnerPoints = 24;

/**
 * Up to 24 points well inside the outline and outside all that is cut out of it: they keep `leastDistance` from
 * every edge, or are the innermost ones where the outline is too thin for that. Together they cover the shape.
 */
export function innerPoints(
  outline: readonly Point[],
  cutOut: readonly (readonly Point[])[],
  leastDistance: number,
): readonly Point[] {
  const box = boxAround(outline);
  const step = Math.max(1, Math.sqrt((box.width * box.height) / gridPoints));
  const found: { readonly point: Point; readonly distance: number }[] = [];
  for (let y = box.y + step / 2; y < box.y + box.height; y += step) {
    for (let x = box.x + step / 2; x < box.x + box.width; x += step) {
      const point = { x, y };
      if (!isInside(point, outline) || cutOut.some((hole) => isInside(point, hole))) continue;
      found.push({ point, distance: Math.min(...[outline, ...cutOut].map((line) => distanceToOutline(point, line))) });
    }
  }
  const enough = Math.min(leastDistance, 0.8 * Math.max(...found.map(({ distance }) => distance), 0));
  const enoughFound = found.filter(({ distance }) => distance >= enough).map(({ point }) => point);
  const every = Math.ceil(enoughFound.length / mostInnerPoints);
  const inner = enoughFound.filter((_, index) => index % every === 0);
  // An outline thinner than the grid has no grid point inside: its corners are on it, at least.
  return inner.length === 0 ? outline : inner;
}

function edges(outline: readonly Point[]): (readonly [Point, Point])[] {
  return outline.map((from, index) => [from, outline[(index + 1) % outline.length] ?? from] as const);
}

function corners({ x, y, width, height }: Box): Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}

function isInBox(point: Point, box: Box): boolean {
  return point.x >= box.x && point.x <= box.x + box.width && point.y >= box.y && point.y <= box.y + box.height;
}

function crosses(box: Box, outline: readonly Point[]): boolean {
  return outline.some((from, index) => segmentMeetsBox(from, outline[(index + 1) % outline.length] ?? from, box));
}

function segmentsCross(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) => Math.sign((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x));
  return side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}

function distanceToSegment(point: Point, from: Point, to: Point): number {
  const length = (to.x - from.x) ** 2 + (to.y - from.y) ** 2;
  const along = length === 0 ? 0 : ((point.x - from.x) * (to.x - from.x) + (point.y - from.y) * (to.y - from.y)) / length;
  const at = Math.min(1, Math.max(0, along));
  return Math.hypot(point.x - from.x - at * (to.x - from.x), point.y - from.y - at * (to.y - from.y));
}
