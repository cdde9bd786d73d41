import { afterAll, beforeAll, expect, test } from "vitest";
import { addEquipment } from "#application/equipment/add-equipment";
import { standDownEquipment } from "#application/equipment/stand-down-equipment";
import { standDownVehicle } from "#application/equipment/stand-down-vehicle";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aVehicle, sprayerForm } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";
import { saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("waits until its gear is off, stands down once, and stays in the books", async () => {
  const vehicleId = await aVehicle(house, company);
  const { equipmentId } = valueOf(await addEquipment(house, company.owner.key, sprayerForm(vehicleId)));
  const standDown = () => standDownVehicle(house, company.owner.key, { vehicleId });
  expect(await standDown()).toMatchObject({ refusal: { kind: "conflict", sentence: saying("100 gal tank") } });
  valueOf(await standDownEquipment(house, company.owner.key, { equipmentId }));
  valueOf(await standDown());
  expect(await house.ask("select stood_down_at from vehicle where vehicle_id = $1", [vehicleId])).toEqual([{ stood_down_at: house.now() }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "vehicle-stood-down", subject_id: vehicleId });
  expect(await standDown()).toMatchObject({ refusal: { kind: "conflict", sentence: saying("already") } });
});
