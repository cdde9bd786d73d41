import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { plainCharacters } from "#domain/quantities/parse-number";
import { parseQuantity, type TypedQuantity } from "#domain/quantities/parse-quantity";
import { type UnitOf } from "#domain/quantities/units";

/** Primes and the quotes that stand for them, double ones first: two single ones are a double one. */
const INCH_MARK = /["\u201C\u201D\u2033]|''|\u2019\u2019|\u2032\u2032/gu;
const FOOT_MARK = /['\u2018\u2019\u2032]/gu;

/** "12'6" without a mark after it: what follows feet in that notation is inches. */
const FEET_THEN_BARE_NUMBER = /ft [\d ./-]*\d$/u;

function spellMarks(plain: string): string {
  const spelled = plain.replace(INCH_MARK, " in ").replace(FOOT_MARK, " ft ").replace(/\s+/gu, " ").trim();
  return spelled !== plain && FEET_THEN_BARE_NUMBER.test(spelled) ? `${spelled} in` : spelled;
}

/** Puts the space between a unit and the number after it: "12ft6in". No unit of length ends in a digit. */
function separateParts(plain: string): string {
  return plain.replace(/(?<=\p{L})(?=[\d.])/gu, " ");
}

/**
 * Reads a length measured in the field: "12 ft 6 in", "12'6", 12' 6 1/2", "12.5 ft", "3.2 m". Exact. Refused as
 * parseQuantity refuses, and a capital M for meters; what the person typed is kept.
 */
export function parseLength(
  text: string,
  field: { readonly field: string; readonly unitWhenNone?: UnitOf<"length"> },
): Outcome<TypedQuantity<"length">> {
  const found = text.trim();
  const plain = separateParts(spellMarks(plainCharacters(found)));
  if (/\d ?M$/u.test(plain)) {
    return badInput(
      field.field,
      found,
      "m, ft, in",
      `The M in "${found}" could be a thousand or meters. Write m for meters.`,
    );
  }
  const read = parseQuantity(plain, { ...field, dimensions: ["length"] });
  if (!read.ok) {
    const { allowed, sentence } = read.refusal;
    return badInput(field.field, found === "" ? "nothing" : found, allowed, sentence);
  }
  return accept({ ...read.value, typed: text });
}
