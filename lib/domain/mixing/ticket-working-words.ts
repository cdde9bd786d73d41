import { isNothing, type Measure, measureInUnit, multiplyExact } from "#domain/quantities/exact-quantity";
import { formatFigure, sensibleDecimals } from "#domain/quantities/format-number";
import { formatQuantityIn, writeQuantity } from "#domain/quantities/format-quantity";
import { of, type Quantity } from "#domain/quantities/quantity";
import { type Rate, type RateBasis, times } from "#domain/quantities/rate";
import { divideRational, type Rational, rational } from "#domain/quantities/rational";
import { type Dimension, type Unit, units } from "#domain/quantities/units";
import { areOverArea, type AreaRates, type SprayRate, type SprayRates } from "#domain/label/label-facts";
import { rateTimes } from "#domain/mixing/spray-mix";
import { statedOf } from "#domain/mixing/stated-rate";
import { type TicketTreatment } from "#domain/mixing/ticket-question";

/** What rates of a lawn are said over. */
export const THOUSAND_SQ_FT: Quantity<"area"> = of("sq ft", 1000n);

/** Two figures more than a page shows, so that whoever follows by hand comes to the same mark. */
const MORE_DECIMALS = 2;
/** The digits after the point that a thousandth has; from there down figures are counted, not digits. */
const MOST_SENSIBLE = 7;

/** However little it is, five figures of it, so that no line says "under". */
function decimalsOf({ numerator, denominator }: Rational): number {
  const decimals = sensibleDecimals({ numerator, denominator }) + MORE_DECIMALS;
  const isLittle = (digits: number) => numerator > 0n && numerator * 10n ** BigInt(digits) < denominator * 10_000n;
  let enough = decimals;
  while (decimals > MOST_SENSIBLE && isLittle(enough)) enough += 1;
  return enough;
}

/** A number in a line of arithmetic: "7.776", "2.592". */
export function figure(value: Rational): string {
  return formatFigure(value, { decimals: decimalsOf(value), quarters: false });
}

/** An amount in a line of arithmetic, in a given unit: "7.776 lb", "2,592 sq ft". */
export function inUnit(measure: Measure<Dimension>, unit: Unit): string {
  return formatQuantityIn<Dimension>(measure, unit, decimalsOf(measureInUnit<Dimension>(measure, unit)));
}

const isUnit = (text: string): text is Unit => Object.hasOwn(units, text);

/** The unit in which pages show an amount of this size; an area is worked out in square feet whatever its size. */
export function unitOf(measure: Measure<Dimension>): Unit {
  const { unit } = writeQuantity(measure, "us");
  return measure.dimension !== "area" && isUnit(unit) ? unit : "sq ft";
}

/** The same amount in a larger unit, as a line: "72½ fl oz ÷ 128 fl oz × 1 gal = 0.56641 gal"; none where the unit stays. */
export function conversionLines(measure: Measure<Dimension>, from: Unit, to: Unit): readonly string[] {
  return from === to ? [] : [conversionLine(measure, from, to)];
}

/** The same amount in a larger unit, as one line: "6,000 sq ft ÷ 43,560 sq ft × 1 acre = 0.13774 acre". */
export function conversionLine(measure: Measure<Dimension>, from: Unit, to: Unit): string {
  return `${inUnit(measure, from)} ÷ ${inUnit(of(to, 1n), from)} × ${inUnit(of(to, 1n), to)} = ${inUnit(measure, to)}`;
}

/**
 * Parts added up as they are measured out: in their own unit where they share one, and then in that of the whole; else
 * each is first said in the unit of the whole.
 */
export function sumLines(parts: readonly Measure<Dimension>[], total: Measure<Dimension>): readonly string[] {
  const own = [...new Set(parts.filter((part) => !isNothing(part)).map(unitOf))];
  const whole = unitOf(total);
  const [unit = whole] = own;
  if (own.length <= 1) return [sumLine(parts, total, unit), ...conversionLines(total, unit, whole)];
  return [...parts.filter((part) => !isNothing(part)).flatMap((part) => conversionLines(part, unitOf(part), whole)), sumLine(parts, total, whole)];
}

/** A sum as a line: "7¾ lb + 5¾ lb = 13½ lb"; what is one part alone is said as it is. */
export function sumLine(parts: readonly Measure<Dimension>[], total: Measure<Dimension>, unit: Unit): string {
  const sum = parts.map((part) => inUnit(part, unit)).join(" + ");
  return parts.length === 0 ? inUnit(total, unit) : `${sum} = ${inUnit(total, unit)}`;
}

/** How many times one amount is in another: "7.776 lb ÷ ¼ lb = 31.104". */
export function timesIn(whole: Measure<Dimension>, part: Measure<Dimension>, unit: Unit): string {
  const quotient = divideRational(measureInUnit<Dimension>(whole, unit), measureInUnit<Dimension>(part, unit));
  return `${inUnit(whole, unit)} ÷ ${inUnit(part, unit)} = ${figure(quotient)}`;
}

/** So many times an amount: "31 × ¼ lb = 7¾ lb". */
export function manyTimes<D extends Dimension>(count: bigint, part: Measure<D>, unit: Unit): string {
  const product = multiplyExact(part, { numerator: count, denominator: 1n });
  return `${figure(rational(count))} × ${inUnit(part, unit)} = ${inUnit(product, unit)}`;
}

/** What rates over an area are of: all but those in finished spray. */
export type AreaBasis = Exclude<RateBasis, "product-volume-per-spray-volume" | "product-mass-per-spray-volume">;

/** What a rate gives on 1,000 sq ft, in a unit or in that of its size: "3 lb". */
export function perThousand<B extends AreaBasis>(rate: Rate<B>, unit?: Unit): string {
  const amount = times<AreaBasis>(rate, THOUSAND_SQ_FT);
  return inUnit(amount, unit ?? unitOf(amount));
}

/** An area at a rate: "2,592 sq ft ÷ 1,000 sq ft × 3 lb = 7.776 lb". */
export function areaTimesRate<B extends AreaBasis>(area: Measure<"area">, rate: Rate<B>, unit: Unit): string {
  return `${inUnit(area, "sq ft")} ÷ 1,000 sq ft × ${perThousand(rate, unit)} = ${inUnit(times<AreaBasis>(rate, area), unit)}`;
}

/** Whose rates they are: "the label of Harrowgate 32, Lawns: 2 lb to 3 lb per 1,000 sq ft"; "1 fl oz to 2 fl oz per gal". */
export function labelWords(treatment: TicketTreatment, unit: Unit): string {
  const { rates } = statedOf(treatment);
  return `the label of ${treatment.label.productName}, ${treatment.use.useName}: ${areOverArea(rates) ? rangeWords(rates, unit) : strengthWords(rates)}`;
}

function strengthWords({ low, high }: SprayRates): string {
  return `${perGallon(low)} to ${perGallon(high)} per gal`;
}

/** What a strength is in a gallon of finished spray, in a line of arithmetic: "1.5 fl oz". */
export function perGallon(rate: SprayRate): string {
  const gallon = of("gal", 1n);
  return rate.basis === "product-mass-per-spray-volume" ? inUnit(times(rate, gallon), "oz wt") : inUnit(times(rate, gallon), "fl oz");
}

function rangeWords({ low, high }: AreaRates, unit: Unit): string {
  const [amountLow, amountHigh] = [low, high].map((rate) => rateTimes(rate, THOUSAND_SQ_FT));
  if (amountLow === undefined || amountHigh === undefined || amountLow.dimension !== units[unit].dimension) return "by another measure";
  return `${inUnit(amountLow, unit)} to ${inUnit(amountHigh, unit)} per 1,000 sq ft`;
}
