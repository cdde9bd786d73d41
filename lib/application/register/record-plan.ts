import { OF_FLOWERS } from "#domain/mixing/site-checks";
import { type Finding } from "#domain/foundation/finding";
import { useNamed, type UseRate } from "#domain/label/label-facts";
import { cleanOutNotOnFile } from "#domain/mixing/mix-change";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { statedOf } from "#domain/mixing/stated-rate";
import { type SpotWork, type TicketTreatment } from "#domain/mixing/ticket-question";
import { shareTreated, type TreatedLawn } from "#domain/mixing/treated-area";
import { rateBases } from "#domain/quantities/rate";
import { fromAmount } from "#domain/quantities/quantity";
import { answeredBefore } from "#domain/register/former-answer";
import { type LabelPutDown } from "#domain/register/put-down";
import { labelInUse, type LabelsRead } from "#application/products/stored-label";
import { type AnswerOnFile, ticketInHand } from "#application/visits/issued-ticket";
import { type PlannedTreatment } from "#application/visits/visit-rows";
import { type VisitOnFile } from "#application/visits/read-visit";
import { heldOf } from "#application/visits/visit-ticket";
import { type Work } from "#application/use-case";

export type Mix = MixTicket["mixes"][number];

/** One product as its record needs it, planned or not. */
export interface ProductPutDown {
  readonly line: number;
  readonly productId: string;
  readonly productName: string;
  readonly countedBy: "mass" | "volume";
  /** There only for spot work. */
  readonly spot?: SpotWork;
  /** The planned rate as it was typed, or that none was planned. */
  readonly rateText: string;
  readonly reason: string;
  readonly equipmentName: string;
  /** There only where it is known. */
  readonly equipmentId?: string;
  readonly label: LabelPutDown;
  /** Where it was to go, and on how much of each lawn. */
  readonly lawns: readonly TreatedLawn[];
}

/** One planned product of a visit, whether or not a mix ticket could be worked out for it. */
export interface RecordTreatment extends ProductPutDown {
  readonly rate: UseRate;
}

/** What a visit was to be, as the crew had it in hand and as far as it can be worked out. */
export interface RecordPlan {
  readonly mixes: readonly Mix[];
  readonly treatments: readonly RecordTreatment[];
  readonly lawns: readonly { readonly zoneId: string; readonly name: string; readonly grasses: readonly string[] }[];
  readonly mixTicketNumber: number | null;
  readonly findings: readonly Finding[];
  /** Those that cover holds among the findings; of the others the findings say what was answered before the plan changed. */
  readonly holdAnswers: readonly AnswerOnFile[];
}

export const NOT_ON_FILE = "not on file";

/** The lines of the treatments that a mix is made of; the first of them names it in forms. */
export function linesOf(mix: Mix): readonly number[] {
  return mix.kind === "granular" ? [mix.line] : mix.products.map(({ line }) => line);
}

/** The treatment of a line that is known to be among them. */
export function treatmentOnLine<Treatment extends Pick<ProductPutDown, "line">>(treatments: readonly Treatment[], line: number): Treatment {
  const treatment = treatments.find((one) => one.line === line);
  if (treatment === undefined) throw new Error(`treatment ${String(line)} of a record is one that was planned`);
  return treatment;
}

/** How a day's tanks are to be filled and emptied, which is of no weight once a visit is done. */
const OF_TANK_PLANS = ["flush-the-line", "last-mix-left", "two-mixes-in-the-tank", "other-rates-than-the-fill", "water-at-stop-not-known"];
/** What a record says anew for itself, about who really did it, or what is of no weight once it is done. */
const OF_THE_PLAN_ONLY: ReadonlySet<string> = new Set(["calibration-current", "forecast-not-entered", "coming-heat-not-judged", "on-no-day", "license-missing", "license-category-not-on-file", "look-at-the-weather", "technician-under-supervision", ...OF_TANK_PLANS, ...OF_FLOWERS]);

/**
 * The plan of a visit for its record: the issued mix ticket, else what is worked out now, and for every product that has
 * no mix (a label that nobody entered, no gear, a lawn taken off the plan) what is on file of it, so that what was done
 * can be written all the same.
 */
export async function recordPlan(work: Work, { issued, outcome, visit, answers, formerAnswers, labels }: VisitOnFile): Promise<RecordPlan> {
  const { companyId } = work.company;
  const said = ticketInHand(issued, outcome);
  const mixes = said?.ticket.mixes ?? [];
  const mixed = new Set(mixes.flatMap(linesOf));
  const productIds = visit.treatments.map(({ productId }) => productId);
  const products = await work.tx.product.findMany({ where: { companyId, productId: { in: productIds } } });
  const zones = await work.tx.zone.findMany({ where: { companyId, propertyId: visit.property.propertyId }, orderBy: { letter: "asc" } });
  const without = visit.treatments.filter(({ line }) => !mixed.has(line));
  const typed = without.length === 0 ? [] : await withoutMix(work, without, zones, labels);
  const productOf = new Map(products.map((product) => [product.productId, product]));
  const named = ({ productId }: { readonly productId: string }, rate: UseRate) => ({
    productName: productOf.get(productId)?.name ?? NOT_ON_FILE,
    countedBy: (productOf.get(productId)?.countedBy ?? rateBases[rate.basis].amount) as RecordTreatment["countedBy"],
  });
  const planned = new Set([...visit.treatments, ...visit.looks].flatMap(({ zoneIds }) => zoneIds));
  const treatments = (said?.question.treatments ?? []).flatMap((treatment) => mixedTreatment(treatment, mixes));
  return {
    mixes,
    treatments: [...treatments.map((one) => ({ ...named(one, one.rate), ...one })), ...typed.map((one) => ({ ...named(one, one.rate), ...one }))],
    lawns: zones.filter(({ zoneId }) => planned.has(zoneId)).map(({ zoneId, name, grasses }) => ({ zoneId, name, grasses })),
    mixTicketNumber: issued?.number ?? null,
    findings: [...heldOf(outcome).findings.filter(({ rule }) => !OF_THE_PLAN_ONLY.has(rule)).map(cleanOutNotOnFile), ...formerAnswers.map((answer) => answeredBefore(answer, work.company.timeZone))],
    holdAnswers: answers.filter((answer) => !formerAnswers.includes(answer)),
  };
}

type Unnamed = Omit<RecordTreatment, "productName" | "countedBy"> & { readonly productName?: string };

function mixedTreatment(treatment: TicketTreatment, mixes: readonly Mix[]): readonly Unnamed[] {
  const { line, productId, label, use, spot, rateText, reason, gear } = treatment;
  const { rate, rates } = statedOf(treatment);
  const mix = mixes.find((one) => linesOf(one).includes(line));
  if (mix === undefined) return [];
  // What was put down is held against the label as it is stated, not against what a calibration made of it.
  return [{ line, productId, productName: label.productName, rate, rateText, ...(spot === undefined ? {} : { spot }), reason, equipmentName: gear.name, equipmentId: gear.equipmentId, label: { label, use: { ...use, rates } }, lawns: mix.lawns }];
}

interface ZoneRow {
  readonly zoneId: string;
  readonly letter: string;
  readonly name: string;
  readonly area: bigint;
}

async function withoutMix(work: Work, planned: readonly PlannedTreatment[], zones: readonly ZoneRow[], labels: LabelsRead): Promise<readonly Unnamed[]> {
  const { companyId } = work.company;
  const equipmentIds = planned.flatMap(({ equipmentId }) => equipmentId ?? []);
  const equipment = await work.tx.equipment.findMany({ where: { companyId, equipmentId: { in: equipmentIds } } });
  return planned.map(({ line, productId, labelUse, rate, rateText, spot, reason, zoneIds, equipmentId }) => {
    const label = labelInUse(labels.get(productId))?.facts;
    const use = label === undefined ? undefined : useNamed(label, labelUse);
    return {
      ...{ line, productId, rate, rateText, reason },
      ...(spot === undefined ? {} : { spot }),
      ...(equipmentId === null ? {} : { equipmentId }),
      equipmentName: equipment.find((one) => one.equipmentId === equipmentId)?.name ?? NOT_ON_FILE,
      label: label === undefined || use === undefined ? "not-on-file" : { label, use },
      lawns: zones.filter(({ zoneId }) => zoneIds.includes(zoneId)).map((zone) => wholeLawn(zone, spot)),
    };
  });
}

/** The lawn, or of spot work its share of the lawn; what would stay clear of water is worked out by a mix ticket alone. */
function wholeLawn({ zoneId, letter, name, area }: ZoneRow, spot: SpotWork | undefined): TreatedLawn {
  const whole = fromAmount("area", area);
  return { zoneId, letter, name, lawnArea: whole, keptClear: fromAmount("area", 0n), ...shareTreated(spot, whole) };
}
