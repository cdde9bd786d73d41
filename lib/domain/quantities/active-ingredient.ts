import { invariant } from "#domain/foundation/invariant";
import { accept, missingFact, type Outcome } from "#domain/foundation/outcome";
import { type Density, densityOf, type DensityUnit } from "#domain/quantities/density";
import {
  canonicalAmountOf,
  type ExactQuantity,
  fromExactAmount,
  type Measure,
} from "#domain/quantities/exact-quantity";
import { type ExactValue, exactValue } from "#domain/quantities/quantity";
import { rateFromAmounts, type Rate } from "#domain/quantities/rate";
import { compareRational, divideRational, multiplyRational, ONE, type Rational } from "#domain/quantities/rational";

/**
 * How much of one active ingredient a product holds, as the label states it: a part of its weight, or a mass in each
 * volume. Both are facts of one ingredient; a product with two ingredients has two.
 */
export type Concentration =
  | { readonly kind: "part-of-weight"; readonly part: Rational }
  | { readonly kind: "mass-in-volume"; readonly massInVolume: Density };

/** A concentration as percent by weight, above 0 and at most 100. Throws for others. */
export function percentByWeight(percent: ExactValue): Concentration {
  const value = exactValue(percent);
  const part = { numerator: value.numerator, denominator: value.denominator * 100n };
  invariant(part.numerator > 0n && compareRational(part, ONE) <= 0, "a percentage is above 0 and at most 100");
  return { kind: "part-of-weight", part };
}

/**
 * A concentration as mass of active ingredient in a volume of product: `massInVolume("4", "lb per gal")`. Throws at and
 * below zero.
 */
export function massInVolume(value: ExactValue, unit: DensityUnit): Concentration {
  return { kind: "mass-in-volume", massInVolume: densityOf(value, unit) };
}

/** Whether only a density leads from a product that is measured this way to its ingredient: one is by weight and the other by volume. */
export function takesDensity(productDimension: "mass" | "volume", { kind }: Concentration): boolean {
  return productDimension === "volume" ? kind === "part-of-weight" : kind === "mass-in-volume";
}

function densityMissing(): Outcome<never> {
  return missingFact(
    "density",
    "the product's density, from its label or safety data sheet",
    "The product is measured one way and its active ingredient stated the other; its density is needed for that.",
  );
}

/** The active ingredient in one canonical unit of product, or the refusal that the density is missing. */
function activePerCanonicalUnit(
  productDimension: "mass" | "volume",
  concentration: Concentration,
  density: Density | undefined,
): Outcome<Rational> {
  if (concentration.kind === "part-of-weight") {
    if (productDimension === "mass") return accept(concentration.part);
    if (density === undefined) return densityMissing();
    const perVolume = { numerator: density.mass, denominator: density.volume };
    return accept(multiplyRational(perVolume, concentration.part));
  }
  const { mass, volume } = concentration.massInVolume;
  if (productDimension === "volume") return accept({ numerator: mass, denominator: volume });
  if (density === undefined) return densityMissing();
  return accept(
    divideRational({ numerator: mass, denominator: volume }, { numerator: density.mass, denominator: density.volume }),
  );
}

/**
 * The active ingredient that a product rate puts on an area, exactly, for season limits: mass over the same area.
 * Refused at `density` when the product is measured by volume and its ingredient stated by weight (or the other way
 * round) and no density is on file.
 */
export function activeIngredientRate(
  productRate: Rate<"product-mass-per-area"> | Rate<"product-volume-per-area">,
  concentration: Concentration,
  density?: Density,
): Outcome<Rate<"active-ingredient-mass-per-area">> {
  const dimension = productRate.basis === "product-mass-per-area" ? "mass" : "volume";
  const active = activePerCanonicalUnit(dimension, concentration, density);
  if (!active.ok) return active;
  return accept(
    rateFromAmounts(
      "active-ingredient-mass-per-area",
      productRate.amount * active.value.numerator,
      productRate.per * active.value.denominator,
    ),
  );
}

/** The active ingredient in an amount of product. Refused as {@link activeIngredientRate} is. */
export function activeIngredientIn(
  product: Measure<"mass"> | Measure<"volume">,
  concentration: Concentration,
  density?: Density,
): Outcome<ExactQuantity<"mass">> {
  const active = activePerCanonicalUnit(product.dimension, concentration, density);
  if (!active.ok) return active;
  return accept(fromExactAmount("mass", multiplyRational(canonicalAmountOf(product), active.value)));
}

/**
 * The product by volume that gives a rate of active ingredient: pints per acre from lb per acre. Exact. Refused at
 * `density` when the ingredient is stated by weight and no density is on file. Source of the way: Cowlitz County
 * (Washington) noxious weed board, pints per acre = 8 x lb per acre / lb per gal.
 */
export function productVolumeRateFor(
  activeRate: Rate<"active-ingredient-mass-per-area">,
  concentration: Concentration,
  density?: Density,
): Outcome<Rate<"product-volume-per-area">> {
  const active = activePerCanonicalUnit("volume", concentration, density);
  if (!active.ok) return active;
  return accept(
    rateFromAmounts(
      "product-volume-per-area",
      activeRate.amount * active.value.denominator,
      activeRate.per * active.value.numerator,
    ),
  );
}

/**
 * The product by weight that gives a rate of active ingredient. Exact. Refused at `density` when the ingredient is
 * stated by volume and no density is on file.
 */
export function productMassRateFor(
  activeRate: Rate<"active-ingredient-mass-per-area">,
  concentration: Concentration,
  density?: Density,
): Outcome<Rate<"product-mass-per-area">> {
  const active = activePerCanonicalUnit("mass", concentration, density);
  if (!active.ok) return active;
  return accept(
    rateFromAmounts(
      "product-mass-per-area",
      activeRate.amount * active.value.denominator,
      activeRate.per * active.value.numerator,
    ),
  );
}
