// Starts processes that run a use case and stop at a statement, and kills them there. Starting takes longer than running,
// so a few wait ahead of their turn.
import { type ChildProcessWithoutNullStreams, spawn } from "node:child_process";
import { once } from "node:events";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";

/** What the process is told. */
export interface WriterOrder {
  readonly appUrl: string;
  readonly useCase: "complete-visit" | "record-fill";
  readonly key: { readonly accountId: string; readonly companyId: string; readonly sessionVersion: number };
  readonly input: unknown;
  readonly nowEpochMilliseconds: number;
  /** The statement that is not sent any more; it counts from one, without those that only read. */
  readonly stopsBefore: number | "commit";
  /** Sends that statement too, and stops without waiting for its answer. */
  readonly sendsIt: boolean;
}

const WRITER = fileURLToPath(new URL("writer-that-stops.ts", import.meta.url));
const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const AHEAD = 3;

export interface KilledWriters {
  /** Gives an order to a process and kills it once it has said something: "stopped", or "done" with the answer. */
  readonly killAt: (order: WriterOrder) => Promise<string>;
  /** Ends those that still wait. */
  readonly close: () => Promise<void>;
}

function start(): ChildProcessWithoutNullStreams {
  return spawn(process.execPath, ["--import", "tsx", WRITER], { cwd: ROOT, stdio: ["pipe", "pipe", "pipe"] });
}

async function kill(writer: ChildProcessWithoutNullStreams): Promise<void> {
  const isRunning = writer.exitCode === null && writer.signalCode === null;
  const ended = isRunning ? once(writer, "exit") : undefined;
  writer.kill("SIGKILL");
  await ended;
}

export function openWriters(): KilledWriters {
  const waiting = Array.from({ length: AHEAD }, start);
  return {
    killAt: async (order) => {
      waiting.push(start());
      const writer = waiting.shift();
      if (writer === undefined) throw new Error("a writer waits");
      let complaints = "";
      writer.stderr.on("data", (chunk: Buffer) => (complaints += chunk.toString()));
      writer.stdin.write(`${JSON.stringify(order)}\n`);
      for await (const line of createInterface({ input: writer.stdout })) {
        await kill(writer);
        return line;
      }
      throw new Error(`The writer ended without a word: ${complaints}`);
    },
    close: async () => {
      await Promise.all(waiting.map(kill));
    },
  };
}
