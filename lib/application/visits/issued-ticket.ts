import { type TicketOutcome, type VisitTicket } from "#application/visits/visit-ticket";
import { fromStoredJson, isSameStored } from "#application/stored-json";
import { type Work } from "#application/use-case";
import { type GivenAnswer, readAnsweredHold } from "#domain/foundation/answered-hold";
import { type Finding, type FindingSource } from "#domain/foundation/finding";
import { groupedBy } from "#domain/foundation/grouping";

/** Who answered a hold of law, under which license, and why it does not apply here. */
export type AnswerOnFile = GivenAnswer;

/** A mix ticket as it was issued: everything that it was computed from and everything that it said. */
export interface TicketSnapshot extends VisitTicket {
  readonly form: "mix-ticket-1";
  readonly answers: readonly AnswerOnFile[];
}

export interface IssuedTicket {
  readonly mixTicketId: string;
  readonly number: number;
  readonly issuedAt: Date;
  readonly issuedBy: string;
  readonly snapshot: TicketSnapshot;
}

/**
 * What is kept of a ticket when it is issued.
 * @param answers those that cover its holds
 */
export function snapshotOf(ticket: VisitTicket, answers: readonly AnswerOnFile[]): TicketSnapshot {
  return { form: "mix-ticket-1", ...ticket, answers };
}

/** The answers that license holders gave to holds of some visits, by visit, with three queries for all of them. */
export async function answersOfVisits(work: Work, visitIds: readonly string[]): Promise<ReadonlyMap<string, readonly AnswerOnFile[]>> {
  const { companyId } = work.company;
  const rows = await work.tx.holdAnswer.findMany({ where: { companyId, visitId: { in: [...visitIds] } }, orderBy: { answeredAt: "asc" } });
  const people = await work.tx.person.findMany({ where: { companyId, personId: { in: rows.map(({ personId }) => personId) } }, select: { personId: true, name: true } });
  const licenses = await work.tx.license.findMany({ where: { companyId, licenseId: { in: rows.map(({ licenseId }) => licenseId) } }, select: { licenseId: true, state: true, number: true } });
  const nameOf = new Map(people.map(({ personId, name }) => [personId, name]));
  const licenseOf = new Map(licenses.map(({ licenseId, state, number }) => [licenseId, `${state} ${number}`]));
  const answers = rows.map(({ visitId, rule, answeredHold, reason, personId, licenseId, answeredAt }) => ({
    visitId,
    answer: { rule, answered: readAnsweredHold(answeredHold), reason, by: nameOf.get(personId) ?? "", license: licenseOf.get(licenseId) ?? "", answeredAt: answeredAt.toISOString() },
  }));
  return new Map([...groupedBy(answers, ({ visitId }) => visitId)].map(([visitId, own]) => [visitId, own.map(({ answer }) => answer)]));
}

/** The answers that license holders gave to holds of a visit. */
export async function answersOfVisit(work: Work, visitId: string): Promise<readonly AnswerOnFile[]> {
  return (await answersOfVisits(work, [visitId])).get(visitId) ?? [];
}

/** The last mix ticket of each visit that has one. */
export async function issuedTicketsOf(work: Work, visitIds: readonly string[]): Promise<ReadonlyMap<string, IssuedTicket>> {
  const { companyId } = work.company;
  const rows = await work.tx.mixTicket.findMany({ where: { companyId, visitId: { in: [...visitIds] } }, orderBy: { number: "asc" } });
  const people = await work.tx.person.findMany({ where: { companyId, personId: { in: rows.map(({ personId }) => personId) } } });
  const nameOf = new Map(people.map(({ personId, name }) => [personId, name]));
  return new Map(
    rows.map(({ visitId, mixTicketId, number, issuedAt, personId, snapshot }) => [
      visitId,
      { mixTicketId, number, issuedAt, issuedBy: nameOf.get(personId) ?? "", snapshot: fromStoredJson(snapshot) as TicketSnapshot },
    ]),
  );
}

/** The last mix ticket of a visit, if one was issued. */
export async function issuedTicketOf(work: Work, visitId: string): Promise<IssuedTicket | undefined> {
  return (await issuedTicketsOf(work, [visitId])).get(visitId);
}

/** The ticket that a crew has in hand: the issued one, else what is worked out now; undefined where nothing can be. */
export function ticketInHand(issued: IssuedTicket | undefined, outcome: TicketOutcome): VisitTicket | undefined {
  return issued?.snapshot ?? (outcome.ok ? outcome.value : undefined);
}

/**
 * Whether an issued ticket still says what would be issued now: amounts, day, applicator, aftercare, the rules and what
 * they found alike. Of the findings every hold counts, whoever's it is, since no ticket is issued under one: a shortage in
 * stock too. Of what wants care and of notes all count but the house's own and those of stock: a crew that reads the paper
 * must read what label, law, handbook and the weather as it was entered say now. The house's own follow counts, calibrations
 * and what else is kept up from day to day; they hold nothing back and would make papers old that are still right.
 */
export function isOfPresentPlan({ snapshot }: IssuedTicket, present: VisitTicket): boolean {
  const said = ({ ticket, aftercare, application, span, findings, rulesVersion }: TicketSnapshot | VisitTicket) => ({
    // The strips are what the kept clear area is made of; tickets that were issued before they were kept have none. The
    // steps are words for the same amounts in the same order.
    mixes: ticket.mixes.map((mix) => ({ ...mix, steps: undefined, lawns: mix.lawns.map((lawn) => ({ ...lawn, strips: undefined })) })),
    steps: aftercare.map(({ lawnNames, timeline }) => [lawnNames, timeline.steps]),
    application,
    span,
    findings: saidToCrew(findings),
    rulesVersion,
  });
  return isSameStored(said(snapshot), said(present));
}

const KEPT_UP_FROM_DAY_TO_DAY: ReadonlySet<FindingSource> = new Set(["house", "stock"]);

/** The findings that a ticket must have as they are now, in an order of their own words. */
function saidToCrew(findings: readonly Finding[]): readonly Finding[] {
  const wordsOf = ({ level, rule, what, figure, toDo, citation, about }: Finding) => JSON.stringify([level, rule, what, figure, toDo, citation, about]);
  return findings
    .filter(({ level, source }) => level === "hold" || !KEPT_UP_FROM_DAY_TO_DAY.has(source))
    .toSorted((left, right) => (wordsOf(left) < wordsOf(right) ? -1 : 1));
}
