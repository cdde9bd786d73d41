// @ts-check
import { closeSync, openSync, renameSync, rmSync, writeSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { keepFile, lendToFolderOwner, readKeptFile } from "./keep-file.mjs";
import { identify, stillRuns } from "./process-identity.mjs";
import { Refusal } from "./say.mjs";

/**
 * Who works with a data folder. The file is there while someone does; one that is found without its process
 * says that the last run did not end cleanly.
 *
 * @typedef {object} RunningRecord
 * @property {string} purpose what was started: "start", "company", "backup" or "restore"
 * @property {import("./process-identity.mjs").ProcessIdentity} launcher
 * @property {import("./process-identity.mjs").ProcessIdentity | null} web
 * @property {string} address
 * @property {boolean} serving whether the address answers
 * @property {string} startedAt ISO 8601
 * @property {string | null} ended how it ended, where it ended otherwise than it was asked to
 */

/**
 * Our hold on the data folder, and how the last run ended if it did not end cleanly.
 *
 * @typedef {object} Claim
 * @property {RunningRecord | "unreadable" | null} previous
 * @property {(change: Partial<RunningRecord>) => void} update
 * @property {() => void} release leaves no trace: a clean end
 */

/**
 * Who works with the folder at this moment, or null.
 *
 * @param {import("./data-folder.mjs").DataFolder} folder
 * @returns {RunningRecord | null}
 */
export function findRunning(folder) {
  const record = readKeptFile(recordPath(folder));
  return record && stillRuns(record.launcher) ? record : null;
}

/**
 * Takes the folder for this process, or refuses when another works with it. The advisory lock in the database
 * is what really keeps two apart; this file is there before the database is, and knows how the last run ended.
 *
 * @param {import("./data-folder.mjs").DataFolder} folder
 * @param {{ purpose: string, address: string }} who
 * @returns {Claim}
 */
export function claimFolder(folder, who) {
  const path = recordPath(folder);
  const launcher = identify(process.pid) ?? { pid: process.pid, token: "" };
  /** @type {RunningRecord} */
  let record = { ...who, launcher, web: null, serving: false, startedAt: new Date().toISOString(), ended: null };
  let previous = null;
  if (!createRecord(path, record)) {
    const running = findRunning(folder);
    if (running !== null) throw new Refusal(describeRunning(running));
    previous = setAside(folder, path);
    if (!createRecord(path, record)) throw new Refusal("Another copy of Halfpass is just starting with the same data folder.");
  }
  return {
    previous,
    update(change) {
      record = { ...record, ...change };
      keepFile(path, record);
    },
    release() {
      rmSync(path, { force: true });
    },
  };
}

/**
 * One sentence about who works with the folder, for whoever has to wait.
 *
 * @param {RunningRecord} running
 */
export function describeRunning(running) {
  const { launcher, purpose } = running;
  if (purpose !== "start") {
    return `"npm run ${purpose}" is working with this data folder (process ${launcher.pid}): try again when it is done.`;
  }
  return running.serving
    ? `Another copy of Halfpass is already running: ${running.address} (process ${launcher.pid}).`
    : `Another copy of Halfpass is just starting with this data folder (process ${launcher.pid}).`;
}

/** @param {import("./data-folder.mjs").DataFolder} folder */
function recordPath(folder) {
  return join(folder.path, "running.json");
}

/**
 * @param {string} path
 * @param {RunningRecord} record
 * @returns {boolean} false when there is a record already
 */
function createRecord(path, record) {
  try {
    const descriptor = openSync(path, "wx", 0o600);
    writeSync(descriptor, `${JSON.stringify(record, null, 2)}\n`);
    closeSync(descriptor);
    lendToFolderOwner(path);
    return true;
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "EEXIST") return false;
    rmSync(path, { force: true });
    throw error;
  }
}

/**
 * Moves a record without a process out of the way. When two starts find it at once, the second would move the
 * fresh record of the first: it looks at what it has moved and puts that back.
 *
 * @param {import("./data-folder.mjs").DataFolder} folder
 * @param {string} path
 * @returns {RunningRecord | "unreadable"}
 */
function setAside(folder, path) {
  const aside = join(folder.path, `running.${process.pid}.old`);
  renameSync(path, aside);
  const record = readKeptFile(aside);
  if (record && stillRuns(record.launcher)) {
    renameSync(aside, path);
    throw new Refusal(describeRunning(record));
  }
  rmSync(aside);
  return record ?? "unreadable";
}
