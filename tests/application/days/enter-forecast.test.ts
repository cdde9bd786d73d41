import { afterAll, beforeAll, expect, test } from "vitest";
import { enterForecast } from "#application/days/enter-forecast";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
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

test("the highs of the days after are kept where they are given, and go when the forecast is entered without them", async () => {
  await aRouteDay(house, company, "2026-05-11");
  const kept = async () => (await house.ask<{ highs: unknown }>("select jsonb_build_array(forecast_high_f, forecast_next_high_f, forecast_second_high_f, forecast_third_high_f) as highs from route_day where date = '2026-05-11'"))[0]?.highs;
  const enter = (next: string, second: string, third: string) => enterForecast(house, company.owner.key, { date: "2026-05-11", highF: "80", followingHighsF: { next, second, third }, source: "Radio" });
  valueOf(await enter(" 91 ", "", "88"));
  expect(await kept()).toEqual([80, 91, null, 88]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "forecast-entered", details: { highF: 80, followingHighsF: [91, null, 88] } });
  for (const wrong of ["hot", "141", "-61", "84.5"]) {
    for (const at of [[wrong, "", ""], ["", wrong, ""], ["", "", wrong]] satisfies [string, string, string][]) expect(await enter(...at), wrong).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
  }
  expect(await kept()).toEqual([80, 91, null, 88]);
  valueOf(await enter("", "", ""));
  expect(await kept()).toEqual([80, null, null, null]);
});

test.each([
  ["next", "route_day_next_high_goes_with_its_forecast"],
  ["second", "route_day_coming_highs_go_with_their_forecast"],
  ["third", "route_day_coming_highs_go_with_their_forecast"],
])("the table takes no %s high after without the day's own", async (which, constraint) => {
  const date = `2026-05-1${String(which.length)}`;
  await aRouteDay(house, company, date);
  await expect(house.ask(`update route_day set forecast_${which}_high_f = 80 where date = '${date}'`)).rejects.toThrow(constraint);
});

test("a day without a truck takes no forecast, and a high that can't be is told", async () => {
  expect(await enterForecast(house, company.owner.key, { date: "2026-06-01", highF: "84", source: "Radio" })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  for (const highF of ["warm", "141", "84.5", ""]) {
    expect(await enterForecast(house, company.owner.key, { date: "2026-05-01", highF, source: "Radio" }), highF).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
  }
});
