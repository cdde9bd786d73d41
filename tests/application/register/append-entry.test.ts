import { expect, test } from "vitest";
import { appendRecord, BEFORE_THE_FIRST } from "#application/register/append-entry";
import { recordToWrite } from "#application/register/complete-visit";
import { completeVisitSchema } from "#application/register/complete-visit.schema";
import { type Work } from "#application/use-case";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aCrewDay, aFedVisit, completeForm, type CrewDay, inWorkOf } from "../../support/crew-day";
import { firstBroken } from "../../support/ledger";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

/** Appends the record of a visit of its own, and does something more in the same transaction. */
async function append(of: TestCompany, ofDay: CrewDay, more: (work: Work) => Promise<void> = () => Promise.resolve()) {
  const form = completeVisitSchema.parse(completeForm(house, of.owner.personId, await aFedVisit(house, of, ofDay)));
  return inWorkOf(house, of, async (work) => {
    const { content, startedAt, endedAt } = valueOf(await recordToWrite(work, form));
    const { requestId, visitId, applicatorId } = form;
    const entry = await appendRecord(work, { requestId, visitId, content, startedAt, endedAt, applicatorId, stockPostingId: null });
    await more(work);
    return { ...entry, content };
  });
}

async function rowOf(registerEntryId: string) {
  const [row] = await house.ask<{ number: number; kind: string; content: string; previous_hash: Buffer; hash: Buffer; person_id: string; written_at: Date }>(
    "select number, kind, content, previous_hash, hash, person_id, written_at from register_entry where register_entry_id = $1",
    [registerEntryId],
  );
  if (row === undefined) throw new Error("the entry was written");
  return row;
}

test("the first entry follows zero bytes, the next follows the first, and the chain holds when it is counted anew", async () => {
  const first = await append(company, day);
  const second = await append(company, day);
  expect([first.number, second.number]).toEqual([1, 2]);
  const [before, after] = [await rowOf(first.registerEntryId), await rowOf(second.registerEntryId)];
  expect(new Uint8Array(before.previous_hash)).toEqual(BEFORE_THE_FIRST);
  expect(after.previous_hash).toEqual(before.hash);
  expect(await firstBroken(house, company.companyId)).toBe(null);
  expect(after).toMatchObject({ number: 2, kind: "record", person_id: company.owner.personId, written_at: house.now() });
});

test("the bytes are those of the content with its keys in order", async () => {
  const { registerEntryId, content } = await append(company, day);
  const { content: text } = await rowOf(registerEntryId);
  const read = JSON.parse(text) as object;
  expect(read).toEqual(content);
  expect(Object.keys(read)).toEqual(Object.keys(content).toSorted());
});

test("what is rolled back leaves its number to the next", async () => {
  const [row] = await house.ask<{ last: number }>("select coalesce(max(number), 0) as last from register_entry where company_id = $1", [company.companyId]);
  await expect(append(company, day, () => Promise.reject(new Error("the power went out")))).rejects.toThrow("the power went out");
  expect((await append(company, day)).number).toBe((row?.last ?? Number.NaN) + 1);
  expect(await firstBroken(house, company.companyId)).toBe(null);
});

test("another company's register starts at one, after zero bytes", async () => {
  const other = await aCompany(house, "Other Turf");
  const { number, registerEntryId } = await append(other, await aCrewDay(house, other));
  expect(number).toBe(1);
  expect(new Uint8Array((await rowOf(registerEntryId)).previous_hash)).toEqual(BEFORE_THE_FIRST);
});
