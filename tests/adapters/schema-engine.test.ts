import { type ChildProcess, spawn } from "node:child_process";
import { randomBytes } from "node:crypto";
import { once } from "node:events";
import { existsSync } from "node:fs";
import { cp, mkdir, readFile, rename, rm, symlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { type Readable } from "node:stream";
import { text } from "node:stream/consumers";
import pg from "pg";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import {
  findSchemaDifference,
  migrate,
  MigrationError,
  pendingMigrations,
  writeNextMigration,
} from "../../scripts/migrate.mjs";
import { PROJECT_FOLDER, runPrisma } from "../../scripts/run-prisma.mjs";
import { startThrowawayPostgres } from "../support/throwaway-postgres.mjs";

const ENGINE_FILE = join(PROJECT_FOLDER, "scripts", "schema-engine.mjs");
const CREATE_PLOTS = "20260101000000_create_plots";
const ADD_VISITS = "20260102000000_add_visits";
const SLOW_OR_BROKEN = "20260103000000_trouble";

/** Everything that once broke: dollar quotes, semicolons in strings, "char", extensions, policies, triggers, GIN. */
const CREATE_PLOTS_SQL = `
CREATE EXTENSION IF NOT EXISTS pg_trgm;
CREATE EXTENSION IF NOT EXISTS btree_gist;
CREATE TABLE plot (
  id integer PRIMARY KEY,
  company_id integer NOT NULL,
  name text NOT NULL DEFAULT 'a;b',
  tags text[] NOT NULL DEFAULT '{}',
  grade "char" NOT NULL DEFAULT 'n',
  area integer NOT NULL CONSTRAINT area_is_positive CHECK (area > 0)
);
CREATE INDEX plot_tags ON plot USING gin (tags);
CREATE FUNCTION trim_plot_name() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  NEW.name := trim(NEW.name);
  RETURN NEW;
END;
$$;
CREATE TRIGGER trim_plot_name BEFORE INSERT ON plot FOR EACH ROW EXECUTE FUNCTION trim_plot_name();
ALTER TABLE plot ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_company ON plot USING (company_id = nullif(current_setting('app.company_id', true), '')::integer);
`;
const ADD_VISITS_SQL = `
CREATE TABLE visit (id integer PRIMARY KEY, plot_id integer NOT NULL);
ALTER TABLE visit ADD CONSTRAINT visit_plot_id_fkey FOREIGN KEY (plot_id) REFERENCES plot (id) ON DELETE RESTRICT ON UPDATE CASCADE;
`;
const SCHEMA = `
generator client {
  provider = "prisma-client"
  output   = "../generated"
}
datasource db {
  provider = "postgresql"
}
model plot {
  id         Int      @id
  company_id Int
  name       String   @default("a;b")
  tags       String[] @default([])
  grade      String   @default("n") @db.Char
  area       Int
  visits     visit[]
  @@index([tags], map: "plot_tags", type: Gin)
}
model visit {
  id      Int  @id
  plot_id Int
  plot    plot @relation(fields: [plot_id], references: [id])
}
`;

let server: { readonly ownerUrl: string; readonly stop: () => Promise<void> };
let superuser: pg.Client;
/** The role that owns the test's databases: it may make databases, and is no superuser. */
let role: string;
let roleUrl: string;
let projectFolder: string;
let prismaFolder: string;
let databaseUrl: string;

function random(): string {
  return randomBytes(6).toString("hex");
}

function withDatabase(url: string, name: string): string {
  const address = new URL(url);
  address.pathname = `/${name}`;
  return address.href;
}

async function query(url: string, sql: string): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    const { rows } = await client.query<Record<string, unknown>>(sql);
    return rows;
  } finally {
    await client.end();
  }
}

async function databasesOfRole(): Promise<string[]> {
  const sql = "SELECT datname FROM pg_database JOIN pg_roles r ON r.oid = datdba WHERE rolname = $1 ORDER BY datname";
  const { rows } = await superuser.query<{ datname: string }>(sql, [role]);
  return rows.map((row) => row.datname);
}

async function writeMigration(name: string, sql: string): Promise<void> {
  await mkdir(join(prismaFolder, "migrations", name), { recursive: true });
  await writeFile(join(prismaFolder, "migrations", name, "migration.sql"), sql);
}

async function refusal(work: Promise<unknown>): Promise<string> {
  const error: unknown = await work.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  expect(error).toBeInstanceOf(MigrationError);
  const { message } = error as MigrationError;
  expect(message).not.toContain("\n");
  return message;
}

async function readAll(stream: Readable | null): Promise<string> {
  return stream === null ? "" : text(stream);
}

function startEngine(...args: string[]): ChildProcess {
  return spawn(ENGINE_FILE, args, { stdio: "pipe" });
}

beforeAll(async () => {
  const given = process.env.TEST_DATABASE_OWNER_URL;
  server = given === undefined ? await startThrowawayPostgres() : { ownerUrl: given, stop: () => Promise.resolve() };
  superuser = new pg.Client({ connectionString: server.ownerUrl });
  await superuser.connect();
  role = `migration_test_${random()}`;
  await superuser.query(`CREATE ROLE ${role} LOGIN CREATEDB PASSWORD 'secret of a test'`);
  const address = new URL(server.ownerUrl);
  address.username = role;
  address.password = "secret of a test";
  roleUrl = address.href;
});

afterAll(async () => {
  try {
    await superuser.query(`DROP ROLE ${role}`);
    await superuser.end();
  } finally {
    await server.stop();
  }
});

beforeEach(async () => {
  // Inside the checkout, so that the copied configuration finds Prisma; ignored by git.
  projectFolder = join(PROJECT_FOLDER, ".artifacts", `schema-engine-${random()}`);
  prismaFolder = join(projectFolder, "prisma");
  await mkdir(join(prismaFolder, "migrations"), { recursive: true });
  await symlink(join(PROJECT_FOLDER, "scripts"), join(projectFolder, "scripts"));
  for (const file of ["prisma.config.ts", "migrations/migration_lock.toml"]) {
    await cp(join(PROJECT_FOLDER, "prisma", file), join(prismaFolder, file));
  }
  await writeFile(join(prismaFolder, "schema.prisma"), SCHEMA);
  await writeMigration(CREATE_PLOTS, CREATE_PLOTS_SQL);
  await writeMigration(ADD_VISITS, ADD_VISITS_SQL);
  const database = `migration_test_${random()}`;
  databaseUrl = withDatabase(roleUrl, database);
  await query(roleUrl, `CREATE DATABASE ${database}`);
});

afterEach(async () => {
  vi.unstubAllEnvs();
  for (const database of await databasesOfRole()) await superuser.query(`DROP DATABASE "${database}" WITH (FORCE)`);
  await rm(projectFolder, { recursive: true });
});

describe("migrate", () => {
  test("applies every migration whole and in order, as an owner who is no superuser", async () => {
    expect(await pendingMigrations(databaseUrl, prismaFolder)).toEqual({ kind: "pending", names: [CREATE_PLOTS, ADD_VISITS] });
    expect(await migrate(databaseUrl, prismaFolder)).toEqual([CREATE_PLOTS, ADD_VISITS]);
    expect(await pendingMigrations(databaseUrl, prismaFolder)).toEqual({ kind: "none" });
    await query(databaseUrl, "INSERT INTO plot (id, company_id, name, area) VALUES (1, 7, '  front  ', 5)");
    expect(await query(databaseUrl, "SELECT name, grade FROM plot")).toEqual([{ name: "front", grade: "n" }]);
    await expect(query(databaseUrl, "INSERT INTO plot (id, company_id, area) VALUES (2, 7, 0)")).rejects.toThrow("area_is_positive");
    expect(await query(databaseUrl, "SELECT policyname FROM pg_policies")).toEqual([{ policyname: "own_company" }]);
    expect(await query(databaseUrl, "SELECT extname FROM pg_extension ORDER BY 1")).toEqual(
      ["btree_gist", "pg_trgm", "plpgsql"].map((extname) => ({ extname })),
    );
  });

  test("does not start Prisma when nothing is pending", async () => {
    await migrate(databaseUrl, prismaFolder);
    // Prisma could not even start without its configuration.
    await rm(join(prismaFolder, "prisma.config.ts"));
    expect(await migrate(databaseUrl, prismaFolder)).toEqual([]);
    await writeMigration(SLOW_OR_BROKEN, "SELECT 1;");
    await refusal(migrate(databaseUrl, prismaFolder));
  });

  test("applies each migration once when five deploys start together", async () => {
    const applied = await Promise.all(Array.from({ length: 5 }, () => migrate(databaseUrl, prismaFolder)));
    expect(applied.flat()).toEqual([CREATE_PLOTS, ADD_VISITS]);
    const records = await query(databaseUrl, "SELECT migration_name FROM _prisma_migrations ORDER BY 1");
    expect(records).toEqual([{ migration_name: CREATE_PLOTS }, { migration_name: ADD_VISITS }]);
  });

  test("reports a migration that was changed after it was applied, and applies nothing then", async () => {
    await migrate(databaseUrl, prismaFolder);
    await writeMigration(CREATE_PLOTS, `${CREATE_PLOTS_SQL}-- one more word\n`);
    await writeMigration(SLOW_OR_BROKEN, "CREATE TABLE later (id integer);");
    expect(await pendingMigrations(databaseUrl, prismaFolder)).toEqual({ kind: "edited", name: CREATE_PLOTS });
    expect(await refusal(migrate(databaseUrl, prismaFolder))).toContain(`${CREATE_PLOTS} was changed`);
    expect(await query(databaseUrl, "SELECT to_regclass('later') AS later")).toEqual([{ later: null }]);
  });

  test("reports a migration that failed, with the server's reason and the line, and leaves nothing of it", async () => {
    await writeMigration(SLOW_OR_BROKEN, "CREATE TABLE half (id integer);\nSELECT nowhere;\n");
    const message = await refusal(migrate(databaseUrl, prismaFolder));
    expect(message).toContain(`${SLOW_OR_BROKEN} failed`);
    expect(message).toContain('column "nowhere" does not exist (line 2)');
    expect(message).not.toContain(".rs");
    expect(await query(databaseUrl, "SELECT to_regclass('half') AS half")).toEqual([{ half: null }]);
    expect(await pendingMigrations(databaseUrl, prismaFolder)).toEqual({ kind: "failed", name: SLOW_OR_BROKEN });
    expect(await refusal(migrate(databaseUrl, prismaFolder))).toContain(`${SLOW_OR_BROKEN} began`);
  });

  test("reports a database that a newer version has migrated", async () => {
    await migrate(databaseUrl, prismaFolder);
    await rename(join(prismaFolder, "migrations", ADD_VISITS), join(projectFolder, ADD_VISITS));
    expect(await pendingMigrations(databaseUrl, prismaFolder)).toEqual({ kind: "newer", name: ADD_VISITS });
    expect(await refusal(migrate(databaseUrl, prismaFolder))).toContain("this version does not know");
  });

  test("says in one sentence that a database cannot be reached", async () => {
    const message = await refusal(migrate(withDatabase(roleUrl, "no_such_database"), prismaFolder));
    expect(message).toContain("no_such_database");
  });
});

describe("compare with the schema file", () => {
  test("finds no difference when the migrations say what the schema says", async () => {
    expect(await findSchemaDifference(databaseUrl, prismaFolder)).toBeUndefined();
  });

  test("finds what the migrations lack, and never touches the real database", async () => {
    // A replay that hit this database would fail at its first table, or leave the others behind.
    await query(databaseUrl, "CREATE TABLE plot (kept text); INSERT INTO plot VALUES ('as it was')");
    await writeFile(join(prismaFolder, "schema.prisma"), SCHEMA.replace("area       Int", "area       Int\n  slope      Int"));
    const before = await databasesOfRole();
    expect(await findSchemaDifference(databaseUrl, prismaFolder)).toContain('ADD COLUMN     "slope" INTEGER NOT NULL');
    expect(await query(databaseUrl, "SELECT * FROM plot")).toEqual([{ kept: "as it was" }]);
    const tables = "SELECT tablename FROM pg_tables WHERE schemaname = 'public'";
    expect(await query(databaseUrl, tables)).toEqual([{ tablename: "plot" }]);
    expect(await databasesOfRole()).toEqual(before);
  });

  test("names a migration that does not run, and drops the shadow database all the same", async () => {
    await writeMigration(SLOW_OR_BROKEN, "SELECT nowhere;");
    const before = await databasesOfRole();
    expect(await refusal(findSchemaDifference(databaseUrl, prismaFolder))).toContain(SLOW_OR_BROKEN);
    expect(await databasesOfRole()).toEqual(before);
  });

  test("makes the shadow database on the server that SHADOW_DATABASE_URL names", async () => {
    vi.stubEnv("SHADOW_DATABASE_URL", "postgresql://nobody@127.0.0.1:1/nowhere");
    await refusal(findSchemaDifference(databaseUrl, prismaFolder));
    vi.stubEnv("SHADOW_DATABASE_URL", roleUrl);
    expect(await findSchemaDifference(databaseUrl, prismaFolder)).toBeUndefined();
  });

  test("writes the next migration for a person to edit, and applies nothing", async () => {
    await writeFile(join(prismaFolder, "schema.prisma"), SCHEMA.replace("area       Int", "area       Int\n  slope      Int"));
    const now = new Date("2026-03-04T05:06:07.890Z");
    const file = await writeNextMigration(databaseUrl, "add_slope", now, prismaFolder);
    expect(file).toBe(join(prismaFolder, "migrations", "20260304050607_add_slope", "migration.sql"));
    expect(await readFile(file, "utf8")).toContain('ADD COLUMN     "slope" INTEGER NOT NULL');
    expect(await findSchemaDifference(databaseUrl, prismaFolder)).toBeUndefined();
    expect(await query(databaseUrl, "SELECT tablename FROM pg_tables WHERE schemaname = 'public'")).toEqual([]);
    expect(await refusal(writeNextMigration(databaseUrl, "Add Slope", now, prismaFolder))).toContain("Add Slope");
  });
});

describe("the engine", () => {
  test("lets Prisma generate and validate with no database address", async () => {
    vi.stubEnv("DATABASE_OWNER_URL", undefined);
    expect(await runPrisma(["validate"], { prismaFolder })).toMatchObject({ exitCode: 0 });
    expect(await runPrisma(["generate"], { prismaFolder })).toMatchObject({ exitCode: 0 });
    expect(existsSync(join(projectFolder, "generated", "client.ts"))).toBe(true);
  });

  test("creates a missing database for Prisma's own deploy", async () => {
    const ownerUrl = withDatabase(roleUrl, `migration_test_${random()}`);
    expect(await runPrisma(["migrate", "deploy"], { prismaFolder, ownerUrl })).toMatchObject({ exitCode: 0 });
    expect(await pendingMigrations(ownerUrl, prismaFolder)).toEqual({ kind: "none" });
  });

  test("makes Prisma's own deploy wait for another one that is in the middle of a migration", async () => {
    await writeMigration(SLOW_OR_BROKEN, "SELECT pg_advisory_xact_lock(1);");
    const gate = new pg.Client({ connectionString: databaseUrl });
    await gate.connect();
    await gate.query("SELECT pg_advisory_lock(1)");
    const waiting = "SELECT pid FROM pg_locks WHERE locktype = 'advisory' AND NOT granted AND database = (SELECT oid FROM pg_database WHERE datname = current_database())";
    const isWaiting = (count: number) =>
      vi.waitUntil(async () => (await query(databaseUrl, waiting)).length === count, { timeout: 30_000, interval: 100 });
    const deploy = () => runPrisma(["migrate", "deploy"], { prismaFolder, ownerUrl: databaseUrl });
    const first = deploy();
    await isWaiting(1);
    const second = deploy();
    // A deploy that does not wait ends at once, with a complaint about the unfinished migration of the other.
    await Promise.race([second, isWaiting(2)]);
    await gate.end();
    expect(await Promise.all([first, second])).toMatchObject([{ exitCode: 0 }, { exitCode: 0 }]);
    expect(await query(databaseUrl, "SELECT count(*)::integer AS count FROM _prisma_migrations")).toEqual([{ count: 3 }]);
  });

  test("drops a database, and tells that it is gone", async () => {
    const command = async (name: string) => {
      const engine = startEngine("--datasource", JSON.stringify({ url: databaseUrl }), "cli", name);
      const ended = once(engine, "close");
      const errors = await readAll(engine.stderr);
      await ended;
      return { exitCode: engine.exitCode, errors };
    };
    expect(await command("can-connect-to-database")).toMatchObject({ exitCode: 0 });
    expect(await command("drop-database")).toMatchObject({ exitCode: 0 });
    const answer = await command("can-connect-to-database");
    expect(answer.exitCode).toBe(1);
    expect(answer.errors).toContain('"error_code":"P1003"');
  });

  test("drops the shadow database when it is ended in the middle of a replay", async () => {
    const before = await databasesOfRole();
    const engine = startEngine("--datasource", JSON.stringify({ url: databaseUrl }));
    const script = { path: "migration.sql", content: { tag: "ok", value: "SELECT pg_sleep(600);" } };
    const migrations = {
      tag: "migrations",
      baseDir: join(prismaFolder, "migrations"),
      lockfile: { path: "migration_lock.toml", content: 'provider = "postgresql"' },
      shadowDbInitScript: "",
      migrationDirectories: [{ path: SLOW_OR_BROKEN, migrationFile: script }],
    };
    const filters = { externalTables: [], externalEnums: [] };
    const params = { from: { tag: "empty" }, to: migrations, script: true, exitCode: null, filters };
    engine.stdin?.write(`${JSON.stringify({ id: 1, jsonrpc: "2.0", method: "diff", params })}\n`);
    await vi.waitUntil(async () => (await databasesOfRole()).length > before.length, { timeout: 30_000 });
    const ended = once(engine, "exit");
    engine.kill("SIGTERM");
    await ended;
    expect(await databasesOfRole()).toEqual(before);
  });

  test("answers with the message of a panic instead of falling silent", async () => {
    const engine = startEngine("--datasource", JSON.stringify({ url: databaseUrl }));
    engine.stdin?.end(`${JSON.stringify({ id: 1, jsonrpc: "2.0", method: "debugPanic" })}\n`);
    const answer: unknown = JSON.parse(await readAll(engine.stdout));
    expect(answer).toMatchObject({ id: 1, error: { data: { is_panic: true } } });
    expect(JSON.stringify(answer)).toContain("debugPanic");
  });
});
