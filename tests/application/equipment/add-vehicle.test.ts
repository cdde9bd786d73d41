import { afterAll, beforeAll, expect, test } from "vitest";
import { addVehicle, nameOfTruck, refuseTakenNumber } from "#application/equipment/add-vehicle";
import { standDownVehicle } from "#application/equipment/stand-down-vehicle";
import { of } from "#domain/quantities/quantity";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { vehicleForm } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE, saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const add = (form: Parameters<typeof addVehicle>[2]) => addVehicle(house, company.owner.key, form);

test("writes the truck, its location of stock, and what was done", async () => {
  const form = vehicleForm();
  const { vehicleId } = valueOf(await add(form));
  expect(await house.ask("select number, name, payload, stood_down_at, version from vehicle where vehicle_id = $1", [vehicleId])).toEqual([
    { number: Number(form.number), name: "White flatbed", payload: String(of("lb", 1850n).amount), stood_down_at: null, version: 1 },
  ]);
  expect(await house.ask("select kind, name from stock_location where vehicle_id = $1", [vehicleId])).toEqual([{ kind: "truck", name: nameOfTruck(Number(form.number)) }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "vehicle-added", subject_id: vehicleId, details: { payload: "1,850 lb" } });
});

test("weights that nobody knows stay unknown, and nothing rides along where nothing is entered as riding along", async () => {
  const weights = async (form: ReturnType<typeof vehicleForm>) => house.ask("select payload, stays_aboard from vehicle where vehicle_id = $1", [valueOf(await add(form)).vehicleId]);
  expect(await weights({ ...vehicleForm(), payload: "", staysAboard: "" })).toEqual([{ payload: null, stays_aboard: null }]);
  expect(await weights({ ...vehicleForm(), staysAboard: "0 lb" })).toMatchObject([{ stays_aboard: "0" }]);
  expect(await weights({ ...vehicleForm(), staysAboard: "620 lb" })).toMatchObject([{ stays_aboard: String(of("lb", 620n).amount) }]);
});

test("a number stands once, even after its truck is stood down", async () => {
  const form = vehicleForm();
  const { vehicleId } = valueOf(await add(form));
  expect(await add(form)).toMatchObject({ refusal: { kind: "bad-input", fields: { number: saying("White flatbed") } } });
  valueOf(await standDownVehicle(house, company.owner.key, { vehicleId }));
  expect(await add(form)).toMatchObject({ refusal: { fields: { number: saying("past papers") } } });
});

test("a truck's own number is not taken by itself", async () => {
  const found = { vehicleId: "v1", name: "White flatbed", stoodDownAt: null };
  const work = { company: { companyId: company.companyId }, tx: { vehicle: { findUnique: () => Promise.resolve(found) } } } as unknown as Parameters<typeof refuseTakenNumber>[0];
  expect(await refuseTakenNumber(work, 3, "v1")).toBeUndefined();
  expect(await refuseTakenNumber(work, 3, null)).toMatchObject({ ok: false });
});

test.each([["number", "0"], ["number", "1000"], ["number", "two"], ["payload", "1850"], ["payload", "100 gal"], ["payload", "0 lb"], ["staysAboard", "620"], ["staysAboard", "3 gal"], ["name", ""]])(
  "is refused at %s for %j",
  async (field, text) => {
    expect(await add({ ...vehicleForm(), [field]: text })).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
  },
);
