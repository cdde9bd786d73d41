// @ts-check
import process from "node:process";

const SECONDS_WIDTH = 7;

// A terminal that has gone away must not take the launcher with it: it still has a database to end.
for (const stream of [process.stdout, process.stderr]) stream.on("error", () => undefined);

/** An expected end: one sentence for the person at the terminal, and the exit code that goes with it. */
export class Refusal extends Error {
  /**
   * @param {string} sentence what was found and what to do about it
   * @param {number} [exitCode] from 1 to 255
   */
  constructor(sentence, exitCode = 1) {
    super(sentence);
    this.name = "Refusal";
    this.exitCode = exitCode;
  }
}

/**
 * Prints one line of progress with the seconds since this program began.
 *
 * @param {string} sentence
 */
export function say(sentence) {
  const seconds = `${(performance.now() / 1000).toFixed(1)} s`;
  process.stdout.write(`${seconds.padStart(SECONDS_WIDTH)}  ${sentence}\n`);
}

/**
 * Prints lines that belong to no moment, such as the address at the end.
 *
 * @param {string} text
 */
export function show(text) {
  process.stdout.write(`${text}\n`);
}

/**
 * Turns anything that was thrown into one sentence. A full disk has the same sentence wherever it was met.
 *
 * @param {unknown} error
 * @returns {{ sentence: string, exitCode: number }}
 */
export function asSentence(error) {
  if (error instanceof Refusal) return { sentence: error.message, exitCode: error.exitCode };
  const message = error instanceof Error ? error.message : String(error);
  const code = error instanceof Error && "code" in error ? error.code : undefined;
  const path = error instanceof Error && "path" in error ? String(error.path) : undefined;
  if (code === "ENOSPC" || code === "EDQUOT" || meansDiskFull(message)) {
    return { sentence: diskFull(path), exitCode: 1 };
  }
  if (code === "EACCES" || code === "EPERM" || code === "EROFS") {
    return { sentence: `This user may not write to ${path ?? "a folder it needs"} (${message}).`, exitCode: 1 };
  }
  return { sentence: `Halfpass met something it did not expect: ${message}`, exitCode: 1 };
}

/**
 * Whether a program's output says that the disk is full.
 *
 * @param {string} output
 */
export function meansDiskFull(output) {
  return /ENOSPC|EDQUOT|No space left on device|Disk quota exceeded|\b53100\b/i.test(output);
}

/**
 * The sentence about a full disk.
 *
 * @param {string | undefined} path a file or folder on that disk
 */
export function diskFull(path) {
  return `The disk is full${path === undefined ? "" : ` (writing ${path})`}: make room on it and start again; what was saved is safe.`;
}
