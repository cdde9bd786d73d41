import { type Working } from "#domain/foundation/working";
import { type ExactQuantity } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { of } from "#domain/quantities/quantity";
import { rational } from "#domain/quantities/rational";
import { type ProductRate } from "#domain/label/label-facts";
import { highestOf } from "#domain/mixing/granular-mix";
import { fittingTool, inFinished, rateTimes, type SprayedAmount, type SprayTreatment, type TankLoad } from "#domain/mixing/spray-mix";
import { plannedStrength } from "#domain/mixing/stated-rate";
import { markInputs } from "#domain/mixing/ticket-working-granular";
import { groundOfLoad, marksOf, type SprayAsked } from "#domain/mixing/ticket-working-load";
import { ROUNDED_UP_TOO_MUCH, type Rounded, roundingSteps } from "#domain/mixing/ticket-working-rounding";
import { areaTimesRate, conversionLines, figure, inUnit, labelWords, perThousand, unitOf } from "#domain/mixing/ticket-working-words";

/** A working of one product of a spray, by the product's line. */
export interface ProductWorking {
  readonly line: number;
  readonly working: Working;
}

function loadName({ mix }: SprayAsked, { number }: TankLoad): string {
  return mix.loads.length === 1 ? "the load" : `load ${String(number)}`;
}

/** What a rate allows in a load: on its ground, and by the strength that it makes in its volume. */
function ceilings({ mix }: SprayAsked, { finished }: TankLoad, rate: ProductRate, ground: ExactQuantity<"area">) {
  return { onGround: rateTimes(rate, ground), inVolume: inFinished(rate, mix.carrier, finished) };
}

function limitsOf(asked: SprayAsked, load: TankLoad, treatment: SprayTreatment, ground: ExactQuantity<"area">): Pick<Rounded, "byLabel" | "byPlan"> {
  const [label, plan] = [ceilings(asked, load, highestOf(treatment), ground), ceilings(asked, load, treatment.rate, ground)];
  return {
    byLabel: [
      { words: "the label’s highest rate on this ground", most: label.onGround },
      { words: "the strength that the label’s highest rate makes in this load", most: label.inVolume },
    ],
    byPlan: [
      { words: `the planned rate on this ground ${ROUNDED_UP_TOO_MUCH}`, most: plan.onGround },
      { words: `the strength that the plan makes in this load ${ROUNDED_UP_TOO_MUCH}`, most: plan.inVolume },
    ],
  };
}

/** How much goes into a load of a product that is mixed at its strength: so much for each gallon of the load's finished spray. */
function strengthInLoad(asked: SprayAsked, load: TankLoad, treatment: SprayTreatment, inLoad: SprayedAmount): Working {
  const { label, rate, rateText } = treatment;
  const unit = unitOf(inLoad.amount);
  const tool = fittingTool(treatment);
  const wanted = inFinished(rate, asked.mix.carrier, load.finished);
  const [finished, inGallon] = [inUnit(load.finished, "gal"), inUnit(inFinished(rate, asked.mix.carrier, of("gal", 1n)), unit)];
  const ceilingOf = (most: ProductRate, words: string): Rounded["byLabel"] => [{ words, most: inFinished(most, asked.mix.carrier, load.finished) }];
  const ofRate = plannedStrength(treatment) === undefined ? ", in what the sprayer puts out" : "";
  return {
    title: `${label.productName} for ${loadName(asked, load)}`,
    formula: "amount = gallons of finished spray in the load × product in a gallon, to the tool’s nearest mark, never stronger than what the label lets on the ground makes it; what the ground does not take is left",
    inputs: [
      { name: "Finished spray", figure: finished, from: loadName(asked, load) },
      { name: "Strength", figure: `${inGallon} per gal`, from: `planned at ${rateText}${ofRate}` },
      ...markInputs(tool, (mark) => inUnit(mark, unit)),
    ],
    steps: [
      `${finished} ÷ 1 gal × ${inGallon} = ${inUnit(wanted, unit)}`,
      ...roundingSteps({
        ...{ wanted, amount: inLoad.amount, marks: inLoad.marks, tool, unit },
        byLabel: ceilingOf(highestOf(treatment), "the strength that the label’s highest rate makes in this load"),
        byPlan: ceilingOf(rate, `the strength that the plan makes in this load ${ROUNDED_UP_TOO_MUCH}`),
      }),
    ],
    result: formatQuantity(inLoad.amount, "us"),
    source: `${labelWords(treatment, unit)}; the mark: common practice`,
  };
}

/** How much of a product goes into a load, to the tool's mark: its rate on the ground that the load covers, or its strength in the load where what the ground does not take is left. */
export function productInLoadWorking(asked: SprayAsked, load: TankLoad, treatment: SprayTreatment): readonly ProductWorking[] {
  const { line, label, rate, rateText } = treatment;
  const inLoad = load.products.find((product) => product.line === line);
  if (inLoad === undefined) return [];
  if (plannedStrength(treatment) !== undefined || asked.mix.rest !== undefined) return [{ line, working: strengthInLoad(asked, load, treatment, inLoad) }];
  const unit = unitOf(inLoad.amount);
  const ground = groundOfLoad(asked, load);
  const tool = fittingTool(treatment);
  const [own, all] = [marksOf(load.finished, asked), marksOf(asked.mix.finished, asked)];
  const isWhole = own === all;
  const working: Working = {
    title: `${label.productName} for ${loadName(asked, load)}`,
    formula: "amount = ground that the load covers ÷ 1,000 sq ft × rate, to the tool’s nearest mark, never above the label’s highest rate nor stronger than it",
    inputs: [
      { name: "All treated area", figure: inUnit(asked.area, "sq ft"), from: "of all lawns of this spray" },
      ...(isWhole ? [] : [{ name: "The load", figure: `${figure(rational(own))} of ${figure(rational(all))} marks` }]),
      { name: "Rate", figure: `${perThousand(rate, unit)} per 1,000 sq ft`, from: `planned at ${rateText}` },
      ...markInputs(tool, (mark) => inUnit(mark, unit)),
    ],
    steps: [
      ...(isWhole ? [] : [`${inUnit(asked.area, "sq ft")} × ${figure(rational(own))} ÷ ${figure(rational(all))} = ${inUnit(ground, "sq ft")}`]),
      areaTimesRate(ground, rate, unit),
      ...roundingSteps({ wanted: rateTimes(rate, ground), amount: inLoad.amount, marks: inLoad.marks, tool, unit, ...limitsOf(asked, load, treatment, ground) }),
    ],
    result: formatQuantity(inLoad.amount, "us"),
    source: `${labelWords(treatment, unit)}; product from rate and area: Gerken, Oklahoma State University-Oklahoma City (2013); the mark: common practice`,
  };
  return [{ line, working }];
}

/** How much water a load takes: the finished spray less what is poured in; what is weighed is not taken off. */
export function waterWorking(asked: SprayAsked, load: TankLoad): Working {
  const unit = unitOf(load.water);
  const finished = inUnit(load.finished, unit);
  const liquids = load.products.flatMap(({ line, amount }) => (amount.dimension === "volume" ? [{ line, amount, own: unit === "gal" ? unitOf(amount) : unit }] : []));
  const nameOf = (line: number) => asked.mix.products.find((product) => product.line === line)?.productName ?? "";
  const takenOff = [finished, ...liquids.map(({ amount }) => inUnit(amount, unit))].join(" − ");
  const whole = liquids.length === 0 ? `${finished} of water, since no product is a liquid.` : `${takenOff} = ${inUnit(load.water, unit)}`;
  return {
    title: `Water for ${loadName(asked, load)}`,
    formula: "water = finished spray − what the liquid products take up; what is weighed is not taken off",
    inputs: [
      { name: "Finished spray", figure: finished, from: loadName(asked, load) },
      ...liquids.map(({ line, amount, own }) => ({ name: nameOf(line), figure: inUnit(amount, own), from: "measured out" })),
    ],
    steps:
      load.water.amount === 0n
        ? ["The liquid products take up all of it: there is no room for water."]
        : [...liquids.flatMap(({ amount, own }) => conversionLines(amount, own, unit)), whole],
    result: formatQuantity(load.water, "us"),
    source: "common practice",
  };
}
