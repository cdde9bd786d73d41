import { invariant } from "#domain/foundation/invariant";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { type Density, massRateOf } from "#domain/quantities/density";
import { type ExactQuantity, type Measure, multiplyExact } from "#domain/quantities/exact-quantity";
import { parseNumber } from "#domain/quantities/parse-number";
import { type ExactValue, exactValue } from "#domain/quantities/quantity";
import { deriveRate, type Rate, rateFromAmounts } from "#domain/quantities/rate";
import {
  addRational,
  compareRational,
  decimal,
  divideRational,
  multiplyRational,
  type Rational,
  subtractRational,
  toDecimalString,
} from "#domain/quantities/rational";

/** What a label guarantees, counted as the label counts it: phosphate and potash, not phosphorus and potassium. */
export type Nutrient = "N" | "P2O5" | "K2O" | "Fe";

/** A fertilizer's grade in percent of its weight. Iron is guaranteed by some labels only. */
export interface Grade {
  readonly nitrogenPercent: Rational;
  readonly phosphatePercent: Rational;
  readonly potashPercent: Rational;
  readonly ironPercent: Rational | "not-stated";
}

/**
 * How the label states its slow-release nitrogen. Water-insoluble nitrogen ("7% WIN") and other slowly available
 * nitrogen are percent of the product's weight; some labels state the share of the nitrogen instead.
 */
export type NitrogenRelease =
  | { readonly kind: "slow-percent-of-product"; readonly percent: Rational }
  | { readonly kind: "slow-percent-of-nitrogen"; readonly percent: Rational }
  | { readonly kind: "not-stated" };

/** How much of the element is in what labels count, as parts by mass: P in P2O5 and K in K2O. */
export interface OxideFactors {
  readonly phosphorusInPhosphate: Rational;
  readonly potassiumInPotash: Rational;
}

/**
 * P = P2O5 x 0.44 and K = K2O x 0.83. The product uses these: they are the factors of extension tables and soil
 * reports, so that what it prints agrees with what a crew works out by hand. No limit depends on them, because labels
 * and nutrient laws count phosphate and potash. Source: Penn State, "How Much Phosphorus and Potassium are Really in
 * Your Fertilizer?" (2022).
 */
export const EXTENSION_FACTORS: OxideFactors = {
  phosphorusInPhosphate: decimal("0.44"),
  potassiumInPotash: decimal("0.83"),
};

/**
 * The parts by mass, 0.4364 and 0.8302, from the atomic weights P 30.974, K 39.098 and O 15.999 (from memory); the
 * extension factor of phosphorus is 0.8 % above it.
 */
export const MASS_FRACTIONS: OxideFactors = {
  phosphorusInPhosphate: decimal("0.4364"),
  potassiumInPotash: decimal("0.8302"),
};

/** A value for each nutrient that an amount of product brings. Quick and slow add up to nitrogen. */
export interface PerNutrient<Value> {
  readonly nitrogen: Value;
  readonly quickNitrogen: Value | "not-stated";
  readonly slowNitrogen: Value | "not-stated";
  readonly phosphate: Value;
  readonly phosphorus: Value;
  readonly potash: Value;
  readonly potassium: Value;
  readonly iron: Value | "not-stated";
}

const ZERO_PERCENT = decimal("0");
const HUNDRED_PERCENT = decimal("100");

function isPercent(value: Rational): boolean {
  return value.numerator >= 0n && compareRational(value, HUNDRED_PERCENT) <= 0;
}

/**
 * Makes a grade from percents, such as `gradeOf("28", "3", "6")`. Throws when they are below 0 or above 100 together.
 */
export function gradeOf(nitrogen: ExactValue, phosphate: ExactValue, potash: ExactValue, iron?: ExactValue): Grade {
  const grade: Grade = {
    nitrogenPercent: exactValue(nitrogen),
    phosphatePercent: exactValue(phosphate),
    potashPercent: exactValue(potash),
    ironPercent: iron === undefined ? "not-stated" : exactValue(iron),
  };
  invariant(isGrade(grade), "a grade is made of percents that are at most 100 together");
  return grade;
}

function isGrade(grade: Grade): boolean {
  const percents = [grade.nitrogenPercent, grade.phosphatePercent, grade.potashPercent];
  if (grade.ironPercent !== "not-stated") percents.push(grade.ironPercent);
  return percents.every(isPercent) && isPercent(percents.reduce(addRational));
}

const GRADE_ALLOWED = "a grade such as 28-3-6, 0.5-0.5-0.5 or 12-0-0-6Fe";
const GRADE_TEXT = /^([\d.]+)-([\d.]+)-([\d.]+)(?:[- ]([\d.]+) ?%? ?Fe)?$/iu;

/**
 * Reads a grade as it stands on a bag: "28-3-6", "0.5-0.5-0.5", "12-0-0-6Fe". Refused at `field`: what is no grade, and
 * more than 100 percent together.
 */
export function parseGrade(field: string, text: string): Outcome<Grade> {
  const found = text.trim();
  const match = GRADE_TEXT.exec(found.replace(/\s*[-\u2010-\u2013]\s*/gu, "-"));
  if (match === null) {
    return badInput(field, found, GRADE_ALLOWED, `"${found}" is not a grade. Write it as in 28-3-6.`);
  }
  const [, nitrogen = "", phosphate = "", potash = "", iron] = match;
  const nitrogenPercent = parseNumber(field, nitrogen);
  if (!nitrogenPercent.ok) return nitrogenPercent;
  const phosphatePercent = parseNumber(field, phosphate);
  if (!phosphatePercent.ok) return phosphatePercent;
  const potashPercent = parseNumber(field, potash);
  if (!potashPercent.ok) return potashPercent;
  const ironPercent = iron === undefined ? accept("not-stated" as const) : parseNumber(field, iron);
  if (!ironPercent.ok) return ironPercent;
  const grade: Grade = {
    nitrogenPercent: nitrogenPercent.value,
    phosphatePercent: phosphatePercent.value,
    potashPercent: potashPercent.value,
    ironPercent: ironPercent.value,
  };
  if (isGrade(grade)) return accept(grade);
  return badInput(field, found, GRADE_ALLOWED, `"${found}" is more than 100 percent together.`);
}

/** The grade's percent of one nutrient, or the refusal that the label does not state it. */
function percentOf(grade: Grade, nutrient: Nutrient): Outcome<Rational> {
  switch (nutrient) {
    case "N":
      return accept(grade.nitrogenPercent);
    case "P2O5":
      return accept(grade.phosphatePercent);
    case "K2O":
      return accept(grade.potashPercent);
    case "Fe":
      return grade.ironPercent === "not-stated"
        ? missingFact("iron", "the label's percent of iron", "The label's iron is not on file.")
        : accept(grade.ironPercent);
  }
}

/**
 * The slow-release share of the nitrogen, as a part of one: 15-0-15 with 7% WIN has 7/15. Refused at "slow-release
 * nitrogen" when the label's statement is not on file, when there is no nitrogen, and when the slow part is more than
 * the whole. Source: UF/IFAS (Figart, 2021).
 */
export function slowShareOfNitrogen(grade: Grade, release: NitrogenRelease): Outcome<Rational> {
  if (release.kind === "not-stated") {
    return missingFact(
      "slow-release nitrogen",
      "the label's percent of water-insoluble or slowly available nitrogen",
      "The label's slow-release nitrogen is not on file.",
    );
  }
  if (grade.nitrogenPercent.numerator === 0n) {
    return badInput("slow-release nitrogen", "no nitrogen", "a grade with nitrogen", "This product has no nitrogen.");
  }
  const share =
    release.kind === "slow-percent-of-nitrogen"
      ? divideRational(release.percent, HUNDRED_PERCENT)
      : divideRational(release.percent, grade.nitrogenPercent);
  if (share.numerator >= 0n && compareRational(share, { numerator: 1n, denominator: 1n }) <= 0) return accept(share);
  const found = `${toDecimalString(release.percent, 2, "nearest")}%`;
  return badInput(
    "slow-release nitrogen",
    found,
    "at most all of the nitrogen",
    `${found} slow-release nitrogen is more than the product's whole nitrogen.`,
  );
}

/**
 * The product that brings a nutrient at a target rate. Exact: 100 over the percent, times the rate. Refused when the
 * product has none of it (`product`) and when the label's iron is not on file (`iron`). Source: University of
 * Nebraska-Lincoln, Lawn Fertilizer Calculations.
 */
export function productForNutrient(
  nutrient: Nutrient,
  target: Rate<"nutrient-mass-per-area">,
  grade: Grade,
): Outcome<Rate<"product-mass-per-area">> {
  const percent = percentOf(grade, nutrient);
  if (!percent.ok) return percent;
  if (percent.value.numerator === 0n) {
    return badInput("product", `0% ${nutrient}`, `a product with ${nutrient}`, `This product has no ${nutrient}.`);
  }
  return accept(deriveRate("product-mass-per-area", target, divideRational(HUNDRED_PERCENT, percent.value)));
}

interface KnownParts {
  readonly release: NitrogenRelease;
  readonly parts: Outcome<PerNutrient<Rational>>;
}

/** The parts last worked out of a grade: a visit asks for those of its few products again on every lawn. */
const PARTS_OF_GRADE = new WeakMap<Grade, KnownParts>();

/** Each nutrient as a part of the product's weight. */
function partsOf(grade: Grade, release: NitrogenRelease): Outcome<PerNutrient<Rational>> {
  const known = PARTS_OF_GRADE.get(grade);
  if (known?.release === release) return known.parts;
  const parts = workOutParts(grade, release);
  PARTS_OF_GRADE.set(grade, { release, parts });
  return parts;
}

function workOutParts(grade: Grade, release: NitrogenRelease): Outcome<PerNutrient<Rational>> {
  const part = (percent: Rational): Rational => divideRational(percent, HUNDRED_PERCENT);
  const nitrogen = part(grade.nitrogenPercent);
  const phosphate = part(grade.phosphatePercent);
  const potash = part(grade.potashPercent);
  const rest = {
    phosphate,
    phosphorus: multiplyRational(phosphate, EXTENSION_FACTORS.phosphorusInPhosphate),
    potash,
    potassium: multiplyRational(potash, EXTENSION_FACTORS.potassiumInPotash),
    iron: grade.ironPercent === "not-stated" ? ("not-stated" as const) : part(grade.ironPercent),
  };
  if (nitrogen.numerator === 0n) {
    return accept({ nitrogen, quickNitrogen: ZERO_PERCENT, slowNitrogen: ZERO_PERCENT, ...rest });
  }
  if (release.kind === "not-stated") {
    return accept({ nitrogen, quickNitrogen: "not-stated", slowNitrogen: "not-stated", ...rest });
  }
  const share = slowShareOfNitrogen(grade, release);
  if (!share.ok) return share;
  const slowNitrogen = multiplyRational(nitrogen, share.value);
  return accept({ nitrogen, quickNitrogen: subtractRational(nitrogen, slowNitrogen), slowNitrogen, ...rest });
}

function forEachNutrient<Value>(parts: PerNutrient<Rational>, valueOf: (part: Rational) => Value): PerNutrient<Value> {
  const valueIfStated = (part: Rational | "not-stated"): Value | "not-stated" =>
    part === "not-stated" ? part : valueOf(part);
  return {
    nitrogen: valueOf(parts.nitrogen),
    quickNitrogen: valueIfStated(parts.quickNitrogen),
    slowNitrogen: valueIfStated(parts.slowNitrogen),
    phosphate: valueOf(parts.phosphate),
    phosphorus: valueOf(parts.phosphorus),
    potash: valueOf(parts.potash),
    potassium: valueOf(parts.potassium),
    iron: valueIfStated(parts.iron),
  };
}

/** None of a nutrient on an area. */
export const NO_NUTRIENT_RATE: Rate<"nutrient-mass-per-area"> = rateFromAmounts("nutrient-mass-per-area", 0n, 1n);

/**
 * The nutrients that a product rate puts on an area, exactly. A rate by volume needs the product's density and is
 * refused without (`density`), as is more slow nitrogen than nitrogen ("slow-release nitrogen"); nitrogen whose release
 * the label does not state is given as a whole only. Source: UF/IFAS ENH-73 (1995); EXTENSION_FACTORS.
 */
export function nutrientsDelivered(
  productRate: Rate<"product-mass-per-area"> | Rate<"product-volume-per-area">,
  product: { readonly grade: Grade; readonly release: NitrogenRelease; readonly density?: Density },
): Outcome<PerNutrient<Rate<"nutrient-mass-per-area">>> {
  const parts = partsOf(product.grade, product.release);
  if (!parts.ok) return parts;
  const massRate = byMass(productRate, product.density);
  if (!massRate.ok) return massRate;
  return accept(forEachNutrient(parts.value, (part) => deriveRate("nutrient-mass-per-area", massRate.value, part)));
}

function byMass(
  productRate: Rate<"product-mass-per-area"> | Rate<"product-volume-per-area">,
  density: Density | undefined,
): Outcome<Rate<"product-mass-per-area">> {
  if (productRate.basis === "product-mass-per-area") return accept(productRate);
  if (density !== undefined) return accept(massRateOf(productRate, density));
  return missingFact(
    "density",
    "the product's density, from its label or safety data sheet",
    "The product is measured by volume and its nutrients are stated by weight; its density is needed.",
  );
}

/**
 * The nutrients in a weight of product, exactly: a 40 lb bag of 10-6-4 holds 4 lb of nitrogen. Refused at "slow-release
 * nitrogen": a slow part that is more than the whole. Source: NC State Extension, Caring for Your Lawn and the
 * Environment.
 */
export function nutrientsIn(
  productMass: Measure<"mass">,
  product: { readonly grade: Grade; readonly release: NitrogenRelease },
): Outcome<PerNutrient<ExactQuantity<"mass">>> {
  const parts = partsOf(product.grade, product.release);
  if (!parts.ok) return parts;
  return accept(forEachNutrient(parts.value, (part) => multiplyExact(productMass, part)));
}
