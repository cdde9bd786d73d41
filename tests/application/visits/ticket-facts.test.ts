import { expect, test } from "vitest";
import { standDownMeasuringTool } from "#application/equipment/stand-down-measuring-tool";
import { addMeasuringTool } from "#application/equipment/add-measuring-tool";
import { addLicense } from "#application/people/add-license";
import { withdrawLicense } from "#application/people/withdraw-license";
import { addSeeding } from "#application/properties/add-seeding";
import { addSoilTest } from "#application/properties/add-soil-test";
import { addStation } from "#application/properties/add-station";
import { addWaterEdge } from "#application/properties/add-water-edge";
import { removeSeeding } from "#application/properties/remove-seeding";
import { removeZone } from "#application/properties/remove-zone";
import { lookAtLawns } from "#application/visits/look-at-lawns";
import { changeHouseSettings } from "#application/companies/change-house-settings";
import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";
import { HOUSE_SETTINGS_CHANGE } from "../../support/attempts-of-company";
import { licensesOnFile, readTicketFacts, type TicketFacts } from "#application/visits/ticket-facts";
import { visitRows } from "#application/visits/visit-rows";
import { compareExact, exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { licenseForm } from "../../support/attempts-of-company";
import { aCompany, valueOf } from "../../support/crew";
import { aFedVisit, aGround, aRecord, aVisitWith, feedAndIron, inWorkOf, lookForm, preventer } from "../../support/crew-day";
import { NO_STATION_TEST, seedingForm, soilTestForm, stationForm } from "../../support/ground";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

const factsOf = (visitIds: readonly string[], ofCompany = company): Promise<TicketFacts> =>
  inWorkOf(house, ofCompany, async (work) => readTicketFacts(work, await visitRows(work, visitIds)));

test("the lawns of a property come by letter with water, soil tests and stations, without those taken off the plan", async () => {
  const { key } = company.owner;
  const { visitId, propertyId, frontId, backId } = await aFedVisit(house, company, day);
  valueOf(await addWaterEdge(house, key, { zoneId: frontId, name: "Pond", length: "60 ft", width: "" }));
  valueOf(await addSoilTest(house, key, soilTestForm(frontId)));
  valueOf(await addStation(house, key, { propertyId, ...stationForm(), waters: { [frontId]: "yes" }, longestRun: "12" }));
  valueOf(await addStation(house, key, { propertyId, ...stationForm(), number: "2", name: "Rotors", ...NO_STATION_TEST, waters: { [frontId]: "yes" } }));
  const [front, back] = (await factsOf([visitId])).lawnsByProperty.get(propertyId) ?? [];
  expect(front).toMatchObject({
    propertyId,
    stations: [
      { stationName: "1 Front spray heads", cycle: { longestRunMinutes: 12, soakMinutes: 30 } },
      { stationName: "2 Rotors", depthPerHour: "not-tested", cycle: "none" },
    ],
    lawn: {
      zoneId: frontId, letter: "A", name: "Front", area: of("sq ft", 2400n), grasses: ["Kentucky bluegrass", "perennial ryegrass"], grassesAssumed: false,
      waterBeside: "yes", waterEdges: [{ name: "Pond", length: of("ft", 60n), width: "unknown" }], soilTests: [{ sampledOn: "2026-03-20", phosphorus: "deficient" }], seedings: [], history: [],
    },
  });
  // 0.24 in in 20 minutes are 0.72 in an hour.
  const [tested] = front?.stations.map(({ depthPerHour }) => (depthPerHour === "not-tested" ? depthPerHour : compareExact(depthPerHour, exactly("in", "0.72")))) ?? [];
  expect(tested).toBe(0);
  expect(back).toMatchObject({ stations: [], lawn: { zoneId: backId, letter: "B", waterBeside: "none", waterEdges: [], soilTests: [] } });
  valueOf(await removeZone(house, key, { zoneId: backId }));
  expect((await factsOf([visitId])).lawnsByProperty.get(propertyId)?.map(({ lawn }) => lawn.zoneId)).toEqual([frontId]);
});

test("the seed and sod of a lawn go with it, done and planned, without what was taken off", async () => {
  const { key } = company.owner;
  const { visitId, propertyId, frontId, backId } = await aFedVisit(house, company, day);
  valueOf(await addSeeding(house, key, { zoneId: frontId, ...seedingForm() }));
  valueOf(await addSeeding(house, key, { zoneId: frontId, date: "2026-09-10", kind: "new-lawn", method: "unknown", standing: "planned" }));
  const { seedingId } = valueOf(await addSeeding(house, key, { zoneId: frontId, ...seedingForm(), kind: "new-lawn" }));
  valueOf(await removeSeeding(house, key, { seedingId }));
  valueOf(await addSeeding(house, key, { zoneId: backId, ...seedingForm(), kind: "sod", method: "unknown" }));
  const lawns = (await factsOf([visitId])).lawnsByProperty.get(propertyId);
  expect(lawns?.map(({ lawn }) => lawn.seedings)).toEqual([
    [
      { kind: "new-lawn", method: "unknown", date: "2026-09-10", standing: "planned" },
      { kind: "overseeding", method: "slit", date: "2026-04-03", standing: "done" },
    ],
    [{ kind: "sod", date: "2026-04-03", standing: "done" }],
  ]);
});

test("what was seen on a lawn goes with it, the latest look first", async () => {
  const fed = await aFedVisit(house, company, day);
  valueOf(await lookAtLawns(house, company.owner.key, lookForm(house, fed, company.owner.personId)));
  valueOf(await lookAtLawns(house, company.owner.key, lookForm(house, fed, company.owner.personId, { seenAt: "7:40", lawns: { [fed.frontId]: "no" }, said: {} })));
  const lawns = (await factsOf([fed.visitId])).lawnsByProperty.get(fed.propertyId);
  expect(lawns?.map(({ looks }) => looks.map(({ blooms }) => blooms))).toEqual([["no", "yes"], ["no"]]);
});

test("what is on hand is in the shop and the trucks together, and what was put down is no more", async () => {
  const fed = await aFedVisit(house, company, day);
  const before = await factsOf([fed.visitId]);
  expect(before.onHand.get(day.feedId)).toBe(of("lb", 850n).amount);
  expect(before.onHand.has(day.preventerId)).toBe(false);
  await aRecord(house, company.owner, fed);
  const after = await factsOf([fed.visitId]);
  // 2.5 lb on each of 6.4 thousand square feet.
  expect(after.onHand.get(day.feedId)).toBe(of("lb", 834n).amount);
  const [front] = after.lawnsByProperty.get(fed.propertyId) ?? [];
  expect(front?.lawn.history.map(({ on }) => on)).toContain("2026-04-14");
  expect(front?.putDown.map(({ visitId, line }) => [visitId, line])).toEqual([[fed.visitId, 1], [fed.visitId, 2]]);
});

test("the labels and names are of what is planned, gear and calibrations of the company, the tools those in use", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const { measuringToolId } = valueOf(await addMeasuringTool(house, company.owner.key, { name: "Cracked cup", mark: "1 fl oz" }));
  valueOf(await standDownMeasuringTool(house, company.owner.key, { measuringToolId }));
  const facts = await factsOf([visitId]);
  expect([...facts.labels.keys()].toSorted()).toEqual([day.feedId, day.ironId].toSorted());
  expect(facts.labels.get(day.ironId)?.confirmed?.facts.form).toBe("liquid");
  expect([facts.productOf.get(day.feedId)?.countedBy, facts.productOf.get(day.ironId)?.countedBy]).toEqual(["mass", "volume"]);
  expect(facts.gear.map(({ equipmentId }) => equipmentId).toSorted()).toEqual([day.sprayerId, day.spreaderId].toSorted());
  expect(facts.calibrations).toHaveLength(4);
  expect(facts.tools).toEqual([{ name: "Scale", mark: exactly("lb", "0.25") }, { name: "Cup", mark: exactly("fl oz", "0.5") }]);
  expect(facts.personOf.get(company.owner.personId)).toBe(company.owner.name);
});

test("the labels of what was put down on the lawns before are read with those of what is planned", async () => {
  const ground = await aGround(house, company);
  const past = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, preventer(day, ground));
  await aRecord(house, company.owner, { ...ground, visitId: past }, { mixes: { "1": { measuredBy: "weight", amount: "16 lb" } } });
  const next = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, feedAndIron(day, ground));
  const { labels, lawnsByProperty } = await factsOf([next]);
  expect([...labels.keys()].toSorted()).toEqual([day.feedId, day.ironId, day.preventerId].toSorted());
  const [before] = lawnsByProperty.get(ground.propertyId)?.[0]?.lawn.history ?? [];
  expect(before?.nutrients.ok).toBe(true);
});

test("the licenses are the company's, without those taken back, the one that runs longest first", async () => {
  const other = await aCompany(house, "Other Turf");
  const { key, personId } = other.owner;
  const added = async (expiresOn: string) => valueOf(await addLicense(house, key, { ...licenseForm(personId), expiresOn })).licenseId;
  const [short, long, withdrawn] = [await added("2026-06-30"), await added("2027-12-31"), await added("2028-12-31")];
  valueOf(await withdrawLicense(house, key, { licenseId: withdrawn }));
  const licenses = await inWorkOf(house, other, licensesOnFile);
  expect(licenses.map(({ licenseId }) => licenseId)).toEqual([long, other.licenseId, short]);
  expect(licenses[0]).toMatchObject({ personId, kind: "registered-technician", state: "IN", issuedOn: "2026-01-02", expiresOn: "2027-12-31" });
});

test("the house's settings are read with the rest, and are the defaults until somebody changes them", async () => {
  const other = await aCompany(house);
  const settings = async () => (await inWorkOf(house, other, (work) => readTicketFacts(work, []))).settings;
  expect(await settings()).toEqual(DEFAULT_HOUSE_SETTINGS);
  valueOf(await changeHouseSettings(house, other.owner.key, HOUSE_SETTINGS_CHANGE));
  expect(await settings()).toMatchObject({ tankMark: exactly("gal", "0.5"), heatCautionFromF: 85 });
});
