import { afterAll, beforeAll, expect, test } from "vitest";
import { printPacket } from "#application/documents/print-packet";
import { readPacket } from "#application/documents/read-packet";
import { aCompany, aMember, trailOf, valueOf } from "../../support/crew";
import { anIllinoisVisit, aPrintedDay, aTicket, printed, type PrintedDay } from "../../support/documents";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let at: PrintedDay;
beforeAll(async () => {
  house = await openHouse();
  at = await aPrintedDay(house);
});
afterAll(() => house.close());

const key = () => at.company.owner.key;

test("prints everything of a day in one go, says what it could not print and why, and keeps it as one packet", async () => {
  const { visitId } = await anIllinoisVisit(house, at.company, at.day);
  const before = valueOf(await readPacket(house, key(), { routeDayId: at.day.routeDayId }));
  const answer = valueOf(await printPacket(house, key(), { routeDayId: at.day.routeDayId }));
  expect(before.papers.map(({ kind }) => kind)).toEqual(["route-sheet", "loading-list", "mix-ticket", "customer-notice", "posting-sign"]);
  expect(answer.leftOut).toEqual(before.leftOut);
  expect(answer.leftOut.map(({ why }) => why)).toEqual(["no mix ticket was issued."]);
  const { paper, words, fileName } = await printed(house, key(), answer.issuedPaperId, "packet");
  expect(fileName).toBe("packet-tuesday-april-14-2026.pdf");
  expect(paper.title).toContain("Packet");
  for (const said of ["Route sheet", "Loading list", "Mix ticket", "Notice of lawn care application", "KEEP OFF", "page 1 of"]) expect(words).toContain(said);
  expect((await trailOf(house, at.company.companyId)).at(-1)).toMatchObject({ deed: "packet-printed", details: { papers: 5, leftOut: 1 } });
  expect((await house.ask("select 1 from mix_ticket where visit_id = $1", [visitId])).length).toBe(0);
});

test("the same packet is the same bytes", async () => {
  const { issuedPaperId } = valueOf(await printPacket(house, key(), { routeDayId: at.day.routeDayId }));
  const first = await printed(house, key(), issuedPaperId, "packet");
  await house.ask("update client set name = name || ' Junior'");
  expect((await printed(house, key(), issuedPaperId, "packet")).pdf.equals(first.pdf)).toBe(true);
});

test("a plan that changed after its ticket was issued keeps its papers out of the packet", async () => {
  const other = await aPrintedDay(house, "Second Turf");
  await house.ask("update zone set area = area * 2 where zone_id = $1", [other.visit.frontId]);
  const { leftOut, papers } = valueOf(await readPacket(house, other.company.owner.key, { routeDayId: other.day.routeDayId }));
  expect(leftOut.map(({ why }) => why).join(" ")).toMatch(/the plan has changed since mix ticket 1 was issued/u);
  expect(papers.map(({ kind }) => kind)).toEqual(["route-sheet", "loading-list"]);
});

test("is refused to somebody whose day it is not, and not found for another company", async () => {
  const stranger = await aMember(house, at.company, "applicator", "Not of this day");
  expect(await printPacket(house, stranger.key, { routeDayId: at.day.routeDayId })).toMatchObject({ ok: false, refusal: { kind: "not-allowed" } });
  const elsewhere = await aCompany(house, "Third Turf");
  expect(await printPacket(house, elsewhere.owner.key, { routeDayId: at.day.routeDayId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  await expect(aTicket(house, elsewhere, at.visit.visitId)).rejects.toThrow("Refused");
});
