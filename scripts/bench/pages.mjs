// @ts-check
// Load on pages of a started installation, and what each of them asks its database.
import { createRequire } from "node:module";
import { Visitor } from "../server/browse.mjs";
import { countStatements } from "./installation.mjs";
import { rowOf, rowsOfRounds } from "./report.mjs";

const ROUNDS = 3;
const ROUND_SECONDS = 1.5;
const WARM_UP_SECONDS = 1;
const CONNECTIONS = 8;
/** So that a page which takes longer than a round is measured too. */
const LEAST_REQUESTS = 16;
const MOST_PAGE_SECONDS = 30;

/**
 * A page and whose it is: nobody's, or that of an account.
 *
 * @typedef {object} Page
 * @property {string} name
 * @property {string} path
 * @property {keyof Accounts | null} account
 */

/**
 * @typedef {{ email: string, password: string }} Account
 * @typedef {{ demonstration: Account, busy: Account, small: Account }} Accounts
 */

const EMPTY_PAGE = "/sign-in, signed out";
const TEN_STOPS = "/today, 10 stops";
const FORTY_STOPS = "/today, 40 stops";
/** @type {readonly Page[]} */
const PAGES = [
  { name: EMPTY_PAGE, path: "/sign-in", account: null },
  { name: "/health", path: "/health", account: null },
  { name: "/contents", path: "/contents", account: "demonstration" },
  { name: "/settings", path: "/settings", account: "demonstration" },
  { name: "/crew", path: "/crew", account: "demonstration" },
  { name: TEN_STOPS, path: "/today?date=2026-04-16", account: "busy" },
  { name: FORTY_STOPS, path: "/today?date=2026-04-15", account: "busy" },
  { name: "/properties, 60 of them", path: "/properties", account: "busy" },
  { name: "/shed, 33 products", path: "/shed", account: "busy" },
  { name: "/register, 205 records", path: "/register", account: "busy" },
  { name: "/programs, 6 with 4 rounds", path: "/programs", account: "busy" },
];

/**
 * Signs in with each account.
 *
 * @param {string} address
 * @param {Accounts} accounts
 */
async function signInAll(address, accounts) {
  /** @type {Map<string, Visitor>} */
  const visitors = new Map();
  for (const [name, account] of Object.entries(accounts)) {
    const visitor = new Visitor();
    if (!(await visitor.signIn(address, account))) throw new Error(`${account.email} could not sign in.`);
    visitors.set(name, visitor);
  }
  return (/** @type {string | null} */ account) => visitors.get(account ?? "") ?? new Visitor();
}

/**
 * Counts what each page asks the database. A page of the busy company is held against the same page of the small one,
 * and the day with forty stops against that with ten: where the ratio is not 1 the statements grow with the rows.
 *
 * @param {string} data the data folder of the installation
 * @param {import("./installation.mjs").Installation} installation
 * @param {Accounts} accounts
 */
export async function countPages(data, installation, accounts) {
  const visitorOf = await signInAll(installation.address, accounts);
  /**
   * @param {Pick<Page, "path" | "account">} page
   */
  const count = ({ path, account }) =>
    countStatements(data, installation, async () => {
      const answer = await visitorOf(account).ask(`${installation.address}${path}`);
      if (answer.status !== 200) throw new Error(`${path} answered ${answer.status}.`);
      await answer.text();
    });
  const nameOf = (/** @type {string} */ page) => `${page}, asks the database`;
  /** @type {import("./report.mjs").Row[]} */
  const rows = [];
  for (const { name, path, account } of PAGES) {
    const row = rowOf(nameOf(name), await count({ path, account }), "statements");
    const isOfDay = path.startsWith("/today");
    const small = account !== "busy" || isOfDay ? undefined : rowOf(`${path} of a tenth as much`, await count({ path, account: "small" }), "statements");
    const baseline = name === FORTY_STOPS ? rows.find((each) => each.name === nameOf(TEN_STOPS)) : small;
    rows.push(baseline === undefined ? row : rowOf(row.name, row.value, row.unit, baseline));
  }
  return rows;
}

/**
 * Puts load on the pages in turns.
 *
 * @param {import("./installation.mjs").Installation} installation
 * @param {Accounts} accounts
 */
export async function loadPages(installation, accounts) {
  /** @type {(options: object) => Promise<{ errors: number, timeouts: number, non2xx: number, requests: { total: number } }>} */
  const autocannon = createRequire(import.meta.url)("autocannon");
  const visitorOf = await signInAll(installation.address, accounts);
  /**
   * @param {Page} page
   * @param {number} leastSeconds
   */
  const load = async (page, leastSeconds) => {
    const { cookie } = visitorOf(page.account);
    const headers = cookie === "" ? {} : { cookie };
    const begin = performance.now();
    const seconds = () => (performance.now() - begin) / 1000;
    let requests = 0;
    do {
      const result = await autocannon({ url: `${installation.address}${page.path}`, connections: CONNECTIONS, amount: LEAST_REQUESTS, timeout: MOST_PAGE_SECONDS, headers });
      if (result.errors + result.timeouts + result.non2xx > 0) throw new Error(`${page.name}: ${result.errors} errors, ${result.non2xx} other answers.`);
      requests += result.requests.total;
    } while (seconds() < leastSeconds);
    return requests / seconds();
  };
  for (const page of PAGES) await load(page, WARM_UP_SECONDS);
  const rounds = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    /** @type {Record<string, number>} */
    const figures = {};
    for (const page of PAGES) figures[page.name] = await load(page, ROUND_SECONDS);
    rounds.push(figures);
  }
  const days = rounds.map((figures) => ({ [TEN_STOPS]: figures[TEN_STOPS] ?? Number.NaN, [FORTY_STOPS]: figures[FORTY_STOPS] ?? Number.NaN }));
  return [...rowsOfRounds("requests/s", EMPTY_PAGE, rounds), ...rowsOfRounds("requests/s", TEN_STOPS, days).slice(1)];
}
