import { expect, test } from "vitest";
import { linesOf, type Mix, recordPlan } from "#application/register/record-plan";
import { readAnsweredHold } from "#domain/foundation/answered-hold";
import { answerHold } from "#application/visits/answer-hold";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { visitOnFile } from "#application/visits/read-visit";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/crew";
import { aFedVisit, aGround, aVisitUnderHold, aVisitWith, feedAndIron, inWorkOf } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { granularOf, sprayOf } from "../../support/ticket";

allOnACrewDay();

async function planOf(visitId: string) {
  return inWorkOf(house, company, async (work) => {
    const found = await visitOnFile(work, visitId);
    if (found === undefined) throw new Error("the visit was planned");
    const said = found.outcome.ok ? found.outcome.value.findings : found.outcome.refusal.findings;
    return { ...(await recordPlan(work, found)), said: said.map(({ rule }) => rule) };
  });
}

/** Makes the feed of a visit one of a use that its label doesn't have, so that no mix can be worked out for it. */
const withoutUse = (visitId: string) => house.ask("update visit_task set label_use = 'no such use' where visit_id = $1 and line = 1", [visitId]);

test("a mix is named by the lines of its products", () => {
  const [spread, spray] = [granularOf(), sprayOf()];
  if (spread === undefined || spray === undefined) throw new Error("the ticket of a test has both");
  const [product] = spray.products;
  if (product === undefined) throw new Error("a spray has a product");
  const tank: Mix = { ...spray, products: [{ ...product, line: 4 }, { ...product, line: 2 }] };
  expect([spread, spray, tank].map(linesOf)).toEqual([[1], [2], [4, 2]]);
});

test("what is worked out now: mixes, products by their names in the shed, and the lawns of the plan in their order", async () => {
  const visit = await aFedVisit(house, company, day);
  const products = await house.ask<{ name: string }>("select name from product where product_id in ($1, $2) order by counted_by", [day.feedId, day.ironId]);
  const { mixes, treatments, lawns, mixTicketNumber } = await planOf(visit.visitId);
  expect(mixes.map(linesOf)).toEqual([[1], [2]]);
  expect(treatments.map(({ line, productId, countedBy, reason }) => [line, productId, countedBy, reason])).toEqual([[1, day.feedId, "mass", "feed"], [2, day.ironId, "volume", "color"]]);
  expect(treatments.map(({ productName }) => productName)).toEqual(products.map(({ name }) => name));
  expect(treatments.map((treatment) => treatment.lawns.map(({ name }) => name))).toEqual([["Front", "Back"], ["Front", "Back"]]);
  expect(lawns.map(({ zoneId, name }) => [zoneId, name])).toEqual([[visit.frontId, "Front"], [visit.backId, "Back"]]);
  expect(mixTicketNumber).toBe(null);
});

test("a product without a mix stands on its whole lawns with what is on file of it", async () => {
  const visit = await aFedVisit(house, company, day);
  await withoutUse(visit.visitId);
  const { mixes, treatments } = await planOf(visit.visitId);
  const feed = treatments.find(({ line }) => line === 1);
  expect(mixes.flatMap(linesOf)).not.toContain(1);
  expect(feed).toMatchObject({ productId: day.feedId, countedBy: "mass", label: "not-on-file", equipmentName: "not on file" });
  expect(feed?.lawns.map(({ name, treatedArea, keptClear }) => [name, treatedArea, keptClear.amount])).toEqual([["Front", of("sq ft", 2400n), 0n], ["Back", of("sq ft", 4000n), 0n]]);
  await house.ask("update visit_task set label_use = 'Established lawns', equipment_id = $2 where visit_id = $1 and line = 1", [visit.visitId, day.sprayerId]);
  const [sprayer] = await house.ask<{ name: string }>("select name from equipment where equipment_id = $1", [day.sprayerId]);
  const named = (await planOf(visit.visitId)).treatments.find(({ line }) => line === 1);
  expect(named).toMatchObject({ equipmentName: sprayer?.name, label: { use: { useName: "Established lawns" } } });
});

test("the mix ticket that was issued stands, whatever became of the plan since", async () => {
  const visit = await aFedVisit(house, company, day);
  const { number } = valueOf(await issueMixTicket(house, company.owner.key, { visitId: visit.visitId }));
  await withoutUse(visit.visitId);
  const { mixes, treatments, mixTicketNumber } = await planOf(visit.visitId);
  expect(mixTicketNumber).toBe(number);
  expect(mixes.map(linesOf)).toEqual([[1], [2]]);
  expect(treatments.find(({ line }) => line === 1)?.label).toMatchObject({ use: { useName: "Established lawns" } });
});

test("findings of the plan go along but for those that a record says for itself", async () => {
  const ground = await aGround(house, company);
  const { said, findings } = await planOf(await aVisitWith(house, company, ground, feedAndIron(day, ground)));
  const rules = findings.map(({ rule }) => rule);
  expect(said).toEqual(expect.arrayContaining(["on-no-day", "stains"]));
  expect(rules).not.toContain("on-no-day");
  expect(rules).toContain("stains");
});

test("a hold goes along with its answer", async () => {
  const visit = await aVisitUnderHold(house, company, day);
  valueOf(await answerHold(house, company.owner.key, { visitId: visit.visitId, hold: visit.hold, licenseId: day.illinoisLicenseId, reason: "The test is in the mail." }));
  const { findings, holdAnswers } = await planOf(visit.visitId);
  expect(findings.map(({ level, rule }) => `${level} ${rule}`)).toContain(`hold ${visit.rule}`);
  expect(holdAnswers).toMatchObject([{ rule: visit.rule, answered: readAnsweredHold(visit.hold), reason: "The test is in the mail.", by: company.owner.name }]);
});

test("an answer that was given before the plan changed covers no hold of it, and is said as what it was", async () => {
  const visit = await aVisitUnderHold(house, company, day);
  valueOf(await answerHold(house, company.owner.key, { visitId: visit.visitId, hold: visit.hold, licenseId: day.illinoisLicenseId, reason: "The test is in the mail." }));
  await house.ask("update visit_task_zone set zone_id = $2 where visit_id = $1", [visit.visitId, visit.backId]);
  const { findings, holdAnswers } = await planOf(visit.visitId);
  expect(holdAnswers).toEqual([]);
  expect(findings.filter(({ rule }) => rule === "answered-before-the-plan-changed")).toMatchObject([{ level: "note", figure: expect.stringContaining("on Front") as string }]);
});
