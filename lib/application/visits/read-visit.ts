import { z } from "zod";
import { answerCovering, formerAnswers } from "#domain/foundation/answered-hold";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { holdsOf, type Finding } from "#domain/foundation/finding";
import { accept } from "#domain/foundation/outcome";
import { idField } from "#application/field.schema";
import { notFound } from "#application/refusal";
import { calendarDayOf, dayOf } from "#application/stored-day";
import { visitOnItsDay } from "#application/days/tank-findings";
import { todayOf } from "#application/programs/visits-of-rounds";
import { answersOfVisit, type AnswerOnFile, issuedTicketOf, type IssuedTicket } from "#application/visits/issued-ticket";
import { costOfVisit, type CostOfVisit } from "#application/visits/cost-of-visit";
import { lawnsSeen } from "#application/visits/lawns-seen";
import { heldOf, type TicketOutcome, type WorkedVisit } from "#application/visits/visit-ticket";
import { useCase, type Work } from "#application/use-case";

/** A visit with what is worked out for it now, what was issued, and what was answered. */
export interface VisitOnFile extends WorkedVisit {
  readonly issued: IssuedTicket | undefined;
  readonly answers: readonly AnswerOnFile[];
  /** Those of the answers that cover none of its holds any more: they were given before the plan changed. */
  readonly formerAnswers: readonly AnswerOnFile[];
  /** The holds that nobody has answered; while there is one, no mix ticket is issued. */
  readonly openHolds: readonly Extract<Finding, { level: "hold" }>[];
  readonly record: { readonly registerEntryId: string; readonly number: number } | undefined;
  /** The visit that looks at this one's work again. */
  readonly secondLook: { readonly visitId: string; readonly opensOn: CalendarDate } | undefined;
  /** What the person who looks may do about holds of law: their licenses of the property's state that stand. */
  readonly mayAnswerWith: readonly { readonly licenseId: string; readonly number: string; readonly expiresOn: CalendarDate }[];
}

/** A visit as its pages show it. */
export interface VisitRead extends VisitOnFile {
  /** Undefined also where it was not asked for, and for whoever may not see prices. */
  readonly cost: CostOfVisit | undefined;
  /** What is known of the flowers on its lawns on its day. */
  readonly seen: ReturnType<typeof lawnsSeen>;
}

/** Reads one visit whole, with what the tank plan of its truck's day says at it. Undefined when the company has none of that id. */
export async function visitOnFile(work: Work, visitId: string): Promise<VisitOnFile | undefined> {
  const { companyId } = work.company;
  const found = await visitOnItsDay(work, visitId);
  if (found === undefined) return undefined;
  const { visit, outcome } = found;
  const answers = await answersOfVisit(work, visitId);
  const record = await work.tx.registerEntry.findFirst({ where: { companyId, visitId, kind: "record" }, select: { registerEntryId: true, number: true } });
  const look = await work.tx.visit.findFirst({ where: { companyId, looksAgainAtId: visitId }, select: { visitId: true, opensOn: true } });
  const today = dayOf(todayOf(work));
  const licenses = await work.tx.license.findMany({
    where: {
      ...{ companyId, personId: work.member.personId, state: visit.property.state, kind: "certified-applicator", withdrawnAt: null },
      ...{ expiresOn: { gte: today }, OR: [{ issuedOn: null }, { issuedOn: { lte: today } }] },
    },
    orderBy: { expiresOn: "desc" },
  });
  return {
    ...found,
    issued: await issuedTicketOf(work, visitId),
    answers,
    formerAnswers: formerAnswers(heldOf(outcome).findings, heldOf(outcome).on, answers),
    openHolds: openHolds(outcome, answers),
    record: record ?? undefined,
    secondLook: look === null ? undefined : { visitId: look.visitId, opensOn: calendarDayOf(look.opensOn) },
    mayAnswerWith: licenses.map(({ licenseId, number, expiresOn }) => ({ licenseId, number, expiresOn: calendarDayOf(expiresOn) })),
  };
}

/**
 * The holds that no answer covers. Only a hold of law is answered, by a license holder, and each for itself: the same rule
 * about another lawn, product, figure or day asks anew. The others go when the plan changes.
 */
export function openHolds(outcome: TicketOutcome, answers: readonly AnswerOnFile[]): VisitOnFile["openHolds"] {
  const { findings, on } = heldOf(outcome);
  return holdsOf(findings).filter((hold) => answerCovering(hold, on, answers) === undefined);
}

/** One visit with its mix ticket as it is worked out now, its holds and their answers, and where it is asked for what its products cost. */
export const readVisit = useCase("visits/read-visit", z.object({ visitId: idField, withCost: z.boolean().default(false) }), async (work, { visitId, withCost }) => {
  const found = await visitOnFile(work, visitId);
  if (found === undefined) return notFound("visit");
  const read: VisitRead = { ...found, cost: withCost ? await costOfVisit(work, found) : undefined, seen: lawnsSeen(found, todayOf(work)) };
  return accept(read);
});
