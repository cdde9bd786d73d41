import { BrokenInvariant, invariant } from "#domain/foundation/invariant";
import {
  canonicalAmountOf,
  type ExactQuantity,
  fromExactAmount,
  type Measure,
} from "#domain/quantities/exact-quantity";
import { type ExactValue, exactValue } from "#domain/quantities/quantity";
import {
  addRational,
  compareRational,
  divideRational,
  multiplyRational,
  type Rational,
  reduce,
} from "#domain/quantities/rational";
import { type Dimension, requireDimension, type Unit, type UnitOf, units } from "#domain/quantities/units";

/** What a rate counts, and over what. A rate of one basis can't be passed where another is wanted. */
export const rateBases = {
  "product-mass-per-area": { amount: "mass", per: "area" },
  "product-volume-per-area": { amount: "volume", per: "area" },
  "nutrient-mass-per-area": { amount: "mass", per: "area" },
  "active-ingredient-mass-per-area": { amount: "mass", per: "area" },
  "seed-mass-per-area": { amount: "mass", per: "area" },
  "carrier-volume-per-area": { amount: "volume", per: "area" },
  "product-volume-per-spray-volume": { amount: "volume", per: "volume" },
  "product-mass-per-spray-volume": { amount: "mass", per: "volume" },
} as const satisfies Readonly<Record<string, { readonly amount: Dimension; readonly per: Dimension }>>;

/** What a rate counts, and over what, by name. */
export type RateBasis = keyof typeof rateBases;
/** The dimension of what a rate counts: mass or volume. */
export type AmountDimension<B extends RateBasis> = (typeof rateBases)[B]["amount"];
/** The dimension of what a rate is over: the area, or the volume of finished spray. */
export type PerDimension<B extends RateBasis> = (typeof rateBases)[B]["per"];

/**
 * So much of one thing over so much of another, as a pair of whole numbers of canonical units in lowest terms. Zero is
 * a rate ("0 lb P2O5"). Seed is pure live seed; a spray volume is that of the finished spray, product included.
 *
 * Both numbers fit a 64 bit column for a rate that was typed (parseRate refuses others) and for one made by rateFrom
 * of stored quantities. A rate that was scaled or derived stays exact and may outgrow it: keep its inputs, or the
 * quantities that were put down.
 */
export interface Rate<B extends RateBasis> {
  readonly basis: B;
  readonly amount: bigint;
  readonly per: bigint;
}

/** The second halves of the units of rates, as they are spoken: "lb per 1,000 sq ft", "fl oz per gal". */
export const rateDenominators = {
  "1,000 sq ft": { unit: "sq ft", count: 1000n },
  "sq ft": { unit: "sq ft", count: 1n },
  acre: { unit: "acre", count: 1n },
  m2: { unit: "m2", count: 1n },
  "100 m2": { unit: "m2", count: 100n },
  ha: { unit: "ha", count: 1n },
  gal: { unit: "gal", count: 1n },
  "100 gal": { unit: "gal", count: 100n },
  L: { unit: "L", count: 1n },
  "100 L": { unit: "L", count: 100n },
} as const satisfies Readonly<Record<string, { readonly unit: Unit; readonly count: bigint }>>;

/** What a rate is said to be over, as it is written: "1,000 sq ft", "gal". */
export type RateDenominator = keyof typeof rateDenominators;
/** Those of them that measure one dimension. */
export type RateDenominatorOf<D extends Dimension> = {
  [L in RateDenominator]: (typeof rateDenominators)[L]["unit"] extends UnitOf<D> ? L : never;
}[RateDenominator];

/** The units in which a rate of a basis can be said, such as "lb per 1,000 sq ft" or "fl oz per gal". */
export type RateUnit<B extends RateBasis> = B extends RateBasis
  ? `${UnitOf<AmountDimension<B>>} per ${RateDenominatorOf<PerDimension<B>>}`
  : never;

interface RateUnitSize {
  readonly amount: bigint;
  readonly per: bigint;
}

function isUnit(text: string): text is Unit {
  return Object.hasOwn(units, text);
}

function isRateDenominator(text: string): text is RateDenominator {
  return Object.hasOwn(rateDenominators, text);
}

/** One of a rate's unit in canonical units: the amount, and what it is over. */
function sizeOfRateUnit(basis: RateBasis, rateUnit: string): RateUnitSize {
  const [amountUnit = "", perText = ""] = rateUnit.split(" per ");
  invariant(isUnit(amountUnit) && isRateDenominator(perText), `"${rateUnit}" is a unit of a rate`);
  const { unit: perUnit, count } = rateDenominators[perText];
  const { amount, per } = rateBases[basis];
  invariant(
    units[amountUnit].dimension === amount && units[perUnit].dimension === per,
    `"${rateUnit}" is a unit of ${basis}`,
  );
  return { amount: units[amountUnit].canonicalAmount, per: units[perUnit].canonicalAmount * count };
}

/** Makes a rate from canonical amounts, in lowest terms. Throws below zero, and over zero. */
export function rateFromAmounts<B extends RateBasis>(basis: B, amount: bigint, per: bigint): Rate<B> {
  invariant(amount >= 0n, "a rate is not below zero");
  invariant(per > 0n, "a rate is over more than nothing");
  if (amount === 0n) return { basis, amount, per: 1n };
  const { numerator, denominator } = reduce({ numerator: amount, denominator: per });
  return { basis, amount: numerator, per: denominator };
}

/** Makes a rate: `rateOf("product-mass-per-area", "3.57", "lb per 1,000 sq ft")`. Exact. Throws below zero. */
export function rateOf<B extends RateBasis>(basis: B, value: ExactValue, unit: NoInfer<RateUnit<B>>): Rate<B> {
  const size = sizeOfRateUnit(basis, unit);
  const { numerator, denominator } = exactValue(value);
  return rateFromAmounts(basis, numerator * size.amount, denominator * size.per);
}

/** Makes a rate from percent by volume of the finished spray: 0.5 is half a gallon in 100 gal. Throws below zero. */
export function percentByVolume(percent: ExactValue): Rate<"product-volume-per-spray-volume"> {
  const { numerator, denominator } = exactValue(percent);
  return rateFromAmounts("product-volume-per-spray-volume", numerator, denominator * 100n);
}

/** What was put down over an area (or into a spray volume), as a rate. Throws when the area is zero. */
export function rateFrom<B extends RateBasis>(
  basis: B,
  amount: Measure<AmountDimension<B>>,
  per: Measure<PerDimension<B>>,
): Rate<B> {
  requireDimension(amount, rateBases[basis].amount);
  requireDimension(per, rateBases[basis].per);
  const quotient = divideRational(canonicalAmountOf(amount), canonicalAmountOf(per));
  return rateFromAmounts(basis, quotient.numerator, quotient.denominator);
}

/** The rate in a unit of its basis, exactly. The conversions between units of rates are this function. */
export function rateIn<B extends RateBasis>(rate: Rate<B>, unit: NoInfer<RateUnit<B>>): Rational {
  const size = sizeOfRateUnit(rate.basis, unit);
  return { numerator: rate.amount * size.per, denominator: rate.per * size.amount };
}

/** The rate as percent by volume of the finished spray, exactly. */
export function percentByVolumeOf(rate: Rate<"product-volume-per-spray-volume">): Rational {
  return { numerator: rate.amount * 100n, denominator: rate.per };
}

/**
 * What the rate comes to over an area (or in a spray volume). Exact: round it once, by name. Throws for an area where
 * the rate is over a volume, or the other way round.
 */
export function times<B extends RateBasis>(
  rate: Rate<B>,
  over: Measure<NoInfer<PerDimension<B>>>,
): ExactQuantity<AmountDimension<B>> {
  const { amount, per }: { amount: AmountDimension<B>; per: Dimension } = rateBases[rate.basis];
  requireDimension(over, per);
  const { numerator, denominator } = canonicalAmountOf(over);
  return {
    dimension: amount,
    exactAmount: { numerator: numerator * rate.amount, denominator: denominator * rate.per },
  };
}

/** How much area (or spray volume) an amount is enough for at the rate, exactly. Throws when the rate is zero. */
export function coverage<B extends RateBasis>(
  rate: Rate<B>,
  amount: Measure<NoInfer<AmountDimension<B>>>,
): ExactQuantity<PerDimension<B>> {
  const { amount: expected, per }: { amount: Dimension; per: PerDimension<B> } = rateBases[rate.basis];
  requireDimension(amount, expected);
  invariant(rate.amount > 0n, "a rate that covers an area is above zero");
  const { numerator, denominator } = canonicalAmountOf(amount);
  return fromExactAmount(per, { numerator: numerator * rate.per, denominator: denominator * rate.amount });
}

/**
 * So many times the rate: half rate for a pass, a share for spot work, what a rounded amount makes of it. Throws when
 * the factor is below zero.
 */
export function scaleRate<B extends RateBasis>(rate: Rate<B>, factor: Rational): Rate<B> {
  return rateFromAmounts(rate.basis, rate.amount * factor.numerator, rate.per * factor.denominator);
}

/**
 * So many times the rate, counted as something else: the nutrient in a product, the bulk for pure live seed. Throws
 * when the factor is below zero, and for bases of two kinds, which the types refuse already.
 */
export function deriveRate<B extends RateBasis>(basis: B, rate: Rate<SameDimensions<B>>, factor: Rational): Rate<B> {
  const from = rateBases[rate.basis];
  const to = rateBases[basis];
  invariant(from.amount === to.amount && from.per === to.per, `${rate.basis} can be counted as ${basis}`);
  return rateFromAmounts(basis, rate.amount * factor.numerator, rate.per * factor.denominator);
}

/** The bases that measure the same dimensions as this one. */
export type SameDimensions<B extends RateBasis> = {
  [C in RateBasis]: [AmountDimension<C>, PerDimension<C>] extends [AmountDimension<B>, PerDimension<B>] ? C : never;
}[RateBasis];

function requireSameBasis(left: RateBasis, right: RateBasis): void {
  if (left !== right) throw new BrokenInvariant(`both rates have one basis, not ${left} and ${right}`);
}

function ratioOf(rate: Rate<RateBasis>): Rational {
  return { numerator: rate.amount, denominator: rate.per };
}

/** The sum of two rates on the same ground, such as one more application in a season. Throws for rates of two bases. */
export function addRates<B extends RateBasis>(left: Rate<B>, right: Rate<NoInfer<B>>): Rate<B> {
  requireSameBasis(left.basis, right.basis);
  // Most sums begin with nothing, and the other one is in lowest terms already.
  if (left.amount === 0n) return right;
  if (right.amount === 0n) return left;
  const { numerator, denominator } = addRational(ratioOf(left), ratioOf(right));
  return rateFromAmounts(left.basis, numerator, denominator);
}

/**
 * Below zero when left is the lower, zero when they are equal, above zero when left is the higher. Throws for rates of
 * two bases.
 */
export function compareRates<B extends RateBasis>(left: Rate<B>, right: Rate<NoInfer<B>>): -1 | 0 | 1 {
  requireSameBasis(left.basis, right.basis);
  return compareRational(ratioOf(left), ratioOf(right));
}

/** What part left is of right. Throws when right is zero, and for rates of two bases. */
export function ratioOfRates<B extends RateBasis>(left: Rate<B>, right: Rate<NoInfer<B>>): Rational {
  requireSameBasis(left.basis, right.basis);
  return divideRational(ratioOf(left), ratioOf(right));
}

/**
 * The amount of product in a volume of finished spray that gives an area rate at a carrier rate: both over the same
 * ground, so it is the one over the other. Exact. Throws at a carrier rate of zero.
 */
export function concentrationInSpray(
  productRate: Rate<"product-volume-per-area">,
  carrierRate: Rate<"carrier-volume-per-area">,
): Rate<"product-volume-per-spray-volume">;
export function concentrationInSpray(
  productRate: Rate<"product-mass-per-area">,
  carrierRate: Rate<"carrier-volume-per-area">,
): Rate<"product-mass-per-spray-volume">;
export function concentrationInSpray(
  productRate: Rate<"product-volume-per-area"> | Rate<"product-mass-per-area">,
  carrierRate: Rate<"carrier-volume-per-area">,
): Rate<"product-volume-per-spray-volume"> | Rate<"product-mass-per-spray-volume">;
export function concentrationInSpray(
  productRate: Rate<"product-volume-per-area"> | Rate<"product-mass-per-area">,
  carrierRate: Rate<"carrier-volume-per-area">,
): Rate<"product-volume-per-spray-volume"> | Rate<"product-mass-per-spray-volume"> {
  const { numerator, denominator } = multiplyRational(ratioOf(productRate), {
    numerator: carrierRate.per,
    denominator: carrierRate.amount,
  });
  invariant(denominator > 0n, "a carrier rate is above zero");
  return productRate.basis === "product-volume-per-area"
    ? rateFromAmounts("product-volume-per-spray-volume", numerator, denominator)
    : rateFromAmounts("product-mass-per-spray-volume", numerator, denominator);
}
