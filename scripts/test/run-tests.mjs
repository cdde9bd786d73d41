// @ts-check
// Everything that this file imports needs Node's own modules only: packages may not be installed yet.
import { existsSync, mkdirSync, readdirSync, rmSync } from "node:fs";
import { availableParallelism } from "node:os";
import { dirname, join, relative, resolve } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { noteCheckoutUse } from "../launch/checkout-use.mjs";
import { watchForEnd } from "../launch/ending.mjs";
import { installPackages } from "../launch/install.mjs";
import { asSentence, show } from "../launch/say.mjs";
import { runStages, selectStages } from "./run-stages.mjs";
import { describeFailure, describeResult } from "./show-result.mjs";
import { makeStages } from "./stages.mjs";
import { summarize } from "./summary.mjs";

const WRONG_USE = 2;
const INTERRUPTED = 130;
const RUN = "run-";

/**
 * Runs the stages asked for, or all; prints each with its time and result, and as the last line what they add
 * up to. Leaves the process with 0 only when everything passed and something did.
 *
 * @param {string[]} names
 */
export async function runTests(names) {
  const ending = watchForEnd();
  failUnlessLeft();
  // Something that breaks outside of every stage must fail the run and still let everything be put away.
  for (const event of ["uncaughtException", "unhandledRejection"]) {
    process.on(event, (error) => ending.begin({ sentence: asSentence(error).sentence, exitCode: 1, unexpected: true }));
  }
  const place = preparePlace(ending);
  const stages = selectStages(makeStages(place), names);
  if ("unknown" in stages) {
    const known = makeStages(place).filter(({ isPreparation }) => !isPreparation).map(({ name }) => name);
    show(`There is no stage "${stages.unknown}". The stages are: ${known.join(", ")}.`);
    return leave(ending, { line: "0 passed, 1 failed", exitCode: WRONG_USE });
  }
  /** @type {import("./summary.mjs").Count[]} */
  const counts = [];
  /** @type {import("./run-stages.mjs").StageResult[]} */
  const failures = [];
  try {
    await installPackages(place.checkout, place.folder, ending.aborted, { withDevelopment: true });
    await runStages(stages, {
      slots: Math.max(2, availableParallelism()),
      now: () => performance.now(),
      aborted: ending.aborted,
      onResult: (result) => {
        counts.push(result.outcome);
        if (ending.aborted.aborted) return;
        if (result.outcome.failed > 0) failures.push(result);
        show(describeResult(result));
      },
    });
  } catch (error) {
    show(asSentence(error).sentence);
    counts.push({ passed: 0, failed: 1, complaints: [] });
  }
  for (const failure of failures) show(describeFailure(failure));
  if (failures.length > 0) show(`\nThe logs are in ${relative(process.cwd(), place.folder.logs)}.`);
  if (ending.aborted.aborted) counts.push({ passed: 0, failed: 1, complaints: [] });
  return leave(ending, summarize(counts));
}

/**
 * Makes the folder that a run works in. It stays for whoever wants to read its logs, until the next run.
 *
 * @param {import("../launch/ending.mjs").Ending} ending
 * @returns {import("./run-program.mjs").Place}
 */
function preparePlace(ending) {
  const checkout = resolve(dirname(fileURLToPath(import.meta.url)), "..", "..");
  const artifacts = join(checkout, ".artifacts");
  removeFormerRuns(artifacts);
  const path = join(artifacts, `${RUN}${process.pid}`);
  const logs = join(path, "logs");
  const reports = join(path, "reports");
  for (const folder of [logs, reports]) mkdirSync(folder, { recursive: true });
  ending.later(noteCheckoutUse(checkout, "npm test"));
  const folder = { path, cluster: "", logs, account: null };
  return { checkout, artifacts, reports, folder, ending, environment: {} };
}

/** @param {string} artifacts */
function removeFormerRuns(artifacts) {
  const names = existsSync(artifacts) ? readdirSync(artifacts).filter((name) => name.startsWith(RUN)) : [];
  for (const name of names) {
    // Another run may be going on in this checkout, and keeps its folder.
    if (!isRunning(Number(name.slice(RUN.length)))) rmSync(join(artifacts, name), { recursive: true, force: true });
  }
}

/** @param {number} pid */
function isRunning(pid) {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}

let hasLeft = false;

/** A process that has nothing left to wait for ends with success, even in the middle: here it must not. */
function failUnlessLeft() {
  process.once("exit", () => {
    if (hasLeft) return;
    show("The run stopped in the middle.\n0 passed, 1 failed");
    process.exitCode = 1;
  });
}

/**
 * Puts everything away, prints the last line and ends the process.
 *
 * @param {import("../launch/ending.mjs").Ending} ending
 * @param {{ line: string, exitCode: number }} summary
 */
async function leave(ending, { line, exitCode }) {
  const asked = await ending.finish();
  hasLeft = true;
  show(line);
  // Whatever is still written to a pipe gets through before the process goes.
  process.stdout.write("", () => process.exit(asked === INTERRUPTED ? INTERRUPTED : exitCode));
}
