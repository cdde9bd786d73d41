import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { NEAR_ENOUGH_PERCENT } from "#domain/mixing/rounded-rate";
import { goneBy, type FillInBooks, leftBy } from "#domain/mixing/tank-books";
import { gallonsWords, notRecordedWords } from "#domain/mixing/tank-reading";
import { canonicalAmountOf, type Measure } from "#domain/quantities/exact-quantity";
import { formatQuantityIn, untilApart } from "#domain/quantities/format-quantity";
import { compare, fromAmount, type Quantity, subtract, sum, zero } from "#domain/quantities/quantity";
import { addRational, compareRational, multiplyRational, rational } from "#domain/quantities/rational";

/** A tank by its gauge, before something was filled in and after it. */
export interface GaugeAroundFill {
  readonly before: Quantity<"volume">;
  readonly after: Quantity<"volume">;
}

/**
 * What was filled in between two readings of a tank. Refused at `gaugeAfter`: nothing, and less than was there before. Common
 * practice.
 */
export function filledBetween({ before, after }: GaugeAroundFill): Outcome<Quantity<"volume">> {
  if (compare(after, before) > 0) return accept(subtract(after, before));
  const [first, second] = gallonsApart(before, after);
  const sentence = first === second ? `The tank held ${first} before and after: nothing was filled in.` : `The tank held ${first} before and ${second} after: a fill leaves more in it.`;
  return badInput("gaugeAfter", second, `more than ${first}`, sentence);
}

/** What the books know of a tank at the moment of a fill, in milliseconds since 1970. */
export interface TankAtFill {
  readonly at: number;
  /** All fills of the tank but this one. */
  readonly fills: readonly FillInBooks[];
  /** The last clean-out that was not after it. */
  readonly cleanedAt: number | undefined;
  /** What was found the last time that it was measured, not after it. */
  readonly lastFound: Quantity<"volume"> | undefined;
}

/** The books of a tank at the moment of a fill. */
export interface BooksBeforeFill {
  readonly inTheBooks: Quantity<"volume">;
  /**
   * What went in and was sprayed since somebody last looked into the tank: the last fill, or what was sprayed since the tank
   * was measured after it.
   */
  readonly movedSince: Quantity<"volume">;
  /** The fills that have some left, by their ids. */
  readonly fillIds: readonly string[];
}

/**
 * What the books have in a tank before a fill. Of the same minute, what is on file came first. A fill that is written down
 * late finds the tank as it was then: what was sprayed or found since changes nothing. Of a tank that by the books was neither
 * filled nor cleaned out before, it is what was found in it.
 */
export function booksBeforeFill({ at, fills, cleanedAt, lastFound }: TankAtFill): BooksBeforeFill {
  const before = fills.filter(({ filledAt }) => filledAt <= at && (cleanedAt === undefined || filledAt >= cleanedAt)).map((fill) => asOf(fill, at));
  if (before.length === 0) return { inTheBooks: cleanedAt === undefined ? (lastFound ?? zero("volume")) : zero("volume"), movedSince: zero("volume"), fillIds: [] };
  const withLeft = before.map((fill) => ({ fillId: fill.fillId, left: leftBy(fill, at).amount })).filter(({ left }) => left > 0n);
  const inTheBooks = fromAmount("volume", withLeft.reduce((total, { left }) => total + left, 0n));
  return { inTheBooks, movedSince: movedSinceLook(before, at), fillIds: withLeft.map(({ fillId }) => fillId) };
}

function movedSinceLook(before: readonly FillInBooks[], at: number): Quantity<"volume"> {
  const lookedAt = Math.max(...before.flatMap(({ filledAt, rests }) => [filledAt, ...rests.map(({ settledAt }) => settledAt)]));
  const filled = before.filter(({ filledAt }) => filledAt === lookedAt).map(({ finished }) => finished);
  const sprayed = before.flatMap(({ draws }) => draws.filter(({ endedAt }) => endedAt > lookedAt && endedAt <= at).map((draw) => draw.sprayed));
  return sum("volume", [...filled, ...sprayed]);
}

/**
 * What was meant by a reading before a fill: one that in words is what the books have is just that, to the last drop. The form
 * shows what the books have in so many figures, and sending it back must not change the fill by the figures that it left out.
 */
export function readAsBooks(read: Quantity<"volume">, inTheBooks: Quantity<"volume">): Quantity<"volume"> {
  return gallonsWords(read) === gallonsWords(inTheBooks) ? inTheBooks : read;
}

/** A fill as the books had it then. What was sprayed out since was still in the tank, and was not carried away by hand. */
function asOf(fill: FillInBooks, at: number): FillInBooks {
  const isPostedAway = fill.isPostedAway && goneBy(fill, Infinity) < fill.finished.amount;
  return { ...fill, isPostedAway, rests: fill.rests.filter(({ settledAt }) => settledAt <= at) };
}

/** The gauge around a fill beside the books and the tank. */
export interface GaugeBesideBooks extends GaugeAroundFill, Pick<BooksBeforeFill, "inTheBooks" | "movedSince"> {
  /** What people call the sprayer. */
  readonly name: string;
  /** The streets of the visits that its fills were made for and that nobody has recorded. */
  readonly openStreets: readonly string[];
  /** The mark of the gauge. */
  readonly mark: Measure<"volume">;
  /** What tank, pump and hose hold, as far as it is on file. */
  readonly capacity: Quantity<"volume">;
}

/** What wants care in the readings around a fill. None of it keeps the fill from being recorded: what went in went in. */
export function gaugeFindings(gauge: GaugeBesideBooks): readonly Finding[] {
  return [...notAsInTheBooks(gauge), ...aboveTank(gauge)];
}

/**
 * A mark off is nothing to say, nor are the few percent by which what was filled in and sprayed is known. Less than the books
 * have is what is to be expected while visits are not recorded.
 */
function notAsInTheBooks({ name, before, inTheBooks, movedSince, mark, openStreets }: GaugeBesideBooks): readonly Finding[] {
  const difference = before.amount - inTheBooks.amount;
  const mayBeOff = addRational(canonicalAmountOf(mark), multiplyRational(rational(movedSince.amount, 100n), NEAR_ENOUGH_PERCENT));
  if (compareRational(rational(difference < 0n ? -difference : difference), mayBeOff) < 0) return [];
  const [read, had] = gallonsApart(before, inTheBooks);
  const beside = { source: "stock", about: [name] } as const;
  const figure = `${read} were read; the books have ${had}.`;
  if (difference < 0n && openStreets.length > 0) {
    return [
      note({
        rule: "gauge-before-records",
        what: `What ${name} was filled for before is not all recorded, so the books do not know what it held before this fill.`,
        figure: `${figure} ${notRecordedWords(openStreets)}`,
        toDo: "Record what was sprayed there. What the tank held then is told by the gauge.",
        ...beside,
      }),
    ];
  }
  return [
    takeCare({
      rule: "gauge-not-as-books",
      what: `Before this fill ${name} did not hold what the books have.`,
      figure,
      toDo: "Write down first what the tank held, at the minute of the fill or before it, so that the books follow it. Record visits that sprayed from it before that.",
      ...beside,
    }),
  ];
}

function aboveTank({ name, after, capacity }: GaugeBesideBooks): readonly Finding[] {
  if (compare(after, capacity) <= 0) return [];
  const [read, holds] = gallonsApart(after, capacity);
  return [
    takeCare({
      rule: "fill-above-tank",
      source: "house",
      what: `${name} does not hold that much.`,
      figure: `${read} were read after filling; with pump and hose it holds ${holds} by what is on file.`,
      toDo: "Look at the readings and their unit, or change what is on file of the tank.",
      about: [name],
    }),
  ];
}

/** Two volumes in gallons, as a gauge shows them; where they differ, with as many digits as tell them apart. */
function gallonsApart(one: Quantity<"volume">, other: Quantity<"volume">): readonly [string, string] {
  const words = (volume: Quantity<"volume">, moreDecimals: number) => formatQuantityIn(volume, "gal", MOST_DECIMALS + moreDecimals);
  return untilApart((moreDecimals) => [words(one, moreDecimals), words(other, moreDecimals)] as const, compare(one, other) === 0);
}

/** Hundredths of a gallon, about an ounce: finer than any gauge. */
const MOST_DECIMALS = 2;
