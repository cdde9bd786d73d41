import { afterAll, beforeAll, expect, test } from "vitest";
import { recordToPrint } from "#application/documents/record-to-print";
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

test("is about the register entry, for nobody of the crew, without a warning while the hash fits", async () => {
  const { registerEntryId } = await aRecord(house, at.company.owner, at.visit);
  await inWorkOf(house, at.company, async (work) => {
    expect(valueOf(await recordToPrint(work, registerEntryId))).toMatchObject({ subjectId: registerEntryId, operatorId: null, warnings: [], data: { paper: { amendments: [] } } });
    expect(await recordToPrint(work, at.visit.visitId)).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  });
});
