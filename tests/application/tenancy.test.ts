import { afterAll, beforeAll, expect, test } from "vitest";
import { aCompany, anInvitation, aPerson, type TestCompany } from "../support/crew";
import { openHouse, type TestHouse } from "../support/house";
import { writeSeasonRows } from "../support/season-rows";
import { GLOBAL_TABLES, tenancyFaults } from "../support/tenancy-walk";

let house: TestHouse;
let first: TestCompany;
let second: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  first = await aCompany(house, "First Crew");
  second = await aCompany(house, "Second Crew");
  for (const company of [first, second]) {
    const personId = await aPerson(house, company);
    await anInvitation(house, company, personId, `invited@${company.companyId}.example`);
    await writeSeasonRows(house, company);
  }
});
afterAll(() => house.close());

function walk() {
  const { ownerUrl, appUrl: webUrl } = house.database;
  return tenancyFaults({ ownerUrl, webUrl, victimId: first.companyId, intruderId: second.companyId });
}

test("no table lets one company reach another's rows, nor anyone without a company", async () => {
  expect(await walk()).toEqual([]);
});

test("every global table on the list is in the database", async () => {
  const tables = await house.ask<{ name: string }>("select relname::text as name from pg_class where relname = any($1) order by 1", [GLOBAL_TABLES]);
  expect(tables.map(({ name }) => name)).toEqual(GLOBAL_TABLES);
});

const GRANT = "grant select, insert, update, delete on planted to halfpass_app";
const SECURE = "alter table planted enable row level security";
const PLANTED: readonly (readonly [string, readonly string[], readonly string[]])[] = [
  ["without a policy", [GRANT], ["planted is under no policy", "planted: select as another company", "planted: insert as no company"]],
  ["with security and no policy", [GRANT, SECURE], ["planted has row level security and no policy"]],
  [
    "with a policy that lets everyone in",
    [GRANT, SECURE, "create policy open on planted using (true) with check (true)"],
    ["planted has a policy that is not the company's", "planted: update as another company", "planted: delete as no company"],
  ],
  [
    "with a policy that reads narrowly and writes widely",
    [GRANT, SECURE, "create policy half on planted using (company_id = current_company()) with check (true)"],
    ["planted: insert as another company", "planted: update of its own rows into the first as another company"],
  ],
  [
    "with the company's policy and a second, wider one",
    [
      GRANT,
      SECURE,
      "create policy own on planted using (company_id = current_company()) with check (company_id = current_company())",
      "create policy wide on planted for select using (true)",
    ],
    ["planted has a policy that is not the company's", "planted: select as another company"],
  ],
];

test.each(PLANTED)("the walk finds a planted table %s", async (_name, statements, expected) => {
  await house.ask("create table planted (company_id uuid not null, word text)");
  try {
    await house.ask("insert into planted values ($1, 'ours'), ($2, 'theirs')", [first.companyId, second.companyId]);
    for (const sql of statements) await house.ask(sql);
    const faults = await walk();
    for (const fault of expected) expect(faults).toContainEqual(expect.stringContaining(fault));
    expect(faults.filter((fault) => !fault.startsWith("planted"))).toEqual([]);
  } finally {
    await house.ask("drop table planted");
  }
});

test("the walk finds a view, an empty table, and a grant on a global table", async () => {
  await house.ask("create view planted_view as select * from person");
  await house.ask("create table planted_empty (company_id uuid not null)");
  await house.ask("grant select on account to halfpass_app");
  try {
    const faults = await walk();
    expect(faults).toContainEqual(expect.stringContaining("planted_view is no plain table"));
    expect(faults).toContainEqual(expect.stringContaining("planted_empty holds no row"));
    expect(faults).toContainEqual(expect.stringContaining("account: the web role may try to select"));
  } finally {
    await house.ask("revoke select on account from halfpass_app");
    await house.ask("drop table planted_empty");
    await house.ask("drop view planted_view");
  }
  expect(await walk()).toEqual([]);
});
