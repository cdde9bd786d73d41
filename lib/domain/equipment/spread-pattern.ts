import { caughtAt, type PanLine, type PanShare, refusePanLine, sharesAt } from "#domain/equipment/pan-line";
import { type Finding, takeCare } from "#domain/foundation/finding";
import { invariant } from "#domain/foundation/invariant";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { compareExact, type ExactQuantity, type Measure, multiplyExact, ratioExact } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import {
  addRational,
  compareRational,
  divideRational,
  multiplyRational,
  negateRational,
  type Rational,
  rational,
  reduce,
  roundToWhole,
  subtractRational,
  toNumber,
  ZERO,
} from "#domain/quantities/rational";

/** How one pass lies to the next: round and round (right on left), or back and forth (right on right, left on left). */
export type DrivingPattern = "round-and-round" | "back-and-forth";

/** From what coefficient of variation on a spread is striped, in percent, where a company has set nothing else. */
export const USUAL_VARIATION_LIMIT = {
  percent: 15,
  citation: "Fertilizer Australia, What Do The Accu-Spread Graphs Mean?: industry benchmark of 15 percent or less",
} as const;

/**
 * 100 times the standard deviation over the average. The standard deviation is that of a sample (over n - 1), as
 * spreadsheets and the test standards for spreaders take it (from memory); the pages read leave it open. Throws for
 * fewer than two values and for an average of zero.
 */
export function coefficientOfVariationPercent(values: readonly number[]): number {
  invariant(values.length > 1, "a deviation is among two values or more");
  const average = values.reduce((total, value) => total + value, 0) / values.length;
  invariant(average > 0, "what varies has an average above zero");
  const squares = values.reduce((total, value) => total + (value - average) ** 2, 0);
  return (100 * Math.sqrt(squares / (values.length - 1))) / average;
}

/** The narrowest swath that can be judged, in pan spacings: two samples of a lawn at least. */
const NARROWEST_SPACINGS = rational(2n);

function spacingsOf({ spacing }: PanLine, swath: Measure<"length">): Rational {
  return reduce(ratioExact(swath, spacing));
}

/** Where a place lies in each pass that reaches it: those whose middle is at most so many pan spacings away. */
function inEachPass({ catches }: PanLine, spacings: Rational, pattern: DrivingPattern, place: Rational): readonly Rational[] {
  const reach = rational(BigInt(catches.length));
  const first = roundToWhole(divideRational(subtractRational(place, reach), spacings), "up");
  const last = roundToWhole(divideRational(addRational(place, reach), spacings), "down");
  return Array.from({ length: Number(last - first) + 1 }, (_, index) => {
    const pass = first + BigInt(index);
    const fromMiddle = subtractRational(place, multiplyRational(spacings, rational(pass)));
    return pattern === "back-and-forth" && pass % 2n !== 0n ? negateRational(fromMiddle) : fromMiddle;
  });
}

/**
 * The catches of all passes that lie on one another at a place, in pan spacings from the middle of a pass; empty pans
 * are left out. Throws at a swath of nothing and for pans zero apart.
 */
export function overlappedShares(line: PanLine, swath: Measure<"length">, pattern: DrivingPattern, place: Rational): readonly PanShare[] {
  return inEachPass(line, spacingsOf(line, swath), pattern, place).flatMap((one) => sharesAt(line, one)).filter(({ caught }) => caught.numerator > 0n);
}

function overlapAt(line: PanLine, spacings: Rational, pattern: DrivingPattern, place: Rational): Rational {
  return reduce(inEachPass(line, spacings, pattern, place).map((one) => caughtAt(line, one)).reduce(addRational, ZERO));
}

/**
 * The places that are looked at across one swath (two, when every other pass is turned round), a pan apart or closer,
 * in pan spacings from the middle of a pass. Throws at a swath of nothing and for pans zero apart.
 */
export function placesAcross(line: PanLine, swath: Measure<"length">, pattern: DrivingPattern): readonly Rational[] {
  const period = multiplyRational(spacingsOf(line, swath), rational(pattern === "back-and-forth" ? 2n : 1n));
  const samples = roundToWhole(period, "up");
  const step = divideRational(period, rational(samples));
  return Array.from({ length: Number(samples) }, (_, index) => multiplyRational(step, rational(BigInt(index))));
}

/**
 * What lies on the lawn at each of those places. Refused: a line that refusePanLine refuses; a `swath` under two pan
 * spacings, or wider than the line of pans, beyond which nobody measured.
 */
export function overlappedCatches(line: PanLine, swath: Measure<"length">, pattern: DrivingPattern): Outcome<readonly Rational[]> {
  const refused = refusePanLine(line);
  if (refused !== undefined) return refused;
  const spacings = spacingsOf(line, swath);
  if (compareRational(spacings, NARROWEST_SPACINGS) < 0) {
    const least = formatQuantity(multiplyExact(line.spacing, NARROWEST_SPACINGS), "us");
    const found = formatQuantity(swath, "us");
    return badInput("swath", found, `${least} or more`, `A swath of ${found} is too narrow for pans this far apart.`);
  }
  const width = multiplyExact(line.spacing, rational(BigInt(line.catches.length)));
  if (compareExact(swath, width) > 0) {
    const [most, found] = [formatQuantity(width, "us"), formatQuantity(swath, "us")];
    return badInput("swath", found, `up to ${most}`, `A swath of ${found} is wider than the ${String(line.catches.length)} pans, which reach ${most}.`);
  }
  return accept(placesAcross(line, swath, pattern).map((place) => overlapAt(line, spacings, pattern, place)));
}

/** A swath with the coefficient of variation, in percent, of what lies on the lawn at it. */
export interface WidthVariation {
  readonly swath: Measure<"length">;
  readonly variationPercent: number;
}

/**
 * How even the lawn comes out at a swath: the coefficient of variation of the overlapped passes. Refused as
 * overlappedCatches refuses. Throws where nothing was caught at any place.
 */
export function variationAtSwath(line: PanLine, swath: Measure<"length">, pattern: DrivingPattern): Outcome<WidthVariation> {
  const catches = overlappedCatches(line, swath, pattern);
  if (!catches.ok) return catches;
  return accept({ swath, variationPercent: coefficientOfVariationPercent(catches.value.map(toNumber)) });
}

/** Swaths next to one another that are all even enough. */
export interface SwathRange {
  readonly from: Measure<"length">;
  readonly to: Measure<"length">;
}

/** How even the lawn comes out at each swath that was tried, and which are even enough. */
export interface SwathSearch {
  /** Every swath tried, from the narrowest, with its variation. */
  readonly table: readonly WidthVariation[];
  /** Every range that is even enough. There may be several: variation does not rise steadily with the swath. */
  readonly accepted: readonly SwathRange[];
}

/**
 * Tries all swaths from two pan spacings to the length of the line, half a spacing apart, and gives back every range
 * whose variation stays within the limit (in percent). Refused as variationAtSwath refuses. Source: Fertilizer
 * Australia and University of Illinois (SPAT I): variation is told against the swath and does not rise steadily with
 * it.
 */
export function searchSwaths(line: PanLine, pattern: DrivingPattern, limitPercent: number): Outcome<SwathSearch> {
  const table: WidthVariation[] = [];
  for (const swath of swathsToTry(line)) {
    const tried = variationAtSwath(line, swath, pattern);
    if (!tried.ok) return tried;
    table.push(tried.value);
  }
  const accepted: SwathRange[] = [];
  let isOpen = false;
  for (const { swath, variationPercent } of table) {
    const isEven = variationPercent <= limitPercent;
    const last = accepted.at(-1);
    if (isEven && isOpen && last !== undefined) accepted[accepted.length - 1] = { from: last.from, to: swath };
    else if (isEven) accepted.push({ from: swath, to: swath });
    isOpen = isEven;
  }
  return accept({ table, accepted });
}

function swathsToTry({ spacing, catches }: PanLine): readonly ExactQuantity<"length">[] {
  const halves = Math.max(1, 2 * (catches.length - 1) - 3);
  return Array.from({ length: halves }, (_, index) => multiplyExact(spacing, rational(BigInt(index + 4), 2n)));
}

/** A swath that comes out striped (above the limit, in percent), as a finding; nothing when it is even enough. */
export function judgeVariation(
  { swath, variationPercent }: WidthVariation,
  limit: { readonly percent: number; readonly citation?: string },
): readonly Finding[] {
  if (variationPercent <= limit.percent) return [];
  return [
    takeCare({
      rule: "spread-uneven",
      source: limit.citation === undefined ? "house" : "handbook",
      what: `At a swath of ${formatQuantity(swath, "us")} the spread comes out striped.`,
      figure: `The coefficient of variation is ${Math.round(variationPercent * 10) / 10}%; up to ${limit.percent}% is even enough.`,
      toDo: "Take a swath from the accepted ones, or half the swath at half the rate, side by side.",
      ...(limit.citation === undefined ? {} : { citation: limit.citation }),
      about: [],
    }),
  ];
}
