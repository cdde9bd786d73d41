import { expect, test } from "vitest";
import { spraysOfVisits } from "#application/fills/sprays-of-visits";
import { rateOf } from "#domain/quantities/rate";
import { aFedVisit, aGround, aVisitWith, inWorkOf, preventer } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

test("the sprays of a visit stand by the tank that they go into, with what is planned; one that sprays nothing says so", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const ground = await aGround(house, company);
  const spread = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, preventer(day, ground));
  const { sprays, without, mark } = await inWorkOf(house, company, (work) => spraysOfVisits(work, [visitId, spread]));
  expect(sprays).toMatchObject([{ visit: { visitId, vehicleId: day.vehicleId }, gear: { equipmentId: day.sprayerId }, stop: { visitId }, treatments: [{ productId: day.ironId }] }]);
  // 1.5 fl oz per 1,000 sq ft in 2 gal.
  expect(sprays[0]?.planned).toMatchObject([{ productId: day.ironId, concentration: rateOf("product-volume-per-spray-volume", "0.75", "fl oz per gal"), treatment: { productId: day.ironId } }]);
  expect(without).toMatchObject([{ visitId: spread, why: "Nothing is sprayed at this visit." }]);
  expect(mark).toBeDefined();
});

test("without a visit there is none", async () => {
  expect(await inWorkOf(house, company, (work) => spraysOfVisits(work, []))).toEqual({ sprays: [], without: [], mark: undefined });
});
