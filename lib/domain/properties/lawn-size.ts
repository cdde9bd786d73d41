import { accept, badInput, type InputRefusal, type Outcome, refuse } from "#domain/foundation/outcome";
import { compareRational, rational, type Rational } from "#domain/quantities/rational";
import { parseNumber } from "#domain/quantities/parse-number";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { isZero, type Quantity } from "#domain/quantities/quantity";

/** What a size is of: the ground that the customer owns, or the grass on it. */
export const SIZE_MEANINGS = ["lot", "turf"] as const;
export type SizeMeaning = (typeof SIZE_MEANINGS)[number];

/** A size on a customer list. A lot says nothing about the lawn, which stays unmeasured. */
export type ListedSize =
  | { readonly kind: "none" }
  | { readonly kind: "lot"; readonly area: Quantity<"area"> }
  | { readonly kind: "turf"; readonly area: Quantity<"area"> };

/** Why a size was not accepted; `asksLotOrTurf` where an answer to that question is all that is missing. */
export interface SizeRefusal extends InputRefusal {
  readonly asksLotOrTurf: boolean;
}

const ALLOWED = "8,500 sq ft, 8500, ½ acre lot, 0.2 ac turf";
/** A number alone is square feet from here on. Common practice: no lawn that pays is smaller. */
const FEWEST_BARE_SQUARE_FEET = rational(500n);
/** A number alone is acres up to here. Common practice: a home's lot is no larger. */
const MOST_BARE_ACRES = rational(20n);

const MEANING_WORD = /\b(lot|turf|lawn|grass)\b/giu;

function no(refusal: InputRefusal, asksLotOrTurf = false): Outcome<ListedSize, SizeRefusal> {
  return refuse({ ...refusal, asksLotOrTurf });
}

/** The unit of a number that has none, or undefined where it could be either. */
function unitOfBare(value: Rational): "sq ft" | "acre" | undefined {
  if (compareRational(value, FEWEST_BARE_SQUARE_FEET) >= 0) return "sq ft";
  return compareRational(value, MOST_BARE_ACRES) <= 0 ? "acre" : undefined;
}

function meaningOf(words: readonly string[], answered: SizeMeaning | undefined): SizeMeaning | undefined {
  if (answered !== undefined) return answered;
  const [word] = words.map((each) => each.toLowerCase());
  if (word === undefined) return undefined;
  return word === "lot" ? "lot" : "turf";
}

/**
 * Reads a lawn's size as lists have it: "8,500 sq ft", "8500", "1/4 acre", "0.2 ac". A size in acres, or a small number
 * alone, which can only be acres, is most often the lot: it is refused with the question whether it is the lot or the
 * turf, until the cell says so ("1/4 acre lot") or `answered` does. It never becomes turf by itself. Refused too, at
 * `lawnSize`: a number that could be either unit, a unit that is not known, nothing but a sign of doubt.
 */
export function readLawnSize(text: string, answered?: SizeMeaning): Outcome<ListedSize, SizeRefusal> {
  const found = text.trim();
  if (found === "") return accept({ kind: "none" });
  const meaning = meaningOf(found.match(MEANING_WORD) ?? [], answered);
  const plain = found.replace(MEANING_WORD, " ").trim();
  const bare = parseNumber("lawnSize", plain);
  const unitWhenNone = bare.ok ? unitOfBare(bare.value) : undefined;
  if (bare.ok && unitWhenNone === undefined) {
    return no(badInput("lawnSize", found, ALLOWED, `"${found}" could be square feet or acres. Write the unit.`).refusal);
  }
  const read = parseQuantity(plain, { field: "lawnSize", dimensions: ["area"], ...(unitWhenNone === undefined ? {} : { unitWhenNone }) });
  if (!read.ok) return no({ ...read.refusal, allowed: ALLOWED });
  const { quantity: area, unit } = read.value;
  if (isZero(area)) return no(badInput("lawnSize", found, ALLOWED, "A size is more than nothing; leave the cell empty where none is known.").refusal);
  if (unit !== "acre") return accept({ kind: meaning ?? "turf", area });
  if (meaning === undefined) {
    const sentence = `"${found}" is in acres. Is that the whole lot, or the turf alone?`;
    return no(badInput("lawnSize", found, "lot or turf", sentence).refusal, true);
  }
  return accept({ kind: meaning, area });
}
