// @ts-check
import { spawn } from "node:child_process";
import process from "node:process";
import { PROJECT_FOLDER } from "../run-prisma.mjs";

/**
 * Runs a part of the measurement that is written in TypeScript in a process of its own, so that neither the heap nor
 * the compiled code of one part is another's.
 *
 * @param {string} script its path from the checkout
 * @param {(() => Promise<unknown>)[]} endings gets how to end it early
 * @param {Readonly<Record<string, string>>} [variables]
 * @returns {Promise<any>} what it printed, which is JSON
 */
export async function runPart(script, endings, variables = {}) {
  const child = spawn(process.execPath, ["--import", "tsx", script], {
    cwd: PROJECT_FOLDER,
    env: { ...process.env, NODE_ENV: "production", ...variables },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let output = "";
  let errors = "";
  child.stdout.on("data", (chunk) => (output += String(chunk)));
  child.stderr.on("data", (chunk) => (errors += String(chunk)));
  const ended = new Promise((resolve, reject) => {
    child.once("error", reject);
    child.once("close", resolve);
  });
  endings.push(async () => {
    if (child.exitCode === null && child.signalCode === null) child.kill("SIGTERM");
    await ended;
  });
  if ((await ended) !== 0) throw new Error(`${script} failed: ${errors.trim().split("\n").slice(0, 12).join("\n")}`);
  return JSON.parse(output);
}
