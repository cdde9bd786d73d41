// @ts-check
import { findProgram, installSystemPackage, mayInstall } from "./system-packages.mjs";

/**
 * Finds PgBouncer, or installs it where that is possible. Without it the tests named *.pooler.test.ts are left out.
 *
 * @param {AbortSignal} aborted
 * @returns {Promise<{ program: string | undefined, sentence: string }>}
 */
export async function findPooler(aborted) {
  const found = findProgram(["pgbouncer"]);
  if (found !== undefined) return { program: found, sentence: `PgBouncer of this machine: ${found}` };
  const without = "so the tests through a connection pooler are left out";
  if (!mayInstall()) return { program: undefined, sentence: `This machine has no PgBouncer and only root can install it, ${without}.` };
  const failure = await installSystemPackage("pgbouncer", aborted);
  const installed = findProgram(["pgbouncer"]);
  if (installed !== undefined) return { program: installed, sentence: `PgBouncer installed with apt-get: ${installed}` };
  return { program: undefined, sentence: `PgBouncer could not be installed (${failure ?? "it does not run"}), ${without}.` };
}
