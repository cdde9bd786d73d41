// @ts-check
// The file of a backup: gzip around lines of text. The first line is a header as JSON. Then comes each table: a line of
// JSON with its name and columns, its rows in PostgreSQL's text format, and a line "\.", which no row can be. The last
// line but one counts the rows of each table, and the last holds the SHA-256 of all lines before it.
import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { createGunzip } from "node:zlib";
import { Refusal } from "../launch/say.mjs";

const FORMAT = "halfpass backup";
const FORMAT_VERSION = 1;
export const END_OF_ROWS = "\\.\n";
const LINE_FEED = 10;

/**
 * @typedef {object} Header
 * @property {string} format
 * @property {number} version of the format
 * @property {string} madeAt ISO 8601
 * @property {{ name: string, checksum: string }[]} migrations that the database had, in their order
 */

/**
 * @param {Pick<Header, "madeAt" | "migrations">} content
 * @returns {Header}
 */
export function makeHeader(content) {
  return { format: FORMAT, version: FORMAT_VERSION, ...content };
}

/**
 * The lines of a backup, each with its line feed.
 *
 * @param {string} path
 * @param {AbortSignal} aborted
 * @returns {AsyncGenerator<Buffer, void>}
 */
export async function* readLines(path, aborted) {
  const file = createReadStream(path, { signal: aborted });
  const plain = createGunzip();
  file.once("error", (error) => plain.destroy(error));
  /** @type {Buffer[]} */
  let begun = [];
  try {
    for await (const chunk of file.pipe(plain)) {
      let from = 0;
      for (let end = chunk.indexOf(LINE_FEED); end !== -1; end = chunk.indexOf(LINE_FEED, from)) {
        const rest = chunk.subarray(from, end + 1);
        yield begun.length === 0 ? rest : Buffer.concat([...begun, rest]);
        begun = [];
        from = end + 1;
      }
      if (from < chunk.length) begun.push(chunk.subarray(from));
    }
    if (begun.length > 0) yield Buffer.concat(begun);
  } finally {
    file.destroy();
    plain.destroy();
  }
}

/**
 * Reads a backup from end to end and refuses one that is not whole or not as it was written.
 *
 * @param {string} path
 * @param {AbortSignal} aborted
 * @returns {Promise<Header>}
 */
export async function verifyArchive(path, aborted) {
  const hash = createHash("sha256");
  /** @type {Buffer | undefined} */
  let first;
  /** @type {Buffer | undefined} */
  let last;
  try {
    for await (const line of readLines(path, aborted)) {
      if (last !== undefined) hash.update(last);
      first ??= line;
      last = line;
    }
  } catch (error) {
    aborted.throwIfAborted();
    const code = error instanceof Error && "code" in error ? String(error.code) : "";
    if (code === "ENOENT" || code === "EISDIR") throw new Refusal(`There is no backup ${path}.`);
    if (code.startsWith("Z_")) throw new Refusal(`${path} is damaged or is no backup of Halfpass (${code}).`);
    throw error;
  }
  const header = parse(first);
  if (header?.format !== FORMAT) throw new Refusal(`${path} is no backup of Halfpass.`);
  if (header.version !== FORMAT_VERSION) throw new Refusal(`${path} was written by a newer Halfpass: restore it with that one.`);
  if (parse(last)?.sha256 !== hash.digest("hex")) {
    throw new Refusal(`${path} is not as it was written: its end is missing or something in it was changed.`);
  }
  return header;
}

/** @param {Buffer | undefined} line */
function parse(line) {
  if (line === undefined) return undefined;
  try {
    return JSON.parse(line.toString("utf8"));
  } catch {
    return undefined;
  }
}
