import { expect, test } from "vitest";
import { answerHold } from "#application/visits/answer-hold";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { answersOfVisit, isOfPresentPlan, type IssuedTicket, issuedTicketOf, issuedTicketsOf, snapshotOf } from "#application/visits/issued-ticket";
import { ticketsOfVisits, type VisitTicket } from "#application/visits/visit-ticket";
import { readAnsweredHold } from "#domain/foundation/answered-hold";
import { type Finding, type FindingSource, hold, note, takeCare } from "#domain/foundation/finding";
import { allWorkings } from "#domain/mixing/ticket-working";
import { of } from "#domain/quantities/quantity";
import { aCompany, valueOf } from "../../support/crew";
import { aFedVisit, aVisitUnderHold, inWorkOf } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { aDelivery } from "../../support/shed";

allOnACrewDay();

const issue = async (visitId: string) => valueOf(await issueMixTicket(house, company.owner.key, { visitId }));

async function presentOf(visitId: string): Promise<VisitTicket> {
  const [only] = await inWorkOf(house, company, (work) => ticketsOfVisits(work, [visitId]));
  if (only?.outcome.ok !== true) throw new Error("There is no ticket to work out.");
  return only.outcome.value;
}

async function issuedOf(visitId: string): Promise<IssuedTicket> {
  await issue(visitId);
  const issued = await inWorkOf(house, company, (work) => issuedTicketOf(work, visitId));
  if (issued === undefined) throw new Error("No ticket was issued.");
  return issued;
}

test("what was issued is read back as it was worked out, to the last unit of its exact amounts", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const present = await presentOf(visitId);
  const issued = await issuedOf(visitId);
  expect(issued).toMatchObject({ issuedBy: company.owner.name, issuedAt: house.now() });
  expect(issued.snapshot).toEqual(snapshotOf(present, []));
  expect(issued.snapshot).toMatchObject({ form: "mix-ticket-1", answers: [], rulesVersion: present.rulesVersion });
  expect(issued.snapshot.question.lawns.map(({ area }) => area)).toEqual([of("sq ft", 2400n), of("sq ft", 4000n)]);
});

test("of several tickets of a visit the last is meant, and a visit without one has none", async () => {
  const [fed, without] = [await aFedVisit(house, company, day), await aFedVisit(house, company, day)];
  const first = await issue(fed.visitId);
  await house.ask("update visit_task set rate_amount = rate_amount * 9 / 10, rate_text = '2.25 lb' where visit_id = $1 and line = 1", [fed.visitId]);
  const second = await issue(fed.visitId);
  const tickets = await inWorkOf(house, company, (work) => issuedTicketsOf(work, [fed.visitId, without.visitId]));
  expect([...tickets].map(([visitId, { mixTicketId }]) => [visitId, mixTicketId])).toEqual([[fed.visitId, second.mixTicketId]]);
  expect(second.number).toBeGreaterThan(first.number);
});

test("a ticket stands for the present plan until an amount, the day, the applicator, the hour, the aftercare or the rules are others", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const issued = await issuedOf(visitId);
  const present = await presentOf(visitId);
  expect(isOfPresentPlan(issued, present)).toBe(true);
  const { application, span, ticket, aftercare } = present;
  // Other words for the same amounts change nothing.
  const reworded = ticket.mixes.map((mix) => (mix.kind === "spray" ? { ...mix, steps: ["Mix it."] } : mix));
  expect(isOfPresentPlan(issued, { ...present, ticket: { ...ticket, mixes: reworded } })).toBe(true);
  const changed: readonly Partial<VisitTicket>[] = [
    { application: { ...application, operatorId: "another" } },
    { application: { ...application, vehicleId: "another" } },
    { span: { ...span, untilEpochMilliseconds: span.untilEpochMilliseconds + 60_000 } },
    { rulesVersion: "other rules" },
    { ticket: { ...ticket, mixes: ticket.mixes.slice(1) } },
    { aftercare: aftercare.map(({ lawnNames, timeline }) => ({ lawnNames, timeline: { ...timeline, steps: timeline.steps.slice(1) } })) },
    { aftercare: aftercare.map(({ timeline }) => ({ lawnNames: ["Front"], timeline })) },
  ];
  expect(changed.map((change) => isOfPresentPlan(issued, { ...present, ...change }))).toEqual(changed.map(() => false));
});

test("a ticket is of an older plan when label, law, handbook or weather say something else to a crew, or anything holds", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const issued = await issuedOf(visitId);
  const present = await presentOf(visitId);
  const { findings } = present;
  const words = (source: FindingSource) => ({ rule: "a-rule", source, what: "Something is the matter.", about: ["Front"] });
  const stands = (changed: readonly Finding[]) => isOfPresentPlan(issued, { ...present, findings: changed });
  expect(findings.filter(({ source }) => source === "label").length).toBeGreaterThan(0);
  // The order is none of the crew's, and what the house keeps up from day to day may come and go.
  expect([findings.toReversed(), findings.filter(({ source }) => source !== "house"), [...findings, takeCare(words("house"))], [...findings, note(words("stock"))]].map(stands)).toEqual([true, true, true, true]);
  const said = (["label", "law", "handbook", "common-practice", "weather"] as const).flatMap((source) => [takeCare(words(source)), note(words(source))]);
  const held = (["house", "stock", "law"] as const).map((source) => hold("office", words(source)));
  expect([...said, ...held].map((one) => stands([...findings, one]))).toEqual([...said, ...held].map(() => false));
  const reworded = findings.map((finding) => (finding.source === "label" ? { ...finding, figure: "Another figure." } : finding));
  expect([stands(reworded), stands(findings.filter(({ source }) => source !== "label"))]).toEqual([false, false]);
});

test("how an issued ticket's amounts were worked out is told of what was kept, whatever the lawns are now", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const present = await presentOf(visitId);
  const issued = await issuedOf(visitId);
  const asIssued = allWorkings(present);
  expect(asIssued.length).toBeGreaterThan(8);
  await house.ask("update zone set area = area * 2 where zone_id = any($1)", [present.question.lawns.map(({ zoneId }) => zoneId)]);
  expect(allWorkings(issued.snapshot)).toEqual(asIssued);
  expect(allWorkings(await presentOf(visitId))).not.toEqual(asIssued);
  await house.ask("update zone set area = area / 2 where zone_id = any($1)", [present.question.lawns.map(({ zoneId }) => zoneId)]);
});

test("a ticket that was issued before strips along water were kept one by one stands as long as their sum does", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const issued = await issuedOf(visitId);
  const present = await presentOf(visitId);
  const strip = { name: "the pond", length: of("ft", 1n), width: of("ft", 1n), area: of("sq ft", 1n) };
  const mixes = present.ticket.mixes.map((mix) => (mix.kind === "granular" ? { ...mix, lawns: mix.lawns.map((lawn) => ({ ...lawn, strips: [strip] })) } : mix));
  expect(isOfPresentPlan(issued, { ...present, ticket: { ...present.ticket, mixes } })).toBe(true);
});

test("the answers to a visit's holds say who, under which license, when and why, the oldest first, and go into the ticket", async () => {
  const { visitId, rule, hold } = await aVisitUnderHold(house, company, day);
  const reason = "The test is in the mail.";
  await aDelivery(house, company, day.starterId);
  valueOf(await answerHold(house, company.owner.key, { visitId, hold, licenseId: day.illinoisLicenseId, reason }));
  const answers = await inWorkOf(house, company, (work) => answersOfVisit(work, visitId));
  expect(answers).toEqual([{ rule, answered: readAnsweredHold(hold), reason, by: company.owner.name, license: expect.stringMatching(/^IL IL-/u) as string, answeredAt: house.now().toISOString() }]);
  expect((await issuedOf(visitId)).snapshot.answers).toEqual(answers);
  const other = await aCompany(house, "Other Turf");
  expect(await inWorkOf(house, other, (work) => answersOfVisit(work, visitId))).toEqual([]);
  expect(await inWorkOf(house, other, (work) => issuedTicketOf(work, visitId))).toBeUndefined();
});
