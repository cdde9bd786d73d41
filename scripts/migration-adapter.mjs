import { randomUUID } from "node:crypto";
import { PrismaPg } from "@prisma/adapter-pg";
import { ColumnTypeEnum, DriverAdapterError } from "@prisma/driver-adapter-utils";
import pg from "pg";

/** PostgreSQL's one-byte type "char", in which its catalogs keep flags such as the kind of a relation. */
const SINGLE_CHARACTER_TYPE = pg.types.builtins.CHAR;
const TEXT_TYPE = pg.types.builtins.TEXT;
/** An idle connection must not keep this program alive when the command line closes its input. */
const CONNECTION_HABITS = { connectionTimeoutMillis: 10_000, allowExitOnIdle: true };

/**
 * The fields of a connection to another database of the same server. A connection string handed to the driver beside
 * a `database` wins over it, so that work meant for the other database would hit the one in the string.
 */
export function connectionTo(database, url) {
  const { host, port, user, password, ssl } = new pg.Client({ connectionString: url });
  return { host, port, user, password, ssl, database };
}

/** Runs one statement on a connection of its own, opened for it and closed after it; throws the driver's error. */
export async function runOnce(connection, sql) {
  const client = new pg.Client({ ...CONNECTION_HABITS, ...connection });
  // A connection that breaks rejects the statement too, and that is where it is handled.
  client.on("error", () => undefined);
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

/**
 * The server's own words about a script, and the line where it stopped. The adapter and the engine both sort errors into
 * kinds by their code, and of some kinds then show neither the name nor the reason: so the code stays behind.
 */
function describeScriptError({ severity, message, detail, column, hint, position }, script) {
  // PostgreSQL counts characters from 1.
  const before = position === undefined ? undefined : [...script].slice(0, Number(position) - 1);
  const place = before === undefined ? "" : ` (line ${before.filter((character) => character === "\n").length + 1})`;
  return { kind: "postgres", code: "N/A", severity, message: `${message}${place}`, detail, column, hint };
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
      if (error.severity === undefined) adapter.onError(error);
      throw new DriverAdapterError(describeScriptError(error, script));
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
  const exists = await shadow.creation.then(
    () => true,
    () => false,
  );
  if (exists) await runOnce(shadow.server, `DROP DATABASE IF EXISTS "${name}" WITH (FORCE)`);
}

/** Drops every shadow database that this process has made and not dropped yet. */
export async function dropShadowDatabases() {
  await Promise.all([...shadowDatabases.keys()].map(dropShadowDatabase));
}

/**
 * Connects the engine to the database, and for the replay of migrations to a shadow database: always a new and empty
 * one, made beside the database (or on the server that the configuration names for it) and dropped again.
 */
export class MigrationAdapterFactory extends PrismaPg {
  constructor(datasource) {
    super({ connectionString: datasource.url, ...CONNECTION_HABITS });
    this.shadowServerUrl = datasource.shadowDatabaseUrl ?? datasource.url;
  }

  async connect() {
    return prepareForMigrations(await super.connect());
  }

  async connectToShadowDb() {
    const name = `prisma_migrate_shadow_db_${randomUUID()}`;
    const server = { connectionString: this.shadowServerUrl };
    // From template0: nobody can be connected to it, and nothing that a person added to template1 gets in.
    const creation = runOnce(server, `CREATE DATABASE "${name}" TEMPLATE template0`);
    shadowDatabases.set(name, { creation, server });
    await creation;
    const pool = new pg.Pool({ ...CONNECTION_HABITS, ...connectionTo(name, this.shadowServerUrl) });
    // Dropping the database ends the connections that are still open.
    pool.on("error", () => undefined);
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
