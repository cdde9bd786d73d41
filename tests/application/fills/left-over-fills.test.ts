import { expect, test } from "vitest";
import { leftOverFills } from "#application/fills/left-over-fills";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { valueOf } from "../../support/crew";
import { aCleanOut, aFedVisit, aFill, aRecord, inWorkOf, tankReadingForm } from "../../support/crew-day";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";

eachOnACrewDay();

const AT_SEVEN = new Date("2026-04-14T07:00:00-04:00");
const leftOver = (missingSince: Date | null = null) =>
  inWorkOf(house, company, async (work) => (await leftOverFills(work, missingSince)).map(({ fill, onTop }) => [fill.fillId, onTop.length === 0]));
const measured = async (volume: string, readAt: string) =>
  valueOf(await recordTankReading(house, company.owner.key, tankReadingForm(house, day, company.owner.personId, { volume, readAt, missingWent: "loss" })));
const draw = (fillId: string, amount: string) => ({ mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount, fillId } } }) as const;

test("what is left of a fill is its own visits' until they are recorded, and left over then", async () => {
  expect(await leftOver()).toEqual([]);
  const visit = await aFedVisit(house, company, day);
  const own = await aFill(house, company, day, [visit.visitId]);
  expect(await leftOver()).toEqual([]);
  await aRecord(house, company.owner, visit, draw(own.fillId, "12 gal"));
  expect(await leftOver()).toEqual([[own.fillId, true]]);
  const forNobody = await aFill(house, company, day, [], { filledAt: "7:40" });
  expect(await leftOver()).toEqual([[own.fillId, false], [forNobody.fillId, true]]);
  await aCleanOut(house, company, day, { cleanedAt: "7:30" });
  expect(await leftOver()).toEqual([[forNobody.fillId, true]]);
});

test("less than a mark of the gauge is nothing left over; what was filled on top since comes with a fill, used up or not", async () => {
  const visit = await aFedVisit(house, company, day);
  const under = await aFill(house, company, day, [], { filledAt: "6:30" });
  const own = await aFill(house, company, day, [visit.visitId], { filledAt: "7:01" });
  await aRecord(house, company.owner, visit, { startedAt: "7:05", endedAt: "7:25", ...draw(own.fillId, "39.95 gal") });
  const read = await inWorkOf(house, company, (work) => leftOverFills(work, null));
  expect(read.map(({ fill, onTop }) => [fill.fillId, onTop.map(({ fillId }) => fillId)])).toEqual([[under.fillId, [own.fillId]]]);
});

test("a fill that was emptied has nothing left over, and neither has one whose tank was found empty", async () => {
  const [visit, other] = [await aFedVisit(house, company, day), await aFedVisit(house, company, day)];
  const emptied = await aFill(house, company, day, [visit.visitId], { finished: "12 gal", products: { [day.ironId]: "9 fl oz" } });
  const second = await aFill(house, company, day, [other.visitId], { filledAt: "7:20" });
  await aRecord(house, company.owner, visit, { startedAt: "7:22", endedAt: "7:28", ...draw(emptied.fillId, "12 gal") });
  expect(await leftOver()).toEqual([]);
  await measured("30", "7:35");
  // Measured on the day of its visit: what is there by then is left over.
  expect(await leftOver()).toEqual([[second.fillId, true]]);
  await measured("0", "7:40");
  expect(await leftOver()).toEqual([]);
  // What was missing then may have gone onto a lawn of whose visit nobody has written a record.
  expect(await leftOver(AT_SEVEN)).toEqual([[second.fillId, true]]);
  expect(await leftOver(new Date("2026-04-14T08:00:00-04:00"))).toEqual([]);
});
