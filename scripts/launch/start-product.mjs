// @ts-check
// Everything that this file imports needs Node's own modules only: packages may not be installed yet.
import { parseArgs } from "node:util";
import process from "node:process";
import { noteCheckoutUse } from "./checkout-use.mjs";
import { prepareDataFolder } from "./data-folder.mjs";
import { runWithEnding } from "./ending.mjs";
import { installPackages } from "./install.mjs";
import { refuseTakenPort } from "./ports.mjs";
import { recover } from "./recovery.mjs";
import { claimFolder } from "./running.mjs";
import { Refusal } from "./say.mjs";
import { openSecrets } from "./secrets.mjs";
import { readSettings } from "./settings.mjs";

const USAGE = "npm start takes no options but --empty (no demonstration: you make your own company): npm start -- --empty";
const WRONG_USE = 2;

/**
 * `npm start`: brings the product up from whatever state it is in, serves until it is asked to end, and ends
 * everything that it has started.
 *
 * @param {string[]} [args]
 * @param {import("./web-server.mjs").Site} [site] what serves instead of the build
 */
export function startProduct(args = process.argv.slice(2), site = undefined) {
  return runWithEnding(async (ending) => {
    const options = readOptions(args);
    const settings = readSettings();
    const folder = prepareDataFolder(settings);
    const claim = claimFolder(folder, { purpose: "start", address: settings.address });
    ending.later((reason) =>
      reason.unexpected ? claim.update({ ended: reason.sentence, serving: false, web: null }) : claim.release(),
    );
    await recover(claim.previous);
    await refuseTakenPort(settings.port);
    ending.later(noteCheckoutUse(settings.checkout, settings.address));
    const { secrets } = openSecrets(folder);
    await installPackages(settings.checkout, folder, ending.aborted);
    // From here on packages are needed.
    const { serveProduct } = await import("./serve-product.mjs");
    await serveProduct({ settings, folder, claim, secrets, options, ending, ...(site === undefined ? {} : { site }) });
    await ending.begun;
  });
}

/**
 * @param {string[]} args
 * @returns {{ empty: boolean }}
 */
function readOptions(args) {
  try {
    const { values } = parseArgs({ args, options: { empty: { type: "boolean", default: false } } });
    return { empty: values.empty };
  } catch {
    throw new Refusal(USAGE, WRONG_USE);
  }
}
