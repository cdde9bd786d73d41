import { afterEach, beforeEach, expect, test } from "vitest";
import { issueOwnerResetLink } from "#application/accounts/issue-owner-reset-link";
import { resetPassword } from "#application/accounts/reset-password";
import { signIn } from "#application/accounts/sign-in";
import { acceptInvitation } from "#application/people/accept-invitation";
import { aCompany, aMember, anInvitation, aPerson, PASSWORD, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house, "First Crew");
});
afterEach(() => house.close());

const NEXT = "five other words in a row";

test("the terminal makes an owner a link that works, and the company's audit trail says so", async () => {
  const { email } = company.owner;
  const made = valueOf(await issueOwnerResetLink(house, email.toUpperCase()));
  expect(made.companyName).toBe("First Crew");
  const [last] = (await trailOf(house, company.companyId)).slice(-1);
  expect(last).toMatchObject({ deed: "reset-link-issued", account_id: null, person_name: "the terminal of the installation" });
  valueOf(await resetPassword(house, { secret: made.secret, password: NEXT }));
  expect(await signIn(house, { email, password: NEXT }, "local")).toMatchObject({ ok: true });
});

test("an unknown address and a member who owns nothing get none", async () => {
  const member = await aMember(house, company, "office");
  const before = await house.books();
  expect(await issueOwnerResetLink(house, "nobody@foxtail.example")).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await issueOwnerResetLink(house, member.email)).toMatchObject({ refusal: { kind: "conflict" } });
  expect(await house.books()).toEqual(before);
});

test("a member of several companies, for whom no owner can make a link, gets one here", async () => {
  const member = await aMember(house, company, "technician");
  const second = await aCompany(house, "Second Crew");
  const { link } = await anInvitation(house, second, await aPerson(house, second), member.email);
  valueOf(await acceptInvitation(house, { link, password: PASSWORD }));
  const { secret } = valueOf(await issueOwnerResetLink(house, member.email));
  expect(await resetPassword(house, { secret, password: NEXT })).toMatchObject({ ok: true });
});
