import { afterAll, beforeAll, expect, test } from "vitest";
import { lotsAt, lotsNamed } from "#application/stock/lots-at";
import { locationOfVehicle, singularLocation } from "#application/stock/stock-locations";
import { of } from "#domain/quantities/quantity";
import { aCompany } from "../../support/crew";
import { aCrewDay, inWorkOf } from "../../support/crew-day";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

test("the lots of the asked products where they are, and the others with nothing at the first location", async () => {
  const company = await aCompany(house);
  const day = await aCrewDay(house, company);
  const lots = await inWorkOf(house, company, async (work) => {
    const truck = (await locationOfVehicle(work, day.vehicleId)) ?? "";
    const shop = await singularLocation(work, "shop");
    return (await lotsAt(work, [truck], [day.feedId])).map(({ number, amount, stockLocationId, containerSize }) => [number, amount, stockLocationId === truck ? "truck" : shop, containerSize]);
  });
  const bag = of("lb", "50").amount;
  expect(lots).toEqual([["GM-1", bag, "truck", bag], ["GM-2", 4n * bag, "truck", bag], ["GM-3", 0n, "truck", bag]]);
});

test("lots by id with number, product and how it is counted; an id that is no lot is left out", async () => {
  const company = await aCompany(house);
  const day = await aCrewDay(house, company);
  const [row] = await house.ask<{ id: string }>("select lot_id as id from lot where company_id = $1 and number = 'IR-1'", [company.companyId]);
  const id = row?.id ?? "";
  const named = await inWorkOf(house, company, (work) => lotsNamed(work, [id, house.newId()]));
  expect(named).toEqual(new Map([[id, { lotNumber: "IR-1", productId: day.ironId, productName: expect.any(String) as string, dimension: "volume" }]]));
});
