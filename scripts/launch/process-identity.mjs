// @ts-check
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import process from "node:process";

/**
 * One run of one process. A number alone is not enough: numbers are used again after a crash or a restart of
 * the machine. `token` tells runs with the same number apart and is empty where the system gives no such thing.
 *
 * @typedef {{ readonly pid: number, readonly token: string }} ProcessIdentity
 */

/**
 * Names a process that runs now, or answers null when there is none with that number.
 *
 * @param {number} pid
 * @returns {ProcessIdentity | null}
 */
export function identify(pid) {
  if (!Number.isInteger(pid) || pid <= 0 || !isAlive(pid)) return null;
  if (process.platform === "linux") return identifyOnLinux(pid);
  if (process.platform === "win32") return { pid, token: "" };
  const found = spawnSync("ps", ["-o", "lstart=", "-p", String(pid)], { encoding: "utf8" });
  const token = found.status === 0 ? found.stdout.trim() : "";
  return token === "" ? null : { pid, token };
}

/**
 * Whether that very run of the process still goes on.
 *
 * @param {ProcessIdentity | null | undefined} identity
 */
export function stillRuns(identity) {
  if (identity === null || identity === undefined) return false;
  const now = identify(identity.pid);
  return now !== null && now.token === identity.token;
}

/** @param {number} pid */
export function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}

/**
 * @param {number} pid
 * @returns {ProcessIdentity | null}
 */
function identifyOnLinux(pid) {
  try {
    const text = readFileSync(`/proc/${pid}/stat`, "latin1");
    // The name in parentheses may hold spaces and parentheses, so the fields are counted from its end.
    const fields = text.slice(text.lastIndexOf(")") + 2).split(" ");
    const [state, startedAtTicks] = [fields[0], fields[19]];
    if (state === "Z" || state === "X") return null;
    const boot = readFileSync("/proc/sys/kernel/random/boot_id", "latin1").trim();
    return { pid, token: `${boot}/${startedAtTicks}` };
  } catch {
    return null;
  }
}
