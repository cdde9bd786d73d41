import { percentInWords } from "#domain/equipment/repeats";
import { type Finding, takeCare } from "#domain/foundation/finding";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type WorkingInput } from "#domain/foundation/working";
import { type Density, volumeOf, volumeRateOf } from "#domain/quantities/density";
import { type ExactQuantity, isNothing, measureInUnit, ratioExact, settle } from "#domain/quantities/exact-quantity";
import { writeQuantity } from "#domain/quantities/format-quantity";
import { compareRates, coverage, type Rate, rateIn, rateOf, times } from "#domain/quantities/rate";
import { divideRational, rational, type Rational } from "#domain/quantities/rational";
import { wholeBagsFor } from "#domain/quantities/rounding";
import { EXTENSION_FACTORS, type Grade, type NitrogenRelease, type Nutrient, nutrientsDelivered, nutrientsIn, parseGrade, type PerNutrient, productForNutrient, slowShareOfNitrogen } from "#domain/turf/nutrients";
import { amountBothWays, amountWords, numberWords, rateBothWays, rateWords } from "#domain/worksheets/figure-words";
import { ifTyped, readAmountField, readChoice, readDensityField, readNumberField, readRateField, readTogether, refuseEmpty, refuseOne } from "#domain/worksheets/read-fields";
import { type Typed, type WorksheetAnswer, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";

/** The nutrients that a target may be set for, as the page offers them. */
const TARGET_NUTRIENTS = ["N", "P2O5", "K2O"] as const;

export type ProductForNutrientField = "grade" | "nutrient" | "target" | "area" | "bag" | "density" | "slow";
export type NutrientsOfProductField = "grade" | "rate" | "area" | "density" | "slow";
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

function readBag(text: string) {
  return readAmountField({ field: "bag", what: "what a bag weighs", such: "50 lb" }, text, { dimension: "mass", unitWhenNone: "lb" });
}

function readTarget(text: string) {
  return readRateField({ field: "target", what: "the rate of the nutrient", such: "1 lb per 1,000 sq ft" }, text, NUTRIENT_RATE);
}

function percentOfGrade(grade: Grade, nutrient: (typeof TARGET_NUTRIENTS)[number]): Rational {
  const percents: Readonly<Record<(typeof TARGET_NUTRIENTS)[number], Rational>> = { N: grade.nitrogenPercent, P2O5: grade.phosphatePercent, K2O: grade.potashPercent };
  return percents[nutrient];
}

function gradeInputs(text: string, slow: string): readonly WorkingInput[] {
  return [
    { name: "Grade (N-P2O5-K2O, percent by weight)", figure: text.trim(), from: "the label" },
    ...(slow.trim() === "" ? [] : [{ name: "Slow-release nitrogen, percent of the product", figure: `${slow.trim().replace(/\s*%$/u, "")}%`, from: "the label" }]),
  ];
}

/** More nitrogen at once than Purdue ever recommends. */
function muchNitrogen(nitrogen: Rate<"nutrient-mass-per-area">): readonly Finding[] {
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

/** "1 lb N, 0.25 lb P2O5 and so on": each nutrient of a rate or an amount as an answer line or a step. */
function rows<Value>(delivered: PerNutrient<Value>): readonly (readonly [name: string, value: Value])[] {
  const stated = (name: string, value: Value | "not-stated"): readonly (readonly [string, Value])[] => (value === "not-stated" ? [] : [[name, value]]);
  return [
    ["N", delivered.nitrogen],
    ...stated("of it quick-release", delivered.quickNitrogen),
    ...stated("of it slow-release", delivered.slowNitrogen),
    ["P2O5", delivered.phosphate],
    ["K2O", delivered.potash],
  ];
}

function nutrientTable(rate: PerNutrient<Rate<"nutrient-mass-per-area">>, area: ExactQuantity<"area">) {
  return {
    caption: "What it brings",
    columns: [{ head: "Nutrient", align: "word" }, { head: "lb per 1,000 sq ft", align: "figure" }, { head: "On the area", align: "figure" }],
    rows: rows(rate).map(([name, one]) => [name, numberWords(rateIn(one, "lb per 1,000 sq ft")), amountWords(times(one, area))]),
  } as const;
}

function slowStep(grade: Grade, release: NitrogenRelease): readonly string[] {
  const share = slowShareOfNitrogen(grade, release);
  if (!share.ok || release.kind === "not-stated") return [];
  return [`Slow-release share of the nitrogen: ${numberWords(release.percent)} ÷ ${numberWords(grade.nitrogenPercent)} = ${percentInWords(share.value)}.`];
}

/**
 * The product for a nutrient rate: rate over the grade's part, times area, in whole bags where a bag's weight is given,
 * in gallons where the density is. Refused by field: what is missing or can't be read, a grade without that nutrient.
 */
export function productForNutrientWorksheet(typed: Typed<ProductForNutrientField>): WorksheetOutcome {
  const read = readTogether({
    grade: readGrade(typed.grade),
    nutrient: readChoice("nutrient", typed.nutrient, TARGET_NUTRIENTS),
    target: readTarget(typed.target),
    area: readArea(typed.area),
    bag: ifTyped(typed.bag, readBag),
    density: ifTyped(typed.density, (text) => readDensityField("density", text)),
    release: readSlow(typed.slow),
  });
  if (!read.ok) return read;
  const { grade, nutrient, target, area, bag, density, release } = read.value;
  const rate = productForNutrient(nutrient satisfies Nutrient, target, grade);
  if (!rate.ok) return refuseOne({ ...rate.refusal, field: "grade" });
  const delivered = nutrientsDelivered(rate.value, { grade, release });
  if (!delivered.ok) return refuseOne({ ...delivered.refusal, field: "slow" });
  const percent = percentOfGrade(grade, nutrient);
  const total = times(rate.value, area);
  const liquid = density === undefined ? undefined : liquidSteps(rate.value, total, density);
  const bags = bag === undefined ? undefined : wholeBagsFor(total, settle(bag, "nearest"));
  const bagSteps =
    bag === undefined || bags === undefined
      ? []
      : [`Bags: ${amountWords(total)} ÷ ${amountWords(bag)} = ${numberWords(ratioExact(total, bag))}, so ${String(bags.bags)} whole ${bags.bags === 1n ? "bag" : "bags"}${isNothing(bags.leftOver) ? "" : `; ${amountWords(bags.leftOver)} is left over`}.`];
  const each = divideRational(rational(100n), percent);
  const answers: WorksheetAnswer[] = [{ ...writeQuantity(total, "us"), of: `product on ${amountWords(area)}` }];
  if (liquid !== undefined) answers.push({ ...writeQuantity(liquid.volume, "us"), of: "the same by volume" });
  if (bags !== undefined) answers.push({ figure: String(bags.bags), unit: bags.bags === 1n ? "bag" : "bags", of: "whole bags to take along" });
  return accept({
    answers,
    working: {
      title: `Product for ${rateWords(target)} of ${nutrient}`,
      formula: `Product per 1,000 sq ft = rate of ${nutrient} ÷ (% ${nutrient} ÷ 100). Product = that × area ÷ 1,000.`,
      inputs: [...gradeInputs(typed.grade, typed.slow), { name: `Wanted rate of ${nutrient}`, figure: rateWords(target) }, { name: "Area", figure: amountWords(area) }, ...(bag === undefined ? [] : [{ name: "A bag", figure: amountWords(bag) }]), ...(density === undefined ? [] : [{ name: "Density", figure: typed.density.trim() }])],
      steps: [
        `Product for one pound of ${nutrient}: 100 ÷ ${numberWords(percent)} = ${numberWords(each)} lb.`,
        `Product rate: ${numberWords(each)} × ${rateWords(target)} = ${rateWords(rate.value)}.`,
        `Product for the area: ${rateWords(rate.value)} × ${numberWords(measureInUnit(area, "sq ft"))} ÷ 1,000 = ${amountWords(total)}.`,
        ...(liquid?.steps ?? []),
        ...bagSteps,
        ...slowStep(grade, release),
      ],
      result: `${amountBothWays(total)} of product, at ${rateBothWays(rate.value)}.`,
      source: density === undefined ? NEBRASKA : `${NEBRASKA}; ${UNL_LIQUID}`,
    },
    findings: muchNitrogen(delivered.value.nitrogen),
    tables: [nutrientTable(delivered.value, area)],
  });
}

function liquidSteps(rate: Rate<"product-mass-per-area">, total: ExactQuantity<"mass">, density: Density) {
  const volume = volumeOf(total, density);
  return { volume, steps: [`By volume: ${amountWords(total)} ÷ the density = ${amountWords(volume)}, which is ${rateWords(volumeRateOf(rate, density))}.`] };
}

/**
 * What a product rate brings of each nutrient, in pounds per 1,000 sq ft and on the area. Refused by field: what is
 * missing or can't be read, and a rate by volume without the density.
 */
export function nutrientsOfProductWorksheet(typed: Typed<NutrientsOfProductField>): WorksheetOutcome {
  const read = readTogether({
    grade: readGrade(typed.grade),
    rate: readRateField({ field: "rate", what: "the rate of the product", such: "3.5 lb per 1,000 sq ft" }, typed.rate, { bases: ["product-mass-per-area", "product-volume-per-area"] }),
    area: readArea(typed.area),
    density: ifTyped(typed.density, (text) => readDensityField("density", text)),
    release: readSlow(typed.slow),
  });
  if (!read.ok) return read;
  const { grade, area, density, release } = read.value;
  // The reader answers with one rate of one of the two bases.
  const rate = read.value.rate as Rate<"product-mass-per-area"> | Rate<"product-volume-per-area">;
  const delivered = nutrientsDelivered(rate, { grade, release, ...(density === undefined ? {} : { density }) });
  if (!delivered.ok) return refuseOne({ ...delivered.refusal, field: delivered.refusal.field === "density" ? "density" : "slow" });
  const { nitrogen, phosphate, potash, phosphorus, potassium } = delivered.value;
  const step = (name: string, percent: Rational, brings: Rate<"nutrient-mass-per-area">) => `${name}: ${rateWords(rate)} × ${numberWords(percent)}%${density === undefined || rate.basis === "product-mass-per-area" ? "" : " × the density"} = ${rateWords(brings)}.`;
  return accept({
    answers: [
      { ...writeQuantity(times(nitrogen, area), "us"), of: `N on ${amountWords(area)}` },
      { ...writeQuantity(times(phosphate, area), "us"), of: "P2O5" },
      { ...writeQuantity(times(potash, area), "us"), of: "K2O" },
    ],
    working: {
      title: "Nutrients in a rate of product",
      formula: "Nutrient per 1,000 sq ft = product per 1,000 sq ft × % of the nutrient ÷ 100. A liquid's rate by volume × its density is its rate by weight.",
      inputs: [...gradeInputs(typed.grade, typed.slow), { name: "Product rate", figure: rateWords(rate) }, { name: "Area", figure: amountWords(area) }, ...(density === undefined ? [] : [{ name: "Density", figure: typed.density.trim() }])],
      steps: [
        step("N", grade.nitrogenPercent, nitrogen),
        step("P2O5", grade.phosphatePercent, phosphate),
        step("K2O", grade.potashPercent, potash),
        ...slowStep(grade, release),
        `As elements: P = P2O5 × ${numberWords(EXTENSION_FACTORS.phosphorusInPhosphate)} = ${rateWords(phosphorus)}; K = K2O × ${numberWords(EXTENSION_FACTORS.potassiumInPotash)} = ${rateWords(potassium)}.`,
      ],
      result: `${rateBothWays(nitrogen)} of N; ${rateWords(phosphate)} of P2O5; ${rateWords(potash)} of K2O.`,
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
  const { nitrogen, phosphate, potash } = held.value;
  const treats = target === undefined || grade.nitrogenPercent.numerator === 0n ? undefined : coverage(target, nitrogen);
  const step = (name: string, percent: Rational, holds: ExactQuantity<"mass">) => `${name}: ${amountWords(bag)} × ${numberWords(percent)} ÷ 100 = ${amountWords(holds)}.`;
  const answers: WorksheetAnswer[] = [
    { ...writeQuantity(nitrogen, "us"), of: "N in a bag" },
    { ...writeQuantity(phosphate, "us"), of: "P2O5 (phosphate)" },
    { ...writeQuantity(potash, "us"), of: "K2O (potash)" },
  ];
  if (treats !== undefined && target !== undefined) answers.push({ ...writeQuantity(treats, "us"), of: `is what a bag treats at ${rateWords(target)} of N` });
  return accept({
    answers,
    working: {
      title: "Nutrients in a bag",
      formula: "Pounds of a nutrient = pounds in the bag × % of the nutrient ÷ 100.",
      inputs: [...gradeInputs(typed.grade, ""), { name: "A bag", figure: amountWords(bag) }, ...(target === undefined ? [] : [{ name: "Rate of N", figure: rateWords(target) }])],
      steps: [
        step("N", grade.nitrogenPercent, nitrogen),
        step("P2O5", grade.phosphatePercent, phosphate),
        step("K2O", grade.potashPercent, potash),
        ...(treats === undefined || target === undefined ? [] : [`Area: ${amountWords(nitrogen)} ÷ ${rateWords(target)} = ${amountWords(treats)}.`]),
      ],
      result: `${amountBothWays(nitrogen)} of N, ${amountBothWays(phosphate)} of P2O5, ${amountBothWays(potash)} of K2O.`,
      source: NC_STATE,
    },
    findings: target === undefined ? [] : muchNitrogen(target),
    tables: [],
  });
}
