import { accept, type Outcome } from "#domain/foundation/outcome";
import { statedConstraint } from "#domain/label/aftercare-constraint";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { type CustomerNotice } from "#domain/papers/customer-notice";
import { missingParts } from "#domain/papers/customer-notice";
import { noticeLawOf, signLawOf } from "#domain/papers/laws-of-papers";
import { aftercareAsDone, plannedAftercare } from "#domain/papers/notice-aftercare";
import { noticeAfter, noticeBefore, type NoticedProduct, type NoticeFrame } from "#domain/papers/notice-of-visit";
import { momentOnPaper } from "#domain/papers/paper-time";
import { packOf, RULES_VERSION } from "#domain/rules/packs-on-file";
import { calendarDateIn, type CalendarDate } from "#domain/foundation/calendar-date";
import { type UsState } from "#domain/company/us-state";
import { frameOfPaper, fromPlan, fromTicket, licenseOnPaper } from "#application/documents/frame-of-paper";
import { businessOnFile, type PaperToPrint } from "#application/documents/issued-papers";
import { conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { recordOnFile, type RecordOnFile } from "#application/register/read-record";
import { issuedTicketOf, type IssuedTicket } from "#application/visits/issued-ticket";
import { aftercareOfRecord, spanOfRecord } from "#application/visits/record-aftercare";
import { appliedByPlan, productsOfVisit } from "#application/visits/visit-aftercare";
import { visitRows, type VisitRow } from "#application/visits/visit-rows";
import { type Work } from "#application/use-case";

const NOTICE_TITLE = "Notice of lawn care application";

/** A customer's notice: from the record once the visit is done, else from its mix ticket with room to write. */
export async function noticeToPrint(work: Work, visitId: string): Promise<Outcome<PaperToPrint, UseCaseRefusal>> {
  const [visit] = await visitRows(work, [visitId]);
  if (visit === undefined) return notFound("visit");
  const record = await recordOfVisit(work, visitId);
  if (record !== undefined) return noticeOfRecord(work, visit, record);
  const issued = await issuedTicketOf(work, visitId);
  if (visit.treatments.length === 0) return conflict("Nothing is put down at this visit, so there is no notice to leave.");
  if (visit.state !== "planned") return conflict("This visit is over and has no record, so there is nothing to give notice of.");
  if (issued === undefined) return conflict("No mix ticket was issued for this visit. The notice names what the ticket puts down, so issue it first.");
  return noticeOfTicket(work, visit, issued);
}

/** The notice that goes along to a visit with this mix ticket. */
export async function noticeOfTicket(work: Work, visit: VisitRow, issued: IssuedTicket): Promise<Outcome<PaperToPrint, UseCaseRefusal>> {
  const { application, question, license, aftercare, span } = issued.snapshot;
  const facts = { title: NOTICE_TITLE, on: application.on, createdAt: issued.issuedAt, rulesVersion: RULES_VERSION, source: fromTicket(work, issued) };
  const business = await businessOnFile(work);
  const paper = noticeBefore({
    frame: withoutCompany(frameOfPaper(work, business, facts)),
    business,
    law: lawOfNotice(visit),
    customer: visit.client.name,
    address: `${visit.property.street}, ${visit.property.city}`,
    on: application.on,
    applicator: question.applicator.name,
    license: licenseOnPaper(license),
    products: question.treatments.map(noticedProduct),
    aftercare: plannedAftercare(aftercare, span, productsOfVisit(visit, appliedByPlan(question.treatments, span)), work.company.timeZone),
  });
  return accept(noticePaper(visit, paper, application.operatorId));
}

async function noticeOfRecord(work: Work, visit: VisitRow, { number, content, writtenAt, writtenBy }: RecordOnFile): Promise<Outcome<PaperToPrint, UseCaseRefusal>> {
  const on = calendarDateIn(content.timeZone, Date.parse(content.startedAt));
  const source = `From record ${String(number)} as written by ${writtenBy}, ${momentOnPaper(writtenAt.getTime(), work.company.timeZone)}`;
  const frame = frameOfPaper(work, content.company, { title: NOTICE_TITLE, on, createdAt: writtenAt, rulesVersion: RULES_VERSION, source });
  if (content.treatments.length === 0) return conflict("Nothing was put down at this visit, so there is no notice to leave.");
  const done = spanOfRecord(content);
  const aftercare = await aftercareOfRecord(work, visit, done);
  if (!aftercare.ok) return conflict(aftercare.refusal.sentence);
  // A record from long ago, and one whose lawns were taken off since, is read for no aftercare: that is not nothing to do.
  const steps = aftercare.value.length === 0 ? "not-known" : aftercareAsDone(aftercare.value, done, content.timeZone);
  const notice = noticeAfter(withoutCompany(frame), lawOfNotice(visit), content, steps);
  return accept(noticePaper(visit, notice, content.applicator.personId));
}

function noticePaper(visit: VisitRow, paper: CustomerNotice, operatorId: string): PaperToPrint {
  const office = "The law about this notice is not on file. The paper is for the office only and says so.";
  return {
    data: { kind: "customer-notice", paper },
    subjectId: visit.visitId,
    rulesVersion: RULES_VERSION,
    operatorId,
    about: `Customer notice, ${visit.property.street}`,
    warnings: paper.law.kind === "not-on-file" ? [office, ...missingParts(paper)] : [],
  };
}

function lawOfNotice({ property: { state } }: VisitRow) {
  return noticeLawOf(state, packOf(state));
}

function withoutCompany({ company: _business, ...frame }: ReturnType<typeof frameOfPaper>): NoticeFrame {
  return frame;
}

/** What a label asks of the customer after the work; what the crew minds at the lawn is on the mix ticket. */
const AFTER_THE_WORK = ["people-and-pets", "watering-not-before", "watering-in", "mowing-after", "seeding-after"] as const;

function noticedProduct({ label, use }: TicketTreatment): NoticedProduct {
  return {
    productName: label.productName,
    serviceType: use.serviceType,
    precautions: AFTER_THE_WORK.flatMap((kind) => statedConstraint(use.aftercare, kind).map(({ labelWords }) => labelWords)),
    isRead: AFTER_THE_WORK.every((kind) => use.aftercare.facts[kind] !== "unknown"),
  };
}

async function recordOfVisit(work: Work, visitId: string): Promise<RecordOnFile | undefined> {
  const { companyId } = work.company;
  const entry = await work.tx.registerEntry.findFirst({ where: { companyId, visitId, kind: "record" }, select: { registerEntryId: true } });
  return entry === null ? undefined : recordOnFile(work, entry.registerEntryId);
}

/** The lawn markers for one visit, as the law of its state words them. */
export async function signToPrint(work: Work, visitId: string): Promise<Outcome<PaperToPrint, UseCaseRefusal>> {
  const [visit] = await visitRows(work, [visitId]);
  if (visit === undefined) return notFound("visit");
  const on = visit.stop?.date ?? visit.opensOn;
  return signPaper(work, { state: visit.property.state, on, signs: 1, subjectId: visitId, about: `Posting sign, ${visit.property.street}`, operatorId: visit.stop?.operatorId ?? null });
}

/** What signs are asked for. */
export interface SignsAsked {
  readonly state: UsState;
  readonly on: CalendarDate;
  readonly signs: number;
  readonly subjectId: string;
  readonly about: string;
  readonly operatorId: string | null;
}

/** Signs of a state's law in the company's name. Refused where the rule, or a phone that it asks for, is not on file. */
export async function signPaper(work: Work, { state, on, signs, subjectId, about, operatorId }: SignsAsked): Promise<Outcome<PaperToPrint, UseCaseRefusal>> {
  const law = signLawOf(state, packOf(state));
  if (!law.ok) return conflict(law.refusal.sentence);
  const business = await businessOnFile(work);
  if (business.phone === null && law.value.phrases.some(({ kind }) => kind === "company-phone")) {
    return conflict(`${law.value.citation} asks for the company’s phone on the sign, and none is on file. Enter it under Settings.`);
  }
  const frame = frameOfPaper(work, business, { title: "Posting sign", on, createdAt: work.now, rulesVersion: RULES_VERSION, source: fromPlan(work) });
  return accept({ data: { kind: "posting-sign", paper: { frame, law: law.value, signs } }, subjectId, rulesVersion: RULES_VERSION, operatorId, about, warnings: [] });
}
