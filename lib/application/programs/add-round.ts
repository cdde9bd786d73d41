import { lockCompany } from "#adapters/postgres/company-work";
import { onSpotsWords } from "#domain/quantities/share";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { addRoundSchema } from "#application/programs/add-round.schema";
import { treatmentColumns, type TreatmentColumns } from "#application/programs/treatment-columns";
import { notFound } from "#application/refusal";
import { dayOf } from "#application/stored-day";
import { useCase } from "#application/use-case";

/** One product that goes down, as the audit trail tells it. */
export function oneTreatmentWords({ labelUse, rateText, spotShareBasisPoints, reason }: TreatmentColumns): string {
  return `${labelUse}, ${rateText}${onSpotsWords(spotShareBasisPoints)}, for ${reason}`;
}

/** What goes down, as the audit trail tells it. */
export function treatmentWords(treatments: readonly TreatmentColumns[]): readonly string[] {
  return treatments.map(oneTreatmentWords);
}

/** Adds a round to a program: when it may be done, and what goes down at what rate for what reason. */
export const addRound = useCase("programs/add-round", addRoundSchema, async (work, { programId, name, opensOn, closesOn, secondLook, treatments }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const program = await work.tx.program.findUnique({ where: { companyId_programId: { companyId, programId } } });
  if (program === null) return notFound("program");
  const columns = await treatmentColumns(work, "treatments", treatments);
  if (!columns.ok) return columns;
  const last = await work.tx.round.aggregate({ where: { companyId, programId }, _max: { position: true } });
  const roundId = work.newId();
  await work.tx.round.create({
    data: {
      ...{ companyId, roundId, programId, position: (last._max.position ?? 0) + 1, name },
      ...{ opensOn: dayOf(opensOn), closesOn: dayOf(closesOn), secondLookAfterDays: secondLook, createdAt: work.now },
    },
  });
  await work.tx.roundTreatment.createMany({ data: columns.value.map((treatment, index) => ({ companyId, roundId, line: index + 1, ...treatment })) });
  await writeDeed(work, roundId, { deed: "round-added", details: { program: program.name, name, opensOn, closesOn, treatments: treatmentWords(columns.value) } });
  return accept({ roundId, programId });
});
