import { afterAll, beforeAll, expect, test } from "vitest";
import { readDay } from "#application/days/read-day";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aDayOf, aVisit, DAY } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("open are planned visits that are due and on no truck, the first to close first, each with what is known against it", async () => {
  const later = await aVisit(house, company, { closesOn: "2026-04-30" });
  const past = await aVisit(house, company, { closesOn: "2026-04-13" });
  const sooner = await aVisit(house, company, { closesOn: "2026-04-20" });
  const paused = await aVisit(house, company, { closesOn: "2026-04-21" });
  const left = await aVisit(house, company, { closesOn: "2026-04-22" });
  const bare = await aVisit(house, company, { closesOn: "2026-04-23" });
  await aVisit(house, company, { opensOn: "2026-04-15" });
  await aVisit(house, company, { state: "done" });
  await aDayOf(house, company, [{}]);
  const stand = (standing: string, propertyId: string) =>
    house.ask("update client set standing = $1 where client_id = (select client_id from property where property_id = $2)", [standing, propertyId]);
  await stand("paused", paused.propertyId);
  await stand("left", left.propertyId);
  await house.ask("update zone set removed_at = now() where zone_id = $1", [bare.zoneId]);
  const { open } = valueOf(await readDay(house, company.owner.key, { date: DAY }));
  expect(open.count).toBe(6);
  expect(open.visits.map(({ visitId, isPastItsWindow, against }) => [visitId, isPastItsWindow, against])).toEqual([
    [past.visitId, true, "Its window closed on Apr 13, 2026."],
    [sooner.visitId, false, null],
    [paused.visitId, false, "The customer is paused."],
    [left.visitId, false, "The customer has left."],
    [bare.visitId, false, "No lawn is measured there."],
    [later.visitId, false, null],
  ]);
});

test("another company's visits are not seen", async () => {
  const other = await aCompany(house, "Bluestem Turf");
  expect(valueOf(await readDay(house, other.owner.key, { date: DAY })).open).toEqual({ count: 0, visits: [] });
});
