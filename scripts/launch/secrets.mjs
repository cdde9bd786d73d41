// @ts-check
import { randomBytes } from "node:crypto";
import { chmodSync, existsSync } from "node:fs";
import { join } from "node:path";
import { keepFile, readKeptFile } from "./keep-file.mjs";
import { Refusal, say } from "./say.mjs";

/**
 * What must stay the same from start to start and must not be read by others. Lies beside the database and
 * never in a backup.
 *
 * @typedef {object} Secrets
 * @property {{ superuser: string, owner: string, web: string }} databasePasswords
 * @property {string} nextAuthSecret signs the sessions
 * @property {string} serverActionsEncryptionKey 32 bytes as base64; keeps a form that was open during an update valid
 * @property {{ email: string, password: string }} [demonstration] the sign-in that the demonstration was made with
 */

/**
 * Reads the secrets and makes them on the first start. `renewed` says that a database is there whose
 * passwords were in a file that is gone.
 *
 * @param {import("./data-folder.mjs").DataFolder} folder
 * @returns {{ secrets: Secrets, renewed: boolean }}
 */
export function openSecrets(folder) {
  const path = join(folder.path, "secrets.json");
  const kept = readKeptFile(path);
  if (kept === undefined) {
    throw new Refusal(`${path} can't be read as JSON: put a good copy back, or delete it to have new secrets made.`);
  }
  if (kept !== null) {
    chmodSync(path, 0o600);
    return { secrets: kept, renewed: false };
  }
  /** @type {Secrets} */
  const secrets = {
    databasePasswords: { superuser: makePassword(), owner: makePassword(), web: makePassword() },
    nextAuthSecret: randomBytes(32).toString("base64"),
    serverActionsEncryptionKey: randomBytes(32).toString("base64"),
  };
  keepFile(path, secrets);
  const renewed = existsSync(folder.cluster);
  if (renewed) say(`${path} was missing and is made anew: everyone has to sign in again.`);
  return { secrets, renewed };
}

/**
 * Remembers the sign-in that the demonstration was made with, to print it again at later starts.
 *
 * @param {import("./data-folder.mjs").DataFolder} folder
 * @param {Secrets} secrets
 * @param {{ email: string, password: string } | undefined} demonstration
 * @returns {Secrets}
 */
export function rememberDemonstration(folder, secrets, demonstration) {
  const { demonstration: _forgotten, ...rest } = secrets;
  const changed = demonstration === undefined ? rest : { ...rest, demonstration };
  keepFile(join(folder.path, "secrets.json"), changed);
  return changed;
}

function makePassword() {
  return randomBytes(24).toString("base64url");
}
