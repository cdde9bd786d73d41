import { invariant } from "#domain/foundation/invariant";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { add, compare, type Quantity, subtract, zero } from "#domain/quantities/quantity";
import { decimal, divideRational, type Rational, roundQuotient, subtractRational } from "#domain/quantities/rational";
import { LENGTHS_SQUARED_PER_AREA, requireDimension } from "#domain/quantities/units";
import { areaOfCorners, type Corner, haveCrossingSides, withoutRepeats } from "#domain/turf/polygon-area";

type Length = Quantity<"length">;

/**
 * A piece of ground as it was measured. Two kinds have a rule of thumb beside the exact form, and the offsets two
 * conventions; each is named, so that nobody mistakes one for the other.
 */
export type MeasuredShape =
  | { readonly kind: "rectangle"; readonly length: Length; readonly width: Length }
  | { readonly kind: "triangle"; readonly base: Length; readonly height: Length }
  | { readonly kind: "trapezoid"; readonly parallelSides: readonly [Length, Length]; readonly height: Length }
  | { readonly kind: "circle"; readonly radius: Length }
  /** 0.8 times the diameter squared: within 5 %. */
  | { readonly kind: "circle by rule of thumb"; readonly diameter: Length }
  /** An ellipse: a quarter of pi times length times width. */
  | { readonly kind: "oval"; readonly length: Length; readonly width: Length }
  /** 0.8 times length times width. */
  | { readonly kind: "oval by rule of thumb"; readonly length: Length; readonly width: Length }
  /**
   * Widths at even steps along a line, added up and times the step: the shape ends in a point one step past each end.
   */
  | { readonly kind: "offsets, sum of widths"; readonly step: Length; readonly widths: readonly Length[] }
  /**
   * Widths at even steps along a line, the first and the last counted half: the shape ends at the first and last width.
   */
  | { readonly kind: "offsets, trapezoids"; readonly step: Length; readonly widths: readonly Length[] }
  /** Distances from a middle point to the edge at even angles: pi times their average squared. */
  | { readonly kind: "average radius"; readonly radii: readonly Length[] }
  /** Corners in order round the piece, on a flat grid. */
  | { readonly kind: "corners"; readonly corners: readonly Corner[] };

/** An area as it came out, by which method, and how far that may be off. */
export interface AreaMeasurement {
  readonly area: Quantity<"area">;
  readonly method: MeasuredShape["kind"];
  /** The most by which the method itself may be off, as a part of the area, where the method gives one. */
  readonly uncertainty:
    | { readonly kind: "stated"; readonly part: Rational; readonly source: string }
    /** From the spread of the measurements themselves. */
    | { readonly kind: "from-measurements"; readonly part: Rational }
    | { readonly kind: "not-given" };
}

/** Pi to 35 digits: far beyond what a tape can tell. */
const PI = decimal("3.14159265358979323846264338327950288");
/** Of a circle's diameter squared, or an oval's length times width, within 5 %. Source: as named below. */
const RULE_OF_THUMB = decimal("0.8");
const RULE_OF_THUMB_ERROR = {
  kind: "stated",
  part: decimal("0.05"),
  source: "Grounds Maintenance, Calculate areas, http://grounds-mag.com/mag/grounds_maintenance_calculate_areas/",
} as const;
const NOT_GIVEN = { kind: "not-given" } as const;

/** Fewer measurements than these make no area (geometry); under four radii say nothing of a shape (common practice). */
const FEWEST_WIDTHS = 2;
const FEWEST_RADII = 4;
const FEWEST_CORNERS = 3;

/** So many lengths squared, times a factor, to the nearest canonical area: the one rounding of this file. */
function settleArea(lengthsSquared: bigint, factor: Rational = { numerator: 1n, denominator: 1n }): Quantity<"area"> {
  return {
    dimension: "area",
    amount: roundQuotient(lengthsSquared * factor.numerator, factor.denominator * LENGTHS_SQUARED_PER_AREA, "nearest"),
  };
}

function lengthsOf(shape: MeasuredShape): readonly Length[] {
  switch (shape.kind) {
    case "rectangle":
    case "oval":
    case "oval by rule of thumb":
      return [shape.length, shape.width];
    case "triangle":
      return [shape.base, shape.height];
    case "trapezoid":
      return [...shape.parallelSides, shape.height];
    case "circle":
      return [shape.radius];
    case "circle by rule of thumb":
      return [shape.diameter];
    case "offsets, sum of widths":
    case "offsets, trapezoids":
      return [shape.step, ...shape.widths];
    case "average radius":
      return shape.radii;
    case "corners":
      return [];
  }
}

function sumOfAmounts(lengths: readonly Length[]): bigint {
  return lengths.reduce((total, length) => total + length.amount, 0n);
}

function measureOffsets(
  shape: MeasuredShape & { readonly kind: "offsets, sum of widths" | "offsets, trapezoids" },
): Quantity<"area"> {
  const total = sumOfAmounts(shape.widths);
  if (shape.kind === "offsets, sum of widths") return settleArea(total * shape.step.amount);
  const [first, last] = [shape.widths[0], shape.widths.at(-1)];
  invariant(first !== undefined && last !== undefined, "offsets have widths");
  return settleArea((2n * total - first.amount - last.amount) * shape.step.amount, { numerator: 1n, denominator: 2n });
}

/**
 * Pi times the average radius squared. The average of the squares, which a circle cut in sectors would have, is never
 * smaller; how much larger it is, is the uncertainty.
 */
function measureAverageRadius(radii: readonly Length[]): AreaMeasurement {
  const count = BigInt(radii.length);
  const total = sumOfAmounts(radii);
  const squares = radii.reduce((sum, radius) => sum + radius.amount * radius.amount, 0n);
  const part = subtractRational(
    divideRational(
      { numerator: squares, denominator: count },
      { numerator: total * total, denominator: count * count },
    ),
    { numerator: 1n, denominator: 1n },
  );
  return {
    area: settleArea(total * total, { numerator: PI.numerator, denominator: PI.denominator * count * count }),
    method: "average radius",
    uncertainty: { kind: "from-measurements", part },
  };
}

function measure(shape: MeasuredShape): AreaMeasurement {
  const exactly = (area: Quantity<"area">): AreaMeasurement => ({ area, method: shape.kind, uncertainty: NOT_GIVEN });
  switch (shape.kind) {
    case "rectangle":
      return exactly(settleArea(shape.length.amount * shape.width.amount));
    case "triangle":
      return exactly(settleArea(shape.base.amount * shape.height.amount, { numerator: 1n, denominator: 2n }));
    case "trapezoid": {
      const sides = sumOfAmounts(shape.parallelSides);
      return exactly(settleArea(sides * shape.height.amount, { numerator: 1n, denominator: 2n }));
    }
    case "circle":
      return exactly(settleArea(shape.radius.amount ** 2n, PI));
    case "circle by rule of thumb": {
      const area = settleArea(shape.diameter.amount ** 2n, RULE_OF_THUMB);
      return { area, method: shape.kind, uncertainty: RULE_OF_THUMB_ERROR };
    }
    case "oval": {
      const quarterOfPi = { numerator: PI.numerator, denominator: PI.denominator * 4n };
      return exactly(settleArea(shape.length.amount * shape.width.amount, quarterOfPi));
    }
    case "oval by rule of thumb":
      return exactly(settleArea(shape.length.amount * shape.width.amount, RULE_OF_THUMB));
    case "offsets, sum of widths":
    case "offsets, trapezoids":
      return exactly(measureOffsets(shape));
    case "average radius":
      return measureAverageRadius(shape.radii);
    case "corners":
      return exactly(areaOfCorners(shape.corners));
  }
}

const ONE_OF = { widths: "width", radii: "radius", corners: "corner" } as const;

function refuseCount(what: keyof typeof ONE_OF, found: number, fewest: number) {
  return badInput(
    what,
    String(found),
    `${fewest} or more`,
    `${found === 1 ? `1 ${ONE_OF[what]} is` : `${found} ${what} are`} not enough to make an area; measure at least ${fewest}.`,
  );
}

/** No side of a lawn is longer, in feet: a longer one is a slip of the pen or of the unit. Common practice. */
export const FARTHEST_FEET = 10_000;

/**
 * The area of a measured piece, rounded once, to the nearest canonical area (0.04 mm2). Refused: too few measurements
 * for the method (`widths`, `radii`, `corners`), a piece without any area (`area`), corners whose sides cross
 * (`corners`). Source of the offsets and rules of thumb: Grounds Maintenance, Calculate areas; of the average radius:
 * common practice; else geometry.
 */
export function measureArea(shape: MeasuredShape): Outcome<AreaMeasurement> {
  for (const length of lengthsOf(shape)) {
    requireDimension(length, "length");
  }
  if (shape.kind === "offsets, sum of widths" || shape.kind === "offsets, trapezoids") {
    if (shape.widths.length < FEWEST_WIDTHS) return refuseCount("widths", shape.widths.length, FEWEST_WIDTHS);
  }
  if (shape.kind === "average radius" && shape.radii.length < FEWEST_RADII) {
    return refuseCount("radii", shape.radii.length, FEWEST_RADII);
  }
  if (shape.kind === "corners") {
    const corners = withoutRepeats(shape.corners);
    if (corners.length < FEWEST_CORNERS) return refuseCount("corners", corners.length, FEWEST_CORNERS);
    if (haveCrossingSides(corners)) {
      const sentence = "Two sides of this outline cross or touch. Enter the corners in order, once round the piece.";
      return badInput("corners", "sides that cross", "corners in order round the piece", sentence);
    }
  }
  const isWithoutArea = (length: Length): boolean => length.amount === 0n;
  if (shape.kind === "average radius" && shape.radii.every(isWithoutArea)) return refuseNoArea();
  const measured = measure(shape);
  return measured.area.amount === 0n ? refuseNoArea() : accept(measured);
}

function refuseNoArea() {
  return badInput("area", "0 sq ft", "more than nothing", "These measurements make no area.");
}

/** A piece of a lawn, or a bed, house or drive that is cut out of it. */
export interface MeasuredPiece {
  readonly use: "lawn" | "cut-out";
  readonly measurement: AreaMeasurement;
}

/**
 * The lawn that is left of its pieces when the cut-outs are taken away. Refused at "cut-outs" when they are the larger.
 */
export function lawnAreaOf(pieces: readonly MeasuredPiece[]): Outcome<Quantity<"area">> {
  let lawn = zero("area");
  let cutOut = zero("area");
  for (const piece of pieces) {
    if (piece.use === "lawn") lawn = add(lawn, piece.measurement.area);
    else cutOut = add(cutOut, piece.measurement.area);
  }
  if (compare(cutOut, lawn) > 0) {
    return badInput(
      "cut-outs",
      "more than the lawn",
      "at most the lawn's own area",
      "The beds and hard surfaces that are cut out are larger than the lawn they are cut from.",
    );
  }
  return accept(subtract(lawn, cutOut));
}
