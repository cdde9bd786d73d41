// @ts-check
import { dirname, join, resolve } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { Refusal } from "./say.mjs";

const DEFAULT_PORT = 3210;

/**
 * What the person and the environment ask for.
 *
 * @typedef {object} Settings
 * @property {string} checkout the folder with package.json
 * @property {string} dataFolder where the data should lie; see data-folder.mjs for where it does
 * @property {number} port of the web server, from 1 to 65535
 * @property {string} address how people reach the product, without a slash at the end
 * @property {{ ownerUrl: string, appUrl: string } | null} outside a database server that is not ours, if any
 */

/**
 * Reads the settings from the environment.
 *
 * @param {NodeJS.ProcessEnv} [environment]
 * @returns {Settings}
 */
export function readSettings(environment = process.env) {
  const checkout = resolve(dirname(fileURLToPath(import.meta.url)), "..", "..");
  const port = readPort(environment.PORT);
  return {
    checkout,
    dataFolder: environment.HALFPASS_DATA ? resolve(environment.HALFPASS_DATA) : join(checkout, ".data"),
    port,
    address: readAddress(environment.HALFPASS_ADDRESS) ?? `http://localhost:${port}`,
    outside: readOutside(environment.DATABASE_OWNER_URL, environment.DATABASE_APP_URL),
  };
}

/** @param {string | undefined} text */
function readPort(text) {
  if (text === undefined || text === "") return DEFAULT_PORT;
  const port = Number(text);
  if (/^\d+$/.test(text) && port >= 1 && port <= 65535) return port;
  throw new Refusal(`PORT is "${text}", and it must be a whole number from 1 to 65535.`);
}

/** @param {string | undefined} text */
function readAddress(text) {
  if (text === undefined || text === "") return undefined;
  if (URL.canParse(text) && /^https?:/.test(text)) return text.replace(/\/+$/, "");
  throw new Refusal(`HALFPASS_ADDRESS is "${text}", and it must be an address such as https://office.example.com.`);
}

/**
 * @param {string | undefined} ownerUrl
 * @param {string | undefined} appUrl
 */
function readOutside(ownerUrl, appUrl) {
  if (!ownerUrl && !appUrl) return null;
  if (!ownerUrl || !appUrl) {
    const [missing, given] = ownerUrl
      ? ["DATABASE_APP_URL", "DATABASE_OWNER_URL"]
      : ["DATABASE_OWNER_URL", "DATABASE_APP_URL"];
    throw new Refusal(`${given} is set and ${missing} is not: set both to use a database server of your own, or neither.`);
  }
  for (const [name, url] of [["DATABASE_OWNER_URL", ownerUrl], ["DATABASE_APP_URL", appUrl]]) {
    if (!/^postgres(ql)?:\/\//.test(url ?? "")) {
      throw new Refusal(`${name} must begin with postgresql:// and name the user, the server and the database.`);
    }
  }
  return { ownerUrl, appUrl };
}
