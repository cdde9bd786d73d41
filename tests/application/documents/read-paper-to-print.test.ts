import { afterAll, beforeAll, expect, test } from "vitest";
import { printMixTicket } from "#application/documents/print-mix-ticket";
import { readPaperToPrint } from "#application/documents/read-paper-to-print";
import { aMember, valueOf } from "../../support/crew";
import { anIllinoisVisit, aPrintedDay, type PrintedDay } from "../../support/documents";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let at: PrintedDay;
beforeAll(async () => {
  house = await openHouse();
  at = await aPrintedDay(house);
});
afterAll(() => house.close());

test("says what will be printed and lists earlier issues of the same paper with person and time", async () => {
  const ask = async () => valueOf(await readPaperToPrint(house, at.company.owner.key, { kind: "mix-ticket", subjectId: at.mixTicketId }));
  expect(await ask()).toMatchObject({ why: null, warnings: [], issues: [] });
  valueOf(await printMixTicket(house, at.company.owner.key, { mixTicketId: at.mixTicketId }));
  const { about, issues } = await ask();
  expect(about).toMatch(/^Mix ticket 1, /u);
  expect(issues).toMatchObject([{ kind: "mix-ticket", about, issuedBy: at.company.owner.name, issuedAt: house.now() }]);
});

test("says why nothing can be printed", async () => {
  const { visitId } = await anIllinoisVisit(house, at.company, at.day);
  const preview = valueOf(await readPaperToPrint(house, at.company.owner.key, { kind: "customer-notice", subjectId: visitId }));
  expect(preview.about).toBeNull();
  expect(preview.why).toContain("No mix ticket was issued for this visit.");
});

test("shows an inspector no paper but records", async () => {
  const inspector = await aMember(house, at.company, "inspector");
  expect(await readPaperToPrint(house, inspector.key, { kind: "mix-ticket", subjectId: at.mixTicketId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
