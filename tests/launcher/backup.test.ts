// A backup of a database with the demonstration in it, put back into other databases: every row of every table comes
// back, and what can't come back whole leaves nothing behind.
import { execFile } from "node:child_process";
import { createHash } from "node:crypto";
import { cp, mkdtemp, readFile, readdir, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { gunzipSync, gzipSync } from "node:zlib";
import { afterAll, beforeAll, expect, test } from "vitest";
import { loadBackup } from "../../scripts/archive/load-backup.mjs";
import { readTables, writeBackup } from "../../scripts/archive/write-backup.mjs";
import { quoteName, withConnection } from "../../scripts/launch/connection.mjs";
import { pendingMigrations } from "../../scripts/migrate.mjs";
import { PROJECT_FOLDER } from "../../scripts/run-prisma.mjs";
import { cloneDatabase, type DatabaseClone } from "../support/database";
import { SERVER_VARIABLE } from "../support/database-server";
import { dumpSchema } from "../support/schema-dump";

const PRISMA_FOLDER = join(PROJECT_FOLDER, "prisma");
const MADE_AT = new Date("2026-04-01T12:00:00Z");
const aborted = new AbortController().signal;

let folder: string;
let backup: string;
let source: DatabaseClone;
const targets: DatabaseClone[] = [];

async function newTarget(): Promise<DatabaseClone> {
  const target = await cloneDatabase();
  targets.push(target);
  return target;
}

/** Every row of every table as text, in an order of its own. */
async function readEverything(url: string): Promise<Record<string, unknown[]>> {
  return await withConnection(url, async (client) => {
    const everything: Record<string, unknown[]> = {};
    for (const { table } of await readTables(client)) {
      const { rows } = await client.query<{ row: unknown }>(`select t::text as row from public.${quoteName(table)} t order by 1`);
      everything[table] = rows.map(({ row }) => row);
    }
    return everything;
  });
}

/** A copy of the backup with other lines and a hash that fits them. */
async function rewrite(name: string, change: (text: string) => string): Promise<string> {
  const lines = gunzipSync(await readFile(backup)).toString("utf8").split("\n").slice(0, -2);
  const text = change(`${lines.join("\n")}\n`);
  const path = join(folder, name);
  await writeFile(path, gzipSync(`${text}${JSON.stringify({ sha256: createHash("sha256").update(text).digest("hex") })}\n`));
  return path;
}

function load(path: string, target: DatabaseClone, prismaFolder = PRISMA_FOLDER) {
  return loadBackup({ ownerUrl: target.ownerUrl, path, prismaFolder, aborted });
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "halfpass-backup-"));
  backup = join(folder, "office.bak");
  source = await cloneDatabase();
  const environment = { ...process.env, DATABASE_APP_URL: source.appUrl };
  await promisify(execFile)(process.execPath, ["--import", "tsx", "prisma/seed/demo.ts"], { cwd: PROJECT_FOLDER, env: environment });
  await withConnection(source.ownerUrl, (client) =>
    // What COPY must escape, and what its end of data looks like.
    client.query("update person set name = $1 where name = 'Wes Tolliver'", ["W\\es\t\"T\"\n\\.\n{\"rows\":{}} \u00e9"]),
  );
  await writeBackup({ url: source.ownerUrl, path: backup, now: MADE_AT, aborted });
});

afterAll(async () => {
  for (const database of [source, ...targets]) await database.drop();
  await rm(folder, { recursive: true, force: true });
});

test("every row of every table comes back, as an owner who is no superuser", async () => {
  const target = await newTarget();
  const before = await readEverything(source.ownerUrl);
  expect(before["person"]?.length).toBeGreaterThan(1);
  const { rows, madeAt } = await load(backup, target);
  expect(await readEverything(target.ownerUrl)).toEqual(before);
  expect(rows).toBe(Object.values(before).flat().length);
  expect(madeAt).toBe(MADE_AT.toISOString());
});

test("a superuser, as whom our own cluster is backed up, writes the same rows", async () => {
  const superuser = new URL(process.env[SERVER_VARIABLE] ?? "");
  superuser.pathname = new URL(source.ownerUrl).pathname;
  const path = join(folder, "superuser.bak");
  await writeBackup({ url: superuser.href, path, now: MADE_AT, aborted });
  expect(gunzipSync(await readFile(path)).equals(gunzipSync(await readFile(backup)))).toBe(true);
});

test("the tables that come back are those of the migrations, triggers and foreign keys included", async () => {
  const target = await newTarget();
  const schema = await dumpSchema(target.ownerUrl);
  await load(backup, target);
  expect(await dumpSchema(target.ownerUrl)).toBe(schema);
  expect(await pendingMigrations(target.ownerUrl)).toEqual({ kind: "none" });
  await expect(withConnection(target.ownerUrl, (client) => client.query("delete from audit_event"))).rejects.toThrow();
});

test("only its owner may read the file, and one that is there is not overwritten", async () => {
  expect((await stat(backup)).mode & 0o777).toBe(0o600);
  const before = await readFile(backup);
  await expect(writeBackup({ url: source.ownerUrl, path: backup, now: MADE_AT, aborted })).rejects.toThrow("is there already");
  expect(await readFile(backup)).toEqual(before);
});

test("a backup that fails midway leaves no file", async () => {
  const place = await mkdtemp(join(folder, "midway-"));
  const unreadable = await newTarget();
  // Its turn comes late, when most of the file is written.
  await withConnection(unreadable.ownerUrl, (client) => client.query("revoke select on sign_in_throttle from current_user"));
  await expect(writeBackup({ url: unreadable.ownerUrl, path: join(place, "a.bak"), now: MADE_AT, aborted })).rejects.toThrow("permission denied");
  expect(await readdir(place)).toEqual([]);
});

test("a database that holds data is refused and stays as it was", async () => {
  const before = await readEverything(source.ownerUrl);
  await expect(load(backup, source)).rejects.toThrow("holds data already");
  expect(await readEverything(source.ownerUrl)).toEqual(before);
});

test("a file that was changed or cut off is refused", async () => {
  const target = await newTarget();
  const empty = await readEverything(target.ownerUrl);
  const bytes = await readFile(backup);
  const changed = join(folder, "changed.bak");
  await writeFile(changed, gzipSync(gunzipSync(bytes).toString("utf8").replace("Dana Quill", "Dina Quill")));
  await expect(load(changed, target)).rejects.toThrow("not as it was written");
  const shortened = join(folder, "shortened.bak");
  await writeFile(shortened, gzipSync(gunzipSync(bytes).subarray(0, -200)));
  await expect(load(shortened, target)).rejects.toThrow("not as it was written");
  const cut = join(folder, "cut.bak");
  await writeFile(cut, bytes.subarray(0, -20));
  await expect(load(cut, target)).rejects.toThrow("damaged");
  const other = join(folder, "other.bak");
  await writeFile(other, "not a backup\n");
  await expect(load(other, target)).rejects.toThrow("damaged or is no backup");
  await expect(load(join(folder, "absent.bak"), target)).rejects.toThrow("There is no backup");
  expect(await readEverything(target.ownerUrl)).toEqual(empty);
});

test("a backup of a newer version is refused", async () => {
  const target = await newTarget();
  const newer = await rewrite("newer.bak", (text) => text.replace('"migrations":[', '"migrations":[{"name":"29990101000000_add_what_is_to_come","checksum":"00"},'));
  await expect(load(newer, target)).rejects.toThrow("29990101000000_add_what_is_to_come");
});

test("a backup of an older version gets the tables of its day, and the later migrations are then pending", async () => {
  const target = await newTarget();
  const laterPrisma = join(folder, "later");
  await cp(PRISMA_FOLDER, laterPrisma, { recursive: true });
  const later = "29990101000000_add_a_remark";
  await cp(join(PRISMA_FOLDER, "migrations", (await readdir(join(PRISMA_FOLDER, "migrations")))[0] ?? ""), join(laterPrisma, "migrations", later), { recursive: true });
  await load(backup, target, laterPrisma);
  expect(await pendingMigrations(target.ownerUrl, laterPrisma)).toEqual({ kind: "pending", names: [later] });
});

test.each([
  ["a row that the table refuses", (text: string) => text.replace("dana@tansyhollow.example", "DANA@tansyhollow.example")],
  ["a row that points to nobody", (text: string) => text.replace(/(\{"table":"license"[^\n]*\n[0-9a-f-]{36}\t[0-9a-f-]{36}\t)[0-9a-f-]{36}/, "$100000000-0000-4000-8000-000000000000")],
  ["a count that is not so", (text: string) => text.replace('"person":', '"person":9')],
])("a restore that fails midway leaves nothing behind: %s", async (name, change) => {
  const target = await newTarget();
  const empty = await readEverything(target.ownerUrl);
  const schema = await dumpSchema(target.ownerUrl);
  const broken = await rewrite(`${name}.bak`, change);
  await expect(load(broken, target)).rejects.toThrow();
  expect(await readEverything(target.ownerUrl)).toEqual(empty);
  expect(await dumpSchema(target.ownerUrl)).toBe(schema);
});
