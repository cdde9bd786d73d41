// A launcher in a process of its own, and what a test needs to know of the processes it has started.
import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { isAlive } from "../../scripts/launch/process-identity.mjs";

const START = fileURLToPath(new URL("start-with-stand-in.mjs", import.meta.url));
const POLL_MILLISECONDS = 50;

export interface Launcher {
  readonly process: ChildProcess;
  /** Everything that it has said so far. */
  readonly said: () => string;
  /** Its exit code, or the signal that has ended it. */
  readonly ended: Promise<number | string>;
}

export interface Start {
  readonly data: string;
  readonly port: number;
  readonly args?: readonly string[];
  readonly environment?: Readonly<Record<string, string>>;
}

/** Starts one on a data folder and a port, without what the tests' own environment says about either. */
export function launch({ data, port, args = [], environment: given = {} }: Start): Launcher {
  const inherited = Object.entries(process.env).filter(([name]) => !/^(npm_|DATABASE_|HALFPASS_|VITEST)/.test(name) && name !== "NODE_ENV");
  const environment = { ...Object.fromEntries(inherited), NODE_ENV: "production" as const, HALFPASS_DATA: data, PORT: String(port), ...given };
  const child = spawn(process.execPath, [START, ...args], { env: environment, stdio: ["ignore", "pipe", "pipe"] });
  let said = "";
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (bytes) => (said += String(bytes)));
  const ended = once(child, "close").then(([code, signal]: unknown[]) => (typeof code === "number" ? code : String(signal)));
  return { process: child, said: () => said, ended };
}

/** Waits until it serves; one that ends instead throws what it has said. */
export async function untilServing(launcher: Launcher): Promise<void> {
  await untilSaid(launcher, "Ctrl-C ends it.");
}

/** Waits for a sentence; a launcher that ends without it throws what it has said. */
export async function untilSaid(launcher: Launcher, sentence: string): Promise<void> {
  while (!launcher.said().includes(sentence)) {
    if (launcher.process.exitCode !== null || launcher.process.signalCode !== null) throw new Error(`It has ended without saying "${sentence}":\n${launcher.said()}`);
    await pause(POLL_MILLISECONDS);
  }
}

/** Waits until none of the processes is left. */
export async function untilGone(...pids: readonly number[]): Promise<void> {
  while (pids.some(runs)) await pause(POLL_MILLISECONDS);
}

/** A process that has ended and that nobody has asked about yet no longer runs. */
function runs(pid: number): boolean {
  if (!isAlive(pid)) return false;
  const state = existsSync(`/proc/${pid}/stat`) ? readFileSync(`/proc/${pid}/stat`, "latin1") : "";
  return !/\) [ZX] /.test(state);
}

/** The web server that a launcher has started, by the note that it keeps. */
export function webServerOf(data: string): number {
  const { web } = JSON.parse(readFileSync(join(data, "running.json"), "utf8")) as { web: { pid: number } };
  return web.pid;
}

/** The main process of the database that a launcher has started, by PostgreSQL's own note. */
export function databaseOf(data: string): number {
  return Number(readFileSync(join(data, "postgres", "postmaster.pid"), "utf8").split("\n")[0]);
}

/** Both of them. */
export function startedBy(data: string): { web: number; database: number } {
  return { web: webServerOf(data), database: databaseOf(data) };
}
