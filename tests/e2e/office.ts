import AxeBuilder from "@axe-core/playwright";
import { test as base, type BrowserContext, type Page, expect } from "@playwright/test";
import { type ChildProcess, execFile, spawn } from "node:child_process";
import { once } from "node:events";
import { createServer, type AddressInfo } from "node:net";
import { join } from "node:path";
import { promisify } from "node:util";
import { addDays, calendarDateIn } from "../../lib/domain/foundation/calendar-date";
import { cloneOn, type DatabaseClone } from "../support/migrated-server.mjs";

// Offices to test in: the production build, each on a copy of the migrated database that no other worker uses.

const CHECKOUT = join(import.meta.dirname, "..", "..");
const STANDALONE = join(CHECKOUT, ".next", "standalone");
const SECRET = "a secret of the tests that opens nothing anywhere else";

export interface Office {
  readonly address: string;
  readonly database: DatabaseClone;
  /** Runs the terminal's company command and answers with what it printed. */
  readonly companyCommand: (...words: readonly string[]) => Promise<string>;
}

async function freePort(): Promise<number> {
  const probe = createServer().listen(0, "127.0.0.1");
  await once(probe, "listening");
  const { port } = probe.address() as AddressInfo;
  probe.close();
  await once(probe, "close");
  return port;
}

async function waitUntilHealthy(address: string, server: ChildProcess): Promise<void> {
  for (let attempt = 0; attempt < 300 && server.exitCode === null; attempt += 1) {
    const answer = await fetch(`${address}/health`).catch(() => undefined);
    if (answer?.ok === true) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error("The web server did not begin to serve.");
}

async function openOffice(isDemonstration: boolean): Promise<Office & { readonly close: () => Promise<void> }> {
  const serverUrl = process.env["HALFPASS_TEST_SERVER"];
  if (serverUrl === undefined) throw new Error("HALFPASS_TEST_SERVER is not set: run these tests with npm test -- browser.");
  const database = await cloneOn(serverUrl);
  const port = await freePort();
  const address = `http://localhost:${String(port)}`;
  const variables: NodeJS.ProcessEnv = {
    ...process.env,
    NODE_ENV: "production",
    NODE_OPTIONS: "",
    PORT: String(port),
    HOSTNAME: "127.0.0.1",
    DATABASE_APP_URL: database.appUrl,
    NEXTAUTH_URL: address,
    NEXTAUTH_SECRET: SECRET,
    NEXT_TELEMETRY_DISABLED: "1",
  };
  const run = async (...words: readonly string[]) =>
    (await promisify(execFile)(process.execPath, ["--import", "tsx", ...words], { cwd: CHECKOUT, env: variables })).stdout;
  if (isDemonstration) await run("prisma/seed/demo.ts");
  const server = spawn(process.execPath, ["server.js"], { cwd: STANDALONE, env: variables, stdio: ["ignore", "ignore", "inherit"] });
  await waitUntilHealthy(address, server);
  return {
    address,
    database,
    companyCommand: (...words) => run("scripts/company-command.ts", ...words),
    close: async () => {
      server.kill("SIGKILL");
      if (server.exitCode === null && server.signalCode === null) await once(server, "exit");
      await database.drop();
    },
  };
}

/** What a browser keeps after signing in, and where pages of one thing each are, by the name of the thing. */
export interface SignedIn {
  readonly storageState: Awaited<ReturnType<BrowserContext["storageState"]>>;
  readonly personPath: string;
  readonly truckPath: string;
  readonly equipmentPath: string;
  readonly calibrationPath: string;
  /** A product whose label waits to be read back. */
  readonly productPath: string;
  /** The property at the pond, its first lawn and the form that changes its first station. */
  readonly propertyPath: string;
  readonly lawnId: string;
  readonly stationPath: string;
  /** The form that changes the latest seed of the property at the pond. */
  readonly seedingPath: string;
  readonly programPath: string;
  /** A round with visits, below its program. */
  readonly roundPath: string;
  /** A visit of the pond's property that is still to be done. */
  readonly visitPath: string;
  /** Where a license holder answers a hold of law. */
  readonly lawHoldPath: string;
  readonly recordPath: string;
  /** A truck's day that is over: its date on the place Today, the form that changes it, and its papers. */
  readonly dayPath: string;
  readonly changeDayPath: string;
  readonly dayPapersPath: string;
  /** The papers of a visit that was done. */
  readonly mixTicketPath: string;
  readonly noticePath: string;
  readonly signPath: string;
}

/** The demonstration's last day with a truck out, which counts from the day on which it is made where its company is. */
export function dayThatIsOver(): string {
  return addDays(calendarDateIn("America/Chicago", Date.now()), -4);
}

interface WorkerFixtures {
  /** The demonstration's owner, signed in once for all the tests that only look. */
  readonly owner: SignedIn;
  /** The demonstration's office. */
  readonly demonstration: Office;
  /** An office without a company. */
  readonly emptyOffice: Office;
}

export const test = base.extend<object, WorkerFixtures>({
  demonstration: [
    // eslint-disable-next-line no-empty-pattern -- Playwright reads the names of fixtures from the pattern
    async ({}, use) => {
      const office = await openOffice(true);
      await use(office);
      await office.close();
    },
    { scope: "worker", timeout: 300_000 },
  ],
  emptyOffice: [
    // eslint-disable-next-line no-empty-pattern -- Playwright reads the names of fixtures from the pattern
    async ({}, use) => {
      const office = await openOffice(false);
      await use(office);
      await office.close();
    },
    { scope: "worker", timeout: 300_000 },
  ],
  owner: [
    async ({ demonstration, browser }, use) => {
      const context = await browser.newContext();
      const page = await context.newPage();
      await signIn(page, demonstration);
      const pathOn = async (place: string, name: string | RegExp) => {
        await page.goto(`${demonstration.address}${place}`);
        return (await page.getByRole("link", { name, exact: true }).first().getAttribute("href")) ?? "";
      };
      const programPath = await pathOn("/programs", "Cool-season lawns");
      const propertyPath = await pathOn("/properties", "7 Heron Court");
      const dayPath = `/today?date=${dayThatIsOver()}`;
      const recordPath = await pathOn("/register", "1");
      const doneVisitPath = await pathOn(recordPath, "First feed");
      const lawnPath = await pathOn(propertyPath, "A Front");
      const heldVisitPath = await pathOn(await pathOn("/properties", "130 Gristmill Way"), "Feed for new seed");
      await use({
        propertyPath,
        lawnId: new URL(lawnPath, demonstration.address).searchParams.get("lawn") ?? "",
        stationPath: await pathOn(propertyPath, /^1 /),
        seedingPath: (await page.locator('a[href$="/change-seeding"]').first().getAttribute("href")) ?? "",
        lawHoldPath: await pathOn(heldVisitPath, "Answer"),
        visitPath: await pathOn(propertyPath, "Third feed"),
        recordPath,
        dayPath,
        changeDayPath: await pathOn(dayPath, "Change Truck 1"),
        dayPapersPath: await pathOn(dayPath, "Print Truck 1"),
        mixTicketPath: await pathOn(doneVisitPath, /^Mix ticket \d+$/),
        noticePath: `/documents/customer-notice${doneVisitPath.replace("/visits", "")}`,
        signPath: `/documents/posting-sign${doneVisitPath.replace("/visits", "")}`,
        programPath,
        roundPath: await pathOn(programPath, "Second feed"),
        storageState: await context.storageState(),
        personPath: await pathOn("/crew", "Ray Odum"),
        truckPath: await pathOn("/crew/gear", "Change truck 1"),
        equipmentPath: await pathOn("/crew/gear", "100 gal tank with hose reel"),
        calibrationPath: await pathOn("/crew/gear", "Lou Parrish"),
        productPath: await pathOn("/shed", "Latefield 24-0-12"),
      });
      await context.close();
    },
    { scope: "worker", timeout: 300_000 },
  ],
  page: async ({ page }, use) => {
    const noise: string[] = [];
    page.on("pageerror", (error) => noise.push(error.message));
    page.on("console", (message) => {
      // A refused request is reported by the browser itself; what a page logs is a defect.
      if (message.type() === "error" && !message.text().startsWith("Failed to load resource")) noise.push(message.text());
    });
    await use(page);
    expect(noise, "what the browser's console complained of").toEqual([]);
  },
});

export { expect };

export const DEMONSTRATION_PASSWORD = "two passes at half rate";

/** Signs in by the form and waits until the office is there. */
export async function signIn(page: Page, office: Office, email = "dana@tansyhollow.example", password = DEMONSTRATION_PASSWORD): Promise<void> {
  await page.goto(`${office.address}/sign-in`);
  await page.getByLabel("Email address").fill(email);
  await page.getByLabel("Password", { exact: true }).fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await expect(page.getByRole("link", { name: "Settings" }).first()).toBeVisible();
}

/** Fails with every violation of WCAG 2.2 AA that axe finds on the page, and when it scrolls sideways. */
export async function expectAccessible(page: Page, which: "everything" | "colors only" = "everything"): Promise<void> {
  // Our pages have no frames, so the rules may run in the page itself, which is faster than in a page of their own.
  const axe = new AxeBuilder({ page }).setLegacyMode();
  const rules = which === "everything" ? axe.withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]) : axe.withRules(["color-contrast"]);
  const { violations } = await rules.analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(" ")).join(", ")}`)).toEqual([]);
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(overflow, "pixels that the page is wider than its window").toBeLessThanOrEqual(0);
}
