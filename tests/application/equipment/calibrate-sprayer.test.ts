import { afterAll, beforeAll, expect, test } from "vitest";
import { addEquipment } from "#application/equipment/add-equipment";
import { calibrateSprayer } from "#application/equipment/calibrate-sprayer";
import { readCalibration } from "#application/equipment/read-calibration";
import { of } from "#domain/quantities/quantity";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aSpreader, aSprayer, sprayerCalibrationForm, sprayerForm } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE, saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
let equipmentId: string;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
  equipmentId = await aSprayer(house, company);
});
afterAll(() => house.close());

const form = () => sprayerCalibrationForm(equipmentId, company.owner.personId);
const calibrate = (input: object) => calibrateSprayer(house, company.owner.key, { ...form(), ...input });

test("writes what was typed and the rate that follows, and the audit trail says so", async () => {
  const { calibrationId } = valueOf(await calibrate({}));
  const [row] = await house.ask(
    `select operator_id, tip, pressure_psi, method, inputs, rate_basis, rate_amount, rate_per, made_on::text, product_id, setting
     from calibration where calibration_id = $1`,
    [calibrationId],
  );
  expect(row).toEqual({
    operator_id: company.owner.personId,
    tip: "Gold 4 gpm",
    pressure_psi: 40,
    method: "timed-area",
    inputs: { method: "timed-area", caught: "1 gal\n1 gal", caughtSeconds: "30", area: "1,000 sq ft", areaSeconds: "58\n60\n62" },
    rate_basis: "carrier-volume-per-area",
    rate_amount: String(of("gal", 2n).amount),
    rate_per: String(of("sq ft", 1000n).amount),
    made_on: "2026-04-14",
    product_id: null,
    setting: null,
  });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({
    deed: "sprayer-calibrated",
    subject_id: calibrationId,
    details: { equipment: "100 gal tank", operator: company.owner.name, tip: "Gold 4 gpm", rate: "2 gal per 1,000 sq ft", madeOn: "2026-04-14" },
  });
});

test("water that stood for a heavier spray is kept as typed, and the rate is the spray's", async () => {
  const { calibrationId } = valueOf(await calibrate({ liquid: "water-for-heavier", sprayDensity: "specific gravity 1.44" }));
  const [row] = await house.ask<{ inputs: object; rate_amount: string }>("select inputs, rate_amount from calibration where calibration_id = $1", [calibrationId]);
  expect(row?.inputs).toMatchObject({ liquid: "water-for-heavier", sprayDensity: "specific gravity 1.44" });
  expect(Number(row?.rate_amount)).toBeCloseTo(Number(of("gal", 2n).amount) / 1.2, 0);
  const read = valueOf(await readCalibration(house, company.owner.key, { calibrationId }));
  expect(read.working?.steps.at(-1)).toMatch(/of the spray\.$/u);
});

test("a calibration is never changed, not even by the owner of the tables", async () => {
  valueOf(await calibrate({}));
  await expect(house.ask("update calibration set tip = 'another'")).rejects.toMatchObject({ message: saying("append-only") });
  await expect(house.ask("delete from calibration")).rejects.toMatchObject({ message: saying("append-only") });
});

test("each refusal stands at the field that it is about, and writes nothing", async () => {
  const before = await house.books();
  const cases: readonly (readonly [string, object])[] = [
    ["caught", { caught: "1" }],
    ["caught", { caught: "11/2 gal" }],
    ["caught", { caught: "4000 gal" }],
    ["caughtSeconds", { caughtSeconds: "0" }],
    ["sprayDensity", { liquid: "heavier-itself", sprayDensity: "" }],
    ["sprayDensity", { liquid: "as-water", sprayDensity: "10 lb per gal" }],
    ["liquid", { liquid: "beer" }],
    ["area", { area: "1,000" }],
    ["areaSeconds", { areaSeconds: "58\na minute" }],
    ["pressurePsi", { pressurePsi: "high" }],
    ["tip", { tip: " " }],
    ["method", { method: "boom", nozzleSpacing: "20 in", tipSize: "", course: "100 ft", courseSeconds: "22" }],
  ];
  for (const [field, change] of cases) {
    expect(await calibrate(change), field).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
  }
  expect(await house.books()).toEqual(before);
});

test("a course and its time that come to no speed are refused at the course", async () => {
  const backpack = valueOf(await addEquipment(house, company.owner.key, { ...sprayerForm(), kind: "backpack-sprayer" })).equipmentId;
  const { operatorId, madeOn, tip, pressurePsi } = form();
  const timed = { method: "timed-course", equipmentId: backpack, operatorId, madeOn, tip, pressurePsi, caught: "51 fl oz", caughtSeconds: "60", tipSize: "", swath: "4 ft", courseSeconds: "60 secs" } as const;
  expect(await calibrateSprayer(house, company.owner.key, { ...timed, course: "2,640 ft" })).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { course: saying("30 mph") } } });
  expect(await calibrateSprayer(house, company.owner.key, { ...timed, course: "264 ft" })).toMatchObject({ ok: true });
});

test("a spreader is no sprayer", async () => {
  const spreader = await aSpreader(house, company);
  expect(await calibrate({ equipmentId: spreader })).toMatchObject({ refusal: { kind: "conflict", sentence: saying("spreader") } });
});

test("by what an area took there is no catch", async () => {
  const { equipmentId: id, operatorId, madeOn, tip, pressurePsi } = form();
  const answer = await calibrateSprayer(house, company.owner.key, {
    method: "small-area", equipmentId: id, operatorId, madeOn, tip, pressurePsi, area: "500 sq ft", used: "1 gal\n1.1 gal",
  });
  const [row] = await house.ask("select rate_amount from calibration where calibration_id = $1", [valueOf(answer).calibrationId]);
  expect(row).toEqual({ rate_amount: String(of("gal", "2.1").amount) });
});
