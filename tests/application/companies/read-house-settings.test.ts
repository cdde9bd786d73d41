import { afterEach, beforeEach, expect, test } from "vitest";
import { changeHouseSettings } from "#application/companies/change-house-settings";
import { readHouseSettings } from "#application/companies/read-house-settings";
import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";
import { exactly } from "#domain/quantities/exact-quantity";
import { HOUSE_SETTINGS_CHANGE } from "../../support/attempts-of-company";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterEach(() => house.close());

test("a company that has changed nothing works by the defaults", async () => {
  expect(valueOf(await readHouseSettings(house, company.owner.key, {}))).toEqual({ version: 1, settings: DEFAULT_HOUSE_SETTINGS, tankMarkText: "0.1 gal" });
});

test("what was changed is read with the version it now has, the mark also as it was typed", async () => {
  valueOf(await changeHouseSettings(house, company.owner.key, { ...HOUSE_SETTINGS_CHANGE, tankMark: " 64 fl oz " }));
  expect(valueOf(await readHouseSettings(house, company.owner.key, {}))).toEqual({
    version: 2,
    tankMarkText: "64 fl oz",
    settings: {
      calibrationValidDays: 180, samePressureWithinPsi: 3, granularPasses: "one-with-overlap", tankLoads: "full-tanks-then-a-short-one", heatCautionFromF: 85, heatCautionWarmFromF: 95,
      minutesPerStop: 10, minutesPerThousandSquareFeet: 5, tankMark: exactly("fl oz", "64"), lineAtTheEnd: "left-as-it-is",
    },
  });
});
