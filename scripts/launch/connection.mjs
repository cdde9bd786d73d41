// @ts-check
import pg from "pg";

const CONNECT_MILLISECONDS = 60_000;
const RETRY_MILLISECONDS = 200;

/**
 * Opens one connection, waiting while the server is still starting up. A connection that is lost later says so
 * through its "end" event and never by ending the program.
 *
 * @param {string} url
 * @param {string} [applicationName] how the connection shows itself to others
 * @returns {Promise<pg.Client>}
 */
export async function connect(url, applicationName = "halfpass") {
  const deadline = performance.now() + CONNECT_MILLISECONDS;
  for (;;) {
    const client = new pg.Client({ connectionString: url, application_name: applicationName, keepAlive: true });
    client.on("error", () => undefined);
    try {
      await client.connect();
      return client;
    } catch (error) {
      await client.end().catch(() => undefined);
      // cannot_connect_now: it starts up, repairs itself or shuts down.
      if (!isPostgresError(error, "57P03") || performance.now() > deadline) throw error;
      await new Promise((resolve) => setTimeout(resolve, RETRY_MILLISECONDS));
    }
  }
}

/**
 * Opens a connection for one piece of work and closes it whatever happens.
 *
 * @template Result
 * @param {string} url
 * @param {(client: pg.Client) => Promise<Result>} work
 * @returns {Promise<Result>}
 */
export async function withConnection(url, work) {
  const client = await connect(url);
  try {
    return await work(client);
  } finally {
    await client.end().catch(() => undefined);
  }
}

/**
 * Whether an error came from PostgreSQL with one of these codes.
 *
 * @param {unknown} error
 * @param {...string} codes as in the appendix "PostgreSQL Error Codes" of its manual
 */
export function isPostgresError(error, ...codes) {
  return error instanceof Error && "code" in error && codes.includes(String(error.code));
}

/**
 * The first value of the first row.
 *
 * @param {pg.Client} client
 * @param {string} query
 * @param {unknown[]} [values]
 */
export async function readValue(client, query, values = []) {
  const { rows } = await client.query({ text: query, values, rowMode: "array" });
  return rows[0]?.[0];
}

/**
 * Quotes a text as an SQL literal, for the statements that take no parameters.
 *
 * @param {string} text
 */
export function quoteLiteral(text) {
  return pg.escapeLiteral(text);
}

/**
 * Quotes a name for SQL.
 *
 * @param {string} name
 */
export function quoteName(name) {
  return pg.escapeIdentifier(name);
}
