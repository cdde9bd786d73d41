// @ts-check
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, readlinkSync, realpathSync, rmSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { isAlive } from "./process-identity.mjs";
import { say } from "./say.mjs";

/**
 * The main process of a running PostgreSQL, as its own file postmaster.pid says.
 *
 * @typedef {{ pid: number, port: number }} Postmaster
 */

/**
 * Finds the PostgreSQL that runs on a cluster, or answers null. After a loss of power the file may name a
 * process that has nothing to do with it, which would keep PostgreSQL from starting: such a file is removed.
 *
 * @param {string} cluster the folder
 * @returns {Postmaster | null}
 */
export function findPostmaster(cluster) {
  const path = join(cluster, "postmaster.pid");
  if (!existsSync(path)) return null;
  const lines = readFileSync(path, "utf8").split("\n");
  const [pid, port] = [Number(lines[0]), Number(lines[3])];
  if (!Number.isInteger(pid) || pid <= 0 || !isAlive(pid)) return null;
  if (worksIn(pid, cluster)) return { pid, port };
  say(`Process ${pid} is not this database, which was not ended cleanly: its old mark is removed.`);
  rmSync(path, { force: true });
  return null;
}

/**
 * @param {number} pid
 * @param {string} cluster
 */
function worksIn(pid, cluster) {
  if (process.platform === "linux") {
    try {
      return readlinkSync(`/proc/${pid}/cwd`) === realpathSync(cluster);
    } catch {
      // Gone in this moment, or not ours to look at.
      return false;
    }
  }
  if (process.platform === "win32") return true;
  return spawnSync("ps", ["-o", "command=", "-p", String(pid)], { encoding: "utf8" }).stdout.includes("postgres");
}
