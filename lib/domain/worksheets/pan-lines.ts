import { type EffectiveSwath, type PanLine, type PanShare } from "#domain/equipment/pan-line";
import { averageOf } from "#domain/equipment/repeats";
import { coefficientOfVariationPercent, type DrivingPattern, overlappedShares, placesAcross } from "#domain/equipment/spread-pattern";
import { figure, inUnit } from "#domain/mixing/ticket-working-words";
import { type ExactQuantity, type Measure, multiplyExact, ratioExact } from "#domain/quantities/exact-quantity";
import { addRational, compareRational, divideRational, fromNumber, multiplyRational, ONE, type Rational, rational, subtractRational, toNumber, ZERO } from "#domain/quantities/rational";

// The arithmetic of a line of pans, line by line: where half of the middle's catch falls, what the passes add up to at
// each place across the lawn, and how far those places differ.

interface Pans {
  readonly line: PanLine;
  readonly swath: Measure<"length">;
  readonly effective: EffectiveSwath;
  readonly pattern: DrivingPattern;
  /** What lies on the lawn across one swath, or two, from the middle of a pass on. */
  readonly overlapped: readonly Rational[];
}

/** Square roots and what is made of them are floating; so many digits of them are shown. */
const ROOT_DECIMALS = 9;

/** Every step of a line of pans. */
export function panLines(pans: Pans): readonly string[] {
  const { line, effective } = pans;
  const middleCatch = line.catches[line.middle] ?? ZERO;
  const half = divideRational(middleCatch, rational(2n));
  const { left, right, swath } = effective;
  return [
    `Half of the middle's catch: ${figure(middleCatch)} ÷ 2 = ${figure(half)}.`,
    ...sideLines("left", line.catches.slice(0, line.middle + 1).toReversed(), half, line, left),
    ...sideLines("right", line.catches.slice(line.middle), half, line, right),
    `Effective swath: ${inUnit(left, "ft")} + ${inUnit(right, "ft")} = ${inUnit(swath, "ft")}.`,
    ...placeLines(pans),
    ...variationLines(pans.overlapped),
  ];
}

/** Where the catch comes down to half, on the straight line between two pans. */
function sideLines(side: "left" | "right", outward: readonly Rational[], half: Rational, { spacing }: PanLine, reach: ExactQuantity<"length">): readonly string[] {
  const beyond = outward.findIndex((value) => compareRational(value, half) <= 0);
  const [before, after] = [outward[beyond - 1] ?? half, outward[beyond] ?? half];
  const pans = ratioExact(reach, spacing);
  const [toHalf, fall] = [subtractRational(before, half), subtractRational(before, after)];
  const nearer = String(beyond - 1);
  return [
    `On the ${side} the catch comes down to that between pan ${nearer} from the middle with ${figure(before)} and pan ${String(beyond)} with ${figure(after)}.`,
    `Down to half: ${figure(before)} − ${figure(half)} = ${figure(toHalf)}; from pan to pan: ${figure(before)} − ${figure(after)} = ${figure(fall)}; so after pans: ${nearer} + ${figure(toHalf)} ÷ ${figure(fall)} = ${figure(pans)}.`,
    `To the ${side}: ${figure(pans)} × ${inUnit(spacing, "ft")} = ${inUnit(reach, "ft")}.`,
  ];
}

function shareWords({ caught, part }: PanShare): string {
  return compareRational(part, ONE) === 0 ? figure(caught) : `${figure(caught)} × ${figure(part)}`;
}

/** What the passes add up to at each place across the lawn. */
function placeLines({ line, swath, pattern, overlapped }: Pans): readonly string[] {
  const places = placesAcross(line, swath, pattern).map((place, index) => {
    const shares = overlappedShares(line, swath, pattern, place);
    const parts = [...new Set(shares.filter(({ part }) => compareRational(part, ONE) !== 0).map(({ part }) => figure(part)))];
    const between = parts.length === 0 ? "" : ` (between two pans, ${parts.join(" and ")} of them)`;
    return `At ${inUnit(multiplyExact(line.spacing, place), "ft")}${between}: ${shares.length === 0 ? "0" : shares.map(shareWords).join(" + ")} = ${figure(overlapped[index] ?? ZERO)}.`;
  });
  return [`Passes ${inUnit(swath, "ft")} apart lie on one another. Counted from the middle of a pass, the catches of all passes that reach a place add up to what lies there.`, ...places];
}

/** The standard deviation of a sample over its average. */
function variationLines(overlapped: readonly Rational[]): readonly string[] {
  const count = overlapped.length;
  const [average, all] = [averageOf(overlapped), overlapped.reduce(addRational, ZERO)];
  const distances = overlapped.map((value) => (compareRational(value, average) < 0 ? subtractRational(average, value) : subtractRational(value, average)));
  const squares = distances.map((distance) => multiplyRational(distance, distance));
  const squared = squares.reduce(addRational, ZERO);
  const variance = divideRational(squared, rational(BigInt(count - 1)));
  const deviation = fromNumber(Math.sqrt(toNumber(variance)), ROOT_DECIMALS);
  const variation = fromNumber(coefficientOfVariationPercent(overlapped.map(toNumber)), ROOT_DECIMALS);
  return [
    `All ${String(count)} places: ${overlapped.map(figure).join(" + ")} = ${figure(all)}.`,
    `Average of ${String(count)} places: ${figure(all)} ÷ ${String(count)} = ${figure(average)}.`,
    ...overlapped.map((value, index) => distanceLine(value, average, distances[index] ?? ZERO, squares[index] ?? ZERO)),
    `Squares: ${squares.map(figure).join(" + ")} = ${figure(squared)}.`,
    `One less than the places: ${String(count)} − 1 = ${String(count - 1)}.`,
    `Variance: ${figure(squared)} ÷ ${String(count - 1)} = ${figure(variance)}.`,
    `Standard deviation, the root of it: √ ${figure(variance)} = ${figure(deviation)}.`,
    `CV: ${figure(deviation)} ÷ ${figure(average)} = ${figure(variation)}%.`,
  ];
}

function distanceLine(value: Rational, average: Rational, distance: Rational, square: Rational): string {
  const [larger, smaller] = compareRational(value, average) < 0 ? [average, value] : [value, average];
  return `From the average, and squared: ${figure(larger)} − ${figure(smaller)} = ${figure(distance)}; ${figure(distance)} × ${figure(distance)} = ${figure(square)}.`;
}
