import { type Finding, takeCare } from "#domain/foundation/finding";
import { invariant } from "#domain/foundation/invariant";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { type WorkingInput } from "#domain/foundation/working";
import { areaTimesRate, figure, inUnit, perThousand } from "#domain/mixing/ticket-working-words";
import { type Density, massRateOf, volumeOf } from "#domain/quantities/density";
import { type ExactQuantity, settle } from "#domain/quantities/exact-quantity";
import { writeQuantity } from "#domain/quantities/format-quantity";
import { withoutUnit } from "#domain/quantities/number-with-unit";
import { compareRates, coverage, type Rate, rateOf, times } from "#domain/quantities/rate";
import { divideRational, rational } from "#domain/quantities/rational";
import { wholeBagsFor } from "#domain/quantities/rounding";
import { EXTENSION_FACTORS, type Grade, type NitrogenRelease, type Nutrient, nutrientsDelivered, nutrientsIn, parseGrade, productForNutrient } from "#domain/turf/nutrients";
import { acreLines, amountBothWays, amountWords, areaInput, rateBothWays, rateWords, stepRate, withTyped } from "#domain/worksheets/figure-words";
import { bagLines, deliveredLines, densityFigure, elementLines, heldLines, liquidLines, nutrientTable, ounceLines, partsOfGrade, treatedLines, weightLines } from "#domain/worksheets/nutrient-lines";
import { ifTyped, readAmountField, readChoice, readDensityField, readNumberField, readRateField, readTogether, refuseEmpty, refuseOne } from "#domain/worksheets/read-fields";
import { type Typed, type WorksheetAnswer, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";

/** The nutrients that a target may be set for, as the page offers them. */
const TARGET_NUTRIENTS = ["N", "P2O5", "K2O", "Fe"] as const satisfies readonly Nutrient[];

/** The fields of a product for a nutrient. */
export type ProductForNutrientField = "grade" | "nutrient" | "target" | "area" | "bag" | "density" | "slow";
/** The fields of the nutrients in a rate. */
export type NutrientsOfProductField = "grade" | "rate" | "area" | "density" | "slow";
/** The fields of the nutrients in a bag. */
export type NutrientsInBagField = "grade" | "bag" | "target";

const NEBRASKA = "University of Nebraska-Lincoln, Lawn Fertilizer Calculations, http://byf.unl.edu/LawnFertCalc";
const UNL_LIQUID = "University of Nebraska CropWatch 2016, https://cropwatch.unl.edu/2016/setting-sprayer-flow-rate-non-water-solutions";
const ENH_73 = "McCarty and Cisar, UF/IFAS ENH-73 (1995), https://docslib.org/doc/2582559/";
const NC_STATE = "NC State Extension, Caring for Your Lawn and the Environment, https://content.ces.ncsu.edu/caring-for-your-lawn-and-the-environment";
const PENN_STATE = "Penn State, How Much Phosphorus and Potassium are Really in Your Fertilizer? (2022)";

export const PRODUCT_FOR_NUTRIENT_EXAMPLE: WorksheetExample<ProductForNutrientField> = {
  typed: { grade: "28-3-6", nutrient: "N", target: "1 lb per 1,000 sq ft", area: "6,000 sq ft", bag: "", density: "", slow: "" },
  from: NEBRASKA,
};
export const NUTRIENTS_OF_PRODUCT_EXAMPLE: WorksheetExample<NutrientsOfProductField> = {
  typed: { grade: "16-4-8", rate: "6.25 lb per 1,000 sq ft", area: "1,000 sq ft", density: "", slow: "" },
  from: ENH_73,
};
export const NUTRIENTS_IN_BAG_EXAMPLE: WorksheetExample<NutrientsInBagField> = {
  typed: { grade: "10-6-4", bag: "40 lb", target: "" },
  from: NC_STATE,
};

const NUTRIENT_RATE = { bases: ["nutrient-mass-per-area"], unitWhenNone: "lb per 1,000 sq ft" } as const;

function readGrade(text: string): Outcome<Grade> {
  return refuseEmpty({ field: "grade", what: "the grade on the bag", such: "28-3-6" }, text) ?? parseGrade("grade", text);
}

function readSlow(text: string): Outcome<NitrogenRelease> {
  const read = ifTyped(text, (typed) =>
    readNumberField({ field: "slow", what: "the slow-release nitrogen in percent of the product", such: "7" }, typed, { lowest: "0", highest: "100", unit: "%" }),
  );
  if (!read.ok) return read;
  return accept(read.value === undefined ? { kind: "not-stated" } : { kind: "slow-percent-of-product", percent: read.value });
}

function readArea(text: string) {
  return readAmountField({ field: "area", what: "the area", such: "6,000 sq ft" }, text, { dimension: "area", unitWhenNone: "sq ft" });
}

/** A bag is counted whole, so it must weigh something that can be kept: a canonical unit of mass. */
function readBag(text: string): Outcome<ExactQuantity<"mass">> {
  const bag = readAmountField({ field: "bag", what: "what a bag weighs", such: "50 lb" }, text, { dimension: "mass", unitWhenNone: "lb" });
  if (!bag.ok || settle(bag.value, "nearest").amount > 0n) return bag;
  return badInput("bag", text.trim(), "more than nothing", `"${text.trim()}" is less than any scale shows. Give what a bag weighs, such as 50 lb.`);
}

function readTarget(text: string) {
  return readRateField({ field: "target", what: "the rate of the nutrient", such: "1 lb per 1,000 sq ft" }, text, NUTRIENT_RATE);
}

function gradeInputs(grade: Grade, typed: Typed<"grade" | "slow">): readonly WorkingInput[] {
  const parts = partsOfGrade(grade).map(({ name, percent }) => `${name} ${figure(percent)}%`).join(", ");
  return [
    { name: "Grade (N-P2O5-K2O, percent by weight)", figure: `${typed.grade.trim()}: ${parts}`, from: "the label" },
    ...(typed.slow.trim() === "" ? [] : [{ name: "Slow-release nitrogen, percent of the product", figure: `${withoutUnit(typed.slow, "%")}%`, from: "the label" }]),
  ];
}

function densityInputs(density: Density | undefined, typed: string): readonly WorkingInput[] {
  return density === undefined ? [] : [{ name: "Density", figure: withTyped(densityFigure(density), typed) }];
}

/** More nitrogen at once than Purdue ever recommends: 1 lb per 1,000 sq ft. */
export function muchNitrogen(nitrogen: Rate<"nutrient-mass-per-area">): readonly Finding[] {
  const most = rateOf("nutrient-mass-per-area", "1", "lb per 1,000 sq ft");
  if (compareRates(nitrogen, most) <= 0) return [];
  return [
    takeCare({
      rule: "nitrogen-in-one-application",
      source: "handbook",
      what: "This is more nitrogen in one application than is recommended.",
      figure: `It brings ${rateWords(nitrogen)}; never more than ${rateWords(most)} at a time.`,
      toDo: "Split it, and look up what the state allows: many allow less.",
      citation: "Purdue, https://turf.purdue.edu/fertilizer-recommendations/",
      about: [],
    }),
  ];
}

/**
 * The product for a nutrient rate: rate over the grade's part, times area, in whole bags where a bag's weight is given,
 * in gallons where the density is. Refused by field: what is missing or can't be read, a grade without that nutrient,
 * more slow nitrogen than nitrogen (`slow`).
 */
export function productForNutrientWorksheet(typed: Typed<ProductForNutrientField>): WorksheetOutcome {
  const read = readTogether({
    grade: readGrade(typed.grade),
    nutrient: readChoice("nutrient", typed.nutrient, TARGET_NUTRIENTS),
    target: readTarget(typed.target),
    area: readArea(typed.area),
    bag: ifTyped(typed.bag, readBag),
    density: ifTyped(typed.density, (text) => readDensityField("density", text, "product")),
    release: readSlow(typed.slow),
  });
  if (!read.ok) return read;
  const { grade, nutrient, target, area, bag, density, release } = read.value;
  const rate = productForNutrient(nutrient satisfies Nutrient, target, grade);
  if (!rate.ok) return refuseOne({ ...rate.refusal, field: "grade" });
  const delivered = nutrientsDelivered(rate.value, { grade, release });
  if (!delivered.ok) return refuseOne({ ...delivered.refusal, field: "slow" });
  const percent = partsOfGrade(grade).find(({ name }) => name === nutrient)?.percent;
  invariant(percent !== undefined, "a grade without the nutrient was refused");
  const total = times(rate.value, area);
  const liquid = density === undefined ? undefined : volumeOf(total, density);
  const bags = bag === undefined ? undefined : wholeBagsFor(total, settle(bag, "nearest"));
  const each = divideRational(rational(100n), percent);
  const answers: WorksheetAnswer[] = [{ ...writeQuantity(total, "us"), of: `product on ${amountWords(area)}` }];
  if (liquid !== undefined) answers.push({ ...writeQuantity(liquid, "us"), of: "the same by volume" });
  if (bags !== undefined) answers.push({ figure: String(bags.bags), unit: bags.bags === 1n ? "bag" : "bags", of: "whole bags to take along" });
  return accept({
    answers,
    working: {
      title: `Product for ${rateWords(target)} of ${nutrient}`,
      formula: `Product per 1,000 sq ft = rate of ${nutrient} ÷ (% ${nutrient} ÷ 100). Product = that × area ÷ 1,000.`,
      inputs: [...gradeInputs(grade, typed), { name: `Wanted rate of ${nutrient}`, figure: withTyped(stepRate(target, "lb"), typed.target) }, { name: "Area", figure: areaInput(area, typed.area) }, ...(bag === undefined ? [] : [{ name: "A bag", figure: withTyped(inUnit(bag, "lb"), typed.bag) }]), ...densityInputs(density, typed.density)],
      steps: [
        `Product for one pound of ${nutrient}: 100 ÷ ${figure(percent)} = ${figure(each)} lb.`,
        `Product rate: ${figure(each)} lb × ${perThousand(target, "lb")} = ${stepRate(rate.value, "lb")}.`,
        ...acreLines(area, typed.area),
        `Product for the area: ${areaTimesRate(area, rate.value, "lb")}.`,
        ...ounceLines("Product for the area", total),
        ...(density === undefined ? [] : liquidLines(rate.value, total, density)),
        ...(bag === undefined || bags === undefined ? [] : bagLines(total, bag, bags)),
        ...deliveredLines({ grade, release, rate: rate.value, delivered: delivered.value, area }),
      ],
      result: `${amountBothWays(total)} of product, at ${rateBothWays(rate.value)}.`,
      source: density === undefined ? NEBRASKA : `${NEBRASKA}; ${UNL_LIQUID}`,
    },
    findings: muchNitrogen(delivered.value.nitrogen),
    tables: [nutrientTable(delivered.value, area)],
  });
}

/**
 * What a product rate brings of each nutrient, in pounds per 1,000 sq ft and on the area. Refused by field: what is
 * missing or can't be read, a rate by volume without the `density`, more slow nitrogen than nitrogen (`slow`).
 */
export function nutrientsOfProductWorksheet(typed: Typed<NutrientsOfProductField>): WorksheetOutcome {
  const read = readTogether({
    grade: readGrade(typed.grade),
    rate: readRateField({ field: "rate", what: "the rate of the product", such: "3.5 lb per 1,000 sq ft" }, typed.rate, { bases: ["product-mass-per-area", "product-volume-per-area"] }),
    area: readArea(typed.area),
    density: ifTyped(typed.density, (text) => readDensityField("density", text, "product")),
    release: readSlow(typed.slow),
  });
  if (!read.ok) return read;
  const { grade, area, density, release } = read.value;
  // The reader answers with one rate of one of the two bases.
  const rate = read.value.rate as Rate<"product-mass-per-area"> | Rate<"product-volume-per-area">;
  const delivered = nutrientsDelivered(rate, { grade, release, ...(density === undefined ? {} : { density }) });
  if (!delivered.ok) return refuseOne({ ...delivered.refusal, field: delivered.refusal.field === "density" ? "density" : "slow" });
  const { nitrogen, phosphate, potash, iron } = delivered.value;
  const massRate = rate.basis === "product-mass-per-area" ? rate : density === undefined ? undefined : massRateOf(rate, density);
  invariant(massRate !== undefined, "a rate by volume was refused without its density");
  return accept({
    answers: [
      { ...writeQuantity(times(nitrogen, area), "us"), of: `N on ${amountWords(area)}` },
      { ...writeQuantity(times(phosphate, area), "us"), of: "P2O5" },
      { ...writeQuantity(times(potash, area), "us"), of: "K2O" },
      ...(iron === "not-stated" ? [] : [{ ...writeQuantity(times(iron, area), "us"), of: "Fe" }]),
    ],
    working: {
      title: "Nutrients in a rate of product",
      formula: `Nutrient per 1,000 sq ft = product per 1,000 sq ft × % of the nutrient ÷ 100. A liquid's rate by volume × its density is its rate by weight. As elements: P = P2O5 × ${figure(EXTENSION_FACTORS.phosphorusInPhosphate)} and K = K2O × ${figure(EXTENSION_FACTORS.potassiumInPotash)}.`,
      inputs: [...gradeInputs(grade, typed), { name: "Product rate", figure: withTyped(stepRate(rate), typed.rate) }, { name: "Area", figure: areaInput(area, typed.area) }, ...densityInputs(density, typed.density)],
      steps: [
        ...weightLines(rate, massRate, density),
        ...acreLines(area, typed.area),
        ...deliveredLines({ grade, release, rate: massRate, delivered: delivered.value, area }),
        ...elementLines(delivered.value),
      ],
      result: `${rateBothWays(nitrogen)} of N; ${rateWords(phosphate)} of P2O5; ${rateWords(potash)} of K2O${iron === "not-stated" ? "" : `; ${rateWords(iron)} of Fe`}.`,
      source: `${ENH_73}; ${PENN_STATE}`,
    },
    findings: muchNitrogen(nitrogen),
    tables: [nutrientTable(delivered.value, area)],
  });
}

/**
 * What a bag holds of each nutrient, and the area for which it is enough at a nitrogen rate where one is given. Refused
 * by field: what is missing or can't be read.
 */
export function nutrientsInBagWorksheet(typed: Typed<NutrientsInBagField>): WorksheetOutcome {
  const read = readTogether({ grade: readGrade(typed.grade), bag: readBag(typed.bag), target: ifTyped(typed.target, readTarget) });
  if (!read.ok) return read;
  const { grade, bag, target } = read.value;
  const held = nutrientsIn(bag, { grade, release: { kind: "not-stated" } });
  if (!held.ok) return refuseOne(held.refusal);
  const { nitrogen, phosphate, potash, iron } = held.value;
  const treats = target === undefined || grade.nitrogenPercent.numerator === 0n ? undefined : coverage(target, nitrogen);
  const answers: WorksheetAnswer[] = [
    { ...writeQuantity(nitrogen, "us"), of: "N in a bag" },
    { ...writeQuantity(phosphate, "us"), of: "P2O5 (phosphate)" },
    { ...writeQuantity(potash, "us"), of: "K2O (potash)" },
    ...(iron === "not-stated" ? [] : [{ ...writeQuantity(iron, "us"), of: "Fe (iron)" }]),
  ];
  if (treats !== undefined && target !== undefined) answers.push({ ...writeQuantity(treats, "us"), of: `is what a bag treats at ${rateWords(target)} of N` });
  return accept({
    answers,
    working: {
      title: "Nutrients in a bag",
      formula: "Pounds of a nutrient = pounds in the bag × % of the nutrient ÷ 100.",
      inputs: [...gradeInputs(grade, { grade: typed.grade, slow: "" }), { name: "A bag", figure: withTyped(inUnit(bag, "lb"), typed.bag) }, ...(target === undefined ? [] : [{ name: "Rate of N", figure: withTyped(stepRate(target, "lb"), typed.target) }])],
      steps: [
        ...partsOfGrade(grade).flatMap(({ name, percent }) => heldLines(name, percent, bag)),
        ...(treats === undefined || target === undefined ? [] : treatedLines(nitrogen, target, treats)),
      ],
      result: `${amountBothWays(nitrogen)} of N, ${amountBothWays(phosphate)} of P2O5, ${amountBothWays(potash)} of K2O${iron === "not-stated" ? "" : `, ${amountBothWays(iron)} of Fe`}.`,
      source: NC_STATE,
    },
    findings: target === undefined ? [] : muchNitrogen(target),
    tables: [],
  });
}
