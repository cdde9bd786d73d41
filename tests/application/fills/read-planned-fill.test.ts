import { expect, test } from "vitest";
import { readPlannedFill } from "#application/fills/read-planned-fill";
import { productUseKey } from "#application/programs/treatment-fields.schema";
import { of } from "#domain/quantities/quantity";
import { aCompany, valueOf } from "../../support/crew";
import { aFedVisit, aGround, aVisitWith, preventer } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay("not-known");

const planOf = async (visitIds: string[], key = company.owner.key) => valueOf(await readPlannedFill(house, key, { visitIds }));

async function anIronVisit(rate: string) {
  const ground = await aGround(house, company);
  const tasks = { "0": { productUse: productUseKey(day.ironId, "Foliar iron"), rate, reason: "color", lawns: { [ground.frontId]: "yes" } } };
  return aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, tasks);
}

test("visits that share a mix are one fill of the truck's tank, their volumes together", async () => {
  const [one, other] = [await aFedVisit(house, company, day), await aFedVisit(house, company, day)];
  const [first] = (await planOf([one.visitId])).fills;
  const { fills, without } = await planOf([one.visitId, other.visitId]);
  expect(without).toEqual([]);
  expect(fills).toMatchObject([{ equipmentId: day.sprayerId, visits: [{ visitId: one.visitId }, { visitId: other.visitId }], findings: [] }]);
  expect(fills[0]?.plan.finished.amount).toBe((first?.plan.finished.amount ?? 0n) * 2n);
  expect(fills[0]?.plan.products.map(({ productId }) => productId)).toEqual([day.ironId]);
  expect(fills[0]?.plan.products.map(({ toolName }) => toolName)).toEqual(["Cup"]);
});

test("another rate is a fill of its own", async () => {
  const [weak, strong] = [await anIronVisit("1.5 fl oz/1,000 sq ft"), await anIronVisit("2 fl oz/1,000 sq ft")];
  const { fills } = await planOf([weak, strong]);
  expect(fills.map(({ visits }) => visits.map(({ visitId }) => visitId))).toEqual([[weak], [strong]]);
});

test("more than the tank holds is a hold", async () => {
  const visitId = await anIronVisit("1.5 fl oz/1,000 sq ft");
  await house.ask("update equipment set capacity = $1 where equipment_id = $2", [of("gal", 1n).amount.toString(), day.sprayerId]);
  const { fills } = await planOf([visitId]);
  await house.ask("update equipment set capacity = $1 where equipment_id = $2", [of("gal", 100n).amount.toString(), day.sprayerId]);
  expect(fills[0]?.findings.map(({ rule }) => rule)).toEqual(["fill-above-capacity"]);
});

test("a visit without a spray says so", async () => {
  const ground = await aGround(house, company);
  const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, preventer(day, ground));
  expect(await planOf([visitId])).toMatchObject({ fills: [], without: [{ visitId, why: "Nothing is sprayed at this visit." }] });
});

test("the visits of another company are no visits", async () => {
  const other = await aCompany(house);
  expect(await planOf([await anIronVisit("1.5 fl oz/1,000 sq ft")], other.owner.key)).toEqual({ fills: [], without: [] });
});
