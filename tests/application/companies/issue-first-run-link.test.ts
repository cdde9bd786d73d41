import { afterAll, beforeAll, expect, test } from "vitest";
import { isFirstRunLink } from "#application/companies/create-company";
import { FIRST_RUN_LINK_HOURS, issueFirstRunLink } from "#application/companies/issue-first-run-link";
import { aCompany } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

test("says whether this is the first company, keeps only the secret's hash, and older links stay good", async () => {
  const first = await issueFirstRunLink(house);
  expect(first).toMatchObject({ isFirstCompany: true, expiresAt: new Date(house.now().getTime() + FIRST_RUN_LINK_HOURS * 3_600_000) });
  expect(JSON.stringify(await house.books())).not.toContain(first.secret);
  await aCompany(house);
  const second = await issueFirstRunLink(house);
  expect(second.isFirstCompany).toBe(false);
  expect(second.secret).not.toBe(first.secret);
  expect(await Promise.all([first, second].map(({ secret }) => isFirstRunLink(house, secret)))).toEqual([true, true]);
});
