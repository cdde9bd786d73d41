// The browser tests. `npm test -- browser` builds the product, finds a browser and brings up the database server.
import { join } from "node:path";
import { defineConfig } from "@playwright/test";

function told(variable: string): string {
  const value = process.env[variable];
  if (value === undefined) throw new Error(`${variable} is not set: run these tests with "npm test -- browser".`);
  return value;
}

/** What keeps Chromium running in containers and as root, and quiet on the network: nothing but our own server answers. */
const browserFlags = [
  ...["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu", "--disable-quic", "--no-first-run"],
  ...["--disable-background-networking", "--disable-component-update", "--disable-sync"],
  "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost",
];

export default defineConfig({
  testDir: ".",
  outputDir: join(told("HALFPASS_ARTIFACTS"), "browser"),
  forbidOnly: true,
  fullyParallel: true,
  workers: 2,
  retries: 0,
  // A test says what must come to be, not how fast: this only ends what would never end.
  timeout: 90_000,
  expect: { timeout: 20_000 },
  reporter: [["list"], ["json"]],
  use: {
    locale: "en-US",
    trace: { mode: "retain-on-failure", screenshots: false },
    launchOptions: { executablePath: told("HALFPASS_BROWSER"), args: browserFlags },
  },
});
