import { afterAll, beforeAll, expect, test } from "vitest";
import { noticeToPrint, signPaper, signToPrint } from "#application/documents/visit-papers-to-print";
import { type CalendarDate } from "#domain/foundation/calendar-date";
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

test("notice and sign are of the visit and its day's person", async () => {
  await inWorkOf(house, at.company, async (work) => {
    const { visitId } = at.visit;
    const own = { subjectId: visitId, operatorId: at.company.owner.personId, warnings: [] };
    expect(valueOf(await noticeToPrint(work, visitId))).toMatchObject(own);
    expect(valueOf(await signToPrint(work, visitId))).toMatchObject({ ...own, data: { kind: "posting-sign", paper: { signs: 1 } } });
    expect(await signToPrint(work, at.mixTicketId)).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  });
});

test("a state without a sign rule on file has no sign", async () => {
  await inWorkOf(house, at.company, async (work) => {
    const asked = { state: "OH", on: "2026-04-14" as CalendarDate, signs: 1, subjectId: at.visit.visitId, about: "Sign", operatorId: null } as const;
    expect(await signPaper(work, asked)).toMatchObject({ ok: false, refusal: { kind: "conflict", sentence: expect.stringContaining("Ohio") as string } });
  });
});
