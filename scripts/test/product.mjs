// @ts-check
// The built product on a database of its own, in test mode, for the browser tests.
import { randomBytes } from "node:crypto";
import { join } from "node:path";
import process from "node:process";
import { cloneOn } from "../../tests/support/migrated-server.mjs";
import { standaloneFolder } from "../launch/build.mjs";
import { startChild } from "../launch/child.mjs";
import { findFreePort } from "../launch/ports.mjs";
import { productEnvironment, waitForFirstAnswer } from "../launch/web-server.mjs";

/** The moment at which the product's clock stands: a working morning in the middle of spring. */
const TEST_NOW = "2027-05-12T13:30:00Z";

/**
 * Secrets that live as long as this run.
 *
 * @returns {import("../launch/secrets.mjs").Secrets}
 */
export function makeSecrets() {
  return {
    databasePasswords: { superuser: "", owner: "", web: "" },
    nextAuthSecret: randomBytes(32).toString("base64"),
    serverActionsEncryptionKey: randomBytes(32).toString("base64"),
  };
}

/**
 * Starts the standalone server on a fresh copy of the migrated database and waits for its first answer.
 *
 * @param {import("./stages.mjs").Place} place
 * @returns {Promise<{ environment: Record<string, string>, output: () => string, end: () => Promise<void> }>} what
 *   the browser tests are told, what the server has said, and how to end both
 */
export async function startProduct(place) {
  const database = await cloneOn(place.environment.HALFPASS_TEST_SERVER ?? "");
  const port = await findFreePort();
  const address = `http://127.0.0.1:${port}`;
  const settings = { checkout: place.checkout, dataFolder: "", port, address, outside: null };
  const environment = {
    ...productEnvironment(settings, makeSecrets()),
    DATABASE_APP_URL: database.appUrl,
    HALFPASS_TEST_MODE: "1",
    HALFPASS_TEST_NOW: TEST_NOW,
  };
  const standalone = standaloneFolder(place.checkout);
  const web = startChild({
    folder: place.folder,
    log: "web",
    args: [join(standalone, "server.js")],
    cwd: standalone,
    env: { ...process.env, ...environment, NODE_ENV: "production", PORT: String(port), HOSTNAME: "127.0.0.1" },
  });
  const end = async () => {
    await web.end();
    await database.drop();
  };
  try {
    await waitForFirstAnswer(web, port, "127.0.0.1", place.ending.aborted);
  } catch (error) {
    await end();
    throw error;
  }
  const told = { ...environment, HALFPASS_BASE_URL: address, DATABASE_OWNER_URL: database.ownerUrl, HALFPASS_ARTIFACTS: place.artifacts };
  return { environment: told, output: () => `What the web server said:\n${web.output()}`, end };
}
