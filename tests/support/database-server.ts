// Set up once for the tests that need a database: takes the server that `npm test` has started, or starts one when
// tests are run by themselves.
import { startMigratedServer } from "./migrated-server.mjs";

/** The variable that says where the migrated server is, for the tests' own processes. */
export const SERVER_VARIABLE = "HALFPASS_TEST_SERVER";

/** Vitest's global setup: answers with what ends the server that it had to start, if any. */
export default async function startDatabaseServer(): Promise<(() => Promise<void>) | undefined> {
  if (process.env[SERVER_VARIABLE] !== undefined) return undefined;
  const { serverUrl, stop } = await startMigratedServer();
  process.env[SERVER_VARIABLE] = serverUrl;
  return stop;
}
