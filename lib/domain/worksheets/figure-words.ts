import { type Measure } from "#domain/quantities/exact-quantity";
import { formatFigure, sensibleDecimals } from "#domain/quantities/format-number";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { type Rate, type RateBasis } from "#domain/quantities/rate";
import { type Rational } from "#domain/quantities/rational";
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

/** A part as percent: "46.7%". */
export function percentOfPart(part: Rational): string {
  const percent = { numerator: part.numerator * 100n, denominator: part.denominator };
  return `${formatFigure(percent, { decimals: 1, quarters: false })}%`;
}
