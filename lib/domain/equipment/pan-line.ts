import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { addExact, canonicalAmountOf, type ExactQuantity, type Measure, multiplyExact } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import {
  addRational,
  compareRational,
  divideRational,
  multiplyRational,
  ONE,
  type Rational,
  rational,
  reduce,
  roundToWhole,
  subtractRational,
  ZERO,
} from "#domain/quantities/rational";

/** A row of equal pans across the spreader's way, one under its middle, caught by one or more passes the same way. */
export interface PanLine {
  /** From the middle of one pan to the middle of the next. */
  readonly spacing: Measure<"length">;
  /** From the left to the right as the operator sees it, all in one unit: grams, or the depth in equal vials. */
  readonly catches: readonly Rational[];
  /** The place of the middle pan in that list, from zero. */
  readonly middle: number;
}

/** Fewer pans show no pattern: one in the middle and two on either side. Common practice. */
const FEWEST_PANS = 5;
/** Far more than anybody sets out: a list this long was pasted by mistake. Common practice. */
const MOST_PANS = 200;
const HALF: Rational = { numerator: 1n, denominator: 2n };

/**
 * Refuses a line that no pattern can be read from: see effectiveSwath. The fields are `catches`, `spacing` and
 * `middle`. Undefined when it is fine.
 */
export function refusePanLine({ spacing, catches, middle }: PanLine) {
  if (catches.length < FEWEST_PANS) {
    const sentence = `${catches.length === 1 ? "1 pan shows" : `${catches.length} pans show`} no pattern; set out at least ${FEWEST_PANS}.`;
    return badInput("catches", String(catches.length), `${FEWEST_PANS} or more`, sentence);
  }
  if (catches.length > MOST_PANS) {
    const sentence = `${catches.length} pans are more than a line has; enter those of one line.`;
    return badInput("catches", String(catches.length), `${MOST_PANS} or fewer`, sentence);
  }
  if (catches.some(({ numerator }) => numerator < 0n)) {
    return badInput("catches", "less than nothing", "nothing or more", "A pan caught less than nothing; enter it again.");
  }
  if (canonicalAmountOf(spacing).numerator === 0n) {
    return badInput("spacing", "0 ft", "more than nothing", "The pans are zero apart; measure from middle to middle.");
  }
  const middleCatch = catches[middle];
  if (middleCatch === undefined) {
    return badInput("middle", String(middle), `0 to ${catches.length - 1}`, "The pan under the middle is not in the line.");
  }
  if (middleCatch.numerator === 0n) {
    return badInput("middle", "0", "more than nothing", "The pan under the middle of the spreader caught nothing.");
  }
  return undefined;
}

/** What a pan caught, and the part of it that lies at a place. */
export interface PanShare {
  readonly caught: Rational;
  readonly part: Rational;
}

/** The pans that tell what fell at a place, in pan spacings to the right of the middle: of two by how near each is, none beyond them. */
export function sharesAt({ catches, middle }: PanLine, place: Rational): readonly PanShare[] {
  const fromLeft = addRational(place, rational(BigInt(middle)));
  const left = roundToWhole(fromLeft, "down");
  const [here, next] = [catches[Number(left)], catches[Number(left) + 1]];
  const part = reduce(subtractRational(fromLeft, rational(left)));
  if (left < 0n || here === undefined) return [];
  if (part.numerator === 0n) return [{ caught: here, part: ONE }];
  return next === undefined ? [] : [{ caught: here, part: subtractRational(ONE, part) }, { caught: next, part }];
}

/**
 * What fell at a place, in pan spacings to the right of the middle: on the line between two pans, nothing beyond them.
 * The straight line is common practice.
 */
export function caughtAt(line: PanLine, place: Rational): Rational {
  return sharesAt(line, place).reduce((total, { caught, part }) => addRational(total, multiplyRational(caught, part)), ZERO);
}

/** How far apart the passes lie, and how far it reaches to either side. */
export interface EffectiveSwath {
  readonly swath: ExactQuantity<"length">;
  /** From the middle to where half of the middle's catch falls. */
  readonly left: ExactQuantity<"length">;
  readonly right: ExactQuantity<"length">;
  readonly findings: readonly Finding[];
}

/** The first place, going out from the middle, where the catch has come down to a level; in pan spacings. */
function placeOfLevel(outward: readonly Rational[], level: Rational): Rational | undefined {
  const beyond = outward.findIndex((value) => compareRational(value, level) <= 0);
  const [before, after] = [outward[beyond - 1], outward[beyond]];
  if (before === undefined || after === undefined) return undefined;
  const fall = subtractRational(before, after);
  return addRational(rational(BigInt(beyond - 1)), divideRational(subtractRational(before, level), fall));
}

/**
 * The effective swath: from the place on the left where half of the middle's catch falls to that on the right, on the
 * straight line between two pans. 4 in in the middle and 2 in at 6 ft on either side make 12 ft (Ohio State Bulletin
 * 817, http://ohioline.osu.edu/b817/b817_13.html). A side that reaches a pan or more farther gets a finding (common
 * practice). Refused: what refusePanLine refuses, and at `catches` a line that ends before half.
 */
export function effectiveSwath(line: PanLine): Outcome<EffectiveSwath> {
  const refused = refusePanLine(line);
  if (refused !== undefined) return refused;
  const { catches, middle, spacing } = line;
  const level = multiplyRational(catches[middle] ?? ZERO, HALF);
  const right = placeOfLevel(catches.slice(middle), level);
  const left = placeOfLevel(catches.slice(0, middle + 1).reverse(), level);
  if (right === undefined || left === undefined) {
    const side = right === undefined ? "right" : "left";
    const sentence = `On the ${side} the catch never comes down to half of the middle's. Set out a longer line of pans.`;
    return badInput("catches", `more than half at the end on the ${side}`, "half or less at both ends", sentence);
  }
  const [leftLength, rightLength] = [multiplyExact(spacing, left), multiplyExact(spacing, right)];
  return accept({
    swath: addExact(leftLength, rightLength),
    left: leftLength,
    right: rightLength,
    findings: [...lopsided(leftLength, rightLength, left, right), ...thrownBeyond(line)],
  });
}

function lopsided(
  leftLength: ExactQuantity<"length">,
  rightLength: ExactQuantity<"length">,
  left: Rational,
  right: Rational,
): readonly Finding[] {
  const difference = subtractRational(right, left);
  const isLopsided = compareRational(multiplyRational(difference, difference), ONE) >= 0;
  if (!isLopsided) return [];
  return [
    takeCare({
      rule: "spreader-throws-to-one-side",
      source: "common-practice",
      what: `The spreader throws farther to the ${difference.numerator > 0n ? "right" : "left"}.`,
      figure: `Half of the middle's catch falls at ${formatQuantity(leftLength, "us")} on the left and ${formatQuantity(rightLength, "us")} on the right.`,
      toDo: "Level the spreader and set where the product drops on the disk, then catch the line again.",
      about: [],
    }),
  ];
}

/** A catch in the last pan means that some fell beyond it. */
function thrownBeyond({ catches }: PanLine): readonly Finding[] {
  const ends = [catches[0], catches.at(-1)];
  if (ends.every((end) => end?.numerator === 0n)) return [];
  return [
    note({
      rule: "pan-line-short",
      source: "common-practice",
      what: "The last pan of the line caught something, so some product fell beyond it and was not counted.",
      toDo: "Set out more pans next time.",
      about: [],
    }),
  ];
}
