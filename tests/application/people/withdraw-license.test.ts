import { afterEach, beforeEach, expect, test } from "vitest";
import { readPerson } from "#application/people/read-person";
import { withdrawLicense } from "#application/people/withdraw-license";
import { aCompany, companyForm, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterEach(() => house.close());

test("of several presses at once one takes the entry back; it is kept, and shown no more", async () => {
  const { licenseId, owner } = company;
  const answers = await Promise.all([1, 2, 3].map(() => withdrawLicense(house, owner.key, { licenseId })));
  expect(answers.map((answer) => (answer.ok ? "withdrawn" : answer.refusal.kind)).sort()).toEqual(["conflict", "conflict", "withdrawn"]);
  expect(await house.ask("select withdrawn_at from license where license_id = $1", [licenseId])).toEqual([{ withdrawn_at: house.now() }]);
  expect(valueOf(await readPerson(house, owner.key, { personId: owner.personId })).person.licenses).toEqual([]);
  const withdrawals = (await trailOf(house, company.companyId)).filter(({ deed }) => deed === "license-withdrawn");
  expect(withdrawals).toMatchObject([{ subject_id: licenseId, details: { number: companyForm().license.number } }]);
});
