import { type Working, type WorkingInput } from "#domain/foundation/working";
import { type Density, massOf } from "#domain/quantities/density";
import { type ExactQuantity, type Measure, measureInUnit } from "#domain/quantities/exact-quantity";
import { sensibleDecimals } from "#domain/quantities/format-number";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { of } from "#domain/quantities/quantity";
import { type Rational } from "#domain/quantities/rational";
import { type LabelFacts } from "#domain/label/label-facts";
import { nutrientsInProduct, type NutrientMasses } from "#domain/mixing/delivered";
import { amountsOn, type DeliveredLawn, type MixTicket } from "#domain/mixing/mix-ticket";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { type TicketQuestion } from "#domain/mixing/ticket-question";
import { type BroughtByLine, groundInputs, groundLines, groundsOf } from "#domain/mixing/ticket-working-grounds";
import { figure, inUnit, THOUSAND_SQ_FT } from "#domain/mixing/ticket-working-words";

/** The nutrients that a page shows, in its order. */
const SHOWN_NUTRIENTS = ["nitrogen", "quickNitrogen", "slowNitrogen", "phosphate", "potash", "iron"] as const;
export type ShownNutrient = (typeof SHOWN_NUTRIENTS)[number];

const NUTRIENT_WORDS: Readonly<Record<ShownNutrient, string>> = {
  nitrogen: "Nitrogen",
  quickNitrogen: "Quick nitrogen",
  slowNitrogen: "Slow nitrogen",
  phosphate: "P2O5",
  potash: "K2O",
  iron: "Iron",
};

/** What one lawn gets of one nutrient, as the page shows it, and how that comes about. */
export interface NutrientWorking {
  readonly zoneId: string;
  readonly nutrient: ShownNutrient;
  /** "0.808 lb", "none", "not stated". */
  readonly words: string;
  /** What the words say, exactly; nothing where no label names any. */
  readonly perThousandSqFt: ExactQuantity<"mass"> | "not-stated";
  readonly working: Working;
}

/** True for a lawn that gets any nutrient that is counted. */
export function isFed({ nutrients }: DeliveredLawn): boolean {
  return SHOWN_NUTRIENTS.some((nutrient) => {
    const mass = nutrients[nutrient];
    return mass !== "not-stated" && mass.exactAmount.numerator > 0n;
  });
}

/** What a lawn gets of a nutrient, on screen and on paper: "0.808 lb", "0.00859 lb"; three figures however little it is, as iron is. */
export function nutrientWords(perThousand: ExactQuantity<"mass"> | "not-stated"): string {
  if (perThousand === "not-stated") return "not stated";
  return perThousand.exactAmount.numerator === 0n ? "none" : formatQuantityIn(perThousand, "lb", sensibleDecimals(measureInUnit(perThousand, "lb")));
}

interface Brought {
  readonly line: number;
  readonly label: LabelFacts;
  readonly amount: ProductAmount;
  readonly nutrients: NutrientMasses;
}

/**
 * Every nutrient of every lawn that gets any, each product's over the ground that it goes on (of spot work its spots, as the
 * law's most in an application counts it), from what the ticket says goes down and what it says is delivered.
 * Ground that only products without the nutrient cover takes nothing off it.
 */
export function deliveredWorkings(question: TicketQuestion, ticket: MixTicket): readonly NutrientWorking[] {
  return ticket.delivered.filter(isFed).flatMap((lawn) => {
    const put = amountsOn(lawn.zoneId, ticket.mixes).flatMap(({ line, amount }) => question.treatments.filter((one) => one.line === line).map(({ label }) => ({ line, label, amount, nutrients: nutrientsInProduct(label, amount) })));
    const brought = put.flatMap(({ line, label, amount, nutrients }): readonly Brought[] => (nutrients?.ok === true ? [{ line, label, amount, nutrients: nutrients.value }] : []));
    const uncounted = put.flatMap(({ nutrients }) => (nutrients === undefined || nutrients.ok ? [] : [`${nutrients.refusal.sentence} It is not counted.`]));
    return SHOWN_NUTRIENTS.map((nutrient) => nutrientWorking({ lawn, nutrient, brought, uncounted, mixes: ticket.mixes }));
  });
}

interface Asked {
  readonly lawn: DeliveredLawn;
  readonly nutrient: ShownNutrient;
  readonly brought: readonly Brought[];
  readonly uncounted: readonly string[];
  readonly mixes: MixTicket["mixes"];
}

function nutrientWorking({ lawn, nutrient, brought, uncounted, mixes }: Asked): NutrientWorking {
  const isStated = lawn.nutrients[nutrient] !== "not-stated";
  // What one label does not state has no sum, so that there is nothing to follow in the others.
  const counted = !isStated ? [] : brought.filter(({ nutrients }) => nutrients[nutrient] !== "not-stated");
  const unstated = brought.filter(({ nutrients }) => nutrients[nutrient] === "not-stated");
  const grounds = groundsOf(counted.flatMap((one) => massesOf(one, nutrient)), mixes, lawn.zoneId);
  const { lines, total } = groundLines(grounds, THOUSAND_SQ_FT);
  const perThousandSqFt = isStated ? total : "not-stated";
  const words = nutrientWords(perThousandSqFt);
  const working: Working = {
    title: `${NUTRIENT_WORDS[nutrient]} on ${lawn.name}`,
    formula: FORMULAS[nutrient],
    inputs: [...counted.flatMap(({ label, amount }) => productInputs(label, amount, nutrient)), ...groundInputs(grounds, lawn.name)],
    steps: [
      ...uncounted,
      ...unstated.map(({ label }) => `The label of ${label.productName} does not state it.`),
      ...counted.flatMap((one) => productSteps(one, nutrient)),
      ...lines,
    ],
    result: words === "none" || words === "not stated" ? words : `${words} per 1,000 sq ft`,
    source: sourceOf(counted, nutrient),
  };
  return { zoneId: lawn.zoneId, nutrient, words, perThousandSqFt, working };
}

/** What a product brings of a nutrient, where it brings any. */
function massesOf({ line, label, nutrients }: Brought, nutrient: ShownNutrient): readonly BroughtByLine[] {
  const mass = nutrients[nutrient];
  return mass === "not-stated" || mass.exactAmount.numerator === 0n ? [] : [{ line, name: label.productName, mass }];
}

const FORMULAS: Readonly<Record<ShownNutrient, string>> = {
  nitrogen: "nitrogen = weight of product × its percent of nitrogen; over the treated area, for each 1,000 sq ft",
  quickNitrogen: "quick nitrogen = nitrogen − slow nitrogen",
  slowNitrogen: "slow nitrogen = what the label states as slow, of the product’s weight or of its nitrogen",
  phosphate: "P2O5 = weight of product × its percent of P2O5, as labels count it",
  potash: "K2O = weight of product × its percent of K2O, as labels count it",
  iron: "iron = weight of product × its percent of iron; products whose label names none count as none",
};

/** A percentage as it is written in a line of arithmetic. */
export function percentWords(percent: Rational): string {
  return `${figure(percent)}%`;
}

/** An amount by weight: as it is, or a volume by its density, as the line that says so. */
export function weightLine(amount: ProductAmount, density: Density | "unknown"): { readonly mass: Measure<"mass">; readonly lines: readonly string[] } | undefined {
  if (amount.dimension === "mass") return { mass: amount, lines: [] };
  if (density === "unknown") return undefined;
  const mass = massOf(amount, density);
  return { mass, lines: [`${inUnit(amount, "fl oz")} ÷ 128 fl oz × ${poundsPerGallon(density)} = ${inUnit(mass, "lb")}`] };
}

function poundsPerGallon(density: Density): string {
  return inUnit(massOf(of("gal", 1n), density), "lb");
}

/** What a product starts from: its amount, and where the way leads over it its density. */
export function amountInputs({ productName, density }: LabelFacts, amount: ProductAmount, takesDensity: boolean): readonly WorkingInput[] {
  return [
    { name: productName, figure: inUnit(amount, amount.dimension === "mass" ? "lb" : "fl oz"), from: "as it goes down" },
    ...(takesDensity && density !== "unknown" ? [{ name: `A gallon of ${productName}`, figure: poundsPerGallon(density), from: `the density on the label of ${productName}` }] : []),
  ];
}

function percentOf({ analysis }: LabelFacts, nutrient: ShownNutrient): Rational | undefined {
  if (analysis === "none" || analysis === "unknown") return undefined;
  const { grade, release } = analysis;
  switch (nutrient) {
    case "nitrogen":
      return grade.nitrogenPercent;
    case "phosphate":
      return grade.phosphatePercent;
    case "potash":
      return grade.potashPercent;
    case "iron":
      return grade.ironPercent === "not-stated" ? undefined : grade.ironPercent;
    case "quickNitrogen":
    case "slowNitrogen":
      return release.kind === "not-stated" ? undefined : release.percent;
  }
}

function productInputs(label: LabelFacts, amount: ProductAmount, nutrient: ShownNutrient): readonly WorkingInput[] {
  const percent = percentOf(label, nutrient);
  const from = `the label of ${label.productName}`;
  const isSplit = nutrient === "quickNitrogen" || nutrient === "slowNitrogen";
  const nitrogen = isSplit ? percentOf(label, "nitrogen") : undefined;
  const slowOf = label.analysis !== "none" && label.analysis !== "unknown" && label.analysis.release.kind === "slow-percent-of-nitrogen" ? "of its nitrogen" : "of its weight";
  return [
    ...amountInputs(label, amount, amount.dimension === "volume"),
    ...(nitrogen === undefined ? [] : [{ name: `Nitrogen in ${label.productName}`, figure: percentWords(nitrogen), from }]),
    ...(percent === undefined ? [] : [{ name: `${isSplit ? "Slow nitrogen" : NUTRIENT_WORDS[nutrient]} in ${label.productName}`, figure: percentWords(percent), from: isSplit ? `${slowOf}, ${from}` : from }]),
  ];
}

function productSteps({ label, amount, nutrients }: Brought, nutrient: ShownNutrient): readonly string[] {
  const weight = weightLine(amount, label.density);
  const { analysis } = label;
  if (weight === undefined || analysis === "none" || analysis === "unknown") return [];
  const partLine = (of: Measure<"mass">, percent: Rational | undefined, part: ExactQuantity<"mass"> | "not-stated") =>
    percent === undefined || part === "not-stated" ? [] : [`${inUnit(of, "lb")} × ${percentWords(percent)} = ${inUnit(part, "lb")}`];
  if (nutrient !== "quickNitrogen" && nutrient !== "slowNitrogen") return [...weight.lines, ...partLine(weight.mass, percentOf(label, nutrient), nutrients[nutrient])];
  const { nitrogen, quickNitrogen, slowNitrogen } = nutrients;
  const isOfNitrogen = analysis.release.kind === "slow-percent-of-nitrogen";
  const isNeeded = isOfNitrogen || nutrient === "quickNitrogen";
  return [
    ...weight.lines,
    ...(isNeeded ? partLine(weight.mass, analysis.grade.nitrogenPercent, nitrogen) : []),
    ...(nitrogen.exactAmount.numerator === 0n ? [] : partLine(isOfNitrogen ? nitrogen : weight.mass, percentOf(label, "slowNitrogen"), slowNitrogen)),
    ...(nutrient === "slowNitrogen" || slowNitrogen === "not-stated" || quickNitrogen === "not-stated" ? [] : [`${inUnit(nitrogen, "lb")} − ${inUnit(slowNitrogen, "lb")} = ${inUnit(quickNitrogen, "lb")}`]),
  ];
}

function sourceOf(counted: readonly Brought[], nutrient: ShownNutrient): string {
  const labels = counted.map(({ label }) => `the label of ${label.productName}`);
  const byWeight = "percent of the bag’s weight: NC State Extension, “Caring for Your Lawn and the Environment”";
  const byVolume = counted.some(({ amount }) => amount.dimension === "volume") ? ["weight of a liquid by its density: University of Nebraska-Lincoln CropWatch (2016)"] : [];
  const spread = nutrient === "quickNitrogen" || nutrient === "slowNitrogen" ? ["quick is what is not slow: common practice"] : [];
  return [...new Set(labels), byWeight, ...byVolume, ...spread].join("; ");
}
