import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { may, PERMISSIONS } from "#application/permission";
import { ROLES, type Role } from "#domain/crew/role";
import { type Attempt } from "../support/attempt";
import { ATTEMPTS, READING, USE_CASE_NAMES } from "../support/attempts";
import { aCompany, aMember, type TestCompany, type TestMember, trailOf } from "../support/crew";
import { openHouse, type TestHouse } from "../support/house";

let house: TestHouse;
let company: TestCompany;
let members: Readonly<Record<Role, TestMember>>;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
  const made: Partial<Record<Role, TestMember>> = {};
  for (const role of ROLES) made[role] = await aMember(house, company, role);
  members = made as Record<Role, TestMember>;
});
afterAll(() => house.close());

// The table of the blueprint, written a second time: a slip in one of the two shows itself here.
const EXPECTED: Readonly<Record<keyof typeof PERMISSIONS, string>> = {
  "accounts/change-password": "owner office applicator technician inspector",
  "accounts/issue-reset-link": "owner",
  "companies/change-company": "owner",
  "companies/change-house-settings": "owner office",
  "companies/read-company": "owner office applicator technician inspector",
  "companies/read-house-settings": "owner office applicator technician",
  "days/add-route-day": "owner office",
  "days/change-route-day": "owner office",
  "days/enter-forecast": "owner office",
  "days/move-visit": "owner office",
  "days/order-day": "owner office",
  "days/pin-visit": "owner office",
  "days/place-visit": "owner office",
  "days/read-day": "owner office applicator technician",
  "days/restore-order": "owner office",
  "days/set-shop-position": "owner office",
  "days/take-off-day": "owner office",
  "documents/print-application-record": "owner office inspector",
  "documents/print-customer-notice": "owner office applicator technician",
  "documents/print-loading-list": "owner office applicator technician",
  "documents/print-mix-ticket": "owner office applicator technician",
  "documents/print-packet": "owner office applicator technician",
  "documents/print-posting-sign": "owner office applicator technician",
  "documents/print-route-sheet": "owner office applicator technician",
  "documents/read-issued-paper": "owner office applicator technician inspector",
  "documents/read-packet": "owner office applicator technician",
  "documents/read-paper-to-print": "owner office applicator technician inspector",
  "equipment/add-equipment": "owner office",
  "equipment/add-measuring-tool": "owner office",
  "equipment/add-vehicle": "owner office",
  "equipment/calibrate-sprayer": "owner office applicator technician",
  "equipment/calibrate-spreader": "owner office applicator technician",
  "equipment/change-equipment": "owner office",
  "equipment/change-vehicle": "owner office",
  "equipment/list-equipment": "owner office applicator technician",
  "equipment/read-calibration": "owner office applicator technician",
  "equipment/read-equipment": "owner office applicator technician",
  "equipment/stand-down-equipment": "owner office",
  "equipment/stand-down-measuring-tool": "owner office",
  "equipment/stand-down-vehicle": "owner office",
  "people/add-license": "owner",
  "people/add-person": "owner",
  "people/change-person": "owner",
  "people/change-role": "owner",
  "people/end-membership": "owner",
  "people/invite-person": "owner",
  "people/list-people": "owner office applicator technician",
  "people/read-person": "owner office applicator technician",
  "people/withdraw-invitation": "owner",
  "people/withdraw-license": "owner",
  "properties/add-client": "owner office",
  "properties/add-property": "owner office",
  "properties/add-seeding": "owner office",
  "properties/add-soil-test": "owner office",
  "properties/add-station": "owner office",
  "properties/add-water-edge": "owner office",
  "properties/add-zone": "owner office",
  "properties/change-client": "owner office",
  "properties/change-property": "owner office",
  "properties/change-seeding": "owner office",
  "properties/change-station": "owner office",
  "properties/change-zone": "owner office",
  "properties/check-customer-list": "owner office",
  "properties/import-customers": "owner office",
  "properties/list-properties": "owner office applicator technician",
  "properties/measure-zone": "owner office",
  "properties/read-customer-list": "owner office",
  "properties/read-nutrient-ledger": "owner office applicator technician",
  "properties/read-property": "owner office applicator technician",
  "properties/remove-seeding": "owner office",
  "properties/remove-water-edge": "owner office",
  "properties/remove-zone": "owner office",
  "properties/say-no-water": "owner office",
  "products/add-product": "owner office",
  "products/confirm-label": "owner office applicator",
  "products/enter-label": "owner office",
  "products/list-products": "owner office applicator technician",
  "products/read-product": "owner office applicator technician",
  "products/retire-product": "owner office",
  "fills/list-fills": "owner office applicator technician",
  "fills/preview-clean-out": "owner office applicator technician",
  "fills/preview-fill": "owner office applicator technician",
  "fills/preview-tank-reading": "owner office applicator technician",
  "fills/read-fill-of-day": "owner office applicator technician",
  "fills/read-planned-fill": "owner office applicator technician",
  "fills/record-clean-out": "owner office applicator technician",
  "fills/record-fill": "owner office applicator technician",
  "fills/record-tank-reading": "owner office applicator technician",
  "programs/add-program": "owner office",
  "programs/add-round": "owner office",
  "programs/change-round": "owner office",
  "programs/list-programs": "owner office applicator technician",
  "programs/put-on-program": "owner office",
  "programs/read-program": "owner office applicator technician",
  "programs/remove-round": "owner office",
  "register/complete-visit": "owner office applicator technician",
  "register/list-register": "owner office applicator inspector",
  "register/list-records-of-property": "owner office applicator technician",
  "register/preview-record": "owner office applicator technician",
  "register/read-record-plan": "owner office applicator technician",
  "register/read-record": "owner office applicator inspector",
  "stock/list-movements": "owner office applicator technician",
  "stock/list-stock": "owner office applicator technician",
  "stock/move-stock": "owner office",
  "stock/read-prices": "owner office",
  "stock/receive-delivery": "owner office applicator",
  "stock/state-delivery-price": "owner office",
  "visits/answer-hold": "owner office applicator",
  "temperatures/choose-temperature-source": "owner office",
  "temperatures/keep-temperatures": "owner office",
  "temperatures/preview-temperatures": "owner office",
  "temperatures/read-temperatures": "owner office applicator technician",
  "visits/call-off-visit": "owner office",
  "visits/change-visit-task": "owner office",
  "visits/issue-mix-ticket": "owner office",
  "visits/list-visits": "owner office applicator technician",
  "visits/look-at-lawns": "owner office applicator technician",
  "visits/plan-visit": "owner office",
  "visits/read-visit": "owner office applicator technician",
  "visits/read-visit-plan": "owner office applicator technician",
};

test("the permissions are those of the blueprint, and may() answers from them", () => {
  expect(Object.keys(PERMISSIONS).sort()).toEqual(Object.keys(EXPECTED).sort());
  for (const name of USE_CASE_NAMES) expect(ROLES.filter((role) => may(role, name)).join(" "), name).toBe(EXPECTED[name]);
});

describe.each(USE_CASE_NAMES)("%s", (name) => {
  const refused = ROLES.filter((role) => !EXPECTED[name].split(" ").includes(role));
  const allowed = ROLES.filter((role) => EXPECTED[name].split(" ").includes(role));
  let attempt: Attempt;
  beforeAll(async () => {
    attempt = await ATTEMPTS[name](house, company);
  });

  test("calls itself by its file", () => expect(attempt.useCaseName).toBe(name));

  test(`is refused to ${refused.join(", ") || "nobody"}, and writes nothing for them`, async () => {
    const before = await house.books();
    for (const role of refused) {
      const answer = await attempt.run(house, members[role].key, attempt.input);
      expect(answer, role).toMatchObject({ ok: false, refusal: { kind: "not-allowed" } });
    }
    expect(await house.books()).toEqual(before);
  });

  test(`is done for ${allowed.join(", ")}, with one entry in the audit trail unless it only reads`, async () => {
    for (const role of allowed) {
      const isOwn = name === "accounts/change-password";
      const actor = isOwn ? await aMember(house, company, role, `Changer ${role}`) : members[role];
      // What was asked once may be refused the second time, so each role has its own.
      const ownAttempt = await ATTEMPTS[name](house, company, actor);
      const before = (await trailOf(house, company.companyId)).length;
      const answer = await ownAttempt.run(house, actor.key, ownAttempt.input);
      expect(answer, role).toMatchObject({ ok: true });
      const written = (await trailOf(house, company.companyId)).slice(before);
      expect(written.map(({ account_id }) => account_id)).toEqual(READING.has(name) ? [] : [actor.key.accountId]);
    }
  });
});
