import { invariant } from "#domain/foundation/invariant";
import {
  canonicalAmountOf,
  type ExactQuantity,
  fromExactAmount,
  type Measure,
} from "#domain/quantities/exact-quantity";
import { type ExactValue, exactValue } from "#domain/quantities/quantity";
import { rateFromAmounts, type Rate } from "#domain/quantities/rate";
import { divideRational, multiplyRational, type Rational, reduce } from "#domain/quantities/rational";
import { requireDimension, type UnitOf, units } from "#domain/quantities/units";

/**
 * Mass over volume as a pair of whole numbers of canonical units, in lowest terms. The only way from a mass to a
 * volume. It has one source: the label, the safety data sheet or a weighing, never a default.
 */
export interface Density {
  readonly mass: bigint;
  readonly volume: bigint;
}

/** A unit of mass over a unit of volume: "lb per gal", "kg per L". */
export type DensityUnit = `${UnitOf<"mass">} per ${UnitOf<"volume">}`;

function fromRatio(ratio: Rational): Density {
  invariant(ratio.numerator > 0n && ratio.denominator > 0n, "a density is above zero");
  const { numerator, denominator } = reduce(ratio);
  return { mass: numerator, volume: denominator };
}

function isUnitOf<D extends "mass" | "volume">(dimension: D, text: string): text is UnitOf<D> {
  return Object.hasOwn(units, text) && units[text as keyof typeof units].dimension === dimension;
}

/** One of a density's unit, in canonical mass over canonical volume. */
function sizeOfDensityUnit(unit: DensityUnit): Rational {
  const [massUnit = "", volumeUnit = ""] = unit.split(" per ");
  invariant(isUnitOf("mass", massUnit) && isUnitOf("volume", volumeUnit), `"${unit}" is a unit of density`);
  return { numerator: units[massUnit].canonicalAmount, denominator: units[volumeUnit].canonicalAmount };
}

/** Makes a density: `densityOf("10.68", "lb per gal")`. Exact. Throws at and below zero. */
export function densityOf(value: ExactValue, unit: DensityUnit): Density {
  return fromRatio(multiplyRational(exactValue(value), sizeOfDensityUnit(unit)));
}

/**
 * Makes a density from the relative density of a safety data sheet or the specific gravity of a label, which compare
 * with water at 4 degrees C: 1 kg/L, 8.3454 lb/gal. Extension tables divide by a rounded 8.34 lb/gal instead; a
 * specific gravity worked out that way differs by 0.07 %. Throws at and below zero.
 */
export function densityFromSpecificGravity(specificGravity: ExactValue): Density {
  return densityOf(specificGravity, "kg per L");
}

/** Water: 1 kg/L, 8.3454 lb/gal. */
export const WATER: Density = densityFromSpecificGravity("1");

/** A weighed volume of the product: the density that the weighing gives. Throws when either is zero. */
export function densityFromWeighing(mass: Measure<"mass">, volume: Measure<"volume">): Density {
  return fromRatio(divideRational(canonicalAmountOf(mass), canonicalAmountOf(volume)));
}

/** The density in a unit, exactly. */
export function densityIn(density: Density, unit: DensityUnit): Rational {
  return divideRational({ numerator: density.mass, denominator: density.volume }, sizeOfDensityUnit(unit));
}

/** What a volume weighs, exactly. */
export function massOf(volume: Measure<"volume">, density: Density): ExactQuantity<"mass"> {
  requireDimension(volume, "volume");
  const { numerator, denominator } = canonicalAmountOf(volume);
  return fromExactAmount("mass", {
    numerator: numerator * density.mass,
    denominator: denominator * density.volume,
  });
}

/** What space a mass takes, exactly. */
export function volumeOf(mass: Measure<"mass">, density: Density): ExactQuantity<"volume"> {
  requireDimension(mass, "mass");
  const { numerator, denominator } = canonicalAmountOf(mass);
  return fromExactAmount("volume", {
    numerator: numerator * density.volume,
    denominator: denominator * density.mass,
  });
}

/** A liquid's rate by volume as its rate by mass. Exact, over the same area. */
export function massRateOf(rate: Rate<"product-volume-per-area">, density: Density): Rate<"product-mass-per-area"> {
  return rateFromAmounts("product-mass-per-area", rate.amount * density.mass, rate.per * density.volume);
}

/** A liquid's rate by mass as its rate by volume. Exact, over the same area. */
export function volumeRateOf(rate: Rate<"product-mass-per-area">, density: Density): Rate<"product-volume-per-area"> {
  return rateFromAmounts("product-volume-per-area", rate.amount * density.volume, rate.per * density.mass);
}
