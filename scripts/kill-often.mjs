// Kills parts of a running office again and again: npm run kill-often, or npm run kill-often -- 300 for as many rounds.
// `npm test` does each kind of kill once (tests/launcher/supervision.test.ts). Each round kills -9 one part (launcher, web
// server, database, or all at once) at a moment drawn from a seed, starts again, and asks that the office serves and
// that every row which was committed is still there.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import process from "node:process";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { findFreePort } from "./launch/ports.mjs";

const CHECKOUT = dirname(dirname(fileURLToPath(import.meta.url)));
const PARTS = ["launcher", "web server", "database", "everything"];
const LONGEST_LIFE_MILLISECONDS = 2500;
const SERVING_MILLISECONDS = 180_000;

/** Park and Miller's minimal standard generator: the same seed kills at the same moments. */
function drawFrom(seed) {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

function launch(place) {
  const child = spawn(process.execPath, [join(CHECKOUT, "scripts", "start.mjs")], {
    env: { ...process.env, HALFPASS_DATA: place.data, PORT: String(place.port) },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const launcher = { child, said: "", ended: once(child, "close") };
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (bytes) => (launcher.said += String(bytes)));
  return launcher;
}

async function untilServing(launcher) {
  const latest = Date.now() + SERVING_MILLISECONDS;
  while (!launcher.said.includes("Ctrl-C ends it.")) {
    if (launcher.child.exitCode !== null) throw new Error(`The launcher ended:\n${launcher.said}`);
    if (Date.now() > latest) throw new Error(`It does not serve:\n${launcher.said}`);
    await pause(50);
  }
}

function pidsOf(place, part) {
  const running = JSON.parse(readFileSync(join(place.data, "running.json"), "utf8"));
  const database = Number(readFileSync(join(place.data, "postgres", "postmaster.pid"), "utf8").split("\n")[0]);
  const pids = { launcher: [running.launcher.pid], "web server": [running.web.pid], database: [database] };
  return pids[part] ?? Object.values(pids).flat();
}

/** Prints a first-run link, which is a committed row, and answers with its address. */
async function writeLink(place) {
  const command = spawn(process.execPath, [join(CHECKOUT, "scripts", "company.mjs")], {
    env: { ...process.env, HALFPASS_DATA: place.data, PORT: String(place.port) },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let said = "";
  for (const stream of [command.stdout, command.stderr]) stream.on("data", (bytes) => (said += String(bytes)));
  await once(command, "close");
  const link = /http:\/\/\S+first-run\S+/.exec(said)?.[0];
  if (link === undefined) throw new Error(`No link was printed:\n${said}`);
  return link;
}

async function isStillThere(link) {
  const page = await fetch(link);
  return page.ok && (await page.text()).includes("Create the company");
}

async function playRound(place, draw) {
  const part = PARTS[Math.floor(draw() * PARTS.length)];
  const launcher = launch(place);
  await untilServing(launcher);
  for (const link of place.links.slice(-5)) {
    if (!(await isStillThere(link))) throw new Error("A link that was committed is gone.");
  }
  if (draw() < 0.2) place.links.push(await writeLink(place));
  await pause(draw() * LONGEST_LIFE_MILLISECONDS);
  for (const pid of pidsOf(place, part)) process.kill(pid, "SIGKILL");
  // The launcher ends by itself when a part of it is gone.
  await launcher.ended;
  return part;
}

const rounds = Number(process.argv[2] ?? 100);
const seed = Number(process.argv[3] ?? 42);
if (!Number.isInteger(rounds) || rounds < 1 || !Number.isInteger(seed) || seed < 1) {
  process.stderr.write("Usage: npm run kill-often -- [rounds] [seed], both whole numbers above zero\n");
  process.exit(2);
}
const data = mkdtempSync(join(tmpdir(), "halfpass-kills-"));
const place = { data, port: await findFreePort(), links: [] };
const draw = drawFrom(seed);
let passed = 0;
let failed = 0;
for (let round = 1; round <= rounds && failed === 0; round += 1) {
  try {
    process.stdout.write(`${round}: killed: ${await playRound(place, draw)}\n`);
    passed += 1;
  } catch (error) {
    process.stdout.write(`${round}: ${error.message}\n`);
    failed += 1;
  }
}
const last = launch(place);
await untilServing(last).catch((error) => {
  process.stdout.write(`${error.message}\n`);
  failed += 1;
});
last.child.kill("SIGINT");
await last.ended;
rmSync(data, { recursive: true, force: true });
process.stdout.write(`${passed} passed, ${failed} failed\n`);
process.exitCode = failed === 0 ? 0 : 1;
