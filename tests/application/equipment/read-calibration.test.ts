import { afterAll, beforeAll, expect, test } from "vitest";
import { calibrateSprayer } from "#application/equipment/calibrate-sprayer";
import { calibrateSpreader } from "#application/equipment/calibrate-spreader";
import { readCalibration } from "#application/equipment/read-calibration";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aProduct, aSpreader, aSprayer, spreaderCalibrationForm, sprayerCalibrationForm } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const read = async (calibrationId: string) => valueOf(await readCalibration(house, company.owner.key, { calibrationId }));

test("a sprayer's, with its arithmetic from what was typed, and its last good day", async () => {
  const form = sprayerCalibrationForm(await aSprayer(house, company), company.owner.personId);
  const { calibrationId } = valueOf(await calibrateSprayer(house, company.owner.key, form));
  const { calibration, lastGoodDay, hasRunOut, working, findings } = await read(calibrationId);
  expect(calibration).toMatchObject({ doneOn: "2026-04-14", setup: { kind: "sprayer" }, operator: { name: company.owner.name } });
  expect(lastGoodDay).toBe("2027-04-14");
  expect(hasRunOut).toBe(false);
  expect(working?.steps.at(-1)).toBe("2 gal over 1,000 sq ft is 2 gal per 1,000 sq ft.");
  expect(findings).toEqual([]);
});

test("one whose last good day is over has run out", async () => {
  const form = sprayerCalibrationForm(await aSprayer(house, company), company.owner.personId);
  for (const [madeOn, hasRunOut] of [["2025-04-14", false], ["2025-04-13", true]] as const) {
    const { calibrationId } = valueOf(await calibrateSprayer(house, company.owner.key, { ...form, madeOn }));
    expect((await read(calibrationId)).hasRunOut, madeOn).toBe(hasRunOut);
  }
});

test("what there is to say about the measuring comes with it", async () => {
  const form = { ...sprayerCalibrationForm(await aSprayer(house, company), company.owner.personId), areaSeconds: "60" };
  const { calibrationId } = valueOf(await calibrateSprayer(house, company.owner.key, form));
  expect((await read(calibrationId)).findings).toMatchObject([{ level: "take-care", rule: "calibration-of-few-gun-runs" }]);
});

test("a spreader's, for its product and setting", async () => {
  const form = spreaderCalibrationForm(await aSpreader(house, company), company.owner.personId, await aProduct(house, company));
  const { calibrationId } = valueOf(await calibrateSpreader(house, company.owner.key, form));
  const { calibration, working } = await read(calibrationId);
  expect(calibration).toMatchObject({ setup: { kind: "spreader" }, figures: { setting: "M", method: "collected-over-area" } });
  expect(working?.result).toContain("3 lb per 1,000 sq ft");
});

test("one whose figures would be refused today is shown with what is wrong with them, and without arithmetic", async () => {
  const form = sprayerCalibrationForm(await aSprayer(house, company), company.owner.personId);
  const { calibrationId } = valueOf(await calibrateSprayer(house, company.owner.key, form));
  const old = { method: "boom", caught: "51 fl oz", caughtSeconds: "60", tipSize: "", nozzleSpacing: "20 in", course: "2,640 ft", courseSeconds: "60" };
  const oldId = house.newId();
  await house.ask(
    `insert into calibration (company_id, calibration_id, equipment_id, operator_id, tip, pressure_psi, method, inputs, rate_basis, rate_amount, rate_per, made_on, entered_at)
     select company_id, $2, equipment_id, operator_id, tip, pressure_psi, 'boom', $3::jsonb, rate_basis, rate_amount, rate_per, made_on, entered_at from calibration where calibration_id = $1`,
    [calibrationId, oldId, JSON.stringify(old)],
  );
  const { calibration, working, findings } = await read(oldId);
  expect(calibration.figures.method).toBe("boom");
  expect(working).toBeNull();
  expect(findings).toMatchObject([{ level: "take-care", rule: "calibration-refused-today", figure: expect.stringMatching(/30 mph; nobody goes so fast/u) as string }]);
});
