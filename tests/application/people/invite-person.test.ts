import { afterEach, beforeEach, expect, test } from "vitest";
import { readInvitation } from "#application/people/accept-invitation";
import { changePerson } from "#application/people/change-person";
import { INVITATION_DAYS, invitePerson } from "#application/people/invite-person";
import { aCompany, aMember, aPerson, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE, saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
let personId: string;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
  personId = await aPerson(house, company);
});
afterEach(() => house.close());

const invite = (email = "robin@vale.example") => invitePerson(house, company.owner.key, { personId, email, role: "technician" });

test("makes a link that names the company, keeps the secret's hash only, and says so in the audit trail", async () => {
  const { invitationId, link, expiresAt } = valueOf(await invite(" Robin@Vale.Example "));
  expect(link.startsWith(`${company.companyId}.`)).toBe(true);
  expect(expiresAt).toEqual(new Date(house.now().getTime() + INVITATION_DAYS * 86_400_000));
  expect(JSON.stringify(await house.books())).not.toContain(link.split(".")[1]);
  const [row] = await house.ask("select invitation_id, person_id, email, role, accepted_at, withdrawn_at from invitation");
  expect(row).toEqual({ invitation_id: invitationId, person_id: personId, email: "robin@vale.example", role: "technician", accepted_at: null, withdrawn_at: null });
  const last = (await trailOf(house, company.companyId)).at(-1);
  expect(last).toMatchObject({ deed: "person-invited", subject_id: personId, details: { email: "robin@vale.example", role: "technician" } });
});

test("a newer invitation withdraws the older, also when both are made at once", async () => {
  const older = valueOf(await invite());
  const answers = await Promise.all([invite("one@vale.example"), invite("other@vale.example")]);
  const links = [older.link, ...answers.map((answer) => valueOf(answer).link)];
  const standing = (await Promise.all(links.map((link) => readInvitation(house, link)))).filter(({ ok }) => ok);
  expect(standing).toHaveLength(1);
  expect(await house.ask("select count(*)::int from invitation where withdrawn_at is null")).toEqual([{ count: 1 }]);
});

test("someone who has left, or has an account, is not invited", async () => {
  valueOf(await changePerson(house, company.owner.key, { personId, version: 1, name: "Robin Vale", phone: "", leftOn: "2026-04-01" }));
  const member = await aMember(house, company, "office");
  const before = await house.books();
  expect(await invite()).toMatchObject({ refusal: { kind: "conflict", sentence: saying("has left") } });
  const again = await invitePerson(house, company.owner.key, { personId: member.personId, email: member.email, role: "owner" });
  expect(again).toMatchObject({ refusal: { kind: "conflict", sentence: saying("has an account already") } });
  expect(await house.books()).toEqual(before);
});

test.each(["", "robin", "robin@", "@vale.example", "robin@vale", "ro bin@vale.example", `${"x".repeat(250)}@vale.example`])("%j is no email address", async (email) => {
  expect(await invite(email)).toMatchObject({ refusal: { kind: "bad-input", fields: { email: A_SENTENCE } } });
});
