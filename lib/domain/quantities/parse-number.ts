import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { compareRational, decimal, type Rational, reduce, toDecimalString } from "#domain/quantities/rational";

const ALLOWED = "a number such as 2.5, 2 1/2, ½ or 1,250";
/** Nobody types a number this long: it was pasted by mistake. */
const LONGEST_TEXT = 60;

/** Fractions that keyboards offer as one character, by code point, because some are absent from the fonts. */
const SINGLE_CHARACTER_FRACTIONS: ReadonlyMap<string, string> = new Map([
  ["\u00BC", "1/4"],
  ["\u00BD", "1/2"],
  ["\u00BE", "3/4"],
  ["\u2150", "1/7"],
  ["\u2151", "1/9"],
  ["\u2152", "1/10"],
  ["\u2153", "1/3"],
  ["\u2154", "2/3"],
  ["\u2155", "1/5"],
  ["\u2156", "2/5"],
  ["\u2157", "3/5"],
  ["\u2158", "4/5"],
  ["\u2159", "1/6"],
  ["\u215A", "5/6"],
  ["\u215B", "1/8"],
  ["\u215C", "3/8"],
  ["\u215D", "5/8"],
  ["\u215E", "7/8"],
  ["\u2189", "0/3"],
]);

const RAISED = String.raw`\u00B2\u00B3\u00B9\u2070\u2074-\u2079`;
const LOWERED = String.raw`\u2080-\u2089`;

/**
 * A fraction set in raised and lowered figures, as labels print it and papers hand it out: it begins anew after the
 * figures before it, so that 1 and a raised 1 over 2 never are 11 over 2. A raised one with its own stroke is U+215F.
 */
const SET_FRACTION = new RegExp(
  String.raw`(?<![\p{L}${RAISED}])(?:([${RAISED}]+)\s*[/\u2044\u2215]|\u215F)\s*([${LOWERED}]+|\d+)(?![\d${RAISED}${LOWERED}]|[.,]\d)`,
  "gu",
);

/**
 * What has an ordinary form: all but figures that are raised, lowered or in a ring. Of these only the square or cube of
 * a unit has one, as in m2: behind a number they are the mark of a footnote or a power, and not its next figure.
 */
const WITH_ORDINARY_FORM = /\P{No}+|(?<=\p{L})[\u00B2\u00B3]/gu;
const ODD_FIGURE = /\p{No}/u;

function ordinary(text: string): string {
  return text.normalize("NFKC");
}

/**
 * The text as plain characters: fractions spelled out, the square or cube of a unit and full-width characters as
 * ordinary ones, any kind of space as one space, typographic slashes and minus signs as those of the keyboard. Other
 * figures that are raised, lowered or in a ring stay as they are, so that no number with one is read.
 */
export function plainCharacters(text: string): string {
  let spelled = "";
  for (const character of text.replace(SET_FRACTION, (_all, top = "1", bottom = "") => ` ${ordinary(`${String(top)}/${String(bottom)}`)} `)) {
    const fraction = SINGLE_CHARACTER_FRACTIONS.get(character);
    spelled += fraction === undefined ? character : ` ${fraction} `;
  }
  return spelled
    .replace(WITH_ORDINARY_FORM, ordinary)
    .replace(/[\u2044\u2215]/gu, "/")
    .replace(/[\u2010-\u2013\u2212]/gu, "-")
    .replace(/\s+/gu, " ")
    .replace(/ ?\/ ?/gu, "/")
    // The dash of "2-½" has no space before it, unlike that of a list.
    .replace(/(?<=\d)- (?=\d+\/\d)/gu, "-")
    .trim();
}

const WHOLE = String.raw`(?:\d+|[1-9]\d{0,2}(?:,\d{3})+|[1-9]\d{0,2}(?: \d{3})+)`;
const DECIMAL = new RegExp(String.raw`^(${WHOLE})?(?:\.(\d*))?$`, "u");
const FRACTION = /^(\d+)\/(\d+)$/u;
const MIXED = new RegExp(String.raw`^(${WHOLE})[ -](\d+)\/(\d+)$`, "u");
const COMMA_AS_POINT = /^\d+(?:[. ]\d{3})*,\d+$/u;

function withoutSeparators(digits: string): bigint {
  return BigInt(digits.replace(/[, ]/gu, ""));
}

/** The number in plain characters, or undefined. A fraction of one and more ("11/2", "2 3/2") or over zero is none. */
function readNumber(plain: string): Rational | undefined {
  const asDecimal = DECIMAL.exec(plain);
  if (asDecimal !== null && /\d/u.test(plain)) {
    const [, whole = "0", fraction = ""] = asDecimal;
    const digits = withoutSeparators(whole).toString();
    return decimal(fraction === "" ? digits : `${digits}.${fraction}`);
  }
  const asFraction = FRACTION.exec(plain);
  if (asFraction !== null) {
    const [numerator, denominator] = [BigInt(asFraction[1] ?? ""), BigInt(asFraction[2] ?? "")];
    return numerator < denominator ? { numerator, denominator } : undefined;
  }
  const asMixed = MIXED.exec(plain);
  if (asMixed === null) return undefined;
  const [, whole = "", top = "", bottom = ""] = asMixed;
  const [numerator, denominator] = [BigInt(top), BigInt(bottom)];
  if (numerator >= denominator) return undefined;
  return { numerator: withoutSeparators(whole) * denominator + numerator, denominator };
}

function lastCommaAsPoint(plain: string): string {
  const cut = plain.lastIndexOf(",");
  return `${plain.slice(0, cut).replace(/[. ]/gu, "")}.${plain.slice(cut + 1)}`;
}

/** The digits after the point that a fraction is written with before it is written as a mixed number instead. */
const DECIMALS_OF_FRACTION = 4;

/** "5.5", or "3 2/3" where the point has no end in sight. Whole numbers have neither. */
function spelledOut(value: Rational): string {
  const { numerator, denominator } = reduce(value);
  const digits = toDecimalString(value, DECIMALS_OF_FRACTION, "down");
  if (compareRational(decimal(digits), value) === 0) return digits.replace(/\.?0+$/u, "");
  return `${String(numerator / denominator)} ${String(numerator % denominator)}/${String(denominator)}`;
}

/** Where the space may have been lost: "11/2" was 1 1/2, and "121/2" was 12 1/2. What is left is a fraction below one. */
function withLostSpace(top: string, bottom: string): string | undefined {
  for (let length = top.length - 1; length > 0; length -= 1) {
    const [whole, rest] = [top.slice(0, length), top.slice(length)];
    if (/^[1-9]/u.test(whole) && /^[1-9]/u.test(rest) && BigInt(rest) < BigInt(bottom)) return `${whole} ${rest}/${bottom}`;
  }
  return undefined;
}

/**
 * What to write instead of a fraction of one and more, or undefined where it is none. Nobody can tell an improper
 * fraction from a mixed number whose space was lost on a phone or in the text of a label: it is asked which was meant.
 */
function insteadOfImproper(plain: string): string | undefined {
  const [, top = "", bottom = ""] = FRACTION.exec(plain) ?? [];
  if (bottom === "" || BigInt(bottom) === 0n) return undefined;
  const value = spelledOut({ numerator: BigInt(top), denominator: BigInt(bottom) });
  const mixed = withLostSpace(top, bottom);
  return mixed === undefined ? `Write ${value} if that is meant.` : `Write ${mixed}, or ${value}.`;
}

/**
 * Reads a number as people type it: "2 1/2", "2-1/2", "2-½", "0.8", ".8", "1,250", "12 000", "½", "2½". The answer is exact
 * and never below zero. Refused at `field`, with a sentence: nothing, over 60 characters, signs, exponents, a comma in
 * the place of a point, a fraction of one and more ("11/2" may be 1 1/2) or over zero, figures that are raised, lowered or in a ring but for a fraction's.
 */
export function parseNumber(field: string, text: string): Outcome<Rational> {
  const found = text.trim();
  if (found === "") return badInput(field, "nothing", ALLOWED, "There is no number here.");
  if (found.length > LONGEST_TEXT) {
    return badInput(field, `${found.length} characters`, ALLOWED, "This is too long to be one number.");
  }
  const plain = plainCharacters(found);
  if (plain.startsWith("-")) {
    return badInput(field, found, ALLOWED, `"${found}" is below zero; an amount is zero or more.`);
  }
  const value = readNumber(plain);
  if (value !== undefined) return accept(value);
  if (ODD_FIGURE.test(plain)) {
    return badInput(field, found, ALLOWED, `A figure in "${found}" is raised, lowered or in a ring. Write it as 2.5, 2 1/2 or 1,250.`);
  }
  const instead = insteadOfImproper(plain);
  if (instead !== undefined) return badInput(field, found, ALLOWED, `"${found}" is a fraction of one or more. ${instead}`);
  if (COMMA_AS_POINT.test(plain)) {
    const meant = lastCommaAsPoint(plain);
    return badInput(
      field,
      found,
      ALLOWED,
      `"${found}" has a comma where a point belongs. Write ${meant} if that is meant.`,
    );
  }
  return badInput(
    field,
    found,
    ALLOWED,
    `"${found}" is not a number that can be read. Write it as 2.5, 2 1/2 or 1,250.`,
  );
}
