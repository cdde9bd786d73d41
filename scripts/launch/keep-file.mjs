// @ts-check
import { chownSync, closeSync, existsSync, fsyncSync, openSync, readFileSync, renameSync, rmSync, statSync, writeSync } from "node:fs";
import { dirname } from "node:path";
import process from "node:process";

/**
 * Writes a small JSON file that only its owner may read, so that a loss of power leaves the old or the new
 * content and never half of one.
 *
 * @param {string} path
 * @param {unknown} content
 */
export function keepFile(path, content) {
  const unfinished = `${path}.${process.pid}.new`;
  try {
    const descriptor = openSync(unfinished, "w", 0o600);
    try {
      writeSync(descriptor, `${JSON.stringify(content, null, 2)}\n`);
      fsyncSync(descriptor);
    } finally {
      closeSync(descriptor);
    }
    lendToFolderOwner(unfinished);
    renameSync(unfinished, path);
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw error;
  }
}

/**
 * Gives a file that root has made to whoever owns its folder, who must be able to read it at the next start.
 *
 * @param {string} path
 */
export function lendToFolderOwner(path) {
  if (process.getuid?.() !== 0) return;
  const owner = statSync(dirname(path));
  chownSync(path, owner.uid, owner.gid);
}

/**
 * Reads a kept file; null where there is none, undefined where it can't be understood.
 *
 * @param {string} path
 * @returns {any}
 */
export function readKeptFile(path) {
  if (!existsSync(path)) return null;
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}
