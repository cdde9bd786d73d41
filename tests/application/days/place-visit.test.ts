import { afterAll, beforeAll, expect, test } from "vitest";
import { placeVisit } from "#application/days/place-visit";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aDayOf, aRouteDay, aShop, aVisit, DAY, stopsOf } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("a visit goes to the end; without the shop's position nothing has a time, with it everything has", async () => {
  const { routeDayId, visitIds } = await aDayOf(house, company, [{ east: 0.01 }, { east: 0.02 }]);
  expect((await stopsOf(house, routeDayId)).map((stop) => [stop.visit_id, stop.position, stop.arrives_at_minute])).toEqual([[visitIds[0], 1, null], [visitIds[1], 2, null]]);
  await aShop(house, company);
  const { visitId } = await aVisit(house, company, { east: 0.03 });
  const answer = valueOf(await placeVisit(house, company.owner.key, { visitId, routeDayId }));
  expect(answer).toMatchObject({ date: DAY, position: 3 });
  // 0.01 degrees of longitude here are 832.4 m: times 1.3 at 11.176 m/s and two minutes are 217 s each way, there and back.
  // The third stop adds a drive, 30 minutes of work, and 97 s more of the way home: 35.2 minutes between whole ones.
  expect(answer.addsMinutes).toBe(35);
  expect((await stopsOf(house, routeDayId)).map((stop) => [stop.arrives_at_minute, stop.drive_minutes])).toEqual([[484, 4], [518, 4], [551, 4]]);
});

test("a visit is on one day at a time, and one that is done is on none any more", async () => {
  const { routeDayId, visitIds } = await aDayOf(house, company, [{}]);
  expect(await placeVisit(house, company.owner.key, { visitId: visitIds[0] ?? "", routeDayId })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  const { visitId } = await aVisit(house, company, { state: "done" });
  expect(await placeVisit(house, company.owner.key, { visitId, routeDayId })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
});

test("a visit or a day that is not there is not found", async () => {
  const routeDayId = await aRouteDay(house, company);
  const { visitId } = await aVisit(house, company);
  expect(await placeVisit(house, company.owner.key, { visitId, routeDayId: house.newId() })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  expect(await placeVisit(house, company.owner.key, { visitId: house.newId(), routeDayId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
