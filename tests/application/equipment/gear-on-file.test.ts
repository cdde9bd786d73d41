import { afterAll, beforeAll, expect, test } from "vitest";
import { asGuest } from "#adapters/postgres/company-work";
import { calibrateSprayer } from "#application/equipment/calibrate-sprayer";
import { calibrationsOnFile, equipmentOnFile, latestOf, vehiclesOnFile } from "#application/equipment/gear-on-file";
import { type Work } from "#application/use-case";
import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aCalibration, aSpreader, aSprayer, aVehicle, sprayerCalibrationForm } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
let equipmentId: string;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
  equipmentId = await aSprayer(house, company);
  await aSpreader(house, company);
  await aVehicle(house, company);
  await aCalibration(house, company, equipmentId);
  valueOf(await calibrateSprayer(house, company.owner.key, { ...sprayerCalibrationForm(equipmentId, company.owner.personId), madeOn: "2026-04-01", tip: "Blue" }));
});
afterAll(() => house.close());

const work = <Answer>(ask: (work: Work) => Promise<Answer>) =>
  asGuest(house.client, company.companyId, (tx) =>
    ask({ tx, now: house.now(), company: { companyId: company.companyId, timeZone: "America/Indiana/Indianapolis" } } as Work),
  );

test("one piece can be asked for, or all", async () => {
  expect(await work((at) => equipmentOnFile(at))).toHaveLength(2);
  expect((await work((at) => equipmentOnFile(at, equipmentId))).map((piece) => piece.equipmentId)).toEqual([equipmentId]);
  expect(await work(vehiclesOnFile)).toHaveLength(1);
});

test("calibrations come in the order in which they were made, not entered", async () => {
  const made = await work(async (at) => calibrationsOnFile(at, await equipmentOnFile(at, equipmentId)));
  expect(made.map(({ doneOn }) => doneOn)).toEqual(["2026-04-01", "2026-04-14"]);
  expect(made[1]).toMatchObject({ equipment: { name: "100 gal tank" }, operator: { name: company.owner.name } });
  expect(await work((at) => calibrationsOnFile(at, []))).toEqual([]);
});

test("a setting of the company decides for how long one is good", async () => {
  const standing = (calibrationValidDays: number) =>
    work(async (at) => {
      const made = await calibrationsOnFile(at, await equipmentOnFile(at, equipmentId));
      return latestOf(at, equipmentId, made.slice(0, 1), { ...DEFAULT_HOUSE_SETTINGS, calibrationValidDays })[0]?.standing.kind;
    });
  expect([await standing(13), await standing(12)]).toEqual(["good", "run-out"]);
});
