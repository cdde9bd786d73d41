import { percentWords } from "#domain/mixing/ticket-working-delivered";
import { type AreaBasis, inUnit, perThousand } from "#domain/mixing/ticket-working-words";
import { type Measure } from "#domain/quantities/exact-quantity";
import { formatFigure, sensibleDecimals } from "#domain/quantities/format-number";
import { formatQuantity, formatQuantityIn } from "#domain/quantities/format-quantity";
import { formatRate, formatRateIn } from "#domain/quantities/format-rate";
import { type Rate, type RateBasis } from "#domain/quantities/rate";
import { multiplyRational, type Rational, rational } from "#domain/quantities/rational";
import { type Dimension, type Unit } from "#domain/quantities/units";

// How worksheets write their figures: always from the value itself. Answers and tables are rounded for the eye; lines of
// arithmetic have two figures more, as those of mix tickets, so that whoever follows by hand comes to what they say.

/** Three to four figures of a number from zero up: "3.57", "1,250". */
export function numberWords(value: Rational): string {
  return formatFigure(value, { decimals: sensibleDecimals(value), quarters: false });
}

/** An amount in US units: "21.43 lb". */
export function amountWords(measure: Measure<Dimension>): string {
  return formatQuantity(measure, "us");
}

/** An amount in US units, and in metric ones beside it: "21.43 lb (9.72 kg)". */
export function amountBothWays(measure: Measure<Dimension>): string {
  return `${formatQuantity(measure, "us")} (${formatQuantity(measure, "metric")})`;
}

/** A rate in US units: "3.57 lb per 1,000 sq ft". */
export function rateWords<B extends RateBasis>(rate: Rate<B>): string {
  return formatRate(rate, "us");
}

/** A rate in US units, and in metric ones beside it. */
export function rateBothWays<B extends RateBasis>(rate: Rate<B>): string {
  return `${formatRate(rate, "us")} (${formatRate(rate, "metric")})`;
}

/** Whether somebody typed an area or a rate by the acre, and will read it so. */
export function isByAcre(typed: string): boolean {
  return /\bac(?:re)?s?\b|\/\s*a$/iu.test(typed.trim());
}

/** An area as it was typed: in acres or in square feet. */
export function areaAsTyped(area: Measure<"area">, typed: string): string {
  return isByAcre(typed) ? formatQuantityIn(area, "acre", 2) : formatQuantity(area, "us");
}

/** A sprayer's output as it was typed: by the acre or by 1,000 sq ft. */
export function carrierAsTyped(rate: Rate<"carrier-volume-per-area">, typed: string): string {
  return isByAcre(typed) ? formatRateIn(rate, "gal per acre") : formatRate(rate, "us");
}

/** A rate in a line of arithmetic: "3.5714 lb per 1,000 sq ft". */
export function stepRate<B extends AreaBasis>(rate: Rate<B>, unit?: Unit): string {
  return `${perThousand(rate, unit)} per 1,000 sq ft`;
}

/** A part of a whole in a line of arithmetic: "81.6%". */
export function stepPercent(part: Rational): string {
  return percentWords(multiplyRational(part, rational(100n)));
}

const QUARTER_DIGITS: Readonly<Record<string, string>> = { "¼": ".25", "½": ".5", "¾": ".75" };

/** The number at the head of a text: commas away, a quarter as digits. */
function leadingNumber(text: string): number {
  const digits = text.trim().replaceAll(",", "").replace(/[¼½¾]/u, (quarter) => QUARTER_DIGITS[quarter] ?? "");
  return Number.parseFloat(digits);
}

/** A figure that goes in, and what was typed beside it where that begins with another number: "37.4167 ft (37 ft 5 in)". */
export function withTyped(figure: string, typed: string): string {
  return leadingNumber(figure) === leadingNumber(typed) ? figure : `${figure} (${typed.trim()})`;
}

/** An area that goes in: by the acre where it was typed so, else in square feet. */
export function areaInput(area: Measure<"area">, typed: string): string {
  return isByAcre(typed) ? withTyped(inUnit(area, "acre"), typed) : withTyped(inUnit(area, "sq ft"), typed);
}

/** The line that turns acres into square feet, where the area was typed by the acre. */
export function acreLines(area: Measure<"area">, typed: string): readonly string[] {
  return isByAcre(typed) ? [`Area in square feet: ${inUnit(area, "acre")} × 43,560 sq ft = ${inUnit(area, "sq ft")}.`] : [];
}

/** Repeats, which are written out already, added up and divided by their number; one alone is its own average. */
export function averageLines(what: string, values: readonly string[], all: string, average: string): readonly string[] {
  if (values.length < 2) return [];
  return [`All ${what}: ${values.join(" + ")} = ${all}.`, `Average of the ${values.length} ${what}: ${all} ÷ ${values.length} = ${average}.`];
}
