import { afterAll, beforeAll, expect, test } from "vitest";
import { addZone } from "#application/properties/add-zone";
import { callOffVisit } from "#application/visits/call-off-visit";
import { changeVisitTask } from "#application/visits/change-visit-task";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { zoneForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";
import { aPlannedVisit } from "../../support/season";
import { aTank } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
let visit: Awaited<ReturnType<typeof aPlannedVisit>>;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const change = (more: object = {}) =>
  changeVisitTask(house, company.owner.key, { visitId: visit.visitId, version: 1, line: 1, rate: "2 lb/1,000 sq ft", lawns: { [visit.zoneId]: "yes" }, equipmentId: "", ...more });

test("rate, lawns and equipment change, the minutes are counted anew, and the trail keeps both", async () => {
  visit = await aPlannedVisit(house, company);
  const equipmentId = await aTank(house, company);
  const { zoneId } = valueOf(await addZone(house, company.owner.key, { propertyId: visit.propertyId, ...zoneForm(), name: "Back", measure: { kind: "area", area: "10,000 sq ft" } }));
  expect(valueOf(await change({ lawns: { [zoneId]: "yes" }, equipmentId }))).toEqual({ visitId: visit.visitId, version: 2 });
  expect(await house.ask("select rate_text, equipment_id from visit_task where visit_id = $1", [visit.visitId])).toEqual([{ rate_text: "2 lb/1,000 sq ft", equipment_id: equipmentId }]);
  expect(await house.ask("select zone_id from visit_task_zone where visit_id = $1", [visit.visitId])).toEqual([{ zone_id: zoneId }]);
  expect(await house.ask("select service_minutes from visit where visit_id = $1", [visit.visitId])).toEqual([{ service_minutes: 48 }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({
    deed: "visit-task-changed", details: { before: { rate: "2.5 lb/1,000 sq ft", lawns: [visit.zoneId] }, after: { rate: "2 lb/1,000 sq ft", lawns: [zoneId] } },
  });
});

test("above the label, without a rate, on no lawn, with unknown equipment or an older version nothing changes", async () => {
  visit = await aPlannedVisit(house, company);
  const before = await house.books();
  expect(await change({ rate: "3.1 lb/1,000 sq ft" })).toMatchObject({ refusal: { fields: { rate: expect.stringContaining("highest") as string } } });
  expect(await change({ rate: "" })).toMatchObject({ refusal: { fields: { rate: A_SENTENCE } } });
  expect(await change({ lawns: {} })).toMatchObject({ refusal: { fields: { lawns: A_SENTENCE } } });
  expect(await change({ lawns: { [house.newId()]: "yes" } })).toMatchObject({ refusal: { fields: { lawns: A_SENTENCE } } });
  expect(await change({ equipmentId: house.newId() })).toMatchObject({ refusal: { fields: { equipmentId: A_SENTENCE } } });
  expect(await change({ version: 2 })).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await change({ line: 2 })).toMatchObject({ refusal: { kind: "not-found" } });
  expect(await house.books()).toEqual(before);
});

test("a visit that is called off changes no more", async () => {
  visit = await aPlannedVisit(house, company);
  valueOf(await callOffVisit(house, company.owner.key, { visitId: visit.visitId, version: 1, reason: "Rain" }));
  expect(await change({ version: 2 })).toMatchObject({ refusal: { kind: "conflict" } });
});

test("the share of spot work changes, a share that is none changes nothing, and all over is said by leaving it empty", async () => {
  visit = await aPlannedVisit(house, company);
  const shareOf = async () => (await house.ask<{ share: number | null }>("select spot_share_basis_points as share from visit_task where visit_id = $1", [visit.visitId]))[0]?.share;
  valueOf(await change({ spotShare: "5%" }));
  expect(await shareOf()).toBe(500);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ details: { before: { rate: "2.5 lb/1,000 sq ft" }, after: { spots: "5%" } } });
  expect(await change({ version: 2, spotShare: "120%" })).toMatchObject({ refusal: { fields: { spotShare: A_SENTENCE } } });
  expect(await change({ version: 2, spotShare: "none", rate: "9 lb/1,000 sq ft" })).toMatchObject({ refusal: { fields: { rate: expect.stringContaining("highest") as string } } });
  valueOf(await change({ version: 2, spotShare: "" }));
  expect(await shareOf()).toBeNull();
});
