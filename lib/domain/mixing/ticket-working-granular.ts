import { type Working, type WorkingInput } from "#domain/foundation/working";
import { type Measure, multiplyExact } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { type Quantity } from "#domain/quantities/quantity";
import { scaleRate, times } from "#domain/quantities/rate";
import { rational } from "#domain/quantities/rational";
import { type Container, amountInContainers, containersOf } from "#domain/stock/container-words";
import { ceilingOf, type GranularLawn, type GranularMix } from "#domain/mixing/granular-mix";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { isSpread, type SpreaderSetting, type TicketQuestion, type TicketSpreader, type TicketTool, type TicketTreatment } from "#domain/mixing/ticket-question";
import { placeOf, treatedAreaWorking } from "#domain/mixing/ticket-working-area";
import { ROUNDED_UP_TOO_MUCH, roundingSteps } from "#domain/mixing/ticket-working-rounding";
import { timeWorking } from "#domain/mixing/ticket-working-time";
import { areaTimesRate, inUnit, labelWords, perThousand, sumLines, THOUSAND_SQ_FT, timesIn, unitOf } from "#domain/mixing/ticket-working-words";

/** What a bag of the product holds, as the stock has it. */
export interface BagOfProduct {
  readonly container: Container;
  readonly size: Quantity<"mass">;
}

/** The workings of what one lawn gets of a spread product. */
export interface GranularLawnWorkings {
  readonly zoneId: string;
  readonly treated: Working;
  readonly amount: Working;
  readonly perPass: Working;
  /** None on a lawn where nothing goes down. */
  readonly rate: Working | undefined;
}

/** The workings of every amount of one spread product. */
export interface GranularWorkings {
  readonly lawns: readonly GranularLawnWorkings[];
  readonly total: Working;
  readonly bags: Working | undefined;
  readonly hopper: Working | undefined;
  readonly setting: Working | undefined;
  /** None for spot work. */
  readonly time: Working | undefined;
}

type SpreadByWeight = TicketTreatment & { readonly gear: TicketSpreader; readonly rate: Extract<TicketTreatment["rate"], { basis: "product-mass-per-area" }> };

/** "Filled once", "Filled 3 times at least": what the ticket says of the hopper. */
export function hopperWords(fills: bigint): string {
  return fills === 1n ? "Filled once" : `Filled ${String(fills)} times at least`;
}

/** The amount in the bags that are opened first: "out of 1 bag of 50 lb", "2 bags of 50 lb and 13 lb". */
export function bagWords(total: Quantity<"mass">, { container, size }: BagOfProduct): string {
  return total.amount < size.amount ? `out of ${containersOf(1n, container, size)}` : amountInContainers(total.amount, container, size);
}

/**
 * How each amount of a spread product comes about, from the ticket's own figures: nothing is rounded here that the
 * ticket did not round. Undefined where the question has no such treatment by weight.
 */
export function granularWorkings(mix: GranularMix, question: TicketQuestion, ticket: MixTicket, bag?: BagOfProduct): GranularWorkings | undefined {
  const treatment = question.treatments.find((one): one is SpreadByWeight => one.line === mix.line && isSpread(one) && one.rate.basis === "product-mass-per-area");
  if (treatment === undefined) return undefined;
  return {
    lawns: mix.lawns.map((lawn) => ({
      zoneId: lawn.zoneId,
      treated: treatedAreaWorking(lawn, [mix.productName], question, ticket.findings),
      amount: amountWorking(mix, lawn, treatment),
      perPass: perPassWorking(mix, lawn),
      rate: rateWorking(mix, lawn),
    })),
    total: totalWorking(mix),
    bags: bag === undefined || bag.size.amount === 0n ? undefined : bagsWorking(mix, bag),
    hopper: treatment.gear.capacity.amount === 0n ? undefined : hopperWorking(mix, treatment.gear),
    setting: settingWorking(mix, treatment),
    time: timeWorking({ lawns: mix.lawns, gear: treatment.gear, passes: passesOf(mix), settings: question.settings }),
  };
}

function scaleOf({ tool }: TicketTreatment): TicketTool<"mass"> | undefined {
  return tool !== "none" && tool.mark.dimension === "mass" ? (tool as TicketTool<"mass">) : undefined;
}

/** The tool's marks as a figure to start from; none where no tool measures it. */
export function markInputs(tool: TicketTool | undefined, mark: (measure: Measure<"mass" | "volume">) => string): readonly WorkingInput[] {
  return tool === undefined ? [] : [{ name: "One mark", figure: mark(tool.mark), from: tool.name }];
}

function amountWorking(mix: GranularMix, lawn: GranularLawn, treatment: SpreadByWeight): Working {
  const { productName } = mix;
  const { rate, use, rateText } = treatment;
  const unit = unitOf(lawn.amount);
  const tool = scaleOf(treatment);
  const wanted = times(rate, lawn.treatedArea);
  const byLabel = [{ words: "the label’s highest rate on this ground", most: times(ceilingOf(rate, use.rates), lawn.treatedArea) }] as const;
  const byPlan = [{ words: `the planned rate on this ground ${ROUNDED_UP_TOO_MUCH}`, most: wanted }] as const;
  return {
    title: `${productName} for ${placeOf(lawn)}`,
    formula: "amount = treated area ÷ 1,000 sq ft × rate, to the scale’s nearest mark, never above the label’s highest rate",
    inputs: [
      { name: "Treated area", figure: inUnit(lawn.treatedArea, "sq ft"), from: `of ${placeOf(lawn)}` },
      { name: "Rate", figure: `${perThousand(rate, unit)} per 1,000 sq ft`, from: `planned at ${rateText}` },
      ...markInputs(tool, (mark) => inUnit(mark, unit)),
    ],
    steps: [
      areaTimesRate(lawn.treatedArea, rate, unit),
      ...roundingSteps({ wanted, amount: lawn.amount, marks: lawn.marks, tool, unit, byLabel, byPlan }),
    ],
    result: formatQuantity(lawn.amount, "us"),
    source: `${labelWords(treatment, unit)}; product from rate and area: University of Nebraska-Lincoln, “Lawn Fertilizer Calculations”; the mark: common practice`,
  };
}

const PASSES_SOURCE = "half the rate in each of two crosswise passes: UMass Extension, “Rotary Spreader Calibration Procedures”";

/** In how many passes a product is spread. */
export function passesOf({ passes }: GranularMix): 1 | 2 {
  return passes === "two-at-half-rate-crosswise" ? 2 : 1;
}

function perPassWorking(mix: GranularMix, lawn: GranularLawn): Working {
  const unit = unitOf(lawn.perPass);
  const passes = passesOf(mix);
  return {
    title: `${mix.productName} for each pass on ${placeOf(lawn)}`,
    formula: "each pass = amount ÷ passes",
    inputs: [
      { name: "Amount", figure: inUnit(lawn.amount, unit), from: `for ${placeOf(lawn)}` },
      { name: "Passes", figure: String(passes), from: "the company’s setting" },
    ],
    steps: [`${inUnit(lawn.amount, unit)} ÷ ${String(passes)} = ${inUnit(lawn.perPass, unit)}`],
    result: formatQuantity(lawn.perPass, "us"),
    source: passes === 2 ? PASSES_SOURCE : "one pass with overlapping edges: common practice",
  };
}

function rateWorking({ productName }: GranularMix, lawn: GranularLawn): Working | undefined {
  if (lawn.rate === null) return undefined;
  const became = times(lawn.rate, THOUSAND_SQ_FT);
  const unit = unitOf(became);
  return {
    title: `What the rate of ${productName} becomes on ${placeOf(lawn)}`,
    formula: "rate = amount ÷ treated area × 1,000 sq ft",
    inputs: [
      { name: "Amount", figure: inUnit(lawn.amount, unit), from: "rounded, as it is weighed out" },
      { name: "Treated area", figure: inUnit(lawn.treatedArea, "sq ft"), from: `of ${placeOf(lawn)}` },
    ],
    steps: [`${inUnit(lawn.amount, unit)} ÷ ${inUnit(lawn.treatedArea, "sq ft")} × 1,000 sq ft = ${inUnit(became, unit)}`],
    result: formatRate(lawn.rate, "us"),
    source: "common practice",
  };
}

function totalWorking({ productName, lawns, total }: GranularMix): Working {
  return {
    title: `${productName} in all`,
    formula: "in all = what the lawns get, added up",
    inputs: lawns.map((lawn) => ({ name: placeOf(lawn), figure: inUnit(lawn.amount, unitOf(lawn.amount)), from: "weighed out" })),
    steps: sumLines(lawns.map(({ amount }) => amount), total),
    result: formatQuantity(total, "us"),
    source: "common practice",
  };
}

function bagsWorking({ productName, total }: GranularMix, bag: BagOfProduct): Working {
  const whole = total.amount / bag.size.amount;
  const inBags: Quantity<"mass"> = { dimension: "mass", amount: whole * bag.size.amount };
  const rest: Quantity<"mass"> = { dimension: "mass", amount: total.amount - inBags.amount };
  const isPart = whole > 0n && rest.amount > 0n;
  return {
    title: `${productName} in bags`,
    formula: "whole bags = in all ÷ what one holds, without the part; the rest comes out of the next",
    inputs: [
      { name: "In all", figure: inUnit(total, "lb") },
      { name: `One ${bag.container}`, figure: inUnit(bag.size, "lb"), from: "the lot that is opened first" },
    ],
    steps: [
      `${timesIn(total, bag.size, "lb")}, which is ${String(whole)} whole`,
      ...(isPart ? [`${String(whole)} × ${inUnit(bag.size, "lb")} = ${inUnit(inBags, "lb")}`, `${inUnit(total, "lb")} − ${inUnit(inBags, "lb")} = ${inUnit(rest, "lb")}`] : []),
    ],
    result: bagWords(total, bag),
    source: "common practice",
  };
}

function hopperWorking({ productName, total, hopperFills, gearName }: GranularMix, { capacity }: TicketSpreader): Working {
  return {
    title: `Hopper of ${gearName} for ${productName}`,
    formula: "fills = in all ÷ what the hopper holds, up to the next whole number",
    inputs: [
      { name: "In all", figure: inUnit(total, "lb") },
      { name: "Hopper", figure: inUnit(capacity, "lb"), from: gearName },
    ],
    steps: [`${timesIn(total, capacity, "lb")}, up to ${String(hopperFills)}`],
    result: hopperWords(hopperFills),
    source: "common practice",
  };
}

const SETTING_WORDS: Readonly<Record<NonNullable<SpreaderSetting["basis"]>, string>> = {
  calibration: "the setting is the one at which a calibration came nearest to that",
  "between-tests": "the setting lies on the straight line between the two tested ones around that",
  nominal: "the setting is the one that the bag states, which nobody has tested",
};

function settingWorking(mix: GranularMix, { rate, rateText }: SpreadByWeight): Working | undefined {
  const { setting } = mix;
  if (setting === "not-calibrated") return undefined;
  const passes = passesOf(mix);
  const perPass = scaleRate(rate, rational(1n, BigInt(passes)));
  const found = times(setting.rate, THOUSAND_SQ_FT);
  const unit = unitOf(found);
  const together = multiplyExact(found, rational(BigInt(passes)));
  return {
    title: `Setting of ${mix.gearName} for ${mix.productName}`,
    formula: `a pass should put down rate ÷ passes; ${SETTING_WORDS[setting.basis ?? "calibration"]}`,
    inputs: [
      { name: "Rate", figure: `${perThousand(rate, unit)} per 1,000 sq ft`, from: `planned at ${rateText}` },
      { name: "Passes", figure: String(passes), from: "the company’s setting" },
      { name: `At setting ${setting.setting}`, figure: `${inUnit(found, unit)} per 1,000 sq ft`, from: setting.words },
    ],
    steps: [
      `${perThousand(rate, unit)} ÷ ${String(passes)} = ${perThousand(perPass, unit)} per 1,000 sq ft in a pass is wanted`,
      `${inUnit(found, unit)} × ${String(passes)} = ${inUnit(together, unit)} per 1,000 sq ft is what the passes at this setting put down`,
    ],
    result: `Setting ${setting.setting}, puts down ${formatRate(setting.rate, "us")} in a pass`,
    source: `${mix.gearName}, ${setting.words}; ${passes === 2 ? PASSES_SOURCE : "one pass: common practice"}`,
  };
}
