// @ts-check
import { spawn, spawnSync } from "node:child_process";
import { readSync, closeSync, fstatSync, openSync } from "node:fs";
import process from "node:process";
import { openLog } from "./data-folder.mjs";
import { Refusal, diskFull, meansDiskFull } from "./say.mjs";

const GRACE_MILLISECONDS = 5000;
const TAIL_BYTES = 64 * 1024;
const PRELOAD = new URL("./end-with-parent.mjs", import.meta.url).href;

/**
 * A Node program that writes into a log of its own and can't outlive the launcher.
 *
 * @typedef {object} Child
 * @property {number} pid
 * @property {string} logPath
 * @property {Promise<{ code: number | null, signal: NodeJS.Signals | null }>} ended
 * @property {() => string} output the end of what it has written to its log in this run
 * @property {() => Promise<void>} end asks it to end, and makes it after five seconds
 */

/**
 * Starts a Node program in a process group of its own, so that Ctrl-C reaches only the launcher, which then
 * ends everything in order.
 *
 * @param {object} program
 * @param {import("./data-folder.mjs").DataFolder} program.folder
 * @param {string} program.log name of the log
 * @param {string[]} program.args as after `node`
 * @param {string} program.cwd
 * @param {NodeJS.ProcessEnv} program.env
 * @returns {Child}
 */
export function startChild({ folder, log, args, cwd, env }) {
  const { path, descriptor } = openLog(folder, log);
  const begin = fstatSync(descriptor).size;
  const child = spawn(process.execPath, ["--import", PRELOAD, ...args], {
    cwd,
    env: withLauncher(env),
    detached: process.platform !== "win32",
    stdio: ["ignore", descriptor, descriptor, "ipc"],
  });
  closeSync(descriptor);
  /** @type {Child["ended"]} */
  const ended = new Promise((resolve, reject) => {
    child.once("error", reject);
    child.once("exit", (code, signal) => resolve({ code, signal }));
  });
  // Whoever waits for it hears of a failure; this keeps one that nobody waits for from being fatal.
  ended.catch(() => undefined);
  const pid = child.pid ?? 0;
  return {
    pid,
    logPath: path,
    ended,
    output: () => readFrom(path, begin),
    async end() {
      signalGroup(pid, "SIGTERM");
      const force = setTimeout(() => signalGroup(pid, "SIGKILL"), GRACE_MILLISECONDS);
      await ended.catch(() => undefined);
      clearTimeout(force);
      // What it has started may still be there when it is gone.
      signalGroup(pid, "SIGKILL");
    },
  };
}

/**
 * Runs a Node program to its end and refuses, naming its log, when it fails.
 *
 * @param {Parameters<typeof startChild>[0] & { title: string, aborted: AbortSignal }} step the title begins
 *   the sentence, such as "The build"
 * @returns {Promise<string>} what it has written
 */
export async function runToEnd(step) {
  step.aborted.throwIfAborted();
  const child = startChild(step);
  const end = () => void child.end();
  step.aborted.addEventListener("abort", end, { once: true });
  const { code, signal } = await child.ended;
  step.aborted.removeEventListener("abort", end);
  if (step.aborted.aborted) await child.end();
  step.aborted.throwIfAborted();
  const output = child.output();
  if (code === 0) return output;
  if (meansDiskFull(output)) throw new Refusal(diskFull(undefined));
  const how = signal === null ? "failed" : `was ended (${signal})`;
  throw new Refusal(`${step.title} ${how}: ${lastWords(output)} The whole output is in ${child.logPath}.`);
}

/**
 * Runs a Node program in the terminal that we run in, questions included.
 *
 * @param {{ args: string[], cwd: string, env: NodeJS.ProcessEnv }} program
 * @returns {Promise<number>} its exit code
 */
export function runInTerminal({ args, cwd, env }) {
  return new Promise((resolve, reject) => {
    const stdio = /** @type {import("node:child_process").StdioOptions} */ (["inherit", "inherit", "inherit", "ipc"]);
    const child = spawn(process.execPath, ["--import", PRELOAD, ...args], { cwd, env: withLauncher(env), stdio });
    child.once("error", reject);
    child.once("exit", (code) => resolve(code ?? 1));
  });
}

/**
 * Tells a program who started it: see end-with-parent.mjs.
 *
 * @param {NodeJS.ProcessEnv} env
 * @returns {NodeJS.ProcessEnv}
 */
function withLauncher(env) {
  return { ...env, HALFPASS_LAUNCHER_PID: String(process.pid) };
}

/**
 * @param {number} pid of the leader of the group
 * @param {NodeJS.Signals} signal
 */
export function signalGroup(pid, signal) {
  if (pid === 0) return;
  if (process.platform === "win32") {
    spawnSync("taskkill", ["/pid", String(pid), "/t", "/f"], { stdio: "ignore" });
    return;
  }
  try {
    process.kill(-pid, signal);
  } catch {
    // There is nobody left in the group.
  }
}

/**
 * The line of an output that most likely says why: the last that speaks of an error, or else the last.
 *
 * @param {string} output
 */
export function lastWords(output) {
  const lines = output.split("\n").map((line) => line.trim()).filter((line) => line !== "");
  const telling = lines.filter((line) => /error|fatal|panic|cannot|can't/i.test(line) && !/complete log of this run/i.test(line));
  const line = telling.at(-1) ?? lines.at(-1) ?? "it said nothing";
  return /[.!?]$/.test(line) ? line : `${line}.`;
}

/**
 * The text of a file from a position on, at most its last 64 KB.
 *
 * @param {string} path
 * @param {number} begin in bytes
 */
export function readFrom(path, begin) {
  const descriptor = openSync(path, "r");
  try {
    const size = fstatSync(descriptor).size;
    const from = Math.max(begin, size - TAIL_BYTES);
    const bytes = Buffer.alloc(Math.max(0, size - from));
    readSync(descriptor, bytes, 0, bytes.length, from);
    return bytes.toString("utf8");
  } finally {
    closeSync(descriptor);
  }
}
