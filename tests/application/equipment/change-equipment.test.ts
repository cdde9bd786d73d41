import { afterAll, beforeAll, expect, test } from "vitest";
import { changeEquipment } from "#application/equipment/change-equipment";
import { standDownEquipment } from "#application/equipment/stand-down-equipment";
import { of } from "#domain/quantities/quantity";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aSpreader, aSprayer, aVehicle, GUN_NOMINAL, spreaderForm, sprayerForm } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";
import { saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const NO_HOSE = { hoseLength: "", hoseDiameter: "", pumpHolds: "" };
const change = (form: object) => changeEquipment(house, company.owner.key, form as never);
const rowOf = async (equipmentId: string) => {
  const [row] = await house.ask<{ hold_up: string | null }>("select name, vehicle_id, capacity, hold_up, swath, has_deflector from equipment where equipment_id = $1", [equipmentId]);
  if (row === undefined) throw new Error("The gear is gone.");
  return row;
};

test("changes name, truck and measures, and the name of the tank as a location of stock", async () => {
  const equipmentId = await aSprayer(house, company);
  const vehicleId = await aVehicle(house, company);
  const form = { ...sprayerForm(vehicleId), ...NO_HOSE, name: "Long tank", capacity: "110 gal", holdUp: "4 gal", swath: "" };
  expect(await change({ equipmentId, version: 1, ...form })).toEqual({ ok: true, value: { version: 2 } });
  expect(await rowOf(equipmentId)).toEqual({
    name: "Long tank", vehicle_id: vehicleId, capacity: String(of("gal", 110n).amount), hold_up: String(of("gal", 4n).amount), swath: null, has_deflector: null,
  });
  expect(await house.ask("select name from stock_location where equipment_id = $1", [equipmentId])).toEqual([{ name: "Long tank" }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({
    deed: "equipment-changed", details: { before: { name: "100 gal tank", holdUp: "3.46 gal" }, after: { name: "Long tank", holdUp: "4 gal" } },
  });
});

test("a computed hold-up given back as it was shown stays unrounded; emptied it is unknown; a hose computes it anew", async () => {
  const equipmentId = await aSprayer(house, company);
  const { hold_up: before } = await rowOf(equipmentId);
  valueOf(await change({ equipmentId, version: 1, ...sprayerForm(), ...NO_HOSE, holdUp: "3.46 gal" }));
  expect((await rowOf(equipmentId)).hold_up).toBe(before);
  valueOf(await change({ equipmentId, version: 2, ...sprayerForm(), ...NO_HOSE }));
  expect((await rowOf(equipmentId)).hold_up).toBeNull();
  valueOf(await change({ equipmentId, version: 3, ...sprayerForm() }));
  expect((await rowOf(equipmentId)).hold_up).toBe(before);
});

test("nominal figures change with the swath that they go by", async () => {
  const equipmentId = await aSprayer(house, company);
  const figures = { ...GUN_NOMINAL, minutesPerThousand: "", speedMph: "3" };
  valueOf(await change({ equipmentId, version: 1, ...sprayerForm(), ...figures }));
  expect(await house.ask("select nominal from equipment where equipment_id = $1", [equipmentId])).toEqual([{ nominal: { ...figures, tipDroplets: "" } }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ details: { before: { nominal: { speedMph: "" } }, after: { speedMph: "3" } } });
  expect(await change({ equipmentId, version: 2, ...sprayerForm(), ...figures, swath: "0.1 in" })).toMatchObject({ refusal: { fields: { speedMph: saying("no such equipment") } } });
});

test("a spreader's deflector changes; its kind does not", async () => {
  const equipmentId = await aSpreader(house, company);
  valueOf(await change({ equipmentId, version: 1, ...spreaderForm(), deflector: "no" }));
  expect(await rowOf(equipmentId)).toMatchObject({ has_deflector: false });
  for (const form of [sprayerForm(), { ...spreaderForm(), kind: "drop-spreader" }]) {
    expect(await change({ equipmentId, version: 2, ...form })).toMatchObject({ refusal: { kind: "conflict", sentence: saying("kind") } });
  }
});

test("the second of two who changed is told, and gear that is stood down is changed no more", async () => {
  const equipmentId = await aSprayer(house, company);
  valueOf(await change({ equipmentId, version: 1, ...sprayerForm() }));
  expect(await change({ equipmentId, version: 1, ...sprayerForm() })).toMatchObject({ refusal: { kind: "conflict", sentence: saying("Someone else") } });
  valueOf(await standDownEquipment(house, company.owner.key, { equipmentId }));
  expect(await change({ equipmentId, version: 3, ...sprayerForm() })).toMatchObject({ refusal: { kind: "conflict", sentence: saying("stood down") } });
});
