import { afterEach, beforeEach, expect, test } from "vitest";
import { addLicense } from "#application/people/add-license";
import { withdrawLicense } from "#application/people/withdraw-license";
import { licenseForm } from "../../support/attempts-of-company";
import { aCompany, aPerson, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
let personId: string;
let form: ReturnType<typeof licenseForm>;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
  personId = await aPerson(house, company);
  form = licenseForm(personId);
});
afterEach(() => house.close());

const ofPerson = () => house.ask("select license_id, withdrawn_at from license where person_id = $1", [personId]);

test("writes the license as printed, and the audit trail says which", async () => {
  const { licenseId } = valueOf(await addLicense(house, company.owner.key, form));
  const [row] = await house.ask(
    `select person_id as "personId", kind, state, number, category, issued_on::text as "issuedOn", expires_on::text as "expiresOn" from license where license_id = $1`,
    [licenseId],
  );
  expect(row).toEqual(form);
  const { kind, state, number, expiresOn } = form;
  const last = (await trailOf(house, company.companyId)).at(-1);
  expect(last).toMatchObject({ deed: "license-added", subject_id: licenseId, details: { kind, state, number, expiresOn } });
});

test("the same license stands once; a renewal, or one entered again after it was taken back, is a new entry", async () => {
  const { licenseId } = valueOf(await addLicense(house, company.owner.key, form));
  expect(await addLicense(house, company.owner.key, form)).toMatchObject({ refusal: { kind: "bad-input", fields: { number: A_SENTENCE } } });
  valueOf(await addLicense(house, company.owner.key, { ...form, issuedOn: "2027-01-01", expiresOn: "2027-12-31" }));
  valueOf(await withdrawLicense(house, company.owner.key, { licenseId }));
  valueOf(await addLicense(house, company.owner.key, form));
  expect(await ofPerson()).toHaveLength(3);
});

test("of two presses at once one writes", async () => {
  const answers = await Promise.all([1, 2, 3].map(() => addLicense(house, company.owner.key, form)));
  expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
  for (const answer of answers) if (!answer.ok) expect(["conflict", "bad-input"]).toContain(answer.refusal.kind);
  expect(await ofPerson()).toHaveLength(1);
  expect((await trailOf(house, company.companyId)).filter(({ deed }) => deed === "license-added")).toHaveLength(2);
});

test("a license without a day of issue is one; one that expires no later than it was issued is none", async () => {
  valueOf(await addLicense(house, company.owner.key, { ...form, issuedOn: "" }));
  for (const issuedOn of [form.expiresOn, "2027-06-01"]) {
    const answer = await addLicense(house, company.owner.key, { ...form, number: "L-other", issuedOn });
    expect(answer).toMatchObject({ refusal: { kind: "bad-input", fields: { expiresOn: "A license expires after it is issued." } } });
  }
});
