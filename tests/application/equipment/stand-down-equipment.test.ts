import { afterAll, beforeAll, expect, test } from "vitest";
import { readEquipment } from "#application/equipment/read-equipment";
import { standDownEquipment } from "#application/equipment/stand-down-equipment";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aCalibration, aSprayer } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";
import { saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("stands down once; the gear and its calibrations stay in the books", async () => {
  const equipmentId = await aSprayer(house, company);
  await aCalibration(house, company, equipmentId);
  const standDown = () => standDownEquipment(house, company.owner.key, { equipmentId });
  valueOf(await standDown());
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({
    deed: "equipment-stood-down", subject_id: equipmentId, details: { kind: "hose-and-gun", name: "100 gal tank" },
  });
  const read = valueOf(await readEquipment(house, company.owner.key, { equipmentId }));
  expect(read.equipment.isStoodDown).toBe(true);
  expect(read.calibrations).toHaveLength(1);
  expect(await standDown()).toMatchObject({ refusal: { kind: "conflict", sentence: saying("already") } });
});
