import { afterAll, beforeAll, expect, test } from "vitest";
import { enterForecast } from "#application/days/enter-forecast";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aRouteDay } from "../../support/days";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("one entry holds for every truck of the day and for no other day", async () => {
  for (const date of ["2026-05-01", "2026-05-01", "2026-05-02"]) await aRouteDay(house, company, date);
  expect(valueOf(await enterForecast(house, company.owner.key, { date: "2026-05-01", highF: "84", source: "Weather radio" }))).toEqual({ trucks: 2, date: "2026-05-01" });
  const rows = await house.ask("select date::text, forecast_high_f, forecast_next_high_f, forecast_source from route_day order by date");
  const entered = { date: "2026-05-01", forecast_high_f: 84, forecast_next_high_f: null, forecast_source: "Weather radio" };
  expect(rows).toEqual([entered, entered, { date: "2026-05-02", forecast_high_f: null, forecast_next_high_f: null, forecast_source: null }]);
});

test("the high of the day after is kept where it is given, and goes when the forecast is entered without it", async () => {
  await aRouteDay(house, company, "2026-05-11");
  const kept = async () => (await house.ask("select forecast_high_f, forecast_next_high_f from route_day where date = '2026-05-11'"))[0];
  const enter = (nextHighF: string) => enterForecast(house, company.owner.key, { date: "2026-05-11", highF: "80", nextHighF, source: "Radio" });
  valueOf(await enter(" 91 "));
  expect(await kept()).toEqual({ forecast_high_f: 80, forecast_next_high_f: 91 });
  for (const wrong of ["hot", "141", "-61", "84.5"]) expect(await enter(wrong), wrong).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
  expect(await kept()).toEqual({ forecast_high_f: 80, forecast_next_high_f: 91 });
  valueOf(await enter(""));
  expect(await kept()).toEqual({ forecast_high_f: 80, forecast_next_high_f: null });
});

test("the table takes no high of the day after without the day's own", async () => {
  await aRouteDay(house, company, "2026-05-12");
  await expect(house.ask("update route_day set forecast_next_high_f = 80 where date = '2026-05-12'")).rejects.toThrow("route_day_next_high_goes_with_its_forecast");
});

test("a day without a truck takes no forecast, and a high that can't be is told", async () => {
  expect(await enterForecast(house, company.owner.key, { date: "2026-06-01", highF: "84", source: "Radio" })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  for (const highF of ["warm", "141", "84.5", ""]) {
    expect(await enterForecast(house, company.owner.key, { date: "2026-05-01", highF, source: "Radio" }), highF).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
  }
});
