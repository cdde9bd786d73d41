// @ts-check
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import process from "node:process";
import { buildSync } from "esbuild";
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
  return run(["--import", "tsx", script], endings, variables);
}

/**
 * The same for a part that needs no package: bundled first, as the built server is. Read file by file by tsx, each
 * function would be given its name by a call whenever it is made, which a core of many small functions feels.
 *
 * @param {string} script
 * @param {(() => Promise<unknown>)[]} endings
 * @returns {Promise<any>}
 */
export async function runBundledPart(script, endings) {
  const folder = mkdtempSync(join(tmpdir(), "halfpass-bench-"));
  try {
    const outfile = join(folder, "part.mjs");
    buildSync({ absWorkingDir: PROJECT_FOLDER, entryPoints: [script], outfile, bundle: true, platform: "node", format: "esm", target: "node20", logLevel: "error" });
    return await run([outfile], endings, {});
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/**
 * @param {readonly string[]} how what Node is given
 * @param {(() => Promise<unknown>)[]} endings
 * @param {Readonly<Record<string, string>>} variables
 * @returns {Promise<any>}
 */
async function run(how, endings, variables) {
  const child = spawn(process.execPath, how, {
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
  if ((await ended) !== 0) throw new Error(`${how.join(" ")} failed: ${errors.trim().split("\n").slice(0, 12).join("\n")}`);
  return JSON.parse(output);
}
