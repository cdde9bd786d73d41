import pg from "pg";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type DatabaseClone, cloneDatabase } from "../support/database";

let one: DatabaseClone;
let other: DatabaseClone;
beforeAll(async () => {
  [one, other] = await Promise.all([cloneDatabase(), cloneDatabase()]);
});
afterAll(() => Promise.all([one.drop(), other.drop()]));

async function ask<Row extends pg.QueryResultRow>(url: string, sql: string): Promise<Row[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query<Row>(sql)).rows;
  } finally {
    await client.end();
  }
}

test("what is written to one copy is not in the other", async () => {
  await ask(one.ownerUrl, "update installation set bind_address = '0.0.0.0'");
  expect(await ask(one.ownerUrl, "select bind_address from installation")).toEqual([{ bind_address: "0.0.0.0" }]);
  expect(await ask(other.ownerUrl, "select bind_address from installation")).toEqual([{ bind_address: "127.0.0.1" }]);
});

test("the web role owns nothing and is bound by row level security; the owner is no superuser", async () => {
  const role = "select rolsuper, rolbypassrls, rolcreatedb from pg_roles where rolname = current_user";
  expect(await ask(one.appUrl, role)).toEqual([{ rolsuper: false, rolbypassrls: false, rolcreatedb: false }]);
  expect(await ask(one.ownerUrl, role)).toMatchObject([{ rolsuper: false, rolbypassrls: false }]);
  const owned = "select count(*)::int from pg_class where pg_has_role(relowner, 'MEMBER') and relkind = 'r'";
  expect(await ask(one.appUrl, owned)).toEqual([{ count: 0 }]);
  await expect(ask(one.appUrl, "select from account")).rejects.toThrow("permission denied");
});

test("a dropped copy is gone, whoever is connected", async () => {
  const copy = await cloneDatabase();
  const guest = new pg.Client({ connectionString: copy.appUrl });
  guest.on("error", () => undefined);
  await guest.connect();
  await copy.drop();
  await copy.drop();
  await expect(ask(copy.appUrl, "select 1")).rejects.toThrow("does not exist");
});
