import { afterAll, beforeAll, expect, test } from "vitest";
import { callOffVisit } from "#application/visits/call-off-visit";
import { aCompany, type TestCompany } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { writeSeasonRows } from "../../support/season-rows";
import { aPlannedVisit } from "../../support/season";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const callOff = (visitId: string, version: number) => callOffVisit(house, company.owner.key, { visitId, version, reason: "Rain" });

test("a planned visit may change for whoever saw its latest version", async () => {
  const { visitId } = await aPlannedVisit(house, company);
  expect(await callOff(visitId, 2)).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await callOff(visitId, 1)).toMatchObject({ ok: true });
  expect(await callOff(house.newId(), 1)).toMatchObject({ refusal: { kind: "not-found" } });
});

test("a visit of which something was written keeps its plan, whatever its state says", async () => {
  await writeSeasonRows(house, company);
  const [written] = await house.ask<{ visit_id: string; version: number }>("select v.visit_id, v.version from visit v join register_entry r using (company_id, visit_id) where v.state = 'planned'");
  expect(await callOff(written?.visit_id ?? "", written?.version ?? 0)).toMatchObject({ refusal: { kind: "conflict" } });
});
