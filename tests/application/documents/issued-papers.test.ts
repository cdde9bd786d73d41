import { afterAll, beforeAll, expect, test } from "vitest";
import { businessOnFile, issuePaper, issuesAbout, paperOnFile, refuseUnprintable } from "#application/documents/issued-papers";
import { mixTicketToPrint } from "#application/documents/mix-ticket-to-print";
import { valueOf } from "../../support/crew";
import { inWorkOf } from "../../support/crew-day";
import { aPrintedDay, type PrintedDay } from "../../support/documents";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let at: PrintedDay;
beforeAll(async () => {
  house = await openHouse();
  at = await aPrintedDay(house);
});
afterAll(() => house.close());

test("keeps what a paper says whole, and lists it among the issues of its subject", async () => {
  await inWorkOf(house, at.company, async (work) => {
    const prepared = await mixTicketToPrint(work, at.mixTicketId);
    const { issuedPaperId } = valueOf(await issuePaper(work, prepared));
    expect((await paperOnFile(work, issuedPaperId))?.stored.data).toEqual(valueOf(prepared).data);
    expect(await issuesAbout(work, [at.mixTicketId], "mix-ticket")).toMatchObject([{ issuedPaperId, packetLeftOut: null }]);
    expect(await issuesAbout(work, [at.mixTicketId], "route-sheet")).toEqual([]);
    expect(await businessOnFile(work)).toMatchObject({ phone: "317-555-0142" });
  });
});

test("refuses what no font can show, and keeps nothing of it", async () => {
  await inWorkOf(house, at.company, async (work) => {
    const paper = valueOf(await mixTicketToPrint(work, at.mixTicketId));
    if (paper.data.kind !== "mix-ticket") throw new Error("a mix ticket was asked for");
    const odd = { ...paper, subjectId: house.newId(), data: { ...paper.data, paper: { ...paper.data.paper, customer: "雪" } } };
    expect((await refuseUnprintable(odd))?.kind).toBe("conflict");
    expect(await issuePaper(work, { ok: true, value: odd })).toMatchObject({ ok: false });
    expect(await issuesAbout(work, [odd.subjectId])).toEqual([]);
  });
});
