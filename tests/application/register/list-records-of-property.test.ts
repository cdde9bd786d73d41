import { expect, test } from "vitest";
import { listRecordsOfProperty } from "#application/register/list-records-of-property";
import { aCompany, valueOf } from "../../support/crew";
import { aFedVisit, aRecord, aVisitWith, feedAndIron } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

test("the records of a property stand there, the newest work first, and those of no other", async () => {
  const visit = await aFedVisit(house, company, day);
  await aRecord(house, company.owner, await aFedVisit(house, company, day));
  const again = { ...visit, visitId: await aVisitWith(house, company, { ...visit, routeDayId: day.routeDayId }, feedAndIron(day, visit)) };
  const later = await aRecord(house, company.owner, visit, { startedAt: "8:20", endedAt: "8:50" });
  const earlier = await aRecord(house, company.owner, again, { startedAt: "7:10", endedAt: "7:40" });
  const { records } = valueOf(await listRecordsOfProperty(house, company.owner.key, { propertyId: visit.propertyId }));
  expect(records.map(({ registerEntryId }) => registerEntryId)).toEqual([later.registerEntryId, earlier.registerEntryId]);
  expect(records.every(({ isUnaltered }) => isUnaltered)).toBe(true);
});

test("nothing is on record of a property of another company", async () => {
  const visit = await aFedVisit(house, company, day);
  await aRecord(house, company.owner, visit);
  const other = await aCompany(house);
  expect(await listRecordsOfProperty(house, other.owner.key, { propertyId: visit.propertyId })).toMatchObject({ refusal: { kind: "not-found" } });
});
