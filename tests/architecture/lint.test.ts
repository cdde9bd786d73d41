// The lint rules run over planted files, in the places of a planted project; each file says at its top what must catch it.
import { join } from "node:path";
import { ESLint } from "eslint";
import { beforeAll, expect, test } from "vitest";
import { projectFolder } from "./project-graph";
import { readFileSync } from "node:fs";

const planted = join(projectFolder, "tests/architecture/planted/lint");
const config = join(projectFolder, "scripts/eslint.config.mjs");

let results: ESLint.LintResult[];
beforeAll(async () => {
  results = await new ESLint({ cwd: planted, overrideConfigFile: config }).lintFiles(["."]);
});

/** The rules named at the top of a planted file, each as often as it must be broken there. */
function expectedRules(path: string): string[] {
  const heads = readFileSync(path, "utf8").split("\n").filter((line) => line.startsWith("// caught by: "));
  return heads.flatMap((line) =>
    line.slice("// caught by: ".length).split(", ").flatMap((rule) => {
      const [name = "", times = "x1"] = rule.split(" ");
      return Array.from({ length: Number(times.slice(1)) }, () => name);
    }),
  );
}

const plants = [
  ...["app/effect.client.tsx", "app/page.tsx", "scripts/plain.mjs"],
  ...["lib/application/finding.ts", "lib/application/include.ts", "lib/application/loose.ts", "lib/domain/machine.ts", "lib/domain/pure.ts"],
];

test("every planted file was read", () => {
  expect(results.map(({ filePath }) => filePath.slice(planted.length + 1)).sort()).toEqual(plants.sort());
});

test.each(plants)("%s is caught by what it says at its top and by nothing else", (plant) => {
  const messages = results.find(({ filePath }) => filePath === join(planted, plant))?.messages ?? [];
  expect(messages.map(({ ruleId }) => ruleId).sort()).toEqual(expectedRules(join(planted, plant)).sort());
  expect(messages.filter(({ severity }) => severity !== 2)).toEqual([]);
});

test.each(["lib/domain/a.ts", "lib/application/a.ts", "app/page.tsx", "app/a.client.tsx", "scripts/a.mjs", "tests/domain/a.test.ts"])(
  "no rule for %s is a warning",
  async (path) => {
    const eslint = new ESLint({ cwd: projectFolder, overrideConfigFile: config });
    const { rules } = (await eslint.calculateConfigForFile(path)) as { rules: Record<string, readonly [0 | 1 | 2]> };
    expect(Object.keys(rules).length).toBeGreaterThan(100);
    expect(Object.entries(rules).filter(([, [severity]]) => severity === 1)).toEqual([]);
  },
);
