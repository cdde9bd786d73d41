/**
 * Keeps the database and the generated client in step with prisma/. As a command:
 *   node scripts/migrate.mjs deploy      applies what is pending (DATABASE_OWNER_URL)
 *   node scripts/migrate.mjs status      says how the database stands; exit 0 only when nothing is pending
 *   node scripts/migrate.mjs diff        prints what the migrations lack to equal schema.prisma; exit 2 if anything
 *   node scripts/migrate.mjs dev NAME    writes that difference as the next migration, for a person to edit
 *   node scripts/migrate.mjs generate    generates the client if it is missing or out of date
 */
import { createHash } from "node:crypto";
import { realpathSync } from "node:fs";
import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import pg from "pg";
import { PROJECT_FOLDER, runPrisma } from "./run-prisma.mjs";

const PRISMA_FOLDER = join(PROJECT_FOLDER, "prisma");
const GENERATED_FOLDER = join(PROJECT_FOLDER, "lib", "adapters", "postgres", "generated");
/** Beside the generated client: the hash of what it was generated from. */
const GENERATED_STAMP_FILE = join(GENERATED_FOLDER, ".generated-from");

/** Any constant does, as long as nothing else takes this lock; the engine's own lock inside is another one. */
const DEPLOY_LOCK_KEY = 4_873_120_651;
const CONNECT_TIMEOUT_MILLISECONDS = 10_000;
/** PostgreSQL's code for a table that does not exist. */
const UNDEFINED_TABLE = "42P01";
const DIFFERENCE_EXIT_CODE = 2;

/** What went wrong, in one sentence for the person who runs the installation; the cause, if any, is attached. */
export class MigrationError extends Error {
  name = "MigrationError";
}

/**
 * @typedef {{kind: "none"} | {kind: "pending", names: string[]} | {kind: "edited" | "failed" | "newer", name: string}} MigrationState
 */

/**
 * Says how a database stands to the migrations in the source, with a single query and without starting Prisma.
 * - none: every migration is applied, exactly as it is in the source;
 * - pending: these are yet to be applied, in this order;
 * - failed: this one began and did not end (or another deploy is in the middle of it);
 * - edited: this one was changed after it had been applied;
 * - newer: the database has this one and the source does not, so the database belongs to a newer version.
 * @param {string} ownerUrl address of the database as its owner
 * @param {string} [prismaFolder] the folder that holds `migrations`; the project's own unless a test says otherwise
 * @returns {Promise<MigrationState>}
 * @throws {MigrationError} when the database cannot be reached
 */
export async function pendingMigrations(ownerUrl, prismaFolder = PRISMA_FOLDER) {
  return withConnection(ownerUrl, (client) => compareWithSource(client, prismaFolder));
}

/**
 * Applies every pending migration. Any number of deploys may start at once: one applies, the others wait for it and find
 * nothing left to do. When nothing is pending, Prisma is not started at all.
 * @param {string} ownerUrl address of the database as its owner; the database itself must exist
 * @param {string} [prismaFolder] the folder that holds `migrations` and `prisma.config.ts`
 * @returns {Promise<string[]>} the names of the migrations that this call applied
 * @throws {MigrationError} when the database cannot be reached, is not in a state to be migrated, or a migration fails
 */
export async function migrate(ownerUrl, prismaFolder = PRISMA_FOLDER) {
  return withConnection(ownerUrl, async (client) => {
    const before = await compareWithSource(client, prismaFolder);
    if (before.kind === "none") return [];
    // A lock of the session, which ends with the connection however this process ends.
    await client.query("SELECT pg_advisory_lock($1)", [DEPLOY_LOCK_KEY]);
    // Asked again, because the answer may have changed while this deploy waited for another one.
    const state = await compareWithSource(client, prismaFolder);
    if (state.kind === "none") return [];
    if (state.kind !== "pending") throw new MigrationError(describeState(state));
    const run = await runPrisma(["migrate", "deploy"], { prismaFolder, ownerUrl });
    if (run.exitCode !== 0) throw await describeFailedDeploy(client, prismaFolder, run);
    const after = await compareWithSource(client, prismaFolder);
    // Prisma with an engine that does nothing reports success all the same.
    if (after.kind !== "none") throw new MigrationError(`Prisma reported success, but: ${describeState(after)}`);
    return state.names;
  });
}

/**
 * Generates the Prisma client unless the one that is there was generated from this very schema by this very Prisma.
 * Needs no database.
 * @returns {Promise<boolean>} whether it had to be generated
 * @throws {MigrationError} when the schema file has an error
 */
export async function generateClient() {
  const fingerprint = await fingerprintSchema();
  const stamp = await readFile(GENERATED_STAMP_FILE, "utf8").catch(() => undefined);
  if (stamp === fingerprint) return false;
  const run = await runPrisma(["generate"], { prismaFolder: PRISMA_FOLDER });
  if (run.exitCode !== 0) throw new MigrationError(`The Prisma client could not be generated: ${run.complaint}`);
  await writeFile(GENERATED_STAMP_FILE, fingerprint);
  return true;
}

/**
 * Compares the schema file with a fresh database to which all migrations were applied; no existing database is touched.
 * @param {string} ownerUrl address of a database whose server may make the fresh one beside it
 * @param {string} [prismaFolder] the folder that holds `schema.prisma`, `migrations` and `prisma.config.ts`
 * @returns {Promise<string | undefined>} the SQL that the migrations lack, or undefined when they lack nothing
 * @throws {MigrationError} when the comparison itself fails, for example at a migration that does not run
 */
export async function findSchemaDifference(ownerUrl, prismaFolder = PRISMA_FOLDER) {
  const sources = ["--from-migrations", join(prismaFolder, "migrations"), "--to-schema", join(prismaFolder, "schema.prisma")];
  const run = await runPrisma(["migrate", "diff", ...sources, "--script", "--exit-code"], { prismaFolder, ownerUrl });
  if (run.exitCode === 0) return undefined;
  if (run.exitCode === DIFFERENCE_EXIT_CODE) return `${run.output.trim()}\n`;
  throw new MigrationError(`The migrations could not be compared with schema.prisma: ${run.complaint}`);
}

/**
 * Writes the next migration: what schema.prisma has and the migrations lack, or an empty one to be written by hand.
 * Applies nothing.
 * @param {string} ownerUrl address of a database whose server may make a shadow database beside it
 * @param {string} name what the migration does, as a verb and a noun: letters, digits and underscores
 * @param {Date} now the time that goes into the folder's name
 * @param {string} [prismaFolder] the folder that holds `schema.prisma`, `migrations` and `prisma.config.ts`
 * @returns {Promise<string>} the path of the new migration.sql
 * @throws {MigrationError} when the name is unfit or the comparison fails
 */
export async function writeNextMigration(ownerUrl, name, now, prismaFolder = PRISMA_FOLDER) {
  if (!/^[a-z][a-z0-9_]*$/.test(name)) {
    throw new MigrationError(`A migration is named like add_lot_balances (small letters, digits, underscores), not "${name}".`);
  }
  const difference = await findSchemaDifference(ownerUrl, prismaFolder);
  const time = now.toISOString().replace(/\D/g, "").slice(0, "yyyymmddhhmmss".length);
  const folder = join(prismaFolder, "migrations", `${time}_${name}`);
  await mkdir(folder);
  const file = join(folder, "migration.sql");
  await writeFile(file, difference ?? "-- The schema file asks for no change of its own.\n");
  return file;
}

async function withConnection(ownerUrl, work) {
  const client = new pg.Client({ connectionString: ownerUrl, connectionTimeoutMillis: CONNECT_TIMEOUT_MILLISECONDS });
  // A connection that breaks while it is idle reports it here, and the next query reports it again.
  client.on("error", () => undefined);
  try {
    await client.connect();
  } catch (error) {
    const place = `${client.database} at ${client.host}:${client.port}`;
    throw new MigrationError(`The database ${place} cannot be reached as its owner: ${error.message || error.code}.`, { cause: error });
  }
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

async function compareWithSource(client, prismaFolder) {
  const source = await readMigrations(prismaFolder);
  const recorded = await readRecords(client);
  const failed = recorded.find((record) => record.finished_at === null);
  if (failed !== undefined) return { kind: "failed", name: failed.migration_name };
  const edited = recorded.find(({ migration_name: name, checksum }) => source.has(name) && source.get(name) !== checksum);
  if (edited !== undefined) return { kind: "edited", name: edited.migration_name };
  const newer = recorded.find((record) => !source.has(record.migration_name));
  if (newer !== undefined) return { kind: "newer", name: newer.migration_name };
  const applied = new Set(recorded.map((record) => record.migration_name));
  const names = [...source.keys()].filter((name) => !applied.has(name));
  return names.length === 0 ? { kind: "none" } : { kind: "pending", names };
}

/** The source's migrations in the order of their names, which begin with the time: name to SHA-256 of the file. */
async function readMigrations(prismaFolder) {
  const folder = join(prismaFolder, "migrations");
  const entries = await readdir(folder, { withFileTypes: true });
  const names = entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name);
  const pairs = names.sort().map(async (name) => [name, sha256(await readFile(join(folder, name, "migration.sql")))]);
  return new Map(await Promise.all(pairs));
}

async function readRecords(client) {
  try {
    const { rows } = await client.query(
      "SELECT migration_name, checksum, finished_at FROM _prisma_migrations WHERE rolled_back_at IS NULL ORDER BY migration_name",
    );
    return rows;
  } catch (error) {
    if (error.code === UNDEFINED_TABLE) return [];
    throw error;
  }
}

function sha256(content) {
  return createHash("sha256").update(content).digest("hex");
}

/** One sentence about a state, with what to do about it. */
function describeState(state) {
  switch (state.kind) {
    case "none":
      return "Every migration is applied.";
    case "pending":
      return `These migrations are pending: ${state.names.join(", ")}.`;
    case "edited":
      return `The migration ${state.name} was changed after this database had applied it: put its migration.sql back as it was and write the change as a new migration.`;
    case "failed":
      return `The migration ${state.name} began in this database and did not finish: repair what it left, then mark it with "prisma migrate resolve".`;
    case "newer":
      return `This database has the migration ${state.name}, which this version does not know: start the version that applied it, or a later one.`;
  }
}

async function describeFailedDeploy(client, prismaFolder, run) {
  const state = await compareWithSource(client, prismaFolder);
  const what = state.kind === "failed" ? `The migration ${state.name} failed` : "The migrations could not be applied";
  return new MigrationError(`${what}: ${run.complaint}`);
}

async function fingerprintSchema() {
  const require = createRequire(import.meta.url);
  const { version } = require("prisma/package.json");
  return sha256(`${version}\n${await readFile(join(PRISMA_FOLDER, "schema.prisma"), "utf8")}`);
}

function requireOwnerUrl() {
  const url = process.env.DATABASE_OWNER_URL;
  if (!url) throw new MigrationError("DATABASE_OWNER_URL is not set: it is the address of the database as its owner.");
  return url;
}

const COMMANDS = {
  async deploy() {
    const names = await migrate(requireOwnerUrl());
    console.log(names.length === 0 ? "Nothing to apply." : `Applied: ${names.join(", ")}.`);
    return 0;
  },
  async status() {
    const state = await pendingMigrations(requireOwnerUrl());
    console.log(describeState(state));
    return state.kind === "none" ? 0 : 1;
  },
  async diff() {
    const difference = await findSchemaDifference(requireOwnerUrl());
    if (difference === undefined) return 0;
    process.stdout.write(difference);
    return DIFFERENCE_EXIT_CODE;
  },
  async dev(name = "") {
    const file = await writeNextMigration(requireOwnerUrl(), name, new Date());
    console.log(`Wrote ${relative(process.cwd(), file)}.`);
    return 0;
  },
  async generate() {
    console.log((await generateClient()) ? "Generated the Prisma client." : "The Prisma client is up to date.");
    return 0;
  },
};

async function main([command, ...args]) {
  if (!Object.hasOwn(COMMANDS, command ?? "")) {
    console.error("Usage: node scripts/migrate.mjs deploy | status | diff | dev NAME | generate");
    return 1;
  }
  try {
    return await COMMANDS[command](...args);
  } catch (error) {
    if (!(error instanceof MigrationError)) throw error;
    console.error(error.message);
    return 1;
  }
}

if (process.argv[1] !== undefined && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  process.exitCode = await main(process.argv.slice(2));
}
