import { afterAll, beforeAll, expect, test } from "vitest";
import { addStation } from "#application/properties/add-station";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aClient, aZone, CANS, NO_STATION_TEST, stationForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { of } from "#domain/quantities/quantity";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("stores what each can caught, their average and the wind, links the lawns that are ticked, and the trail says the rate", async () => {
  const { zoneId, propertyId } = await aZone(house, company);
  const { stationId } = valueOf(await addStation(house, company.owner.key, { propertyId, ...stationForm(), waters: { [zoneId]: "yes" }, longestRun: "12" }));
  expect(await house.ask("select number, test_depth, test_minutes, tested_on::text, longest_run_minutes, test_cans, test_wind_mph from station where station_id = $1", [stationId])).toEqual([
    { number: 1, test_depth: String(of("in", "0.24").amount), test_minutes: 20, tested_on: "2026-04-02", longest_run_minutes: 12, test_cans: CANS, test_wind_mph: 3 },
  ]);
  expect(await house.ask("select zone_id from station_zone where station_id = $1", [stationId])).toEqual([{ zone_id: zoneId }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "station-added", details: { test: "0.72 in per hour" } });
});

test("minutes and wind may have their unit behind them", async () => {
  const { propertyId } = await aClient(house, company);
  const { stationId } = valueOf(await addStation(house, company.owner.key, { propertyId, ...stationForm(), minutes: "20 min", wind: "3 MPH", longestRun: "12 mins" }));
  expect(await house.ask("select test_minutes, test_wind_mph, longest_run_minutes from station where station_id = $1", [stationId])).toEqual([{ test_minutes: 20, test_wind_mph: 3, longest_run_minutes: 12 }]);
});

test("without a test there is no rate", async () => {
  const { propertyId } = await aClient(house, company);
  const { stationId } = valueOf(await addStation(house, company.owner.key, { propertyId, ...stationForm(), ...NO_STATION_TEST }));
  expect(await house.ask("select test_depth, test_minutes, tested_on, test_cans, test_wind_mph from station where station_id = $1", [stationId])).toEqual([
    { test_depth: null, test_minutes: null, tested_on: null, test_cans: [], test_wind_mph: null },
  ]);
});

test("part of a test, a number twice, and a lawn of another property are refused, and nothing is written", async () => {
  const { propertyId } = await aClient(house, company);
  const other = await aZone(house, company);
  valueOf(await addStation(house, company.owner.key, { propertyId, ...stationForm(), number: "2" }));
  const before = await house.books();
  const station = { propertyId, ...stationForm() };
  for (const [change, field] of [
    [{ testedOn: "" }, "testedOn"], [{ depths: "" }, "depths"], [{ minutes: "" }, "minutes"], [{ minutes: "241" }, "minutes"], [{ wind: "135" }, "wind"], [{ wind: "5 km/h" }, "wind"], [{ minutes: "1 h" }, "minutes"], [{ longestRun: "1 h" }, "longestRun"],
    [{ depths: "0.2, 0.24, 0.28" }, "depths"], [{ depths: "9 ft, 9 ft, 9 ft, 9 ft", minutes: "1" }, "depths"], [{ depths: "", minutes: "", testedOn: "" }, "depths"],
    [{ depths: "0.0001, 0.0001, 0.0001, 0.0001", minutes: "240" }, "depths"], [{ number: "2" }, "number"], [{ number: "0" }, "number"],
    [{ longestRun: "soon" }, "longestRun"], [{ waters: { [other.zoneId]: "yes" } }, "waters"],
  ] as const) {
    expect(await addStation(house, company.owner.key, { ...station, ...change }), field).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
  }
  expect(await house.books()).toEqual(before);
});
