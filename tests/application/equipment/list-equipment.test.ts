import { afterAll, beforeAll, expect, test } from "vitest";
import { addEquipment } from "#application/equipment/add-equipment";
import { calibrateSprayer } from "#application/equipment/calibrate-sprayer";
import { listEquipment } from "#application/equipment/list-equipment";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { aCompany, aPerson, type TestCompany, valueOf } from "../../support/crew";
import { aCalibration, aSprayer, aVehicle, sprayerCalibrationForm, spreaderForm } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house, "First Crew");
  const other = await aCompany(house, "Second Crew");
  await aVehicle(house, other);
  await aCalibration(house, other, await aSprayer(house, other));
});
afterAll(() => house.close());

const list = async () => valueOf(await listEquipment(house, company.owner.key, {}));

test("a company without anything has nothing, whatever others have", async () => {
  expect(await list()).toEqual({ vehicles: [], equipment: [], measuringTools: [] });
});

test("trucks by number, gear by name, each operator's latest calibration with its standing today", async () => {
  const vehicleId = await aVehicle(house, company);
  valueOf(await addEquipment(house, company.owner.key, spreaderForm(vehicleId)));
  const equipmentId = await aSprayer(house, company);
  const lou = await aPerson(house, company, "Lou");
  const { key, personId } = company.owner;
  valueOf(await calibrateSprayer(house, key, { ...sprayerCalibrationForm(equipmentId, lou), madeOn: "2025-04-13" }));
  valueOf(await calibrateSprayer(house, key, { ...sprayerCalibrationForm(equipmentId, personId), madeOn: "2025-04-14" }));
  const { vehicles, equipment } = await list();
  expect(vehicles).toMatchObject([{ vehicleId, name: "White flatbed", payload: of("lb", 1850n), isStoodDown: false }]);
  expect(equipment.map(({ name, vehicleId: on, capacity }) => [name, on, capacity])).toEqual([
    ["100 gal tank", null, of("gal", 100n)], ["Push spreader", vehicleId, of("lb", 50n)],
  ]);
  const latest = equipment[0]?.latest;
  expect(latest?.map(({ calibration, standing }) => [calibration.operator.name, standing.kind])).toEqual([
    [company.owner.name, "good"], ["Lou", "run-out"],
  ]);
  expect(latest?.[0]).toMatchObject({
    calibration: { doneOn: "2025-04-14", setup: { kind: "sprayer", tip: "Gold 4 gpm", pressurePsi: 40 }, figures: { rate: rateOf("carrier-volume-per-area", "2", "gal per 1,000 sq ft") } },
    standing: { daysLeft: 0, lastGoodDay: "2026-04-14" },
  });
});
