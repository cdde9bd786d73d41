import { SERVER_VARIABLE } from "./database-server";
import { type DatabaseClone, cloneOn } from "./migrated-server.mjs";

export { type DatabaseClone } from "./migrated-server.mjs";

/**
 * Copies the migrated database for one test file; drop the copy when the file is done. Holds no company.
 * Works in the test projects whose global setup is database-server.ts.
 */
export async function cloneDatabase(): Promise<DatabaseClone> {
  const serverUrl = process.env[SERVER_VARIABLE];
  if (serverUrl === undefined) throw new Error(`${SERVER_VARIABLE} is not set: this test project has no database.`);
  return await cloneOn(serverUrl);
}
