import { type Measure } from "#domain/quantities/exact-quantity";
import { formatFigure, sensibleDecimals } from "#domain/quantities/format-number";
import { formatQuantity, formatQuantityIn } from "#domain/quantities/format-quantity";
import { formatPercentByVolume, formatRate, formatRateIn } from "#domain/quantities/format-rate";
import { type Rate, type RateBasis, rateIn } from "#domain/quantities/rate";
import { compareRational, ONE, type Rational } from "#domain/quantities/rational";
import { type Dimension } from "#domain/quantities/units";

// How the steps of worksheets write their figures: always from the value itself, rounded for the eye only.

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

/** A product's rate as it was typed: by the acre, by 1,000 sq ft, or in the spray. */
export function productRateAsTyped(
  rate: Rate<"product-volume-per-area"> | Rate<"product-mass-per-area"> | Rate<"product-volume-per-spray-volume"> | Rate<"product-mass-per-spray-volume">,
  typed: string,
): string {
  if (isByAcre(typed) && rate.basis === "product-volume-per-area") return formatRateIn(rate, compareRational(rateIn(rate, "gal per acre"), ONE) >= 0 ? "gal per acre" : "fl oz per acre");
  if (isByAcre(typed) && rate.basis === "product-mass-per-area") return formatRateIn(rate, compareRational(rateIn(rate, "lb per acre"), ONE) >= 0 ? "lb per acre" : "oz wt per acre");
  if (rate.basis === "product-volume-per-spray-volume" && typed.includes("%")) return formatPercentByVolume(rate, 3);
  return formatRate<RateBasis>(rate, "us");
}
