import { afterAll, beforeAll, expect, test } from "vitest";
import { changeProperty } from "#application/properties/change-property";
import { readProperty } from "#application/properties/read-property";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aClient, propertyForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { of } from "#domain/quantities/quantity";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


test("writes access, mowing and watering, moves to the new ZIP code, and the trail never says the gate code", async () => {
  const { propertyId } = await aClient(house, company);
  expect(await changeProperty(house, company.owner.key, propertyForm(propertyId))).toEqual({ ok: true, value: { version: 2 } });
  const { property } = valueOf(await readProperty(house, company.owner.key, { propertyId }));
  expect(property).toMatchObject({
    version: 2, state: "IL", zip: "60401", accessNote: "Side gate", gateCode: "4471", narrowestGate: of("in", 36n), dogNote: "Biscuit, friendly", tankWater: "yes",
    mowingWeekday: 2, mowedBy: "customer", lotArea: of("acre", "0.25"), wateringHours: { fromMinute: 240, untilMinute: 570 }, wateringWeekdays: [1, 3],
    note: "Two lines\nof a note",
  });
  expect(Math.round(property.position?.latitude ?? 0)).toBe(41);
  const last = (await trailOf(house, company.companyId)).at(-1);
  expect(last).toMatchObject({ deed: "property-changed", details: { after: { gateCode: "changed", zip: "60401" } } });
  expect(JSON.stringify(last?.details)).not.toContain("4471");
});

test("watering days may come as a list, as the browser's form holds numbered fields", async () => {
  const { propertyId } = await aClient(house, company);
  const wateringOn = [undefined, "yes", "", false, "yes"];
  valueOf(await changeProperty(house, company.owner.key, { ...propertyForm(propertyId), wateringOn: wateringOn }));
  const { property } = valueOf(await readProperty(house, company.owner.key, { propertyId }));
  expect(property.wateringWeekdays).toEqual([1, 4]);
});

test("days go by odd or even dates or by the house number instead of days of the week, and back", async () => {
  const { propertyId } = await aClient(house, company);
  const form = { ...propertyForm(propertyId), street: "41 Sorrel Hill" };
  const kept = async () => {
    const { property } = valueOf(await readProperty(house, company.owner.key, { propertyId }));
    return [property.wateringDates, property.wateringWeekdays];
  };
  const choose = (version: number, wateringBy: "weekdays" | "odd" | "even" | "house-number", wateringOn = {}) => changeProperty(house, company.owner.key, { ...form, version, wateringBy, wateringOn });
  valueOf(await choose(1, "odd"));
  expect(await kept()).toEqual(["odd", []]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ details: { after: { wateringDates: "odd" } } });
  valueOf(await choose(2, "house-number"));
  expect(await kept()).toEqual(["house-number", []]);
  expect(await choose(3, "even", { "1": "yes" })).toMatchObject({ refusal: { fields: { wateringBy: A_SENTENCE } } });
  valueOf(await choose(3, "weekdays", { "2": "yes" }));
  expect(await kept()).toEqual([null, [2]]);
});

test("a street without a house number has no dates of its own, and the table takes dates or days of the week", async () => {
  const { propertyId } = await aClient(house, company);
  const form = { ...propertyForm(propertyId), wateringOn: {} };
  expect(await changeProperty(house, company.owner.key, { ...form, street: "Old Mill Road", wateringBy: "house-number" })).toMatchObject({ refusal: { fields: { wateringBy: A_SENTENCE } } });
  valueOf(await changeProperty(house, company.owner.key, { ...form, street: "Old Mill Road", wateringBy: "even" }));
  await expect(house.ask("update property set watering_weekdays = '1' where property_id = $1", [propertyId])).rejects.toThrow("property_waters_by_weekdays_or_dates");
  await expect(house.ask("update property set watering_dates = 'some' where property_id = $1", [propertyId])).rejects.toThrow("property_watering_dates_are_known");
});

test("a position that is given is kept as entered, and one that is taken back leaves the middle of the ZIP code", async () => {
  const { propertyId } = await aClient(house, company);
  const form = propertyForm(propertyId);
  const positionAfter = async (version: number, position: string) => {
    valueOf(await changeProperty(house, company.owner.key, { ...form, version, position }));
    return valueOf(await readProperty(house, company.owner.key, { propertyId })).property.position;
  };
  expect(await positionAfter(1, "41.4021, -87.3254")).toEqual({ latitude: 41.4021, longitude: -87.3254, origin: "entered" });
  expect(await positionAfter(2, "")).toMatchObject({ origin: "zip-centroid" });
});

test("watering that runs to midnight ends with the day", async () => {
  const { propertyId } = await aClient(house, company);
  valueOf(await changeProperty(house, company.owner.key, { ...propertyForm(propertyId), wateringFrom: "22:00", wateringUntil: "00:00" }));
  expect(valueOf(await readProperty(house, company.owner.key, { propertyId })).property.wateringHours).toEqual({ fromMinute: 1320, untilMinute: 1440 });
});

test("whoever filled the form from an older version is told, and an address of another property is refused", async () => {
  const { propertyId } = await aClient(house, company);
  const other = await aClient(house, company);
  const form = propertyForm(propertyId);
  valueOf(await changeProperty(house, company.owner.key, form));
  expect(await changeProperty(house, company.owner.key, form)).toMatchObject({ refusal: { kind: "conflict" } });
  const taken = { ...propertyForm(other.propertyId), street: form.street, zip: form.zip };
  expect(await changeProperty(house, company.owner.key, taken)).toMatchObject({ refusal: { fields: { street: A_SENTENCE } } });
});

test.each([
  ["narrowestGate", { narrowestGate: "0" }], ["lotArea", { lotArea: "some" }], ["mowingWeekday", { mowingWeekday: "8" }], ["wateringUntil", { wateringUntil: "" }],
  ["wateringUntil", { wateringUntil: "04:00" }], ["position", { position: "41.4" }], ["position", { position: "95, 10" }], ["wateringFrom", { wateringFrom: "25:00" }], ["dogNote", { dogNote: "x".repeat(201) }], ["tankWater", { tankWater: "perhaps" as "yes" }],
] as const)("%s is refused at its field", async (field, change) => {
  const { propertyId } = await aClient(house, company);
  expect(await changeProperty(house, company.owner.key, { ...propertyForm(propertyId), ...change })).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
});
