import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { signIn } from "#application/accounts/sign-in";
import { ATTEMPTS_PER_ACCOUNT } from "#application/accounts/try-password";
import { acceptInvitation, readInvitation } from "#application/people/accept-invitation";
import { changePerson } from "#application/people/change-person";
import { endMembership } from "#application/people/end-membership";
import { INVITATION_DAYS } from "#application/people/invite-person";
import { readPerson } from "#application/people/read-person";
import { withdrawInvitation } from "#application/people/withdraw-invitation";
import { aCompany, aMember, anInvitation, aPerson, PASSWORD, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { countedId, openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE, saying } from "../../support/said";

const EMAIL = "robin@vale.example";
const ENDED = { ok: false, refusal: { kind: "conflict" } };

let house: TestHouse;
let company: TestCompany;
let personId: string;
let invitationId: string;
let link: string;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house, "First Crew");
  personId = await aPerson(house, company);
  ({ invitationId, link } = await anInvitation(house, company, personId, EMAIL, "applicator"));
});
afterEach(() => house.close());

test("offers what it is for, and makes the account and the membership once", async () => {
  const offer = { email: EMAIL, personName: "Robin Vale", companyName: "First Crew", role: "applicator", hasAccount: false };
  expect(await readInvitation(house, link)).toEqual({ ok: true, value: offer });
  expect(await acceptInvitation(house, { link, password: PASSWORD })).toEqual({ ok: true, value: { email: EMAIL } });
  const { accountId, companyId } = valueOf(await signIn(house, { email: EMAIL, password: PASSWORD }, "local"));
  expect(companyId).toBe(company.companyId);
  const last = (await trailOf(house, companyId)).at(-1);
  expect(last).toMatchObject({ deed: "invitation-accepted", account_id: accountId, person_name: "Robin Vale", subject_id: personId });
  expect(last?.details).toEqual({ email: EMAIL, role: "applicator" });
  const before = await house.books();
  expect(await readInvitation(house, link)).toMatchObject(ENDED);
  expect(await acceptInvitation(house, { link, password: PASSWORD })).toMatchObject(ENDED);
  expect(await house.books()).toEqual(before);
});

test("of several presses at once one is accepted", async () => {
  const answers = await Promise.all([1, 2, 3, 4].map(() => acceptInvitation(house, { link, password: PASSWORD })));
  expect(answers.map((answer) => (answer.ok ? "joined" : answer.refusal.kind)).sort()).toEqual(["conflict", "conflict", "conflict", "joined"]);
  expect(await house.ask("select count(*)::int from membership where person_id = $1", [personId])).toEqual([{ count: 1 }]);
  expect(await house.ask("select count(*)::int from account where email = $1", [EMAIL])).toEqual([{ count: 1 }]);
  expect((await trailOf(house, company.companyId)).filter(({ deed }) => deed === "invitation-accepted")).toHaveLength(1);
});

test("accepting and withdrawing at once: one happens, and the books agree with it", async () => {
  const [accepted, withdrawn] = await Promise.all([
    acceptInvitation(house, { link, password: PASSWORD }),
    withdrawInvitation(house, company.owner.key, { invitationId }),
  ]);
  expect([accepted.ok, withdrawn.ok].sort()).toEqual([false, true]);
  expect(await house.ask("select count(*)::int from membership where person_id = $1", [personId])).toEqual([{ count: accepted.ok ? 1 : 0 }]);
});

test.each<[string, () => unknown]>([
  ["ran out", () => { house.pass(INVITATION_DAYS * 1440); }],
  ["was withdrawn", () => withdrawInvitation(house, company.owner.key, { invitationId })],
  ["was replaced", () => anInvitation(house, company, personId, EMAIL)],
  ["is for someone who has left", () => changePerson(house, company.owner.key, { personId, version: 1, name: "Robin Vale", phone: "", leftOn: "2026-04-13" })],
])("an invitation that %s is no longer one", async (_what, end) => {
  await end();
  const before = await house.books();
  expect(await readInvitation(house, link)).toMatchObject(ENDED);
  expect(await acceptInvitation(house, { link, password: PASSWORD })).toMatchObject(ENDED);
  expect(await house.books()).toEqual(before);
});

test("what is no link is refused, another company in it finds nothing, and nothing is written", async () => {
  const other = await aCompany(house, "Second Crew");
  const secret = link.split(".")[1] ?? "";
  const before = await house.books();
  const strange = [undefined, null, 5, {}, [], "", "x", `${link}x`, `${"-".repeat(36)}.${secret}`, `${company.companyId}.${"\u0000".repeat(43)}`, "x".repeat(1_048_576)];
  for (const hostile of strange) {
    expect(await readInvitation(house, hostile)).toMatchObject(ENDED);
    expect(await acceptInvitation(house, { link: hostile, password: PASSWORD })).toMatchObject({ refusal: { kind: "bad-input" } });
  }
  for (const companyId of [other.companyId, countedId(0xffffff)]) {
    expect(await acceptInvitation(house, { link: `${companyId}.${secret}`, password: PASSWORD })).toMatchObject(ENDED);
  }
  for (const password of [undefined, null, 5, {}, "", "fourteen chars", "x".repeat(201)]) {
    expect(await acceptInvitation(house, { link, password })).toMatchObject({ refusal: { kind: "bad-input", fields: { password: A_SENTENCE } } });
  }
  expect(await house.books()).toEqual(before);
});

describe("an address that has an account", () => {
  test("joins with its own password and keeps it, and guesses are counted", async () => {
    const other = await aCompany(house, "Second Crew");
    const invited = await anInvitation(house, company, personId, other.owner.email);
    expect(await readInvitation(house, invited.link)).toMatchObject({ ok: true, value: { hasAccount: true } });
    for (let guess = 1; guess < ATTEMPTS_PER_ACCOUNT; guess += 1) {
      expect(await acceptInvitation(house, { link: invited.link, password: "a wrong guess" })).toMatchObject({ refusal: { kind: "bad-input" } });
    }
    expect(await acceptInvitation(house, { link: invited.link, password: PASSWORD })).toMatchObject({ ok: true });
    expect(await house.ask("select count(*)::int from account where email = $1", [other.owner.email])).toEqual([{ count: 1 }]);
  });

  test("is locked to the right password too after too many guesses", async () => {
    const other = await aCompany(house, "Second Crew");
    const invited = await anInvitation(house, company, personId, other.owner.email);
    for (let guess = 0; guess < ATTEMPTS_PER_ACCOUNT; guess += 1) await acceptInvitation(house, { link: invited.link, password: "a wrong guess" });
    const answer = await acceptInvitation(house, { link: invited.link, password: PASSWORD });
    expect(answer).toMatchObject({ refusal: { fields: { password: saying("Too many") } } });
  });

  test("is not joined a second time as another person", async () => {
    const invited = await anInvitation(house, company, personId, company.owner.email);
    const before = await house.books();
    expect(await acceptInvitation(house, { link: invited.link, password: PASSWORD })).toMatchObject(ENDED);
    const after = await house.books();
    expect(after.membership).toEqual(before.membership);
    expect(after.invitation).toEqual(before.invitation);
  });

  test("takes up a membership that ended, in the new role", async () => {
    const member = await aMember(house, company, "technician");
    valueOf(await endMembership(house, company.owner.key, { personId: member.personId }));
    const again = await anInvitation(house, company, member.personId, member.email, "office");
    valueOf(await acceptInvitation(house, { link: again.link, password: PASSWORD }));
    const { person } = valueOf(await readPerson(house, member.key, { personId: member.personId }));
    expect(person.access).toEqual({ kind: "member", role: "office", email: member.email });
  });
});
