import { expect, test } from "vitest";
import { addEquipment } from "#application/equipment/add-equipment";
import { standDownEquipment } from "#application/equipment/stand-down-equipment";
import { addSeeding } from "#application/properties/add-seeding";
import { changeSeeding } from "#application/properties/change-seeding";
import { removeSeeding } from "#application/properties/remove-seeding";
import { ticketsOfVisits, type VisitTicket } from "#application/visits/visit-ticket";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { aPerson, valueOf } from "../../support/crew";
import { aFedVisit, aGround, aRecord, aRouteDay, aVisitUnderHold, aVisitWith, CREW_DAY, feedAndIron, inWorkOf } from "../../support/crew-day";
import { GUN_NOMINAL, sprayerForm } from "../../support/gear";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { aFeed } from "../../support/shed";

allOnACrewDay();

const outcomesOf = (visitIds: readonly string[]) => inWorkOf(house, company, (work) => ticketsOfVisits(work, visitIds));

async function ticketOf(visitId: string): Promise<VisitTicket> {
  const [only] = await outcomesOf([visitId]);
  if (only?.outcome.ok !== true) throw new Error(`No ticket: ${JSON.stringify(only?.outcome)}`);
  return only.outcome.value;
}

const holdsOf = ({ findings }: VisitTicket) => findings.filter(({ level }) => level === "hold").map(({ rule }) => rule);

test("works out the whole visit from what is on file: who, when, with what, and how much", async () => {
  const { visitId, frontId, backId } = await aFedVisit(house, company, day);
  const { application, license, span, question, ticket, aftercare, findings } = await ticketOf(visitId);
  expect(application).toEqual({ on: CREW_DAY, operatorId: company.owner.personId, operatorName: company.owner.name, vehicleId: day.vehicleId });
  expect(license?.licenseId).toBe(company.licenseId);
  expect(new Date(span.fromEpochMilliseconds).toISOString()).toBe("2026-04-14T11:30:00.000Z");
  expect(question).toMatchObject({ state: "IN", forecastHighF: 68, forecastFollowingHighsF: [75, 74, 72], applicator: { license: { standing: "stands", kind: "certified-applicator" } } });
  expect(question.lawns.map(({ zoneId }) => zoneId)).toEqual([frontId, backId]);
  expect(question.treatments.map(({ gear, labelConfirmedBy }) => [gear.equipmentId, labelConfirmedBy])).toEqual([[day.spreaderId, company.owner.name], [day.sprayerId, company.owner.name]]);
  expect(question.treatments.map(({ tool }) => (tool === "none" ? tool : tool.mark))).toEqual([exactly("lb", "0.25"), exactly("fl oz", "0.5")]);
  expect(question.treatments[0]?.onHand).toEqual(of("lb", 850n));
  expect(ticket.mixes.map(({ kind }) => kind)).toEqual(["granular", "spray"]);
  expect(aftercare.map(({ lawnNames }) => lawnNames)).toEqual([["Front", "Back"]]);
  expect(findings.filter(({ level }) => level === "hold")).toEqual([]);
});

test("the findings are of the ticket and the aftercare, each once and the gravest first", async () => {
  const { visitId } = await aVisitUnderHold(house, company, day);
  const { findings } = await ticketOf(visitId);
  const levels = findings.map(({ level }) => ["hold", "take-care", "note"].indexOf(level));
  expect(levels).toEqual(levels.toSorted((one, other) => one - other));
  expect(new Set(findings.map((finding) => JSON.stringify(finding))).size).toBe(findings.length);
  const rules = findings.map(({ rule }) => rule);
  expect(rules[0]).toBe("phosphorus-without-need");
  expect(rules).toContain("watering-hours-not-on-file");
});

test("a visit that is done is not held against its own record, and the next one of the lawn is", async () => {
  const fed = await aFedVisit(house, company, day);
  await aRecord(house, company.owner, fed, { startedAt: "2:00", endedAt: "2:30" });
  const done = await ticketOf(fed.visitId);
  expect(done.question.lawns.flatMap(({ history }) => history)).toEqual([]);
  expect(holdsOf(done)).not.toContain("too-soon-again");
  const next = await ticketOf(await aVisitWith(house, company, { ...fed, routeDayId: day.routeDayId }, feedAndIron(day, fed)));
  expect(next.question.lawns.every(({ history }) => history.length === 2)).toBe(true);
  expect(holdsOf(next)).toContain("too-soon-again");
});

test("on no day, the ticket is worked out for whoever looks, on the first day it may be, and held", async () => {
  const ground = await aGround(house, company);
  const visitId = await aVisitWith(house, company, ground, feedAndIron(day, ground));
  await house.ask("update visit set opens_on = '2026-04-20' where visit_id = $1", [visitId]);
  const ticket = await ticketOf(visitId);
  expect(ticket.application).toMatchObject({ on: "2026-04-20", operatorId: company.owner.personId, vehicleId: null });
  expect([ticket.question.forecastHighF, ticket.question.forecastFollowingHighsF]).toEqual(["not-entered", []]);
  expect(holdsOf(ticket)).toContain("on-no-day");
});

test("an applicator without a license of the state holds the ticket, and one that ran out is told apart from none", async () => {
  const operatorId = await aPerson(house, company, "Kit Lane");
  const routeDayId = await aRouteDay(house, company, day.vehicleId, "2026-04-15", operatorId);
  const ground = await aGround(house, company);
  const visitId = await aVisitWith(house, company, { ...ground, routeDayId }, feedAndIron(day, ground));
  const without = await ticketOf(visitId);
  expect([without.license, without.question.applicator]).toEqual([null, { name: "Kit Lane", license: { standing: "none" } }]);
  await house.ask(
    `insert into license (company_id, license_id, person_id, kind, state, number, category, expires_on, created_at)
     values ($1, $2, $3, 'certified-applicator', 'IN', 'C-77', '3b Turf', '2026-04-14', $4)`,
    [company.companyId, house.newId(), operatorId, house.now()],
  );
  expect((await ticketOf(visitId)).question.applicator.license).toEqual({ standing: "expired" });
  await house.ask("update license set expires_on = '2026-04-15' where number = 'C-77'");
  expect((await ticketOf(visitId)).question.applicator.license).toEqual({ standing: "stands", kind: "certified-applicator", number: "C-77", category: "3b Turf" });
});

test("in Illinois overseeding leaves phosphate on an old lawn on hold; a new lawn that was made lifts it, a planned one does not", async () => {
  const { visitId, frontId, rule } = await aVisitUnderHold(house, company, day);
  const { key } = company.owner;
  const seed = { zoneId: frontId, date: "2026-04-10", method: "unknown" } as const;
  valueOf(await addSeeding(house, key, { ...seed, kind: "overseeding", standing: "done" }));
  expect(holdsOf(await ticketOf(visitId))).toContain(rule);
  const { seedingId } = valueOf(await addSeeding(house, key, { ...seed, date: "2026-04-14", kind: "new-lawn", standing: "planned" }));
  expect(holdsOf(await ticketOf(visitId))).toContain(rule);
  valueOf(await changeSeeding(house, key, { seedingId, version: 1, method: "unknown", date: "2026-04-10", kind: "new-lawn", standing: "done" }));
  expect(holdsOf(await ticketOf(visitId))).not.toContain(rule);
  valueOf(await removeSeeding(house, key, { seedingId }));
  expect(holdsOf(await ticketOf(visitId))).toContain(rule);
});

test("a product without a label and one without gear are each a hold, and the rest is worked out", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const bareId = await aFeed(house, company);
  await house.ask("update visit_task set product_id = $2 where visit_id = $1 and line = 1", [visitId, bareId]);
  const unlabeled = await ticketOf(visitId);
  expect(holdsOf(unlabeled)).toEqual(["label-not-entered"]);
  expect(unlabeled.question.treatments.map(({ productId }) => productId)).toEqual([day.ironId]);
  await house.ask("update visit_task set product_id = $2, label_use = 'New seedings' where visit_id = $1 and line = 1", [visitId, day.feedId]);
  const findings = (await ticketOf(visitId)).findings.map(({ what }) => what);
  expect(findings).toContainEqual(expect.stringMatching(/^The label of Greenmere \d+ has no use "New seedings"\.$/u));
  await house.ask("update visit_task set label_use = 'Established lawns' where visit_id = $1 and line = 1", [visitId]);
  await house.ask("update equipment set stood_down_at = $2 where equipment_id = $1", [day.spreaderId, house.now()]);
  expect(holdsOf(await ticketOf(visitId))).toEqual(["no-gear"]);
  await house.ask("update equipment set stood_down_at = null where equipment_id = $1", [day.spreaderId]);
});

test("a sprayer of which nobody knows what it puts out is a hold, and the rest is worked out; with nominal figures it is care", async () => {
  const { equipmentId } = valueOf(await addEquipment(house, company.owner.key, { ...sprayerForm(day.vehicleId), name: "New tank" }));
  const ground = await aGround(house, company);
  const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, feedAndIron(day, ground));
  await house.ask("update visit_task set equipment_id = $1 where visit_id = $2 and line = 2", [equipmentId, visitId]);
  const without = await ticketOf(visitId);
  expect(holdsOf(without)).toEqual(["sprayer-without-figures"]);
  expect(without.ticket.mixes.map(({ kind }) => kind)).toEqual(["granular"]);
  await house.ask("update equipment set nominal = $1 where equipment_id = $2", [GUN_NOMINAL, equipmentId]);
  const nominal = await ticketOf(visitId);
  expect(holdsOf(nominal)).toEqual([]);
  expect(nominal.findings).toContainEqual(expect.objectContaining({ level: "take-care", rule: "calibration-missing", about: ["New tank", company.owner.name] }));
  valueOf(await standDownEquipment(house, company.owner.key, { equipmentId }));
});

test("what is owed after a count is nothing on hand, not less than nothing", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  await house.ask("update stock_balance set amount = -amount where lot_id in (select lot_id from lot where product_id = $1)", [day.ironId]);
  const iron = (await ticketOf(visitId)).question.treatments.find(({ productId }) => productId === day.ironId);
  await house.ask("update stock_balance set amount = -amount where lot_id in (select lot_id from lot where product_id = $1)", [day.ironId]);
  expect(iron?.onHand).toEqual(of("gal", 0n));
});

test("without anything to put down there is no ticket, and the others of the same reading have theirs", async () => {
  const ground = await aGround(house, company);
  const look = await aVisitWith(house, company, ground, { "0": { productUse: "look", rate: "", reason: "grubs", lawns: { [ground.frontId]: "yes" } } });
  const { visitId } = await aFedVisit(house, company, day);
  const [first, second] = await outcomesOf([look, visitId]);
  expect(first).toMatchObject({ visit: { visitId: look }, outcome: { ok: false, refusal: { refusal: { sentence: "Nothing is planned to be put down." }, findings: [{ rule: "on-no-day" }] } } });
  expect(second).toMatchObject({ visit: { visitId }, outcome: { ok: true } });
});
