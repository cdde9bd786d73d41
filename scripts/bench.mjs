// @ts-check
/**
 * npm run bench                   measures and prints a table of ratios
 * npm run bench -- --json FILE    writes the rows to a file too: [{ name, value, unit, baseline, ratio }]
 *
 * Absolute figures belong to the machine they were taken on; the ratios are what can be compared. Everything is
 * thrown away in the end: a data folder in the temporary folder, a database and a web server on free ports of
 * 127.0.0.1, brought up by `npm start` itself with its demonstration. The load generator shares the machine's
 * cores with what it measures. The pages, from the one that costs least:
 *   /sign-in, signed out   drawn by React without asking the database: the empty page
 *   /health                one statement and no drawing
 *   /contents              one use case, which is one transaction: the least that a signed-in page can ask
 *   /settings              that and one statement more
 *   /crew                  two use cases, the second with lists of several tables
 *   /today and after it    pages of a company that has much of everything; their statements are counted once more in a
 *                          company that has a tenth, because a number of statements that grows with rows is a defect
 * Then visits completed through the use case, the computing core alone, and a packet of papers against the PDF library alone.
 */
import { spawnSync } from "node:child_process";
import { randomBytes } from "node:crypto";
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import process from "node:process";
import { parseArgs } from "node:util";
import { databaseVariables, startInstallation } from "./bench/installation.mjs";
import { countPages, loadPages } from "./bench/pages.mjs";
import { jsonOf, median, rowOf, tableOf } from "./bench/report.mjs";
import { runBundledPart, runPart } from "./bench/run-part.mjs";
import { folderMegabytes, packageMegabytes } from "./bench/size.mjs";
import { PROJECT_FOLDER } from "./run-prisma.mjs";
import { buildHere } from "./server/built-here.mjs";

const MOST_SECONDS = 900;
const BARE_STARTS = 7;

/** @type {(() => Promise<unknown>)[]} */
const endings = [];

/** @param {string} sentence */
function tell(sentence) {
  process.stderr.write(`${sentence} …\n`);
}

/** @returns {number} milliseconds */
function bareStartMilliseconds() {
  const measured = Array.from({ length: BARE_STARTS }, () => {
    const begin = performance.now();
    spawnSync(process.execPath, ["-e", "0"]);
    return performance.now() - begin;
  });
  return median(measured);
}

/**
 * Starts twice on one data folder and leaves the second start running.
 *
 * @param {string} data
 */
async function measureStarts(data) {
  tell("Starting on a new data folder");
  const bare = rowOf("node -e 0", bareStartMilliseconds() / 1000, "s");
  const first = await startInstallation(data, endings);
  await first.end();
  tell("Starting again with nothing changed");
  const second = await startInstallation(data, endings);
  const rows = [
    bare,
    rowOf("first start: new database, tables, demonstration", first.startSeconds, "s", bare),
    rowOf("second start: nothing changed", second.startSeconds, "s", bare),
  ];
  return { rows, installation: second };
}

/**
 * Fills the installation, completes visits on it, and puts load on its pages.
 *
 * @param {string} data
 * @param {import("./bench/installation.mjs").Installation} installation
 */
async function measureWork(data, installation) {
  tell("Filling companies and completing visits");
  const { rows, ...accounts } = await runPart("scripts/bench/busy-company.ts", endings, databaseVariables(data, installation));
  const all = { demonstration: installation.account, ...accounts };
  tell("Counting statements");
  const statements = await countPages(data, installation, all);
  tell("Loading pages in turns");
  return [...(await loadPages(installation, all)), ...statements, ...rows];
}

async function measureParts() {
  tell("Working out tickets");
  const core = await runBundledPart("scripts/bench/core.ts", endings);
  tell("Drawing papers");
  return [...core, ...(await runPart("scripts/bench/papers.ts", endings))];
}

/** @param {string} standalone */
function measureSizes(standalone) {
  tell("Weighing what is installed");
  const { product, all } = packageMegabytes(PROJECT_FOLDER);
  const packages = rowOf("packages that a start installs", product, "MB");
  const withTools = rowOf("packages with the test tools", all, "MB", packages);
  return [packages, ...(all > product ? [withTools] : []), rowOf("built web server", folderMegabytes(standalone), "MB", packages)];
}

async function build() {
  const folder = mkdtempSync(join(tmpdir(), "halfpass-bench-"));
  // The database runs as another user when we are root, and must get in.
  chmodSync(folder, 0o711);
  endings.push(async () => rmSync(folder, { recursive: true, force: true }));
  const key = randomBytes(32).toString("base64");
  const { standalone, leave } = await buildHere({ folder, serverActionsEncryptionKey: key, aborted: new AbortController().signal });
  leave();
  return { folder, standalone };
}

/** @param {{ folder: string, standalone: string }} built */
async function measure({ folder, standalone }) {
  const data = join(folder, "data");
  const { rows, installation } = await measureStarts(data);
  const work = await measureWork(data, installation);
  await installation.end();
  return [...rows, ...work, ...(await measureParts()), ...measureSizes(standalone)];
}

async function main() {
  const { values } = parseArgs({ options: { json: { type: "string" } } });
  try {
    // How long a build takes says nothing of the product, and where it was built already it takes no time.
    const built = await build();
    const late = new Promise((_resolve, reject) => {
      setTimeout(() => reject(new Error(`The measurement took more than ${MOST_SECONDS} seconds and was given up.`)), MOST_SECONDS * 1000).unref();
    });
    const rows = /** @type {import("./bench/report.mjs").Row[]} */ (await Promise.race([measure(built), late]));
    process.stdout.write(tableOf(rows));
    if (values.json !== undefined) writeFileSync(values.json, jsonOf(rows));
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
    process.exitCode = 1;
  } finally {
    for (const end of endings.reverse()) await end();
  }
}

for (const signal of /** @type {const} */ (["SIGINT", "SIGTERM"])) process.once(signal, () => process.exit(1));
await main();
// What was given up may still have something in hand.
process.exit();
