import { afterAll, beforeAll, expect, test } from "vitest";
import { addClient } from "#application/properties/add-client";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { clientForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


test("writes the customer with a first property in the middle of its ZIP code", async () => {
  const form = clientForm();
  const { clientId, propertyId } = valueOf(await addClient(house, company.owner.key, { ...form, name: " Avery Thorn ", email: " Avery@Thorn.example " }));
  expect(await house.ask("select name, phone, email, standing, version from client where client_id = $1", [clientId])).toEqual([
    { name: "Avery Thorn", phone: "219-555-0121", email: "avery@thorn.example", standing: "current", version: 1 },
  ]);
  const [row] = await house.ask("select client_id, street, state, zip, round(latitude::numeric, 1)::text as north, position_origin from property where property_id = $1", [propertyId]);
  expect(row).toEqual({ client_id: clientId, street: form.street, state: "IN", zip: "46304", north: "41.6", position_origin: "zip-centroid" });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "client-added", subject_id: clientId, details: { name: "Avery Thorn", street: form.street } });
});

test("a ZIP code that has no area gives no position, and nothing is made up", async () => {
  const { propertyId } = valueOf(await addClient(house, company.owner.key, { ...clientForm(), zip: "00001" }));
  expect(await house.ask("select latitude, position_origin from property where property_id = $1", [propertyId])).toEqual([{ latitude: null, position_origin: null }]);
});

test("an address that is on file is refused at its field, and no customer is left behind", async () => {
  const form = clientForm();
  valueOf(await addClient(house, company.owner.key, form));
  const before = await house.books();
  const again = { ...form, street: ` ${form.street.toUpperCase()}. `, zip: "46304-1102" };
  expect(await addClient(house, company.owner.key, again)).toMatchObject({ refusal: { kind: "bad-input", fields: { street: A_SENTENCE } } });
  expect(await house.books()).toEqual(before);
});

test.each([["name", ""], ["street", " "], ["city", ""], ["state", "XX"], ["zip", "4630"], ["email", "avery at thorn"], ["phone", "x".repeat(41)]])("%s as %j is refused at its field", async (field, value) => {
  expect(await addClient(house, company.owner.key, { ...clientForm(), [field]: value })).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
});
