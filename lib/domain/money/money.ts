import { type Outcome, accept, badInput } from "#domain/foundation/outcome";
import { formatFigure } from "#domain/quantities/format-number";
import { parseNumber, plainCharacters } from "#domain/quantities/parse-number";
import { addRational, multiplyRational, type Rational, rational, reduce, toDecimalString, ZERO } from "#domain/quantities/rational";

/**
 * An exact amount of US dollars from zero up, as a fraction of cents: a part of a container costs a part of a cent, and
 * only what is shown is rounded.
 */
export interface Money {
  readonly cents: Rational;
}

/** Money from whole cents, as they are stored. */
export function fromCents(cents: bigint): Money {
  return { cents: rational(cents) };
}

/** The exact sum of a list, which may be empty. */
export function sumMoney(parts: readonly Money[]): Money {
  return { cents: parts.reduce<Rational>((sum, { cents }) => reduce(addRational(sum, cents)), ZERO) };
}

/** So many times the money, exactly: a price by the part of a container that is taken. */
export function multiplyMoney({ cents }: Money, factor: Rational): Money {
  return { cents: reduce(multiplyRational(cents, factor)) };
}

/** "$1,234.50": to the cent, half a cent up. The one place where money is rounded. */
export function formatMoney({ cents }: Money): string {
  const [dollars = "0", rest = "00"] = toDecimalString({ numerator: cents.numerator, denominator: cents.denominator * 100n }, 2, "nearest").split(".");
  return `$${formatFigure(rational(BigInt(dollars)), { decimals: 0, quarters: false })}.${rest}`;
}

const ALLOWED = "dollars and whole cents, from 0 to 1,000,000, such as 42.50";
const MOST_CENTS = 100_000_000n;

/**
 * Reads dollars as people type them, with or without the sign, to whole cents: "$42.50", "1,250", ".99". Refused at
 * `field`, with a sentence: what is no number, parts of a cent (they are never rounded away), and more than a million
 * dollars.
 */
export function parseDollars(field: string, text: string): Outcome<bigint> {
  const found = text.trim();
  const read = parseNumber(field, plainCharacters(found).replace(/^\$ ?/u, ""));
  if (!read.ok) return badInput(field, found === "" ? "nothing" : found, ALLOWED, "Write the price in dollars, such as 42.50.");
  const { numerator, denominator } = read.value;
  if ((numerator * 100n) % denominator !== 0n) return badInput(field, found, ALLOWED, `"${found}" has parts of a cent. Write it to the cent.`);
  const cents = (numerator * 100n) / denominator;
  if (cents > MOST_CENTS) return badInput(field, found, ALLOWED, "This is more than one container can cost.");
  return accept(cents);
}
