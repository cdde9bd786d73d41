#!/usr/bin/env node
/**
 * Prisma's schema engine without its download. The Prisma command line fetches a native engine from a host that
 * an installation behind a firewall cannot reach; this program stands in for it with the official WASM build
 * of the same engine over the PostgreSQL driver. It answers the two things that the command line asks an
 * engine for: JSON-RPC, one request a line, on the standard streams; and `cli can-connect-to-database`,
 * `cli create-database` and `cli drop-database`. prisma/prisma.config.ts points the command line here.
 */
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { createInterface } from "node:readline";
import { parseArgs } from "node:util";
import { bindMigrationAwareSqlAdapterFactory } from "@prisma/driver-adapter-utils";
import pg from "pg";
import { connectionTo, dropShadowDatabases, MigrationAdapterFactory, runOnce } from "./migration-adapter.mjs";

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
  let engine;
  for await (const line of createInterface({ input: process.stdin, crlfDelay: Infinity })) {
    const request = line.trim() === "" ? {} : JSON.parse(line);
    // Without a method it is the command line's answer to a message of the engine, not a request.
    if (request.method === undefined) continue;
    const answer = await settle(async () => {
      engine ??= await SchemaEngine.new({ datamodels }, forwardLog, factory);
      return callEngine(engine, request);
    });
    // What `migrate diff` prints reaches the command line as a request of the engine's own.
    if (typeof answer.result?.stdout === "string") {
      send({ jsonrpc: "2.0", id: request.id, method: "print", params: { content: answer.result.stdout } });
    }
    send({ jsonrpc: "2.0", id: request.id, ...answer });
  }
}

/** Carries out one call of the engine, clears up after it, and returns the `result` or the `error` of the answer. */
async function settle(call) {
  // A panic inside the engine is thrown into the event loop, and the call that it belongs to would never settle.
  let rejectAtPanic;
  const panic = new Promise((_, reject) => process.once("uncaughtException", (rejectAtPanic = reject)));
  try {
    try {
      return { result: (await Promise.race([call(), panic])) ?? {} };
    } finally {
      // Before the answer, because the command line ends this program as soon as it has one.
      await dropShadowDatabases();
    }
  } catch (error) {
    return { error: describeFailure(error) };
  } finally {
    process.off("uncaughtException", rejectAtPanic);
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
    await runOnce({ connectionString: url }, "SELECT 1");
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
    void dropShadowDatabases().finally(() => process.exit(0));
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
