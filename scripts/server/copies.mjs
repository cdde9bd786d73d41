// @ts-check
// The pieces of docker-compose.yml as plain programs of this machine: roles, migrations, pooler, copies of the app,
// and a proxy before them. Each start answers how to end it.
import { spawn, spawnSync } from "node:child_process";
import { openSync } from "node:fs";
import { createServer, request as askUpstream } from "node:http";
import { Socket } from "node:net";
import { join } from "node:path";
import process from "node:process";
import { setTimeout as pause } from "node:timers/promises";
import { chooseDatabaseAccount } from "../launch/database-account.mjs";
import { PROJECT_FOLDER } from "../run-prisma.mjs";

const POLL_MILLISECONDS = 100;
const START_ATTEMPTS = 300;
const DOCKER_SCRIPTS = join(PROJECT_FOLDER, "scripts", "docker");
const STRIP_FORWARDED_HEADERS = new URL("./strip-forwarded-headers.mjs", import.meta.url).href;

/**
 * A program that runs until it is ended.
 *
 * @typedef {{ port: number, end: () => Promise<void> }} Running
 */

/**
 * Runs the script that makes the roles in the database's container, with this machine's psql.
 *
 * @param {URL} superuserUrl
 * @param {{ owner: string, web: string }} passwords
 */
export function createRoles(superuserUrl, passwords) {
  const ran = spawnSync("sh", [join(DOCKER_SCRIPTS, "create-roles.sh")], {
    encoding: "utf8",
    env: {
      ...process.env,
      PGHOST: superuserUrl.hostname,
      PGPORT: superuserUrl.port,
      PGPASSWORD: decodeURIComponent(superuserUrl.password),
      HALFPASS_OWNER_PASSWORD: passwords.owner,
      HALFPASS_WEB_PASSWORD: passwords.web,
    },
  });
  if (ran.status !== 0) throw new Error(`create-roles.sh failed: ${ran.stderr.trim()}`);
}

/**
 * Starts PgBouncer through the script that starts it in its container.
 *
 * @param {object} request
 * @param {string} request.folder for its configuration; must be open to whom it runs as
 * @param {number} request.port
 * @param {number} request.databasePort
 * @param {string} request.password of the web role
 * @returns {Promise<Running>}
 */
export async function startPooler({ folder, port, databasePort, password }) {
  // PgBouncer refuses root as PostgreSQL does. That user may be unable to enter the checkout, so the script comes in by pipe.
  const account = chooseDatabaseAccount(folder) ?? {};
  const child = spawn("sh", ["-s"], {
    ...account,
    cwd: folder,
    stdio: [openSync(join(DOCKER_SCRIPTS, "start-pooler.sh"), "r"), "ignore", "pipe"],
    env: {
      ...process.env,
      PATH: `${process.env.PATH ?? ""}:/usr/sbin`,
      TMPDIR: folder,
      DATABASE_HOST: "127.0.0.1",
      DATABASE_PORT: String(databasePort),
      HALFPASS_WEB_PASSWORD: password,
      POOLER_ADDRESS: "127.0.0.1",
      POOLER_PORT: String(port),
    },
  });
  const running = keep(child, port);
  await waitFor("PgBouncer", child, () => accepts(port));
  return running;
}

/**
 * Starts a copy of the app from the standalone build.
 *
 * @param {object} request
 * @param {string} request.standalone
 * @param {number} request.port
 * @param {Record<string, string>} request.variables
 * @returns {Promise<Running>}
 */
export async function startCopy({ standalone, port, variables }) {
  const child = spawn(process.execPath, ["--import", STRIP_FORWARDED_HEADERS, join(standalone, "server.js")], {
    cwd: standalone,
    stdio: ["ignore", "ignore", "pipe"],
    env: { PATH: process.env.PATH, NODE_ENV: "production", NEXT_TELEMETRY_DISABLED: "1", HOSTNAME: "127.0.0.1", PORT: String(port), ...variables },
  });
  const running = keep(child, port);
  await waitFor("A copy of the app", child, () => isHealthy(`http://127.0.0.1:${port}`));
  return running;
}

/**
 * Starts a proxy that takes turns between copies, says in `x-served-by` which one answered, and asks the next one
 * when a copy is not there.
 *
 * @param {number} port
 * @param {readonly number[]} copies their ports
 * @returns {Promise<Running>}
 */
export async function startProxy(port, copies) {
  let turn = 0;
  const server = createServer((request, response) => {
    /** @type {Buffer[]} */
    const chunks = [];
    request.on("data", (chunk) => chunks.push(chunk));
    request.on("end", () => {
      const first = (turn += 1);
      forward(0);
      /** @param {number} attempt */
      function forward(attempt) {
        const copy = copies[(first + attempt) % copies.length] ?? 0;
        const before = request.headers["x-forwarded-for"];
        const seen = request.socket.remoteAddress ?? "";
        const headers = { ...request.headers, "x-forwarded-for": before === undefined ? seen : `${String(before)}, ${seen}` };
        const asked = askUpstream({ host: "127.0.0.1", port: copy, path: request.url, method: request.method, headers, agent: false });
        asked.once("response", (answer) => {
          response.writeHead(answer.statusCode ?? 502, { ...answer.headers, "x-served-by": String(copy) });
          answer.pipe(response);
        });
        asked.once("error", () => {
          if (response.headersSent) response.destroy();
          else if (attempt + 1 < copies.length) forward(attempt + 1);
          else response.writeHead(502).end();
        });
        asked.end(Buffer.concat(chunks));
      }
    });
  });
  await new Promise((resolve) => server.listen(port, "127.0.0.1", () => resolve(undefined)));
  return {
    port,
    async end() {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

/**
 * @param {import("node:child_process").ChildProcess} child
 * @param {number} port
 * @returns {Running}
 */
function keep(child, port) {
  const ended = new Promise((resolve) => child.once("exit", resolve));
  const discard = () => child.kill("SIGKILL");
  process.once("exit", discard);
  return {
    port,
    async end() {
      process.off("exit", discard);
      if (child.exitCode === null && child.signalCode === null) child.kill("SIGKILL");
      await ended;
    },
  };
}

/**
 * @param {string} what begins the sentence
 * @param {import("node:child_process").ChildProcess} child
 * @param {() => Promise<boolean>} isReady
 */
async function waitFor(what, child, isReady) {
  let said = "";
  child.stderr?.on("data", (chunk) => (said = `${said}${String(chunk)}`.slice(-2000)));
  for (let attempt = 0; attempt < START_ATTEMPTS; attempt += 1) {
    if (child.exitCode !== null || child.signalCode !== null) break;
    if (await isReady()) return;
    await pause(POLL_MILLISECONDS);
  }
  child.kill("SIGKILL");
  throw new Error(`${what} did not start. It said: ${said.trim() || "nothing"}`);
}

/** @param {string} base */
async function isHealthy(base) {
  try {
    return (await fetch(`${base}/health`, { signal: AbortSignal.timeout(5000) })).ok;
  } catch {
    return false;
  }
}

/**
 * @param {number} port
 * @returns {Promise<boolean>}
 */
function accepts(port) {
  return new Promise((resolve) => {
    const socket = new Socket();
    const answer = (/** @type {boolean} */ open) => {
      socket.destroy();
      resolve(open);
    };
    socket.once("connect", () => answer(true));
    socket.once("error", () => answer(false));
    socket.connect(port, "127.0.0.1");
  });
}
