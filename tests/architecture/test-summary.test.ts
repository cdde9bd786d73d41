// The test command is believed, so it is tested: nothing that did not run, did not end well or did not report may pass.
import { describe, expect, test } from "vitest";
import { runStages, selectStages, type Stage, type StageResult } from "../../scripts/test/run-stages.mjs";
import { describeFailure, describeResult } from "../../scripts/test/show-result.mjs";
import { countCheck, countPlaywright, countVitest, summarize } from "../../scripts/test/summary.mjs";

const tests = (...statuses: readonly string[]) => statuses.map((status) => ({ status }));
const vitestFile = (status: string, ...statuses: readonly string[]) => ({ status, assertionResults: tests(...statuses) });

describe("Vitest's report", () => {
  test.each([
    ["all passed", [vitestFile("passed", "passed", "passed")], 0, { passed: 2, failed: 0 }],
    ["one failed", [vitestFile("failed", "passed", "failed")], 1, { passed: 1, failed: 1 }],
    ["a skipped, a postponed and a pending test", [vitestFile("passed", "passed", "skipped", "todo", "pending")], 0, { passed: 1, failed: 3 }],
    ["a file that did not load", [vitestFile("passed", "passed"), vitestFile("failed")], 1, { passed: 1, failed: 1 }],
    ["a file whose setup broke after its tests", [vitestFile("failed", "passed")], 1, { passed: 1, failed: 1 }],
    ["no test at all", [], 0, { passed: 0, failed: 1 }],
    ["all passed and a bad end", [vitestFile("passed", "passed")], 1, { passed: 1, failed: 1 }],
    ["all passed and ended by a signal", [vitestFile("passed", "passed")], null, { passed: 1, failed: 1 }],
  ])("%s", (_what, testResults, exitCode, count) => {
    expect(countVitest({ testResults }, exitCode)).toMatchObject(count);
  });

  test.each([undefined, null, "", {}, { testResults: "none" }])("that is none is a failure: %j", (report) => {
    expect(countVitest(report, 0)).toMatchObject({ passed: 0, failed: 1 });
  });

  test("says what its output does not: skipped tests, no tests, a bad end", () => {
    expect(countVitest({ testResults: [vitestFile("passed", "skipped")] }, 0).complaints).toEqual([
      "1 tests were skipped, and a skipped test is a failed one.",
    ]);
    expect(countVitest({ testResults: [] }, 1).complaints).toEqual(["No test ran."]);
    expect(countVitest({ testResults: [vitestFile("passed", "passed")] }, 7).complaints[0]).toContain("ended with 7");
  });
});

describe("Playwright's report", () => {
  const stats = { expected: 4, unexpected: 0, flaky: 0, skipped: 0 };
  test.each([
    ["all passed", { stats, errors: [] }, 0, { passed: 4, failed: 0 }],
    ["one of each", { stats: { expected: 4, unexpected: 1, flaky: 1, skipped: 1 }, errors: [] }, 1, { passed: 4, failed: 3 }],
    ["an error outside of any test", { stats, errors: [{}] }, 1, { passed: 4, failed: 1 }],
    ["no test at all", { stats: { ...stats, expected: 0 }, errors: [] }, 0, { passed: 0, failed: 1 }],
    ["all passed and a bad end", { stats, errors: [] }, 1, { passed: 4, failed: 1 }],
    ["no report", undefined, 0, { passed: 0, failed: 1 }],
    ["half a report", { stats }, 0, { passed: 0, failed: 1 }],
  ])("%s", (_what, report, exitCode, count) => {
    expect(countPlaywright(report, exitCode)).toMatchObject(count);
  });
});

test.each([[0, 1, 0], [1, 0, 1], [null, 0, 1]])("a check that ends with %s counts %i passed, %i failed", (exitCode, passed, failed) => {
  expect(countCheck(exitCode)).toMatchObject({ passed, failed });
});

test.each([
  [[{ passed: 2, failed: 0 }, { passed: 3, failed: 0 }], "5 passed, 0 failed", 0],
  [[{ passed: 2, failed: 0 }, { passed: 3, failed: 1 }], "5 passed, 1 failed", 1],
  [[{ passed: 0, failed: 0 }], "0 passed, 0 failed", 1],
  [[], "0 passed, 0 failed", 1],
])("%j add up to %s", (counts, line, exitCode) => {
  expect(summarize(counts)).toEqual({ line, exitCode });
});

/** A run of planted stages with a clock that counts calls; the names of those that began, in that order. */
async function runPlanted(plants: readonly (Partial<Stage> & { readonly name: string })[], aborted = new AbortController().signal) {
  const begun: string[] = [];
  const results: StageResult[] = [];
  let running = 0;
  let most = 0;
  const stages = plants.map((plant): Stage => {
    const { run = () => Promise.resolve({ passed: 1, failed: 0, complaints: [] }) } = plant;
    const observed = async () => {
      begun.push(plant.name);
      running += plant.weight ?? 1;
      most = Math.max(most, running);
      try {
        return await run();
      } finally {
        running -= plant.weight ?? 1;
      }
    };
    return { weight: 1, needs: [], ...plant, run: observed };
  });
  let tick = 0;
  await runStages(stages, { slots: 2, aborted, now: () => (tick += 500), onResult: (result) => results.push(result) });
  return { begun, results, most, summary: summarize(results.map(({ outcome }) => outcome)) };
}

const fails = () => Promise.resolve({ passed: 3, failed: 1, complaints: ["A reason."], output: "what the runner said" });
const breaks = () => Promise.reject(new Error("planted"));

describe("a run of stages", () => {
  test("goes on after a stage that fails or breaks, and does not run what needs it", async () => {
    const { begun, results, summary } = await runPlanted([
      { name: "fails", run: fails },
      { name: "breaks", run: breaks },
      { name: "needs-failed", needs: ["fails"] },
      { name: "needs-broken", needs: ["needs-failed", "breaks"] },
      { name: "after-failed", needs: [], after: ["fails", "breaks"] },
      { name: "independent" },
    ]);
    expect(begun).toEqual(["fails", "breaks", "after-failed", "independent"]);
    expect(summary).toEqual({ line: "5 passed, 4 failed", exitCode: 1 });
    const said = results.filter(({ outcome }) => outcome.failed > 0).map(describeFailure).join("\n");
    expect(said).toContain("--- fails failed ---\nwhat the runner said\nA reason.");
    expect(said).toContain("Error: planted");
    expect(said).toContain("--- needs-failed failed ---\n\nNot run: it needs fails, which failed.");
  });

  test("does not count what only prepares, unless it fails", async () => {
    const prepares = () => Promise.resolve({ passed: 9, failed: 0, complaints: [] });
    expect((await runPlanted([{ name: "p", isPreparation: true, run: prepares }])).summary.line).toBe("0 passed, 0 failed");
    expect((await runPlanted([{ name: "p", isPreparation: true, run: breaks }, { name: "s", needs: ["p"] }])).summary.line).toBe("0 passed, 2 failed");
  });

  test("keeps to its slots, and lets a stage that is heavier than all of them run alone", async () => {
    const slowly = () => new Promise<{ passed: number; failed: number; complaints: string[] }>((resolve) => setImmediate(() => resolve({ passed: 1, failed: 0, complaints: [] })));
    const light = ["a", "b", "c", "d", "e"].map((name) => ({ name, run: slowly }));
    expect((await runPlanted(light)).most).toBe(2);
    const { most, summary } = await runPlanted([{ name: "heavy", weight: 3, run: slowly }, ...light]);
    expect(most).toBe(3);
    expect(summary.line).toBe("6 passed, 0 failed");
  });

  test("that is ended begins nothing more and has failed", async () => {
    const controller = new AbortController();
    const ends = () => {
      controller.abort();
      return Promise.resolve({ passed: 1, failed: 0, complaints: [] });
    };
    const { begun, summary } = await runPlanted([{ name: "first", weight: 2, run: ends }, { name: "second" }], controller.signal);
    expect(begun).toEqual(["first"]);
    expect(summary.line).toBe("1 passed, 1 failed");
  });

  test("whose stages wait for each other says so", async () => {
    await expect(runPlanted([{ name: "a", needs: ["b"] }, { name: "b", after: ["a"] }])).rejects.toThrow("wait for each other: a, b");
  });

  test("shows name, result, time and numbers of each stage in a line", async () => {
    const { results } = await runPlanted([{ name: "lint", run: fails }]);
    expect(results.map(describeResult)).toEqual(["FAILED  lint                 0.5 s  3 passed, 1 failed"]);
  });
});

describe("choosing stages", () => {
  const stage = (name: string, needs: string[] = []): Stage => ({ name, needs, weight: 1, isPreparation: name === "database", run: fails });
  const all = [stage("database"), stage("build", ["database"]), stage("domain-utc"), stage("domain-apia"), stage("browser", ["build"])];
  const names = (chosen: ReturnType<typeof selectStages>) => ("unknown" in chosen ? chosen : chosen.map(({ name }) => name));

  test.each([
    [[], ["database", "build", "domain-utc", "domain-apia", "browser"]],
    [["domain"], ["domain-utc", "domain-apia"]],
    [["domain-utc"], ["domain-utc"]],
    [["browser"], ["database", "build", "browser"]],
    [["domain", "browse"], { unknown: "browse" }],
    [["database"], { unknown: "database" }],
  ])("%j", (asked, expected) => {
    expect(names(selectStages(all, asked))).toEqual(expected);
  });
});
