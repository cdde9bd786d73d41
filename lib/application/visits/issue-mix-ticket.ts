import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { conflict, notFound } from "#application/refusal";
import { toStoredJson } from "#application/stored-json";
import { issueMixTicketSchema } from "#application/visits/issue-mix-ticket.schema";
import { isOfPresentPlan, snapshotOf } from "#application/visits/issued-ticket";
import { visitOnFile } from "#application/visits/read-visit";
import { useCase } from "#application/use-case";

/**
 * Issues a visit's mix ticket: what is worked out now, with everything it was worked out from, as a snapshot that later
 * changes do not alter. A hold that nobody answered keeps it from being issued. Issued again while nothing has changed,
 * the first ticket stands and is answered.
 */
export const issueMixTicket = useCase("visits/issue-mix-ticket", issueMixTicketSchema, async (work, { visitId }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const found = await visitOnFile(work, visitId);
  if (found === undefined) return notFound("visit");
  const { outcome, openHolds, issued, visit, answers, formerAnswers } = found;
  if (visit.state !== "planned") return conflict("This visit is over. A mix ticket is for what is still to be done.");
  if (!outcome.ok) return conflict(`No mix ticket: ${outcome.refusal.refusal.sentence}`);
  if (openHolds.length > 0) {
    const [first] = openHolds;
    const more = openHolds.length === 1 ? "" : ` And ${String(openHolds.length - 1)} more.`;
    return conflict(`No mix ticket while a hold stands. ${first?.what ?? ""}${more}`);
  }
  if (issued !== undefined && isOfPresentPlan(issued, outcome.value)) return accept({ mixTicketId: issued.mixTicketId, number: issued.number });
  const last = await work.tx.mixTicket.findFirst({ where: { companyId }, orderBy: { number: "desc" }, select: { number: true } });
  const number = (last?.number ?? 0) + 1;
  const mixTicketId = work.newId();
  await work.tx.mixTicket.create({
    data: {
      companyId,
      mixTicketId,
      visitId,
      number,
      snapshot: toStoredJson(snapshotOf(outcome.value, answers.filter((answer) => !formerAnswers.includes(answer)))),
      rulesVersion: outcome.value.rulesVersion,
      personId: work.member.personId,
      issuedAt: work.now,
    },
  });
  await writeDeed(work, visitId, { deed: "mix-ticket-issued", details: { number, visit: visit.name, street: visit.property.street } });
  return accept({ mixTicketId, number });
});
