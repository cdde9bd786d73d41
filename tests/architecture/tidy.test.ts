// The habits of the house, kept by ordinary tests that are tested themselves: each rule must find what is
// planted for it, leave its innocent twin alone, and find nothing in the project.
import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type ProjectFile, readProjectFiles } from "./project-files";
import { codeRoots, ownModules, projectFolder, readGraph } from "./project-graph";
import * as tidy from "./tidy-rules";

const file = (path: string, text = ""): ProjectFile => ({ path, text });
const value = "export const rate = 1;\n";

interface Planted {
  readonly rule: tidy.TidyRule;
  readonly guilty: readonly ProjectFile[];
  /** How many of the planted files, or words in them, are offenses. */
  readonly offenses: number;
  readonly innocent: readonly ProjectFile[];
}

// Words that may not stand in the project are put together here, so that this file does not hold them.
const unfinished = ["// TO" + "DO: later", "// FIX" + "ME", 'throw new Error("not ' + 'implemented");'].join("\n");
const machinePath = ['const folder = "', 'srv', 'thing/file";'].join("/");
const off = "eslint-dis" + "able";
const registry = '"resolved": "https://registry.npm' + 'js.org/zod/-/zod.tgz"';

const plantedRules: Readonly<Record<string, Planted>> = {
  onlyKnownTopLevelEntries: {
    rule: tidy.onlyKnownTopLevelEntries,
    guilty: [file("notes.txt"), file("src/rate.ts"), file("vitest.config.ts")],
    offenses: 3,
    innocent: [file("README.md"), file(".gitignore"), file("lib/domain/money/price.ts")],
  },
  mirroredTests: {
    rule: tidy.mirroredTests,
    guilty: [
      file("lib/domain/money/price.ts", value),
      file("lib/application/stock/receive-delivery.ts", "export async function receiveDelivery() {}"),
      file("lib/domain/money/again.ts", 'export { price } from "./price";'),
      file("lib/domain/money/all.ts", 'export * from "./price";'),
    ],
    offenses: 4,
    innocent: [
      file("lib/domain/money/price.ts", value),
      file("tests/domain/money/price.test.ts"),
      file("lib/domain/money/types.ts", 'export interface Price { cents: bigint }\nexport type { A } from "./a";'),
      file("lib/application/stock/receive-delivery.schema.ts", value),
    ],
  },
  testsOfSomething: {
    rule: tidy.testsOfSomething,
    guilty: [file("tests/domain/money/prize.test.ts")],
    offenses: 1,
    innocent: [
      file("lib/domain/money/price.ts"),
      file("tests/domain/money/price.test.ts"),
      file("tests/domain/money/price.conservation.test.ts"),
    ],
  },
  everyTestRuns: {
    rule: tidy.everyTestRuns,
    guilty: [
      file("tests/domain/a.test.ts", 'test.skip("a", () => {});\ndescribe.only("b", () => {});\nit.todo("c");'),
      file("tests/e2e/b.spec.ts", 'test.fixme();\ntest.describe.only("d", () => {});\nxit("e", () => {});\ntest.skipIf(true)("f");'),
    ],
    offenses: 7,
    innocent: [file("tests/domain/c.test.ts", '// test.only is banned\ntest("skip", () => { queue.skip(); list.only("it.skip(1)"); });')],
  },
  namesThatSaySomething: {
    rule: tidy.namesThatSaySomething,
    guilty: ["lib/domain/money/utils.ts", "lib/shared/price.ts", "app/ui/index.tsx", "tests/helpers/clock.ts", "lib/misc.server.ts"].map((path) => file(path)),
    offenses: 5,
    innocent: [file("lib/domain/money/price-index.ts")],
  },
  kebabCaseNames: {
    rule: tidy.kebabCaseNames,
    guilty: ["lib/domain/money/priceList.ts", "lib/Domain/price.ts", "app/ui/Button.tsx", "lib/domain/[id]/x.ts"].map((path) => file(path)),
    offenses: 4,
    innocent: [
      ...["app/(office)/properties/[propertyId]/page.tsx", "app/[...rest]/page.tsx", "app/(truck)/@sheet/page.tsx"],
      ...["prisma/migrations/20261125160000_open_the_house/migration.sql", "lib/application/a/b.schema.ts", ".ci/run", "DEVELOPERS.md"],
    ].map((path) => file(path)),
  },
  clientFilesSaySo: {
    rule: tidy.clientFilesSaySo,
    guilty: [file("app/office/form.tsx", '"use client";\nexport {};'), file("app/office/form.client.tsx", "export {};"), file("app/error.tsx", "")],
    offenses: 3,
    innocent: [
      file("app/office/form.client.tsx", '// Why.\n"use client";\nexport {};'),
      file("app/office/error.tsx", "'use client';"),
      file("app/office/page.tsx", 'const text = "use client";'),
      file("app/office/action.ts", '"use server";'),
    ],
  },
  shortFiles: {
    rule: tidy.shortFiles,
    guilty: [file("lib/domain/money/price.ts", "\n1;".repeat(tidy.MOST_LINES))],
    offenses: 1,
    innocent: [file("lib/domain/money/price.ts", "1;\n".repeat(tidy.MOST_LINES)), file("prisma/migrations/1_a/migration.sql", "--\n".repeat(999))],
  },
  finishedText: {
    rule: tidy.finishedText,
    guilty: [file("lib/a.ts", unfinished), file("scripts/b.mjs", machinePath), file("package-lock.json", registry)],
    offenses: 5,
    innocent: [file("lib/a.ts", '// to do; see ./tmp/x, https://example.org/work/ and "app/root/a"\n"/usr/bin/chromium"'), file("package-lock.json", "+XX" + "X/")],
  },
  reasonsForSwitchingOff: {
    rule: tidy.reasonsForSwitchingOff,
    guilty: [file("lib/a.ts", `// ${off}-next-line no-console\n/* ${off} */\nf(); // @ts-ignore -- short`)],
    offenses: 3,
    innocent: [file("lib/a.ts", `// ${off}-next-line no-console -- the launcher speaks to a terminal\nconst a = "${off}";`)],
  },
  noSetNull: {
    rule: tidy.noSetNull,
    guilty: [file("prisma/schema.prisma", "@relation(fields: [a], references: [b], onDelete: SetNull)"), file("prisma/migrations/1_a/migration.sql", "on delete set null")],
    offenses: 2,
    innocent: [file("prisma/schema.prisma", "onDelete: Restrict"), file("lib/a.ts", "onDelete: SetNull")],
  },
  usedFiles: {
    rule: tidy.usedFiles(new Map([["lib/application/a.ts", ["tests/application/a.test.ts"]], ["lib/domain/c.ts", ["tests/domain/a.test.ts"]], ["lib/domain/b.ts", ["app/page.tsx"]]])),
    guilty: [file("lib/application/a.ts"), file("tests/support/c.ts"), file("scripts/d.mjs"), file("README.md", "scripts/d.mjs")],
    offenses: 3,
    innocent: [
      ...[file("lib/domain/b.ts"), file("lib/domain/c.ts"), file("app/page.tsx"), file("tests/domain/a.test.ts"), file("scripts/e.mjs"), file("lib/f.worker.ts")],
      ...[file("package.json", '"e": "node scripts/e.mjs"'), file("lib/domain/g.ts", 'new URL("./f.worker.ts", here)'), file("app/route.ts", '"../g.ts"')],
    ],
  },
};

describe("each rule finds what is planted for it", () => {
  test.each(Object.entries(plantedRules))("%s", (_name, { rule, guilty, offenses, innocent }) => {
    expect(rule(guilty)).toHaveLength(offenses);
    expect(rule(innocent)).toEqual([]);
  });

  test("and no rule is without a plant", () => {
    const rules = Object.entries(tidy).filter(([, exported]) => typeof exported === "function").map(([name]) => name);
    expect(Object.keys(plantedRules).sort()).toEqual(rules.sort());
  });
});

describe("the project", () => {
  const files = readProjectFiles();
  const perFileRules = Object.entries(plantedRules).filter(([name]) => name !== "usedFiles");

  test("was read", () => {
    const paths = files.map(({ path }) => path);
    expect(paths).toEqual(expect.arrayContaining(["package.json", "lib/domain/foundation/outcome.ts", "scripts/test.mjs"]));
  });

  test.each(perFileRules)("keeps %s", (_name, { rule }) => {
    expect(rule(files)).toEqual([]);
  });

  test("keeps usedFiles, and its imports were all read", async () => {
    const roots = codeRoots.filter((root) => existsSync(join(projectFolder, root)));
    const modules = ownModules(await readGraph(projectFolder, roots));
    const importersOf = new Map(modules.map(({ source, dependents }) => [source, dependents]));
    const code = files.map(({ path }) => path).filter((path) => /\.(ts|tsx|mjs)$/.test(path) && !path.endsWith(".d.ts"));
    expect(code.filter((path) => !importersOf.has(path))).toEqual([]);
    expect(tidy.usedFiles(importersOf)(files)).toEqual([]);
  });

  test("has a reason for every file that is allowed to be long, and each of them still is", () => {
    for (const [path, reason] of Object.entries(tidy.longFiles)) {
      const lines = files.find((each) => each.path === path)?.text.split("\n").length ?? 0;
      expect(lines, path).toBeGreaterThan(tidy.MOST_LINES);
      expect(reason.length, path).toBeGreaterThan(20);
    }
  });
});
