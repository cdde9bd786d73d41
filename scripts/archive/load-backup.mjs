// @ts-check
import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { quoteName, readValue, withConnection } from "../launch/connection.mjs";
import { resetSchema } from "../launch/roles.mjs";
import { Refusal } from "../launch/say.mjs";
import { END_OF_ROWS, readLines, verifyArchive } from "./archive-file.mjs";
import { copyIn } from "./copy-table.mjs";
import { readTables } from "./write-backup.mjs";

const BOOKKEEPING = "_prisma_migrations";
/** What an installation has before anyone has entered anything: it is replaced. */
const REPLACEABLE = [BOOKKEEPING, "installation", "one_time_link", "sign_in_throttle"];

/** As Prisma makes it, and as it finds it at the next migration. */
const CREATE_BOOKKEEPING = `create table public.${BOOKKEEPING} (
  id varchar(36) primary key not null, checksum varchar(64) not null, finished_at timestamptz, migration_name varchar(255) not null,
  logs text, rolled_back_at timestamptz, started_at timestamptz not null default now(), applied_steps_count integer not null default 0)`;

/**
 * Puts a backup into a database that holds no data, in one transaction: whole or not at all. The tables are made
 * as they were when the backup was written; later migrations are then applied to them as to any older database.
 *
 * @param {object} request
 * @param {string} request.ownerUrl of the owner of the database, who need not be a superuser
 * @param {string} request.path
 * @param {string} request.prismaFolder the folder that holds `migrations`
 * @param {AbortSignal} request.aborted
 * @returns {Promise<{ madeAt: string, tables: number, rows: number }>}
 */
export async function loadBackup({ ownerUrl, path, prismaFolder, aborted }) {
  const { madeAt, migrations } = await verifyArchive(path, aborted);
  const scripts = migrations.map((migration) => readScript(migration, prismaFolder));
  const counted = await withConnection(ownerUrl, async (client) => {
    // Until the commit nothing is changed; a connection that ends before it leaves the database as it was.
    await client.query("begin");
    await client.query("set local client_encoding to 'UTF8'; set local timezone to 'UTC'; set local datestyle to 'ISO'");
    await refuseData(client);
    await resetSchema(client);
    await client.query(CREATE_BOOKKEEPING);
    for (const script of scripts) await client.query(script);
    const counts = await withoutChecks(client, () => loadTables(client, path, aborted));
    aborted.throwIfAborted();
    await client.query("commit");
    return counts;
  });
  return { madeAt, ...counted };
}

/**
 * The script of a migration that the backup's database had.
 *
 * @param {{ name: string, checksum: string }} migration
 * @param {string} prismaFolder
 */
function readScript({ name, checksum }, prismaFolder) {
  const file = join(prismaFolder, "migrations", name, "migration.sql");
  if (!/^\w+$/.test(name) || !existsSync(file)) {
    throw new Refusal(`This backup has the migration ${name}, which this version does not know: restore it with the version that made it, or a later one.`);
  }
  const script = readFileSync(file);
  if (createHash("sha256").update(script).digest("hex") !== checksum) {
    throw new Refusal(`This backup was made with another content of the migration ${name}: put its migration.sql back as it was.`);
  }
  return script.toString("utf8");
}

/** @param {import("pg").Client} client */
async function refuseData(client) {
  for (const { table } of await readTables(client)) {
    if (REPLACEABLE.includes(table)) continue;
    if ((await readValue(client, `select exists (select from public.${quoteName(table)})`)) !== true) continue;
    throw new Refusal(
      `This database holds data already (in ${table}, for one), and a restore never overwrites any: ` +
        "name an empty folder with HALFPASS_DATA, or an empty database.",
    );
  }
}

/**
 * Does the work without the tables' own triggers, which would judge rows one by one that are only right together, and
 * without foreign keys, which are made again afterwards and then check every row.
 *
 * @template Result
 * @param {import("pg").Client} client
 * @param {() => Promise<Result>} work
 * @returns {Promise<Result>}
 */
async function withoutChecks(client, work) {
  const { rows: keys } = await client.query(
    `select conrelid::regclass::text as table, conname as name, pg_get_constraintdef(oid) as definition
     from pg_constraint where contype = 'f' and connamespace = 'public'::regnamespace order by conrelid::regclass::text, conname`,
  );
  const { rows: triggers } = await client.query(
    `select tgrelid::regclass::text as table, tgname as name from pg_trigger
     where not tgisinternal and tgenabled = 'O' order by tgrelid::regclass::text, tgname`,
  );
  for (const { table, name } of triggers) await client.query(`alter table ${table} disable trigger ${quoteName(name)}`);
  for (const { table, name } of keys) await client.query(`alter table ${table} drop constraint ${quoteName(name)}`);
  const result = await work();
  for (const { table, name, definition } of keys) await client.query(`alter table ${table} add constraint ${quoteName(name)} ${definition}`);
  for (const { table, name } of triggers) await client.query(`alter table ${table} enable trigger ${quoteName(name)}`);
  return result;
}

/**
 * @param {import("pg").Client} client
 * @param {string} path
 * @param {AbortSignal} aborted
 */
async function loadTables(client, path, aborted) {
  const known = await readTables(client);
  // Some tables hold what the migrations themselves have put there, which the backup holds too.
  await client.query(`truncate ${known.map(({ table }) => `public.${quoteName(table)}`).join(", ")}`);
  const lines = readLines(path, aborted);
  await lines.next();
  /** @type {Record<string, number>} */
  const rows = {};
  for (;;) {
    const { value } = await lines.next();
    const section = JSON.parse(String(value));
    if (section.rows !== undefined) {
      await lines.return();
      if (JSON.stringify(section.rows) !== JSON.stringify(rows)) throw new Error("the tables took other numbers of rows than the backup counts");
      return { tables: Object.keys(rows).length, rows: Object.values(rows).reduce((sum, count) => sum + count, 0) };
    }
    rows[section.table] = await copyIn(client, section.table, section.columns, rowsOf(lines));
  }
}

/**
 * The lines up to the end of a table's rows; the rest stays to be read.
 *
 * @param {AsyncGenerator<Buffer, void>} lines
 * @returns {AsyncGenerator<Buffer, void>}
 */
async function* rowsOf(lines) {
  for (;;) {
    const { value, done } = await lines.next();
    if (done === true || value === undefined) throw new Error("the backup ends within a table");
    if (value.length === END_OF_ROWS.length && value.toString("latin1") === END_OF_ROWS) return;
    yield value;
  }
}
