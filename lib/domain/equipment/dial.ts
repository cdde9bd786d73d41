import { parseNumber } from "#domain/quantities/parse-number";
import { addRational, compareRational, ONE, type Rational, rational, subtractRational, toDecimalString, ZERO } from "#domain/quantities/rational";

/** A place on a spreader's dial: of one with numbers, or of one with letters, whose marks count from A as 1. */
export interface DialPlace {
  readonly marks: "numbers" | "letters";
  readonly place: Rational;
}

const LETTER = /^([a-z])\s*(.*)$/iu;
const BEFORE_A = 64;
const LETTERS = 26n;

function letterAt(place: bigint): string {
  return String.fromCodePoint(BEFORE_A + Number(place));
}

/** Where a setting lies as it is written: "7", "7 1/2", "M", "M 1/2"; undefined for what is no place on a dial. */
export function readDial(setting: string): DialPlace | undefined {
  const [, letter, rest = ""] = LETTER.exec(setting.trim()) ?? [];
  const part = (letter === undefined ? setting : rest).trim();
  const read = part === "" && letter !== undefined ? undefined : parseNumber("setting", part);
  if (read?.ok === false) return undefined;
  const number = read?.value ?? ZERO;
  if (letter === undefined) return { marks: "numbers", place: number };
  const mark = BigInt(letter.toUpperCase().codePointAt(0) ?? 0) - BigInt(BEFORE_A);
  // Beyond a whole mark stands the next letter, and beyond the last one nothing.
  if (compareRational(number, ONE) >= 0 || (mark === LETTERS && number.numerator > 0n)) return undefined;
  return { marks: "letters", place: addRational(rational(mark), number) };
}

/** A number of a dial as it is set, to a hundredth: "7.25". */
export function settingInWords(value: Rational): string {
  return toDecimalString(value, 2, "nearest").replace(/\.?0+$/u, "");
}

/** A place as it is set: "7.25"; "M"; between two letters, how far on the way from the one to the other. */
export function dialInWords({ marks, place }: DialPlace): string {
  if (marks === "numbers") return settingInWords(place);
  const whole = place.numerator / place.denominator;
  const part = subtractRational(place, rational(whole));
  const words = settingInWords(part);
  if (words === "0") return letterAt(whole);
  return words === "1" ? letterAt(whole + 1n) : `${words} of the way from ${letterAt(whole)} to ${letterAt(whole + 1n)}`;
}

/** Whether two settings are the same place of one dial: "7" and "7.0", "M" and "m". What is no setting of a dial is itself only. */
export function isSameSetting(left: string, right: string): boolean {
  const [first, second] = [readDial(left), readDial(right)];
  if (first === undefined || second === undefined) return left === right;
  return first.marks === second.marks && compareRational(first.place, second.place) === 0;
}

/** The order of two settings on the dial, for a list; what is no place on one stands last, by its letters. */
export function dialOrder(left: string, right: string): number {
  const [first, second] = [readDial(left), readDial(right)];
  if (first === undefined || second === undefined) return first === second ? left.localeCompare(right, "en") : first === undefined ? 1 : -1;
  return compareRational(first.place, second.place);
}
