import { lockCompany } from "#adapters/postgres/company-work";
import { type Finding } from "#domain/foundation/finding";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { filledSince, labeledSiteCounts, rinsateWords, wentOfRinsate } from "#domain/mixing/clean-out";
import { gallonsWords, visitsNotRecorded } from "#domain/mixing/tank-reading";
import { zero } from "#domain/quantities/quantity";
import { instantOfMinute } from "#domain/weather/local-hours";
import { writeDeed } from "#application/audit-trail";
import { type CleanOutForm, recordCleanOutSchema } from "#application/fills/record-clean-out.schema";
import { sprayerAt } from "#application/fills/sprayer-at";
import { hasMissing, isSettledLater, postDifference, type TankToSettle, tankToSettle, writeRests } from "#application/fills/tank-settlement";
import { badField, conflict, type UseCaseRefusal } from "#application/refusal";
import { SENT_WITH_OTHER_FIGURES } from "#application/stock/post-stock";
import { useCase, type Work } from "#application/use-case";

/** A clean-out before it is written, in the words in which it is read back. */
export interface CleanOutToRecord {
  readonly equipmentName: string;
  readonly cleanedAt: Date;
  readonly doneBy: string;
  readonly how: string;
  /** "into the shop's rinsate tank" */
  readonly rinsate: string;
  /** What the tank holds by the books and loses with it; null where a later reading or clean-out has settled that. */
  readonly tank: TankToSettle | null;
  /** Where that goes in the ledger. */
  readonly went: "rinsate" | "loss";
  /** What it does not settle, and what wants care. */
  readonly findings: readonly Finding[];
}

/** Puts a clean-out together from the form and what is on file, and writes nothing. Refuses what can't be written. */
export async function cleanOutToRecord(work: Work, form: CleanOutForm): Promise<Outcome<CleanOutToRecord, UseCaseRefusal>> {
  const { companyId } = work.company;
  const { equipmentId, doneById, rinsateVisitId: visitId, how } = form;
  const cleaned = await sprayerAt(work, equipmentId, { on: form.cleanedOn, minuteOfDay: form.cleanedAt, field: "cleanedAt" });
  if (!cleaned.ok) return cleaned;
  const { sprayer: equipment, at: cleanedAt } = cleaned.value;
  const person = await work.tx.person.findUnique({ where: { companyId_personId: { companyId, personId: doneById } } });
  if (person === null) return badField("doneById", "There is no such person here. Choose another.");
  const visit = visitId === null ? null : await work.tx.visit.findUnique({ where: { companyId_visitId: { companyId, visitId } } });
  if (visitId !== null && visit === null) return badField("rinsateVisitId", "This visit is not on file any more. Load the page again.");
  const property = visit === null ? null : await work.tx.property.findUnique({ where: { companyId_propertyId: { companyId, propertyId: visit.propertyId } } });
  const fill = await work.tx.fill.findFirst({ where: { companyId, equipmentId }, orderBy: [{ filledAt: "desc" }, { number: "desc" }], select: { number: true, filledAt: true } });
  const tank = (await isSettledLater(work, equipmentId, cleanedAt, false)) ? null : await tankToSettle(work, equipmentId, cleanedAt, zero("volume"));
  const rest = tank === null ? [] : [...(hasMissing(tank) ? labeledSiteCounts(form.rinsateWent) : []), ...visitsNotRecorded({ name: equipment.name, openStreets: tank.openStreets })];
  return accept({
    equipmentName: equipment.name,
    cleanedAt,
    tank,
    went: wentOfRinsate(form.rinsateWent),
    doneBy: person.name,
    how,
    rinsate: rinsateWords(form.rinsateWent, form.rinsateWhere ?? property?.street ?? ""),
    findings: [...filledSince(equipment.name, { cleanedAt: cleanedAt.getTime() }, fill === null ? undefined : { number: fill.number, filledAt: fill.filledAt.getTime() }), ...rest],
  });
}

/**
 * Records that a sprayer was cleaned out: tank, pump and hose, when, by whom, how, and where the rinsate went. What the tank
 * holds by the books leaves it there in the same transaction, in one posting; visits that sprayed before it and are recorded
 * later take theirs from there. It is a fact: one from before the last fill is taken all the same and frees nothing, and one
 * from before a later reading or clean-out moves nothing. Pressed twice, the first clean-out is answered.
 */
export const recordCleanOut = useCase("fills/record-clean-out", recordCleanOutSchema, async (work, form) => {
  const { companyId, timeZone } = work.company;
  const { requestId, equipmentId, doneById, how, rinsateWent, rinsateVisitId, rinsateWhere } = form;
  await lockCompany(work.tx);
  const said = { equipmentId, cleanedAt: new Date(instantOfMinute(form.cleanedOn, form.cleanedAt, timeZone)), doneById, how, rinsateWent, rinsateVisitId, rinsateWhere };
  const first = await work.tx.cleanOut.findUnique({ where: { companyId_requestId: { companyId, requestId } } });
  if (first !== null) return saysTheSame(first, said) ? accept({ cleanOutId: first.cleanOutId }) : conflict(SENT_WITH_OTHER_FIGURES);
  const toRecord = await cleanOutToRecord(work, form);
  if (!toRecord.ok) return toRecord;
  const { equipmentName, cleanedAt, doneBy, rinsate, tank, went } = toRecord.value;
  const posted = tank === null ? accept({ stockPostingId: null, wentToId: null }) : await postDifference(work, { requestId, note: `Clean-out; the rinsate went ${rinsate}` }, tank, went);
  if (!posted.ok) return posted;
  const { stockPostingId, wentToId } = posted.value;
  const cleanOutId = work.newId();
  await work.tx.cleanOut.create({ data: { companyId, cleanOutId, requestId, ...said, stockPostingId, enteredAt: work.now, personId: work.member.personId } });
  if (tank !== null) await writeRests(work, tank, { cleanOutId }, wentToId);
  const inTheBooks = tank === null ? "settled later" : gallonsWords(tank.inTheBooks);
  await writeDeed(work, cleanOutId, { deed: "clean-out-recorded", details: { equipment: equipmentName, cleanedAt: cleanedAt.toISOString(), doneBy, rinsate, inTheBooks } });
  return accept({ cleanOutId });
});

interface SaidOfCleanOut {
  readonly equipmentId: string;
  readonly cleanedAt: Date;
  readonly doneById: string;
  readonly how: string;
  readonly rinsateWent: string;
  readonly rinsateVisitId: string | null;
  readonly rinsateWhere: string | null;
}

function saysTheSame(one: SaidOfCleanOut, other: SaidOfCleanOut): boolean {
  const fields = ["equipmentId", "doneById", "how", "rinsateWent", "rinsateVisitId", "rinsateWhere"] as const;
  return one.cleanedAt.getTime() === other.cleanedAt.getTime() && fields.every((field) => one[field] === other[field]);
}
