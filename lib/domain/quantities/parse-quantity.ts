import { accept, badInput, type InputRefusal, type Outcome } from "#domain/foundation/outcome";
import { addExact, compareExact, type ExactQuantity, exactly, settle } from "#domain/quantities/exact-quantity";
import { parseNumber, plainCharacters } from "#domain/quantities/parse-number";
import { type Quantity } from "#domain/quantities/quantity";
import { ONE, type Rational, reduce } from "#domain/quantities/rational";
import { dimensionInWords, offeredUnits, readUnit, writtenUnit } from "#domain/quantities/unit-names";
import { type Dimension, GREATEST_STORED_AMOUNT, type Unit, type UnitOf, units } from "#domain/quantities/units";

/** A quantity that a person typed: what they typed is kept beside what it means. */
export type TypedQuantity<D extends Dimension> = D extends Dimension
  ? {
      readonly typed: string;
      readonly quantity: Quantity<D>;
      /** Before rounding to the canonical unit. */
      readonly exact: ExactQuantity<D>;
      /** The unit typed, the first of a compound such as "2 lb 4 oz", or the field's own where none was typed. */
      readonly unit: UnitOf<D>;
    }
  : never;

/** A field that takes a quantity: its name, what it may measure, and the unit shown beside it, if one is. */
export interface QuantityField<D extends Dimension> {
  readonly field: string;
  readonly dimensions: readonly D[];
  readonly unitWhenNone?: UnitOf<D>;
}

/** One number with its unit, as "2 lb" in "2 lb 4 oz". */
interface Part {
  readonly value: Rational;
  readonly unit: Unit;
}

const NUMBER_THEN_UNIT = /^([^\p{L}#%]*)(.*)$/u;
const BETWEEN_PARTS = /(?<=[\p{L}#.]),? (?:and )?(?=\d|\.\d)/u;
const THOUSAND_OF = /^M (?=\S)/u;

/** The units that a field offers, for the `allowed` of a refusal. */
export function unitsOffered(dimensions: readonly Dimension[]): string {
  return dimensions
    .flatMap((dimension) => offeredUnits[dimension])
    .map((unit) => writtenUnit(unit, "one"))
    .join(", ");
}

/** Splits "2.5 lb per acre" into "2.5" and "lb per acre", in plain characters. */
export function splitNumberAndUnit(plain: string): { readonly number: string; readonly unit: string } {
  const [, number = "", unit = ""] = NUMBER_THEN_UNIT.exec(plain) ?? [];
  return { number: number.trim(), unit: unit.trim() };
}

/** Refuses an ounce alone, and asks which kind it is. */
function refuseOunce(field: string, found: string): { readonly ok: false; readonly refusal: InputRefusal } {
  return badInput(
    field,
    found,
    "fl oz, oz wt",
    `"${found}" could be ounces by weight or fluid ounces. Write oz wt or fl oz, as the label means it.`,
  );
}

/** Refuses a capital M that is not followed by what it is a thousand of. */
export function refuseCapitalM(field: string, found: string): { readonly ok: false; readonly refusal: InputRefusal } {
  return badInput(
    field,
    found,
    "1,000 sq ft, M sq ft",
    `The M in "${found}" could be a thousand, a million or meters. Write 1,000 sq ft if that is meant.`,
  );
}

function ounceAfter(previous: Unit | undefined): Unit | undefined {
  if (previous === "lb") return "oz wt";
  return previous === "gal" || previous === "qt" || previous === "pt" || previous === "cup" ? "fl oz" : undefined;
}

interface PartField {
  readonly field: string;
  readonly dimensions: readonly Dimension[];
  readonly unitWhenNone?: Unit;
}

function readPart(
  field: PartField,
  plain: string,
  whole: { readonly found: string; readonly previous: Unit | undefined },
): Outcome<Part> {
  const allowed = unitsOffered(field.dimensions);
  const split = splitNumberAndUnit(plain);
  const value = parseNumber(field.field, split.number);
  if (!value.ok) return badInput(field.field, whole.found, value.refusal.allowed, value.refusal.sentence);
  const isThousands = THOUSAND_OF.test(split.unit);
  const number = isThousands
    ? { numerator: value.value.numerator * 1000n, denominator: value.value.denominator }
    : value.value;
  const unitText = split.unit.replace(THOUSAND_OF, "");
  if (unitText === "") {
    const unit = whole.previous === undefined ? field.unitWhenNone : undefined;
    if (unit !== undefined) return accept({ value: number, unit });
    return badInput(field.field, whole.found, allowed, `"${whole.found}" has no unit. Write one of: ${allowed}.`);
  }
  const typed = readUnit(unitText);
  switch (typed.kind) {
    case "unit":
      return accept({ value: number, unit: typed.unit });
    case "ounce-of-which-kind": {
      const unit = ounceAfter(whole.previous);
      return unit === undefined ? refuseOunce(field.field, whole.found) : accept({ value: number, unit });
    }
    case "capital-m":
      return refuseCapitalM(field.field, whole.found);
    case "unknown":
      return badInput(
        field.field,
        whole.found,
        allowed,
        `"${unitText}" is not a unit that is known here. Write one of: ${allowed}.`,
      );
  }
}

/**
 * A compound goes from large to small, has whole numbers but for its last, and never a part as large as the last unit.
 */
function refuseUnevenCompound(
  field: string,
  found: string,
  parts: readonly Part[],
): { readonly ok: false; readonly refusal: InputRefusal } | undefined {
  for (const [index, part] of parts.entries()) {
    const previous = parts[index - 1];
    if (previous === undefined) continue;
    const isWhole = reduce(previous.value).denominator === 1n;
    const fits =
      units[previous.unit].dimension === units[part.unit].dimension &&
      compareExact(exactly(part.unit, part.value), exactly(previous.unit, ONE)) < 0;
    if (isWhole && fits) continue;
    return badInput(
      field,
      found,
      "one number and unit, or a compound such as 2 lb 4 oz",
      `"${found}" does not add up as one amount. Write it in one unit, or as in 2 lb 4 oz.`,
    );
  }
  return undefined;
}

function belongsTo<D extends Dimension>(unit: Unit, dimensions: readonly D[]): unit is UnitOf<D> & Unit {
  return dimensions.some((dimension) => units[unit].dimension === dimension);
}

/**
 * Reads a quantity as people type it: "2 1/2 lb", "3 fl oz", "1,250 sq ft", "¼ acre", "2 lb 4 oz", "5 M sq ft". Exact.
 * Refused at `field`, with a sentence: a unit of something else, no unit where the field shows none, an ounce of either
 * kind, a compound that does not add up ("2 lb 20 oz wt"), what {@link parseNumber} refuses, and more than storage can
 * hold.
 */
export function parseQuantity<D extends Dimension>(text: string, field: QuantityField<D>): Outcome<TypedQuantity<D>> {
  const found = text.trim();
  const parts: Part[] = [];
  for (const plain of plainCharacters(found).split(BETWEEN_PARTS)) {
    const part = readPart(field, plain, { found, previous: parts.at(-1)?.unit });
    if (!part.ok) return part;
    parts.push(part.value);
  }
  const uneven = refuseUnevenCompound(field.field, found, parts);
  if (uneven !== undefined) return uneven;
  const unit = parts[0]?.unit;
  if (unit === undefined || !belongsTo(unit, field.dimensions)) {
    const allowed = unitsOffered(field.dimensions);
    const wanted = field.dimensions.map((dimension) => dimensionInWords[dimension]).join(" or ");
    const given = unit === undefined ? "nothing" : dimensionInWords[units[unit].dimension];
    return badInput(field.field, found, allowed, `"${found}" is ${given}; here it takes ${wanted}: ${allowed}.`);
  }
  return settleParts(text, field, { found, unit, parts });
}

function settleParts<D extends Dimension>(
  typed: string,
  field: QuantityField<D>,
  read: { readonly found: string; readonly unit: UnitOf<D> & Unit; readonly parts: readonly Part[] },
): Outcome<TypedQuantity<D>> {
  const exact = read.parts
    .map((part): ExactQuantity<Dimension> => exactly(part.unit, part.value))
    .reduce((total, part) => addExact(total, part));
  const quantity = settle(exact, "nearest");
  if (quantity.amount > GREATEST_STORED_AMOUNT) {
    return badInput(field.field, read.found, "a smaller amount", `"${read.found}" is more than can be kept on file.`);
  }
  // The unit was found to be one of the field's dimensions, and every part to share the dimension of the unit.
  return accept({ typed, quantity, exact, unit: read.unit } as unknown as TypedQuantity<D>);
}
