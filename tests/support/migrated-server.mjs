// @ts-check
// A throwaway PostgreSQL whose database is migrated once, and copies of that database: what a test writes, no other
// test reads. Roles are those of a real installation, so a migration that needs a superuser fails here too.
import { randomUUID } from "node:crypto";
import { quoteName, withConnection } from "../../scripts/launch/connection.mjs";
import { DATABASE, OWNER_ROLE, WEB_ROLE, ensureOwnerAndDatabase, ensureWebRole } from "../../scripts/launch/roles.mjs";
import { migrate } from "../../scripts/migrate.mjs";
import { startThrowawayPostgres } from "./throwaway-postgres.mjs";

/**
 * A copy of the migrated database.
 *
 * @typedef {object} DatabaseClone
 * @property {string} ownerUrl as the role that owns the tables, which row level security does not bind
 * @property {string} appUrl as the role of the web server, which it does
 * @property {() => Promise<void>} drop ends all its connections and deletes it
 */

/**
 * Starts a server and migrates its template. All its roles have one password, which dies with it.
 *
 * @returns {Promise<{ serverUrl: string, stop: () => Promise<void> }>} the superuser's address, for {@link cloneOn}
 */
export async function startMigratedServer() {
  const { ownerUrl: serverUrl, stop } = await startThrowawayPostgres();
  try {
    const { password } = new URL(serverUrl);
    const databasePasswords = { superuser: password, owner: password, web: password };
    const secrets = { databasePasswords, nextAuthSecret: "", serverActionsEncryptionKey: "" };
    await ensureOwnerAndDatabase(serverUrl, secrets);
    await migrate(addressOf(serverUrl, OWNER_ROLE, DATABASE));
    await ensureWebRole(serverUrl, secrets);
    // A connection to the template would keep it from being copied.
    await withConnection(serverUrl, (client) => client.query(`alter database ${DATABASE} is_template true allow_connections false`));
    return { serverUrl, stop };
  } catch (error) {
    await stop();
    throw error;
  }
}

/**
 * Copies the migrated database of a server that {@link startMigratedServer} started.
 *
 * @param {string} serverUrl
 * @returns {Promise<DatabaseClone>}
 */
export async function cloneOn(serverUrl) {
  const name = `clone_${randomUUID().replaceAll("-", "")}`;
  const copy = `create database ${quoteName(name)} template ${DATABASE} owner ${OWNER_ROLE} strategy file_copy`;
  await withConnection(serverUrl, (client) => client.query(copy));
  return {
    ownerUrl: addressOf(serverUrl, OWNER_ROLE, name),
    appUrl: addressOf(serverUrl, WEB_ROLE, name),
    drop: async () => {
      await withConnection(serverUrl, (client) => client.query(`drop database if exists ${quoteName(name)} with (force)`));
    },
  };
}

/**
 * @param {string} serverUrl
 * @param {string} role
 * @param {string} database
 */
function addressOf(serverUrl, role, database) {
  const address = new URL(serverUrl);
  address.username = role;
  address.pathname = `/${database}`;
  return address.href;
}
