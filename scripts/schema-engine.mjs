#!/usr/bin/env node
/**
 * Prisma's schema engine without its download. The Prisma command line fetches a native engine from a host that
 * an installation behind a firewall cannot reach; this program stands in for it with the official WASM build
 * of the same engine over the PostgreSQL driver. It answers the two things that the command line asks an
 * engine for: JSON-RPC, one request a line, on the standard streams; and `cli can-connect-to-database`,
 * `cli create-database` and `cli drop-database`. prisma/prisma.config.ts points the command line here.
 */
import { randomUUID } from "node:crypto";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { createInterface } from "node:readline";
import { parseArgs } from "node:util";
import { PrismaPg } from "@prisma/adapter-pg";
import { bindMigrationAwareSqlAdapterFactory, ColumnTypeEnum } from "@prisma/driver-adapter-utils";
import pg from "pg";

/** PostgreSQL's one-byte type "char", in which its catalogs keep flags such as the kind of a relation. */
const SINGLE_CHARACTER_TYPE = pg.types.builtins.CHAR;
const TEXT_TYPE = pg.types.builtins.TEXT;
const CONNECT_TIMEOUT_MILLISECONDS = 10_000;

/** What the command line expects as codes: see Prisma's error reference, "Schema engine" and "Common". */
const ERROR_CODES = {
  "28P01": "P1000",
  "28000": "P1010",
  "3D000": "P1003",
  "42501": "P1010",
  "42P04": "P1009",
  ECONNREFUSED: "P1001",
  EHOSTUNREACH: "P1001",
  ENOTFOUND: "P1001",
  EAI_AGAIN: "P1001",
  ETIMEDOUT: "P1002",
};

/**
 * The fields of a connection to another database of the same server. A connection string handed to the driver beside
 * a `database` wins over it, so that work meant for the other database would hit the one in the string.
 */
function connectionTo(database, url) {
  const { host, port, user, password, ssl } = new pg.Client({ connectionString: url });
  return { host, port, user, password, ssl, database, connectionTimeoutMillis: CONNECT_TIMEOUT_MILLISECONDS };
}

/** Runs one statement on a connection of its own, opened for it and closed after it. */
async function runOnce(connection, sql) {
  const client = new pg.Client(connection);
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}

/**
 * Makes `queryRaw` return "char" columns as the engine wants them: typed as a character (the adapter knows no such type
 * and would refuse the query), and an empty one, which is how the server prints a zero byte, as that byte.
 */
function readSingleCharacters(queryable) {
  const queryAsText = async (query, foundColumns) => {
    const reader = Object.create(queryable, {
      performIO: {
        value: async (inner) => {
          const result = await queryable.performIO(inner);
          const fields = result.fields.map((field, index) => {
            if (field.dataTypeID !== SINGLE_CHARACTER_TYPE) return field;
            foundColumns.push(index);
            return { ...field, dataTypeID: TEXT_TYPE };
          });
          return { ...result, fields, rows: result.rows };
        },
      },
    });
    return Object.getPrototypeOf(queryable).queryRaw.call(reader, query);
  };
  queryable.queryRaw = async (query) => {
    const foundColumns = [];
    const answer = await queryAsText(query, foundColumns);
    for (const index of foundColumns) {
      answer.columnTypes[index] = ColumnTypeEnum.Character;
      for (const row of answer.rows) if (row[index] === "") row[index] = "\0";
    }
    return answer;
  };
  return queryable;
}

/** Teaches an adapter what migrations need of it and it does not do by itself. */
function prepareForMigrations(adapter) {
  readSingleCharacters(adapter);
  const startTransaction = adapter.startTransaction.bind(adapter);
  adapter.startTransaction = async (isolationLevel) => readSingleCharacters(await startTransaction(isolationLevel));
  // The adapter's own version cuts a script at every semicolon, those inside function bodies and strings too.
  adapter.executeScript = async (script) => {
    try {
      await adapter.underlyingDriver().query(script);
    } catch (error) {
      adapter.onError(error);
    }
  };
  return adapter;
}

/** The shadow databases that exist at this moment, each with the promise of its creation. */
const shadowDatabases = new Map();

/** Drops a shadow database, whoever is still connected to it. Safe to call twice. */
async function dropShadowDatabase(name) {
  const shadow = shadowDatabases.get(name);
  if (shadow === undefined) return;
  shadowDatabases.delete(name);
  // A creation that is under way when the command line ends would otherwise leave its database behind.
  await shadow.creation.catch(() => undefined);
  await runOnce(shadow.server, `DROP DATABASE IF EXISTS "${name}" WITH (FORCE)`);
}

async function dropShadowDatabases() {
  await Promise.all([...shadowDatabases.keys()].map(dropShadowDatabase));
}

/**
 * Connects the engine to the database, and for the replay of migrations to a shadow database: always a new and empty
 * one, made beside the database (or on the server that the configuration names for it) and dropped again.
 */
class MigrationAdapterFactory extends PrismaPg {
  constructor(datasource) {
    super({ connectionString: datasource.url, connectionTimeoutMillis: CONNECT_TIMEOUT_MILLISECONDS });
    this.shadowServerUrl = datasource.shadowDatabaseUrl ?? datasource.url;
  }

  async connect() {
    return prepareForMigrations(await super.connect());
  }

  async connectToShadowDb() {
    const name = `prisma_migrate_shadow_db_${randomUUID()}`;
    const server = { connectionString: this.shadowServerUrl, connectionTimeoutMillis: CONNECT_TIMEOUT_MILLISECONDS };
    // From template0: nobody can be connected to it, and nothing that a person added to template1 gets in.
    const creation = runOnce(server, `CREATE DATABASE "${name}" TEMPLATE template0`);
    shadowDatabases.set(name, { creation, server });
    await creation;
    const shadow = connectionTo(name, this.shadowServerUrl);
    const pool = new pg.Pool(shadow);
    const { rows } = await pool.query("SELECT current_database() AS name");
    if (rows[0]?.name !== name) throw new Error(`Expected to reach the shadow database ${name}, found ${rows[0]?.name}.`);
    const adapter = await new PrismaPg(pool).connect();
    adapter.dispose = async () => {
      await pool.end();
      await dropShadowDatabase(name);
    };
    return prepareForMigrations(adapter);
  }
}

/** The message of the engine's last panic; the WASM build reports it here and then only throws "unreachable". */
let panicMessage = "";
globalThis.PRISMA_WASM_PANIC_REGISTRY = {
  set_message(message) {
    panicMessage = message;
  },
};

/** Loads the WASM build by hand: Node 20 cannot import a .wasm file. */
async function loadSchemaEngine() {
  const require = createRequire(import.meta.url);
  const bindingsPath = require.resolve("@prisma/schema-engine-wasm/schema_engine_bg");
  const bindings = await import("@prisma/schema-engine-wasm/schema_engine_bg");
  const bytes = await readFile(bindingsPath.replace(/\.js$/, ".wasm"));
  const { instance } = await WebAssembly.instantiate(bytes, { "./schema_engine_bg.js": bindings });
  bindings.__wbg_set_wasm(instance.exports);
  instance.exports.__wbindgen_start();
  return bindings.SchemaEngine;
}

/** A log line in the form in which the command line reads an engine's standard error. */
function log(level, message, fields = {}) {
  const line = { timestamp: new Date().toISOString(), level, fields: { message, ...fields }, target: "schema_engine::logger" };
  process.stderr.write(`${JSON.stringify(line)}\n`);
}

/** Turns what the engine threw into the JSON-RPC error that the command line knows how to show. */
function describeFailure(error) {
  const isPanic = error instanceof WebAssembly.RuntimeError;
  const message = isPanic ? panicMessage || error.message : error.message || String(error);
  const data = isPanic
    ? { is_panic: true, message, error: { message }, backtrace: error.stack }
    : { is_panic: false, message, error_code: error.code ?? null, meta: error.meta ?? null };
  return { code: 4466, message: "An error happened. Check the data field for details.", data };
}

/** Answers JSON-RPC requests from standard input one after the other, until it closes. */
async function serve(datamodelPaths, datasource) {
  const SchemaEngine = await loadSchemaEngine();
  const files = await Promise.all(datamodelPaths.map(async (path) => [path, await readFile(path, "utf8")]));
  // `migrate diff` names no schema file here, and the engine panics on an empty list.
  const datamodels = files.length > 0 ? files : undefined;
  const factory = bindMigrationAwareSqlAdapterFactory(new MigrationAdapterFactory(datasource));
  const forwardLog = (line) => process.stderr.write(`${line.trimEnd()}\n`);
  // A panic inside the engine is thrown into the event loop, and the call that it belongs to would never settle.
  const panic = new Promise((_, reject) => process.once("uncaughtException", reject));
  panic.catch(() => undefined);
  let engine;
  for await (const line of createInterface({ input: process.stdin, crlfDelay: Infinity })) {
    if (line.trim() === "") continue;
    const request = JSON.parse(line);
    // An answer of the command line to a message of the engine, not a request.
    if (request.method === undefined) continue;
    const answer = { jsonrpc: "2.0", id: request.id };
    try {
      engine ??= await Promise.race([SchemaEngine.new({ datamodels }, forwardLog, factory), panic]);
      answer.result = (await Promise.race([callEngine(engine, request), panic])) ?? {};
    } catch (error) {
      answer.error = describeFailure(error);
    } finally {
      // Before the answer, because the command line ends this program as soon as it has one.
      await dropShadowDatabases();
    }
    // What `migrate diff` prints reaches the command line as a request of the engine's own.
    if (typeof answer.result?.stdout === "string") {
      send({ jsonrpc: "2.0", id: request.id, method: "print", params: { content: answer.result.stdout } });
    }
    send(answer);
  }
}

function send(message) {
  process.stdout.write(`${JSON.stringify(message)}\n`);
}

async function callEngine(engine, { method, params }) {
  const command = method === "getDatabaseVersion" ? "version" : method;
  if (typeof engine[command] !== "function") throw new Error(`The schema engine has no method ${method}.`);
  return engine[command](params);
}

/** Carries out a `cli …` command; the database is the one that the address names. */
async function runDatabaseCommand(command, url) {
  const { database } = new pg.Client({ connectionString: url });
  const name = `"${database.replaceAll('"', '""')}"`;
  if (command === "can-connect-to-database") {
    await runOnce({ connectionString: url, connectionTimeoutMillis: CONNECT_TIMEOUT_MILLISECONDS }, "SELECT 1");
  } else if (command === "create-database") {
    await runOnce(connectionTo("postgres", url), `CREATE DATABASE ${name}`);
  } else if (command === "drop-database") {
    await runOnce(connectionTo("postgres", url), `DROP DATABASE IF EXISTS ${name} WITH (FORCE)`);
  } else {
    throw new Error(`Unknown command: ${command}.`);
  }
}

/** The command line sends SIGTERM at once after its last answer, a person's Ctrl-C may come in the middle. */
for (const signal of ["SIGTERM", "SIGINT"]) {
  process.on(signal, () => {
    dropShadowDatabases().finally(() => process.exit(0));
  });
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    datamodels: { type: "string", multiple: true, default: [] },
    datasource: { type: "string", default: "{}" },
    "enabled-preview-features": { type: "string" },
    "extension-types": { type: "string" },
  },
});
const datasource = JSON.parse(values.datasource);

if (positionals[0] === "cli") {
  // The command line skips the first line that an engine prints.
  log("INFO", "Starting the schema engine");
  try {
    await runDatabaseCommand(positionals[1], datasource.url);
  } catch (error) {
    log("ERROR", error.message, { is_panic: false, error_code: ERROR_CODES[error.code] ?? null });
    process.exitCode = 1;
  }
} else {
  await serve(values.datamodels, datasource);
}
