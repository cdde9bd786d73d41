// Whether the setup of every test does what it is for: vitest is run on planted tests, with the project's own setup.
import { execFile } from "node:child_process";
import { connect } from "node:net";
import { join } from "node:path";
import { expect, test } from "vitest";
import { expectConsole } from "../support/console-fails";
import { projectFolder } from "./project-graph";

interface PlantedRun {
  readonly testResults: readonly { readonly assertionResults: readonly { readonly title: string; readonly status: string; readonly failureMessages: readonly string[] }[] }[];
}

function runPlanted(): Promise<PlantedRun> {
  const vitest = join(projectFolder, "node_modules/vitest/vitest.mjs");
  const config = join(projectFolder, "tests/architecture/planted/strictness/vitest.config.ts");
  return new Promise((resolve, reject) => {
    execFile(process.execPath, [vitest, "run", "--config", config, "--reporter=json"], { cwd: projectFolder }, (_failed, stdout, stderr) => {
      const start = stdout.indexOf("{");
      if (start < 0) reject(new Error(stderr));
      else resolve(JSON.parse(stdout.slice(start)) as PlantedRun);
    });
  });
}

test("console noise, deprecations and other machines fail a planted test, and nothing else does", async () => {
  const { testResults } = await runPlanted();
  const results = testResults.flatMap(({ assertionResults }) => assertionResults);
  expect(Object.fromEntries(results.map(({ title, status }) => [title, status]))).toEqual({
    "is quiet": "passed",
    "logs an error": "failed",
    "logs a warning": "failed",
    "expects its error": "passed",
    "expects an error that never comes": "failed",
    "uses something deprecated": "failed",
    "fetches from another machine": "failed",
    "connects to another machine": "failed",
  });
  expect(results.find(({ title }) => title === "logs an error")?.failureMessages.join()).toContain("the planted complaint");
});

test("an expected complaint passes", () => {
  expectConsole("warn", /^as announced 3$/);
  console.warn("as announced %d", 3);
});

test("the own machine can be reached", async () => {
  const refused = await new Promise<string>((resolve) => {
    connect(1, "127.0.0.1").once("error", (error) => resolve("code" in error ? String(error.code) : error.message));
  });
  expect(refused).toBe("ECONNREFUSED");
});
