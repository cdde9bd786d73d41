import { afterAll, beforeAll, expect, test } from "vitest";
import { printMixTicket } from "#application/documents/print-mix-ticket";
import { readIssuedPaper } from "#application/documents/read-issued-paper";
import { aCompany, aMember, valueOf } from "../../support/crew";
import { aPrintedDay, type PrintedDay } from "../../support/documents";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let at: PrintedDay;
let issuedPaperId: string;
beforeAll(async () => {
  house = await openHouse();
  at = await aPrintedDay(house);
  ({ issuedPaperId } = valueOf(await printMixTicket(house, at.company.owner.key, { mixTicketId: at.mixTicketId })));
});
afterAll(() => house.close());

test("draws the paper again and writes nothing", async () => {
  const before = await house.books();
  const first = valueOf(await readIssuedPaper(house, at.company.owner.key, { issuedPaperId }));
  const second = valueOf(await readIssuedPaper(house, at.company.owner.key, { issuedPaperId }));
  expect(first.pdf.equals(second.pdf)).toBe(true);
  expect(first.pdf.subarray(0, 5).toString()).toBe("%PDF-");
  expect(await house.books()).toEqual(before);
});

test("is not found for another company, for a role that may not print it, nor as a packet when it is none", async () => {
  const other = await aCompany(house, "Another Turf");
  const inspector = await aMember(house, at.company, "inspector");
  const refused = { ok: false, refusal: { kind: "not-found" } };
  expect(await readIssuedPaper(house, other.owner.key, { issuedPaperId })).toMatchObject(refused);
  expect(await readIssuedPaper(house, inspector.key, { issuedPaperId })).toMatchObject(refused);
  expect(await readIssuedPaper(house, at.company.owner.key, { issuedPaperId, extent: "packet" })).toMatchObject(refused);
  const stranger = await aMember(house, at.company, "technician");
  expect(await readIssuedPaper(house, stranger.key, { issuedPaperId })).toMatchObject({ ok: false, refusal: { kind: "not-allowed" } });
});
