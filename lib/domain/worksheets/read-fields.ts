import { accept, badInput, type InputRefusal, missingFact, type Outcome, refuse } from "#domain/foundation/outcome";
import { readDensity, type WeighedMaterial } from "#domain/label/label-general";
import { type Density } from "#domain/quantities/density";
import { type ExactQuantity, isNothing } from "#domain/quantities/exact-quantity";
import { formatFigure } from "#domain/quantities/format-number";
import { bareNumber, type NumberUnit } from "#domain/quantities/number-with-unit";
import { parseLength } from "#domain/quantities/parse-length";
import { parseNumber } from "#domain/quantities/parse-number";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { parseRate } from "#domain/quantities/parse-rate";
import { type Rate, type RateBasis, type RateUnit } from "#domain/quantities/rate";
import { compareRational, decimal, negateRational, type Rational, toNumber } from "#domain/quantities/rational";
import { askPartOrPercent } from "#domain/quantities/share";
import { type Dimension, type UnitOf } from "#domain/quantities/units";
import { type Refusals } from "#domain/worksheets/worksheet";

// How the fields of worksheets are read. Every refusal names its field, so that all of them can be said at once.

/** What a field is about and how it may be written: "the area", "6,000 sq ft". */
export interface FieldAsk {
  readonly field: string;
  readonly what: string;
  readonly such: string;
}

type ReadValues<Reads extends Readonly<Record<string, Outcome<unknown>>>> = {
  readonly [Name in keyof Reads]: Extract<Reads[Name], { readonly ok: true }>["value"];
};

/** The values of several fields, or the refusals of all that were refused, in their order. */
export function readTogether<Reads extends Readonly<Record<string, Outcome<unknown>>>>(reads: Reads): Outcome<ReadValues<Reads>, Refusals> {
  const [first, ...rest] = Object.values(reads).flatMap((read) => (read.ok ? [] : [read.refusal]));
  if (first !== undefined) return refuse<Refusals>([first, ...rest]);
  const values = Object.entries(reads).map(([name, read]): readonly [string, unknown] => [name, read.ok ? read.value : undefined]);
  // Each name has the value of its own read.
  return accept(Object.fromEntries(values) as ReadValues<Reads>);
}

/** One refusal as all that was refused. */
export function refuseOne(refusal: InputRefusal): { readonly ok: false; readonly refusal: Refusals } {
  return refuse<Refusals>([refusal]);
}

/** A field that may stay empty: undefined then. Refused as `read` refuses. */
export function ifTyped<Value>(text: string, read: (text: string) => Outcome<Value>): Outcome<Value | undefined> {
  return text.trim() === "" ? accept(undefined) : read(text);
}

/** Refuses an empty field, by its name; undefined where something was typed. */
export function refuseEmpty({ field, what, such }: FieldAsk, text: string) {
  return text.trim() === "" ? missingFact(field, such, `Give ${what}, such as ${such}.`) : undefined;
}

function refuseZero({ field, what, such }: FieldAsk, text: string) {
  return badInput(field, text, "more than nothing", `"${text.trim()}" is nothing. Give ${what}, such as ${such}.`);
}

/** What was typed stands in the sentence, so that it is plain which entry is meant. */
function withTyped(text: string, { field, found, allowed, sentence }: InputRefusal) {
  const typed = text.trim();
  return badInput(field, found, allowed, sentence.includes(typed) ? sentence : `"${typed}": ${sentence}`);
}

/**
 * Reads an amount above nothing, with its unit or in the unit that the field shows. Refused at the field: nothing
 * typed, an amount of nothing, and what parseQuantity or parseLength refuses.
 */
export function readAmountField<D extends Dimension>(
  ask: FieldAsk,
  text: string,
  takes: { readonly dimension: D; readonly unitWhenNone?: UnitOf<D> },
): Outcome<ExactQuantity<D>> {
  const empty = refuseEmpty(ask, text);
  if (empty !== undefined) return empty;
  const unit = takes.unitWhenNone === undefined ? {} : { unitWhenNone: takes.unitWhenNone };
  const read =
    takes.dimension === "length"
      ? parseLength(text, { field: ask.field, ...(unit as { readonly unitWhenNone?: UnitOf<"length"> }) })
      : parseQuantity<Dimension>(text, { field: ask.field, dimensions: [takes.dimension], ...unit });
  if (!read.ok) return withTyped(text, read.refusal);
  // The field takes this one dimension only.
  const exact = read.value.exact as ExactQuantity<D>;
  return isNothing(exact) ? refuseZero(ask, text) : accept(exact);
}

/**
 * Reads a rate above nothing, with its unit or in the unit that the field shows. Refused at the field: nothing typed, a
 * rate of nothing, and what parseRate refuses.
 */
export function readRateField<B extends RateBasis>(
  ask: FieldAsk,
  text: string,
  takes: { readonly bases: readonly B[]; readonly unitWhenNone?: RateUnit<B> },
): Outcome<Rate<B>> {
  const empty = refuseEmpty(ask, text);
  if (empty !== undefined) return empty;
  const unit = takes.unitWhenNone === undefined ? {} : { unitWhenNone: takes.unitWhenNone };
  const read = parseRate<B>(text, { field: ask.field, bases: takes.bases, ...unit });
  if (!read.ok) return withTyped(text, read.refusal);
  // The parser answers with one of the bases that it was given.
  const rate = read.value.rate as unknown as Rate<B>;
  return rate.amount === 0n ? refuseZero(ask, text) : accept(rate);
}

/** The ends of a range, both of which belong to it, with the unit that a person may write after the number. */
export interface NumberRange {
  readonly lowest: string;
  readonly highest: string;
  /** As it is written: "%", "min", "mph"; none for a bare number. */
  readonly unit: NumberUnit | "";
  readonly isWhole?: boolean;
}

function rangeWords({ lowest, highest, unit, isWhole }: NumberRange): string {
  const end = (text: string) => (text.startsWith("-") ? text : formatFigure(decimal(text), { decimals: 3, quarters: false }));
  return `${isWhole === true ? "whole numbers " : ""}from ${end(lowest)} to ${end(highest)}${unit === "" ? "" : ` ${unit}`}`;
}

/**
 * Reads a number within a range; below zero where the range reaches there. Its unit may be written after it. Refused at
 * the field: nothing typed, no number, another unit, one outside the range, a part of one where it must be whole, and a
 * percentage under one without its sign, which may be a part of the whole.
 */
export function readNumberField(ask: FieldAsk, text: string, range: NumberRange): Outcome<Rational> {
  const empty = refuseEmpty(ask, text);
  if (empty !== undefined) return empty;
  const typed = text.trim();
  const isBelowZero = range.lowest.startsWith("-") && /^[-\u2010-\u2013\u2212]/u.test(typed);
  const above = isBelowZero ? typed.slice(1) : typed;
  const bare = range.unit === "" ? accept(above) : bareNumber(ask.field, above, range.unit);
  if (!bare.ok) return bare;
  const read = parseNumber(ask.field, bare.value);
  if (!read.ok) return badInput(ask.field, typed, rangeWords(range), `${read.refusal.sentence} Here it takes ${rangeWords(range)}.`);
  const question = range.unit === "%" ? askPartOrPercent(typed, read.value) : undefined;
  if (question !== undefined) return badInput(ask.field, typed, rangeWords(range), question);
  const value = isBelowZero ? negateRational(read.value) : read.value;
  const isInside = compareRational(value, decimal(range.lowest)) >= 0 && compareRational(value, decimal(range.highest)) <= 0;
  const fits = isInside && (range.isWhole !== true || value.numerator % value.denominator === 0n);
  return fits ? accept(value) : badInput(ask.field, typed, rangeWords(range), `"${typed}" is no answer for ${ask.what}: it takes ${rangeWords(range)}.`);
}

/** The same as a floating point number, for a physical model, and refused alike. */
export function readModelNumber(ask: FieldAsk, text: string, range: NumberRange): Outcome<number> {
  const read = readNumberField(ask, text, range);
  return read.ok ? accept(toNumber(read.value)) : read;
}

/** Reads one of a few answers that the page offers. Refused at the field: anything else. */
export function readChoice<Choice extends string>(field: string, text: string, choices: readonly Choice[]): Outcome<Choice> {
  const chosen = choices.find((choice) => choice === text);
  const allowed = choices.join(", ");
  if (chosen !== undefined) return accept(chosen);
  return badInput(field, text === "" ? "nothing" : text, allowed, `Choose one of: ${allowed}.`);
}

const SUCH_DENSITIES: Readonly<Record<WeighedMaterial, string>> = {
  product: "10.65 lb per gal, specific gravity 1.28",
  "loose-material": "2,700 lb per cu yd, 100 lb per cu ft",
};

/** Reads a density: "10.65 lb per gal", "specific gravity 1.28". Refused as {@link readDensity} refuses. */
export function readDensityField(field: string, text: string, of: WeighedMaterial): Outcome<Density> {
  const read = readDensity(text.trim(), of);
  return read.ok ? read : badInput(field, text.trim(), SUCH_DENSITIES[of], read.refusal);
}

/** More parts than this are a paste of something else. Common practice. */
const MOST_PARTS = 200;

/** Reads the parts of a list, one thing a part. The first part that can't be read is refused, as are none and more than 200. */
export function readListField<Value>(ask: FieldAsk, parts: readonly string[], read: (part: string) => Outcome<Value>): Outcome<readonly [Value, ...Value[]]> {
  if (parts.length > MOST_PARTS) {
    return badInput(ask.field, `${parts.length} entries`, `up to ${MOST_PARTS}`, `These are ${parts.length} entries; at most ${MOST_PARTS} are read.`);
  }
  const values: Value[] = [];
  for (const part of parts) {
    const value = read(part);
    if (!value.ok) return value;
    values.push(value.value);
  }
  const [first, ...rest] = values;
  return first === undefined ? missingFact(ask.field, ask.such, `Give ${ask.what}, such as ${ask.such}.`) : accept([first, ...rest]);
}
