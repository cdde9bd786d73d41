import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { removeRoundSchema } from "#application/programs/remove-round.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Takes a round out of its program, as long as no property was put on it. */
export const removeRound = useCase("programs/remove-round", removeRoundSchema, async (work, { roundId }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const round = await work.tx.round.findUnique({ where: { companyId_roundId: { companyId, roundId } } });
  if (round === null) return notFound("round");
  const visits = await work.tx.visit.count({ where: { companyId, roundId } });
  if (visits > 0) return conflict(`${String(visits)} ${visits === 1 ? "visit comes" : "visits come"} of this round. Call them off one by one; the round stays for the record.`);
  await work.tx.roundTreatment.deleteMany({ where: { companyId, roundId } });
  await work.tx.round.deleteMany({ where: { companyId, roundId } });
  await writeDeed(work, roundId, { deed: "round-removed", details: { name: round.name } });
  return accept({ programId: round.programId });
});
