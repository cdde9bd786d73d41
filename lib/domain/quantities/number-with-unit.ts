import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { parseNumber, plainCharacters } from "#domain/quantities/parse-number";
import { type Rational } from "#domain/quantities/rational";

/** How a unit is typed behind a number, and other units of the same thing, which are refused by naming the one wanted. */
interface TrailingUnit {
  /** As a sentence names it: "psi", "seconds". */
  readonly name: string;
  readonly spellings: readonly string[];
  readonly others: readonly string[];
}

const SECONDS = ["s", "sec", "secs", "second", "seconds"];
const MINUTES = ["m", "min", "mins", "minute", "minutes"];
const HOURS = ["h", "hr", "hrs", "hour", "hours"];
const DAYS = ["d", "day", "days"];
const FAHRENHEIT = ["\u00B0f", "\u00B0 f", "f", "deg f", "degrees f", "fahrenheit", "degrees fahrenheit"];
const CELSIUS = ["\u00B0c", "\u00B0 c", "c", "deg c", "degrees c", "celsius", "degrees celsius"];
/** Without a scale it is the field's own, as a number alone is. */
const DEGREES = ["\u00B0", "deg", "degrees"];
const INCHES = ["in", "inch", "inches", '"'];

/** What may stand behind the number in a field that shows its unit. In lower case; points and double spaces are folded. */
const TRAILING_UNITS = {
  s: { name: "seconds", spellings: SECONDS, others: ["ms", ...MINUTES, ...HOURS] },
  min: { name: "minutes", spellings: MINUTES, others: [...SECONDS, ...HOURS, ...DAYS] },
  h: { name: "hours", spellings: HOURS, others: [...SECONDS, ...MINUTES, ...DAYS] },
  psi: { name: "psi", spellings: ["psi", "psig", "lb/in2", "lb/sq in", "lb per sq in", "pounds per square inch"], others: ["bar", "bars", "mbar", "kpa", "mpa", "pa", "atm"] },
  mph: {
    name: "mph",
    spellings: ["mph", "mi/h", "mi/hr", "miles/hour", "miles per hour", "miles an hour"],
    others: ["km/h", "kmh", "kph", "m/s", "ft/s", "fps", "ft/min", "fpm", "kn", "kt", "kts", "knot", "knots", "kilometers per hour"],
  },
  "%": { name: "%", spellings: ["%", "percent", "pct"], others: ["ppm", "\u2030"] },
  "\u00B0F": { name: "\u00B0F", spellings: [...FAHRENHEIT, ...DEGREES], others: CELSIUS },
  "\u00B0C": { name: "\u00B0C", spellings: [...CELSIUS, ...DEGREES], others: FAHRENHEIT },
  in: { name: "inches", spellings: INCHES, others: ["mm", "cm", "ft"] },
  meq: { name: "meq per 100 g", spellings: ["meq", "meq/100 g", "meq/100g", "meq per 100 g"], others: ["cmol/kg", "ppm"] },
} as const satisfies Readonly<Record<string, TrailingUnit>>;

/** A unit that a field shows beside a bare number. */
export type NumberUnit = keyof typeof TRAILING_UNITS;

/** The number with its sign, and what begins with a letter or a sign of a unit behind it. */
const NUMBER_AND_REST = /^([^\p{L}%\u00B0\u2030"]*\d[^\p{L}%\u00B0\u2030"]*?) ?([\p{L}%\u00B0\u2030"].*)$/u;

/** An m is minutes and an M a thousand to some: of units of one letter it alone is not taken in capitals. */
const CAPITAL_M = "M";

function split(text: string): { readonly number: string; readonly unit: string } {
  // Some keyboards offer the mark of an ordinal where a degree is meant.
  const plain = plainCharacters(text.replaceAll("\u00BA", "\u00B0"));
  const [, number, unit] = NUMBER_AND_REST.exec(plain) ?? [];
  return number === undefined || unit === undefined ? { number: text.trim(), unit: "" } : { number: number.trim(), unit };
}

function isAmong(spellings: readonly string[], unit: string): boolean {
  return unit !== CAPITAL_M && spellings.includes(unit.replaceAll(".", " ").replace(/\s+/gu, " ").trim().toLowerCase());
}

/**
 * The number that was typed, without the unit of the field behind it, in any letter case: "45" of "45 secs", "3" of
 * "3 MPH". Refused at `field`, by the unit that is wanted: another unit of the same thing ("3 bar" where psi is wanted),
 * and any other.
 */
export function bareNumber(field: string, text: string, wanted: NumberUnit): Outcome<string> {
  const { name, spellings, others }: TrailingUnit = TRAILING_UNITS[wanted];
  const { number, unit } = split(text);
  if (unit === "" || isAmong(spellings, unit)) return accept(number);
  const found = text.trim();
  const sentence = isAmong(others, unit) ? `"${found}" is in ${unit}; here it takes ${name}.` : `"${unit}" in "${found}" is no unit for this; here it takes ${name}.`;
  return badInput(field, found, name, sentence);
}

/**
 * Reads a number with or without the unit of its field behind it. Refused at `field`: what bareNumber refuses, and what
 * parseNumber does.
 */
export function readNumberWithUnit(field: string, text: string, wanted: NumberUnit): Outcome<Rational> {
  const bare = bareNumber(field, text, wanted);
  return bare.ok ? parseNumber(field, bare.value) : bare;
}

/** What was typed, without the unit of the field behind it, for a sentence that writes the unit itself. */
export function withoutUnit(text: string, wanted: NumberUnit): string {
  const bare = bareNumber("", text, wanted);
  return bare.ok ? bare.value : text.trim();
}
