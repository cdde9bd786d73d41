import { expect, test } from "vitest";
import { mixesAsked } from "#application/register/mixes-asked";
import { recordPlan } from "#application/register/record-plan";
import { visitOnFile } from "#application/visits/read-visit";
import { aFedVisit, inWorkOf } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

const askedOf = (visitId: string) =>
  inWorkOf(house, company, async (work) => {
    const found = await visitOnFile(work, visitId);
    if (found === undefined) throw new Error("the visit was planned");
    return mixesAsked(await recordPlan(work, found));
  });

test("each mix is asked of once, and then each product that has none; what goes on the same lawns has the same ground", async () => {
  const visit = await aFedVisit(house, company, day);
  const grounds = async () => (await askedOf(visit.visitId)).map((one) => [one.key, "mix" in one, one.ground]);
  const both = JSON.stringify([[visit.frontId, visit.backId].toSorted(), "all over"]);
  expect(await grounds()).toEqual([["1", true, both], ["2", true, both]]);
  await house.ask("update visit_task set label_use = 'no such use', spot_share_basis_points = 500 where visit_id = $1 and line = 1", [visit.visitId]);
  expect(await grounds()).toEqual([["2", true, both], ["1", false, JSON.stringify([[visit.frontId, visit.backId].toSorted(), 500])]]);
});
