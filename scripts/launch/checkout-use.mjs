// @ts-check
import { mkdirSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { keepFile, readKeptFile } from "./keep-file.mjs";
import { identify, stillRuns } from "./process-identity.mjs";
import { Refusal } from "./say.mjs";

/**
 * Notes that this launcher works from this checkout. Two may do so at once with two data folders, as long as
 * neither installs or builds under the other.
 *
 * @param {string} checkout
 * @param {string} address
 * @returns {() => void} takes the note away
 */
export function noteCheckoutUse(checkout, address) {
  const folder = notesFolder(checkout);
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${process.pid}.json`);
  keepFile(path, { launcher: identify(process.pid), address });
  return () => rmSync(path, { force: true });
}

/**
 * Refuses to change what another copy is running on.
 *
 * @param {string} checkout
 * @param {string} change what would be done, such as "built anew"
 */
export function refuseWhileOthersUse(checkout, change) {
  for (const name of readdirSync(notesFolder(checkout))) {
    const path = join(notesFolder(checkout), name);
    const note = readKeptFile(path);
    if (!note || !stillRuns(note.launcher)) rmSync(path, { force: true });
    else if (note.launcher.pid !== process.pid) {
      throw new Refusal(`Halfpass has to be ${change}, and another copy runs from the same folder (${note.address}): end that first.`);
    }
  }
}

/**
 * Next keeps this folder when it builds.
 *
 * @param {string} checkout
 */
function notesFolder(checkout) {
  return join(checkout, ".next", "cache", "launchers");
}
