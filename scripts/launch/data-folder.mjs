// @ts-check
import { createHash } from "node:crypto";
import { chmodSync, existsSync, mkdirSync, openSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import process from "node:process";
import { canEnter, chooseDatabaseAccount } from "./database-account.mjs";
import { nearestExisting } from "./disk-space.mjs";
import { lendToFolderOwner } from "./keep-file.mjs";
import { Refusal, say } from "./say.mjs";

const SHARED_STATE = "/var/lib/halfpass";
const LARGEST_LOG_BYTES = 5 * 1024 * 1024;

/**
 * Where one installation keeps everything that is not source.
 *
 * @typedef {object} DataFolder
 * @property {string} path
 * @property {string} cluster the folder of the PostgreSQL cluster
 * @property {string} logs
 * @property {import("./database-account.mjs").Account | null} account who runs the database; null for ourselves
 */

/**
 * Makes sure of the data folder and that it can be written to. For root the folder moves below /var/lib/halfpass
 * when the database's user could not reach the folder that was asked for.
 *
 * @param {import("./settings.mjs").Settings} settings
 * @returns {DataFolder}
 */
export function prepareDataFolder(settings) {
  let path = settings.dataFolder;
  const account = settings.outside === null ? chooseDatabaseAccount(join(path, "postgres")) : null;
  if (account !== null && !canEnter(account, nearestExisting(dirname(path)))) {
    const name = createHash("sha256").update(path).digest("hex").slice(0, 12);
    path = join(SHARED_STATE, name);
    say(`The database may not run as root and its user can't enter ${dirname(settings.dataFolder)}: the data lies in ${path}.`);
  }
  makeWritable(path, account !== null);
  const folder = { path, cluster: join(path, "postgres"), logs: join(path, "logs"), account };
  mkdirSync(folder.logs, { recursive: true, mode: account === null ? 0o700 : 0o711 });
  return folder;
}

/**
 * @param {string} path
 * @param {boolean} mustBeEnterable by the database's user, which is not the owner
 */
function makeWritable(path, mustBeEnterable) {
  const probe = join(path, `.probe-${process.pid}`);
  try {
    mkdirSync(path, { recursive: true, mode: mustBeEnterable ? 0o711 : 0o700 });
    writeFileSync(probe, "");
    rmSync(probe);
    if (mustBeEnterable) chmodSync(path, (statSync(path).mode & 0o777) | 0o011);
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : "";
    if (!["EACCES", "EPERM", "EROFS", "ENOTDIR", "EEXIST"].includes(code)) throw error;
    throw new Refusal(
      `Halfpass can't write to its data folder ${path} (${code}): give this user the right to write there, ` +
        "or choose another folder with HALFPASS_DATA.",
    );
  }
}

/**
 * Opens a log for appending and answers its path and descriptor. A log that has grown large begins anew and
 * the last one is kept beside it.
 *
 * @param {DataFolder} folder
 * @param {string} name without an ending
 * @returns {{ path: string, descriptor: number }}
 */
export function openLog(folder, name) {
  const path = join(folder.logs, `${name}.log`);
  if (existsSync(path) && statSync(path).size > LARGEST_LOG_BYTES) renameSync(path, `${path}.1`);
  const isNew = !existsSync(path);
  const descriptor = openSync(path, "a", 0o600);
  if (isNew) lendToFolderOwner(path);
  return { path, descriptor };
}
