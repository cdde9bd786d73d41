import { invariant } from "#domain/foundation/invariant";
import { type Working } from "#domain/foundation/working";
import { type Measure } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { areOverArea, isOverArea, type SprayRate, type UseRate } from "#domain/label/label-facts";
import { formatFigure } from "#domain/quantities/format-number";
import { formatRate } from "#domain/quantities/format-rate";
import { of, sum } from "#domain/quantities/quantity";
import { percentByVolumeOf, times } from "#domain/quantities/rate";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { rateBecame, type SprayedLawn, type SprayedProduct, type SprayMix, type SprayTreatment } from "#domain/mixing/spray-mix";
import { plannedStrength } from "#domain/mixing/stated-rate";
import { amountIn } from "#domain/mixing/tank-fill";
import { isSprayed, type TicketQuestion } from "#domain/mixing/ticket-question";
import { placeOf, treatedAreaWorking } from "#domain/mixing/ticket-working-area";
import { finishedWorking, halfWorking, loadWorking, type SprayAsked } from "#domain/mixing/ticket-working-load";
import { productInLoadWorking, type ProductWorking, waterWorking } from "#domain/mixing/ticket-working-mix-in";
import { mixingOrderWorking } from "#domain/mixing/ticket-working-order";
import { drawnWorking, leftOfProductWorking, leftWorking, type Shared } from "#domain/mixing/ticket-working-rest";
import { timeWorking } from "#domain/mixing/ticket-working-time";
import { inUnit, perGallon, perThousand, sumLines, THOUSAND_SQ_FT, unitOf } from "#domain/mixing/ticket-working-words";

/** The workings of every amount of one spray. */
export interface SprayWorkings {
  readonly carrier: Working;
  readonly finished: Working;
  readonly order: Working;
  /** The water that goes in before the first product. */
  readonly half: Working;
  /** None for spot work. */
  readonly time: Working | undefined;
  readonly loads: readonly { readonly number: number; readonly finished: Working; readonly water: Working; readonly products: readonly ProductWorking[] }[];
  readonly products: readonly { readonly line: number; readonly concentration: Working; readonly total: Working; readonly rate: Working }[];
  readonly lawns: readonly { readonly zoneId: string; readonly treated: Working; readonly finished: Working; readonly products: readonly ProductWorking[] }[];
  /** Of what is left in the tank; none where all of it goes down. */
  readonly rest: { readonly finished: Working; readonly products: readonly ProductWorking[] } | undefined;
}

/**
 * How each amount of a spray comes about, from the ticket's own figures. Undefined where the question has not the
 * treatments that the mix is made of.
 */
export function sprayWorkings(mix: SprayMix, question: TicketQuestion, ticket: MixTicket): SprayWorkings | undefined {
  const treatments = mix.products.flatMap(({ line }) => question.treatments.filter((one): one is SprayTreatment => one.line === line && isSprayed(one)));
  const [first] = treatments;
  if (first === undefined || treatments.length !== mix.products.length) return undefined;
  const area = sum("area", mix.lawns.map(({ treatedArea }) => treatedArea));
  const asked: SprayAsked = { mix, treatments, settings: question.settings, area };
  const rest = mix.rest === undefined || mix.rest.finished.amount === 0n ? undefined : mix.rest;
  const namedOf = (line: number) => mix.products.find((product) => product.line === line)?.productName ?? "";
  return {
    carrier: carrierWorking(mix),
    finished: finishedWorking(asked),
    order: mixingOrderWorking(treatments),
    half: halfWorking(asked),
    time: timeWorking({ lawns: mix.lawns, gear: first.gear, passes: 1, settings: question.settings }),
    loads: mix.loads.map((load) => ({
      number: load.number,
      finished: loadWorking(asked, load),
      water: waterWorking(asked, load),
      products: treatments.flatMap((treatment) => productInLoadWorking(asked, load, treatment)),
    })),
    products: mix.products.map((product) => ({
      line: product.line,
      concentration: concentrationWorking(asked, product),
      total: productTotalWorking(mix, product),
      rate: becameWorking(asked, product),
    })),
    lawns: mix.lawns.map((lawn) => ({
      zoneId: lawn.zoneId,
      treated: treatedAreaWorking(lawn, mix.products.map(({ productName }) => productName), question, ticket.findings),
      finished: sprayOfLawnWorking(mix, lawn),
      products: lawn.products.map(({ line, amount }) => {
        const shared = { name: namedOf(line), share: amount, whole: totalOf(mix, line) };
        return { line, working: rest === undefined ? sharedWorking(asked, lawn, shared) : drawnWorking(mix, lawn, shared) };
      }),
    })),
    rest: rest && {
      finished: leftWorking(mix, rest),
      products: rest.products.map(({ line, amount }) => ({ line, working: leftOfProductWorking(mix, rest, { name: namedOf(line), share: amount, whole: totalOf(mix, line) }) })),
    },
  };
}

function totalOf({ products }: SprayMix, line: number): Measure<"mass" | "volume"> {
  return products.find((product) => product.line === line)?.total ?? of("gal", 0n);
}

function carrierWorking({ carrier, gearName }: SprayMix): Working {
  const perThousandSqFt = times(carrier.rate, THOUSAND_SQ_FT);
  return {
    title: `What ${gearName} puts out`,
    formula: carrier.basis === "calibration" ? "as its calibration found it; the calibration’s own page has its arithmetic" : "not measured: nominal figures stand in until it is calibrated",
    inputs: [{ name: "Finished spray", figure: `${inUnit(perThousandSqFt, unitOf(perThousandSqFt))} per 1,000 sq ft`, from: carrier.words }],
    steps: [],
    result: formatRate(carrier.rate, "us"),
    source: `${gearName}, ${carrier.words}`,
  };
}

const GALLON = of("gal", 1n);

/** The strength of what is planned by the gallon of finished spray: as it was stated, whatever ground it covers. */
function strengthWorking(product: SprayedProduct, { rateText, asStated }: SprayTreatment): Working {
  const { productName, concentration } = product;
  const inGallon = perGallon(concentration);
  const percent = concentration.basis === "product-volume-per-spray-volume" && rateText.includes("%") ? `${formatFigure(percentByVolumeOf(concentration), { decimals: MOST_PERCENT_DECIMALS, quarters: false })}%` : undefined;
  return {
    title: `${productName} in the finished spray`,
    formula: "product in a gallon = the strength that is planned; the ground does not change it",
    inputs: [{ name: "Strength", figure: percent === undefined ? `${inGallon} per gal` : `${percent} of the finished spray`, from: `planned at ${rateText}` }],
    steps: percent === undefined ? [] : [`${inUnit(GALLON, "fl oz")} × ${percent} = ${inGallon}`],
    result: formatRate<SprayRate["basis"]>(concentration, "us"),
    source: asStated === undefined || areOverArea(asStated.rates) ? "the plan" : `the label of ${productName}, which states it in the finished spray`,
  };
}
/** So many that the line comes to the same figure of fluid ounces. */
const MOST_PERCENT_DECIMALS = 7;

function concentrationWorking({ mix, treatments }: SprayAsked, product: SprayedProduct): Working {
  const { line, productName, concentration } = product;
  const planned = treatments.find((treatment) => treatment.line === line);
  if (planned !== undefined && plannedStrength(planned) !== undefined) return strengthWorking(product, planned);
  const unit = concentration.basis === "product-mass-per-spray-volume" ? "oz wt" : "fl oz";
  const rates = treatments.filter((treatment) => treatment.line === line);
  const puts = inUnit(times(mix.carrier.rate, THOUSAND_SQ_FT), "gal");
  return {
    title: `${productName} in the finished spray`,
    formula: "product in a gallon = product on 1,000 sq ft ÷ gallons of finished spray on 1,000 sq ft",
    inputs: [
      ...rates.map(({ rate, rateText }) => ({ name: "Rate", figure: `${perThousand(rate, unit)} per 1,000 sq ft`, from: `planned at ${rateText}` })),
      { name: "Finished spray", figure: `${puts} per 1,000 sq ft`, from: mix.carrier.words },
    ],
    steps: rates.map(({ rate }) => `${perThousand(rate, unit)} ÷ ${puts} = ${perGallon(concentration)} per gal`),
    result: formatRate<SprayRate["basis"]>(concentration, "us"),
    source: "Oklahoma State University, “Sprayer Calibration”: the label’s rate goes into the volume that covers its area",
  };
}

function productTotalWorking(mix: SprayMix, { line, productName, total }: SprayedProduct): Working {
  const inLoads = mix.loads.flatMap((load) => load.products.filter((product) => product.line === line).map(({ amount }) => ({ number: load.number, amount })));
  return {
    title: `${productName} in all`,
    formula: "in all = what goes into the loads, added up",
    inputs: inLoads.map(({ number, amount }) => ({ name: `Load ${String(number)}`, figure: inUnit(amount, unitOf(amount)), from: "measured out" })),
    steps: sumLines(inLoads.map(({ amount }) => amount), total),
    result: formatQuantity(total, "us"),
    source: "common practice",
  };
}

/** What the marks make of the planned rate: on the ground, or in the spray where it is planned by strength. */
function becameWorking({ mix, treatments, area }: SprayAsked, { line, productName, total }: SprayedProduct): Working {
  const treatment = treatments.find((one) => one.line === line);
  const became = treatment === undefined ? undefined : rateBecame(treatment, mix);
  invariant(treatment !== undefined && became !== undefined, "every product of a mix has its treatment");
  const unit = unitOf(total);
  const planned = { name: "Planned", figure: treatment.rateText };
  const inAll = { name: "In all", figure: inUnit(total, unit), from: "rounded, as it is measured out" };
  const words = { title: `What the rate of ${productName} becomes`, result: formatRate<UseRate["basis"]>(became, "us"), source: "common practice" };
  if (!isOverArea(became)) {
    const finished = inUnit(mix.finished, "gal");
    return {
      ...words,
      formula: "strength = in all ÷ gallons of finished spray",
      inputs: [inAll, { name: "Finished spray", figure: finished, from: "in all loads" }, planned],
      steps: [`${inUnit(total, unit)} ÷ ${finished} = ${inUnit(amountIn(became, GALLON), unit)} per gal`],
    };
  }
  if (mix.rest !== undefined) {
    const [finished, puts] = [inUnit(mix.finished, "gal"), inUnit(times(mix.carrier.rate, THOUSAND_SQ_FT), "gal")];
    return {
      ...words,
      formula: "rate = in all ÷ gallons of finished spray × gallons that the sprayer puts out on 1,000 sq ft",
      inputs: [inAll, { name: "Finished spray", figure: finished, from: "in all loads" }, { name: "Puts out", figure: `${puts} per 1,000 sq ft`, from: mix.carrier.words }, planned],
      steps: [`${inUnit(total, unit)} ÷ ${finished} × ${puts} = ${perThousand(became, unit)}`],
    };
  }
  const own = inUnit(area, "sq ft");
  return {
    ...words,
    formula: "rate = in all ÷ treated area × 1,000 sq ft",
    inputs: [inAll, { name: "All treated area", figure: own, from: "of all lawns of this spray" }, planned],
    steps: [`${inUnit(total, unit)} ÷ ${own} × 1,000 sq ft = ${perThousand(became, unit)}`],
  };
}

/** What a lawn takes of spray: its ground at what the sprayer puts out; only what is filled goes to a mark of the gauge. */
function sprayOfLawnWorking({ carrier }: SprayMix, lawn: SprayedLawn): Working {
  const unit = unitOf(lawn.finished);
  const [own, puts] = [inUnit(lawn.treatedArea, "sq ft"), inUnit(times(carrier.rate, THOUSAND_SQ_FT), unit)];
  return {
    title: `Finished spray for ${placeOf(lawn)}`,
    formula: "a lawn’s spray = its treated area ÷ 1,000 sq ft × what the sprayer puts out; only what is filled goes to a mark of the gauge",
    inputs: [
      { name: "Treated area", figure: own, from: `of ${placeOf(lawn)}` },
      { name: "Puts out", figure: `${puts} per 1,000 sq ft`, from: carrier.words },
    ],
    steps: [`${own} ÷ 1,000 sq ft × ${puts} = ${inUnit(lawn.finished, unit)}`],
    result: formatQuantity(lawn.finished, "us"),
    source: "finished spray is area times what the sprayer puts out: Oklahoma State University, “Sprayer Calibration”",
  };
}

function sharedWorking({ area }: SprayAsked, lawn: SprayedLawn, { name, share, whole }: Shared): Working {
  const unit = unitOf(share);
  const [own, all] = [inUnit(lawn.treatedArea, "sq ft"), inUnit(area, "sq ft")];
  return {
    title: `${name} for ${placeOf(lawn)}`,
    formula: "a lawn’s share = in all × its treated area ÷ all treated area",
    inputs: [
      { name: "In all", figure: inUnit(whole, unit) },
      { name: "Treated area", figure: own, from: `of ${placeOf(lawn)}` },
      { name: "All treated area", figure: all },
    ],
    steps: [`${inUnit(whole, unit)} × ${own} ÷ ${all} = ${inUnit(share, unit)}`],
    result: formatQuantity(share, "us"),
    source: "common practice",
  };
}
