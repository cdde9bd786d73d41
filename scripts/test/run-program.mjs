// @ts-check
import process from "node:process";
import { startChild } from "../launch/child.mjs";

/**
 * Where a run works and what its preparations have found.
 *
 * @typedef {object} Place
 * @property {string} checkout
 * @property {string} artifacts what people may want to look at after the run, such as the browser's traces
 * @property {string} reports what the runners write for us to count
 * @property {import("../launch/data-folder.mjs").DataFolder} folder this run's own, with its logs
 * @property {import("../launch/ending.mjs").Ending} ending
 * @property {Record<string, string>} environment what preparations have found, for the stages that need it
 */

/**
 * Runs a Node program to its end, with its output in a log of the stage's name.
 *
 * @param {Place} place
 * @param {string} name
 * @param {string[]} args
 * @param {Record<string, string>} [env] beyond our own and what preparations have found
 * @returns {Promise<{ exitCode: number | null, output: string }>}
 */
export async function runProgram({ checkout, folder, ending, environment }, name, args, env = {}) {
  ending.aborted.throwIfAborted();
  const child = startChild({
    folder, log: name, args, cwd: checkout,
    env: { ...withoutColors(process.env), NEXT_TELEMETRY_DISABLED: "1", ...environment, ...env },
  });
  const end = () => void child.end();
  ending.aborted.addEventListener("abort", end, { once: true });
  const { code } = await child.ended;
  ending.aborted.removeEventListener("abort", end);
  // What it has started and left behind goes with it.
  await child.end();
  return { exitCode: code, output: child.output() };
}

/** @param {NodeJS.ProcessEnv} environment @returns {NodeJS.ProcessEnv} */
function withoutColors({ FORCE_COLOR: _colors, ...environment }) {
  return { ...environment, NO_COLOR: "1" };
}
