import { expect, test } from "vitest";
import { completeVisit } from "#application/register/complete-visit";
import { previewRecord } from "#application/register/preview-record";
import { readRecord } from "#application/register/read-record";
import { valueOf } from "../../support/crew";
import { aFedVisit, completeForm } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

test("what is read back is what is then written, and reading back writes nothing", async () => {
  const form = completeForm(house, company.owner.personId, await aFedVisit(house, company, day));
  const before = await house.books();
  const preview = valueOf(await previewRecord(house, company.owner.key, form)).content;
  expect(await house.books()).toEqual(before);
  const { registerEntryId } = valueOf(await completeVisit(house, company.owner.key, form));
  expect(valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record.content).toEqual(preview);
});

test("it refuses what writing would refuse", async () => {
  const visit = await aFedVisit(house, company, day);
  const owner = company.owner.personId;
  const refusalOf = async (change: object) => previewRecord(house, company.owner.key, completeForm(house, owner, visit, change));
  expect(await refusalOf({ endedAt: "7:00" })).toMatchObject({ ok: false, refusal: { fields: { endedAt: "It ended before it started." } } });
  expect(await refusalOf({ mixes: {} })).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
  const form = completeForm(house, owner, visit);
  valueOf(await completeVisit(house, company.owner.key, form));
  expect(await previewRecord(house, company.owner.key, form)).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
});
