import { type Working, type WorkingInput } from "#domain/foundation/working";
import { type Density, massOf } from "#domain/quantities/density";
import { type ExactQuantity, type Measure } from "#domain/quantities/exact-quantity";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { of, type Quantity } from "#domain/quantities/quantity";
import { type Rational } from "#domain/quantities/rational";
import { type LabelFacts } from "#domain/label/label-facts";
import { nutrientsInProduct, type NutrientMasses, per1000SqFt } from "#domain/mixing/delivered";
import { amountsOn, type DeliveredLawn, type MixTicket } from "#domain/mixing/mix-ticket";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { type TicketQuestion } from "#domain/mixing/ticket-question";
import { groundsOfLawn } from "#domain/mixing/treated-area";
import { figure, inUnit, sumLine, THOUSAND_SQ_FT } from "#domain/mixing/ticket-working-words";

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
  /** "0.8 lb", "none", "not stated". */
  readonly words: string;
  readonly working: Working;
}

/** The largest area of a lawn over the mixes: what its nutrients are spread over. */
function spreadOver({ mixes }: MixTicket, zoneId: string): Quantity<"area"> {
  return groundsOfLawn(mixes, zoneId).reduce((most, area) => (area.amount > most.amount ? area : most), of("sq ft", 0n));
}

/** True for a lawn that gets any nutrient that is counted. */
export function isFed({ nutrients }: DeliveredLawn): boolean {
  return SHOWN_NUTRIENTS.some((nutrient) => {
    const mass = nutrients[nutrient];
    return mass !== "not-stated" && mass.exactAmount.numerator > 0n;
  });
}

function wordsOf(mass: ExactQuantity<"mass"> | "not-stated", area: Quantity<"area">): string {
  if (mass === "not-stated") return "not stated";
  if (area.amount === 0n || mass.exactAmount.numerator === 0n) return "none";
  return formatQuantityIn(per1000SqFt(mass, area, THOUSAND_SQ_FT), "lb", 2);
}

interface Brought {
  readonly label: LabelFacts;
  readonly amount: ProductAmount;
  readonly nutrients: NutrientMasses;
}

/** Every nutrient of every lawn that gets any, from what the ticket says goes down and what it says is delivered. */
export function deliveredWorkings(question: TicketQuestion, ticket: MixTicket): readonly NutrientWorking[] {
  return ticket.delivered.filter(isFed).flatMap((lawn) => {
    const put = amountsOn(lawn.zoneId, ticket.mixes).flatMap(({ line, amount }) => question.treatments.filter((one) => one.line === line).map(({ label }) => ({ label, amount, nutrients: nutrientsInProduct(label, amount) })));
    const brought = put.flatMap(({ label, amount, nutrients }): readonly Brought[] => (nutrients?.ok === true ? [{ label, amount, nutrients: nutrients.value }] : []));
    const uncounted = put.flatMap(({ nutrients }) => (nutrients === undefined || nutrients.ok ? [] : [`${nutrients.refusal.sentence} It is not counted.`]));
    const area = spreadOver(ticket, lawn.zoneId);
    return SHOWN_NUTRIENTS.map((nutrient) => nutrientWorking({ lawn, nutrient, brought, uncounted, area }));
  });
}

interface Asked {
  readonly lawn: DeliveredLawn;
  readonly nutrient: ShownNutrient;
  readonly brought: readonly Brought[];
  readonly uncounted: readonly string[];
  readonly area: Quantity<"area">;
}

function nutrientWorking({ lawn, nutrient, brought, uncounted, area }: Asked): NutrientWorking {
  const total = lawn.nutrients[nutrient];
  const words = wordsOf(total, area);
  // What one label does not state has no sum, so that there is nothing to follow in the others.
  const counted = total === "not-stated" ? [] : brought.filter(({ nutrients }) => nutrients[nutrient] !== "not-stated");
  const unstated = brought.filter(({ nutrients }) => nutrients[nutrient] === "not-stated");
  const parts = counted.flatMap(({ nutrients }) => [nutrients[nutrient]].flatMap((mass) => (mass === "not-stated" ? [] : [mass])));
  const working: Working = {
    title: `${NUTRIENT_WORDS[nutrient]} on ${lawn.name}`,
    formula: FORMULAS[nutrient],
    inputs: [...counted.flatMap(({ label, amount }) => productInputs(label, amount, nutrient)), { name: "Treated area", figure: inUnit(area, "sq ft"), from: `of ${lawn.name}, the largest of its products` }],
    steps: [
      ...uncounted,
      ...unstated.map(({ label }) => `The label of ${label.productName} does not state it.`),
      ...counted.flatMap((one) => productSteps(one, nutrient)),
      ...(total === "not-stated" || area.amount === 0n ? [] : sumAndSpread(parts, total, area)),
    ],
    result: words === "none" || words === "not stated" ? words : `${words} per 1,000 sq ft`,
    source: sourceOf(counted, nutrient),
  };
  return { zoneId: lawn.zoneId, nutrient, words, working };
}

const FORMULAS: Readonly<Record<ShownNutrient, string>> = {
  nitrogen: "nitrogen = weight of product × its percent of nitrogen; over the treated area, for each 1,000 sq ft",
  quickNitrogen: "quick nitrogen = nitrogen − slow nitrogen",
  slowNitrogen: "slow nitrogen = what the label states as slow, of the product’s weight or of its nitrogen",
  phosphate: "P2O5 = weight of product × its percent of P2O5, as labels count it",
  potash: "K2O = weight of product × its percent of K2O, as labels count it",
  iron: "iron = weight of product × its percent of iron; products whose label names none count as none",
};

function sumAndSpread(parts: readonly ExactQuantity<"mass">[], total: ExactQuantity<"mass">, area: Quantity<"area">): readonly string[] {
  const perThousand = per1000SqFt(total, area, THOUSAND_SQ_FT);
  return [
    ...(parts.length > 1 ? [sumLine(parts, total, "lb")] : []),
    `${inUnit(total, "lb")} ÷ ${inUnit(area, "sq ft")} × 1,000 sq ft = ${inUnit(perThousand, "lb")}`,
  ];
}

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
