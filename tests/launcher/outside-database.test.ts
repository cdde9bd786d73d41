// A database server that is not ours: it is brought up to date and never ended; and when a demonstration counts as cut off.
import { existsSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { withConnection } from "../../scripts/launch/connection.mjs";
import { discardCutOffDemonstration, readCompanies } from "../../scripts/launch/first-company.mjs";
import { findFreePort } from "../../scripts/launch/ports.mjs";
import { emptyDatabase } from "../../scripts/launch/roles.mjs";
import { pendingMigrations } from "../../scripts/migrate.mjs";
import { type DatabaseClone, cloneDatabase } from "../support/database";
import { type Launcher, launch, untilServing } from "./launcher";

let parent: string;
let database: DatabaseClone;

beforeAll(async () => (parent = await mkdtemp(join(tmpdir(), "halfpass-outside-"))));
afterAll(() => rm(parent, { recursive: true, force: true }));
beforeEach(async () => (database = await cloneDatabase()));
afterEach(() => database.drop());

async function start(name: string, environment: Readonly<Record<string, string>>): Promise<Launcher> {
  return launch({ data: join(parent, name), port: await findFreePort(), args: ["--empty"], environment });
}

test("two copies with their own data folders bring an empty database up to date once and serve side by side", async () => {
  await emptyDatabase(database.ownerUrl);
  const environment = { DATABASE_OWNER_URL: database.ownerUrl, DATABASE_APP_URL: database.appUrl };
  const copies = await Promise.all([start("one", environment), start("two", environment)]);
  await Promise.all(copies.map(untilServing));
  expect(await pendingMigrations(database.ownerUrl)).toEqual({ kind: "none" });
  expect(existsSync(join(parent, "one", "postgres"))).toBe(false);
  expect(copies.filter((copy) => copy.said().includes("The tables are up to date."))).toHaveLength(1);
  for (const copy of copies) copy.process.kill("SIGTERM");
  expect(await Promise.all(copies.map((copy) => copy.ended))).toEqual([0, 0]);
  expect(await readCompanies(database.ownerUrl)).toEqual({ hasCompany: false, hasOwnCompany: false, isSeeded: false });
});

test("one address without the other, and the owner's address for the web server, are refused", async () => {
  const half = await start("half", { DATABASE_OWNER_URL: database.ownerUrl });
  expect(await half.ended).toBe(1);
  expect(half.said()).toContain("DATABASE_OWNER_URL is set and DATABASE_APP_URL is not");
  const unsafe = await start("unsafe", { DATABASE_OWNER_URL: database.ownerUrl, DATABASE_APP_URL: database.ownerUrl });
  expect(await unsafe.ended).toBe(1);
  expect(unsafe.said()).toContain("could read every company's rows");
});

async function addCompany(isDemonstration: boolean): Promise<void> {
  await withConnection(database.ownerUrl, (client) =>
    client.query(
      `insert into company (company_id, name, state, time_zone, is_demonstration, created_at)
       values (gen_random_uuid(), 'A company', 'IN', 'America/Chicago', $1, now())`,
      [isDemonstration],
    ),
  );
}

async function discard(): Promise<void> {
  await discardCutOffDemonstration({ ownerUrl: database.ownerUrl, adminUrl: database.ownerUrl });
}

test("a demonstration that was cut off is thrown away, tables and all", async () => {
  await addCompany(true);
  await discard();
  expect((await pendingMigrations(database.ownerUrl)).kind).toBe("pending");
});

test("nothing is thrown away beside a company that is no demonstration", async () => {
  await addCompany(true);
  await addCompany(false);
  await discard();
  expect(await readCompanies(database.ownerUrl)).toEqual({ hasCompany: true, hasOwnCompany: true, isSeeded: false });
});

test("a demonstration that was made to its end stays", async () => {
  await addCompany(true);
  await withConnection(database.ownerUrl, (client) => client.query("select note_demonstration(now())"));
  await discard();
  expect(await readCompanies(database.ownerUrl)).toEqual({ hasCompany: true, hasOwnCompany: false, isSeeded: true });
});
