import { afterAll, beforeAll, expect, test } from "vitest";
import { orderDay } from "#application/days/order-day";
import { pinVisit } from "#application/days/pin-visit";
import { restoreOrder } from "#application/days/restore-order";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aDayOf, aShop, aVisit, stopsOf, versionOf } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";
import { placeVisit } from "#application/days/place-visit";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const idsOf = async (routeDayId: string) => (await stopsOf(house, routeDayId)).map(({ visit_id }) => visit_id);
const drivenOf = async (routeDayId: string) => (await stopsOf(house, routeDayId)).reduce((sum, stop) => sum + (stop.drive_minutes ?? 0), 0);
const THERE_AND_BACK = [{ east: 0.06 }, { east: 0.01 }, { east: 0.05 }, { east: 0.02 }];

test("without the shop's position nothing is changed and what is missing is said; so for a property's", async () => {
  const nowhere = await aCompany(house, "Nowhere Turf");
  const { routeDayId } = await aDayOf(house, nowhere, [{}, {}]);
  const version = await versionOf(house, routeDayId);
  const refused = await orderDay(house, nowhere.owner.key, { routeDayId, version });
  expect(refused).toMatchObject({ ok: false, refusal: { kind: "conflict", sentence: "The day was left as it is. Where the shop is is not on file." } });
  await aShop(house, nowhere);
  const { visitId } = await aVisit(house, nowhere, { east: null });
  valueOf(await placeVisit(house, nowhere.owner.key, { visitId, routeDayId }));
  const homeless = await orderDay(house, nowhere.owner.key, { routeDayId, version: await versionOf(house, routeDayId) });
  expect(homeless).toMatchObject({ ok: false, refusal: { sentence: expect.stringMatching(/^The day was left as it is. Where \d+ Sorrel Lane lies is not on file.$/u) as unknown } });
  expect((await stopsOf(house, routeDayId)).map((stop) => stop.arrives_at_minute)).toEqual([null, null, null]);
});

test("the stops stand along the road and have times; one press gives the old order back", async () => {
  await aShop(house, company);
  const { routeDayId, visitIds } = await aDayOf(house, company, THERE_AND_BACK);
  const drivenBefore = await drivenOf(routeDayId);
  const answer = valueOf(await orderDay(house, company.owner.key, { routeDayId, version: await versionOf(house, routeDayId) }));
  if (answer.kind !== "ordered") throw new Error("The day was not ordered.");
  expect(await drivenOf(routeDayId)).toBeLessThan(drivenBefore);
  expect(answer).toMatchObject({ orderBefore: visitIds, leftOut: [] });
  const times = (await stopsOf(house, routeDayId)).map((stop) => stop.arrives_at_minute ?? 0);
  expect(times).toEqual([...times].sort((one, other) => one - other));
  expect(times[0]).toBeGreaterThan(480);
  valueOf(await restoreOrder(house, company.owner.key, { routeDayId, version: answer.version, order: answer.orderBefore.join(" ") }));
  expect(await idsOf(routeDayId)).toEqual(visitIds);
});

test("a pinned visit and one that somebody made already keep their places; windows are kept", async () => {
  await aShop(house, company);
  const { routeDayId, visitIds: [far = "", early = "", done = "", late = ""] } = await aDayOf(house, company, [
    { east: 0.06 }, { east: 0.01, window: { fromMinute: 480, untilMinute: 540 } }, { east: 0.05 }, { east: 0.02, window: { fromMinute: 780, untilMinute: 840 } },
  ]);
  valueOf(await pinVisit(house, company.owner.key, { visitId: far, pin: "pin" }));
  await house.ask("update visit set state = 'done' where visit_id = $1", [done]);
  valueOf(await orderDay(house, company.owner.key, { routeDayId, version: await versionOf(house, routeDayId) }));
  expect(await idsOf(routeDayId)).toEqual([far, early, done, late]);
  expect((await stopsOf(house, routeDayId)).at(-1)?.arrives_at_minute).toBe(780);
});

test("what finds no place is named, and nothing changes until it is asked for", async () => {
  await aShop(house, company);
  const { routeDayId, visitIds } = await aDayOf(house, company, [{ serviceMinutes: 300 }, { serviceMinutes: 300 }]);
  const version = await versionOf(house, routeDayId);
  const before = await house.books();
  const told = valueOf(await orderDay(house, company.owner.key, { routeDayId, version }));
  expect(told).toMatchObject({ kind: "does-not-fit", leftOut: [{ sentence: expect.stringContaining("the day ends at 16:30") as unknown }] });
  expect(await house.books()).toEqual(before);
  const done = valueOf(await orderDay(house, company.owner.key, { routeDayId, version, withoutPlace: "take-off" }));
  if (done.kind !== "ordered") throw new Error("The day was not ordered.");
  expect(await idsOf(routeDayId)).toHaveLength(1);
  expect(done.leftOut.map(({ visitId }) => visitId).concat(await idsOf(routeDayId)).sort()).toEqual([...visitIds].sort());
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "day-ordered", details: { stops: 1, takenOff: 1 } });
});

test("two people order at once: one of them does, the other is told, and the day is whole", async () => {
  await aShop(house, company);
  const { routeDayId, visitIds } = await aDayOf(house, company, THERE_AND_BACK);
  const form = { routeDayId, version: await versionOf(house, routeDayId) };
  const answers = await Promise.all([orderDay(house, company.owner.key, form), orderDay(house, company.owner.key, form)]);
  expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
  expect(answers.filter((answer) => !answer.ok && answer.refusal.kind === "conflict")).toHaveLength(1);
  const stops = await stopsOf(house, routeDayId);
  expect(stops.map(({ position }) => position)).toEqual([1, 2, 3, 4]);
  expect(stops.map(({ visit_id }) => visit_id).sort()).toEqual([...visitIds].sort());
});

test("a day without stops has no order, and a day that is not there is not found", async () => {
  const { routeDayId } = await aDayOf(house, company, []);
  expect(await orderDay(house, company.owner.key, { routeDayId, version: 1 })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  expect(await orderDay(house, company.owner.key, { routeDayId: house.newId(), version: 1 })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
