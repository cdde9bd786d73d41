import { afterAll, beforeAll, expect, test } from "vitest";
import { lotsAt } from "#application/stock/lots-at";
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
