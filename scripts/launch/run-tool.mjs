// @ts-check
// Everything that this file imports needs Node's own modules only: packages may not be installed yet.
import { existsSync } from "node:fs";
import { noteCheckoutUse } from "./checkout-use.mjs";
import { prepareDataFolder } from "./data-folder.mjs";
import { runWithEnding } from "./ending.mjs";
import { installPackages } from "./install.mjs";
import { recover } from "./recovery.mjs";
import { claimFolder, describeRunning, findRunning } from "./running.mjs";
import { Refusal } from "./say.mjs";
import { openSecrets } from "./secrets.mjs";
import { readSettings } from "./settings.mjs";

/**
 * What a tool is given to work with.
 *
 * @typedef {object} Workplace
 * @property {import("./settings.mjs").Settings} settings
 * @property {import("./data-folder.mjs").DataFolder} folder
 * @property {import("./secrets.mjs").Secrets} secrets
 * @property {{ ownerUrl: string, appUrl: string, adminUrl: string }} database
 * @property {import("./database.mjs").Database | null} charge the same database when we are in charge of it
 * @property {AbortSignal} aborted
 */

/**
 * Runs a tool on the product's database: on the one that runs, or on one that is brought up for it and ended
 * after it.
 *
 * @param {object} tool
 * @param {"company" | "backup" | "restore"} tool.purpose
 * @param {boolean} tool.needsTables brings the tables up to date first, where no copy is running
 * @param {boolean} tool.needsData refuses where there is no database yet
 * @param {boolean} tool.needsCharge refuses while a copy is running
 * @param {(workplace: Workplace) => Promise<number>} tool.work answers the exit code
 */
export function runTool({ purpose, needsTables, needsData, needsCharge, work }) {
  return runWithEnding(async (ending) => {
    const settings = readSettings();
    const folder = prepareDataFolder(settings);
    if (needsData && settings.outside === null && !existsSync(folder.cluster)) {
      throw new Refusal(`There is no database in ${folder.path} yet.`);
    }
    const running = findRunning(folder);
    if (running !== null && (needsCharge || running.purpose !== "start")) throw new Refusal(describeRunning(running));
    const exitCode = await (running === null
      ? workInCharge({ settings, folder, purpose, needsTables, work, ending })
      : workBeside({ settings, folder, running, work, ending }));
    ending.begin({ sentence: "", exitCode, unexpected: false });
  });
}

/**
 * @param {object} request
 * @param {import("./settings.mjs").Settings} request.settings
 * @param {import("./data-folder.mjs").DataFolder} request.folder
 * @param {import("./running.mjs").RunningRecord} request.running
 * @param {(workplace: Workplace) => Promise<number>} request.work
 * @param {import("./ending.mjs").Ending} request.ending
 */
async function workBeside({ settings, folder, running, work, ending }) {
  const { secrets } = openSecrets(folder);
  if (!running.serving) throw new Refusal(describeRunning(running));
  const { findOpenDatabase } = await import("./database.mjs");
  const database = findOpenDatabase(folder, secrets, settings.outside);
  if (database === null) throw new Refusal(describeRunning(running));
  const { address } = running;
  return work({ settings: { ...settings, address }, folder, secrets, database, charge: null, aborted: ending.aborted });
}

/**
 * @param {object} request
 * @param {import("./settings.mjs").Settings} request.settings
 * @param {import("./data-folder.mjs").DataFolder} request.folder
 * @param {"company" | "backup" | "restore"} request.purpose
 * @param {boolean} request.needsTables
 * @param {(workplace: Workplace) => Promise<number>} request.work
 * @param {import("./ending.mjs").Ending} request.ending
 */
async function workInCharge({ settings, folder, purpose, needsTables, work, ending }) {
  const { aborted } = ending;
  const claim = claimFolder(folder, { purpose, address: settings.address });
  ending.later(() => claim.release());
  await recover(claim.previous);
  ending.later(noteCheckoutUse(settings.checkout, settings.address));
  const { secrets } = openSecrets(folder);
  await installPackages(settings.checkout, folder, aborted);
  const { loadMigrations, openDatabase } = await import("./database.mjs");
  const { discardCutOffDemonstration } = await import("./first-company.mjs");
  const { generateClientIfChanged } = await import("./build.mjs");
  const charge = await openDatabase({ settings, folder, secrets, purpose });
  ending.later(() => charge.close());
  aborted.throwIfAborted();
  if (needsTables) {
    await discardCutOffDemonstration(charge);
    const migrations = await loadMigrations(settings.checkout);
    await charge.migrate(migrations);
    await generateClientIfChanged(settings.checkout, migrations);
  }
  aborted.throwIfAborted();
  return work({ settings, folder, secrets, database: charge, charge, aborted });
}
