import { afterAll, beforeAll, expect, test } from "vitest";
import { printCustomerNotice } from "#application/documents/print-customer-notice";
import { valueOf } from "../../support/crew";
import { aFedVisit, aRecord } from "../../support/crew-day";
import { anIllinoisVisit, aPrintedDay, aTicket, printed, type PrintedDay } from "../../support/documents";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let at: PrintedDay;
beforeAll(async () => {
  house = await openHouse();
  at = await aPrintedDay(house);
});
afterAll(() => house.close());

const print = (visitId: string) => printCustomerNotice(house, at.company.owner.key, { visitId });
const wordsOf = async (visitId: string) => (await printed(house, at.company.owner.key, valueOf(await print(visitId)).issuedPaperId)).words;

test("before the visit it names day, applicator and services, and leaves the time and the products to write", async () => {
  const words = await wordsOf(at.visit.visitId);
  expect(words).toContain("Tuesday, April 14, 2026");
  expect(words).toContain("Fertilizer");
  expect(words).toContain("Please remove the lawn marker no sooner than the day following the application.");
  expect(words).toContain("Signature of the applicator");
  expect(words).not.toContain("8:00 am");
  // Brands stand with what their labels ask, and not yet as put down.
  expect(words).toMatch(/Service Products Fertilizer The lawn marker/u);
  expect(words).toContain("Times are as planned, for work on Tuesday, April 14, 2026, 7:30 am to 8:04 am. They move with the work.");
  expect(words).toMatch(/Until 12 hours after the work ends, about Tuesday, Apr 14, 2026, 8:04 pm as planned Do not water\. Ironside \d+: “any rain within 12 hours” “12 hours”/u);
});

test("after the visit the record fills in time, products and signature", async () => {
  const done = await aFedVisit(house, at.company, at.day);
  await aTicket(house, at.company, done.visitId);
  await aRecord(house, at.company.owner, done);
  const words = await wordsOf(done.visitId);
  expect(words).toContain("Times count from the work as it was done on Tuesday, April 14, 2026, 8:00 am to 8:45 am.");
  expect(words).toMatch(/Until Tuesday, Apr 14, 2026, 8:45 pm Do not water\./u);
  expect(words).not.toContain("as planned");
  expect(words).toMatch(/Fertilizer Greenmere \d+, Ironside \d+/u);
  expect(words).toContain("Signed. A. Owner, on the screen");
  expect(words).toMatch(/From record \d+ as written by/u);
});

test("without a mix ticket there is none, and a state whose law is not on file gives a paper for the office only", async () => {
  const illinois = await anIllinoisVisit(house, at.company, at.day);
  expect(await print(illinois.visitId)).toMatchObject({ ok: false, refusal: { kind: "conflict", sentence: expect.stringContaining("No mix ticket was issued") as string } });
  await aTicket(house, at.company, illinois.visitId);
  const words = await wordsOf(illinois.visitId);
  expect(words).toContain("For the office only");
  expect(words).toContain("415 ILCS 65/3(c) to (f)");
});

test("without a phone on file the notice is refused for what the law asks", async () => {
  await house.ask("update company set phone = null where company_id = $1", [at.company.companyId]);
  expect(await print(at.visit.visitId)).toMatchObject({ ok: false, refusal: { sentence: expect.stringContaining("phone of the business") as string } });
});
