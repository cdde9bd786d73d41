import { afterEach, beforeEach, expect, test } from "vitest";
import { changeCompany } from "#application/companies/change-company";
import { COMPANY_CHANGE } from "../../support/attempts-of-company";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterEach(() => house.close());

test("writes every field, counts the version, and the audit trail keeps before and after", async () => {
  await aCompany(house, "Second Crew");
  expect(await changeCompany(house, company.owner.key, COMPANY_CHANGE)).toEqual({ ok: true, value: { version: 2 } });
  const [row] = await house.ask(
    `select version, name, state, time_zone as "timeZone", phone, address, business_license_number as "businessLicenseNumber",
       business_license_expires_on::text as "businessLicenseExpiresOn", insurance_expires_on::text as "insuranceExpiresOn"
     from company where company_id = $1`,
    [company.companyId],
  );
  expect(row).toEqual({ ...COMPANY_CHANGE, version: 2 });
  const { version: _version, ...after } = COMPANY_CHANGE;
  const last = (await trailOf(house, company.companyId)).at(-1);
  expect(last).toMatchObject({ deed: "company-changed", subject_id: company.companyId, details: { before: { name: "Foxtail Turf", version: 1 }, after } });
  expect(await house.ask("select version, name from company where company_id <> $1", [company.companyId])).toEqual([{ version: 1, name: "Second Crew" }]);
});

test("optional fields that are emptied become null; a version comes as a browser sends it", async () => {
  const emptied = { ...COMPANY_CHANGE, version: "1", phone: " ", address: "", businessLicenseNumber: "", businessLicenseExpiresOn: "", insuranceExpiresOn: " " };
  valueOf(await changeCompany(house, company.owner.key, emptied));
  expect(await house.ask("select phone, address, business_license_number, business_license_expires_on, insurance_expires_on from company")).toEqual([
    { phone: null, address: null, business_license_number: null, business_license_expires_on: null, insurance_expires_on: null },
  ]);
});

test("whoever filled the form from an older version is told, and nothing is overwritten", async () => {
  valueOf(await changeCompany(house, company.owner.key, COMPANY_CHANGE));
  const before = await house.books();
  for (const version of [1, 3]) {
    const answer = await changeCompany(house, company.owner.key, { ...COMPANY_CHANGE, version, name: "Overwritten" });
    expect(answer).toMatchObject({ refusal: { kind: "conflict" } });
  }
  expect(await house.books()).toEqual(before);
});

test("of two changes at once one is made and the other is told", async () => {
  const answers = await Promise.all(["One", "Other"].map((name) => changeCompany(house, company.owner.key, { ...COMPANY_CHANGE, name })));
  expect(answers.map((answer) => (answer.ok ? "changed" : answer.refusal.kind)).sort()).toEqual(["changed", "conflict"]);
  expect(await house.ask("select version from company")).toEqual([{ version: 2 }]);
  expect((await trailOf(house, company.companyId)).filter(({ deed }) => deed === "company-changed")).toHaveLength(1);
});

test.each([
  ["name", ""], ["name", "x".repeat(201)], ["name", "two\nlines"], ["state", "XX"], ["state", "in"], ["timeZone", "Europe/Berlin"],
  ["phone", "x".repeat(41)], ["businessLicenseExpiresOn", "2026-02-30"], ["insuranceExpiresOn", "tomorrow"], ["version", "1.5"], ["version", 0],
] as const)("%s as %j is refused at its field", async (field, value) => {
  const before = await house.books();
  const form = { ...COMPANY_CHANGE, [field]: value };
  expect(await changeCompany(house, company.owner.key, form)).toMatchObject({ refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
  expect(await house.books()).toEqual(before);
});
