// @ts-check
import { existsSync } from "node:fs";
import process from "node:process";
import { Refusal } from "../launch/say.mjs";
import { runProgram } from "./run-program.mjs";
import { findProgram, installSystemPackage, mayInstall, runs } from "./system-packages.mjs";

const NAMES = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "microsoft-edge"];
const IN_APPLICATIONS = [
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/**
 * Finds a browser for the tests: the one that HALFPASS_BROWSER names, the machine's, Playwright's; or else installs one,
 * with apt-get as root or by Playwright.
 *
 * @param {import("./run-program.mjs").Place} place
 * @returns {Promise<{ program: string, sentence: string }>}
 */
export async function findBrowser(place) {
  const asked = process.env.HALFPASS_BROWSER;
  if (asked !== undefined) {
    if (!runs(asked)) throw new Refusal(`HALFPASS_BROWSER is "${asked}", and that does not run.`);
    return { program: asked, sentence: `the browser that HALFPASS_BROWSER names: ${asked}` };
  }
  const found = findProgram(NAMES) ?? IN_APPLICATIONS.find((path) => existsSync(path));
  if (found !== undefined) return { program: found, sentence: `the browser of this machine: ${found}` };
  const own = await findPlaywrightsOwn();
  if (own !== undefined) return { program: own, sentence: `Playwright's own browser: ${own}` };
  return await installBrowser(place);
}

/** @returns {Promise<string | undefined>} */
async function findPlaywrightsOwn() {
  const { chromium } = await import("@playwright/test");
  const path = chromium.executablePath();
  return existsSync(path) && runs(path) ? path : undefined;
}

/**
 * @param {import("./run-program.mjs").Place} place
 * @returns {Promise<{ program: string, sentence: string }>}
 */
async function installBrowser(place) {
  /** @type {string[]} */
  const failures = [];
  if (mayInstall()) {
    const failure = await installSystemPackage("chromium", place.ending.aborted);
    const installed = findProgram(NAMES);
    if (installed !== undefined) return { program: installed, sentence: `a browser installed with apt-get: ${installed}` };
    failures.push(`apt-get: ${failure ?? "what it installed does not run"}`);
  }
  const { output } = await runProgram(place, "install-browser", ["node_modules/@playwright/test/cli.js", "install", "chromium"]);
  const own = await findPlaywrightsOwn();
  if (own !== undefined) return { program: own, sentence: `a browser installed by Playwright: ${own}` };
  failures.push(`Playwright: ${output.trim().split("\n").at(-1) ?? ""}`);
  throw new Refusal(`There is no browser here and none could be installed (${failures.join("; ")}): install Chromium, or name one in HALFPASS_BROWSER.`);
}
