import { addExact, type ExactQuantity } from "#domain/quantities/exact-quantity";
import { accept, missingFact, type Outcome } from "#domain/foundation/outcome";
import { massOf } from "#domain/quantities/density";
import { type Quantity } from "#domain/quantities/quantity";
import { type Rate, scaleRate } from "#domain/quantities/rate";
import { type Rational, rational } from "#domain/quantities/rational";
import { NO_NUTRIENT_RATE, nutrientsDelivered, nutrientsIn, type PerNutrient } from "#domain/turf/nutrients";
import { type LabelFacts, type ProductRate } from "#domain/label/label-facts";
import { partOfShare } from "#domain/quantities/share";
import { type NutrientRates, type SpotWork } from "#domain/mixing/ticket-question";

/** The nutrients that a lawn gets, as masses. What a label does not state is "not-stated" in the sum too. */
export type NutrientMasses = PerNutrient<ExactQuantity<"mass">>;

const NOTHING = { dimension: "mass", exactAmount: rational(0n) } as const;

/**
 * The nutrients in an amount of product, or undefined where its label names none. A liquid by volume needs the
 * product's density and is refused (`density`) without it; an analysis that nobody read (`analysis`) is refused too.
 */
export function nutrientsInProduct(label: LabelFacts, amount: Quantity<"mass"> | Quantity<"volume">): Outcome<NutrientMasses> | undefined {
  if (label.analysis === "none") return undefined;
  if (label.analysis === "unknown") {
    return missingFact("analysis", "the three numbers of the bag", `The analysis of ${label.productName} is not on file.`);
  }
  if (amount.dimension === "mass") return nutrientsIn(amount, label.analysis);
  if (label.density === "unknown") {
    return missingFact(
      "density",
      "the product's density, from its label or safety data sheet",
      `The density of ${label.productName} is not on file; its nutrients are stated by weight.`,
    );
  }
  return nutrientsIn(massOf(amount, label.density), label.analysis);
}

/**
 * The nutrients that a rate of product puts on the ground: none where its label names none. Refused where nobody has
 * read the `analysis`, and for a liquid without its `density`.
 */
export function nutrientRatesOf({ productName, analysis, density }: Pick<LabelFacts, "productName" | "analysis" | "density">, rate: ProductRate): Outcome<NutrientRates> {
  if (analysis === "none") return accept(NO_NUTRIENT_RATES);
  if (analysis === "unknown") return missingFact("analysis", "the three numbers of the bag", `The analysis of ${productName} is not on file.`);
  const brought = nutrientsDelivered(rate, { ...analysis, ...(density === "unknown" ? {} : { density }) });
  if (brought.ok || density !== "unknown") return brought;
  return missingFact("density", "the product's density, from its label or safety data sheet", `The density of ${productName} is not on file; its nutrients are stated by weight.`);
}

/** No nutrients at all on an area. */
export const NO_NUTRIENT_RATES: NutrientRates = {
  nitrogen: NO_NUTRIENT_RATE,
  quickNitrogen: NO_NUTRIENT_RATE,
  slowNitrogen: NO_NUTRIENT_RATE,
  phosphate: NO_NUTRIENT_RATE,
  phosphorus: NO_NUTRIENT_RATE,
  potash: NO_NUTRIENT_RATE,
  potassium: NO_NUTRIENT_RATE,
  iron: "not-stated",
};

/** A part of what a rate brings, such as what spots bring to a whole lawn. */
export function partOfNutrients(rates: NutrientRates, part: Rational): NutrientRates {
  const scaled = (rate: Rate<"nutrient-mass-per-area">) => scaleRate(rate, part);
  const stated = (rate: Rate<"nutrient-mass-per-area"> | "not-stated") => (rate === "not-stated" ? rate : scaled(rate));
  return {
    nitrogen: scaled(rates.nitrogen),
    quickNitrogen: stated(rates.quickNitrogen),
    slowNitrogen: stated(rates.slowNitrogen),
    phosphate: scaled(rates.phosphate),
    phosphorus: scaled(rates.phosphorus),
    potash: scaled(rates.potash),
    potassium: scaled(rates.potassium),
    iron: stated(rates.iron),
  };
}

/** The sum of what several products bring. */
export function addNutrients(left: NutrientMasses, right: NutrientMasses): NutrientMasses {
  const stated = (one: ExactQuantity<"mass"> | "not-stated", other: ExactQuantity<"mass"> | "not-stated") =>
    one === "not-stated" || other === "not-stated" ? ("not-stated" as const) : addExact(one, other);
  return {
    nitrogen: addExact(left.nitrogen, right.nitrogen),
    quickNitrogen: stated(left.quickNitrogen, right.quickNitrogen),
    slowNitrogen: stated(left.slowNitrogen, right.slowNitrogen),
    phosphate: addExact(left.phosphate, right.phosphate),
    phosphorus: addExact(left.phosphorus, right.phosphorus),
    potash: addExact(left.potash, right.potash),
    potassium: addExact(left.potassium, right.potassium),
    // Most labels name no iron because there is none worth naming: what is stated is what is counted.
    iron: left.iron === "not-stated" ? right.iron : right.iron === "not-stated" ? left.iron : addExact(left.iron, right.iron),
  };
}

/** No nutrients at all, to begin a sum with. */
export const NO_NUTRIENTS: NutrientMasses = {
  nitrogen: NOTHING,
  quickNitrogen: NOTHING,
  slowNitrogen: NOTHING,
  phosphate: NOTHING,
  phosphorus: NOTHING,
  potash: NOTHING,
  potassium: NOTHING,
  iron: "not-stated",
};

/** What spots bring, counted over the whole lawn, as a year's published range and its ledger count. */
export function overWholeLawn(nutrients: Outcome<NutrientRates>, spot: SpotWork | undefined): Outcome<NutrientRates> {
  return spot === undefined || !nutrients.ok ? nutrients : accept(partOfNutrients(nutrients.value, partOfShare(spot.shareBasisPoints)));
}
