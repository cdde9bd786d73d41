// Dependencies flow one way. The rules stand in scripts/dependency-rules.mjs; here they run over the project, and
// over a planted project with one file for each rule, named after the rule that must catch it.
import { existsSync } from "node:fs";
import { basename, join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { type ICruiseResult } from "dependency-cruiser";
import { domainOrder, forbidden } from "../../scripts/dependency-rules.mjs";
import { codeRoots, filesWithoutPlace, ownModules, projectFolder, reachesIntoServer, readGraph } from "./project-graph";

/** Far fewer files than the project has; a reader that sees nothing would find no violation. */
const FEWEST_FILES = 30;

const violationsIn = ({ summary }: ICruiseResult) =>
  summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`).sort();

describe("the project", () => {
  let result: ICruiseResult;
  beforeAll(async () => {
    result = await readGraph(projectFolder, codeRoots.filter((root) => existsSync(join(projectFolder, root))));
  });

  test("was read", () => {
    const modules = ownModules(result);
    expect(modules.length).toBeGreaterThan(FEWEST_FILES);
    expect(modules.filter(({ dependencies }) => dependencies.length > 0).length).toBeGreaterThan(FEWEST_FILES / 2);
    expect(modules.map(({ source }) => source)).toContain("lib/domain/foundation/outcome.ts");
  });

  test("keeps every rule", () => {
    expect(violationsIn(result)).toEqual([]);
  });

  test("gives every file of the domain a place in the order", () => {
    expect(filesWithoutPlace(ownModules(result))).toEqual([]);
  });

  test("keeps adapters out of the browser", () => {
    expect(reachesIntoServer(ownModules(result))).toEqual([]);
  });
});

describe("planted violations", () => {
  let planted: ICruiseResult;
  beforeAll(async () => {
    planted = await readGraph(join(projectFolder, "tests/architecture/planted/boundaries"), ["app", "lib", "tests"]);
  });
  const ruleNames = [...new Set(forbidden.flatMap(({ name }) => name ?? []))];
  const nameOfFile = (path: string) => basename(path).replace(/\..*$/, "");

  test.each(ruleNames)("%s catches its own, each of them", (rule) => {
    const plantedFiles = ownModules(planted).map(({ source }) => source).filter((source) => nameOfFile(source) === rule);
    const caught = planted.summary.violations.filter((each) => each.rule.name === rule).map(({ from }) => from);
    expect(plantedFiles.length).toBeGreaterThan(0);
    expect(caught.sort()).toEqual(plantedFiles.sort());
  });

  test("innocent files are not accused", () => {
    const accused = planted.summary.violations.map(({ from }) => nameOfFile(from));
    expect(ownModules(planted).filter(({ source }) => source.includes("/innocent-")).length).toBeGreaterThan(5);
    expect(accused.filter((name) => name.startsWith("innocent-"))).toEqual([]);
  });

  test("a rule that is broken fails the run, whatever else it is", () => {
    expect(forbidden.filter(({ severity }) => severity !== "error")).toEqual([]);
  });

  test("a folder without a place is found", () => {
    expect(filesWithoutPlace(ownModules(planted))).toEqual(["lib/domain/gadgets/gadget.ts"]);
  });

  test("a detour into the server is found, and an action is none", () => {
    expect(reachesIntoServer(ownModules(planted))).toEqual([
      "app/office/stock/client-component-stays-in-the-browser.client.tsx -> lib/application/stock/innocent-delivery.ts -> lib/adapters/mail/innocent-mail.ts",
      "app/office/stock/indirect-reach.client.tsx -> app/office/stock/columns.tsx -> lib/application/stock/innocent-delivery.ts -> lib/adapters/mail/innocent-mail.ts",
    ]);
  });
});

test("the order of the domain forbids every pair the wrong way round and none the right way", () => {
  const forbids = (from: string, to: string) =>
    forbidden.some(
      (rule) =>
        rule.name === "domain-order" &&
        new RegExp(String(rule.from.path)).test(`lib/domain/${from}/a.ts`) &&
        new RegExp(String(rule.to.path)).test(`lib/domain/${to}/b.ts`),
    );
  const pairs = domainOrder.flatMap((from, here) => domainOrder.map((to, there) => ({ from, to, wrong: there > here })));
  expect(pairs.filter(({ from, to, wrong }) => forbids(from, to) !== wrong)).toEqual([]);
});
