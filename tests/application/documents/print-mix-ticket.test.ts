import { afterAll, beforeAll, expect, test } from "vitest";
import { printMixTicket } from "#application/documents/print-mix-ticket";
import { aCompany, aMember, trailOf, valueOf } from "../../support/crew";
import { aPrintedDay, printed, type PrintedDay } from "../../support/documents";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let at: PrintedDay;
beforeAll(async () => {
  house = await openHouse();
  at = await aPrintedDay(house);
});
afterAll(() => house.close());

const print = async () => valueOf(await printMixTicket(house, at.company.owner.key, { mixTicketId: at.mixTicketId })).issuedPaperId;

test("says amounts, lots, areas and tools as they were issued, and when", async () => {
  const { words, fileName } = await printed(house, at.company.owner.key, await print());
  expect(words).toContain("Mix ticket No. 1 · Tuesday, April 14, 2026");
  // 2.5 lb per 1,000 sq ft on 2,400 and 4,000 sq ft.
  expect(words).toContain("6 lb");
  expect(words).toContain("10 lb");
  expect(words).toContain("GM-1 (taken next)");
  expect(words).toContain("Scale, 24 marks");
  expect(words).toContain("2,400 sq ft");
  expect(words).toMatch(/From mix ticket 1 as issued by Owner of Foxtail Turf, April 14, 2026, \d+:\d\d am/u);
  expect(words).not.toMatch(/[\u202f\u00a0]/u);
  expect(fileName).toBe("mix-ticket-no-1-tuesday-april-14-2026.pdf");
});

test("the same issued paper is the same bytes, and what changes later does not alter it", async () => {
  const issuedPaperId = await print();
  const before = await printed(house, at.company.owner.key, issuedPaperId);
  await house.ask("update product set name = name || ' of another name'");
  await house.ask("update zone set area = area * 2, name = name || ' elsewhere'");
  await house.ask("update company set phone = '317-555-0199' where company_id = $1", [at.company.companyId]);
  const after = await printed(house, at.company.owner.key, issuedPaperId);
  expect(after.pdf.equals(before.pdf)).toBe(true);
  const again = await printed(house, at.company.owner.key, await print());
  expect(again.words).toContain("The plan has changed since this mix ticket was issued.");
  expect(again.words).toContain("6 lb");
});

test("writes the deed, and nobody prints it but the office and the person of the day", async () => {
  await print();
  expect((await trailOf(house, at.company.companyId)).at(-1)).toMatchObject({ deed: "paper-printed", subject_id: at.mixTicketId, details: { kind: "mix-ticket" } });
  const stranger = await aMember(house, at.company, "technician", "A stranger to the day");
  expect(await printMixTicket(house, stranger.key, { mixTicketId: at.mixTicketId })).toMatchObject({ ok: false, refusal: { kind: "not-allowed" } });
});

test("is not found for another company", async () => {
  const other = await aCompany(house, "Another Turf");
  expect(await printMixTicket(house, other.owner.key, { mixTicketId: at.mixTicketId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
