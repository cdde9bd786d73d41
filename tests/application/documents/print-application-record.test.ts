import { afterAll, beforeAll, expect, test } from "vitest";
import { printApplicationRecord } from "#application/documents/print-application-record";
import { readRecord } from "#application/register/read-record";
import { aCompany, aMember, valueOf } from "../../support/crew";
import { aRecord } from "../../support/crew-day";
import { aPrintedDay, printed, type PrintedDay } from "../../support/documents";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let at: PrintedDay;
let registerEntryId: string;
beforeAll(async () => {
  house = await openHouse();
  at = await aPrintedDay(house);
  ({ registerEntryId } = await aRecord(house, at.company.owner, at.visit));
});
afterAll(() => house.close());

test("says what was recorded, that amounts were not measured, the lots, and the hash with the one before it", async () => {
  const { issuedPaperId } = valueOf(await printApplicationRecord(house, at.company.owner.key, { registerEntryId }));
  const { words } = await printed(house, at.company.owner.key, issuedPaperId);
  const { record } = valueOf(await readRecord(house, at.company.owner.key, { registerEntryId }));
  expect(words).toMatch(/16 lb, as planned, not measured/u);
  expect(words).toContain("GM-1 (16 lb)");
  expect(words).toContain("8:00 am");
  expect(words).toContain(record.hash);
  expect(words).toContain("0".repeat(64));
  expect(words).toMatch(/County not recorded/u);
  expect(words).toContain("6,400 sq ft");
});

test("an inspector prints it and reads it; the crew does not", async () => {
  const inspector = await aMember(house, at.company, "inspector");
  const { issuedPaperId } = valueOf(await printApplicationRecord(house, inspector.key, { registerEntryId }));
  expect((await printed(house, inspector.key, issuedPaperId)).fileName).toBe("application-record-no-1-tuesday-april-14-2026.pdf");
  const crew = await aMember(house, at.company, "applicator");
  expect(await printApplicationRecord(house, crew.key, { registerEntryId })).toMatchObject({ ok: false, refusal: { kind: "not-allowed" } });
});

test("is not found for another company", async () => {
  const other = await aCompany(house, "Another Turf");
  expect(await printApplicationRecord(house, other.owner.key, { registerEntryId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
