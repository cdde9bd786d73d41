import { afterAll, beforeAll, expect, test } from "vitest";
import { addLicense } from "#application/people/add-license";
import { answerHold } from "#application/visits/answer-hold";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { readVisit } from "#application/visits/read-visit";
import { licenseForm } from "../../support/attempts-of-company";
import { aCompany, aMember, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aCrewDay, aVisitUnderHold, type CrewDay } from "../../support/crew-day";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
let day: CrewDay;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
  day = await aCrewDay(house, company);
});
afterAll(() => house.close());

const reason = "The test is in the mail.";

test("a license holder of the property's state answers a hold of law, with one deed, and the hold is open no more", async () => {
  const { visitId, rule } = await aVisitUnderHold(house, company, day);
  const before = valueOf(await readVisit(house, company.owner.key, { visitId }));
  expect(before.openHolds.map((hold) => hold.rule)).toContain(rule);
  expect(before.mayAnswerWith.map(({ licenseId }) => licenseId)).toEqual([day.illinoisLicenseId]);
  valueOf(await answerHold(house, company.owner.key, { visitId, rule, licenseId: day.illinoisLicenseId, reason }));
  const after = valueOf(await readVisit(house, company.owner.key, { visitId }));
  expect(after.openHolds.map((hold) => hold.rule)).not.toContain(rule);
  expect(after.answers).toMatchObject([{ rule, reason, by: company.owner.name }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "hold-answered", subject_id: visitId });
});

test("is refused without a license of the state that is one's own, stands, and is a certified applicator's", async () => {
  const { visitId, rule } = await aVisitUnderHold(house, company, day);
  const applicator = await aMember(house, company, "applicator", "Kit Lane");
  const licensed = async (change: object) => valueOf(await addLicense(house, company.owner.key, { ...licenseForm(applicator.personId), kind: "certified-applicator", state: "IL", ...change })).licenseId;
  const refused = [day.illinoisLicenseId, await licensed({ state: "IN" }), await licensed({ kind: "registered-technician" }), await licensed({ issuedOn: "2025-01-02", expiresOn: "2026-04-13" }), house.newId()];
  for (const licenseId of refused) {
    expect(await answerHold(house, applicator.key, { visitId, rule, licenseId, reason })).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { licenseId: expect.any(String) as string } } });
  }
  expect(await answerHold(house, applicator.key, { visitId, rule: "no-such-hold", licenseId: await licensed({}), reason })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
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
  const office = await answerHold(house, company.owner.key, { visitId, rule: "on-no-day", licenseId: day.illinoisLicenseId, reason });
  expect(office).toMatchObject({ ok: false, refusal: { kind: "conflict", sentence: "This hold is not one that a license holder may answer. Change the plan." } });
  expect(await issueMixTicket(house, company.owner.key, { visitId })).toMatchObject({ ok: false });
});
