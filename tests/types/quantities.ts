/**
 * What must not compile. Each line below an expectation is a mistake that the types catch; the type check fails when
 * one of them starts to compile. Nothing here is run.
 */
import { exactly, type ExactQuantity } from "#domain/quantities/exact-quantity";
import { massOf, densityOf } from "#domain/quantities/density";
import { add, compare, fromAmount, inUnit, of, type Quantity, subtract, sum } from "#domain/quantities/quantity";
import { addRates, rateOf, times } from "#domain/quantities/rate";
import { type Rational } from "#domain/quantities/rational";
import { roundToGraduation } from "#domain/quantities/rounding";
import { difference, type SignedQuantity } from "#domain/quantities/signed-quantity";

const mass = of("lb", 1n);
const volume = of("gal", 1n);
const area = of("acre", 1n);
const productRate = rateOf("product-mass-per-area", 1n, "lb per acre");
const nutrientRate = rateOf("nutrient-mass-per-area", 1n, "lb per acre");

export const mistakes = [
  // @ts-expect-error a volume is not added to a mass
  () => add(mass, volume),
  // @ts-expect-error a volume is not taken from a mass
  () => subtract(mass, volume),
  // @ts-expect-error a mass is not compared with a volume
  () => compare(mass, volume),
  // @ts-expect-error a list of volumes has no sum of mass
  () => sum("mass", [volume]),
  // @ts-expect-error a mass is not said in gallons
  () => inUnit(mass, "gal"),
  // @ts-expect-error ounces alone are no unit
  () => of("oz", 1n),
  // @ts-expect-error a floating point number is no exact value
  () => of("lb", 13.5),
  // @ts-expect-error stored amounts are whole numbers
  () => fromAmount("mass", 5),
  // @ts-expect-error a rate by weight has no fluid ounces
  () => rateOf("product-mass-per-area", 1n, "fl oz per acre"),
  // @ts-expect-error a rate per area is not multiplied by a volume
  () => times(productRate, volume),
  // @ts-expect-error a product's rate is not added to a nutrient's
  () => addRates(productRate, nutrientRate),
  // @ts-expect-error only a volume becomes a mass by its density
  () => massOf(mass, densityOf("1", "kg per L")),
  // @ts-expect-error a scale does not measure a volume
  () => roundToGraduation(volume, exactly("lb", "0.25"), { mode: "nearest" }),
  // @ts-expect-error a difference is no quantity
  (): Quantity<"mass"> => difference(mass, mass),
  // @ts-expect-error a quantity is no difference
  (): SignedQuantity<"mass"> => mass,
  // @ts-expect-error what is not settled is no quantity
  (): Quantity<"mass"> => times(productRate, area),
  // @ts-expect-error an exact quantity is no fraction without a unit
  (): Rational => times(productRate, area),
  // @ts-expect-error a quantity is no exact quantity
  (): ExactQuantity<"mass"> => mass,
];
