// schema.sql shows a reviewer what the migrations add up to. After a new migration, write it anew:
//   UPDATE_SCHEMA=1 npm test -- application
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import pg from "pg";
import { afterAll, beforeAll, expect, test } from "vitest";
import { findSchemaDifference } from "../../scripts/migrate.mjs";
import { type DatabaseClone, cloneDatabase } from "../support/database";
import { dumpSchema } from "../support/schema-dump";

const file = fileURLToPath(new URL("schema.sql", import.meta.url));
const head = "-- What the migrations add up to, read from a fresh database by tests/architecture/schema.test.ts. Not run by anything.\n\n";

let database: DatabaseClone;
beforeAll(async () => {
  database = await cloneDatabase();
});
afterAll(() => database.drop());

test("schema.sql equals a fresh migration", async () => {
  const fresh = head + (await dumpSchema(database.ownerUrl));
  if (process.env["UPDATE_SCHEMA"] === "1") writeFileSync(file, fresh);
  expect(readFileSync(file, "utf8")).toBe(fresh);
});

test("two databases of the same migrations read the same", async () => {
  const other = await cloneDatabase();
  try {
    expect(await dumpSchema(other.ownerUrl)).toBe(await dumpSchema(database.ownerUrl));
  } finally {
    await other.drop();
  }
});

test("the migrations lack nothing that schema.prisma has", async () => {
  expect(await findSchemaDifference(database.ownerUrl)).toBeUndefined();
});

const changes: readonly (readonly [what: string, sql: string])[] = [
  ["a table", "create table planted (id int)"],
  ["a column", "alter table person add planted text"],
  ["a column's default", "alter table company alter version set default 2"],
  ["a nullable column", "alter table person alter name drop not null"],
  ["a check", "alter table person drop constraint person_name_is_given"],
  ["a foreign key's action", "alter table person drop constraint person_company_id_fkey, add constraint person_company_id_fkey foreign key (company_id) references company on delete cascade"],
  ["an index", "drop index audit_event_company_id_at_idx"],
  ["a condition of an index", "drop index license_stands_once; create unique index license_stands_once on license (company_id, person_id, state, number, category, expires_on)"],
  ["row level security", "alter table person disable row level security"],
  ["a policy", "alter policy own_company on person using (true)"],
  ["a policy's role", "alter policy own_company on person to halfpass_app"],
  ["a function's body", "create or replace function open_guest_work(p_company uuid) returns void language sql as 'select null::void'"],
  ["a function's security", "alter function read_installation() security invoker"],
  ["a trigger", "drop trigger audit_event_only_grows on audit_event"],
  ["a trigger that is off", "alter table audit_event disable trigger audit_event_only_grows"],
  ["a right on a table", "grant delete on person to halfpass_app"],
  ["a right on a column", "grant select (email) on account to halfpass_app"],
  ["a right on a function", "grant execute on function read_installation() to public"],
  ["a right on the schema", "grant create on schema public to halfpass_app"],
  ["rights of new tables", "alter default privileges grant select on tables to halfpass_app"],
  ["a view", "create view planted as select 1 as one"],
  ["a type", "create type planted as enum ('a', 'b')"],
  ["a sequence", "create sequence planted"],
];

test.each(changes)("%s shows when it changes", async (_what, sql) => {
  const copy = await cloneDatabase();
  try {
    const client = new pg.Client({ connectionString: copy.ownerUrl });
    await client.connect();
    await client.query(sql).finally(() => client.end());
    expect(await dumpSchema(copy.ownerUrl)).not.toBe(await dumpSchema(database.ownerUrl));
  } finally {
    await copy.drop();
  }
});
