import { invariant } from "#domain/foundation/invariant";
import { type TankLoads } from "#domain/company/house-settings";
import { canonicalAmountOf, type Measure } from "#domain/quantities/exact-quantity";
import { type Quantity, smallest } from "#domain/quantities/quantity";
import { divideRational, type Rational, rational, roundToWhole } from "#domain/quantities/rational";
import { amountOfMarks, marksWithin } from "#domain/quantities/rounding";

/** What is taken from a tank at one place, in canonical units of volume. Draws of one run follow one another with one mix. */
export interface TankDraw {
  readonly volume: bigint;
  /** Whether the tank may be filled in the middle of it: there is water at the place, or it takes more than a tank by itself. */
  readonly mayBeInterrupted: boolean;
}

/** A tank as far as the sizes of its fills ask. */
export interface TankLimits {
  readonly mark: Measure<"volume">;
  /** What the tank may hold after a fill before each draw, in canonical units: its size, or less where weight keeps it down. */
  readonly most: readonly bigint[];
  /** What of this mix is in the tank before the first draw. */
  readonly already: bigint;
}

/** One fill: what is mixed, and what of each draw it serves. */
export interface FillSize {
  /** The draw before which it is made, or in which. It rides past any that takes nothing between that and its first part. */
  readonly madeAt: number;
  /** Nothing where what was in the tank before the run is enough. */
  readonly mixed: bigint;
  readonly parts: readonly { readonly draw: number; readonly volume: bigint }[];
}

/** The fills of a run with what is left after the last, or the draw at which the tank has no room. */
export type FillSizes =
  | { readonly kind: "sized"; readonly fills: readonly FillSize[]; readonly left: bigint }
  /** Where the tank may hold less than the next mark, however little is put in. */
  | { readonly kind: "no-room"; readonly draw: number };

/**
 * How much to mix for draws that follow one another: the fewest fills, and after them the least left over, which is
 * less than one mark of the gauge. Of plans with that many fills "same size every time" takes the one whose largest is
 * the smallest, "full tanks, then a short one" the one whose fills reach the farthest. A draw is interrupted only where
 * it may be, or where even a tank for it alone is too small. What was in the tank before is used first, even where it is
 * more than the tank may hold there: a limit keeps down what is mixed, and can't take anything out. Throws unless every draw
 * has its limit.
 */
export function sizeFills(draws: readonly TankDraw[], limits: TankLimits, how: TankLoads): FillSizes {
  invariant(draws.length === limits.most.length, "every draw has its limit");
  const run = runOf(draws, limits);
  // Fewest: a fill that ends sooner can have its end moved out to here without another fill, because what may be in the
  // tank never falls along the way (the exchange argument for intervals on a line). Least left: what is mixed up to any
  // point is the volume taken up to there, rounded up to the mark once for the run; what is over in one fill is aboard for
  // the next, and no fill mixes ahead by more, so that a stop which is not interrupted takes from one fill, as its record
  // names one. The smallest largest fill is found by halving: a size works if reaching as far as it allows takes no more.
  const farthest = cut(run, undefined);
  if (farthest.kind === "no-room" || how === "full-tanks-then-a-short-one" || farthest.fills.length < 2) return farthest;
  const allowed = farthest.fills.length;
  let [low, high] = [0n, marksUp(run, limits.most.reduce((most, one) => (one > most ? one : most), 0n))];
  let best: FillSizes = farthest;
  while (low + 1n < high) {
    const middle = (low + high) / 2n;
    const tried = cut(run, amountOfMarks(limits.mark, middle).amount);
    if (tried.kind === "sized" && tried.fills.length <= allowed) [high, best] = [middle, tried];
    else low = middle;
  }
  return best;
}

interface Run {
  readonly draws: readonly TankDraw[];
  readonly limits: TankLimits;
  readonly mark: Rational;
  /** How many of the draws take anything. */
  readonly taking: number;
  /** Taken before each draw, and all at the end. */
  readonly before: readonly bigint[];
}

function runOf(draws: readonly TankDraw[], limits: TankLimits): Run {
  const before = [0n];
  for (const { volume } of draws) before.push((before.at(-1) ?? 0n) + volume);
  return { draws, limits, before, taking: draws.filter(({ volume }) => volume > 0n).length, mark: canonicalAmountOf(limits.mark) };
}

function marksUp({ mark }: Run, volume: bigint): bigint {
  return roundToWhole(divideRational(rational(volume), mark), "up");
}

/** What has been aboard up to a point of the run, when all that it takes until there is. */
function aboardUpTo(run: Run, taken: bigint): bigint {
  const { already } = run.limits;
  return taken <= already ? already : already + mixedFor(taken - already, run.taking, run.limits.mark);
}

/**
 * What is mixed, in canonical units of volume, for so many draws that take so much together: up to the next mark of the
 * gauge. Draws are whole canonical units and marks need not be: half a unit for each draw is allowed for, so that draws
 * of whole marks stay whole marks.
 */
export function mixedFor(taken: bigint, draws: number, mark: Measure<"volume">): bigint {
  const over = rational(2n * taken - BigInt(draws), 2n);
  const marks = over.numerator <= 0n ? 0n : roundToWhole(divideRational(over, canonicalAmountOf(mark)), "up");
  const mixed = amountOfMarks(mark, marks).amount;
  return mixed < taken ? taken : mixed;
}

/** A tank up to the last mark of its gauge, in canonical units; half a unit is allowed for, because sizes are stored whole. */
export function toLastMark(capacity: Quantity<"volume">, mark: Measure<"volume">): bigint {
  return smallest(amountOfMarks(mark, marksWithin(capacity, mark)), capacity).amount;
}

/** The farthest point of the run that a fill reaches on a whole mark, where so much may have been aboard up to it. */
function reachOf(run: Run, mostUpTo: bigint): bigint {
  const { already, mark } = run.limits;
  if (mostUpTo <= already) return mostUpTo;
  const marks = roundToWhole(divideRational(rational(2n * (mostUpTo - already) + 1n, 2n), run.mark), "down");
  const reached = already + amountOfMarks(mark, marks).amount;
  return least(reached, mostUpTo);
}

/** What one fill serves: from where it is made up to where it reaches. */
interface Reach {
  readonly parts: FillSize["parts"];
  readonly to: bigint;
  /** The draw that the next fill begins with: the same one where this fill ends in the middle of it. */
  readonly draw: number;
}

/** Fills that reach as far as they may; none mixes more than `cap` where there is one. A cap forces no draw apart. */
function cut(run: Run, cap: bigint | undefined): FillSizes {
  const fills: FillSize[] = [];
  const end = run.before.at(-1) ?? 0n;
  let [from, draw, mixed] = [0n, 0, run.limits.already];
  while (from < end) {
    // A fill on the road is made for what it serves first; the very first one rides from the beginning, if it can.
    const served = firstServed(run, from, draw);
    const madeAt = fills.length > 0 || isBetterMadeAt(run, draw, served) ? served : draw;
    const reach = reachFrom(run, { from, draw: madeAt, mixed, cap });
    if (reach.to === from) return { kind: "no-room", draw: reach.draw };
    const aboard = aboardUpTo(run, reach.to);
    const last = fills.at(-1);
    // Where the rest of the fill before is enough for this much, it is that fill which serves it.
    if (last !== undefined && aboard === mixed) fills[fills.length - 1] = { ...last, parts: [...last.parts, ...reach.parts] };
    else fills.push({ madeAt, mixed: aboard - mixed, parts: reach.parts });
    [from, draw, mixed] = [reach.to, reach.draw, aboard];
  }
  return { kind: "sized", fills, left: mixed - end };
}

/** The first draw that takes something past a point of the run. */
function firstServed({ before }: Run, from: bigint, draw: number): number {
  let served = draw;
  while (before[served + 1] === from) served += 1;
  return served;
}

/**
 * Whether the first fill waits for the first draw that takes something: on the way past those before it the tank may hold
 * too little for that draw, and at the draw itself enough for all of it; or nothing at all may be in it before.
 */
function isBetterMadeAt(run: Run, draw: number, served: number): boolean {
  const { most } = run.limits;
  const along = most.slice(draw, served + 1).reduce(least, most[served] ?? 0n);
  const needed = aboardUpTo(run, run.before[served + 1] ?? 0n);
  if (needed <= larger(along, run.limits.already)) return false;
  return needed <= (most[served] ?? 0n) || reachOf(run, along) <= 0n;
}

/** How far a fill reaches that is made at one point of the run. What is aboard there is used whatever the truck may carry: it needs no room. */
function reachFrom(run: Run, { from, draw: madeAt, mixed, cap }: { readonly from: bigint; readonly draw: number; readonly mixed: bigint; readonly cap: bigint | undefined }): Reach {
  const { draws, before, limits } = run;
  const parts: FillSize["parts"][number][] = [];
  let [draw, to, most] = [madeAt, from, limits.most[madeAt] ?? 0n];
  const mostUpTo = () => larger(mixed, cap === undefined ? from + most : least(mixed + cap, from + most));
  for (; draw < draws.length; draw += 1) {
    const upTo = before[draw + 1] ?? to;
    most = least(most, limits.most[draw] ?? 0n);
    if (aboardUpTo(run, upTo) > mostUpTo()) break;
    if (upTo > to) parts.push({ draw, volume: upTo - to });
    to = upTo;
  }
  const broken = draws[draw];
  if (broken === undefined) return { parts, to, draw };
  const upTo = before[draw + 1] ?? to;
  const isTooMuchAlone = to === from && aboardUpTo(run, upTo) > larger(mixed, from + most);
  if (!broken.mayBeInterrupted && !isTooMuchAlone) return { parts, to, draw };
  const reached = least(larger(mixed, reachOf(run, mostUpTo())), upTo);
  return reached > to ? { parts: [...parts, { draw, volume: reached - to }], to: reached, draw } : { parts, to, draw };
}

function larger(left: bigint, right: bigint): bigint {
  return left > right ? left : right;
}

function least(left: bigint, right: bigint): bigint {
  return left < right ? left : right;
}
