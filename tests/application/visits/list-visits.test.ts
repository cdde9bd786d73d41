import { afterAll, beforeAll, expect, test } from "vitest";
import { callOffVisit } from "#application/visits/call-off-visit";
import { listVisits, standingOf } from "#application/visits/list-visits";
import { planVisit } from "#application/visits/plan-visit";
import { VISIT_STANDINGS, type VisitStanding } from "#domain/scheduling/visit-standing";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aZone } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { aLabeledFeed, anEnrollment, putOnDay, visitForm } from "../../support/season";

let house: TestHouse;
let company: TestCompany;
let on: { zoneId: string; propertyId: string; productId: string };
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
  on = { ...(await aZone(house, company)), productId: await aLabeledFeed(house, company) };
  const plan = (name: string, opensOn: string, closesOn: string) => planVisit(house, company.owner.key, { ...visitForm(house, on), name, opensOn, closesOn }).then(valueOf);
  await plan("waiting", "2026-04-15", "2026-04-30");
  await plan("open", "2026-04-01", "2026-04-14");
  await plan("past-its-window", "2026-04-01", "2026-04-13");
  await putOnDay(house, company, (await plan("on-a-day", "2026-04-01", "2026-04-13")).visitId, "2026-04-14");
  const { visitId } = await plan("not-done", "2026-04-01", "2026-04-30");
  valueOf(await callOffVisit(house, company.owner.key, { visitId, version: 1, reason: "Rain" }));
});
afterAll(() => house.close());

const list = async (filter: Parameters<typeof listVisits>[2]) => valueOf(await listVisits(house, company.owner.key, filter));

test.each(VISIT_STANDINGS)("asked for %s, only visits that stand so come", async (standing: VisitStanding) => {
  const { visits } = await list({ standing, propertyId: on.propertyId });
  expect(visits.map(({ name }) => name)).toEqual(standing === "done" || standing === "part-done" ? [] : [standing]);
  for (const visit of visits) expect(standingOf(visit, "2026-04-14" as Parameters<typeof standingOf>[1])).toBe(standing);
});

test("all come by when they open, with what goes down by name", async () => {
  const { visits, productNames, today } = await list({ propertyId: on.propertyId });
  expect(visits).toHaveLength(5);
  expect(visits.map(({ opensOn }) => opensOn)).toEqual(visits.map(({ opensOn }) => opensOn).toSorted());
  expect([productNames.get(on.productId), today]).toEqual([expect.stringContaining("Greenmere") as string, "2026-04-14"]);
});

test("open on a date are the planned ones whose window holds it, at its ends too", async () => {
  const names = async (openOn: string) => (await list({ openOn, propertyId: on.propertyId })).visits.map(({ name }) => name).sort();
  expect(await names("2026-04-14")).toEqual(["open"]);
  expect(await names("2026-04-13")).toEqual(["on-a-day", "open", "past-its-window"]);
  expect(await names("2026-04-30")).toEqual(["waiting"]);
  expect(await names("2026-05-01")).toEqual([]);
});

test("one round's visits, and of another company none", async () => {
  const { roundId, visitId } = await anEnrollment(house, company);
  expect((await list({ roundId })).visits.map((visit) => visit.visitId)).toEqual([visitId]);
  const other = await aCompany(house, "Other Turf");
  expect(valueOf(await listVisits(house, other.owner.key, { roundId })).visits).toEqual([]);
});
