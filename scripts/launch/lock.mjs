// @ts-check
import { setTimeout as pause } from "node:timers/promises";
import { connect, readValue } from "./connection.mjs";

/** Any number will do, as long as it is always this one. */
const LOCK_KEY = "7216352941180";
const APPLICATION_PREFIX = "halfpass ";
const RETAKE_ATTEMPTS = 60;

/**
 * The exclusive right to be in charge of a database. PostgreSQL gives it to one connection and takes it back
 * when that ends, however it ends.
 *
 * @typedef {object} Lock
 * @property {() => Promise<void>} release
 * @property {(lost: () => void) => void} onLost calls back once when the connection ends without being released
 */

/**
 * Takes the lock, or says who has it.
 *
 * @param {string} url
 * @param {string} purpose how others see us: "start", "backup", …
 * @returns {Promise<{ lock: Lock } | { lock: null, holder: string }>}
 */
export async function takeLock(url, purpose) {
  const client = await connect(url, APPLICATION_PREFIX + purpose);
  if ((await readValue(client, "select pg_try_advisory_lock($1::bigint)", [LOCK_KEY])) !== true) {
    const holder = await readValue(
      client,
      `select a.application_name from pg_locks l join pg_stat_activity a using (pid)
       where l.locktype = 'advisory' and (l.classid::bigint << 32) | l.objid::bigint = $1::bigint and l.granted limit 1`,
      [LOCK_KEY],
    );
    await client.end();
    return { lock: null, holder: String(holder ?? "").replace(APPLICATION_PREFIX, "") || "start" };
  }
  let released = false;
  return {
    lock: {
      async release() {
        released = true;
        await client.end().catch(() => undefined);
      },
      onLost(lost) {
        client.once("end", () => {
          if (!released) lost();
        });
      },
    },
  };
}

/**
 * Takes the lock again after the server has ended all connections to repair itself, or answers null when it
 * does not come back within half a minute.
 *
 * @param {string} url
 * @param {string} purpose
 * @param {() => boolean} isRunning
 * @returns {Promise<Lock | null>}
 */
export async function retakeLock(url, purpose, isRunning) {
  for (let attempt = 0; attempt < RETAKE_ATTEMPTS && isRunning(); attempt += 1) {
    try {
      const taken = await takeLock(url, purpose);
      if (taken.lock !== null) return taken.lock;
    } catch {
      // Not yet.
    }
    await pause(500);
  }
  return null;
}
