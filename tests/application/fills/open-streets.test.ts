import { expect, test } from "vitest";
import { openStreetOf } from "#application/fills/open-streets";
import { aCompany } from "../../support/crew";
import { aFedVisit, aRecord, inWorkOf } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay("not-known");

test("has the visits that nobody has recorded, and those of its company alone", async () => {
  const [recorded, open] = [await aFedVisit(house, company, day), await aFedVisit(house, company, day)];
  await aRecord(house, company.owner, recorded);
  const asked = [recorded.visitId, open.visitId];
  expect([...(await inWorkOf(house, company, (work) => openStreetOf(work, asked)))]).toEqual([[open.visitId, expect.stringMatching(/./u)]]);
  expect(await inWorkOf(house, await aCompany(house), (work) => openStreetOf(work, asked))).toEqual(new Map());
  expect(await inWorkOf(house, company, (work) => openStreetOf(work, []))).toEqual(new Map());
});
