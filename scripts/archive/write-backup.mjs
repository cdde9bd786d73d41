// @ts-check
import { createHash } from "node:crypto";
import { createWriteStream, existsSync } from "node:fs";
import { rename, rm } from "node:fs/promises";
import process from "node:process";
import { Readable } from "node:stream";
import { pipeline } from "node:stream/promises";
import { createGzip } from "node:zlib";
import { withConnection } from "../launch/connection.mjs";
import { Refusal } from "../launch/say.mjs";
import { END_OF_ROWS, makeHeader } from "./archive-file.mjs";
import { copyOut } from "./copy-table.mjs";

/**
 * Writes every table, as of one moment, into a new file that only its owner may read. The file has its name only
 * when it is whole.
 *
 * @param {object} request
 * @param {string} request.url of the database, as a role that row level security does not bind
 * @param {string} request.path of the file, which must not exist yet
 * @param {Date} request.now
 * @param {AbortSignal} request.aborted
 * @returns {Promise<{ tables: number, rows: number }>}
 */
export async function writeBackup({ url, path, now, aborted }) {
  if (existsSync(path)) throw new Refusal(`${path} is there already and is not overwritten: name another file.`);
  const unfinished = `${path}.${process.pid}.new`;
  try {
    const counted = { tables: 0, rows: 0 };
    await withConnection(url, async (client) => {
      await client.query("begin transaction isolation level repeatable read, read only");
      await client.query("set local client_encoding to 'UTF8'; set local timezone to 'UTC'; set local datestyle to 'ISO'");
      const content = Readable.from(writeLines(client, now, counted), { objectMode: false });
      await pipeline(content, createGzip(), createWriteStream(unfinished, { flags: "wx", mode: 0o600, flush: true }), { signal: aborted });
    });
    await rename(unfinished, path);
    return counted;
  } catch (error) {
    await rm(unfinished, { force: true });
    throw error;
  }
}

/**
 * @param {import("pg").Client} client
 * @param {Date} now
 * @param {{ tables: number, rows: number }} counted
 * @returns {AsyncGenerator<Buffer, void>}
 */
async function* writeLines(client, now, counted) {
  const hash = createHash("sha256");
  const hashed = (/** @type {string | Buffer} */ text) => {
    const bytes = Buffer.from(text);
    hash.update(bytes);
    return bytes;
  };
  const line = (/** @type {unknown} */ content) => `${JSON.stringify(content)}\n`;
  yield hashed(line(makeHeader({ madeAt: now.toISOString(), migrations: await readMigrations(client) })));
  /** @type {Record<string, number>} */
  const rows = {};
  for (const { table, columns } of await readTables(client)) {
    yield hashed(line({ table, columns }));
    const stream = copyOut(client, table, columns);
    for await (const bytes of stream) yield hashed(bytes);
    yield hashed(END_OF_ROWS);
    rows[table] = stream.rowCount;
    counted.tables += 1;
    counted.rows += stream.rowCount;
  }
  yield hashed(line({ rows }));
  yield Buffer.from(line({ sha256: hash.digest("hex") }));
}

/**
 * @param {import("pg").Client} client
 * @returns {Promise<{ name: string, checksum: string }[]>}
 */
async function readMigrations(client) {
  const { rows: found } = await client.query("select to_regclass('public._prisma_migrations') is not null as exists");
  if (found[0]?.exists !== true) throw new Refusal("This database has no tables yet, so there is nothing to back up.");
  const { rows } = await client.query(
    `select migration_name as name, checksum, finished_at is null as unfinished from public._prisma_migrations
     where rolled_back_at is null order by migration_name`,
  );
  const unfinished = rows.find((row) => row.unfinished);
  if (unfinished !== undefined) throw new Refusal(`The database is being changed by the migration ${unfinished.name}: try again when it is done.`);
  return rows.map(({ name, checksum }) => ({ name, checksum }));
}

/**
 * The tables with the columns that hold values of their own, in the order of their names.
 *
 * @param {import("pg").Client} client
 * @returns {Promise<{ table: string, columns: string[] }[]>}
 */
export async function readTables(client) {
  const { rows } = await client.query(
    `select c.relname::text as table, array_agg(a.attname::text order by a.attnum) as columns
     from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped and a.attgenerated = ''
     where c.relnamespace = 'public'::regnamespace and c.relkind = 'r'
     group by c.oid, c.relname order by c.relname`,
  );
  return rows;
}
