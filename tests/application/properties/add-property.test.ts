import { afterAll, beforeAll, expect, test } from "vitest";
import { addProperty } from "#application/properties/add-property";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aClient, clientForm } from "../../support/ground";
import { countedId, openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


function addressOf({ street, city, state, zip }: ReturnType<typeof clientForm>) {
  return { street, city, state, zip };
}

test("a customer has several properties, each at its own place", async () => {
  const { clientId } = await aClient(house, company);
  const { propertyId } = valueOf(await addProperty(house, company.owner.key, { clientId, ...addressOf(clientForm()), zip: "60940", state: "IL" }));
  const rows = await house.ask("select property_id, position_origin from property where client_id = $1 order by created_at, property_id", [clientId]);
  expect(rows).toHaveLength(2);
  expect(rows).toContainEqual({ property_id: propertyId, position_origin: "zip-centroid" });
});

test("the same address is refused, and so is a customer of nobody or of another company", async () => {
  const { clientId } = await aClient(house, company);
  const address = addressOf(clientForm());
  valueOf(await addProperty(house, company.owner.key, { clientId, ...address }));
  expect(await addProperty(house, company.owner.key, { clientId, ...address })).toMatchObject({ refusal: { fields: { street: A_SENTENCE } } });
  const other = await aClient(house, await aCompany(house, "Other Turf"));
  for (const stranger of [countedId(999_999), other.clientId]) {
    expect(await addProperty(house, company.owner.key, { clientId: stranger, ...addressOf(clientForm()) })).toMatchObject({ refusal: { kind: "not-found" } });
  }
});
