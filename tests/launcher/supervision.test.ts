// The launcher with real processes and a real database: whatever of it is killed, the next start puts in order.
import { chmod, mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { findFreePort } from "../../scripts/launch/ports.mjs";
import { type Launcher, databaseOf, launch, startedBy, untilGone, untilSaid, untilServing } from "./launcher";

let parent: string;
let data: string;
let port: number;
let running: Launcher[] = [];

function start(args: readonly string[] = []): Launcher {
  const launcher = launch({ data, port, args });
  running.push(launcher);
  return launcher;
}

async function startServing(args: readonly string[] = []): Promise<Launcher> {
  const launcher = start(args);
  await untilServing(launcher);
  return launcher;
}

async function interrupt(launcher: Launcher): Promise<number | string> {
  launcher.process.kill("SIGINT");
  return await launcher.ended;
}

async function answers(): Promise<string> {
  return await (await fetch(`http://127.0.0.1:${port}/`)).text();
}

beforeAll(async () => {
  parent = await mkdtemp(join(tmpdir(), "halfpass-launcher-"));
  // Root lends the database to another user, who must be able to enter.
  await chmod(parent, 0o711);
  data = join(parent, "data");
  port = await findFreePort();
  await interrupt(await startServing(["--empty"]));
});

afterEach(async () => {
  for (const launcher of running) await interrupt(launcher);
  running = [];
});

afterAll(() => rm(parent, { recursive: true, force: true }));

test("an interrupt ends everything that was started, and leaves no note of a bad end", async () => {
  const launcher = await startServing();
  expect(launcher.said()).not.toContain("putting things in order");
  expect(await answers()).toBe("stand-in\n");
  const { web, database } = startedBy(data);
  expect(await interrupt(launcher)).toBe(0);
  await untilGone(web, database);
  expect(await readdir(data)).not.toContain("running.json");
  expect(launcher.said()).toContain("Everything has ended.");
});

test("a launcher that is killed takes its web server with it; the next start takes over its database and says so", async () => {
  const first = await startServing();
  const before = startedBy(data);
  first.process.kill("SIGKILL");
  await untilGone(before.web);
  const second = await startServing();
  expect(second.said()).toContain("did not end cleanly");
  expect(second.said()).toContain("still running and is taken over");
  expect(startedBy(data).database).toBe(before.database);
  expect(await answers()).toBe("stand-in\n");
  expect(await interrupt(second)).toBe(0);
  await untilGone(before.database);
});

test("a web server that is killed ends the launcher and the database; the next start says so", async () => {
  const first = await startServing();
  const { web, database } = startedBy(data);
  process.kill(web, "SIGKILL");
  expect(await first.ended).toBe(1);
  expect(first.said()).toContain("The web server ended unexpectedly (SIGKILL)");
  await untilGone(database);
  const second = await startServing();
  expect(second.said()).toContain("The last run ended by itself: The web server ended unexpectedly");
  expect(await answers()).toBe("stand-in\n");
});

test("a database that is killed ends the launcher and the web server; the next start repairs it and says so", async () => {
  const first = await startServing();
  const { web, database } = startedBy(data);
  process.kill(database, "SIGKILL");
  expect(await first.ended).toBe(1);
  expect(first.said()).toContain("The database ended unexpectedly.");
  await untilGone(web);
  const second = await startServing();
  expect(second.said()).toContain("The last run ended by itself: The database ended unexpectedly.");
  expect(second.said()).toContain("has repaired itself");
  expect(await answers()).toBe("stand-in\n");
});

test("all three killed at once: the next start puts everything in order", async () => {
  const first = await startServing();
  const { web, database } = startedBy(data);
  first.process.kill("SIGKILL");
  process.kill(database, "SIGKILL");
  await untilGone(web, database);
  const second = await startServing();
  expect(second.said()).toContain("did not end cleanly");
  expect(second.said()).toContain("has repaired itself");
  expect(await answers()).toBe("stand-in\n");
});

test("a second copy on the same data is told where the first one is, and does it no harm", async () => {
  const first = await startServing();
  const second = start();
  expect(await second.ended).toBe(1);
  expect(second.said()).toContain(`Another copy of Halfpass is already running: http://localhost:${port}`);
  expect(await answers()).toBe("stand-in\n");
  expect(await interrupt(first)).toBe(0);
});

test("an interrupt in the middle of a start leaves no process", async () => {
  const launcher = start();
  await untilSaid(launcher, "The database is up");
  const database = databaseOf(data);
  expect(await interrupt(launcher)).toBe(130);
  await untilGone(database);
  expect(await readdir(data)).not.toContain("running.json");
});
