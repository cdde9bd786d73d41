import { afterAll, beforeAll, expect, test } from "vitest";
import { moveVisit } from "#application/days/move-visit";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aDayOf, aShop, aVisit, DAY, stopsOf } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const idsOf = async (routeDayId: string) => (await stopsOf(house, routeDayId)).map(({ visit_id }) => visit_id);

test("a visit moves to a place of its own truck; a place beyond the last is the last", async () => {
  await aShop(house, company);
  const { routeDayId, visitIds: [one = "", two = "", three = ""] } = await aDayOf(house, company, [{ east: 0.01 }, { east: 0.02 }, { east: 0.03 }]);
  const moved = valueOf(await moveVisit(house, company.owner.key, { visitId: three, routeDayId, position: "1" }));
  expect(await idsOf(routeDayId)).toEqual([three, one, two]);
  expect(moved).toMatchObject({ date: DAY, position: 1, from: { routeDayId, position: 3 } });
  expect(moved.addsMinutes).toBeGreaterThan(0);
  expect(valueOf(await moveVisit(house, company.owner.key, { visitId: three, routeDayId, position: 99 }))).toMatchObject({ position: 3, addsMinutes: -(moved.addsMinutes ?? 0) });
  expect(await idsOf(routeDayId)).toEqual([one, two, three]);
});

test("a visit moves to another truck and day; both are numbered without a gap", async () => {
  const from = await aDayOf(house, company, [{}, {}, {}]);
  const to = await aDayOf(house, company, [{}, {}], "2026-04-15");
  const [one = "", two = "", three = ""] = from.visitIds;
  const answer = valueOf(await moveVisit(house, company.owner.key, { visitId: two, routeDayId: to.routeDayId, position: 2 }));
  expect(answer).toMatchObject({ date: "2026-04-15", from: { routeDayId: from.routeDayId, date: DAY, position: 2 } });
  expect((await stopsOf(house, from.routeDayId)).map((stop) => [stop.visit_id, stop.position])).toEqual([[one, 1], [three, 2]]);
  expect((await stopsOf(house, to.routeDayId)).map((stop) => [stop.visit_id, stop.position])).toEqual([[to.visitIds[0], 1], [two, 2], [to.visitIds[1], 3]]);
});

test("a visit on no day, one that somebody made already, and a day that is not there", async () => {
  const { routeDayId, visitIds: [visitId = ""] } = await aDayOf(house, company, [{}]);
  const open = await aVisit(house, company);
  expect(await moveVisit(house, company.owner.key, { visitId: open.visitId, routeDayId, position: 1 })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  expect(await moveVisit(house, company.owner.key, { visitId, routeDayId: house.newId(), position: 1 })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  await house.ask("update visit set state = 'done' where visit_id = $1", [visitId]);
  expect(await moveVisit(house, company.owner.key, { visitId, routeDayId, position: 1 })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
});

test("a place is a whole number from 1", async () => {
  for (const position of ["0", "-1", "1.5", "first", "201"]) {
    expect(await moveVisit(house, company.owner.key, { visitId: house.newId(), routeDayId: house.newId(), position }), position).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
  }
});
