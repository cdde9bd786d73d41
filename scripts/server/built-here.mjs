// @ts-check
import { join } from "node:path";
import { buildIfChanged, generateClientIfChanged, standaloneFolder } from "../launch/build.mjs";
import { noteCheckoutUse } from "../launch/checkout-use.mjs";
import { loadMigrations } from "../launch/database.mjs";
import { PROJECT_FOLDER } from "../run-prisma.mjs";

/**
 * Makes sure that this checkout is built as `npm start` builds it, and notes that it is in use, so that nobody
 * builds it anew underneath.
 *
 * @param {object} request
 * @param {string} request.folder where the log of the build goes
 * @param {string} request.serverActionsEncryptionKey
 * @param {AbortSignal} request.aborted
 * @returns {Promise<{ standalone: string, leave: () => void }>} where server.js is, and what takes the note away
 */
export async function buildHere({ folder, serverActionsEncryptionKey, aborted }) {
  const leave = noteCheckoutUse(PROJECT_FOLDER, "a check of the built server");
  try {
    await generateClientIfChanged(PROJECT_FOLDER, await loadMigrations(PROJECT_FOLDER));
    const place = { path: folder, cluster: join(folder, "postgres"), logs: folder, account: null };
    const secrets = { databasePasswords: { superuser: "", owner: "", web: "" }, nextAuthSecret: "", serverActionsEncryptionKey };
    await buildIfChanged({ checkout: PROJECT_FOLDER, folder: place, secrets, aborted });
  } catch (error) {
    leave();
    throw error;
  }
  return { standalone: standaloneFolder(PROJECT_FOLDER), leave };
}
