import { afterAll, beforeAll, expect, test } from "vitest";
import { changeCompany } from "#application/companies/change-company";
import { readCompany } from "#application/companies/read-company";
import { COMPANY_CHANGE } from "../../support/attempts-of-company";
import { aCompany, aMember, companyForm, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

test("reads the company, who asks, and the moment; days come as days", async () => {
  const company = await aCompany(house);
  await aCompany(house, "Second Crew");
  const member = await aMember(house, company, "technician");
  const form = companyForm();
  const nothing = { phone: null, address: null, businessLicenseNumber: null, businessLicenseExpiresOn: null, insuranceExpiresOn: null };
  expect(valueOf(await readCompany(house, member.key, {}))).toEqual({
    company: { version: 1, name: form.companyName, state: "IN", timeZone: form.timeZone, isDemonstration: false, ...nothing },
    companyId: company.companyId,
    member: { accountId: member.key.accountId, personId: member.personId, personName: "technician", role: "technician" },
    now: house.now(),
  });
  valueOf(await changeCompany(house, company.owner.key, COMPANY_CHANGE));
  expect(valueOf(await readCompany(house, member.key, {})).company).toEqual({ ...COMPANY_CHANGE, version: 2, isDemonstration: false });
});
