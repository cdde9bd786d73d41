import { type AnsweredHold, answerInDocument, type GivenAnswer } from "#domain/foundation/answered-hold";
import { type Finding } from "#domain/foundation/finding";
import { withoutFullStop } from "#domain/foundation/full-stop";
import { isNothing } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { onSpotsWords } from "#domain/quantities/share";
import { type LabelFacts } from "#domain/label/label-facts";
import { type AftercareTimeline } from "#domain/mixing/aftercare";
import { type AftercareStep } from "#domain/mixing/aftercare-step";
import { type MixTicket, neededOf } from "#domain/mixing/mix-ticket";
import { LEFT_IN_TANK, type SprayRest } from "#domain/mixing/spray-mix";
import { type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { deliveredWorkings, type ShownNutrient } from "#domain/mixing/ticket-working-delivered";
import { type TreatedLawn, treatedWords } from "#domain/mixing/treated-area";
import { packOf } from "#domain/rules/packs-on-file";
import { loadsOnPaper, settingWords, stepsOnPaper } from "#domain/papers/loads-on-paper";
import { type AftercareLine, type AtApplicationLine, type MixTicketPaper, type NutrientLine, type TicketLawn, type TicketProduct } from "#domain/papers/mix-ticket-paper";
import { answeredLine, findingLine, NOT_RECORDED, type PaperField, type PaperFinding, type PaperFrame, type PaperValue, said } from "#domain/papers/paper";
import { momentOnPaper } from "#domain/papers/paper-time";

/** An answer that a license holder gave to a hold of law, as papers print it after the hold. */
export interface AnswerOnPaper {
  readonly rule: string;
  /** The hold that was answered; null or missing in papers from before that was kept. */
  readonly answered?: AnsweredHold | null;
  /** "Answered by Dana Quill, license IN C-1, April 13: the neighbor was told." */
  readonly words: string;
}

/** Answers to holds of law in the words of papers. */
export function answersOnPaper(answers: readonly GivenAnswer[], timeZone: string): readonly AnswerOnPaper[] {
  return answers.map(({ rule, answered = null, reason, by, license, answeredAt }) => ({
    rule,
    answered,
    words: `Answered by ${by}, license ${license}, ${momentOnPaper(Date.parse(answeredAt), timeZone)}: ${reason}`,
  }));
}

/** An issued mix ticket with what its paper needs besides. */
export interface TicketToPrint {
  readonly frame: PaperFrame;
  readonly address: string;
  readonly customer: string;
  readonly question: TicketQuestion;
  readonly ticket: MixTicket;
  readonly findings: readonly Finding[];
  readonly answers: readonly AnswerOnPaper[];
  readonly aftercare: readonly { readonly lawnNames: readonly string[]; readonly timeline: AftercareTimeline }[];
  /** "IN C-1, certified applicator"; null where none on file stands. */
  readonly license: string | null;
  /** Null where the visit is on no truck's day. */
  readonly truck: string | null;
  /** Of each product the lot that is taken next; a product without one has none on hand. */
  readonly lotOfProduct: ReadonlyMap<string, string>;
}

/** A mix ticket on paper: what it said when it was issued, in words, with nothing computed anew. */
export function ticketOnPaper(print: TicketToPrint): MixTicketPaper {
  const { frame, address, customer, question, ticket, aftercare } = print;
  return {
    frame,
    address,
    customer,
    visit: visitFields(print),
    products: question.treatments.map((treatment) => productOf(treatment, ticket, print.lotOfProduct)),
    lawns: lawnsOf(ticket, question),
    loads: loadsOnPaper(ticket.mixes),
    mixing: stepsOnPaper(ticket.mixes),
    nutrients: nutrientsOf(ticket, question),
    findings: findingsOnPaper(print.findings, print.answers),
    atApplication: aftercare.flatMap((group) => atApplicationOf(group, aftercare.length > 1)),
    aftercare: aftercare.flatMap((group) => aftercareOf(group, aftercare.length > 1)),
    calibration: calibrationFields(ticket, question),
  };
}

/** Findings as lines, a hold of law that was answered with its answer. What only says that all is well is left out. */
export function findingsOnPaper(findings: readonly Finding[], answers: readonly AnswerOnPaper[]): readonly PaperFinding[] {
  return findings
    .filter(({ rule }) => rule !== "calibration-current")
    .map((finding) => {
      const answer = answerInDocument(finding, answers);
      return answer === undefined ? findingLine(finding) : answeredLine(finding, answer.words);
    });
}

function visitFields({ question, license, truck }: TicketToPrint): readonly PaperField[] {
  const targets = question.treatments.flatMap(({ use, reason }) => (use.targets.length === 0 ? [reason] : use.targets));
  return [
    { label: "Applicator", value: said(question.applicator.name) },
    { label: "License", value: license === null ? { kind: "does-not-apply", because: "none on file that stands" } : said(license) },
    { label: "Truck", value: truck === null ? { kind: "does-not-apply", because: "on no truck’s day" } : said(truck) },
    { label: "Target or purpose", value: said([...new Set(targets)].join(", ")) },
  ];
}

function registrationOf({ epaRegistrationNumber, analysis }: LabelFacts): PaperValue {
  if (epaRegistrationNumber === "unknown") return NOT_RECORDED;
  if (epaRegistrationNumber !== "none") return said(epaRegistrationNumber.number);
  return { kind: "does-not-apply", because: analysis === "none" || analysis === "unknown" ? "not registered" : "a fertilizer, not registered" };
}

function productOf({ line, productId, label, rateText, spot }: TicketTreatment, ticket: MixTicket, lots: TicketToPrint["lotOfProduct"]): TicketProduct {
  const amounts = neededOf(ticket.mixes).filter((needed) => needed.line === line);
  const lot = lots.get(productId);
  return {
    name: label.productName,
    registration: registrationOf(label),
    lot: lot === undefined ? "none on hand" : `${lot} (taken next)`,
    rate: `${rateText}${onSpotsWords(spot?.shareBasisPoints)}`,
    total: amounts.map(({ amount }) => formatQuantity(amount, "us")).join(" and ") || "none",
  };
}

/** One row for each lawn of each mix, and for what is left of it, with nothing under products of other mixes. */
function lawnsOf({ mixes }: MixTicket, { treatments }: TicketQuestion): readonly TicketLawn[] {
  return mixes.flatMap((mix): readonly TicketLawn[] => {
    const row = (lawn: TreatedLawn, words: string, amountOf: (line: number) => string | undefined): TicketLawn => ({
      name: lawn.name,
      treatedArea: treatedWords(lawn),
      mix: words,
      amounts: treatments.map(({ line }) => amountOf(line) ?? "–"),
    });
    if (mix.kind === "granular") {
      return mix.lawns.map((lawn) => row(lawn, "dry", (line) => (line === mix.line ? formatQuantity(lawn.amount, "us") : undefined)));
    }
    const amountIn = ({ products }: SprayRest) => (line: number) => {
      const product = products.find((one) => one.line === line);
      return product === undefined ? undefined : formatQuantity(product.amount, "us");
    };
    const lawns = mix.lawns.map((lawn) => row(lawn, formatQuantity(lawn.finished, "us"), amountIn(lawn)));
    if (mix.rest === undefined || mix.rest.finished.amount === 0n) return lawns;
    const amountLeft = amountIn(mix.rest);
    return [...lawns, { name: LEFT_IN_TANK, treatedArea: "–", mix: formatQuantity(mix.rest.finished, "us"), amounts: treatments.map(({ line }) => amountLeft(line) ?? "–") }];
  });
}

const NUTRIENTS: Readonly<Partial<Record<ShownNutrient, string>>> = { nitrogen: "Nitrogen", phosphate: "Phosphate", potash: "Potash", iron: "Iron" };

/** What each lawn gets for 1,000 sq ft of the ground on which it goes, as the screen works it out; what is none is left out. */
function nutrientsOf(ticket: MixTicket, question: TicketQuestion): readonly NutrientLine[] {
  const cap = packOf(question.state)?.facts["nitrogen-per-application"];
  return deliveredWorkings(question, ticket).flatMap(({ zoneId, nutrient, perThousandSqFt, words }): readonly NutrientLine[] => {
    const name = NUTRIENTS[nutrient];
    const lawn = ticket.delivered.find((one) => one.zoneId === zoneId)?.name;
    if (name === undefined || lawn === undefined || perThousandSqFt === "not-stated" || isNothing(perThousandSqFt)) return [];
    const limit = nutrient !== "nitrogen" ? "–" : cap?.onFile === true ? `${cap.value.poundsPer1000SqFt} lb an application, ${cap.citation}` : "none on file";
    return [{ lawn, nutrient: name, delivered: `${words} per 1,000 sq ft`, limit }];
  });
}

/** Each once for all lawns that it is of, as the screen shows it. */
function atApplicationOf({ lawnNames, timeline }: TicketToPrint["aftercare"][number], areSeveral: boolean): readonly AtApplicationLine[] {
  const on = areSeveral ? ` (${lawnNames.join(", ")})` : "";
  return [
    ...timeline.lawnAtApplication.map(({ productName, part, state, labelWords }) => ({ words: `${productName} wants ${part === "leaf" ? `a ${state} leaf` : `${state} soil`} when it goes down${on}.`, labelWords })),
    ...timeline.spoilingRain.map(({ words, reason }) => ({ words: `${withoutFullStop(words)}${on}.`, labelWords: reason.labelWords })),
  ];
}

function aftercareOf({ lawnNames, timeline }: TicketToPrint["aftercare"][number], areSeveral: boolean): readonly AftercareLine[] {
  const on = areSeveral ? ` (${lawnNames.join(", ")})` : "";
  const steps = timeline.steps.map((step) => ({ when: whenOf(step), what: `${step.words}${on}`, because: becauseOf(step) }));
  if (timeline.secondLook === null) return steps;
  return [...steps, { when: "Second look", what: `${timeline.secondLook.words}${on}`, because: "the program" }];
}

/** What must be done has no end where no label sets a date; then the words in place of one stand alone. */
function whenOf({ kind, startsAtWords, endsAtEpochMilliseconds, endsAtWords }: AftercareStep): string {
  if (kind === "may-not") return `Until ${endsAtWords}`;
  return `From ${startsAtWords}, ${endsAtEpochMilliseconds === null ? endsAtWords : `by ${endsAtWords}`}`;
}

/** "label of Greenmere 32-0-0" names the product already. */
function becauseOf({ reasons }: AftercareStep): string {
  return [...new Set(reasons.map(({ productName, source }) => (source.includes(productName) ? source : `${productName}: ${source}`)))].join("; ");
}

function calibrationFields({ mixes }: MixTicket, { treatments }: TicketQuestion): readonly PaperField[] {
  return mixes.flatMap((mix): readonly PaperField[] => {
    if (mix.kind === "spray") {
      return [
        { label: "Equipment", value: said(mix.gearName) },
        { label: "Output", value: said(formatRate(mix.carrier.rate, "us")) },
        { label: "Measured", value: said(mix.carrier.words) },
      ];
    }
    const treatment = treatments.find(({ line }) => line === mix.line);
    return [
      { label: "Equipment", value: said(mix.gearName) },
      { label: "Setting", value: said(`${settingWords(mix)} for ${treatment?.label.productName ?? mix.productName}`) },
      { label: "Measured", value: mix.setting === "not-calibrated" ? { kind: "not-taken" } : said(mix.setting.words) },
    ];
  });
}
