// Mutation testing, by hand: npm run mutation -- --mutate lib/domain/quantities/rounding.ts
// Each change that a test should notice is made once to a file of the computing core, and what no test notices is told.
// A file of a hundred lines takes some two minutes of computing, more where its tests draw at random; all of them take
// hours, so name the file. It is no part of npm test.

/** @type {import("@stryker-mutator/api/core").PartialStrykerOptions} */
export default {
  testRunner: "vitest",
  plugins: ["@stryker-mutator/vitest-runner"],
  vitest: { configFile: "scripts/mutation-tests.config.mjs", related: true },
  mutate: [
    "lib/domain/quantities/**/*.ts",
    "lib/domain/mixing/{mix-ticket,spray-mix,granular-mix,treated-area,rounding-room,aftercare*,*-aftercare,watering-*,irrigation-run,span-set,clock-periods}.ts",
  ],
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
