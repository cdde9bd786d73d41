import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { addEquipment, measuresOfForm, refuseTruck } from "#application/equipment/add-equipment";
import { standDownVehicle } from "#application/equipment/stand-down-vehicle";
import { of } from "#domain/quantities/quantity";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aProduct, aVehicle, GUN_NOMINAL, spreaderForm, sprayerForm } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE, saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const add = (form: object) => addEquipment(house, company.owner.key, form as never);
async function aNamedProduct(): Promise<string> {
  const [row] = await house.ask<{ name: string }>("select name from product where product_id = $1", [await aProduct(house, company)]);
  return row?.name ?? "";
}
const rowOf = async (equipmentId: string) =>
  (await house.ask("select vehicle_id, name, kind, capacity, hold_up, has_deflector, swath from equipment where equipment_id = $1", [equipmentId]))[0];

test("writes a sprayer on its truck, its tank as a location of stock, and what was done", async () => {
  const vehicleId = await aVehicle(house, company);
  const { equipmentId } = valueOf(await add({ ...sprayerForm(vehicleId), hoseLength: "", hoseDiameter: "", pumpHolds: "", holdUp: "3.5 gal" }));
  expect(await rowOf(equipmentId)).toEqual({
    vehicle_id: vehicleId, name: "100 gal tank", kind: "hose-and-gun", has_deflector: null,
    capacity: String(of("gal", 100n).amount), hold_up: String(of("gal", "3.5").amount), swath: String(of("ft", 8n).amount),
  });
  expect(await house.ask("select kind, name from stock_location where equipment_id = $1", [equipmentId])).toEqual([{ kind: "tank", name: "100 gal tank" }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "equipment-added", subject_id: equipmentId, details: { holdUp: "3.5 gal" } });
});

describe("a spreader", () => {
  test.each([["yes", true], ["no", false], ["nobody-looked", null]])("with the answer %s about its deflector", async (deflector, hasDeflector) => {
    const { equipmentId } = valueOf(await add({ ...spreaderForm(), deflector, swath: "" }));
    expect(await rowOf(equipmentId)).toEqual({
      vehicle_id: null, name: "Push spreader", kind: "broadcast-spreader", capacity: String(of("lb", 50n).amount), hold_up: null, swath: null,
      has_deflector: hasDeflector,
    });
    expect(await house.ask("select from stock_location where equipment_id = $1", [equipmentId])).toEqual([]);
  });
});

test("the measures of a form are in canonical units", () => {
  expect(measuresOfForm({ ...spreaderForm(), vehicleId: null })).toEqual({
    ok: true, value: { capacity: of("lb", 50n).amount, holdUp: null, hasDeflector: true, swath: of("ft", 10n).amount },
  });
});

test("keeps a sprayer's nominal figures and a spreader's bag settings as they were typed", async () => {
  const nominalOf = async (equipmentId: string) => (await house.ask("select nominal from equipment where equipment_id = $1", [equipmentId]))[0];
  const sprayer = valueOf(await add({ ...sprayerForm(), ...GUN_NOMINAL, tipDroplets: "Blue, 1.5 gal; 40 psi; coarse" }));
  expect(await nominalOf(sprayer.equipmentId)).toEqual({ nominal: { ...GUN_NOMINAL, tipDroplets: "Blue, 1.5 gal; 40 psi; coarse" } });
  const bagSettings = `${await aNamedProduct()}; M; 3 lb per 1,000 sq ft`;
  const spreader = valueOf(await add({ ...spreaderForm(), bagSettings }));
  expect(await nominalOf(spreader.equipmentId)).toEqual({ nominal: { bagSettings } });
});

test("a truck that is stood down takes no more gear", async () => {
  const vehicleId = await aVehicle(house, company);
  valueOf(await standDownVehicle(house, company.owner.key, { vehicleId }));
  expect(await add(sprayerForm(vehicleId))).toMatchObject({ refusal: { kind: "bad-input", fields: { vehicleId: saying("stood down") } } });
});

test("gear without a truck asks for none", async () => {
  expect(await refuseTruck({} as Parameters<typeof refuseTruck>[0], null)).toBeUndefined();
});

test.each([
  ["kind", { ...sprayerForm(), kind: "cannon" }],
  ["capacity", { ...sprayerForm(), capacity: "50 lb" }],
  ["capacity", { ...spreaderForm(), capacity: "100 gal" }],
  ["capacity", { ...sprayerForm(), capacity: "" }],
  ["deflector", { ...spreaderForm(), deflector: "" }],
  ["swath", { ...spreaderForm(), swath: "10" }],
  ["holdUp", { ...sprayerForm(), holdUp: "3 gal" }],
  ["tipFlow", { ...sprayerForm(), ...GUN_NOMINAL, tipSize: "06" }],
  ["minutesPerThousand", { ...sprayerForm(), ...GUN_NOMINAL, speedMph: "3" }],
  ["tipDroplets", { ...sprayerForm(), tipDroplets: "Blue; 40 psi; wet" }],
  ["speedMph", { ...sprayerForm(), speedMph: "300" }],
  ["bagSettings", { ...spreaderForm(), bagSettings: "Never heard of; M; 3 lb per 1,000 sq ft" }],
])("is refused at %s", async (field, form) => {
  expect(await add(form)).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
});
