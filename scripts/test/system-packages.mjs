// @ts-check
import { spawn, spawnSync } from "node:child_process";
import { accessSync, constants, statSync } from "node:fs";
import { delimiter, join } from "node:path";
import process from "node:process";

/** Where servers and their like are installed, which is not on everyone's path. */
const SYSTEM_FOLDERS = ["/usr/sbin", "/usr/local/sbin", "/opt/homebrew/bin"];

/**
 * The first of these programs on the path that runs: a file that only tells how to install the program does not count.
 *
 * @param {readonly string[]} names the most wanted first
 * @param {readonly string[]} [folders] where to look
 * @returns {string | undefined} its path
 */
export function findProgram(names, folders = [...(process.env.PATH ?? "").split(delimiter), ...SYSTEM_FOLDERS]) {
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find((path) => isExecutable(path) && runs(path));
}

/** @param {string} path */
function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/** @param {string} path */
export function runs(path) {
  return spawnSync(path, ["--version"], { stdio: "ignore", timeout: 20_000 }).status === 0;
}

/** Whether packages of the system can be installed here: by root, with Debian's package manager. */
export function mayInstall() {
  return process.getuid?.() === 0 && findProgram(["apt-get"]) !== undefined;
}

/**
 * Installs a Debian package.
 *
 * @param {string} name
 * @param {AbortSignal} aborted
 * @returns {Promise<string | undefined>} the last thing it said when it failed, undefined when it did not
 */
export async function installSystemPackage(name, aborted) {
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  // Lists that can't be renewed may still do.
  await run("apt-get", ["update", "-q"], env, aborted);
  return await run("apt-get", ["install", "-q", "-y", "--no-install-recommends", name], env, aborted);
}

/**
 * @param {string} program
 * @param {string[]} args
 * @param {NodeJS.ProcessEnv} env
 * @param {AbortSignal} signal
 * @returns {Promise<string | undefined>}
 */
function run(program, args, env, signal) {
  return new Promise((resolve) => {
    const child = spawn(program, args, { env, signal, stdio: ["ignore", "pipe", "pipe"] });
    let said = "";
    for (const stream of [child.stdout, child.stderr]) stream.on("data", (text) => (said = (said + String(text)).slice(-2000)));
    child.once("error", (error) => resolve(error.message));
    child.once("close", (code) => resolve(code === 0 ? undefined : (said.trim().split("\n").at(-1) ?? `exit code ${code}`)));
  });
}
