import { afterAll, beforeAll, expect, test } from "vitest";
import { callOffVisit } from "#application/visits/call-off-visit";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";
import { aPlannedVisit, putOnDay } from "../../support/season";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("the visit is not done, leaves its truck's day, and the trail keeps the reason and the day", async () => {
  const { visitId, propertyId } = await aPlannedVisit(house, company);
  await putOnDay(house, company, visitId, "2026-04-16");
  expect(valueOf(await callOffVisit(house, company.owner.key, { visitId, version: 1, reason: " Sold the house " }))).toEqual({ visitId, propertyId });
  expect(await house.ask("select v.state, v.version, s.visit_id as stop from visit v left join stop s using (company_id, visit_id) where v.visit_id = $1", [visitId])).toEqual([{ state: "not-done", version: 2, stop: null }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "visit-called-off", subject_id: visitId, details: { reason: "Sold the house", wasOn: "2026-04-16" } });
});

test("without a reason nothing is called off, and nothing twice", async () => {
  const { visitId } = await aPlannedVisit(house, company);
  expect(await callOffVisit(house, company.owner.key, { visitId, version: 1, reason: " " })).toMatchObject({ refusal: { fields: { reason: A_SENTENCE } } });
  valueOf(await callOffVisit(house, company.owner.key, { visitId, version: 1, reason: "Rain" }));
  expect(await callOffVisit(house, company.owner.key, { visitId, version: 2, reason: "Rain" })).toMatchObject({ refusal: { kind: "conflict" } });
});
