// The browser tests. `npm test -- browser` builds and starts the product on a database of its own and says here where it is.
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
  reporter: [["list"], ["json"]],
  use: {
    baseURL: told("HALFPASS_BASE_URL"),
    locale: "en-US",
    trace: "retain-on-failure",
    launchOptions: { executablePath: told("HALFPASS_BROWSER"), args: browserFlags },
  },
});
