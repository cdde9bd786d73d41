import { afterAll, beforeAll, expect, test } from "vitest";
import { removeZone } from "#application/properties/remove-zone";
import { callOffVisit } from "#application/visits/call-off-visit";
import { readVisitPlan } from "#application/visits/read-visit-plan";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { anEnrollment, aPlannedVisit } from "../../support/season";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const read = async (visitId: string) => valueOf(await readVisitPlan(house, company.owner.key, { visitId })).visit;

test("the plan says what goes down on which lawns, what the label says to it, and of which program it is", async () => {
  const { visitId, programId, zoneId, productId } = await anEnrollment(house, company);
  const visit = await read(visitId);
  expect(visit).toMatchObject({ standing: "open", hasRecord: false, calledOff: null, program: { programId }, lawns: [{ zoneId, letter: "A", isRemoved: false }] });
  expect(visit.treatments).toMatchObject([{ productId, rateText: "2.5 lb/1,000 sq ft", standing: "within", equipmentName: null, zoneIds: [zoneId], labelRates: { basis: "product-mass-per-area" } }]);
});

test("a lawn that was taken off the plan is still named where the visit was to work it", async () => {
  const { visitId, zoneId } = await aPlannedVisit(house, company);
  valueOf(await removeZone(house, company.owner.key, { zoneId }));
  expect(await read(visitId)).toMatchObject({ program: null, lawns: [{ zoneId, isRemoved: true }] });
});

test("a visit that was called off says why and by whom", async () => {
  const { visitId } = await aPlannedVisit(house, company);
  valueOf(await callOffVisit(house, company.owner.key, { visitId, version: 1, reason: "Rain" }));
  expect(await read(visitId)).toMatchObject({ standing: "not-done", calledOff: { reason: "Rain", by: company.owner.name } });
});

test("another company's visit is none", async () => {
  const other = await aCompany(house, "Other Turf");
  const { visitId } = await aPlannedVisit(house, other);
  expect(await readVisitPlan(house, company.owner.key, { visitId })).toMatchObject({ refusal: { kind: "not-found" } });
});
