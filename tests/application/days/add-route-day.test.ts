import { afterAll, beforeAll, expect, test } from "vitest";
import { addRouteDay } from "#application/days/add-route-day";
import { enterForecast } from "#application/days/enter-forecast";
import { endMembership } from "#application/people/end-membership";
import { standDownVehicle } from "#application/equipment/stand-down-vehicle";
import { aCompany, aMember, type TestCompany, valueOf } from "../../support/crew";
import { routeDayForm } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("a truck goes out with its hours and the forecast that the day already has", async () => {
  const day = "2026-04-20";
  valueOf(await addRouteDay(house, company.owner.key, await routeDayForm(house, company, day)));
  valueOf(await enterForecast(house, company.owner.key, { date: day, highF: "84", followingHighsF: { next: "86", second: "", third: "81" }, source: "National Weather Service" }));
  const { routeDayId } = valueOf(await addRouteDay(house, company.owner.key, await routeDayForm(house, company, day)));
  expect(await house.ask("select starts_at_minute, ends_at_minute, forecast_high_f, forecast_next_high_f, forecast_second_high_f, forecast_third_high_f, forecast_source from route_day where route_day_id = $1", [routeDayId])).toEqual([
    { starts_at_minute: 480, ends_at_minute: 990, forecast_high_f: 84, forecast_next_high_f: 86, forecast_second_high_f: null, forecast_third_high_f: 81, forecast_source: "National Weather Service" },
  ]);
});

test("a truck goes out once a day", async () => {
  const form = await routeDayForm(house, company, "2026-04-21");
  valueOf(await addRouteDay(house, company.owner.key, form));
  expect(await addRouteDay(house, company.owner.key, form)).toMatchObject({ ok: false, refusal: { fields: { vehicleId: expect.stringContaining("is on this day already") as unknown } } });
});

test("a truck that is stood down, one that is not there, and a person who left stay at home", async () => {
  const form = await routeDayForm(house, company);
  const gone = { ...form, vehicleId: house.newId() };
  expect(await addRouteDay(house, company.owner.key, gone)).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  expect(await addRouteDay(house, company.owner.key, { ...form, operatorId: house.newId() })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  const leaver = await aMember(house, company, "technician", "Robin Leaver");
  valueOf(await endMembership(house, company.owner.key, { personId: leaver.personId }));
  await house.ask("update person set left_on = '2026-04-01' where person_id = $1", [leaver.personId]);
  expect(await addRouteDay(house, company.owner.key, { ...form, operatorId: leaver.personId })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  valueOf(await standDownVehicle(house, company.owner.key, { vehicleId: form.vehicleId }));
  expect(await addRouteDay(house, company.owner.key, form)).toMatchObject({ ok: false, refusal: { fields: { vehicleId: expect.stringContaining("stood down") as unknown } } });
});

test("a day that ends before it begins, and a time that is none, are told at their fields", async () => {
  const form = await routeDayForm(house, company);
  expect(await addRouteDay(house, company.owner.key, { ...form, startsAt: "17:00" })).toMatchObject({ ok: false, refusal: { fields: { endsAt: "The day has to end after it begins." } } });
  expect(await addRouteDay(house, company.owner.key, { ...form, startsAt: "25:00" })).toMatchObject({ ok: false, refusal: { fields: { startsAt: expect.stringContaining("07:30") as unknown } } });
});
