import { afterAll, beforeAll, expect, test } from "vitest";
import { restoreOrder } from "#application/days/restore-order";
import { takeOffDay } from "#application/days/take-off-day";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aDayOf, DAY, stopsOf } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("a visit comes off its day, the rest close up, and it can go back where it was", async () => {
  const { routeDayId, visitIds } = await aDayOf(house, company, [{}, {}, {}]);
  const off = valueOf(await takeOffDay(house, company.owner.key, { visitId: visitIds[1] ?? "" }));
  expect(off).toMatchObject({ date: DAY, routeDayId, orderBefore: visitIds });
  expect((await stopsOf(house, routeDayId)).map((stop) => [stop.visit_id, stop.position])).toEqual([[visitIds[0], 1], [visitIds[2], 2]]);
  valueOf(await restoreOrder(house, company.owner.key, { routeDayId, version: off.version, order: off.orderBefore.join(" ") }));
  expect((await stopsOf(house, routeDayId)).map(({ visit_id }) => visit_id)).toEqual(visitIds);
});

test("a second time there is nothing to take off; what somebody did stays; nobody's visit is not found", async () => {
  const { visitIds: [one = "", two = ""] } = await aDayOf(house, company, [{}, {}]);
  valueOf(await takeOffDay(house, company.owner.key, { visitId: one }));
  expect(await takeOffDay(house, company.owner.key, { visitId: one })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  await house.ask("update visit set state = 'part-done' where visit_id = $1", [two]);
  expect(await takeOffDay(house, company.owner.key, { visitId: two })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  expect(await takeOffDay(house, company.owner.key, { visitId: house.newId() })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
