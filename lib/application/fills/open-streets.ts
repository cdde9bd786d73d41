import { type Work } from "#application/use-case";

/** The streets of those of some visits that nobody has recorded, by the ids of the visits. */
export async function openStreetOf(work: Pick<Work, "tx" | "company">, visitIds: readonly string[]): Promise<ReadonlyMap<string, string>> {
  const { companyId } = work.company;
  if (visitIds.length === 0) return new Map();
  const visits = await work.tx.visit.findMany({ where: { companyId, visitId: { in: [...visitIds] }, state: "planned" }, select: { visitId: true, property: { select: { street: true } } }, take: 8000 });
  return new Map(visits.map(({ visitId, property }) => [visitId, property.street]));
}
