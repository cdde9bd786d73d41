import { afterAll, beforeAll, expect, test } from "vitest";
import { asGuest } from "#adapters/postgres/company-work";
import { locationOfPlace, locationOfTank, locationOfVehicle, type LocationWork, singularLocation } from "#application/stock/stock-locations";
import { aCompany, type TestCompany } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { aTank, aTruck } from "../../support/shed";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

/** Runs something in a transaction of the company, as a use case would. */
function inWork<Answer>(ask: (work: LocationWork) => Promise<Answer>): Promise<Answer> {
  const { companyId } = company;
  return asGuest(house.client, companyId, (tx) =>
    ask({ tx, company: { companyId, name: "Foxtail Turf", state: "IN", timeZone: "America/Chicago", isDemonstration: false }, now: house.now(), newId: house.newId }),
  );
}

async function locationsOf(kind: string) {
  return house.ask<{ name: string }>("select name from stock_location where company_id = $1 and kind = $2", [company.companyId, kind]);
}

test.each([["shop", "Shop"], ["supplier", "Supplier"], ["lawn", "Lawn"], ["rinsate", "Rinsate"], ["loss", "Loss"], ["count-difference", "Count difference"]] as const)(
  "the %s is made at its first use and found afterwards, also by eight at once",
  async (kind, name) => {
    const ids = await Promise.all(Array.from({ length: 8 }, () => inWork((work) => singularLocation(work, kind))));
    expect(new Set(ids).size).toBe(1);
    expect(await locationsOf(kind)).toEqual([{ name }]);
  },
);

test("a truck and a tank have one location each, named as they are", async () => {
  const [vehicleId, equipmentId] = [await aTruck(house, company), await aTank(house, company)];
  const first = await inWork((work) => locationOfVehicle(work, vehicleId));
  expect(await inWork((work) => locationOfPlace(work, { kind: "vehicle", vehicleId }))).toBe(first);
  const tank = await inWork((work) => locationOfTank(work, equipmentId));
  expect(await inWork((work) => locationOfPlace(work, { kind: "equipment", equipmentId }))).toBe(tank);
  expect(await inWork((work) => locationOfPlace(work, { kind: "shop" }))).toBe(await inWork((work) => singularLocation(work, "shop")));
  expect([await locationsOf("truck"), await locationsOf("tank")]).toEqual([[{ name: "Box truck" }], [{ name: "Skid tank" }]]);
});

test("another company's truck and tank are nobody's", async () => {
  const other = await aCompany(house, "Other Turf");
  const [vehicleId, equipmentId] = [await aTruck(house, other), await aTank(house, other)];
  expect(await inWork((work) => locationOfVehicle(work, vehicleId))).toBeUndefined();
  expect(await inWork((work) => locationOfTank(work, equipmentId))).toBeUndefined();
});
