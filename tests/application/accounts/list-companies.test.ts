import { afterAll, beforeAll, expect, test } from "vitest";
import { listCompanies } from "#application/accounts/list-companies";
import { acceptInvitation } from "#application/people/accept-invitation";
import { endMembership } from "#application/people/end-membership";
import { aCompany, anInvitation, aPerson, PASSWORD, valueOf } from "../../support/crew";
import { countedId, openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

test("an account's companies come oldest membership first, with its role in each, until the membership ends", async () => {
  const first = await aCompany(house, "First Crew");
  house.pass(1);
  const second = await aCompany(house, "Second Crew");
  const { accountId } = first.owner.key;
  const personId = await aPerson(house, second);
  const { link } = await anInvitation(house, second, personId, first.owner.email, "inspector");
  valueOf(await acceptInvitation(house, { link, password: PASSWORD }));
  const own = { companyId: first.companyId, companyName: "First Crew", role: "owner" };
  expect(await listCompanies(house, accountId)).toEqual([own, { companyId: second.companyId, companyName: "Second Crew", role: "inspector" }]);
  valueOf(await endMembership(house, second.owner.key, { personId }));
  expect(await listCompanies(house, accountId)).toEqual([own]);
  expect(await listCompanies(house, countedId(0xffffff))).toEqual([]);
});
