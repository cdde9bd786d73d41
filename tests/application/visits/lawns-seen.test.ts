import { expect, test } from "vitest";
import { todayOf } from "#application/programs/visits-of-rounds";
import { removeZone } from "#application/properties/remove-zone";
import { lawnsSeen } from "#application/visits/lawns-seen";
import { lookAtLawns } from "#application/visits/look-at-lawns";
import { ticketsOfVisits } from "#application/visits/visit-ticket";
import { valueOf } from "../../support/crew";
import { aFedVisit, inWorkOf, lookForm } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

const seenOf = (visitId: string) =>
  inWorkOf(house, company, async (work) => {
    const [found] = await ticketsOfVisits(work, [visitId]);
    if (found === undefined) throw new Error("the visit is on file");
    return lawnsSeen(found, todayOf(work));
  });

test("each lawn of a visit says what is known of its flowers on the visit's day; one off the plan is left out", async () => {
  const fed = await aFedVisit(house, company, day);
  expect(await seenOf(fed.visitId)).toEqual({
    on: "2026-04-14",
    lawns: [
      { zoneId: fed.frontId, letter: "A", name: "Front", inBloom: "unknown", bloomSeen: null, watered: null },
      { zoneId: fed.backId, letter: "B", name: "Back", inBloom: "unknown", bloomSeen: null, watered: null },
    ],
  });
  valueOf(await lookAtLawns(house, company.owner.key, lookForm(house, fed, company.owner.personId)));
  expect((await seenOf(fed.visitId)).lawns.map(({ inBloom }) => inBloom)).toEqual(["yes", "no"]);
  const water = { wateredOn: "2026-04-14", wateredAt: "6:00", wateredBy: "rain", waterToldBy: "crew", lawns: {}, said: {}, watered: { [fed.frontId]: "yes" } } as const;
  valueOf(await lookAtLawns(house, company.owner.key, lookForm(house, fed, company.owner.personId, water)));
  expect((await seenOf(fed.visitId)).lawns.map(({ watered }) => watered)).toEqual(["Watered in by rain on Apr 14, 2026, 6 am.", null]);
  valueOf(await removeZone(house, company.owner.key, { zoneId: fed.backId }));
  expect((await seenOf(fed.visitId)).lawns.map(({ zoneId }) => zoneId)).toEqual([fed.frontId]);
});

test("a visit on no day is asked of the first day on which it could go", async () => {
  const fed = await aFedVisit(house, company, day);
  await house.ask("delete from stop where visit_id = $1", [fed.visitId]);
  await house.ask("update visit set opens_on = '2026-04-20', closes_on = '2026-04-30' where visit_id = $1", [fed.visitId]);
  expect((await seenOf(fed.visitId)).on).toBe("2026-04-20");
  await house.ask("update visit set opens_on = '2026-04-01' where visit_id = $1", [fed.visitId]);
  expect((await seenOf(fed.visitId)).on).toBe("2026-04-14");
});
