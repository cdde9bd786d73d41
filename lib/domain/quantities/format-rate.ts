import { invariant } from "#domain/foundation/invariant";
import { formatFigure, sensibleDecimals } from "#domain/quantities/format-number";
import { type UnitSystem, untilApart } from "#domain/quantities/format-quantity";
import { compareRates, percentByVolumeOf, type Rate, type RateBasis, rateIn, type RateUnit } from "#domain/quantities/rate";
import { compareRational, ONE } from "#domain/quantities/rational";
import { isUsCustomary } from "#domain/quantities/unit-names";

/** The units in which a rate is said when nobody chose one: the first in which it is one or more, else the last. */
const SPOKEN: { readonly [B in RateBasis]: Readonly<Record<UnitSystem, readonly RateUnit<B>[]>> } = {
  "product-mass-per-area": {
    us: ["lb per 1,000 sq ft", "oz wt per 1,000 sq ft"],
    metric: ["g per m2"],
  },
  "product-volume-per-area": {
    us: ["gal per 1,000 sq ft", "fl oz per 1,000 sq ft"],
    metric: ["L per 100 m2", "mL per 100 m2"],
  },
  "nutrient-mass-per-area": { us: ["lb per 1,000 sq ft"], metric: ["g per m2"] },
  "active-ingredient-mass-per-area": { us: ["lb per acre"], metric: ["kg per ha"] },
  "seed-mass-per-area": { us: ["lb per 1,000 sq ft"], metric: ["g per m2"] },
  "carrier-volume-per-area": { us: ["gal per 1,000 sq ft"], metric: ["L per 100 m2"] },
  "product-volume-per-spray-volume": { us: ["fl oz per gal"], metric: ["mL per L"] },
  "product-mass-per-spray-volume": { us: ["oz wt per gal"], metric: ["g per L"] },
};

/**
 * "3.57 lb per 1,000 sq ft", "1½ gal per 1,000 sq ft", in a given unit, with at most so many digits after the point, to
 * the nearest or one way only.
 */
export function formatRateIn<B extends RateBasis>(
  rate: Rate<B>,
  unit: NoInfer<RateUnit<B>>,
  decimals?: number,
  rounding?: "up" | "down",
): string {
  const value = rateIn(rate, unit);
  const places = decimals ?? sensibleDecimals(value);
  const [amountUnit = ""] = unit.split(" per ");
  const figure = formatFigure(value, { decimals: places, quarters: isUsCustomary(amountUnit), ...(rounding === undefined ? {} : { rounding }) });
  const written = unit.replace("m2", "m²").replace("m3", "m³");
  if (figure !== "0" || value.numerator === 0n) return `${figure} ${written}`;
  const least = formatFigure(
    { numerator: 1n, denominator: 10n ** BigInt(places) },
    { decimals: places, quarters: false },
  );
  return `under ${least} ${written}`;
}

/** The rate in the unit that the trade says it in, by size; three to four figures, always the whole unit. */
export function formatRate<B extends RateBasis>(rate: Rate<B>, system: UnitSystem): string {
  return formatFiner(rate, system, 0);
}

/** The unit in which a rate of this size is said when nobody chose one. */
export function spokenUnitOf<B extends RateBasis>(rate: Rate<B>, system: UnitSystem): RateUnit<B> {
  const spoken: readonly RateUnit<B>[] = SPOKEN[rate.basis][system];
  const unit = spoken.find((candidate) => compareRational(rateIn(rate, candidate), ONE) >= 0) ?? spoken.at(-1);
  invariant(unit !== undefined, "each basis has a unit in which it is said");
  return unit;
}

/** As {@link formatRate}, with so many more digits after the point. */
function formatFiner<B extends RateBasis>(rate: Rate<B>, system: UnitSystem, moreDecimals: number): string {
  const unit = spokenUnitOf(rate, system);
  return formatRateIn(rate, unit, sensibleDecimals(rateIn(rate, unit)) + moreDecimals);
}

/**
 * Two rates that are put side by side, as {@link formatRate} says them; where they differ and would read the same, with
 * more digits until they differ: a sentence must not say that 0.7 lb is above 0.7 lb.
 */
export function formatRatesApart<B extends RateBasis>(one: Rate<B>, other: Rate<B>, system: UnitSystem): readonly [string, string] {
  const written = (moreDecimals: number) => [formatFiner(one, system, moreDecimals), formatFiner(other, system, moreDecimals)] as const;
  return untilApart(written, compareRates(one, other) === 0);
}

/** "0.5% v/v": a spray's product as percent by volume, with at most so many digits after the point, to the nearest or one way only. */
export function formatPercentByVolume(rate: Rate<"product-volume-per-spray-volume">, decimals: number, rounding?: "up" | "down"): string {
  return `${formatFigure(percentByVolumeOf(rate), { decimals, quarters: false, ...(rounding === undefined ? {} : { rounding }) })}% v/v`;
}
