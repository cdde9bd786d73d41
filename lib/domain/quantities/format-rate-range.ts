import { formatFigure, sensibleDecimals } from "#domain/quantities/format-number";
import { type UnitSystem } from "#domain/quantities/format-quantity";
import { formatPercentByVolume, formatRateIn, spokenUnitOf } from "#domain/quantities/format-rate";
import { compareRates, type Rate, type RateBasis, rateIn, type RateUnit } from "#domain/quantities/rate";
import { type Rational } from "#domain/quantities/rational";

/** The bases in which labels state ranges. */
type StatedBasis = "product-mass-per-area" | "product-volume-per-area" | "carrier-volume-per-area" | "product-volume-per-spray-volume" | "product-mass-per-spray-volume";

/** Other units in which labels state them, larger ones first. */
const OTHER_UNITS: { readonly [B in StatedBasis]: readonly RateUnit<B>[] } = {
  "product-mass-per-area": ["lb per acre", "oz wt per acre", "kg per ha", "g per m2"],
  "product-volume-per-area": ["gal per acre", "qt per acre", "pt per acre", "fl oz per acre", "L per ha", "mL per ha", "mL per 100 m2"],
  "carrier-volume-per-area": ["gal per acre", "L per ha", "L per 100 m2"],
  "product-volume-per-spray-volume": ["gal per 100 gal", "qt per 100 gal", "pt per 100 gal", "fl oz per 100 gal", "mL per L"],
  "product-mass-per-spray-volume": ["lb per 100 gal", "oz wt per 100 gal", "g per L"],
};

/** A range of rates in words. */
export interface RateRangeWords {
  /** Both ends as the trade says them; the same where they are one rate. */
  readonly from: string;
  readonly to: string;
  /** False where an end is rounded. */
  readonly isExact: boolean;
  /** Of ends that are rounded the same range in a unit in which it is whole or exact, as labels per acre are: "1 to 2 pt per acre". */
  readonly otherwise?: string;
}

/**
 * A range whose ends are rounded inward, the lowest up and the highest down, so that whoever types what is shown is within
 * it; with more digits where few of them would leave nothing between. One rate is rounded down, never above itself.
 */
export function formatRateRange<B extends StatedBasis>(low: Rate<B>, high: Rate<B>, system: UnitSystem): RateRangeWords {
  const isOne = compareRates(low, high) === 0;
  const [lowUnit, highUnit] = [spokenUnitOf(low, system), spokenUnitOf(high, system)];
  const [lowest, highest] = [rateIn(low, lowUnit), rateIn(high, highUnit)];
  let moreDecimals = 0;
  while (!isOne && lowUnit === highUnit && !isApart(lowest, highest, moreDecimals)) moreDecimals += 1;
  const end = (rate: Rate<B>, unit: RateUnit<B>, rounding: "up" | "down") => formatRateIn(rate, unit, sensibleDecimals(rateIn(rate, unit)) + moreDecimals, rounding);
  const isExact = end(low, lowUnit, "up") === end(low, lowUnit, "down") && end(high, highUnit, "up") === end(high, highUnit, "down");
  const otherwise = isExact ? undefined : inOtherUnit(low, high);
  return { from: end(low, lowUnit, isOne ? "down" : "up"), to: end(high, highUnit, "down"), isExact, ...(otherwise === undefined ? {} : { otherwise }) };
}

/** Whether the lowest, rounded up, stays under the highest, rounded down. */
function isApart(lowest: Rational, highest: Rational, moreDecimals: number): boolean {
  const digits = (value: Rational, rounding: "up" | "down") => Number(formatFigure(value, { decimals: sensibleDecimals(value) + moreDecimals, quarters: false, rounding }).replaceAll(",", ""));
  return digits(lowest, "up") < digits(highest, "down");
}

function inOtherUnit<B extends StatedBasis>(low: Rate<B>, high: Rate<B>): string | undefined {
  const candidates: readonly RateUnit<B>[] = OTHER_UNITS[low.basis];
  const isWhole = (value: Rational) => value.numerator % value.denominator === 0n;
  const isWritten = (value: Rational) => (value.numerator * 1000n) % value.denominator === 0n;
  const both = (is: (value: Rational) => boolean) => candidates.find((unit) => is(rateIn(low, unit)) && is(rateIn(high, unit)));
  const unit = both(isWhole) ?? both(isWritten);
  if (unit === undefined) return undefined;
  return joinRange(formatRateIn(low, unit, WRITTEN_DECIMALS), formatRateIn(high, unit, WRITTEN_DECIMALS));
}

/** So many digits as labels write. */
const WRITTEN_DECIMALS = 3;

/** "2 to 3 lb per 1,000 sq ft"; with both units written out where they differ; one rate where both are the same. */
export function joinRange(from: string, to: string): string {
  if (from === to) return to;
  const [fromFigure = "", ...fromUnit] = from.split(" ");
  const [, ...toUnit] = to.split(" ");
  return fromUnit.join(" ") === toUnit.join(" ") ? `${fromFigure} to ${to}` : `${from} to ${to}`;
}

/** "0.5% v/v to 1% v/v", with three digits after the point or as few more as leave something between, rounded inward; one strength where both are the same. */
export function percentRangeWords(low: Rate<"product-volume-per-spray-volume">, high: Rate<"product-volume-per-spray-volume">): string {
  if (compareRates<RateBasis>(low, high) === 0) return formatPercentByVolume(high, WRITTEN_DECIMALS, "down");
  let decimals = WRITTEN_DECIMALS;
  const written = () => [formatPercentByVolume(low, decimals, "up"), formatPercentByVolume(high, decimals, "down")] as const;
  while (Number.parseFloat(written()[0]) >= Number.parseFloat(written()[1])) decimals += 1;
  return written().join(" to ");
}
