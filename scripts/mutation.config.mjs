// Mutation testing, by hand: MUTATED=ticket npm run mutation (or quantities, or aftercare; see mutation-parts.mjs).
// Each change that a test should notice is made once to a file of the computing core, and what no test notices is told.
// A part takes five to twenty minutes; -- --mutate FILE looks at one file of it. It is no part of npm test.
import { partMutated } from "./mutation-parts.mjs";

/** @type {import("@stryker-mutator/api/core").PartialStrykerOptions} */
export default {
  testRunner: "vitest",
  plugins: ["@stryker-mutator/vitest-runner"],
  vitest: { configFile: "scripts/mutation-tests.config.mjs", related: true },
  mutate: partMutated().mutate,
  // The tests of the domain need nothing else of the project.
  ignorePatterns: ["/.*", "/app", "/prisma", "/lib/adapters", "/lib/application", "/tests/adapters", "/tests/application", "/tests/architecture", "/tests/e2e", "/tests/launcher", "/tests/ui"],
  // A changed refusal sentence is a matter of words.
  mutator: { excludedMutations: ["StringLiteral"] },
  coverageAnalysis: "perTest",
  // What runs once as a file is loaded would need every test for each change.
  ignoreStatic: true,
  concurrency: 1,
  reporters: ["clear-text"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  allowConsoleColors: false,
  thresholds: { high: 90, low: 80, break: null },
};
