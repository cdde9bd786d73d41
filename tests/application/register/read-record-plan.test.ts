import { expect, test } from "vitest";
import { readRecordPlan } from "#application/register/read-record-plan";
import { aCompany, valueOf } from "../../support/crew";
import { aFedVisit } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

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
