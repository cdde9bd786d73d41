import { afterAll, beforeAll, expect, test } from "vitest";
import { dayToOpen, readDay } from "#application/days/read-day";
import { enterForecast } from "#application/days/enter-forecast";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { countingHouse } from "../../support/counted-queries";
import { aDayOf, aFeedOnHand, aShop, aVisit, DAY } from "../../support/days";
import { aVehicle } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test.each([
  ["2026-04-14T18:59:59Z", "2026-04-14", "2026-04-14"],
  ["2026-04-14T19:00:00Z", "2026-04-14", "2026-04-15"],
  ["2026-04-15T03:59:59Z", "2026-04-14", "2026-04-15"],
  ["2026-04-15T04:00:00Z", "2026-04-15", "2026-04-15"],
])("at %s in Indiana today is %s and the place opens on %s", (moment, today, opensOn) => {
  expect(dayToOpen(new Date(moment), "America/Indiana/Indianapolis")).toEqual({ today, opensOn });
});

test("a day on which nothing is set says which trucks and people there are, and what is open", async () => {
  const vehicleId = await aVehicle(house, company);
  const { visitId } = await aVisit(house, company, { opensOn: "2026-03-01", closesOn: "2026-03-10" });
  const day = valueOf(await readDay(house, company.owner.key, { date: "2026-03-05" }));
  expect(day).toMatchObject({ date: "2026-03-05", today: DAY, forecast: null, trucks: [], causes: [], knowsShop: false, totals: { stops: 0, held: 0, done: 0, withoutTicket: 0 } });
  expect(day.freeVehicles.map((vehicle) => vehicle.vehicleId)).toContain(vehicleId);
  expect(day.people.map(({ personId }) => personId)).toEqual([company.owner.personId]);
  expect(day.open.visits.map((visit) => visit.visitId)).toEqual([visitId]);
});

test("trucks by their number, stops in their order, causes over the day, totals and forecast", async () => {
  await aShop(house, company);
  const productId = await aFeedOnHand(house, company);
  const first = await aDayOf(house, company, [{ productId }, { productId, state: "planned" }]);
  const second = await aDayOf(house, company, [{ productId }, {}]);
  await house.ask("update visit set state = 'done' where visit_id = $1", [second.visitIds[1]]);
  valueOf(await enterForecast(house, company.owner.key, { date: DAY, highF: "71", followingHighsF: { next: "74", second: "", third: "" }, source: "Weather radio" }));
  const day = valueOf(await readDay(house, company.owner.key, { date: "" }));
  expect(day).toMatchObject({ date: DAY, knowsShop: true, forecast: { highF: 71, followingHighsF: [74, null, null], source: "Weather radio" }, totals: { stops: 4, done: 1, withoutTicket: 3 } });
  expect(day.trucks.map(({ routeDayId, stops }) => [routeDayId, stops.map(({ visit }) => visit.visitId)])).toEqual([
    [first.routeDayId, first.visitIds], [second.routeDayId, second.visitIds],
  ]);
  // The truck has no spreader: one cause for three stops.
  expect(day.causes).toContainEqual(expect.objectContaining({ at: [...first.visitIds, second.visitIds[0]], finding: expect.objectContaining({ rule: "no-gear" }) as unknown }));
});

test("six stops ask the database as often as two", async () => {
  const productId = await aFeedOnHand(house, company);
  await aDayOf(house, company, [{ productId }, { productId }], "2026-04-20");
  const { routeDayId } = await aDayOf(house, company, Array.from({ length: 6 }, () => ({ productId })), "2026-04-21");
  const callsFor = async (date: string) => {
    const counting = countingHouse(house);
    valueOf(await readDay(counting.house, company.owner.key, { date }));
    return counting.count();
  };
  const calls = await callsFor("2026-04-20");
  expect(routeDayId).not.toBe("");
  expect(calls).toBeGreaterThan(10);
  expect(await callsFor("2026-04-21")).toBe(calls);
});
