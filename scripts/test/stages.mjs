// @ts-check
// The stages of `npm test` as a table: what each needs, and how it runs. Nothing is imported here that needs packages
// before the stage that uses it runs.
import { randomBytes } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { runProgram } from "./run-program.mjs";
import { countCheck, countPlaywright, countVitest } from "./summary.mjs";

/** @typedef {import("./run-program.mjs").Place} Place */

/** Time zones for the tests of the domain: the demonstration's own, behind UTC, and one a day ahead, where other mistakes show. */
const TIME_ZONES = { chicago: "America/Chicago", apia: "Pacific/Apia" };

/**
 * All stages, in the order in which they would best run.
 *
 * @param {Place} place
 * @returns {import("./run-stages.mjs").Stage[]}
 */
export function makeStages(place) {
  return [...preparations(place), ...checksAndTests(place)];
}

/**
 * @param {Place} place
 * @returns {import("./run-stages.mjs").Stage[]}
 */
function preparations(place) {
  /** @type {(name: string, needs: string[], prepare: () => Promise<string>) => import("./run-stages.mjs").Stage} */
  const prepare = (name, needs, work) => ({
    name, needs, weight: 1, isPreparation: true,
    run: async () => ({ passed: 0, failed: 0, complaints: [], note: await work() }),
  });
  return [
    prepare("prisma-client", [], async () => {
      const { generateClient } = await import("../migrate.mjs");
      return (await generateClient()) ? "generated" : "up to date";
    }),
    prepare("database", [], async () => {
      const { startMigratedServer } = await import("../../tests/support/migrated-server.mjs");
      const { serverUrl, stop } = await startMigratedServer();
      place.ending.later(stop);
      place.environment.HALFPASS_TEST_SERVER = serverUrl;
      return "a throwaway PostgreSQL, migrated";
    }),
    prepare("find-pooler", [], async () => {
      const { findPooler } = await import("./pooler.mjs");
      const { program, sentence } = await findPooler(place.ending.aborted);
      if (program !== undefined) place.environment.HALFPASS_PGBOUNCER = program;
      return sentence;
    }),
    // After the pooler, because the system's package manager serves one at a time.
    prepare("find-browser", ["find-pooler"], async () => {
      const { findBrowser } = await import("./browser.mjs");
      const { program, sentence } = await findBrowser(place);
      place.environment.HALFPASS_BROWSER = program;
      return sentence;
    }),
  ];
}

/**
 * @param {Place} place
 * @returns {import("./run-stages.mjs").Stage[]}
 */
function checksAndTests(place) {
  const tsc = ["node_modules/typescript/bin/tsc", "--noEmit", "--pretty", "false", "-p"];
  const eslint = ["node_modules/eslint/bin/eslint.js", "-c", "scripts/eslint.config.mjs", "--max-warnings", "0", "."];
  // The build empties the folder with the routes' types, so what reads them waits for its end.
  const afterBuild = { needs: ["route-types"], after: ["build"] };
  return [
    { name: "build", weight: 1, needs: ["prisma-client"], run: () => build(place) },
    ...Object.entries(TIME_ZONES).map(([name, timeZone]) =>
      vitest(place, { name: `domain-${name}`, project: "domain", env: { TZ: timeZone }, needs: [] }),
    ),
    vitest(place, { name: "ui", project: "ui", needs: [] }),
    vitest(place, { name: "application", project: "application", needs: ["prisma-client", "database", "find-pooler"], weight: 2 }),
    {
      name: "route-types", weight: 1, isPreparation: true, needs: ["prisma-client"], after: ["build"],
      run: () => check(place, "route-types", ["node_modules/next/dist/bin/next", "typegen"]),
    },
    { name: "types", weight: 1, ...afterBuild, run: () => check(place, "types", [...tsc, "."]) },
    { name: "types-domain", weight: 1, needs: [], run: () => check(place, "types-domain", [...tsc, "lib/domain"]) },
    { name: "types-refused", weight: 1, needs: [], run: () => check(place, "types-refused", [...tsc, "tests/types"]) },
    { name: "lint", weight: 1, ...afterBuild, run: () => check(place, "lint", eslint) },
    vitest(place, { name: "house", project: "house", ...afterBuild }),
    { name: "browser", weight: 2, needs: ["build", "database", "find-browser"], run: () => browse(place) },
    vitest(place, { name: "launcher", project: "launcher", needs: ["build", "prisma-client"], after: ["types", "lint", "browser"], weight: 2 }),
  ];
}

/**
 * @param {Place} place
 * @param {string} name
 * @param {string[]} args
 */
async function check(place, name, args) {
  const { exitCode, output } = await runProgram(place, name, args);
  return { ...countCheck(exitCode), output };
}

/**
 * @param {Place} place
 * @param {{ name: string, project: string, needs: string[], after?: string[], weight?: number, env?: Record<string, string> }} stage
 * @returns {import("./run-stages.mjs").Stage}
 */
function vitest(place, { name, project, needs, after = [], weight = 1, env = {} }) {
  const run = async () => {
    const report = join(place.reports, `${name}.json`);
    const args = [
      ...["node_modules/vitest/vitest.mjs", "run", "--config", "tests/vitest.config.ts", "--project", project],
      ...["--reporter=default", "--reporter=json", `--outputFile.json=${report}`, `--maxWorkers=${weight}`],
    ];
    const { exitCode, output } = await runProgram(place, name, args, env);
    return { ...countVitest(readReport(report), exitCode), output };
  };
  return { name, weight, needs, after, run };
}

/** @param {Place} place */
async function build(place) {
  const { buildIfChanged } = await import("../launch/build.mjs");
  const databasePasswords = { superuser: "", owner: "", web: "" };
  const secrets = { databasePasswords, nextAuthSecret: "", serverActionsEncryptionKey: randomBytes(32).toString("base64") };
  await buildIfChanged({ checkout: place.checkout, folder: place.folder, secrets, aborted: place.ending.aborted });
  return countCheck(0);
}

/** @param {Place} place */
async function browse(place) {
  const report = join(place.reports, "browser.json");
  const args = ["node_modules/@playwright/test/cli.js", "test", "--config", "tests/e2e/playwright.config.ts"];
  const env = { PLAYWRIGHT_JSON_OUTPUT_FILE: report, HALFPASS_ARTIFACTS: place.artifacts };
  const { exitCode, output } = await runProgram(place, "browser", args, env);
  return { ...countPlaywright(readReport(report), exitCode), output };
}

/** @param {string} path @returns {unknown} undefined when it is missing or broken */
function readReport(path) {
  if (!existsSync(path)) return undefined;
  try {
    return JSON.parse(readFileSync(path, "utf8"));
  } catch {
    return undefined;
  }
}
