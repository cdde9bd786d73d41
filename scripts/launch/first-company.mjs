// @ts-check
import { join } from "node:path";
import process from "node:process";
import { runInTerminal, runToEnd } from "./child.mjs";
import { readValue, withConnection } from "./connection.mjs";
import { keepFile, readKeptFile } from "./keep-file.mjs";
import { recreateDatabase } from "./roles.mjs";
import { Refusal, say } from "./say.mjs";
import { rememberDemonstration } from "./secrets.mjs";
import { productEnvironment } from "./web-server.mjs";

/**
 * How the first start of a data folder went.
 *
 * @typedef {{ demonstration: "begun" | "made" | "not wanted" }} FirstStart
 */

/**
 * Whether there is a company, and whether the demonstration has been made; both false before the tables are.
 *
 * @param {string} adminUrl
 * @returns {Promise<{ hasCompany: boolean, isSeeded: boolean }>}
 */
export async function readCompanies(adminUrl) {
  return withConnection(adminUrl, async (client) => {
    const has = async (/** @type {string} */ table, /** @type {string} */ query) =>
      (await readValue(client, "select to_regclass($1) is not null", [table])) === true && (await readValue(client, query)) === true;
    return {
      hasCompany: await has("public.company", "select exists (select from public.company)"),
      isSeeded: await has(
        "public.installation",
        "select exists (select from public.installation where demonstration_seeded_at is not null)",
      ),
    };
  });
}

/**
 * Starts over when the making of the demonstration was cut off. Nobody can have used what is there: the web
 * server starts only when the demonstration is whole.
 *
 * @param {import("./data-folder.mjs").DataFolder} folder
 * @param {import("./database.mjs").Database} database
 */
export async function discardCutOffDemonstration(folder, database) {
  if (readFirstStart(folder)?.demonstration !== "begun") return;
  const { hasCompany, isSeeded } = await readCompanies(database.adminUrl);
  if (hasCompany && !isSeeded) {
    if (database.superuserUrl === null) {
      throw new Refusal("The making of the demonstration was cut off and has left half of it behind: empty the database of DATABASE_OWNER_URL and start again.");
    }
    say("The making of the demonstration was cut off: it begins anew.");
    await recreateDatabase(database.superuserUrl);
  }
  forgetFirstStart(folder);
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
  keepFirstStart(folder, { demonstration: "begun" });
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
  keepFirstStart(folder, { demonstration: "made" });
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
