import { lockCompany } from "#adapters/postgres/company-work";
import { addDays } from "#domain/foundation/calendar-date";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { applyPosting } from "#domain/stock/posting";
import { fromAmount } from "#domain/quantities/quantity";
import { instantOfMinute } from "#domain/weather/local-hours";
import { type RecordContent } from "#domain/register/record-content";
import { writeDeed } from "#application/audit-trail";
import { appendRecord } from "#application/register/append-entry";
import { type CompletedForm, completeVisitSchema, reachedLawns } from "#application/register/complete-visit.schema";
import { type ReallyUsed } from "#application/register/drawn-from-fills";
import { recordOfVisit } from "#application/register/record-of-visit";
import { type RecordPlan, recordPlan } from "#application/register/record-plan";
import { tanksOfRecord } from "#application/register/tanks-of-record";
import { usedOfVisit, type UsedOfVisit } from "#application/register/used-of-visit";
import { badField, conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { postStock } from "#application/stock/post-stock";
import { singularLocation } from "#application/stock/stock-locations";
import { dayOf } from "#application/stored-day";
import { visitOnFile } from "#application/visits/read-visit";
import { type VisitRow } from "#application/visits/visit-rows";
import { useCase, type Work } from "#application/use-case";

/**
 * Writes the record of a visit from what really happened, takes the stock down by lot, draws from the fills, ends the
 * visit and plans its second look: everything or nothing, once. Findings go onto the record and none keeps it from being
 * written; only who, what and when are asked for. Pressed twice, or by two people at once, the first record is answered
 * or the second is told of it.
 */
export const completeVisit = useCase("register/complete-visit", completeVisitSchema, async (work, form) => {
  const { companyId } = work.company;
  const { requestId, visitId, applicatorId } = form;
  await lockCompany(work.tx);
  const written = await work.tx.registerEntry.findUnique({ where: { companyId_requestId: { companyId, requestId } } });
  if (written !== null) return repeated(work, form, written);
  const toWrite = await recordToWrite(work, form);
  if (!toWrite.ok) return toWrite;
  const { visit, plan, content, used, startedAt, endedAt } = toWrite.value;
  const stockPostingId = await postUsed(work, form, used.used, endedAt);
  if (!stockPostingId.ok) return stockPostingId;
  const entry = await appendRecord(work, { requestId, visitId, content, startedAt, endedAt, applicatorId, stockPostingId: stockPostingId.value });
  await drawFills(work, form, entry.registerEntryId, used);
  const state = plan.lawns.every(({ zoneId }) => form.lawns[zoneId] === "done") ? "done" : "part-done";
  await work.tx.visit.update({ where: { companyId_visitId: { companyId, visitId } }, data: { state, version: { increment: 1 } } });
  const secondLookId = await planSecondLook(work, form, visit, plan);
  await writeDeed(work, visitId, { deed: "record-written", details: { number: entry.number, visit: visit.name, street: visit.property.street } });
  return accept({ ...entry, secondLookId });
});

/** A record before it is written, with what it would take down. */
export interface RecordToWrite {
  readonly visit: VisitRow;
  readonly plan: RecordPlan;
  readonly content: RecordContent;
  readonly used: UsedOfVisit;
  readonly startedAt: Date;
  readonly endedAt: Date;
}

/** Puts a visit's record together from the form and what is on file, and writes nothing. Refuses what can't be written. */
export async function recordToWrite(work: Work, form: CompletedForm): Promise<Outcome<RecordToWrite, UseCaseRefusal>> {
  const { timeZone } = work.company;
  const found = await visitOnFile(work, form.visitId);
  if (found === undefined) return notFound("visit");
  if (found.record !== undefined) return conflict(`Record ${String(found.record.number)} of this visit is written already. A correction is an amendment to it.`);
  const { visit } = found;
  const startedAt = new Date(instantOfMinute(form.doneOn, form.startedAt, timeZone));
  const endedAt = new Date(instantOfMinute(form.endedOn ?? form.doneOn, form.endedAt, timeZone));
  const plan = await recordPlan(work, found);
  const refusal = refuseTimes(work, startedAt, endedAt) ?? refuseLawns(form, plan) ?? (await refusePeople(work, form));
  if (refusal !== undefined) return { ok: false, refusal };
  const used = await usedOfVisit(work, form.mixes, reachedLawns(form), visit, plan, endedAt);
  if (!used.ok) return used;
  const findings = await tanksOfRecord(work, found, plan, used.value);
  const content = await recordOfVisit(work, form, { visit, plan: { ...plan, findings }, used: used.value, startedAt, endedAt });
  return accept({ visit, plan, content, used: used.value, startedAt, endedAt });
}

interface CompletedVisit {
  readonly registerEntryId: string;
  readonly number: number;
  readonly secondLookId: string | null;
}

/** What the same form has written before. */
async function repeated(work: Work, form: CompletedForm, written: { registerEntryId: string; number: number; visitId: string }): Promise<Outcome<CompletedVisit, UseCaseRefusal>> {
  const { companyId } = work.company;
  const { registerEntryId, number, visitId } = written;
  if (visitId !== form.visitId) return conflict("This form was sent before for another visit. Load the page again.");
  const look = await work.tx.visit.findFirst({ where: { companyId, looksAgainAtId: visitId }, orderBy: { createdAt: "asc" }, select: { visitId: true } });
  return accept({ registerEntryId, number, secondLookId: look?.visitId ?? null });
}

function refuseTimes(work: Work, startedAt: Date, endedAt: Date): UseCaseRefusal | undefined {
  if (endedAt.getTime() < startedAt.getTime()) return badField("endedAt", "It ended before it started.").refusal;
  if (endedAt.getTime() > work.now.getTime()) return badField("endedAt", "This moment has not come yet.").refusal;
  return undefined;
}

function refuseLawns(form: CompletedForm, { lawns }: RecordPlan): UseCaseRefusal | undefined {
  const open = lawns.find(({ zoneId }) => form.lawns[zoneId] === undefined);
  if (open !== undefined) return badField(`lawns.${open.zoneId}`, `Say how ${open.name} came out.`).refusal;
  const [first] = lawns;
  if (first === undefined || lawns.some(({ zoneId }) => form.lawns[zoneId] !== "not-done")) return undefined;
  return badField(`lawns.${first.zoneId}`, "Nothing was done here. Call the visit off instead of writing a record.").refusal;
}

async function refusePeople(work: Work, { applicatorId, supervisorId }: CompletedForm): Promise<UseCaseRefusal | undefined> {
  const { companyId } = work.company;
  const ids = [applicatorId, ...(supervisorId === null ? [] : [supervisorId])];
  const known = await work.tx.person.findMany({ where: { companyId, personId: { in: ids } }, select: { personId: true } });
  const missing = ids.find((id) => !known.some(({ personId }) => personId === id));
  if (missing === undefined) return undefined;
  return badField(missing === applicatorId ? "applicatorId" : "supervisorId", "Choose a person of the crew.").refusal;
}

async function postUsed(work: Work, { requestId }: CompletedForm, used: readonly ReallyUsed[], happenedAt: Date): Promise<Outcome<string | null, UseCaseRefusal>> {
  const taken = used.flatMap(({ lots, total }) => lots.filter(({ amount }) => amount > 0n).map(({ lotId, from, amount }) => ({ lotId, from, quantity: fromAmount(total.dimension, amount) })));
  if (taken.length === 0) return accept(null);
  const posted = await postStock(work, { kind: "apply", requestId, happenedAt }, async () => accept(applyPosting(await singularLocation(work, "lawn"), taken)));
  return posted.ok ? accept(posted.value.stockPostingId) : posted;
}

async function drawFills(work: Work, { visitId }: CompletedForm, registerEntryId: string, { draws }: UsedOfVisit): Promise<void> {
  const { companyId } = work.company;
  await work.tx.fillDraw.createMany({
    data: draws.map(({ fill, sprayed, isMeasured }) => ({ companyId, fillId: fill.fillId, visitId, registerEntryId, volume: sprayed.amount, isMeasured, fillRestId: fill.fillRestId })),
  });
}

/** Two days to look again: the day itself and the one after. */
const SECOND_LOOK_DAYS_OPEN = 1;
const SECOND_LOOK_MINUTES = 10;

/** The second look is at the lawns on which something was done. */
async function planSecondLook(work: Work, form: CompletedForm, visit: VisitRow, { lawns }: RecordPlan): Promise<string | null> {
  const { companyId } = work.company;
  if (visit.secondLookAfterDays === null) return null;
  const visitId = work.newId();
  const opensOn = addDays(form.doneOn, visit.secondLookAfterDays);
  await work.tx.visit.create({
    data: {
      companyId,
      visitId,
      propertyId: visit.property.propertyId,
      name: `Second look: ${visit.name}`,
      opensOn: dayOf(opensOn),
      closesOn: dayOf(addDays(opensOn, SECOND_LOOK_DAYS_OPEN)),
      serviceMinutes: SECOND_LOOK_MINUTES,
      looksAgainAtId: visit.visitId,
      createdAt: work.now,
    },
  });
  await work.tx.visitTask.create({ data: { companyId, visitId, line: 1, kind: "look", reason: `how ${visit.name} worked` } });
  const reached = reachedLawns(form);
  const zoneIds = lawns.map(({ zoneId }) => zoneId).filter((zoneId) => reached.has(zoneId));
  await work.tx.visitTaskZone.createMany({ data: zoneIds.map((zoneId) => ({ companyId, visitId, line: 1, zoneId })) });
  return visitId;
}
