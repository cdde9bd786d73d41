// Builders: a crew's day whose mix tickets are issued, and papers read back.
import { changeCompany } from "#application/companies/change-company";
import { readIssuedPaper } from "#application/documents/read-issued-paper";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { type SessionKey } from "#adapters/postgres/company-work";
import { aCrewDay, aFedVisit, aGround, aVisitWith, type CrewDay, feedAndIron, type Ground } from "./crew-day";
import { aCompany, type TestCompany, valueOf } from "./crew";
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
