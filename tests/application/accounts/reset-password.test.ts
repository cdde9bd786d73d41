import { afterEach, beforeEach, expect, test } from "vitest";
import { issueResetLink, RESET_LINK_HOURS } from "#application/accounts/issue-reset-link";
import { readResetLink, resetPassword } from "#application/accounts/reset-password";
import { signIn } from "#application/accounts/sign-in";
import { ATTEMPTS_PER_ACCOUNT } from "#application/accounts/try-password";
import { readCompany } from "#application/companies/read-company";
import { aCompany, aMember, type TestCompany, type TestMember, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
let member: TestMember;
let secret: string;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
  member = await aMember(house, company, "applicator");
  ({ secret } = valueOf(await issueResetLink(house, company.owner.key, { personId: member.personId })));
});
afterEach(() => house.close());

const NEXT = "five other words in a row";
const ENDED = { ok: false, refusal: { kind: "conflict" } };

test("a link sets the password, ends the sessions and forgets the failed guesses, once", async () => {
  for (let guess = 0; guess <= ATTEMPTS_PER_ACCOUNT; guess += 1) await signIn(house, { email: member.email, password: "guess" }, "local");
  expect(await resetPassword(house, { secret, password: NEXT })).toEqual({ ok: true, value: null });
  expect(await readCompany(house, member.key, {})).toMatchObject({ refusal: { kind: "signed-out" } });
  expect(await signIn(house, { email: member.email, password: NEXT }, "local")).toMatchObject({ ok: true, value: { sessionVersion: 2 } });
  expect(await readResetLink(house, secret)).toMatchObject(ENDED);
  const before = await house.books();
  expect(await resetPassword(house, { secret, password: `${NEXT} again` })).toMatchObject(ENDED);
  expect(await house.books()).toEqual(before);
});

test("of two presses at once one sets the password", async () => {
  const answers = await Promise.all([1, 2].map((press) => resetPassword(house, { secret, password: `${NEXT} ${String(press)}` })));
  expect(answers.map((answer) => (answer.ok ? "set" : answer.refusal.kind)).sort()).toEqual(["conflict", "set"]);
  expect(await house.ask("select session_version from account where email = $1", [member.email])).toEqual([{ session_version: 2 }]);
});

test("a link runs out", async () => {
  house.pass(RESET_LINK_HOURS * 60 - 1);
  expect(await readResetLink(house, secret)).toMatchObject({ ok: true });
  house.pass(1);
  expect(await readResetLink(house, secret)).toMatchObject(ENDED);
  expect(await resetPassword(house, { secret, password: NEXT })).toMatchObject(ENDED);
});

test("what is no link, or no good password, changes nothing", async () => {
  const before = await house.books();
  for (const hostile of [undefined, null, 5, {}, "", "x", "\u0000".repeat(43), "x".repeat(1_048_576), `${secret}=`]) {
    expect(await readResetLink(house, hostile)).toMatchObject(ENDED);
    expect(await resetPassword(house, { secret: hostile, password: NEXT })).toMatchObject({ refusal: { kind: "bad-input" } });
  }
  for (const password of [undefined, null, 5, {}, "", "fourteen chars", "x".repeat(201)]) {
    const answer = await resetPassword(house, { secret, password });
    expect(answer).toMatchObject({ refusal: { kind: "bad-input", fields: { password: A_SENTENCE } } });
  }
  for (const input of [undefined, null, [], "x"]) expect(await resetPassword(house, input)).toMatchObject({ refusal: { kind: "bad-input" } });
  expect(await resetPassword(house, { secret: "x".repeat(43), password: NEXT })).toMatchObject(ENDED);
  expect(await house.books()).toEqual(before);
});
