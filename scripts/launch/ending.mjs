// @ts-check
import process from "node:process";
import { asSentence, say } from "./say.mjs";

const PARENT_POLL_MILLISECONDS = 1000;
/** As shells have it: 128 and the number of the signal. */
const INTERRUPTED = 130;

/**
 * Why a run ends.
 *
 * @typedef {object} Reason
 * @property {string} sentence
 * @property {number} exitCode
 * @property {boolean} unexpected something that ran has ended by itself
 */

/**
 * The end of a run: begun once, by a signal, a refusal or something that broke, and carried out in the reverse
 * order of the start.
 *
 * @typedef {object} Ending
 * @property {AbortSignal} aborted
 * @property {(close: (reason: Reason) => unknown) => void} later what to do at the end
 * @property {(reason: Reason) => void} begin the first reason counts
 * @property {() => void} serving from here on an asked-for end is a success
 * @property {Promise<void>} begun
 * @property {() => Promise<number>} finish closes everything and answers the exit code
 */

/**
 * Listens for everything that can ask a program to end.
 *
 * @returns {Ending}
 */
export function watchForEnd() {
  const controller = new AbortController();
  /** @type {((reason: Reason) => unknown)[]} */
  const closers = [];
  /** @type {Reason | undefined} */
  let reason;
  let isServing = false;
  const begin = (/** @type {Reason} */ why) => {
    if (reason !== undefined) return;
    reason = why;
    controller.abort();
  };
  const asked = (/** @type {string} */ sentence) =>
    begin({ sentence, exitCode: isServing ? 0 : INTERRUPTED, unexpected: false });
  // A terminal sends Ctrl-C to npm and to us, and npm sends it on: only the first one counts.
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP", "SIGBREAK"]) process.on(signal, () => asked("Ending …"));
  watchNpm(() => asked("npm, which started this, is gone. Ending …"));
  return {
    aborted: controller.signal,
    later: (close) => void closers.push(close),
    begin,
    serving: () => void (isServing = true),
    begun: new Promise((resolve) => controller.signal.addEventListener("abort", () => resolve(), { once: true })),
    async finish() {
      const why = reason ?? { sentence: "", exitCode: 0, unexpected: false };
      if (why.sentence !== "") say(why.sentence);
      for (const close of closers.reverse()) {
        try {
          await close(why);
        } catch (error) {
          say(asSentence(error).sentence);
        }
      }
      if (isServing && !why.unexpected) say("Everything has ended.");
      return why.exitCode;
    },
  };
}

/**
 * Whoever kills npm means us: it would otherwise leave us running out of sight.
 *
 * @param {() => void} gone
 */
function watchNpm(gone) {
  if (process.env.npm_lifecycle_event === undefined || process.platform === "win32") return;
  const parent = process.ppid;
  const timer = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(timer);
    gone();
  }, PARENT_POLL_MILLISECONDS);
  timer.unref();
}

/**
 * Runs a program from its start to its ordered end, and leaves the process.
 *
 * @param {(ending: Ending) => Promise<void>} work
 */
export async function runWithEnding(work) {
  const ending = watchForEnd();
  try {
    await work(ending);
  } catch (error) {
    ending.begin({ ...asSentence(error), unexpected: false });
  }
  const exitCode = await ending.finish();
  // Whatever is still written to a pipe gets through before the process goes.
  process.stdout.write("", () => process.exit(exitCode));
}
