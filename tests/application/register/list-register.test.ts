import { beforeAll, expect, test } from "vitest";
import { chainStanding, listRegister } from "#application/register/list-register";
import { readRecord } from "#application/register/read-record";
import { aCompany, valueOf } from "../../support/crew";
import { aFedVisit, aRecord } from "../../support/crew-day";
import { firstBroken } from "../../support/ledger";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();
beforeAll(async () => {
  for (const [doneOn, startedAt, endedAt] of [["2026-04-10", "8:00", "8:40"], ["2026-04-12", "23:10", "23:40"], ["2026-04-14", "0:00", "0:20"]] as const) {
    await aRecord(house, company.owner, await aFedVisit(house, company, day), { doneOn, startedAt, endedAt });
  }
});

const list = async (input: Parameters<typeof listRegister>[2] = {}) => valueOf(await listRegister(house, company.owner.key, input));

test("lists the newest first, by local days, with the chain whole whatever the period", async () => {
  const all = await list();
  expect(all.records.map(({ number }) => number)).toEqual([3, 2, 1]);
  expect((await list({ from: "2026-04-12", until: "2026-04-12" })).records.map(({ number }) => number)).toEqual([2]);
  expect((await list({ from: "2026-04-11" })).records.map(({ number }) => number)).toEqual([3, 2]);
  expect((await list({ until: "2026-04-13" })).records.map(({ number }) => number)).toEqual([2, 1]);
  expect((await list({ from: "2026-05-01" })).chain).toEqual({ kind: "whole", entries: 3, lastHash: all.records[0]?.hash });
  expect(await firstBroken(house, company.companyId)).toBe(null);
});

test("another company sees none of it", async () => {
  const other = await aCompany(house, "Other Turf");
  expect(valueOf(await listRegister(house, other.owner.key, {}))).toMatchObject({ records: [], chain: { kind: "whole", entries: 0 } });
  const [record] = (await list()).records;
  expect(await readRecord(house, other.owner.key, { registerEntryId: record?.registerEntryId ?? "" })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});

/** Does to the register what no role of the server may, with its triggers off. */
async function tampered(sql: string): Promise<void> {
  await house.ask("alter table register_entry disable trigger user");
  await house.ask(sql);
  await house.ask("alter table register_entry enable trigger user");
}

test("nobody changes or removes an entry, the owner of the tables neither", async () => {
  await expect(house.ask("update register_entry set content = content || ' '")).rejects.toThrow();
  await expect(house.ask("delete from register_entry")).rejects.toThrow();
});

test("altered bytes are noticed at their number, by the reader and by the one record", async () => {
  const before = await list();
  await tampered("update register_entry set content = replace(content, '\"61\"', '\"62\"') || ' ' where number = 2");
  const after = await list();
  expect(after.chain).toEqual({ kind: "broken", atNumber: 2 });
  expect(await firstBroken(house, company.companyId)).toBe(2);
  expect(after.records.map(({ isUnaltered }) => isUnaltered)).toEqual([true, false, true]);
  await tampered("update register_entry set content = trim(trailing from content) where number = 2");
  expect(await list()).toEqual(before);
});

test("a cut tail leaves a whole chain, and the last hash that was printed is in it no more", async () => {
  const { chain } = await list();
  const printed = chain.kind === "whole" ? chain.lastHash : "";
  await tampered("delete from register_entry where number = 3");
  const cut = await list();
  expect(cut.chain).toMatchObject({ kind: "whole", entries: 2 });
  expect(cut.records.map(({ hash }) => hash)).not.toContain(printed);
});

test("the chain is broken by a gap, by another hash before, and by bytes of another hash", () => {
  const link = (number: number, previousHash: string, hash: string, isUnaltered = true) => ({ number, previousHash, hash, isUnaltered });
  const first = link(1, "00".repeat(32), "aa");
  expect(chainStanding([])).toEqual({ kind: "whole", entries: 0, lastHash: "00".repeat(32) });
  expect(chainStanding([first, link(2, "aa", "bb")])).toEqual({ kind: "whole", entries: 2, lastHash: "bb" });
  expect(chainStanding([first, link(3, "aa", "bb")])).toEqual({ kind: "broken", atNumber: 3 });
  expect(chainStanding([first, link(2, "ab", "bb")])).toEqual({ kind: "broken", atNumber: 2 });
  expect(chainStanding([link(1, "00".repeat(32), "aa", false)])).toEqual({ kind: "broken", atNumber: 1 });
});
