import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "domain",
          include: ["tests/domain/**/*.test.ts", "tests/published/**/*.test.ts"],
        },
      },
      {
        test: {
          name: "house",
          include: ["tests/architecture/**/*.test.ts", "tests/ui/**/*.test.{ts,tsx}"],
          testTimeout: 120_000,
        },
      },
      {
        test: {
          name: "application",
          include: ["tests/application/**/*.test.ts", "tests/adapters/**/*.test.ts"],
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
