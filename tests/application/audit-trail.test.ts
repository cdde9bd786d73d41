import { afterAll, beforeAll, expect, test } from "vitest";
import { asGuest } from "#adapters/postgres/company-work";
import { writeDeedOf } from "#application/audit-trail";
import { aCompany, type TestCompany, trailOf } from "../support/crew";
import { openHouse, type TestHouse } from "../support/house";
import { saying } from "../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

test("a deed that no member did stands without an account, with its details as they were", async () => {
  const details = { email: "robin@vale.example" };
  const circumstances = { now: house.now(), newId: house.newId };
  const doer = { accountId: null, personName: "the terminal" };
  await asGuest(house.client, company.companyId, (tx) =>
    writeDeedOf(tx, company.companyId, circumstances, doer, null, { deed: "reset-link-issued", details }),
  );
  const last = (await trailOf(house, company.companyId)).at(-1);
  expect(last).toEqual({ deed: "reset-link-issued", account_id: null, person_name: "the terminal", subject_id: null, details, at: house.now() });
});

test.each([
  ["update", "update audit_event set person_name = 'nobody'"],
  ["delete", "delete from audit_event"],
  ["truncate", "truncate audit_event"],
  ["truncate with what depends on it", "truncate company cascade"],
])("refuses %s even to the owner of the tables", async (_verb, sql) => {
  const before = await house.books();
  await expect(house.ask(sql)).rejects.toMatchObject({ code: "23001", message: saying("append-only") });
  expect(await house.books()).toEqual(before);
});

test("and the web role has no right to any of these", async () => {
  for (const sql of ["update audit_event set person_name = 'nobody'", "delete from audit_event", "truncate audit_event"]) {
    const tried = asGuest(house.client, company.companyId, (tx) => tx.$executeRawUnsafe(sql));
    await expect(tried).rejects.toThrow("permission denied");
  }
});
