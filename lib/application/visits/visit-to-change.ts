import { type Visit } from "#adapters/postgres/generated/client";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { type Work } from "#application/use-case";

/** A visit whose plan may still change: it is planned and nothing was written of it. Refused otherwise, and to the loser of a race. */
export async function visitToChange(work: Work, visitId: string, version: number): Promise<Outcome<Visit, UseCaseRefusal>> {
  const { companyId } = work.company;
  const visit = await work.tx.visit.findUnique({ where: { companyId_visitId: { companyId, visitId } } });
  if (visit === null) return notFound("visit");
  const records = await work.tx.registerEntry.count({ where: { companyId, visitId } });
  if (visit.state !== "planned" || records > 0) return conflict("This visit is written or called off. What happened stays as it is; a record is amended, not changed.");
  if (visit.version !== version) return conflict("Someone else has changed this visit since you opened the page. Load it again to see both.");
  return accept(visit);
}
