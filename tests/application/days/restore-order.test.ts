import { afterAll, beforeAll, expect, test } from "vitest";
import { moveVisit } from "#application/days/move-visit";
import { placeVisit } from "#application/days/place-visit";
import { restoreOrder } from "#application/days/restore-order";
import { takeOffDay } from "#application/days/take-off-day";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aDayOf, aRouteDay, stopsOf, versionOf } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const restore = async (routeDayId: string, order: readonly string[], version?: number) =>
  restoreOrder(house, company.owner.key, { routeDayId, version: version ?? (await versionOf(house, routeDayId)), order: order.join(" ") });

test("the stops stand as they stood", async () => {
  const { routeDayId, visitIds } = await aDayOf(house, company, [{}, {}, {}]);
  valueOf(await moveVisit(house, company.owner.key, { visitId: visitIds[2] ?? "", routeDayId, position: 1 }));
  valueOf(await restore(routeDayId, visitIds));
  expect((await stopsOf(house, routeDayId)).map((stop) => [stop.visit_id, stop.position])).toEqual(visitIds.map((visitId, index) => [visitId, index + 1]));
});

test("a day that changed since is left as it is: another version, a stop that is not named, one named twice", async () => {
  const { routeDayId, visitIds: [one = "", two = ""] } = await aDayOf(house, company, [{}, {}]);
  const changed = { ok: false, refusal: { kind: "conflict" } };
  expect(await restore(routeDayId, [two, one], 1)).toMatchObject(changed);
  expect(await restore(routeDayId, [two])).toMatchObject(changed);
  expect(await restore(routeDayId, [one, two, two])).toMatchObject(changed);
  expect((await stopsOf(house, routeDayId)).map(({ visit_id }) => visit_id)).toEqual([one, two]);
});

test("a visit that went to another day meanwhile, or that somebody made, is not fetched back", async () => {
  const { routeDayId, visitIds: [one = "", two = ""] } = await aDayOf(house, company, [{}, {}]);
  valueOf(await takeOffDay(house, company.owner.key, { visitId: two }));
  valueOf(await placeVisit(house, company.owner.key, { visitId: two, routeDayId: await aRouteDay(house, company) }));
  expect(await restore(routeDayId, [one, two])).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  valueOf(await takeOffDay(house, company.owner.key, { visitId: two }));
  await house.ask("update visit set state = 'done' where visit_id = $1", [two]);
  expect(await restore(routeDayId, [one, two])).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
});

test("an order that is no order is refused", async () => {
  for (const order of ["", "first second"]) {
    expect(await restoreOrder(house, company.owner.key, { routeDayId: house.newId(), version: 1, order })).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
  }
});
