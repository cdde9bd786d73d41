// @ts-check
import { isPostgresError, quoteLiteral, quoteName, readValue, withConnection } from "./connection.mjs";
import { Refusal } from "./say.mjs";

export const DATABASE = "halfpass";
export const OWNER_ROLE = "halfpass_owner";
export const WEB_ROLE = "halfpass_web";
/** Holds the rights on the tables; the migrations grant them. */
const APP_GROUP = "halfpass_app";

/**
 * Makes sure that our own cluster has the role that owns the database, and the database.
 *
 * @param {string} superuserUrl
 * @param {import("./secrets.mjs").Secrets} secrets
 */
export async function ensureOwnerAndDatabase(superuserUrl, secrets) {
  await withConnection(superuserUrl, async (client) => {
    await ensureLogin(client, OWNER_ROLE, "NOSUPERUSER CREATEDB CREATEROLE NOBYPASSRLS", secrets.databasePasswords.owner);
    const exists = await readValue(client, "select true from pg_database where datname = $1", [DATABASE]);
    if (exists !== true) await createDatabase(client);
  });
}

/**
 * Throws away everything in a database, which then is as one that was just made.
 *
 * @param {string} ownerUrl of whoever owns the database
 */
export async function emptyDatabase(ownerUrl) {
  await withConnection(ownerUrl, async (client) => {
    await client.query("begin");
    await resetSchema(client);
    await client.query("commit");
  });
}

/**
 * The part of {@link emptyDatabase} for a transaction that goes on.
 *
 * @param {import("pg").Client} client of whoever owns the database
 */
export async function resetSchema(client) {
  await client.query("drop schema if exists public cascade");
  await client.query("create schema public authorization pg_database_owner");
  await client.query("grant usage on schema public to public");
}

/** @param {import("pg").Client} client */
async function createDatabase(client) {
  await client.query(`create database ${DATABASE} owner ${OWNER_ROLE} template template0 encoding 'UTF8' locale 'C'`);
}

/**
 * Makes sure of the role that the web server of our own installation signs in with, after the migrations have
 * made the group that holds its rights.
 *
 * @param {string} superuserUrl
 * @param {import("./secrets.mjs").Secrets} secrets
 */
export async function ensureWebRole(superuserUrl, secrets) {
  await withConnection(superuserUrl, async (client) => {
    const exists = await readValue(client, "select true from pg_roles where rolname = $1", [APP_GROUP]);
    if (exists !== true) await client.query(`create role ${APP_GROUP} nologin`);
    await ensureLogin(client, WEB_ROLE, "NOSUPERUSER NOCREATEDB NOCREATEROLE NOBYPASSRLS", secrets.databasePasswords.web);
    await client.query(`grant ${APP_GROUP} to ${WEB_ROLE}`);
  });
}

/**
 * Lets the app's role of a database server that is not ours into the group that holds the rights, where it is
 * not in it yet and the owner may do that.
 *
 * @param {string} ownerUrl
 * @param {string} appUrl
 */
export async function admitOutsideAppRole(ownerUrl, appUrl) {
  const role = await withConnection(appUrl, (client) => readValue(client, "select current_user::text"));
  await withConnection(ownerUrl, async (client) => {
    const member = `select pg_has_role($1, oid, 'MEMBER') from pg_roles where rolname = $2`;
    if ((await readValue(client, member, [role, APP_GROUP])) !== false) return;
    const grant = `grant ${APP_GROUP} to ${quoteName(role)}`;
    try {
      await client.query(grant);
    } catch (error) {
      if (!isPostgresError(error, "42501")) throw error;
      throw new Refusal(`The role of DATABASE_APP_URL has no rights yet, and the owner may not give them: run "${grant}" as an administrator.`);
    }
  });
}

/**
 * Refuses a role for the web server that could see past the walls between companies.
 *
 * @param {string} appUrl
 */
export async function refuseUnsafeAppRole(appUrl) {
  await withConnection(appUrl, async (client) => {
    const { rows } = await client.query(
      `select r.rolname as name, r.rolsuper as superuser, r.rolbypassrls as bypasses,
              (select c.relname::text from pg_class c join pg_namespace n on n.oid = c.relnamespace
               where pg_has_role(r.oid, c.relowner, 'MEMBER') and c.relkind in ('r', 'p')
                 and n.nspname not in ('pg_catalog', 'information_schema') and n.nspname not like 'pg_toast%'
                 and n.nspname not like 'pg_temp%' limit 1) as owned
       from pg_roles r where r.rolname = current_user`,
    );
    const role = rows[0];
    const fault = role.superuser
      ? "is a superuser"
      : role.bypasses
        ? "has BYPASSRLS"
        : role.owned !== null
          ? `owns tables (${role.owned}, for one)`
          : null;
    if (fault === null) return;
    throw new Refusal(
      `The database role "${role.name}" that the web server would use ${fault}, so it could read every company's rows: ` +
        "give DATABASE_APP_URL a role that owns nothing and is no superuser.",
    );
  });
}

/**
 * @param {import("pg").Client} client
 * @param {string} role
 * @param {string} attributes
 * @param {string} password
 */
async function ensureLogin(client, role, attributes, password) {
  const exists = await readValue(client, "select true from pg_roles where rolname = $1", [role]);
  const verb = exists === true ? "alter" : "create";
  await client.query(`${verb} role ${role} login ${attributes} password ${quoteLiteral(password)}`);
}
