import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { canonicalAmountOf, type ExactQuantity, exactly } from "#domain/quantities/exact-quantity";
import { parseNumber, plainCharacters } from "#domain/quantities/parse-number";
import { parseQuantity, refuseCapitalM, splitNumberAndUnit } from "#domain/quantities/parse-quantity";
import {
  percentByVolume,
  type Rate,
  type RateBasis,
  rateBases,
  rateFromAmounts,
  type RateUnit,
} from "#domain/quantities/rate";
import { compareRational, divideRational, ONE, type Rational } from "#domain/quantities/rational";
import { isUsCustomary, readUnit } from "#domain/quantities/unit-names";
import { type Dimension, GREATEST_STORED_AMOUNT, type Unit } from "#domain/quantities/units";

/** A rate that a person typed: what they typed is kept beside what it means. */
export type TypedRate<B extends RateBasis> = B extends RateBasis
  ? { readonly typed: string; readonly rate: Rate<B> }
  : never;

/** A field that takes a rate: its name, the bases it takes, and the unit shown beside it, if one is. */
export interface RateField<B extends RateBasis> {
  readonly field: string;
  readonly bases: readonly B[];
  readonly unitWhenNone?: RateUnit<B> | "% v/v";
}

const PERCENT = /^([^%]*)%(?: ?v\/v| by volume)?$/iu;
/** What stands between the two halves, after a unit: after "lb", "#", "lb." and "m3", and not in the middle of "1/2". */
export const RATE_DIVIDER = /(?<=[\p{L}#.]|\p{L}\^?[23])(?:\/| per )/u;

/** "1.000": a thousand to some, one to others. */
const POINT_AS_SEPARATOR = /^[1-9]\d{0,2}(?:\.\d{3})+$/u;

const EXAMPLES: Readonly<Record<RateBasis, string>> = {
  "product-mass-per-area": "3.5 lb per 1,000 sq ft",
  "product-volume-per-area": "1.5 fl oz per 1,000 sq ft",
  "nutrient-mass-per-area": "0.75 lb per 1,000 sq ft",
  "active-ingredient-mass-per-area": "0.5 lb per acre",
  "seed-mass-per-area": "4 lb per 1,000 sq ft",
  "carrier-volume-per-area": "2 gal per 1,000 sq ft",
  "product-volume-per-spray-volume": "0.8 fl oz per gal",
  "product-mass-per-spray-volume": "1 oz wt per gal",
};

function examplesOf(bases: readonly RateBasis[]): string {
  return bases.map((basis) => EXAMPLES[basis]).join(", ");
}

/** What the rate is over: "1,000 sq ft", "M sq ft", "acre", "100 gal", and after a US unit "1,000", "M" or "a" alone. */
function readDenominator(
  field: { readonly field: string; readonly bases: readonly RateBasis[] },
  text: string,
  whole: { readonly found: string; readonly amountUnit: Unit },
): Outcome<ExactQuantity<Dimension>> {
  const plain = text.replace(/^(?:a )?thousand\b/iu, "1,000").replace(/^M (?=\S)/u, "1,000 ");
  const isUs = isUsCustomary(whole.amountUnit);
  if (plain === "M") {
    return isUs ? accept(exactly("sq ft", 1000n)) : refuseCapitalM(field.field, whole.found);
  }
  const split = splitNumberAndUnit(plain);
  if (POINT_AS_SEPARATOR.test(split.number)) {
    const meant = split.number.replaceAll(".", ",");
    const sentence = `"${whole.found}" may be over ${meant} or over ${split.number.replace(/\..*$/u, "")}. Write ${meant} if that is meant.`;
    return badInput(field.field, whole.found, examplesOf(field.bases), sentence);
  }
  const count = split.number === "" ? accept(ONE) : parseNumber(field.field, split.number);
  if (!count.ok) return badInput(field.field, whole.found, count.refusal.allowed, count.refusal.sentence);
  const examples = examplesOf(field.bases);
  if (count.value.numerator === 0n) {
    return badInput(field.field, whole.found, examples, `"${whole.found}" is a rate over nothing.`);
  }
  if (split.unit === "") {
    const isThousand = compareRational(count.value, { numerator: 1000n, denominator: 1n }) === 0;
    if (isThousand && isUs) return accept(exactly("sq ft", count.value));
    const sentence = `"${whole.found}" does not say ${split.number} of what. Write it as in ${examples}.`;
    return badInput(field.field, whole.found, examples, sentence);
  }
  const isBareA = split.unit.toLowerCase() === "a";
  if (isBareA && !isUs) {
    return badInput(field.field, whole.found, "ha, 100 m2, acre", `The a in "${whole.found}" could be an acre or an are, which is 100 m\u00B2. Write ha, 100 m2 or acre.`);
  }
  const unit = isBareA ? ({ kind: "unit", unit: "acre" } as const) : readUnit(split.unit);
  if (unit.kind === "unit") return accept(exactly(unit.unit, count.value));
  return badInput(
    field.field,
    whole.found,
    examples,
    `"${text}" is not known as what a rate is over. Write it as in ${examples}.`,
  );
}

function readPercent<B extends RateBasis>(text: string, field: RateField<B>, number: string): Outcome<TypedRate<B>> {
  const found = text.trim();
  const examples = examplesOf(field.bases);
  if (!field.bases.some((basis) => basis === "product-volume-per-spray-volume")) {
    return badInput(
      field.field,
      found,
      examples,
      `"${found}" is a percentage; here it takes a rate as in ${examples}.`,
    );
  }
  const percent = parseNumber(field.field, number);
  if (!percent.ok) return badInput(field.field, found, percent.refusal.allowed, percent.refusal.sentence);
  if (compareRational(percent.value, { numerator: 100n, denominator: 1n }) > 0) {
    return badInput(field.field, found, "at most 100%", `"${found}" is more product than finished spray.`);
  }
  return finish(text, field, percentByVolume(percent.value));
}

/** Keeps the rate if storage can hold it. The basis was chosen from the field's own. */
function finish<B extends RateBasis>(typed: string, field: RateField<B>, rate: Rate<RateBasis>): Outcome<TypedRate<B>> {
  if (rate.amount > GREATEST_STORED_AMOUNT || rate.per > GREATEST_STORED_AMOUNT) {
    const sentence = `"${typed.trim()}" has more figures than can be kept on file.`;
    return badInput(field.field, typed.trim(), "a rate with fewer figures", sentence);
  }
  return accept({ typed, rate } as unknown as TypedRate<B>);
}

function finishRatio<B extends RateBasis>(
  typed: string,
  field: RateField<B>,
  of: { readonly amount: ExactQuantity<Dimension>; readonly per: ExactQuantity<Dimension> },
): Outcome<TypedRate<B>> {
  const basis = field.bases.find(
    (candidate) => rateBases[candidate].amount === of.amount.dimension && rateBases[candidate].per === of.per.dimension,
  );
  if (basis === undefined) {
    const found = typed.trim();
    const examples = examplesOf(field.bases);
    return badInput(field.field, found, examples, `"${found}" is another kind of rate. Write it as in ${examples}.`);
  }
  const ratio: Rational = divideRational(canonicalAmountOf(of.amount), canonicalAmountOf(of.per));
  return finish(typed, field, rateFromAmounts(basis, ratio.numerator, ratio.denominator));
}

/** Reads a rate in plain characters; `typed` is kept as it was. */
function readRate<B extends RateBasis>(typed: string, plain: string, field: RateField<B>): Outcome<TypedRate<B>> {
  const found = typed.trim() === "" ? "nothing" : typed.trim();
  const percent = PERCENT.exec(plain);
  if (percent !== null) return readPercent(typed, field, percent[1] ?? "");
  const divider = RATE_DIVIDER.exec(plain);
  if (divider === null) {
    const examples = examplesOf(field.bases);
    const value = parseNumber(field.field, plain);
    if (value.ok && field.unitWhenNone !== undefined) {
      return readRate(typed, `${plain} ${field.unitWhenNone}`, field);
    }
    const isNumberWithoutUnit = splitNumberAndUnit(plain).unit === "";
    const sentence =
      !value.ok && isNumberWithoutUnit
        ? value.refusal.sentence
        : `"${found}" does not say how much per what. Write it as in ${examples}.`;
    return badInput(field.field, found, examples, sentence);
  }
  const amount = parseQuantity(plain.slice(0, divider.index), {
    field: field.field,
    dimensions: [...new Set<Dimension>(field.bases.map((basis) => rateBases[basis].amount))],
  });
  if (!amount.ok) return badInput(field.field, found, amount.refusal.allowed, amount.refusal.sentence);
  const per = readDenominator(field, plain.slice(divider.index + divider[0].length).trim(), {
    found,
    amountUnit: amount.value.unit,
  });
  if (!per.ok) return per;
  return finishRatio(typed, field, { amount: amount.value.exact, per: per.value });
}

/**
 * Reads a rate as people type it: "2.5 lb/1,000 sq ft", "1 1/2 gal/1,000", "2.5 lb/M", "3 pt/acre", "0.8 fl oz per
 * gal", "0.5% v/v", "20 kg/ha". Exact. After a US unit, "1,000" and the trade's capital M mean square feet and "a" an acre; after a
 * metric unit they are refused. Refused too: a rate of another basis, an ounce of either kind, a rate over nothing or
 * over "1.000", whose point may part thousands, and what parseQuantity refuses. All at `field`.
 */
export function parseRate<B extends RateBasis>(text: string, field: RateField<B>): Outcome<TypedRate<B>> {
  return readRate(text, plainCharacters(text), field);
}
