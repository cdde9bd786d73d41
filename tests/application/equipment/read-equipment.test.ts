import { afterAll, beforeAll, expect, test } from "vitest";
import { readEquipment } from "#application/equipment/read-equipment";
import { changePerson } from "#application/people/change-person";
import { aCompany, aPerson, type TestCompany, valueOf } from "../../support/crew";
import { aCalibration, aProduct, aSpreader, aSprayer } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const read = async (equipmentId: string) => valueOf(await readEquipment(house, company.owner.key, { equipmentId }));

test("all its calibrations, the newest first, and each operator's latest", async () => {
  const equipmentId = await aSprayer(house, company);
  const first = await aCalibration(house, company, equipmentId);
  house.pass(1);
  const second = await aCalibration(house, company, equipmentId);
  const { calibrations, latest, equipment, today } = await read(equipmentId);
  expect(today).toBe("2026-04-14");
  expect(equipment).toMatchObject({ equipmentId, kind: "hose-and-gun", isStoodDown: false });
  expect(calibrations.map(({ figures }) => figures.calibrationId)).toEqual([second, first]);
  expect(latest.map(({ calibration }) => calibration.figures.calibrationId)).toEqual([second]);
});

test("who can be its operator: the crew without those who left", async () => {
  const left = await aPerson(house, company, "Ada Left");
  valueOf(await changePerson(house, company.owner.key, { personId: left, version: 1, name: "Ada Left", phone: "", leftOn: "2026-04-01" }));
  const { operators } = await read(await aSprayer(house, company));
  expect(operators).toEqual([{ personId: company.owner.personId, name: company.owner.name }]);
});

test("what a spreader can be calibrated with: granular products that are still used; a sprayer with none", async () => {
  const productId = await aProduct(house, company);
  await aProduct(house, company, "liquid");
  const retired = await aProduct(house, company);
  await house.ask("update product set retired_at = now() where product_id = $1", [retired]);
  expect((await read(await aSpreader(house, company))).products.map((product) => product.productId)).toEqual([productId]);
  expect((await read(await aSprayer(house, company))).products).toEqual([]);
});
