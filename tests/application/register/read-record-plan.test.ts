import { expect, test } from "vitest";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { readRecordPlan } from "#application/register/read-record-plan";
import { aCompany, valueOf } from "../../support/crew";
import { aFedVisit, aFill, aJug, aRecord, CREW_DAY, tankReadingForm } from "../../support/crew-day";
import { aLiquid } from "../../support/shed";
import { eachOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

eachOnACrewDay();

test("asks once for each mix, under the line by which the form names it", async () => {
  const visit = await aFedVisit(house, company, day);
  const { lawns, mixes } = valueOf(await readRecordPlan(house, company.owner.key, { visitId: visit.visitId }));
  expect(lawns.map(({ zoneId }) => zoneId)).toEqual([visit.frontId, visit.backId]);
  expect(mixes.map(({ key, kind, equipmentId }) => [key, kind, equipmentId])).toEqual([["1", "granular", null], ["2", "spray", day.sprayerId]]);
  expect(mixes.map(({ mixedAlone }) => mixedAlone?.dimension)).toEqual([undefined, "volume"]);
  expect(mixes.every(({ planned }) => planned !== null && planned.amount > 0n)).toBe(true);
});

test("a product for which no mix can be worked out is asked of too, without a planned amount", async () => {
  const visit = await aFedVisit(house, company, day);
  await house.ask("update visit_task set label_use = 'no such use' where visit_id = $1 and line = 1", [visit.visitId]);
  const { mixes } = valueOf(await readRecordPlan(house, company.owner.key, { visitId: visit.visitId }));
  expect(mixes.find(({ key }) => key === "1")).toMatchObject({ kind: "granular", planned: null });
});

test("there is no plan of a visit of another company", async () => {
  const visit = await aFedVisit(house, company, day);
  const other = await aCompany(house);
  expect(await readRecordPlan(house, other.owner.key, { visitId: visit.visitId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});

test("a spray names the fills that were recorded for its visit, with any of its products and something left, in their order", async () => {
  const [visit, other] = [await aFedVisit(house, company, day), await aFedVisit(house, company, day)];
  const fillIds = async () => valueOf(await readRecordPlan(house, company.owner.key, { visitId: visit.visitId })).mixes.map((mix) => mix.fillIds);
  expect(await fillIds()).toEqual([[], []]);
  const later = await aFill(house, company, day, [visit.visitId], { filledAt: "7:40" });
  const first = await aFill(house, company, day, [other.visitId, visit.visitId], { finished: "8 gal", products: { [day.ironId]: "6 fl oz" } });
  const ofOther = await aFill(house, company, day, [other.visitId]);
  const dyeId = await aLiquid(house, company);
  await aJug(house, company, day, dyeId);
  // Made before the others: on top of them another mix would keep what they left from this visit.
  await aFill(house, company, day, [visit.visitId], { filledAt: "7:10", products: { [dyeId]: "6 fl oz" } });
  expect(await fillIds()).toEqual([[], [first.fillId, later.fillId]]);
  const all = { measuredBy: "meter", amount: "8 gal", fillId: first.fillId } as const;
  await aRecord(house, company.owner, other, { mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": all } });
  // What the other visit did not take of its own fill is left over.
  expect(await fillIds()).toEqual([[], [ofOther.fillId, later.fillId]]);
  // Measured after the visits: what is written down now comes from what was missing then, of both.
  valueOf(await recordTankReading(house, company.owner.key, tankReadingForm(house, day, company.owner.personId, { readOn: CREW_DAY, readAt: "8:50", missingWent: "loss" })));
  expect((await fillIds())[1]).toContain(later.fillId);
});

test("where nothing is left of any of them the last one is named: something came out of it", async () => {
  const [visit, other] = [await aFedVisit(house, company, day), await aFedVisit(house, company, day)];
  const { fillId } = await aFill(house, company, day, [other.visitId, visit.visitId], { finished: "8 gal", products: { [day.ironId]: "6 fl oz" } });
  await aRecord(house, company.owner, other, { mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: "8 gal", fillId } } });
  const { mixes } = valueOf(await readRecordPlan(house, company.owner.key, { visitId: visit.visitId }));
  expect(mixes.map((mix) => mix.fillIds)).toEqual([[], [fillId]]);
});
