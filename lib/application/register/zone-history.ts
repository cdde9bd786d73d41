import { calendarDateIn } from "#domain/foundation/calendar-date";
import { missingFact, type Outcome } from "#domain/foundation/outcome";
import { type LabelFacts } from "#domain/label/label-facts";
import { NO_NUTRIENT_RATES, nutrientRatesOf } from "#domain/mixing/delivered";
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
 */
export function historyOfZones({ company: { timeZone } }: Pick<Work, "company">, records: readonly RecordOnFile[], labels: LabelsRead): ReadonlyMap<string, readonly PastApplication[]> {
  const history = new Map<string, PastApplication[]>();
  for (const { visitId, startedAt, record } of records) {
    const on = calendarDateIn(timeZone, startedAt.getTime());
    for (const treatment of record.treatments) {
      const { productId, productName, serviceType, spotShareBasisPoints } = treatment;
      const facts = labelInUse(labels.get(productId))?.facts;
      for (const lawn of treatment.lawns) {
        const past: PastApplication = {
          ...{ on, visitId, productId, productName, serviceType },
          activeIngredients: pastIngredients(treatment, lawn, facts),
          nutrients: nutrientsOf(treatment, lawn, facts),
          ...(spotShareBasisPoints === undefined ? {} : { spot: { shareBasisPoints: spotShareBasisPoints } }),
        };
        history.set(lawn.zoneId, [...(history.get(lawn.zoneId) ?? []), past]);
      }
    }
  }
  return history;
}

function nutrientsOf({ productName }: RecordedTreatment, lawn: RecordedLawnAmount, facts: LabelFacts | undefined): Outcome<NutrientRates> {
  if (facts === undefined) return missingFact("label", "the product's label", `Nobody has entered the label of ${productName}.`);
  const rate = recordedRate(lawn);
  return rate === undefined ? { ok: true, value: NO_NUTRIENT_RATES } : nutrientRatesOf(facts, rate);
}
