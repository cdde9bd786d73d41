import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/architecture/planted/strictness/*.test.ts"],
    setupFiles: ["tests/support/console-fails.ts", "tests/support/no-network.ts"],
  },
});
