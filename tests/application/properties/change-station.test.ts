import { afterAll, beforeAll, expect, test } from "vitest";
import { changeStation } from "#application/properties/change-station";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { addZone } from "#application/properties/add-zone";
import { aStation, CANS, NO_STATION_TEST, stationForm, zoneForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { of } from "#domain/quantities/quantity";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("a form without a new test keeps the one on file, and the lawns are those that are ticked", async () => {
  const { stationId, propertyId } = await aStation(house, company);
  const { zoneId } = valueOf(await addZone(house, company.owner.key, { propertyId, ...zoneForm(), measure: { kind: "area", area: "900" } }));
  valueOf(await changeStation(house, company.owner.key, { stationId, version: 1, ...stationForm(), ...NO_STATION_TEST, name: "Back", waters: { [zoneId]: "yes" } }));
  const [row] = await house.ask("select name, test_depth, test_minutes, test_cans, test_wind_mph, version from station where station_id = $1", [stationId]);
  expect(row).toEqual({ name: "Back", test_depth: String(of("in", "0.24").amount), test_minutes: 20, test_cans: CANS, test_wind_mph: 3, version: 2 });
  expect(await house.ask("select zone_id from station_zone where station_id = $1", [stationId])).toEqual([{ zone_id: zoneId }]);
  valueOf(await changeStation(house, company.owner.key, { stationId, version: 2, ...stationForm(), depths: "0.5, 0.5, 0.5, 0.5", minutes: "30", wind: "" }));
  expect(await house.ask("select test_minutes, test_cans[1] as first_can, test_wind_mph from station where station_id = $1", [stationId])).toEqual([
    { test_minutes: 30, first_can: String(of("in", "0.5").amount), test_wind_mph: null },
  ]);
  expect(await house.ask("select zone_id from station_zone where station_id = $1", [stationId])).toEqual([]);
});

test("a station that is gone stays on record, and an old version is told", async () => {
  const { stationId } = await aStation(house, company);
  const form = { stationId, version: 1, ...stationForm(), ...NO_STATION_TEST };
  expect(await changeStation(house, company.owner.key, { ...form, version: 3 })).toMatchObject({ refusal: { kind: "conflict" } });
  valueOf(await changeStation(house, company.owner.key, { ...form, isGone: "yes" }));
  expect(await house.ask("select removed_at from station where station_id = $1", [stationId])).toEqual([{ removed_at: house.now() }]);
  expect(await changeStation(house, company.owner.key, { ...form, version: 2 })).toMatchObject({ refusal: { kind: "not-found" } });
});
