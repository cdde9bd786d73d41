import { type Prisma } from "#adapters/postgres/generated/client";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { accept } from "#domain/foundation/outcome";
import { visitStanding, type VisitStanding } from "#domain/scheduling/visit-standing";
import { todayOf } from "#application/programs/visits-of-rounds";
import { dayOf } from "#application/stored-day";
import { useCase, type Work } from "#application/use-case";
import { listVisitsSchema } from "#application/visits/list-visits.schema";
import { type VisitRow, visitRows } from "#application/visits/visit-rows";

/** A visit as a list shows it, with where it stands today. */
export interface VisitInList extends VisitRow {
  readonly standing: VisitStanding;
}

/** The columns that narrow to a standing; what they let through too much, the day of the stop decides. */
function whereStanding(standing: VisitStanding, today: CalendarDate): Prisma.VisitWhereInput {
  const day = dayOf(today);
  switch (standing) {
    case "waiting":
      return { state: "planned", opensOn: { gt: day } };
    case "open":
      return { state: "planned", opensOn: { lte: day }, closesOn: { gte: day } };
    case "past-its-window":
      return { state: "planned", closesOn: { lt: day } };
    case "on-a-day":
      return { state: "planned" };
    case "done":
    case "part-done":
    case "not-done":
      return { state: standing };
  }
}

/** Where a visit stands today. */
export function standingOf(visit: VisitRow, today: CalendarDate): VisitStanding {
  return visitStanding({ ...visit, stopOn: visit.stop?.date ?? null }, today);
}

/** The names of the products that go down on visits. */
export async function productNamesOf(work: Work, visits: readonly VisitRow[]): Promise<ReadonlyMap<string, string>> {
  const productIds = [...new Set(visits.flatMap(({ treatments }) => treatments.map(({ productId }) => productId)))];
  const products = await work.tx.product.findMany({ where: { companyId: work.company.companyId, productId: { in: productIds } }, select: { productId: true, name: true } });
  return new Map(products.map(({ productId, name }) => [productId, name]));
}

/** The visits of a company, of one property or of one round, by when they open, with where each stands today. */
export const listVisits = useCase("visits/list-visits", listVisitsSchema, async (work, { standing, openOn, propertyId, roundId }) => {
  const { companyId } = work.company;
  const today = todayOf(work);
  const narrowed: Prisma.VisitWhereInput[] = [{ companyId }];
  if (standing !== undefined) narrowed.push(whereStanding(standing, today));
  if (openOn !== undefined) narrowed.push({ state: "planned", opensOn: { lte: dayOf(openOn) }, closesOn: { gte: dayOf(openOn) } });
  if (propertyId !== undefined) narrowed.push({ propertyId });
  if (roundId !== undefined) narrowed.push({ roundId });
  const found = await work.tx.visit.findMany({
    where: { companyId, AND: narrowed },
    select: { visitId: true },
    orderBy: [{ opensOn: "asc" }, { closesOn: "asc" }, { visitId: "asc" }],
  });
  const rows = await visitRows(work, found.map(({ visitId }) => visitId));
  const visits = rows.map((row): VisitInList => ({ ...row, standing: standingOf(row, today) }));
  return accept({
    visits: standing === undefined ? visits : visits.filter((visit) => visit.standing === standing),
    productNames: await productNamesOf(work, rows),
    today,
  });
});
