// @ts-check
import { existsSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { pathToFileURL } from "node:url";
import { databaseUrl, openCluster } from "./cluster.mjs";
import { withConnection } from "./connection.mjs";
import { retakeLock, takeLock } from "./lock.mjs";
import { findPostgresBinaries } from "./postgres-binaries.mjs";
import { findPostmaster } from "./postmaster.mjs";
import { DATABASE, OWNER_ROLE, WEB_ROLE, admitOutsideAppRole, ensureOwnerAndDatabase, ensureWebRole, refuseUnsafeAppRole } from "./roles.mjs";
import { Refusal, say } from "./say.mjs";

const OUTSIDE_LOCK_ATTEMPTS = 120;

/**
 * A database that answers, and what a launcher may do with it.
 *
 * @typedef {object} Database
 * @property {string} ownerUrl
 * @property {string} appUrl the role that the web server uses
 * @property {string | null} superuserUrl of our own cluster's database `postgres`; null for an outside server
 * @property {string} adminUrl the strongest role we have, in the product's database
 * @property {(migrations: Migrations) => Promise<void>} migrate brings the schema and the app's role up to date
 * @property {(ended: (sentence: string) => void) => void} watch calls back when our own server ends by itself
 * @property {() => Promise<void>} settled lets other copies have an outside database; ours stays ours
 * @property {() => Promise<void>} close ends our own server
 */

/**
 * scripts/migrate.mjs.
 *
 * @typedef {object} Migrations
 * @property {(ownerUrl: string) => Promise<import("../migrate.mjs").MigrationState>} pendingMigrations
 * @property {(ownerUrl: string) => Promise<unknown>} migrate
 * @property {() => Promise<unknown>} generateClient
 */

/**
 * Opens the database that the settings name and takes charge of it, or refuses when someone else is in charge.
 *
 * @param {object} request
 * @param {import("./settings.mjs").Settings} request.settings
 * @param {import("./data-folder.mjs").DataFolder} request.folder
 * @param {import("./secrets.mjs").Secrets} request.secrets
 * @param {string} request.purpose
 * @returns {Promise<Database>}
 */
export async function openDatabase(request) {
  const { outside } = request.settings;
  return outside === null ? openOwn(request) : openOutside(outside, request.purpose);
}

/**
 * The database of a launcher that runs, for a second program that only wants to use it.
 *
 * @param {import("./data-folder.mjs").DataFolder} folder
 * @param {import("./secrets.mjs").Secrets} secrets
 * @param {{ ownerUrl: string, appUrl: string } | null} outside
 * @returns {{ ownerUrl: string, appUrl: string, adminUrl: string } | null} null when it is not up yet
 */
export function findOpenDatabase(folder, secrets, outside) {
  if (outside !== null) return { ...outside, adminUrl: outside.ownerUrl };
  if (!existsSync(folder.cluster)) return null;
  const postmaster = findPostmaster(folder.cluster);
  return postmaster === null ? null : ownUrls(secrets, postmaster.port);
}

/**
 * Loads the migrations of this checkout.
 *
 * @param {string} checkout
 * @returns {Promise<Migrations>}
 */
export function loadMigrations(checkout) {
  return import(pathToFileURL(join(checkout, "scripts", "migrate.mjs")).href);
}

/**
 * @param {import("./secrets.mjs").Secrets} secrets
 * @param {number} port
 */
function ownUrls(secrets, port) {
  const { superuser, owner, web } = secrets.databasePasswords;
  return {
    ownerUrl: databaseUrl(OWNER_ROLE, owner, port, DATABASE),
    appUrl: databaseUrl(WEB_ROLE, web, port, DATABASE),
    adminUrl: databaseUrl("postgres", superuser, port, DATABASE),
  };
}

/**
 * @param {Parameters<typeof openDatabase>[0]} request
 * @returns {Promise<Database>}
 */
async function openOwn({ settings, folder, secrets, purpose }) {
  const binaries = findPostgresBinaries(settings.checkout, folder);
  const cluster = await openCluster({ folder, binaries, secrets });
  const taken = await takeLock(cluster.superuserUrl, purpose);
  if (taken.lock === null) throw new Refusal(describeHolder(taken.holder));
  let { lock } = taken;
  if (cluster.adopted) say("The database of the last run was still running and is taken over.");
  if (cluster.recovered) say("The database had not been ended cleanly and has repaired itself; what was saved is there.");
  say(`The database is up (PostgreSQL ${binaries.major}, 127.0.0.1, port ${cluster.port}).`);
  const close = async () => {
    await lock.release();
    await cluster.stop();
  };
  try {
    await ensureOwnerAndDatabase(cluster.superuserUrl, secrets);
  } catch (error) {
    await close();
    throw error;
  }
  const urls = ownUrls(secrets, cluster.port);
  return {
    ...urls,
    superuserUrl: cluster.superuserUrl,
    async migrate(migrations) {
      await applyPending(migrations, urls.ownerUrl);
      await ensureWebRole(cluster.superuserUrl, secrets);
      await refuseUnsafeAppRole(urls.appUrl);
    },
    watch(ended) {
      const watchLock = () =>
        lock.onLost(() => {
          void retakeLock(cluster.superuserUrl, purpose, cluster.isRunning).then((retaken) => {
            if (retaken === null) return ended("The database ended unexpectedly.");
            say("A process of the database ended unexpectedly; the database has repaired itself and goes on.");
            lock = retaken;
            watchLock();
          });
        });
      watchLock();
    },
    settled: async () => undefined,
    close,
  };
}

/**
 * An outside server is kept by others, and several copies of the product may share it: they only take turns
 * in bringing its schema up to date.
 *
 * @param {{ ownerUrl: string, appUrl: string }} outside
 * @param {string} purpose
 * @returns {Promise<Database>}
 */
async function openOutside({ ownerUrl, appUrl }, purpose) {
  await reach("DATABASE_OWNER_URL", ownerUrl);
  let taken = await takeLock(ownerUrl, purpose);
  for (let attempt = 0; taken.lock === null && attempt < OUTSIDE_LOCK_ATTEMPTS; attempt += 1) {
    if (attempt === 0) say("Another copy of Halfpass is bringing this database up to date; waiting for it …");
    await pause(1000);
    taken = await takeLock(ownerUrl, purpose);
  }
  if (taken.lock === null) throw new Refusal(describeHolder(taken.holder));
  const { lock } = taken;
  say("The database server answers.");
  return {
    ownerUrl,
    appUrl,
    superuserUrl: null,
    adminUrl: ownerUrl,
    async migrate(migrations) {
      await applyPending(migrations, ownerUrl);
      await reach("DATABASE_APP_URL", appUrl);
      await admitOutsideAppRole(ownerUrl, appUrl);
      await refuseUnsafeAppRole(appUrl);
    },
    watch: () => undefined,
    settled: () => lock.release(),
    close: () => lock.release(),
  };
}

/**
 * @param {Migrations} migrations
 * @param {string} ownerUrl
 */
async function applyPending(migrations, ownerUrl) {
  const state = await migrations.pendingMigrations(ownerUrl);
  if (state.kind === "none") return;
  // What failed, was edited or is newer is refused by the migration itself, in a sentence.
  if (state.kind === "pending") {
    const { length } = state.names;
    say(`Bringing the database's tables up to date (${length === 1 ? "one step" : `${length} steps`}) …`);
  }
  await migrations.migrate(ownerUrl);
  say("The tables are up to date.");
}

/**
 * @param {string} name
 * @param {string} url
 */
async function reach(name, url) {
  try {
    await withConnection(url, async () => undefined);
  } catch (error) {
    const reason = error instanceof Error ? error.message || ("code" in error ? String(error.code) : error.name) : String(error);
    throw new Refusal(`The database that ${name} names can't be reached: ${reason}.`);
  }
}

/** @param {string} holder */
function describeHolder(holder) {
  return holder === "start"
    ? "Another copy of Halfpass is already running on this database."
    : `"npm run ${holder}" is working on this database: try again when it is done.`;
}
