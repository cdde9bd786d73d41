import { expect, test } from "vitest";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { openHolds, readVisit, visitOnFile } from "#application/visits/read-visit";
import { type TicketOutcome } from "#application/visits/visit-ticket";
import { answeredHold } from "#domain/foundation/answered-hold";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { aCompany, aMember, valueOf } from "../../support/crew";
import { aFedVisit, aRecord, aVisitUnderHold, inWorkOf } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

const read = async (visitId: string) => valueOf(await readVisit(house, company.owner.key, { visitId }));
const words = (rule: string) => ({ rule, source: "law", what: "Something is the matter.", about: [] }) as const;

test("a visit before its work: worked out, not issued, not recorded, answerable with the reader's own license", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const found = await read(visitId);
  expect(found).toMatchObject({ visit: { visitId, state: "planned" }, outcome: { ok: true }, answers: [], openHolds: [] });
  expect([found.issued, found.record, found.secondLook]).toEqual([undefined, undefined, undefined]);
  expect(found.mayAnswerWith).toMatchObject([{ licenseId: company.licenseId, expiresOn: "2026-12-31" }]);
});

test("after the work it has its ticket, its record and its second look", async () => {
  const fed = await aFedVisit(house, company, day);
  const { mixTicketId } = valueOf(await issueMixTicket(house, company.owner.key, { visitId: fed.visitId }));
  const { registerEntryId } = await aRecord(house, company.owner, fed);
  const found = await read(fed.visitId);
  expect(found).toMatchObject({ visit: { state: "done" }, issued: { mixTicketId }, record: { registerEntryId }, secondLook: { opensOn: "2026-04-17" } });
  expect(found.secondLook?.visitId).not.toBe(fed.visitId);
});

test("who has no license of the property's state has nothing to answer with", async () => {
  const { visitId, rule } = await aVisitUnderHold(house, company, day);
  const helper = await aMember(house, company, "applicator", "Kit Lane");
  const found = valueOf(await readVisit(house, helper.key, { visitId }));
  expect(found.openHolds.map((open) => open.rule)).toContain(rule);
  expect(found.mayAnswerWith).toEqual([]);
  expect((await read(visitId)).mayAnswerWith.map(({ licenseId }) => licenseId)).toEqual([day.illinoisLicenseId]);
});

test("only a hold that a license holder may answer is closed by an answer, and only by the answer to it", () => {
  const findings: readonly Finding[] = [hold("license-holder", words("law")), hold("nobody", words("label")), hold("office", words("plan")), takeCare(words("care"))];
  const on = "2026-04-14" as CalendarDate;
  const outcome = { ok: true, value: { findings, application: { on } } } as unknown as TicketOutcome;
  const answer = (rule: string) => ({ rule, answered: answeredHold({ ...words(rule), level: "note" }, on), reason: "So.", by: "Dana Quill", license: "IN C-1", answeredAt: "2026-04-14T12:00:00.000Z" });
  const openAfter = (...rules: string[]) => openHolds(outcome, rules.map(answer)).map(({ rule }) => rule);
  expect(openAfter()).toEqual(["law", "label", "plan"]);
  expect(openAfter("law")).toEqual(["label", "plan"]);
  expect(openAfter("label", "plan", "care", "other")).toEqual(["law", "label", "plan"]);
  const refused = { ok: false, refusal: { refusal: { kind: "missing", sentence: "No." }, findings } } as unknown as TicketOutcome;
  expect(openHolds(refused, [answer("law")]).map(({ rule }) => rule)).toEqual(["law", "label", "plan"]);
});

test("the holds are there where no ticket can be worked out", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  await house.ask("update visit_task set label_use = 'New seedings' where visit_id = $1", [visitId]);
  const found = await read(visitId);
  expect(found.outcome.ok).toBe(false);
  expect(found.openHolds.map(({ rule }) => rule)).toEqual(["label-not-entered", "label-not-entered"]);
});

test("another company's visit is none, and neither is one that is not", async () => {
  const other = await aCompany(house, "Other Turf");
  const { visitId } = await aFedVisit(house, company, day);
  expect(await readVisit(house, other.owner.key, { visitId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  expect(await inWorkOf(house, company, (work) => visitOnFile(work, house.newId()))).toBeUndefined();
});
