import { afterAll, beforeAll, expect, test } from "vitest";
import { addZone } from "#application/properties/add-zone";
import { changeClient } from "#application/properties/change-client";
import { listProperties } from "#application/properties/list-properties";
import { removeZone } from "#application/properties/remove-zone";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aClient, aZone, zoneForm } from "../../support/ground";
import { openHouse, type TestHouse } from "../../support/house";
import { of } from "#domain/quantities/quantity";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


test("shows every property of the company with the sum of the lawns on its plan, and no gate code", async () => {
  const bare = await aClient(house, company);
  const measured = await aZone(house, company);
  const more = { propertyId: measured.propertyId, ...zoneForm(), measure: { kind: "area", area: "600" } } as const;
  valueOf(await addZone(house, company.owner.key, more));
  const gone = valueOf(await addZone(house, company.owner.key, more));
  valueOf(await removeZone(house, company.owner.key, { zoneId: gone.zoneId }));
  valueOf(await changeClient(house, company.owner.key, { clientId: bare.clientId, version: 1, name: "Avery Thorn", phone: "", email: "", standing: "left" }));
  await aClient(house, await aCompany(house, "Other Turf"));
  const { properties } = valueOf(await listProperties(house, company.owner.key, {}));
  expect(properties).toHaveLength(2);
  expect(properties.find(({ propertyId }) => propertyId === measured.propertyId)).toMatchObject({ lawns: 2, lawnArea: of("sq ft", 3000n), standing: "current" });
  expect(properties.find(({ propertyId }) => propertyId === bare.propertyId)).toMatchObject({ lawns: 0, lawnArea: null, standing: "left", phone: null });
  expect(properties.every((property) => !("gateCode" in property))).toBe(true);
});
