// Builders: a crew's day whose mix tickets are issued, and papers read back.
import { changeCompany } from "#application/companies/change-company";
import { readIssuedPaper } from "#application/documents/read-issued-paper";
import { printApplicationRecord } from "#application/documents/print-application-record";
import { printMixTicket } from "#application/documents/print-mix-ticket";
import { addLicense } from "#application/people/add-license";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { type SessionKey } from "#adapters/postgres/company-work";
import { aCrewDay, aFedVisit, aGround, aRecord, aVisitWith, type CrewDay, feedAndIron, type Ground } from "./crew-day";
import { aCompany, type TestCompany, type TestMember, valueOf } from "./crew";
import { type TestHouse } from "./house";
import { readPaper, type ReadPaper, wordsIn } from "./read-paper";

export interface PrintedDay {
  readonly company: TestCompany;
  readonly day: CrewDay;
  readonly visit: Ground & { readonly visitId: string };
  readonly mixTicketId: string;
}

/** A company with a phone and an address, and a day with one visit of feed and iron whose mix ticket is issued. */
export async function aPrintedDay(house: TestHouse, name?: string): Promise<PrintedDay> {
  const company = await aCompany(house, name);
  await withPhone(house, company);
  const day = await aCrewDay(house, company);
  const visit = await aFedVisit(house, company, day);
  return { company, day, visit, mixTicketId: await aTicket(house, company, visit.visitId) };
}

/** The company with its phone, address and license number on file. */
export async function withPhone(house: TestHouse, company: TestCompany): Promise<void> {
  const [row] = await house.ask<{ name: string; version: number }>("select name, version from company where company_id = $1", [company.companyId]);
  if (row === undefined) throw new Error("there is no such company");
  valueOf(
    await changeCompany(house, company.owner.key, {
      version: row.version, name: row.name, state: "IN", timeZone: "America/Indiana/Indianapolis", phone: "317-555-0142", address: "41 Depot Street, Millbrook, IN 46000",
      businessLicenseNumber: "DEMO-BL-2207", businessLicenseExpiresOn: "", insuranceExpiresOn: "",
    }),
  );
}

/** The mix ticket of a visit, issued. */
export async function aTicket(house: TestHouse, company: TestCompany, visitId: string): Promise<string> {
  return valueOf(await issueMixTicket(house, company.owner.key, { visitId })).mixTicketId;
}

/** A visit of feed and iron at a property in Illinois, on the day, whose mix ticket is not issued. */
export async function anIllinoisVisit(house: TestHouse, company: TestCompany, day: CrewDay) {
  const ground = await aGround(house, company, "IL");
  return { ...ground, visitId: await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, feedAndIron(day, ground)) };
}

/** An issued paper as bytes, and read back. */
export async function printed(house: TestHouse, key: SessionKey, issuedPaperId: string, extent: "paper" | "packet" = "paper"): Promise<{ readonly pdf: Buffer; readonly paper: ReadPaper; readonly words: string; readonly fileName: string }> {
  const { pdf, fileName } = valueOf(await readIssuedPaper(house, key, { issuedPaperId, extent }));
  const paper = await readPaper(pdf);
  return { pdf, fileName, paper, words: paper.pages.map(({ texts }) => wordsIn(texts)).join(" ") };
}

let licenses = 0;

/** A day under this person, with one visit whose mix ticket is issued. */
export async function aDayOfActor(house: TestHouse, company: TestCompany, { personId }: TestMember): Promise<{ readonly routeDayId: string; readonly visitId: string; readonly mixTicketId: string }> {
  await withPhone(house, company);
  const day = await aCrewDay(house, company);
  if (personId !== company.owner.personId) {
    const license = { personId, kind: "certified-applicator", state: "IN", number: `D-${String((licenses += 1))}`, category: "3b Turf", issuedOn: "2026-01-02", expiresOn: "2026-12-31" } as const;
    valueOf(await addLicense(house, company.owner.key, license));
    await house.ask("update route_day set operator_id = $2 where route_day_id = $1", [day.routeDayId, personId]);
  }
  const { visitId } = await aFedVisit(house, company, day);
  return { routeDayId: day.routeDayId, visitId, mixTicketId: await aTicket(house, company, visitId) };
}

/** A record in the register, to be printed. */
export async function aPrintedRecord(house: TestHouse, company: TestCompany): Promise<string> {
  const day = await aCrewDay(house, company);
  // Early enough to have passed in every time zone that the company may have been moved to.
  return (await aRecord(house, company.owner, await aFedVisit(house, company, day), { startedAt: "6:10", endedAt: "6:50" })).registerEntryId;
}

/** A paper that this person may read: of their own day, or a record for an inspector. */
export async function aPaperFor(house: TestHouse, company: TestCompany, actor: TestMember): Promise<{ readonly kind: "mix-ticket" | "application-record"; readonly subjectId: string; readonly issuedPaperId: string }> {
  const [row] = await house.ask<{ role: string }>("select role from membership where company_id = $1 and person_id = $2", [company.companyId, actor.personId]);
  if (row?.role === "inspector") {
    const subjectId = await aPrintedRecord(house, company);
    const { issuedPaperId } = valueOf(await printApplicationRecord(house, actor.key, { registerEntryId: subjectId }));
    return { kind: "application-record", subjectId, issuedPaperId };
  }
  const { mixTicketId } = await aDayOfActor(house, company, actor);
  const { issuedPaperId } = valueOf(await printMixTicket(house, actor.key, { mixTicketId }));
  return { kind: "mix-ticket", subjectId: mixTicketId, issuedPaperId };
}
