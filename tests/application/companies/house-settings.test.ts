import { afterAll, beforeAll, expect, test } from "vitest";
import { changeHouseSettings } from "#application/companies/change-house-settings";
import { DEFAULT_TANK_MARK_TEXT, houseSettingsOf, settingsOnFile } from "#application/companies/house-settings";
import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";
import { readTankMark } from "#domain/company/typed-settings";
import { planVisit } from "#application/visits/plan-visit";
import { HOUSE_SETTINGS_CHANGE } from "../../support/attempts-of-company";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { inWorkOf } from "../../support/crew-day";
import { aZone } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("the default mark reads as the default", () => {
  expect(valueOf(readTankMark(DEFAULT_TANK_MARK_TEXT))).toEqual(DEFAULT_HOUSE_SETTINGS.tankMark);
});

test("what is on file holds for what is planned from then on", async () => {
  expect(await inWorkOf(house, company, settingsOnFile)).toMatchObject({ version: 1 });
  const { propertyId, zoneId } = await aZone(house, company);
  const plan = async () => {
    const requestId = house.newId();
    const tasks = { "0": { productUse: "look", rate: "", reason: "look", lawns: { [zoneId]: "yes" as const } } };
    valueOf(await planVisit(house, company.owner.key, { requestId, propertyId, name: "Look", opensOn: "2026-05-01", closesOn: "2026-05-02", customerFrom: "", customerUntil: "", secondLook: "", tasks }));
    return (await house.ask<{ service_minutes: number }>("select service_minutes from visit where visit_id = $1", [requestId]))[0]?.service_minutes;
  };
  // 2,400 sq ft at 4 min a thousand are 9.6 min, at 5 min 12.
  expect(await plan()).toBe(8 + 10);
  valueOf(await changeHouseSettings(house, company.owner.key, HOUSE_SETTINGS_CHANGE));
  expect(await plan()).toBe(10 + 12);
  expect(await inWorkOf(house, company, houseSettingsOf)).toMatchObject({ minutesPerStop: 10, minutesPerThousandSquareFeet: 5 });
});
