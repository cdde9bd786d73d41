import { expect, test } from "vitest";
import { addLicense } from "#application/people/add-license";
import { answerHold } from "#application/visits/answer-hold";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { readVisit } from "#application/visits/read-visit";
import { readAnsweredHold } from "#domain/foundation/answered-hold";
import { licenseForm } from "../../support/attempts-of-company";
import { aMember, trailOf, valueOf } from "../../support/crew";
import { aRouteDay, aVisitUnderHold, CREW_DAY, holdsToAnswer } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { aDelivery } from "../../support/shed";

allOnACrewDay();

const reason = "The test is in the mail.";

test("a license holder of the property's state answers a hold of law, with one deed, and the hold is open no more", async () => {
  const { visitId, rule, hold } = await aVisitUnderHold(house, company, day);
  const before = valueOf(await readVisit(house, company.owner.key, { visitId }));
  expect(before.openHolds.map((hold) => hold.rule)).toContain(rule);
  expect(before.mayAnswerWith.map(({ licenseId }) => licenseId)).toEqual([day.illinoisLicenseId]);
  valueOf(await answerHold(house, company.owner.key, { visitId, hold, licenseId: day.illinoisLicenseId, reason }));
  const after = valueOf(await readVisit(house, company.owner.key, { visitId }));
  expect(after.openHolds.map((hold) => hold.rule)).not.toContain(rule);
  expect(after.answers).toMatchObject([{ rule, answered: readAnsweredHold(hold), reason, by: company.owner.name }]);
  expect(after.formerAnswers).toEqual([]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "hold-answered", subject_id: visitId });
});

test("an answer silences no later hold of its rule: another lawn of the visit is held until it is answered for itself", async () => {
  const { visitId, rule, hold, backId } = await aVisitUnderHold(house, company, day);
  await aDelivery(house, company, day.starterId);
  const answer = (to: string) => answerHold(house, company.owner.key, { visitId, hold: to, licenseId: day.illinoisLicenseId, reason });
  valueOf(await answer(hold));
  await house.ask("insert into visit_task_zone (company_id, visit_id, line, zone_id) values ($1, $2, 1, $3)", [company.companyId, visitId, backId]);
  const open = await holdsToAnswer(house, company, visitId, rule);
  expect(open.map((text) => readAnsweredHold(text)?.figure)).toEqual([expect.stringContaining("on Back") as string]);
  expect(await issueMixTicket(house, company.owner.key, { visitId })).toMatchObject({ ok: false, refusal: { sentence: expect.stringContaining("No mix ticket while a hold stands.") as string } });
  expect(valueOf(await readVisit(house, company.owner.key, { visitId })).formerAnswers).toEqual([]);
  valueOf(await answer(open[0] ?? ""));
  valueOf(await issueMixTicket(house, company.owner.key, { visitId }));
  expect(await holdsToAnswer(house, company, visitId, rule)).toEqual([]);
});

test("an answer is for its day: on another one it is shown as given before the plan changed, a new one may be given, and both stay", async () => {
  const { visitId, rule, hold } = await aVisitUnderHold(house, company, day);
  const give = (to: string) => answerHold(house, company.owner.key, { visitId, hold: to, licenseId: day.illinoisLicenseId, reason });
  valueOf(await give(hold));
  expect(await give(hold)).toMatchObject({ ok: false, refusal: { kind: "conflict", sentence: "This hold does not stand any more. Look again." } });
  const tomorrow = await aRouteDay(house, company, day.vehicleId, "2026-04-15");
  await house.ask("update stop set route_day_id = $2, position = 1 where visit_id = $1", [visitId, tomorrow]);
  expect(await give(hold)).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  const [anew = ""] = await holdsToAnswer(house, company, visitId, rule);
  expect(readAnsweredHold(anew)).toEqual({ ...readAnsweredHold(hold), on: "2026-04-15" });
  const moved = valueOf(await readVisit(house, company.owner.key, { visitId }));
  expect(moved.formerAnswers).toEqual(moved.answers);
  valueOf(await give(anew));
  const answered = valueOf(await readVisit(house, company.owner.key, { visitId }));
  expect([answered.answers.length, answered.formerAnswers.map((former) => former.answered?.on)]).toEqual([2, [CREW_DAY]]);
  expect(await holdsToAnswer(house, company, visitId, rule)).toEqual([]);
});

test("an answer from before it was kept what was answered stays on file and covers nothing", async () => {
  const { visitId, rule, hold } = await aVisitUnderHold(house, company, day);
  await house.ask(
    "insert into hold_answer (company_id, hold_answer_id, visit_id, rule, answered_hold, reason, person_id, license_id, answered_at) values ($1, $2, $3, $4, '', $5, $6, $7, $8)",
    [company.companyId, house.newId(), visitId, rule, reason, company.owner.personId, day.illinoisLicenseId, house.now()],
  );
  expect(await holdsToAnswer(house, company, visitId, rule)).toEqual([hold]);
  expect(valueOf(await readVisit(house, company.owner.key, { visitId })).formerAnswers).toMatchObject([{ rule, answered: null, reason }]);
  valueOf(await answerHold(house, company.owner.key, { visitId, hold, licenseId: day.illinoisLicenseId, reason }));
  expect(await holdsToAnswer(house, company, visitId, rule)).toEqual([]);
});

test("is refused without a license of the state that is one's own, stands, and is a certified applicator's", async () => {
  const { visitId, hold } = await aVisitUnderHold(house, company, day);
  const applicator = await aMember(house, company, "applicator", "Kit Lane");
  const licensed = async (change: object) => valueOf(await addLicense(house, company.owner.key, { ...licenseForm(applicator.personId), kind: "certified-applicator", state: "IL", ...change })).licenseId;
  const refused = [day.illinoisLicenseId, await licensed({ state: "IN" }), await licensed({ kind: "registered-technician" }), await licensed({ issuedOn: "2025-01-02", expiresOn: "2026-04-13" }), house.newId()];
  for (const licenseId of refused) {
    expect(await answerHold(house, applicator.key, { visitId, hold, licenseId, reason })).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { licenseId: expect.any(String) as string } } });
  }
  expect(await answerHold(house, applicator.key, { visitId, hold: "no-such-hold", licenseId: await licensed({}), reason })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
});

test("a license that ends today stands until midnight where the company is, not in Greenwich", async () => {
  const { visitId } = await aVisitUnderHold(house, company, day);
  const applicator = await aMember(house, company, "applicator", "Lee Marsh");
  const lastDay = { ...licenseForm(applicator.personId), kind: "certified-applicator", state: "IL", expiresOn: "2026-04-14" } as const;
  valueOf(await addLicense(house, company.owner.key, lastDay));
  house.pass(12 * 60);
  const evening = valueOf(await readVisit(house, applicator.key, { visitId })).mayAnswerWith;
  house.pass(4 * 60);
  const morning = valueOf(await readVisit(house, applicator.key, { visitId })).mayAnswerWith;
  house.pass(-16 * 60);
  expect([evening.length, morning.length]).toEqual([1, 0]);
});

test("a hold of the office is not answered, and keeps the ticket from being issued", async () => {
  const { visitId } = await aVisitUnderHold(house, company, day);
  await house.ask("delete from stop where visit_id = $1", [visitId]);
  const [hold = ""] = await holdsToAnswer(house, company, visitId, "on-no-day");
  const office = await answerHold(house, company.owner.key, { visitId, hold, licenseId: day.illinoisLicenseId, reason });
  expect(office).toMatchObject({ ok: false, refusal: { kind: "conflict", sentence: "This hold is not one that a license holder may answer. Change the plan." } });
  expect(await issueMixTicket(house, company.owner.key, { visitId })).toMatchObject({ ok: false });
});
