import { expect, test } from "vitest";
import { changeProperty } from "#application/properties/change-property";
import { useRateOf, visitRows } from "#application/visits/visit-rows";
import { rateOf } from "#domain/quantities/rate";
import { aCompany, valueOf } from "../../support/crew";
import { aFedVisit, aGround, aVisitWith, CREW_DAY, feedAndIron, inWorkOf } from "../../support/crew-day";
import { propertyForm } from "../../support/ground";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

const rowsOf = (visitIds: readonly string[], of = company) => inWorkOf(house, of, (work) => visitRows(work, visitIds));

test("a visit has its treatments with exact rates and their lawns, its place on the day, its property and its customer", async () => {
  const { visitId, propertyId, frontId, backId } = await aFedVisit(house, company, day);
  await house.ask("update property set latitude = null, longitude = null, position_origin = null where property_id = $1", [propertyId]);
  const [row] = await rowsOf([visitId]);
  expect(row).toMatchObject({
    visitId, name: "Spring feed", roundId: null, opensOn: CREW_DAY, closesOn: "2026-04-24", state: "planned", window: null, secondLookAfterDays: 3, looks: [],
    stop: { routeDayId: day.routeDayId, date: CREW_DAY, vehicleId: day.vehicleId, operatorId: company.owner.personId, arrivesAtMinute: 450, startsAtMinute: 420, forecastHighF: 68, forecastFollowingHighsF: [75, 74, 72] },
    property: { propertyId, state: "IN", position: null, mowingDay: null, townRule: "unknown", controller: "unknown" },
    client: { name: "Avery Thorn", phone: "219-555-0121" },
  });
  expect(row?.treatments).toMatchObject([
    { line: 1, productId: day.feedId, labelUse: "Established lawns", rate: rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft"), rateText: "2.5 lb/1,000 sq ft", equipmentId: null },
    { line: 2, productId: day.ironId, labelUse: "Foliar iron", rate: rateOf("product-volume-per-area", "1.5", "fl oz per 1,000 sq ft") },
  ]);
  expect(row?.treatments.map(({ zoneIds }) => zoneIds.toSorted())).toEqual([[frontId, backId].toSorted(), [frontId, backId].toSorted()]);
});

test("work without a product is a look and no treatment; a visit on no day has no stop", async () => {
  const ground = await aGround(house, company);
  const visitId = await aVisitWith(house, company, ground, { "0": { productUse: "look", rate: "", reason: "grubs", lawns: { [ground.frontId]: "yes" } } });
  expect(await rowsOf([visitId])).toMatchObject([{ treatments: [], looks: [{ kind: "look", line: 1, reason: "grubs", zoneIds: [ground.frontId] }], stop: null, secondLookAfterDays: null }]);
});

test("what the property and the customer's window say is handed on, each whole or not at all", async () => {
  const { visitId, propertyId } = await aFedVisit(house, company, day);
  valueOf(await changeProperty(house, company.owner.key, propertyForm(propertyId)));
  await house.ask("update visit set window_from_minute = 540, window_until_minute = 720 where visit_id = $1", [visitId]);
  await house.ask("update property set latitude = 41.5, longitude = -87.5, position_origin = 'entered' where property_id = $1", [propertyId]);
  expect(await rowsOf([visitId])).toMatchObject([
    {
      window: { fromMinute: 540, untilMinute: 720 },
      property: {
        state: "IL", accessNote: "Side gate", dogNote: "Biscuit, friendly", tankWater: "yes", mowingDay: 2, townRule: { days: { weekdays: [1, 3] }, hours: { fromMinute: 240, untilMinute: 570 } }, controller: "none",
        position: { latitude: 41.5, longitude: -87.5 },
      },
    },
  ]);
});

test("come in the order of the ids, without those that the company does not have", async () => {
  const ground = await aGround(house, company);
  const visitIds = [await aVisitWith(house, company, ground, feedAndIron(day, ground)), await aVisitWith(house, company, ground, feedAndIron(day, ground))];
  const asked = [visitIds[1] ?? "", house.newId(), visitIds[0] ?? ""];
  expect((await rowsOf(asked)).map(({ visitId }) => visitId)).toEqual(visitIds.toReversed());
  const other = await aCompany(house, "Other Turf");
  expect(await rowsOf(asked, other)).toEqual([]);
});

test("a rate out of its columns is a mass or a volume on an area, as the basis says", () => {
  const mass = rateOf("product-mass-per-area", "2.5", "lb per 1,000 sq ft");
  const volume = rateOf("product-volume-per-area", "1.5", "fl oz per 1,000 sq ft");
  expect(useRateOf(mass.basis, mass.amount, mass.per)).toEqual(mass);
  expect(useRateOf(volume.basis, volume.amount, volume.per)).toEqual(volume);
  const strength = rateOf("product-mass-per-spray-volume", "0.5", "oz wt per gal");
  expect(useRateOf(strength.basis, strength.amount, strength.per)).toEqual(strength);
  expect(() => useRateOf("carrier-volume-per-area", 1n, 1n)).toThrow();
});
