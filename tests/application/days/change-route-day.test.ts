import { afterAll, beforeAll, expect, test } from "vitest";
import { changeRouteDay } from "#application/days/change-route-day";
import { aCompany, aPerson, type TestCompany, valueOf } from "../../support/crew";
import { aDayOf, aShop, stopsOf, versionOf } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("another person and other hours; the stops are timed anew", async () => {
  await aShop(house, company);
  const { routeDayId } = await aDayOf(house, company, [{}]);
  const [before] = await stopsOf(house, routeDayId);
  const form = { routeDayId, version: await versionOf(house, routeDayId), operatorId: await aPerson(house, company), startsAt: "07:00", endsAt: "15:00" };
  valueOf(await changeRouteDay(house, company.owner.key, form));
  const [after] = await stopsOf(house, routeDayId);
  expect((before?.arrives_at_minute ?? 0) - (after?.arrives_at_minute ?? 0)).toBe(60);
  // The page of a second person still has the version of before.
  expect(await changeRouteDay(house, company.owner.key, form)).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
});

test("a day or a person that is not there is not found", async () => {
  const { routeDayId } = await aDayOf(house, company, []);
  const form = { routeDayId, version: 1, operatorId: company.owner.personId, startsAt: "07:00", endsAt: "15:00" };
  expect(await changeRouteDay(house, company.owner.key, { ...form, routeDayId: house.newId() })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  expect(await changeRouteDay(house, company.owner.key, { ...form, operatorId: house.newId() })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
