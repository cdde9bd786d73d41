import { invariant } from "#domain/foundation/invariant";
import {
  canonicalAmountOf,
  compareExact,
  type ExactQuantity,
  fromExactAmount,
  type Measure,
  multiplyExact,
  settle,
} from "#domain/quantities/exact-quantity";
import { type Quantity, subtract } from "#domain/quantities/quantity";
import {
  addRational,
  divideRational,
  multiplyRational,
  ONE,
  type Rational,
  reduce,
  roundToWhole,
  type RoundingMode,
} from "#domain/quantities/rational";
import { type Dimension, requireDimension } from "#domain/quantities/units";

/**
 * Rounding to the marks of a measuring tool: to the nearest mark (half a mark goes up), or to the one below or above.
 */
export type GraduationMode = Extract<RoundingMode, "nearest" | "down" | "up">;

/**
 * What a rounding to a measuring tool gave. `below-first-mark` is an answer of its own, because an amount that rounds
 * to nothing needs a finer tool and must not pass as "measure out none".
 */
export type GraduationRounding<D extends Dimension> =
  | {
      readonly kind: "rounded";
      /** What to measure out, on a mark of the tool. */
      readonly rounded: Quantity<D>;
      /** The number of marks: nine marks of a half-ounce cup. */
      readonly marks: bigint;
      /** What was asked for, before rounding. */
      readonly exact: ExactQuantity<D>;
      readonly direction: "up" | "down" | "unchanged";
      /** What the rate becomes: rounded over exact, in lowest terms. Scale the planned rate by it. */
      readonly ofPlanned: Rational;
      /** Whether a maximum, and not the mode, decided the mark. */
      readonly heldByMaximum: boolean;
    }
  | { readonly kind: "below-first-mark"; readonly exact: ExactQuantity<D>; readonly heldByMaximum: boolean };

/**
 * Rounds an amount to a mark of the tool that measures it. The result never passes `neverAbove` (a label's or a law's
 * maximum): there the mark below the maximum is taken. An amount that is itself above the maximum is brought down to it
 * in the same way, and `heldByMaximum` says so. The graduation is exact, so that a hundred hundredths of a gallon make
 * one. Throws for marks that are not apart.
 */
export function roundToGraduation<D extends Dimension>(
  measure: Measure<D>,
  graduation: Measure<NoInfer<D>>,
  how: { readonly mode: GraduationMode; readonly neverAbove?: Measure<NoInfer<D>> },
): GraduationRounding<D> {
  const { dimension } = measure;
  const amount = canonicalAmountOf(measure);
  const mark = canonicalAmountOf(graduation);
  requireDimension(graduation, dimension);
  invariant(mark.numerator > 0n, "the marks of a tool are apart");
  const exact = fromExactAmount(dimension, amount);
  const wanted = roundToWhole(divideRational(amount, mark), how.mode);
  const within = how.neverAbove === undefined ? wanted : marksWithin(how.neverAbove, graduation);
  const marks = wanted > within ? within : wanted;
  const heldByMaximum = wanted > within;
  if (marks === 0n && amount.numerator > 0n) return { kind: "below-first-mark", exact, heldByMaximum };
  const onMark = fromExactAmount(dimension, multiplyRational(mark, { numerator: marks, denominator: 1n }));
  return {
    kind: "rounded",
    rounded: settleWithin(onMark, how.neverAbove),
    marks,
    exact,
    direction: directionOf(compareExact(onMark, measure)),
    // Worked out where it is asked for: the fractions are long, and a day measures thousands of amounts.
    get ofPlanned() {
      return marks === 0n ? ONE : reduce(divideRational(onMark.exactAmount, amount));
    },
    heldByMaximum,
  };
}

/**
 * The marks that fit under a maximum. Half a canonical unit is allowed for, because a maximum of 0.33 gal that comes
 * from storage is a whole number of them and lies that close to its own mark, the thirty-third of a meter that reads
 * hundredths of a gallon. Throws for marks that are not apart.
 */
export function marksWithin<D extends Dimension>(maximum: Measure<D>, graduation: Measure<NoInfer<D>>): bigint {
  requireDimension(maximum, graduation.dimension);
  const reach = addRational(canonicalAmountOf(maximum), { numerator: 1n, denominator: 2n });
  return roundToWhole(divideRational(reach, canonicalAmountOf(graduation)), "down");
}

/**
 * The marks of a tool nearest to an amount, whatever the maximum; half a mark goes up. Throws for marks that are not
 * apart.
 */
export function nearestMarks<D extends Dimension>(measure: Measure<D>, graduation: Measure<NoInfer<D>>): bigint {
  requireDimension(graduation, measure.dimension);
  return roundToWhole(divideRational(canonicalAmountOf(measure), canonicalAmountOf(graduation)), "nearest");
}

/** A mark as it is stored: to the nearest canonical unit, or to the last one under a maximum that this would pass. */
function settleWithin<D extends Dimension>(onMark: ExactQuantity<D>, maximum: Measure<NoInfer<D>> | undefined): Quantity<D> {
  const nearest = settle(onMark, "nearest");
  if (maximum === undefined || compareExact(nearest, maximum) <= 0) return nearest;
  return settle(fromExactAmount(onMark.dimension, canonicalAmountOf(maximum)), "down");
}

function directionOf(comparison: -1 | 0 | 1): "up" | "down" | "unchanged" {
  if (comparison === 0) return "unchanged";
  return comparison > 0 ? "up" : "down";
}

/**
 * Whole bags for a loading list: enough for the need, and what will come back in the open one. Throws for a bag that
 * holds nothing.
 */
export function wholeBagsFor<D extends Dimension>(
  need: Measure<D>,
  bagSize: Quantity<NoInfer<D>>,
): { readonly bags: bigint; readonly total: Quantity<D>; readonly leftOver: Quantity<D> } {
  invariant(bagSize.amount > 0n, "a bag holds something");
  requireDimension(bagSize, need.dimension);
  const bags = roundToWhole(divideRational(canonicalAmountOf(need), canonicalAmountOf(bagSize)), "up");
  const total: Quantity<D> = { dimension: need.dimension, amount: bagSize.amount * bags };
  return { bags, total, leftOver: subtract(total, settle(need, "up")) };
}

/** Marks of a tool as an amount: nine marks of a half-ounce cup, to the nearest canonical unit. Throws below zero. */
export function amountOfMarks<D extends Dimension>(graduation: Measure<D>, marks: bigint): Quantity<D> {
  return settle(multiplyExact(graduation, { numerator: marks, denominator: 1n }), "nearest");
}
