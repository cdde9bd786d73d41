// One table through PostgreSQL's COPY, in its text format.
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { from, to } from "pg-copy-streams";
import { quoteName } from "../launch/connection.mjs";

/**
 * The rows of a table as lines.
 *
 * @param {import("pg").Client} client
 * @param {string} table
 * @param {readonly string[]} columns
 * @returns {Readable & { rowCount: number }} `rowCount` is right when it has been read to its end
 */
export function copyOut(client, table, columns) {
  return client.query(to(`copy ${describe(table, columns)} to stdout`));
}

/**
 * Puts lines into a table.
 *
 * @param {import("pg").Client} client
 * @param {string} table
 * @param {readonly string[]} columns
 * @param {AsyncIterable<Buffer>} lines
 * @returns {Promise<number>} how many rows it took
 */
export async function copyIn(client, table, columns, lines) {
  const stream = client.query(from(`copy ${describe(table, columns)} from stdin`));
  await pipeline(Readable.from(lines, { objectMode: false }), stream);
  return stream.rowCount;
}

function describe(table, columns) {
  return `public.${quoteName(table)} (${columns.map(quoteName).join(", ")})`;
}
