import { type ProductRate } from "#domain/label/label-facts";
import { areaTimesRate, conversionLine, figure, inUnit, perThousand, timesIn, unitOf } from "#domain/mixing/ticket-working-words";
import { type Density, densityIn, volumeOf, volumeRateOf } from "#domain/quantities/density";
import { type ExactQuantity, isNothing, type Measure, multiplyExact } from "#domain/quantities/exact-quantity";
import { writeQuantity } from "#domain/quantities/format-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { type Rate, rateIn, times } from "#domain/quantities/rate";
import { divideRational, type Rational, rational } from "#domain/quantities/rational";
import { EXTENSION_FACTORS, type Grade, type NitrogenRelease, type Nutrient, type PerNutrient, slowShareOfNitrogen } from "#domain/turf/nutrients";
import { amountWords, numberWords, stepPercent, stepRate } from "#domain/worksheets/figure-words";

// The arithmetic of fertilizer, line by line, in pounds; ounces only where the answer is in ounces.

type NutrientRate = Rate<"nutrient-mass-per-area">;

interface GradePart {
  readonly name: Nutrient;
  readonly percent: Rational;
}

/** What a grade states, in its order; iron only where the label has it. */
export function partsOfGrade({ nitrogenPercent, phosphatePercent, potashPercent, ironPercent }: Grade): readonly GradePart[] {
  return [
    { name: "N", percent: nitrogenPercent },
    { name: "P2O5", percent: phosphatePercent },
    { name: "K2O", percent: potashPercent },
    ...(ironPercent === "not-stated" ? [] : [{ name: "Fe" as const, percent: ironPercent }]),
  ];
}

/** What each nutrient comes to, named, in the order of the label; what a label does not state is left out. */
function rows<Value>(delivered: PerNutrient<Value>): readonly (readonly [name: string, value: Value])[] {
  const stated = (name: string, value: Value | "not-stated"): readonly (readonly [string, Value])[] => (value === "not-stated" ? [] : [[name, value]]);
  return [
    ["N", delivered.nitrogen],
    ...stated("of it quick-release", delivered.quickNitrogen),
    ...stated("of it slow-release", delivered.slowNitrogen),
    ["P2O5", delivered.phosphate],
    ["K2O", delivered.potash],
    ...stated("Fe", delivered.iron),
  ];
}

/** Each nutrient in pounds on 1,000 sq ft and on the area. */
export function nutrientTable(delivered: PerNutrient<NutrientRate>, area: ExactQuantity<"area">) {
  return {
    caption: "What it brings",
    columns: [{ head: "Nutrient", align: "word" }, { head: "lb per 1,000 sq ft", align: "figure" }, { head: "On the area", align: "figure" }],
    rows: rows(delivered).map(([name, one]) => [name, numberWords(rateIn(one, "lb per 1,000 sq ft")), amountWords(times(one, area))]),
  } as const;
}

/** A mass under a pound in ounces too, as answers say it. */
export function ounceLines(label: string, mass: Measure<"mass">): readonly string[] {
  return unitOf(mass) === "oz wt" && !isNothing(mass) ? [`${label}, in ounces: ${inUnit(mass, "lb")} × 16 oz wt = ${inUnit(mass, "oz wt")}.`] : [];
}

/** What a bag holds of a nutrient. */
export function heldLines(name: Nutrient, percent: Rational, bag: Measure<"mass">): readonly string[] {
  const holds = multiplyExact(bag, divideRational(percent, rational(100n)));
  return [`${name}: ${inUnit(bag, "lb")} × ${figure(percent)}% = ${inUnit(holds, "lb")}.`, ...ounceLines(name, holds)];
}

function gallonWeighs(density: Density): string {
  return `${figure(densityIn(density, "lb per gal"))} lb`;
}

/** A density in a line of arithmetic: "10.65 lb per gal". */
export function densityFigure(density: Density): string {
  return `${gallonWeighs(density)} per gal`;
}

/** A weight of a liquid as its volume, and its rate by weight as one by volume. */
export function liquidLines(rate: Rate<"product-mass-per-area">, total: Measure<"mass">, density: Density): readonly string[] {
  const volume = volumeOf(total, density);
  const isGallons = unitOf(volume) === "gal";
  return [
    `By volume: ${inUnit(total, "lb")} ÷ ${gallonWeighs(density)} × ${isGallons ? "1 gal" : "128 fl oz"} = ${inUnit(volume, isGallons ? "gal" : "fl oz")}.`,
    `By volume on 1,000 sq ft: ${perThousand(rate, "lb")} ÷ ${gallonWeighs(density)} × 128 fl oz = ${perThousand(volumeRateOf(rate, density), "fl oz")}.`,
  ];
}

interface WholeBags {
  readonly bags: bigint;
  readonly leftOver: Quantity<"mass">;
}

/** Whole bags, and what is left of the last. */
export function bagLines(total: Measure<"mass">, bag: Measure<"mass">, { bags, leftOver }: WholeBags): readonly string[] {
  const all = inUnit(multiplyExact(bag, rational(bags)), "lb");
  return [
    `Bags: ${timesIn(total, bag, "lb")}, so ${String(bags)} whole ${bags === 1n ? "bag" : "bags"}.`,
    ...(isNothing(leftOver) ? [] : [`Left over of ${String(bags)}: ${inUnit(bag, "lb")} × ${String(bags)} = ${all}; ${all} − ${inUnit(total, "lb")} = ${inUnit(leftOver, "lb")}.`]),
  ];
}

/** A product's rate as pounds on 1,000 sq ft. */
export function weightLines(rate: ProductRate, massRate: Rate<"product-mass-per-area">, density: Density | undefined): readonly string[] {
  const [said, pounds] = [perThousand(rate), stepRate(massRate, "lb")];
  if (rate.basis === "product-volume-per-area" && density !== undefined) {
    const perGallon = said.endsWith(" gal") ? `× ${gallonWeighs(density)}` : `÷ 128 fl oz × ${gallonWeighs(density)}`;
    return [`By weight: ${said} ${perGallon} = ${pounds}.`];
  }
  return said.endsWith(" oz wt") ? [`In pounds: ${said} ÷ 16 oz wt × 1 lb = ${pounds}.`] : [];
}

interface Delivered {
  readonly grade: Grade;
  readonly release: NitrogenRelease;
  readonly rate: Rate<"product-mass-per-area">;
  readonly delivered: PerNutrient<NutrientRate>;
  readonly area: ExactQuantity<"area">;
}

function areaLines(name: string, brings: NutrientRate, area: ExactQuantity<"area">): readonly string[] {
  return [`${name} on the area: ${areaTimesRate(area, brings, "lb")}.`, ...ounceLines(`${name} on the area`, times(brings, area))];
}

/** What the product brings of each nutrient on 1,000 sq ft and on the area; of what it has none there is no line. */
export function deliveredLines({ grade, release, rate, delivered, area }: Delivered): readonly string[] {
  const brought: Readonly<Record<Nutrient, NutrientRate | "not-stated">> = { N: delivered.nitrogen, P2O5: delivered.phosphate, K2O: delivered.potash, Fe: delivered.iron };
  return partsOfGrade(grade).flatMap(({ name, percent }) => {
    const brings = brought[name];
    if (brings === "not-stated" || brings.amount === 0n) return [];
    return [
      `${name}: ${perThousand(rate, "lb")} × ${figure(percent)}% = ${stepRate(brings, "lb")}.`,
      ...areaLines(name, brings, area),
      ...(name === "N" ? releaseLines(grade, release, delivered, area) : []),
    ];
  });
}

function releaseLines(grade: Grade, release: NitrogenRelease, { nitrogen, quickNitrogen, slowNitrogen }: PerNutrient<NutrientRate>, area: ExactQuantity<"area">): readonly string[] {
  const share = slowShareOfNitrogen(grade, release);
  if (!share.ok || release.kind === "not-stated" || slowNitrogen === "not-stated" || quickNitrogen === "not-stated") return [];
  const percent = stepPercent(share.value);
  return [
    `Slow-release share of the nitrogen: ${figure(release.percent)}% ÷ ${figure(grade.nitrogenPercent)}% = ${percent}.`,
    `Slow-release N: ${perThousand(nitrogen, "lb")} × ${percent} = ${stepRate(slowNitrogen, "lb")}.`,
    ...areaLines("Slow-release N", slowNitrogen, area),
    `Quick-release N: ${perThousand(nitrogen, "lb")} − ${perThousand(slowNitrogen, "lb")} = ${stepRate(quickNitrogen, "lb")}.`,
    ...areaLines("Quick-release N", quickNitrogen, area),
  ];
}

/** Phosphate and potash as the elements. */
export function elementLines({ phosphate, phosphorus, potash, potassium }: PerNutrient<NutrientRate>): readonly string[] {
  const line = (name: string, oxide: NutrientRate, factor: Rational, element: NutrientRate) => (oxide.amount === 0n ? [] : [`${name}: ${perThousand(oxide, "lb")} × ${figure(factor)} = ${stepRate(element, "lb")}.`]);
  return [...line("As P", phosphate, EXTENSION_FACTORS.phosphorusInPhosphate, phosphorus), ...line("As K", potash, EXTENSION_FACTORS.potassiumInPotash, potassium)];
}

/** How far a bag's nitrogen goes; in acres too where the answer is in acres. */
export function treatedLines(nitrogen: Measure<"mass">, target: NutrientRate, treats: Measure<"area">): readonly string[] {
  const isAcres = writeQuantity(treats, "us").unit !== "sq ft";
  return [
    `Area: ${inUnit(nitrogen, "lb")} ÷ ${perThousand(target, "lb")} × 1,000 sq ft = ${inUnit(treats, "sq ft")}.`,
    ...(isAcres ? [`In acres: ${conversionLine(treats, "sq ft", "acre")}.`] : []),
  ];
}
