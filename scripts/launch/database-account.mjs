// @ts-check
import { spawnSync } from "node:child_process";
import { existsSync, statSync } from "node:fs";
import process from "node:process";
import { Refusal } from "./say.mjs";

const ACCOUNT_NAME = "postgres";

/**
 * The system user that runs the database, as numbers.
 *
 * @typedef {{ readonly uid: number, readonly gid: number }} Account
 */

/**
 * Decides as whom the database runs. PostgreSQL refuses to run as root, so root lends it the user `postgres`,
 * which is made where the machine has none; anyone else runs it as themselves, which is answered as null.
 * A database that is there already goes on under the user who owns it.
 *
 * @param {string} clusterFolder
 * @returns {Account | null}
 */
export function chooseDatabaseAccount(clusterFolder) {
  const ownUid = process.getuid?.();
  const owner = existsSync(clusterFolder) ? statSync(clusterFolder) : null;
  if (ownUid !== 0) {
    if (owner !== null && ownUid !== undefined && owner.uid !== ownUid) {
      throw new Refusal(
        `The database in ${clusterFolder} belongs to another user of this machine (number ${owner.uid}): ` +
          "start Halfpass as whoever started it first, or choose another folder with HALFPASS_DATA.",
      );
    }
    return null;
  }
  if (owner !== null && owner.uid !== 0) return { uid: owner.uid, gid: owner.gid };
  return findAccount(ACCOUNT_NAME) ?? createAccount(ACCOUNT_NAME);
}

/**
 * Whether the database's user can get into a folder; true for everyone who runs it as themselves.
 *
 * @param {Account | null} account
 * @param {string} folder
 */
export function canEnter(account, folder) {
  if (account === null) return true;
  const script = 'cd "$1"';
  return spawnSync("/bin/sh", ["-c", script, "sh", folder], { ...account, cwd: "/", stdio: "ignore" }).status === 0;
}

/**
 * @param {string} name
 * @returns {Account | null}
 */
export function findAccount(name) {
  const [uid, gid] = ["-u", "-g"].map((which) => spawnSync("id", [which, name], { encoding: "utf8" }));
  if (uid?.status !== 0 || gid?.status !== 0) return null;
  return { uid: Number(uid.stdout), gid: Number(gid.stdout) };
}

/**
 * Makes a system user without a password, a home or a shell.
 *
 * @param {string} name
 * @returns {Account}
 */
export function createAccount(name) {
  /** @type {[string, string[]][]} */
  const ways = [
    ["useradd", ["--system", "--user-group", "--no-create-home", "--home-dir", "/nonexistent", "--shell", "/bin/false", name]],
    ["adduser", ["-S", "-D", "-H", "-s", "/bin/false", name]],
  ];
  for (const [command, args] of ways) {
    if (spawnSync(command, args, { stdio: "ignore" }).status !== 0) continue;
    const account = findAccount(name);
    if (account !== null) return account;
  }
  throw new Refusal(
    `PostgreSQL refuses to run as root, and the system user "${name}" could not be made: ` +
      "start Halfpass as an ordinary user.",
  );
}
