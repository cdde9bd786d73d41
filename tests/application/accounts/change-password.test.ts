import { afterEach, beforeEach, expect, test } from "vitest";
import { changePassword } from "#application/accounts/change-password";
import { signIn } from "#application/accounts/sign-in";
import { readCompany } from "#application/companies/read-company";
import { aCompany, PASSWORD, type TestCompany, trailOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterEach(() => house.close());

const NEXT = "five other words in a row";

test("a changed password ends every session, opens the account, and stands in the audit trail without being told", async () => {
  const { key, email, personId } = company.owner;
  expect(await changePassword(house, key, { present: PASSWORD, next: NEXT })).toEqual({ ok: true, value: { email } });
  expect(await readCompany(house, key, {})).toMatchObject({ refusal: { kind: "signed-out" } });
  expect(await signIn(house, { email, password: PASSWORD }, "local")).toMatchObject({ refusal: { kind: "wrong" } });
  const again = await signIn(house, { email, password: NEXT }, "local");
  expect(again).toEqual({ ok: true, value: { ...key, sessionVersion: 2 } });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "password-changed", subject_id: personId, details: {} });
});

test.each([
  ["a wrong present password", { present: "not the password", next: NEXT }, "present"],
  ["the same password again", { present: PASSWORD, next: PASSWORD }, "next"],
  ["a short one", { present: PASSWORD, next: "short" }, "next"],
  ["a very long one", { present: PASSWORD, next: "x".repeat(201) }, "next"],
])("%s is refused at its field, and the session goes on", async (_what, form, field) => {
  const before = await house.books();
  const answer = await changePassword(house, company.owner.key, form);
  expect(answer).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
  expect(await house.books()).toEqual(before);
  expect(await readCompany(house, company.owner.key, {})).toMatchObject({ ok: true });
});

test("of two changes at once one is made, and the other finds its session ended", async () => {
  const forms = [{ present: PASSWORD, next: NEXT }, { present: PASSWORD, next: `${NEXT} too` }];
  const answers = await Promise.all(forms.map((form) => changePassword(house, company.owner.key, form)));
  expect(answers.map((answer) => (answer.ok ? "changed" : answer.refusal.kind)).sort()).toEqual(["changed", "signed-out"]);
  expect(await house.ask("select session_version from account")).toEqual([{ session_version: 2 }]);
});
