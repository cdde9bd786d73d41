import { afterAll, beforeAll, expect, test } from "vitest";
import { addSeeding } from "#application/properties/add-seeding";
import { addSoilTest } from "#application/properties/add-soil-test";
import { addStation } from "#application/properties/add-station";
import { addWaterEdge } from "#application/properties/add-water-edge";
import { readProperty } from "#application/properties/read-property";
import { removeSeeding } from "#application/properties/remove-seeding";
import { removeWaterEdge } from "#application/properties/remove-water-edge";
import { removeZone } from "#application/properties/remove-zone";
import { aCompany, type TestCompany, valueOf } from "../../support/crew";
import { aClient, aZone, NO_STATION_TEST, seedingForm, soilTestForm, stationForm } from "../../support/ground";
import { countedId, openHouse, type TestHouse } from "../../support/house";
import { rational } from "#domain/quantities/rational";
import { of } from "#domain/quantities/quantity";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());


test("reads a property with its customer, lawns, water, soil tests and stations", async () => {
  const { zoneId, propertyId } = await aZone(house, company);
  valueOf(await addWaterEdge(house, company.owner.key, { zoneId, name: "Pond", length: "60", width: "" }));
  valueOf(await addSoilTest(house, company.owner.key, { ...soilTestForm(zoneId), sampledOn: "2024-03-20", phosphorusWord: "Low" }));
  valueOf(await addSoilTest(house, company.owner.key, soilTestForm(zoneId)));
  valueOf(await addStation(house, company.owner.key, { propertyId, ...stationForm(), waters: { [zoneId]: "yes" } }));
  const { property } = valueOf(await readProperty(house, company.owner.key, { propertyId }));
  expect(property).toMatchObject({
    propertyId, gateCode: null, townRule: "unknown", controller: "unknown", mowingDay: null,
    client: { name: "Avery Thorn", standing: "current", otherProperties: [] },
    lawns: [{ zoneId, letter: "A", area: of("sq ft", 2400n), areaOrigin: "measured", measuredOn: "2026-04-14", seedings: [], waterBeside: "yes", waterEdges: [{ name: "Pond", length: of("ft", 60n), width: null }] }],
    stations: [
      {
        number: 1, test: { averageDepth: of("in", "0.24"), minutes: 20, windMph: 3, testedOn: "2026-04-02" }, zoneIds: [zoneId],
        evenness: { uniformity: { lowerQuarterUniformity: rational(5n, 6n), christiansenUniformity: rational(11n, 12n) }, findings: [] },
      },
    ],
  });
  expect(property.lawns[0]?.soilTests.map(({ phosphorusWord }) => phosphorusWord)).toEqual(["Very low", "Low"]);
});

test("a station without a test has no evenness, and one of whose test only the average is on file wants care", async () => {
  const { propertyId } = await aClient(house, company);
  const { key } = company.owner;
  valueOf(await addStation(house, key, { propertyId, ...stationForm(), ...NO_STATION_TEST }));
  const { stationId } = valueOf(await addStation(house, key, { propertyId, ...stationForm(), number: "2", wind: "" }));
  const evennesses = async () => valueOf(await readProperty(house, key, { propertyId })).property.stations.map(({ evenness }) => evenness?.findings.map(({ rule }) => rule));
  expect(await evennesses()).toEqual([undefined, ["can-test-wind-not-taken"]]);
  await house.ask("update station set test_cans = '{}' where station_id = $1", [stationId]);
  expect(await evennesses()).toEqual([undefined, ["can-test-without-cans"]]);
});

test("the seed and sod of a lawn come with it, the latest first, without what was taken off", async () => {
  const { zoneId, propertyId } = await aZone(house, company);
  const { key } = company.owner;
  valueOf(await addSeeding(house, key, { zoneId, ...seedingForm() }));
  valueOf(await addSeeding(house, key, { zoneId, date: "2026-09-10", kind: "sod", method: "unknown", standing: "planned" }));
  const { seedingId } = valueOf(await addSeeding(house, key, { zoneId, ...seedingForm(), kind: "new-lawn" }));
  valueOf(await removeSeeding(house, key, { seedingId }));
  const { property } = valueOf(await readProperty(house, key, { propertyId }));
  expect(property.lawns[0]?.seedings.map(({ seeding }) => [seeding.date, seeding.kind])).toEqual([["2026-09-10", "sod"], ["2026-04-03", "overseeding"]]);
});

test("what is off the plan is not read, and an id of nobody or of another company is no property", async () => {
  const { zoneId, propertyId } = await aZone(house, company);
  const { waterEdgeId } = valueOf(await addWaterEdge(house, company.owner.key, { zoneId, name: "Pond", length: "", width: "" }));
  valueOf(await removeWaterEdge(house, company.owner.key, { waterEdgeId }));
  expect(valueOf(await readProperty(house, company.owner.key, { propertyId })).property.lawns[0]?.waterEdges).toEqual([]);
  valueOf(await removeZone(house, company.owner.key, { zoneId }));
  expect(valueOf(await readProperty(house, company.owner.key, { propertyId })).property.lawns).toEqual([]);
  const other = await aClient(house, await aCompany(house, "Other Turf"));
  for (const stranger of [countedId(999_999), other.propertyId]) {
    expect(await readProperty(house, company.owner.key, { propertyId: stranger })).toMatchObject({ refusal: { kind: "not-found" } });
  }
});
