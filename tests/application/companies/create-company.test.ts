import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { signIn } from "#application/accounts/sign-in";
import { ATTEMPTS_PER_ACCOUNT } from "#application/accounts/try-password";
import { createCompany, createCompanyByLink, isFirstRunLink } from "#application/companies/create-company";
import { FIRST_RUN_LINK_HOURS, issueFirstRunLink } from "#application/companies/issue-first-run-link";
import { aCompany, companyForm, PASSWORD, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE, saying } from "../../support/said";

let house: TestHouse;
let secret: string;
beforeEach(async () => {
  house = await openHouse();
  ({ secret } = await issueFirstRunLink(house));
});
afterEach(() => house.close());

const ENDED = { ok: false, refusal: { kind: "conflict" } };

test("the link makes the company, its owner, the owner's license and the audit trail, and the owner signs in", async () => {
  const form = { ...companyForm(), bindAddress: "0.0.0.0" };
  const made = valueOf(await createCompanyByLink(house, secret, form));
  const { companyId, accountId, ownerPersonId: personId, licenseId } = made;
  const [company] = await house.ask("select * from company");
  expect(company).toMatchObject({ company_id: companyId, name: form.companyName, state: "IN", time_zone: form.timeZone, is_demonstration: false, version: 1 });
  expect(await house.ask("select company_id, person_id, name from person")).toEqual([{ company_id: companyId, person_id: personId, name: form.ownerName }]);
  const [membership] = await house.ask("select * from membership");
  expect(membership).toMatchObject({ company_id: companyId, account_id: accountId, person_id: personId, role: "owner", ended_at: null });
  const [license] = await house.ask("select license_id, person_id, kind, number, category, expires_on::text from license");
  expect(license).toEqual({ license_id: licenseId, person_id: personId, kind: form.license.kind, number: form.license.number, category: "3b Turf", expires_on: "2026-12-31" });
  expect(await house.ask("select bind_address from installation")).toEqual([{ bind_address: "0.0.0.0" }]);
  const trail = await trailOf(house, companyId);
  expect(trail.map(({ deed, subject_id }) => [deed, subject_id])).toEqual([["company-created", companyId], ["license-added", licenseId]]);
  expect(trail.map(({ account_id, person_name }) => [account_id, person_name])).toEqual(trail.map(() => [accountId, form.ownerName]));
  expect(await signIn(house, { email: form.email, password: PASSWORD }, "local")).toEqual({ ok: true, value: { accountId, companyId, sessionVersion: 1 } });
});

test("the link works once", async () => {
  valueOf(await createCompanyByLink(house, secret, companyForm()));
  const before = await house.books();
  expect(await isFirstRunLink(house, secret)).toBe(false);
  expect(await createCompanyByLink(house, secret, companyForm("Second Crew"))).toMatchObject(ENDED);
  expect(await house.books()).toEqual(before);
});

test.each([["the same form", "Foxtail Turf"], ["another form", "Second Crew"]])("of two presses at once with %s one makes a company", async (_what, name) => {
  const answers = await Promise.all([companyForm(), companyForm(name)].map((form) => createCompanyByLink(house, secret, form)));
  expect(answers.map((answer) => (answer.ok ? "made" : answer.refusal.kind)).sort()).toEqual(["conflict", "made"]);
  for (const table of ["company", "account", "person", "membership", "license"]) expect((await house.books())[table], table).toHaveLength(1);
});

test("the link runs out", async () => {
  house.pass(FIRST_RUN_LINK_HOURS * 60 - 1);
  expect(await isFirstRunLink(house, secret)).toBe(true);
  house.pass(1);
  expect(await isFirstRunLink(house, secret)).toBe(false);
  expect(await createCompanyByLink(house, secret, companyForm())).toMatchObject(ENDED);
});

test("a refused form leaves the link standing", async () => {
  const answer = await createCompanyByLink(house, secret, { ...companyForm(), companyName: "" });
  expect(answer).toMatchObject({ refusal: { kind: "bad-input", fields: { companyName: "Give the company's name." } } });
  expect(await createCompanyByLink(house, secret, companyForm())).toMatchObject({ ok: true });
});

test("what is no link learns nothing about an email address or its password", async () => {
  const { owner } = await aCompany(house);
  const before = await house.books();
  const answers = [];
  for (const password of [PASSWORD, "not the password"]) {
    for (const email of [owner.email, "nobody@foxtail.example"]) {
      answers.push(await createCompanyByLink(house, "x".repeat(43), { ...companyForm("Second Crew"), email, password }));
    }
  }
  for (const answer of answers) expect(answer).toEqual(answers[0]);
  expect(answers[0]).toMatchObject(ENDED);
  for (const hostile of [undefined, null, 5, {}, "", "\u0000".repeat(43), "x".repeat(1_048_576)]) {
    expect(await isFirstRunLink(house, hostile)).toBe(false);
    expect(await createCompanyByLink(house, hostile, companyForm())).toMatchObject(ENDED);
  }
  expect(await house.books()).toEqual(before);
});

describe("an email address that has an account", () => {
  test("keeps it, and its password opens both companies", async () => {
    const first = await aCompany(house);
    const form = { ...companyForm("Second Crew"), email: first.owner.email };
    const second = valueOf(await createCompanyByLink(house, secret, form));
    expect(second.accountId).toBe(first.owner.key.accountId);
    expect(await house.ask("select count(*)::int from account")).toEqual([{ count: 1 }]);
  });

  test("is not taken over by another password, and its guesses are counted with the sign-ins", async () => {
    const { owner } = await aCompany(house);
    const form = { ...companyForm("Second Crew"), email: owner.email, password: "not the owner's password" };
    for (let guess = 0; guess < ATTEMPTS_PER_ACCOUNT; guess += 1) {
      expect(await createCompanyByLink(house, secret, form)).toMatchObject({ refusal: { kind: "bad-input", fields: { password: A_SENTENCE } } });
    }
    const right = await createCompanyByLink(house, secret, { ...form, password: PASSWORD });
    expect(right).toMatchObject({ refusal: { fields: { password: saying("Too many") } } });
    expect(await signIn(house, { email: owner.email, password: PASSWORD }, "local")).toMatchObject({ refusal: { kind: "too-many" } });
    expect(await house.ask("select count(*)::int from company")).toEqual([{ count: 1 }]);
  });
});

test("hostile fields are refused by name, and nothing is written", async () => {
  const form = companyForm();
  const before = await house.books();
  for (const value of [undefined, null, 5, true, {}, [], "\u0000", "\ud800", "x".repeat(1_048_576)]) {
    for (const field of Object.keys(form)) {
      const answer = await createCompanyByLink(house, secret, { ...form, [field]: value });
      expect(answer.ok ? {} : answer.refusal, field).toMatchObject({ kind: "bad-input" });
      const fields = answer.ok || answer.refusal.kind !== "bad-input" ? {} : answer.refusal.fields;
      expect(Object.keys(fields).every((named) => named === field || named.startsWith(`${field}.`)), field).toBe(true);
    }
    for (const field of Object.keys(form.license)) {
      const answer = await createCompanyByLink(house, secret, { ...form, license: { ...form.license, [field]: value } });
      expect(answer, field).toMatchObject({ refusal: { kind: "bad-input", fields: { [`license.${field}`]: A_SENTENCE } } });
    }
    expect(await createCompanyByLink(house, secret, value)).toMatchObject({ refusal: { kind: "bad-input" } });
  }
  expect(await house.books()).toEqual(before);
});

test("what admits a company comes first: when it throws, nothing is written", async () => {
  const before = await house.books();
  const made = createCompany(house, companyForm(), { isDemonstration: true }, () => Promise.reject(new Error("not admitted")));
  await expect(made).rejects.toThrow("not admitted");
  expect(await house.books()).toEqual(before);
  valueOf(await createCompany(house, companyForm(), { isDemonstration: true }, () => Promise.resolve()));
  expect(await house.ask("select is_demonstration from company")).toEqual([{ is_demonstration: true }]);
});
