import { afterAll, beforeAll, expect, test } from "vitest";
import { addStation } from "#application/properties/add-station";
import { removeZone } from "#application/properties/remove-zone";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aZone, stationForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


test("takes a lawn off the plan once, keeps its row, and no station waters it any more", async () => {
  const { zoneId, propertyId } = await aZone(house, company);
  valueOf(await addStation(house, company.owner.key, { propertyId, ...stationForm(), waters: { [zoneId]: "yes" } }));
  expect(await removeZone(house, company.owner.key, { zoneId })).toEqual({ ok: true, value: { propertyId } });
  expect(await house.ask("select name, removed_at from zone where zone_id = $1", [zoneId])).toEqual([{ name: "Front", removed_at: house.now() }]);
  expect(await house.ask("select zone_id from station_zone where zone_id = $1", [zoneId])).toEqual([]);
  expect(await removeZone(house, company.owner.key, { zoneId })).toMatchObject({ refusal: { kind: "conflict" } });
});
