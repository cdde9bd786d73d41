import { type Finding, takeCare } from "#domain/foundation/finding";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { goneBy, type FillInBooks, leftBy } from "#domain/mixing/tank-books";
import { canonicalAmountOf, type Measure } from "#domain/quantities/exact-quantity";
import { formatQuantityIn, untilApart } from "#domain/quantities/format-quantity";
import { compare, fromAmount, type Quantity, subtract, zero } from "#domain/quantities/quantity";
import { compareRational, rational } from "#domain/quantities/rational";

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

/**
 * What the books have in a tank before a fill. Of the same minute, what is on file came first. A fill that is written down
 * late finds the tank as it was then: what was sprayed or found since changes nothing. Of a tank that by the books was neither
 * filled nor cleaned out before, it is what was found in it.
 */
export function inTheBooksBefore({ at, fills, cleanedAt, lastFound }: TankAtFill): Quantity<"volume"> {
  const before = fills.filter(({ filledAt }) => filledAt <= at && (cleanedAt === undefined || filledAt >= cleanedAt));
  if (before.length === 0) return cleanedAt === undefined ? (lastFound ?? zero("volume")) : zero("volume");
  return fromAmount("volume", before.reduce((total, fill) => total + leftBy(asOf(fill, at), at).amount, 0n));
}

/** A fill as the books had it then. What was sprayed out since was still in the tank, and was not carried away by hand. */
function asOf(fill: FillInBooks, at: number): FillInBooks {
  const isPostedAway = fill.isPostedAway && goneBy(fill, Infinity) < fill.finished.amount;
  return { ...fill, isPostedAway, rests: fill.rests.filter(({ settledAt }) => settledAt <= at) };
}

/** The gauge around a fill beside the books and the tank. */
export interface GaugeBesideBooks extends GaugeAroundFill {
  /** What people call the sprayer. */
  readonly name: string;
  readonly inTheBooks: Quantity<"volume">;
  /** The mark of the gauge. */
  readonly mark: Measure<"volume">;
  /** What tank, pump and hose hold, as far as it is on file. */
  readonly capacity: Quantity<"volume">;
}

/** What wants care in the readings around a fill. None of it keeps the fill from being recorded: what went in went in. */
export function gaugeFindings(gauge: GaugeBesideBooks): readonly Finding[] {
  return [...notAsInTheBooks(gauge), ...aboveTank(gauge)];
}

function notAsInTheBooks({ name, before, inTheBooks, mark }: GaugeBesideBooks): readonly Finding[] {
  const difference = before.amount - inTheBooks.amount;
  if (compareRational(rational(difference < 0n ? -difference : difference), canonicalAmountOf(mark)) < 0) return [];
  const [read, had] = gallonsApart(before, inTheBooks);
  return [
    takeCare({
      rule: "gauge-not-as-books",
      source: "stock",
      what: `Before this fill ${name} did not hold what the books have.`,
      figure: `${read} were read; the books have ${had}.`,
      toDo: "Write down first what the tank held, at the minute of the fill or before it, so that the books follow it. Record visits that sprayed from it before that.",
      about: [name],
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
