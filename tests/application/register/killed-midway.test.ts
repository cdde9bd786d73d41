// A server that dies before any statement that writes leaves nothing behind, and pressing again writes everything once.
import { afterAll, beforeAll, expect, test } from "vitest";
import { recordFill } from "#application/fills/record-fill";
import { completeVisit } from "#application/register/complete-visit";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aCrewDay, aFedVisit, aFill, completeForm, type CrewDay, fillForm } from "../../support/crew-day";
import { openHouse, type TestHouse } from "../../support/house";
import { type KilledWriters, openWriters, type WriterOrder } from "../../support/killed-writers";
import { unbalanced } from "../../support/ledger";

let house: TestHouse;
let company: TestCompany;
let day: CrewDay;
let writers: KilledWriters;
beforeAll(async () => {
  house = await openHouse();
  writers = openWriters();
  company = await aCompany(house);
  day = await aCrewDay(house, company);
});
afterAll(async () => {
  await writers.close();
  await house.close();
});

const MANY_PROCESSES_MILLISECONDS = 600_000;
/** More statements than any of these use cases sends. */
const MOST_STATEMENTS = 200;

/** Kills a writer before each of its statements in turn; answers with how many it sends when nobody kills it. */
async function killEverywhere(useCase: WriterOrder["useCase"], input: unknown): Promise<number> {
  const before = await house.books();
  const order = { appUrl: house.database.appUrl, useCase, key: company.owner.key, input, nowEpochMilliseconds: house.now().getTime(), sendsIt: false };
  for (let stopsBefore = 1; stopsBefore < MOST_STATEMENTS; stopsBefore += 1) {
    const said = await writers.killAt({ ...order, stopsBefore });
    if (said !== "stopped") {
      expect(said).toMatch(/^done \{"ok":true/u);
      return stopsBefore - 1;
    }
    expect(await house.books(), `killed before statement ${String(stopsBefore)}`).toEqual(before);
  }
  throw new Error("the use case never ends");
}

/** Kills a writer at the moment at which it has sent its commit. */
async function killAtCommit(useCase: WriterOrder["useCase"], input: unknown): Promise<void> {
  const order = { appUrl: house.database.appUrl, useCase, key: company.owner.key, input, nowEpochMilliseconds: house.now().getTime() + 1, stopsBefore: "commit" as const, sendsIt: true };
  expect(await writers.killAt(order)).toBe("stopped");
}

test("a record: nothing or everything, and again once", { timeout: MANY_PROCESSES_MILLISECONDS }, async () => {
  const visit = await aFedVisit(house, company, day);
  const { fillId } = await aFill(house, company, day, [visit.visitId]);
  const mixes = { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "12 gal", fillId } } as const;
  const form = completeForm(house, company.owner.personId, visit, { mixes });
  const statements = await killEverywhere("complete-visit", form);
  expect(statements).toBeGreaterThan(9);
  const written = await house.books();
  const again = valueOf(await completeVisit(house, company.owner.key, form));
  expect(again).toMatchObject({ number: 1 });
  expect(await house.books()).toEqual(written);
  expect([written["register_entry"]?.length, written["fill_draw"]?.length]).toEqual([1, 1]);
  const second = await aFedVisit(house, company, day);
  const secondForm = completeForm(house, company.owner.personId, second, { startedAt: "6:00", endedAt: "6:30", mixes });
  await killAtCommit("complete-visit", secondForm);
  expect(valueOf(await completeVisit(house, company.owner.key, secondForm))).toMatchObject({ number: 2 });
  expect(await house.ask("select count(*)::int as records from register_entry")).toEqual([{ records: 2 }]);
  expect(await house.ask("select kind, count(*)::int as postings from stock_posting where kind in ('apply', 'fill') group by kind order by kind")).toEqual([
    { kind: "apply", postings: 2 }, { kind: "fill", postings: 1 },
  ]);
  expect(await unbalanced(house)).toEqual([]);
});

test("a fill: nothing or everything, and again once", { timeout: MANY_PROCESSES_MILLISECONDS }, async () => {
  const form = fillForm(house, day, [], { filledAt: "6:30" });
  const fills = async () => (await house.ask<{ fills: number }>("select count(*)::int as fills from fill"))[0]?.fills ?? 0;
  const before = await fills();
  expect(await killEverywhere("record-fill", form)).toBeGreaterThan(5);
  valueOf(await recordFill(house, company.owner.key, form));
  expect(await fills()).toBe(before + 1);
  const second = fillForm(house, day, [], { filledAt: "6:40" });
  await killAtCommit("record-fill", second);
  valueOf(await recordFill(house, company.owner.key, second));
  expect(await fills()).toBe(before + 2);
  expect(await unbalanced(house)).toEqual([]);
});
