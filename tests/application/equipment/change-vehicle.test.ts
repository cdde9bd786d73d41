import { afterAll, beforeAll, expect, test } from "vitest";
import { addVehicle } from "#application/equipment/add-vehicle";
import { changeVehicle } from "#application/equipment/change-vehicle";
import { standDownVehicle } from "#application/equipment/stand-down-vehicle";
import { of } from "#domain/quantities/quantity";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aVehicle, vehicleForm } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";
import { saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const change = (form: Parameters<typeof changeVehicle>[2]) => changeVehicle(house, company.owner.key, form);

test("changes number, name and payload, and the name of its location of stock", async () => {
  const vehicleId = await aVehicle(house, company);
  const form = { ...vehicleForm(), name: "Blue van", payload: "2,000 lb", staysAboard: "540 lb" };
  expect(await change({ vehicleId, version: 1, ...form })).toEqual({ ok: true, value: { version: 2 } });
  expect(await house.ask("select number, name, payload, version from vehicle where vehicle_id = $1", [vehicleId])).toEqual([
    { number: Number(form.number), name: "Blue van", payload: String(of("lb", 2000n).amount), version: 2 },
  ]);
  expect(await house.ask("select name from stock_location where vehicle_id = $1", [vehicleId])).toEqual([{ name: `Truck ${form.number}` }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({
    deed: "vehicle-changed",
    details: { before: { name: "White flatbed", payload: "1,850 lb", staysAboard: "0 oz wt" }, after: { name: "Blue van", payload: "2,000 lb", staysAboard: "540 lb" } },
  });
});

test("a payload given back as it was shown stays what it was, unrounded", async () => {
  const form = { ...vehicleForm(), payload: "1850.123 lb" };
  const { vehicleId } = valueOf(await addVehicle(house, company.owner.key, form));
  const payload = () => house.ask("select payload from vehicle where vehicle_id = $1", [vehicleId]);
  const before = await payload();
  valueOf(await change({ vehicleId, version: 1, ...form, payload: "1,850 lb" }));
  expect(await payload()).toEqual(before);
  valueOf(await change({ vehicleId, version: 2, ...form, payload: "" }));
  expect(await payload()).toEqual([{ payload: null }]);
});

test("the second of two who changed is told", async () => {
  const vehicleId = await aVehicle(house, company);
  const form = vehicleForm();
  valueOf(await change({ vehicleId, version: 1, ...form }));
  expect(await change({ vehicleId, version: 1, ...form })).toMatchObject({ refusal: { kind: "conflict", sentence: saying("Someone else") } });
});

test("another truck's number is taken, and a truck that is stood down is changed no more", async () => {
  const form = vehicleForm();
  valueOf(await addVehicle(house, company.owner.key, form));
  const vehicleId = await aVehicle(house, company);
  expect(await change({ vehicleId, version: 1, ...form })).toMatchObject({ refusal: { kind: "bad-input", fields: { number: saying("another number") } } });
  valueOf(await standDownVehicle(house, company.owner.key, { vehicleId }));
  expect(await change({ vehicleId, version: 2, ...vehicleForm() })).toMatchObject({ refusal: { kind: "conflict", sentence: saying("stood down") } });
});
