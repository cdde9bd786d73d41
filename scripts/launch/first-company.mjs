// @ts-check
import { join } from "node:path";
import process from "node:process";
import { runInTerminal, runToEnd } from "./child.mjs";
import { readValue, withConnection } from "./connection.mjs";
import { keepFile, readKeptFile } from "./keep-file.mjs";
import { emptyDatabase } from "./roles.mjs";
import { Refusal, say } from "./say.mjs";
import { rememberDemonstration } from "./secrets.mjs";
import { productEnvironment } from "./web-server.mjs";

/**
 * What a data folder remembers of its first start: that no demonstration was wanted.
 *
 * @typedef {{ demonstration?: "not wanted" }} FirstStart
 */

/**
 * What the database says about its companies; all false before it has tables.
 *
 * @param {string} adminUrl
 * @returns {Promise<{ hasCompany: boolean, hasOwnCompany: boolean, isSeeded: boolean }>} whether there is any
 *   company, one that is no demonstration, and a demonstration that was made to its end
 */
export async function readCompanies(adminUrl) {
  return withConnection(adminUrl, async (client) => {
    const has = async (/** @type {string} */ table, /** @type {string} */ condition) =>
      (await readValue(client, "select to_regclass($1) is not null", [table])) === true &&
      (await readValue(client, `select exists (select from ${table} where ${condition})`)) === true;
    return {
      hasCompany: await has("public.company", "true"),
      hasOwnCompany: await has("public.company", "not is_demonstration"),
      isSeeded: await has("public.installation", "demonstration_seeded_at is not null"),
    };
  });
}

/**
 * Starts over when the making of the demonstration was cut off. Nobody can have used what is there: the web
 * server starts only when the demonstration is whole. A company that is no demonstration is never touched.
 *
 * @param {{ ownerUrl: string, adminUrl: string }} database with us in charge of it
 */
export async function discardCutOffDemonstration({ ownerUrl, adminUrl }) {
  const { hasCompany, hasOwnCompany, isSeeded } = await readCompanies(adminUrl);
  if (!hasCompany || hasOwnCompany || isSeeded) return;
  say("The making of the demonstration was cut off: it begins anew.");
  await emptyDatabase(ownerUrl);
}

/**
 * Makes the demonstration on the first start, unless an empty installation is wanted.
 *
 * @param {object} request
 * @param {import("./settings.mjs").Settings} request.settings
 * @param {import("./data-folder.mjs").DataFolder} request.folder
 * @param {import("./secrets.mjs").Secrets} request.secrets
 * @param {import("./database.mjs").Database} request.database
 * @param {boolean} request.empty
 * @param {AbortSignal} request.aborted
 * @returns {Promise<{ needsLink: boolean, secrets: import("./secrets.mjs").Secrets }>} whether someone must be
 *   given the link that makes the first company
 */
export async function settleFirstCompany({ settings, folder, secrets, database, empty, aborted }) {
  const { hasCompany, isSeeded } = await readCompanies(database.adminUrl);
  if (hasCompany) {
    if (empty) {
      throw new Refusal(
        "--empty begins a new installation, and this one holds data already: start without it, " +
          "or name another folder with HALFPASS_DATA.",
      );
    }
    return { needsLink: false, secrets };
  }
  if (empty || isSeeded || readFirstStart(folder)?.demonstration === "not wanted") {
    keepFirstStart(folder, { demonstration: "not wanted" });
    return { needsLink: true, secrets };
  }
  return { needsLink: false, secrets: await makeDemonstration({ settings, folder, secrets, database, aborted }) };
}

/**
 * @param {Omit<Parameters<typeof settleFirstCompany>[0], "empty">} request
 * @returns {Promise<import("./secrets.mjs").Secrets>}
 */
async function makeDemonstration({ settings, folder, secrets, database, aborted }) {
  say("Making the demonstration company (on the first start only) …");
  const { DATABASE_OWNER_URL: _owner, ...environment } = process.env;
  const output = await runToEnd({
    title: "Making the demonstration",
    folder,
    log: "demonstration",
    args: ["--import", "tsx", join("prisma", "seed", "demo.ts")],
    cwd: settings.checkout,
    env: { ...environment, ...productEnvironment(settings, secrets), DATABASE_APP_URL: database.appUrl },
    aborted,
  });
  const changed = rememberDemonstration(folder, secrets, readSignIn(output));
  say("The demonstration company is there.");
  return changed;
}

/** @param {string} output whose last line is the sign-in as JSON */
function readSignIn(output) {
  try {
    const { email, password } = JSON.parse(output.trim().split("\n").at(-1) ?? "");
    if (typeof email === "string" && typeof password === "string") return { email, password };
  } catch {
    // Said below.
  }
  throw new Refusal("The demonstration was made without saying how to sign in to it.");
}

/**
 * Runs the company command in the terminal.
 *
 * @param {object} request
 * @param {import("./settings.mjs").Settings} request.settings
 * @param {import("./secrets.mjs").Secrets} request.secrets
 * @param {{ ownerUrl: string, appUrl: string }} request.database
 * @param {string[]} request.args
 * @returns {Promise<number>} its exit code
 */
export function runCompanyCommand({ settings, secrets, database, args }) {
  return runInTerminal({
    args: ["--import", "tsx", join("scripts", "company-command.ts"), ...args],
    cwd: settings.checkout,
    env: {
      ...process.env,
      ...productEnvironment(settings, secrets),
      PORT: String(settings.port),
      DATABASE_OWNER_URL: database.ownerUrl,
      DATABASE_APP_URL: database.appUrl,
    },
  });
}

/**
 * Forgets how the first start went, when what it made is replaced.
 *
 * @param {import("./data-folder.mjs").DataFolder} folder
 */
export function forgetFirstStart(folder) {
  keepFile(firstStartPath(folder), {});
}

/**
 * @param {import("./data-folder.mjs").DataFolder} folder
 * @returns {FirstStart | null | undefined}
 */
function readFirstStart(folder) {
  return readKeptFile(firstStartPath(folder));
}

/**
 * @param {import("./data-folder.mjs").DataFolder} folder
 * @param {FirstStart} content
 */
function keepFirstStart(folder, content) {
  keepFile(firstStartPath(folder), content);
}

/** @param {import("./data-folder.mjs").DataFolder} folder */
function firstStartPath(folder) {
  return join(folder.path, "first-start.json");
}
