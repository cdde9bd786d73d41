import { afterAll, beforeAll, expect, test } from "vitest";
import { hexOf, isHashOf, readRecord } from "#application/register/read-record";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aCrewDay, aFedVisit, aRecord } from "../../support/crew-day";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("a record is read whole, with who wrote it and whether its bytes are those of its hash", async () => {
  const written = await aRecord(house, company.owner, await aFedVisit(house, company, await aCrewDay(house, company)));
  const { record } = valueOf(await readRecord(house, company.owner.key, { registerEntryId: written.registerEntryId }));
  expect(record).toMatchObject({ number: 1, writtenBy: company.owner.name, isUnaltered: true, previousHash: "00".repeat(32), content: { form: "application-record-1", signature: "A. Owner" } });
  expect(await readRecord(house, company.owner.key, { registerEntryId: house.newId() })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});

test("bytes of another hash are noticed", () => {
  const zero = new Uint8Array(32);
  // SHA-256 of thirty-two zero bytes and the two of "{}".
  const hash = new Uint8Array(Buffer.from("b6a1d1a9", "hex"));
  expect(isHashOf({ previousHash: zero, content: "{}", hash })).toBe(false);
  expect(hexOf(new Uint8Array([0, 255]))).toBe("00ff");
});
