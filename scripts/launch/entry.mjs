// @ts-check
// Read by whatever Node the machine has, so the syntax stays that of 2017, here and in every file that calls this.
// They import nothing else before the version is known to be new enough.
import { refuseOldNode } from "./node-version.mjs";

/**
 * Runs a program when this Node is new enough. Else says which one is needed, and the process ends with code 1.
 *
 * @param {() => unknown} run imports the program and runs it
 * @returns {boolean} whether it was run
 */
export function runOnNewNode(run) {
  const tooOld = refuseOldNode(process.versions.node);
  if (tooOld) {
    process.stderr.write(tooOld + "\n");
    process.exitCode = 1;
    return false;
  }
  run();
  return true;
}

/**
 * The same for a command line tool: what it throws is said in its own words, and the process ends with code 1.
 *
 * @param {() => Promise<unknown>} run imports the tool and runs it
 */
export function runCommand(run) {
  runOnNewNode(function () {
    run().catch(function (error) {
      process.stderr.write(error.message + "\n");
      process.exitCode = 1;
    });
  });
}
