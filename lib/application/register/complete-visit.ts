import { lockCompany } from "#adapters/postgres/company-work";
import { addDays } from "#domain/foundation/calendar-date";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type Finding } from "#domain/foundation/finding";
import { applyPosting } from "#domain/stock/posting";
import { fromAmount } from "#domain/quantities/quantity";
import { instantOfMinute } from "#domain/weather/local-hours";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { type RecordContent } from "#domain/register/record-content";
import { writeDeed } from "#application/audit-trail";
import { appendRecord } from "#application/register/append-entry";
import { completeVisitSchema } from "#application/register/complete-visit.schema";
import { fillAtHand } from "#application/register/fill-at-hand";
import { type FillAtHand, type ReallyUsed, reallyUsed } from "#application/register/really-used";
import { type CompletedForm, recordOfVisit } from "#application/register/record-of-visit";
import { badField, conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { lotsAt } from "#application/stock/lots-at";
import { postStock } from "#application/stock/post-stock";
import { locationOfVehicle, singularLocation } from "#application/stock/stock-locations";
import { dayOf } from "#application/stored-day";
import { visitOnFile, type VisitOnFile } from "#application/visits/read-visit";
import { useCase, type Work } from "#application/use-case";

/**
 * Writes the record of a visit from what really happened, takes the stock down by lot, draws from the fill, ends the
 * visit and plans its second look: everything or nothing, once. Findings go onto the record and none keeps it from being
 * written; only who, what and when are asked for. Pressed twice, or by two people at once, the first record is answered
 * or the second is told of it.
 */
export const completeVisit = useCase("register/complete-visit", completeVisitSchema, async (work, form) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const written = await work.tx.registerEntry.findUnique({ where: { companyId_requestId: { companyId, requestId: form.requestId } } });
  if (written !== null) return accept({ registerEntryId: written.registerEntryId, number: written.number });
  const toWrite = await recordToWrite(work, form);
  if (!toWrite.ok) return toWrite;
  const { found, lawns, content, used, startedAt, endedAt } = toWrite.value;
  const stockPostingId = await postUsed(work, form, used, endedAt);
  if (!stockPostingId.ok) return stockPostingId;
  const { requestId, visitId, applicatorId } = form;
  const entry = await appendRecord(work, { requestId, visitId, content, startedAt, endedAt, applicatorId, stockPostingId: stockPostingId.value });
  await drawFills(work, form, entry.registerEntryId, used);
  const outcomes = lawns.map(({ zoneId }) => form.lawns[zoneId]);
  const state = outcomes.every((outcome) => outcome === "done") ? "done" : "part-done";
  await work.tx.visit.update({ where: { companyId_visitId: { companyId, visitId } }, data: { state, version: { increment: 1 } } });
  const secondLookId = await planSecondLook(work, form, found);
  await writeDeed(work, visitId, { deed: "record-written", details: { number: entry.number, visit: found.visit.name, street: found.visit.property.street } });
  return accept({ ...entry, secondLookId });
});

/** A record before it is written, with what it would take down. */
export interface RecordToWrite {
  readonly found: VisitOnFile;
  readonly lawns: Plan["lawns"];
  readonly content: RecordContent;
  readonly used: readonly ReallyUsed[];
  readonly startedAt: Date;
  readonly endedAt: Date;
}

/** Puts a visit's record together from the form and what is on file, and writes nothing. Refuses what can't be written. */
export async function recordToWrite(work: Work, form: CompletedForm): Promise<Outcome<RecordToWrite, UseCaseRefusal>> {
  const { timeZone } = work.company;
  const found = await visitOnFile(work, form.visitId);
  if (found === undefined) return notFound("visit");
  if (found.record !== undefined) return conflict(`Record ${String(found.record.number)} of this visit is written already. A correction is an amendment to it.`);
  const startedAt = new Date(instantOfMinute(form.doneOn, form.startedAt, timeZone));
  const endedAt = new Date(instantOfMinute(form.doneOn, form.endedAt, timeZone));
  const refusal = refuseTimes(work, startedAt, endedAt) ?? refuseLawns(form, found) ?? (await refusePeople(work, form));
  if (refusal !== undefined) return { ok: false, refusal };
  const plan = planOf(found);
  const answer = await usedOf(work, form, found, plan);
  if (!answer.ok) return answer;
  const { used, lotNumbers } = answer.value;
  const findings = [...plan.findings, ...answer.value.findings];
  const mixTicketNumber = found.issued?.number ?? null;
  const content = await recordOfVisit(work, form, { visit: found.visit, ...plan, mixTicketNumber, used, lotNumbers, findings, startedAt, endedAt });
  return accept({ found, lawns: plan.lawns, content, used, startedAt, endedAt });
}

function refuseTimes(work: Work, startedAt: Date, endedAt: Date): UseCaseRefusal | undefined {
  if (endedAt.getTime() < startedAt.getTime()) return badField("endedAt", "It ended before it started.").refusal;
  if (endedAt.getTime() > work.now.getTime()) return badField("endedAt", "This moment has not come yet.").refusal;
  return undefined;
}

export interface Plan {
  readonly ticket: MixTicket | undefined;
  readonly treatments: readonly TicketTreatment[];
  readonly lawns: readonly { readonly zoneId: string; readonly name: string; readonly grasses: readonly string[] }[];
  readonly findings: readonly Finding[];
}

/** What the crew had in hand: the issued mix ticket, else what is worked out now. A look has neither. */
export function planOf({ issued, outcome, visit }: VisitOnFile): Plan {
  const said = issued?.snapshot ?? (outcome.ok ? outcome.value : undefined);
  const planned = new Set([...visit.treatments, ...visit.looks].flatMap(({ zoneIds }) => zoneIds));
  const lawns = said?.question.lawns.filter(({ zoneId }) => planned.has(zoneId)) ?? [];
  const findings = outcome.ok ? outcome.value.findings : outcome.refusal.findings;
  return {
    ticket: said?.ticket,
    treatments: said?.question.treatments ?? [],
    lawns: lawns.length > 0 ? lawns : [...planned].map((zoneId) => ({ zoneId, name: "", grasses: [] })),
    findings: findings.filter(({ rule }) => !["calibration-current", "forecast-not-entered", "on-no-day"].includes(rule)),
  };
}

function refuseLawns(form: CompletedForm, found: VisitOnFile): UseCaseRefusal | undefined {
  const { lawns } = planOf(found);
  const open = lawns.find(({ zoneId }) => form.lawns[zoneId] === undefined);
  if (open !== undefined) return badField(`lawns.${open.zoneId}`, `Say how ${open.name} came out.`).refusal;
  if (lawns.every(({ zoneId }) => form.lawns[zoneId] === "not-done")) {
    return badField(`lawns.${lawns[0]?.zoneId ?? ""}`, "Nothing was done here. Call the visit off instead of writing a record.").refusal;
  }
  return undefined;
}

async function refusePeople(work: Work, { applicatorId, supervisorId }: CompletedForm): Promise<UseCaseRefusal | undefined> {
  const { companyId } = work.company;
  const ids = [applicatorId, ...(supervisorId === null ? [] : [supervisorId])];
  const known = await work.tx.person.findMany({ where: { companyId, personId: { in: ids } }, select: { personId: true } });
  const missing = ids.find((id) => !known.some(({ personId }) => personId === id));
  if (missing === undefined) return undefined;
  return badField(missing === applicatorId ? "applicatorId" : "supervisorId", "Choose a person of the crew.").refusal;
}

interface Used {
  readonly used: readonly ReallyUsed[];
  readonly findings: readonly Finding[];
  readonly lotNumbers: ReadonlyMap<string, string>;
}

async function usedOf(work: Work, form: CompletedForm, { visit }: VisitOnFile, { ticket, treatments }: Plan): Promise<Outcome<Used, UseCaseRefusal>> {
  const { companyId } = work.company;
  const truck = visit.stop === null ? undefined : await locationOfVehicle(work, visit.stop.vehicleId);
  const places = [...(truck === undefined ? [] : [truck]), await singularLocation(work, "shop")];
  const lots = await lotsAt(work, places);
  const sizes = new Map((await work.tx.lot.findMany({ where: { companyId } })).map(({ lotId, containerSize, number }) => [lotId, { containerSize, number }]));
  const lotsOf = (productId: string) =>
    places.map((place) =>
      lots
        .filter((lot) => lot.productId === productId && lot.stockLocationId === place)
        .map((lot) => ({ ...lot, containerSize: sizes.get(lot.lotId)?.containerSize ?? 1n })),
    );
  const used: ReallyUsed[] = [];
  const findings: Finding[] = [];
  for (const mix of ticket?.mixes ?? []) {
    if (!mix.lawns.some(({ zoneId }) => form.lawns[zoneId] === "done" || form.lawns[zoneId] === "part")) continue;
    const key = String(mix.kind === "granular" ? mix.line : (mix.products[0]?.line ?? 0));
    const entered = form.mixes[key];
    if (entered === undefined) return badField(`mixes.${key}.measuredBy`, "Say how much was put down, or that it was as planned and not measured.");
    let fill: FillAtHand | undefined;
    if (entered.fillId !== null) {
      fill = await fillAtHand(work, entered.fillId);
      if (fill === undefined) return badField(`mixes.${key}.fillId`, "This fill is not on file. Choose another.");
    }
    const productOf = (line: number) => {
      const treatment = treatments.find((one) => one.line === line);
      return {
        productId: treatment?.productId ?? "",
        productName: treatment?.label.productName ?? "",
        dimension: treatment?.rate.basis === "product-mass-per-area" ? ("mass" as const) : ("volume" as const),
      };
    };
    const answer = reallyUsed(mix, entered, fill, productOf, lotsOf);
    if (!answer.ok) return answer;
    used.push(...answer.value.used);
    findings.push(...answer.value.findings);
  }
  return accept({ used, findings, lotNumbers: new Map([...sizes].map(([lotId, { number }]) => [lotId, number])) });
}

async function postUsed(work: Work, { requestId }: CompletedForm, used: readonly ReallyUsed[], happenedAt: Date): Promise<Outcome<string | null, UseCaseRefusal>> {
  const taken = used.flatMap(({ lots, total }) => lots.filter(({ amount }) => amount > 0n).map(({ lotId, from, amount }) => ({ lotId, from, quantity: fromAmount(total.dimension, amount) })));
  if (taken.length === 0) return accept(null);
  const posted = await postStock(work, { kind: "apply", requestId, happenedAt }, async () => accept(applyPosting(await singularLocation(work, "lawn"), taken)));
  return posted.ok ? accept(posted.value.stockPostingId) : posted;
}

async function drawFills(work: Work, form: CompletedForm, registerEntryId: string, used: readonly ReallyUsed[]): Promise<void> {
  const { companyId } = work.company;
  for (const { draw, line } of used) {
    if (draw === null || draw.sprayed.amount === 0n) continue;
    const isMeasured = form.mixes[String(line)]?.measuredBy === "meter";
    await work.tx.fillDraw.create({ data: { companyId, fillId: draw.fill.fillId, visitId: form.visitId, registerEntryId, volume: draw.sprayed.amount, isMeasured } });
  }
}

/** Two days to look again: the day itself and the one after. */
const SECOND_LOOK_DAYS_OPEN = 1;
const SECOND_LOOK_MINUTES = 10;

async function planSecondLook(work: Work, form: CompletedForm, { visit }: VisitOnFile): Promise<string | null> {
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
  const zoneIds = [...new Set(visit.treatments.flatMap((treatment) => treatment.zoneIds))];
  await work.tx.visitTaskZone.createMany({ data: zoneIds.map((zoneId) => ({ companyId, visitId, line: 1, zoneId })) });
  return visitId;
}
