import { expect, test } from "vitest";
import { fillsInBooks } from "#application/fills/fills-in-books";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/crew";
import { aCleanOut, aRecord, aSharedFill, inWorkOf, tankReadingForm } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { lotOf } from "../../support/shed";

allOnACrewDay("not-known");

async function inBooks(fillId: string) {
  const found = await inWorkOf(house, company, async (work) => fillsInBooks(work, await work.tx.fill.findMany({ where: { companyId: company.companyId, fillId } })));
  const fill = found.get(fillId);
  if (fill === undefined) throw new Error("the fill is on the books");
  return fill;
}

test("a fill has what went in by lot and by product, its draws with their records, and what was found of it last", async () => {
  const { fillId, number, visits } = await aSharedFill(house, company, day);
  const [first] = visits;
  if (first === undefined) throw new Error("three visits share the fill");
  const lotId = await lotOf(house, day.ironId);
  expect(await inBooks(fillId)).toMatchObject({
    ...{ fillId, number, finished: of("gal", 40n), draws: [], rests: [], isPostedAway: false, filledAt: Date.parse("2026-04-14T11:15:00Z") },
    lots: [{ lotId, amount: of("fl oz", 30n).amount }],
    products: [{ productId: day.ironId, amount: of("fl oz", 30n) }],
  });
  const record = await aRecord(house, company.owner, first, { startedAt: "7:16", endedAt: "7:20", mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "10", fillId } } });
  valueOf(await recordTankReading(house, company.owner.key, tankReadingForm(house, day, company.owner.personId, { volume: "28", missingWent: "loss" })));
  const read = await inBooks(fillId);
  expect(read).toMatchObject({
    draws: [{ visitId: first.visitId, registerEntryId: record.registerEntryId, recordNumber: record.number, sprayed: of("gal", 10n), isMeasured: true, endedAt: Date.parse("2026-04-14T11:20:00Z"), fillRestId: null }],
    rests: [{ settledAt: Date.parse("2026-04-14T11:30:00Z"), inTheBooks: of("gal", 30n), left: of("gal", 28n) }],
    isPostedAway: false,
  });
  const [loss] = await house.ask<{ id: string }>("select stock_location_id as id from stock_location where company_id = $1 and kind = 'loss'", [company.companyId]);
  expect(read.rests[0]?.wentToId).toBe(loss?.id);
  // A clean-out of the reading's own minute came after it.
  await aCleanOut(house, company, day);
  expect(await inBooks(fillId)).toMatchObject({ rests: [{ left: of("gal", 28n) }, { inTheBooks: of("gal", 28n), left: of("gal", 0n) }], isPostedAway: true });
});

test("no fill is nothing read", async () => {
  expect(await inWorkOf(house, company, (work) => fillsInBooks(work, []))).toEqual(new Map());
});
