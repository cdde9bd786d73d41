import { calendarDateIn } from "#domain/foundation/calendar-date";
import { rateFromAmounts } from "#domain/quantities/rate";
import { type PastApplication } from "#domain/mixing/ticket-question";
import { type RecordContent } from "#domain/register/record-content";
import { type Work } from "#application/use-case";

/** How far back limits over time look: a label's twelve months and a calendar year both lie within. */
const LOOKS_BACK_DAYS = 732;
const DAY_MILLISECONDS = 86_400_000;

/** What was put on each lawn of some properties, as the register has it, by lawn. */
export async function historyOfZones(work: Work, propertyIds: readonly string[]): Promise<ReadonlyMap<string, readonly PastApplication[]>> {
  const { companyId, timeZone } = work.company;
  const visits = await work.tx.visit.findMany({ where: { companyId, propertyId: { in: [...propertyIds] } }, select: { visitId: true } });
  const entries = await work.tx.registerEntry.findMany({
    where: {
      companyId,
      kind: "record",
      visitId: { in: visits.map(({ visitId }) => visitId) },
      startedAt: { gte: new Date(work.now.getTime() - LOOKS_BACK_DAYS * DAY_MILLISECONDS) },
    },
    orderBy: { number: "asc" },
  });
  const history = new Map<string, PastApplication[]>();
  for (const { content, startedAt } of entries) {
    const record = JSON.parse(content) as RecordContent;
    const on = calendarDateIn(timeZone, startedAt.getTime());
    for (const { productId, lawns } of record.treatments) {
      for (const { zoneId, activeIngredients } of lawns) {
        const past: PastApplication = {
          on,
          productId,
          activeIngredients: activeIngredients.map(({ name, amount, per }) => ({ name, rate: rateFromAmounts("active-ingredient-mass-per-area", BigInt(amount), BigInt(per)) })),
        };
        history.set(zoneId, [...(history.get(zoneId) ?? []), past]);
      }
    }
  }
  return history;
}
