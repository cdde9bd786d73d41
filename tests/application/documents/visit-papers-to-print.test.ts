import { afterAll, beforeAll, expect, test } from "vitest";
import { noticeToPrint, signPaper, signToPrint } from "#application/documents/visit-papers-to-print";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { valueOf } from "../../support/crew";
import { aRecord, inWorkOf } from "../../support/crew-day";
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

test("the notice of a record says what is to be done afterwards, and where nobody can work that out any more it says nothing of it", async () => {
  await aRecord(house, at.company.owner, at.visit);
  const aftercareOf = () =>
    inWorkOf(house, at.company, async (work) => {
      const { data } = valueOf(await noticeToPrint(work, at.visit.visitId));
      return data.kind === "customer-notice" ? data.paper.aftercare : undefined;
    });
  expect((await aftercareOf())?.groups).not.toEqual([]);
  await house.ask("update zone set removed_at = now() where zone_id in ($1, $2)", [at.visit.frontId, at.visit.backId]);
  expect(await aftercareOf()).toBeUndefined();
});
