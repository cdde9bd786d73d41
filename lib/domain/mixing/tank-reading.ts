import { type Finding, takeCare } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { type FillInBooks } from "#domain/mixing/tank-books";
import { compare, fromAmount, type Quantity, subtract } from "#domain/quantities/quantity";

/** A reading of a tank beside its books. */
export interface ReadingBesideBooks {
  /** What people call the sprayer. */
  readonly name: string;
  readonly found: Quantity<"volume">;
  readonly inTheBooks: Quantity<"volume">;
  /** What was found and belongs to no fill on the books. */
  readonly ofNoFill: Quantity<"volume">;
  readonly isClean: boolean;
  /** What tank, pump and hose hold, as far as it is on file. */
  readonly capacity: Quantity<"volume">;
  /** The streets of the visits that its fills were made for and that nobody has recorded. */
  readonly openStreets: readonly string[];
}

/** A tank's volume in gallons, however little it is: a difference is read beside what a gauge shows. */
export function gallonsWords(volume: Quantity<"volume">): string {
  return formatQuantityIn(volume, "gal");
}

/** What wants care in a reading. None of it keeps the reading from being written: what was found was found. */
export function tankReadingFindings(reading: ReadingBesideBooks): readonly Finding[] {
  return [...aboveCapacity(reading), ...aboveBooks(reading), ...visitsNotRecorded(reading)];
}

function aboveCapacity({ name, found, capacity }: ReadingBesideBooks): readonly Finding[] {
  if (compare(found, capacity) <= 0) return [];
  return [
    takeCare({
      rule: "reading-above-capacity",
      source: "house",
      what: `${name} does not hold that much.`,
      figure: `${gallonsWords(found)} were read; with pump and hose it holds ${gallonsWords(capacity)} by what is on file.`,
      toDo: "Look at the reading and its unit, or change what is on file of the tank.",
      about: [name],
    }),
  ];
}

function aboveBooks({ name, found, inTheBooks, ofNoFill, isClean }: ReadingBesideBooks): readonly Finding[] {
  if (compare(found, inTheBooks) <= 0) return [];
  const about = [name];
  const figure = `${gallonsWords(subtract(found, inTheBooks))} more than the books have.`;
  if (isClean) return [takeCare({ rule: "reading-above-books", source: "stock", what: `${name} was cleaned out and not filled since by the books.`, figure, toDo: "It counts as water. Record the fill where it was filled, and measure again.", about })];
  if (ofNoFill.amount > 0n) return [takeCare({ rule: "reading-above-books", source: "stock", what: `No fill of ${name} is on the books before this.`, figure, toDo: "Nobody knows what it is. Record the fill, and measure again.", about })];
  return [
    takeCare({
      rule: "reading-above-books",
      source: "stock",
      what: `More is in ${name} than the books have.`,
      figure,
      toDo: "It counts as the mix of the last fill, its product taken from count difference. Look at gauge and meter, and for a fill that nobody recorded.",
      about,
    }),
  ];
}

/** "Not recorded: 1 Elm St and 2 Oak St.": five streets at most, each once. */
export function notRecordedWords(openStreets: readonly string[]): string {
  const shown = [...new Set(openStreets)];
  return `Not recorded: ${listWords(shown.slice(0, 5))}${shown.length > 5 ? ` and ${String(shown.length - 5)} more` : ""}.`;
}

/** Visits that may have sprayed from a tank and are not recorded yet: what they took looks missing. */
export function visitsNotRecorded({ name, openStreets }: Pick<ReadingBesideBooks, "name" | "openStreets">): readonly Finding[] {
  if (openStreets.length === 0) return [];
  return [
    takeCare({
      rule: "visits-not-recorded",
      source: "stock",
      what: `What ${name} was filled for is not all recorded.`,
      figure: notRecordedWords(openStreets),
      toDo: "Record first what was sprayed there before this. What those visits took is missing until then; their records take it from there.",
      about: [name],
    }),
  ];
}

/**
 * A fill that came into the books after a reading that is from after it: the reading (in milliseconds since 1970) did
 * not count it.
 */
export function enteredAfterReading({ number, filledAt, rests }: Pick<FillInBooks, "number" | "filledAt" | "rests">, readAt: readonly number[]): readonly Finding[] {
  if (rests.length > 0 || !readAt.some((at) => at > filledAt)) return [];
  return [
    takeCare({
      rule: "fill-entered-after-reading",
      source: "stock",
      what: `Fill ${String(number)} came into the books after its tank was measured.`,
      figure: "What was found then was not held against this fill.",
      toDo: "Record its visits, then write down again what the tank holds.",
      about: [],
    }),
  ];
}

/** "2.3 gal less than the books", "1 gal more than the books" or "as in the books". */
export function besideBooksWords(found: Quantity<"volume">, inTheBooks: Quantity<"volume">): string {
  const difference = found.amount - inTheBooks.amount;
  if (difference === 0n) return "as in the books";
  const amount = gallonsWords(fromAmount("volume", difference < 0n ? -difference : difference));
  return difference < 0n ? `${amount} less than the books` : `${amount} more than the books`;
}
