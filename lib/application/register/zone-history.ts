import { calendarDateIn } from "#domain/foundation/calendar-date";
import { missingFact, type Outcome } from "#domain/foundation/outcome";
import { AFTERCARE_KINDS, type LabelAftercare } from "#domain/label/aftercare-constraint";
import { type LabelFacts, useNamed } from "#domain/label/label-facts";
import { NO_NUTRIENT_RATES, nutrientRatesOf } from "#domain/mixing/delivered";
import { type EarlierProduct } from "#domain/mixing/earlier-products";
import { type NutrientRates, type PastApplication } from "#domain/mixing/ticket-question";
import { pastIngredients, recordedRate } from "#domain/register/past-ingredients";
import { type RecordContent, type RecordedLawnAmount, type RecordedTreatment } from "#domain/register/record-content";
import { labelInUse, type LabelsRead } from "#application/products/stored-label";
import { type Work } from "#application/use-case";

/** How far back limits over time look: a label's twelve months and a calendar year both lie within. */
const LOOKS_BACK_DAYS = 732;
const DAY_MILLISECONDS = 86_400_000;

/** What was written of a visit once it was done. */
export interface RecordOnFile {
  readonly visitId: string;
  readonly startedAt: Date;
  readonly record: RecordContent;
}

/** The records of what was put down on some properties, in their order, as far back as limits over time look. */
export async function recordsOfProperties({ tx, company, now }: Work, propertyIds: readonly string[]): Promise<readonly RecordOnFile[]> {
  const { companyId } = company;
  const visits = await tx.visit.findMany({ where: { companyId, propertyId: { in: [...propertyIds] } }, select: { visitId: true } });
  const entries = await tx.registerEntry.findMany({
    where: {
      companyId,
      kind: "record",
      visitId: { in: visits.map(({ visitId }) => visitId) },
      startedAt: { gte: new Date(now.getTime() - LOOKS_BACK_DAYS * DAY_MILLISECONDS) },
    },
    orderBy: { number: "asc" },
  });
  return entries.map(({ visitId, startedAt, content }) => ({ visitId, startedAt, record: JSON.parse(content) as RecordContent }));
}

/** The products of some records: whoever asks for a history reads their labels together with those of its own products. */
export function productsOfRecords(records: readonly RecordOnFile[]): readonly string[] {
  return records.flatMap(({ record }) => record.treatments.map(({ productId }) => productId));
}

/**
 * What was put on each lawn, as records of the register have it, by lawn. Amounts, ground and active ingredients
 * are the record's own; resistance groups, nutrients and ingredients that the record could not count follow from the
 * product's label as it is on file now.
 * @param labels those of all products of the records
 * @param uses the label uses that were planned at their visits
 */
export function historyOfZones({ company: { timeZone } }: Pick<Work, "company">, records: readonly RecordOnFile[], labels: LabelsRead, uses: UsesOfVisits): ReadonlyMap<string, readonly PastApplication[]> {
  const history = new Map<string, PastApplication[]>();
  for (const { visitId, startedAt, record } of records) {
    const on = calendarDateIn(timeZone, startedAt.getTime());
    for (const treatment of record.treatments) {
      const { line, productId, productName, serviceType, spotShareBasisPoints } = treatment;
      const facts = labelInUse(labels.get(productId))?.facts;
      const ofLabel = pastLabel(facts, uses.get(keyOfUse(visitId, line, productId)));
      for (const lawn of treatment.lawns) {
        const past: PastApplication = {
          ...{ on, visitId, productId, productName, serviceType },
          activeIngredients: pastIngredients(treatment, lawn, facts),
          nutrients: nutrientsOf(treatment, lawn, facts),
          ...ofLabel,
          ...(spotShareBasisPoints === undefined ? {} : { spot: { shareBasisPoints: spotShareBasisPoints } }),
        };
        history.set(lawn.zoneId, [...(history.get(lawn.zoneId) ?? []), past]);
      }
    }
  }
  return history;
}

function pastLabel(facts: LabelFacts | undefined, useName: string | undefined): Pick<PastApplication, "label" | "putDownAs"> {
  if (facts === undefined) return { label: "unknown", putDownAs: [] };
  const { form, formulation, epaRegistrationNumber, analysis, uses } = facts;
  const planned = useName === undefined ? undefined : useNamed(facts, useName);
  return {
    label: { form, formulation, epaRegistrationNumber, analysis, serviceTypes: uses.map(({ serviceType }) => serviceType) },
    putDownAs: (planned === undefined ? uses : [planned]).map((use) => ({ useName: use.useName, keptApart: use.keptApart })),
  };
}

/** What was put down on a lawn, as its aftercare asks: under which use of the label, and from when until when. */
export interface PutDownOnZone extends EarlierProduct {
  readonly visitId: string;
  readonly productId: string;
  /** The line of the visit's plan. */
  readonly line: number;
  /** Whether a sign was put up for it, as the record says. */
  readonly signIsUp: boolean;
}

/** The uses of labels under which some visits put their products down, by visit, line and product. */
export type UsesOfVisits = ReadonlyMap<string, string>;

const keyOfUse = (visitId: string, line: number, productId: string) => `${visitId} ${String(line)} ${productId}`;

/** The label uses that were planned at the visits of some records; one query for all of them. */
export async function usesOfRecords({ tx, company: { companyId } }: Work, records: readonly RecordOnFile[]): Promise<UsesOfVisits> {
  const tasks = await tx.visitTask.findMany({
    where: { companyId, visitId: { in: records.map(({ visitId }) => visitId) }, kind: "treatment" },
    select: { visitId: true, line: true, productId: true, labelUse: true },
  });
  return new Map(tasks.flatMap(({ visitId, line, productId, labelUse }) => (productId === null || labelUse === null ? [] : [[keyOfUse(visitId, line, productId), labelUse] as const])));
}

/**
 * What aftercare asks of each lawn's past, by lawn: the products that records say it got, at the records' real times, with
 * the use of the label as it is on file now. Where that use or the label is not on file, nobody has read any of its facts.
 * @param labels those of all products of the records
 */
export function putDownOnZones(records: readonly RecordOnFile[], labels: LabelsRead, uses: UsesOfVisits): ReadonlyMap<string, readonly PutDownOnZone[]> {
  const putDown = new Map<string, PutDownOnZone[]>();
  // One label for each product, because what is worked out of a label is kept by it.
  const unread = new Map<string, LabelAftercare>();
  const unreadOf = (productName: string): LabelAftercare => {
    const label = unread.get(productName) ?? unreadAftercare(productName);
    unread.set(productName, label);
    return label;
  };
  for (const { visitId, record } of records) {
    const application = { startsAtEpochMilliseconds: Date.parse(record.startedAt), endsAtEpochMilliseconds: Date.parse(record.endedAt), postedAtEpochMilliseconds: "not-posted" } as const;
    for (const { line, productId, productName, lawns } of record.treatments) {
      const facts = labelInUse(labels.get(productId))?.facts;
      const label = (facts === undefined ? undefined : useNamed(facts, uses.get(keyOfUse(visitId, line, productId)) ?? ""))?.aftercare ?? unreadOf(productName);
      for (const { zoneId } of lawns) putDown.set(zoneId, [...(putDown.get(zoneId) ?? []), { visitId, productId, line, label, application, signIsUp: record.signIsUp }]);
    }
  }
  return putDown;
}

function unreadAftercare(productName: string): LabelAftercare {
  return { productName, facts: Object.fromEntries(AFTERCARE_KINDS.map((kind) => [kind, "unknown"])) as unknown as LabelAftercare["facts"] };
}

function nutrientsOf({ productName }: RecordedTreatment, lawn: RecordedLawnAmount, facts: LabelFacts | undefined): Outcome<NutrientRates> {
  if (facts === undefined) return missingFact("label", "the product's label", `Nobody has entered the label of ${productName}.`);
  const rate = recordedRate(lawn);
  return rate === undefined ? { ok: true, value: NO_NUTRIENT_RATES } : nutrientRatesOf(facts, rate);
}
