import { z } from "zod";
import { renderPacket } from "#adapters/pdf/render-issued-paper";
import { groupedBy } from "#domain/foundation/grouping";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { US_STATES } from "#domain/company/us-state";
import { writeDeed } from "#application/audit-trail";
import { type DayOnFile, dayOnFile, stopsWithoutTicket } from "#application/documents/day-to-print";
import { keepPaper, type LeftOut, type PaperToPrint, refuseOthersPaper, refuseUnprintable } from "#application/documents/issued-papers";
import { ticketPaper } from "#application/documents/mix-ticket-to-print";
import { noticeOfTicket, signPaper } from "#application/documents/visit-papers-to-print";
import { idField } from "#application/field.schema";
import { notFound, type UseCaseRefusal } from "#application/refusal";
import { useCase, type Work } from "#application/use-case";

/** What a packet would hold, and what it would lack and why. */
export interface Packet {
  readonly papers: readonly PaperToPrint[];
  readonly leftOut: readonly LeftOut[];
}

/** Puts the papers of a day together: its own two, then a mix ticket and a notice for each stop, then signs by state. */
export async function packetOfDay(work: Work, day: DayOnFile): Promise<Packet> {
  const leftOut: LeftOut[] = [...stopsWithoutTicket(day)];
  const tickets: PaperToPrint[] = [];
  const notices: PaperToPrint[] = [];
  for (const { visit, ticket } of day.stops) {
    if (ticket === null) continue;
    tickets.push(await ticketPaper(work, ticket, false));
    const notice = await noticeOfTicket(work, visit, ticket);
    if (notice.ok && notice.value.warnings.length === 0) notices.push(notice.value);
    else leftOut.push({ what: `Customer notice, ${visit.property.street}`, why: notice.ok ? notice.value.warnings.join(" ") : notice.refusal.sentence });
  }
  const signs = await signsOfDay(work, day);
  const papers = [day.routeSheet, day.loadingList, ...tickets, ...notices, ...signs.papers];
  // Drawn as one file first, which unpacks the fonts once: only a packet that can't be drawn is gone through paper by paper.
  const whole = await renderPacket(day.routeSheet.data.paper.frame, papers.map(({ data }) => data));
  const printable: PaperToPrint[] = whole.ok ? [...papers] : [];
  for (const paper of whole.ok ? [] : papers) {
    const refusal = await refuseUnprintable(paper);
    if (refusal === undefined) printable.push(paper);
    else leftOut.push({ what: paper.about, why: refusal.sentence });
  }
  return { papers: printable, leftOut: [...leftOut, ...signs.leftOut] };
}

/** One set of signs for each state, because a sign names the law's words and the company, and no customer. */
async function signsOfDay(work: Work, { stops, date, routeDayId, operatorId, about }: DayOnFile): Promise<Packet> {
  const papers: PaperToPrint[] = [];
  const leftOut: LeftOut[] = [];
  for (const [state, own] of groupedBy(stops.filter(({ wantsSign }) => wantsSign), ({ visit }) => visit.property.state)) {
    const name = `Posting signs for ${US_STATES[state].name}, ${about}`;
    const sign = await signPaper(work, { state, on: date, signs: own.length, subjectId: routeDayId, about: name, operatorId });
    if (sign.ok) papers.push(sign.value);
    else leftOut.push({ what: name, why: sign.refusal.sentence });
  }
  return { papers, leftOut };
}

const printPacketSchema = z.object({ routeDayId: idField });

/**
 * Prints everything of a truck's day that can be printed, each paper issued by itself and all of them kept as one packet,
 * and says what could not be printed and why.
 */
export const printPacket = useCase("documents/print-packet", printPacketSchema, async (work, { routeDayId }): Promise<Outcome<{ issuedPaperId: string; paperIds: readonly string[]; leftOut: readonly LeftOut[] }, UseCaseRefusal>> => {
  const day = await dayOnFile(work, routeDayId);
  if (day === undefined) return notFound("truck on that day");
  const refusal = refuseOthersPaper(work, day);
  if (refusal !== undefined) return { ok: false, refusal };
  const { papers, leftOut } = await packetOfDay(work, day);
  const kept = papers.map((paper) => ({ paper, issuedPaperId: work.newId() }));
  const paperIds = kept.map(({ issuedPaperId }) => issuedPaperId);
  for (const [index, { paper, issuedPaperId }] of kept.entries()) await keepPaper(work, issuedPaperId, paper, index === 0 ? { paperIds, leftOut } : undefined);
  const [issuedPaperId] = paperIds;
  if (issuedPaperId === undefined) return { ok: false, refusal: { kind: "conflict", sentence: `Nothing could be printed. ${leftOut.map(({ why }) => why).join(" ")}` } };
  await writeDeed(work, routeDayId, { deed: "packet-printed", details: { about: day.about, papers: paperIds.length, leftOut: leftOut.length } });
  return accept({ issuedPaperId, paperIds, leftOut });
});
