import { afterEach, beforeEach, expect, test } from "vitest";
import { inCompany } from "#adapters/postgres/company-work";
import { issuePasswordReset } from "#adapters/postgres/accounts";
import { issueResetLink, RESET_LINK_HOURS } from "#application/accounts/issue-reset-link";
import { readResetLink } from "#application/accounts/reset-password";
import { acceptInvitation } from "#application/people/accept-invitation";
import { endMembership } from "#application/people/end-membership";
import { aCompany, aMember, anInvitation, aPerson, PASSWORD, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { countedId, openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house, "First Crew");
});
afterEach(() => house.close());

test("the owner gets a link once; the database keeps its hash, and the audit trail says for whom", async () => {
  const member = await aMember(house, company, "technician");
  const made = valueOf(await issueResetLink(house, company.owner.key, { personId: member.personId }));
  expect(made).toMatchObject({ email: member.email, expiresAt: new Date(house.now().getTime() + RESET_LINK_HOURS * 3_600_000) });
  expect(await readResetLink(house, made.secret)).toEqual({ ok: true, value: { email: member.email } });
  expect(JSON.stringify(await house.books())).not.toContain(made.secret);
  const last = (await trailOf(house, company.companyId)).at(-1);
  expect(last).toMatchObject({ deed: "reset-link-issued", subject_id: member.personId, details: { email: member.email } });
});

test("a newer link makes the older one useless", async () => {
  const { personId } = await aMember(house, company, "technician");
  const older = valueOf(await issueResetLink(house, company.owner.key, { personId }));
  const newer = valueOf(await issueResetLink(house, company.owner.key, { personId }));
  expect(await readResetLink(house, older.secret)).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await readResetLink(house, newer.secret)).toMatchObject({ ok: true });
});

test("someone without an account, and someone whose membership has ended, get none", async () => {
  const personId = await aPerson(house, company);
  const member = await aMember(house, company, "technician");
  valueOf(await endMembership(house, company.owner.key, { personId: member.personId }));
  const before = await house.books();
  for (const nobody of [personId, member.personId]) {
    expect(await issueResetLink(house, company.owner.key, { personId: nobody })).toMatchObject({ refusal: { kind: "not-found" } });
  }
  expect(await house.books()).toEqual(before);
});

test("the database itself refuses a link for an account that is no member of the open company now", async () => {
  const member = await aMember(house, company, "technician");
  const stranger = await aCompany(house, "Second Crew");
  valueOf(await endMembership(house, company.owner.key, { personId: member.personId }));
  const link = { linkId: countedId(0xfffff), secretHash: new Uint8Array(32), now: house.now(), expiresAt: house.now(), isFromTerminal: true };
  for (const { accountId } of [member.key, stranger.owner.key]) {
    expect(await inCompany(house.client, company.owner.key, (tx) => issuePasswordReset(tx, accountId, link))).toBe("not-a-member");
  }
});

test("an owner gets no link for an account that belongs to another company too", async () => {
  const victim = await aCompany(house, "Second Crew");
  const personId = await aPerson(house, company);
  const { link } = await anInvitation(house, company, personId, victim.owner.email);
  valueOf(await acceptInvitation(house, { link, password: PASSWORD }));
  const before = await house.books();
  expect(await issueResetLink(house, company.owner.key, { personId })).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await house.books()).toEqual(before);
});

test("a link made before the account joined another company ends there and then", async () => {
  const member = await aMember(house, company, "technician");
  const { secret } = valueOf(await issueResetLink(house, company.owner.key, { personId: member.personId }));
  house.pass(1);
  const second = await aCompany(house, "Second Crew");
  const { link } = await anInvitation(house, second, await aPerson(house, second), member.email);
  valueOf(await acceptInvitation(house, { link, password: PASSWORD }));
  expect(await readResetLink(house, secret)).toMatchObject({ refusal: { kind: "conflict" } });
});
