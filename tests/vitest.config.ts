// Unit tests and tests on a real database; the browser's are in tests/e2e. Run with `--config tests/vitest.config.ts`.
// Files of one worker share its modules, which saves two thirds of the time: a test may not lean on a module's fresh state.
import { fileURLToPath } from "node:url";
import { defineConfig, type TestProjectInlineConfiguration } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));
const strictness = ["tests/support/console-fails.ts", "tests/support/no-network.ts"];

/** Planted to fail; and what needs PgBouncer, which is left out aloud on a machine that has none (scripts/test/pooler.mjs). */
const exclude = ["tests/architecture/planted/**", ...(process.env["HALFPASS_PGBOUNCER"] === undefined ? ["tests/**/*.pooler.test.ts"] : [])];

/** The tests of the architecture that look at a real database. */
const ofTheDatabase = ["tests/architecture/schema.test.ts", "tests/architecture/database.test.ts"];

/** A project of tests that need no database. What draws at random takes long on a busy machine: five seconds are too few. */
function pure(name: string, include: string[]): TestProjectInlineConfiguration {
  return { test: { name, root, include, exclude: [...exclude, ...ofTheDatabase], setupFiles: strictness, isolate: false, testTimeout: 30_000 } };
}

/** A project whose tests clone databases from the migrated template. */
function withDatabase(name: string, include: string[]): TestProjectInlineConfiguration {
  const limits = { testTimeout: 60_000, hookTimeout: 120_000 };
  const globalSetup = ["tests/support/database-server.ts"];
  return { test: { name, root, include, exclude, setupFiles: strictness, globalSetup, isolate: false, ...limits } };
}

export default defineConfig({
  test: {
    root,
    projects: [
      pure("domain", ["tests/domain/**/*.test.ts", "tests/published/**/*.test.ts"]),
      pure("ui", ["tests/ui/**/*.test.{ts,tsx}"]),
      { test: { ...pure("house", ["tests/architecture/**/*.test.ts"]).test, testTimeout: 120_000, hookTimeout: 120_000 } },
      withDatabase("application", ["tests/application/**/*.test.ts", "tests/adapters/**/*.test.ts", ...ofTheDatabase]),
      withDatabase("launcher", ["tests/launcher/**/*.test.ts"]),
    ],
  },
});
