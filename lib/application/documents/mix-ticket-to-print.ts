import { accept, type Outcome } from "#domain/foundation/outcome";
import { answersOnPaper, ticketOnPaper } from "#domain/papers/ticket-on-paper";
import { containersOnHand } from "#application/days/day-facts";
import { visitOnItsDay } from "#application/days/tank-findings";
import { businessOnFile, type PaperToPrint } from "#application/documents/issued-papers";
import { frameOfPaper, fromTicket, licenseOnPaper } from "#application/documents/frame-of-paper";
import { notFound, type UseCaseRefusal } from "#application/refusal";
import { fromStoredJson } from "#application/stored-json";
import { isOfPresentPlan, type IssuedTicket, type TicketSnapshot } from "#application/visits/issued-ticket";
import { type Work } from "#application/use-case";

/** One issued mix ticket by its own id. */
async function issuedTicketOfId(work: Work, mixTicketId: string): Promise<(IssuedTicket & { readonly visitId: string }) | undefined> {
  const { companyId } = work.company;
  const row = await work.tx.mixTicket.findUnique({ where: { companyId_mixTicketId: { companyId, mixTicketId } } });
  if (row === null) return undefined;
  const person = await work.tx.person.findUnique({ where: { companyId_personId: { companyId, personId: row.personId } } });
  return {
    mixTicketId,
    visitId: row.visitId,
    number: row.number,
    issuedAt: row.issuedAt,
    issuedBy: person?.name ?? "",
    snapshot: fromStoredJson(row.snapshot) as TicketSnapshot,
  };
}

/** The name of a truck as papers print it; null for none. */
async function truckOnPaper(work: Work, vehicleId: string | null): Promise<string | null> {
  if (vehicleId === null) return null;
  const { companyId } = work.company;
  const vehicle = await work.tx.vehicle.findUnique({ where: { companyId_vehicleId: { companyId, vehicleId } } });
  return vehicle === null ? null : `Truck ${String(vehicle.number)}, ${vehicle.name}`;
}

/** A mix ticket on paper, as it was issued. What has changed since is a warning beside the button and on the paper. */
export async function mixTicketToPrint(work: Work, mixTicketId: string): Promise<Outcome<PaperToPrint, UseCaseRefusal>> {
  const issued = await issuedTicketOfId(work, mixTicketId);
  if (issued === undefined) return notFound("mix ticket");
  const present = await visitOnItsDay(work, issued.visitId);
  const isStale = present?.visit.state === "planned" && !(present.outcome.ok && isOfPresentPlan(issued, present.outcome.value));
  return accept(await ticketPaper(work, issued, isStale));
}

const STALE = "The plan has changed since this mix ticket was issued. Issue it again before anything is mixed.";

/** The paper of an issued mix ticket. */
export async function ticketPaper(work: Work, issued: IssuedTicket, isStale: boolean): Promise<PaperToPrint> {
  const { mixTicketId, number, issuedAt, snapshot } = issued;
  const { visit, application, question, ticket, findings, answers, aftercare, license, rulesVersion } = snapshot;
  const business = await businessOnFile(work);
  const countedBy = new Map(question.treatments.map(({ productId, onHand }) => [productId, onHand.dimension]));
  const containers = await containersOnHand(work, [...countedBy.keys()], countedBy);
  const paper = ticketOnPaper({
    frame: frameOfPaper(work, business, { title: "Mix ticket", number, on: application.on, createdAt: issuedAt, rulesVersion, source: fromTicket(work, issued) }),
    address: `${visit.property.street}, ${visit.property.city}`,
    customer: `${visit.client.name} · ${visit.name}`,
    question,
    ticket,
    findings,
    answers: answersOnPaper(answers, work.company.timeZone),
    aftercare,
    license: licenseOnPaper(license),
    truck: await truckOnPaper(work, application.vehicleId),
    lotOfProduct: new Map(containers.map(({ productId, lotNumber }) => [productId, lotNumber])),
  });
  return {
    data: { kind: "mix-ticket", paper: isStale ? { ...paper, findings: [{ level: "hold", words: STALE }, ...paper.findings] } : paper },
    subjectId: mixTicketId,
    rulesVersion,
    operatorId: application.operatorId,
    about: `Mix ticket ${String(number)}, ${visit.property.street}`,
    warnings: isStale ? [STALE] : [],
  };
}
