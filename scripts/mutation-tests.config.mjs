// The tests that mutation testing runs: those of the part that it changes, which need no database.
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { partMutated } from "./mutation-parts.mjs";

export default defineConfig({
  test: {
    root: fileURLToPath(new URL("..", import.meta.url)),
    include: partMutated().tests,
    // Instrumented code and every property test on one file: slower than five seconds.
    testTimeout: 60_000,
    setupFiles: ["tests/support/console-fails.ts", "tests/support/no-network.ts", "tests/support/short-properties.ts"],
  },
});
