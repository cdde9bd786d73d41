import { setTimeout as pause } from "node:timers/promises";
import pg from "pg";

const START_ATTEMPTS = 150;
const ATTEMPT_PAUSE_MILLISECONDS = 100;

/**
 * Waits until something that speaks PostgreSQL's protocol lets us in at an address.
 *
 * @param {string} address
 * @param {object} server
 * @param {string} server.name what it is called when it does not start
 * @param {import("node:child_process").ChildProcess} server.supervisor the process that runs it, whose end ends the wait
 * @param {() => string} server.readLog what it has said until now
 * @returns {Promise<void>}
 * @throws {Error} when it does not start, with what it said
 */
export async function waitUntilReady(address, { name, supervisor, readLog }) {
  for (let attempt = 0; attempt < START_ATTEMPTS; attempt += 1) {
    if (supervisor.exitCode !== null) break;
    const client = new pg.Client({ connectionString: address });
    try {
      await client.connect();
      await client.end();
      return;
    } catch {
      await pause(ATTEMPT_PAUSE_MILLISECONDS);
    }
  }
  throw new Error(`${name} did not start. It said:\n${readLog()}`);
}
