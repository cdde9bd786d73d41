// @ts-check
import { setTimeout as pause } from "node:timers/promises";
import { signalGroup } from "./child.mjs";
import { stillRuns } from "./process-identity.mjs";
import { say } from "./say.mjs";

const GRACE_ATTEMPTS = 50;

/**
 * Says that the last run did not end cleanly, and ends a web server that it has left behind. The database looks
 * after itself when it is opened.
 *
 * @param {import("./running.mjs").Claim["previous"]} previous
 */
export async function recover(previous) {
  if (previous === null) return;
  if (previous === "unreadable") {
    say("The last run did not end cleanly, and its note can't be read: putting things in order.");
    return;
  }
  say(
    previous.ended === null
      ? `The last run ("npm ${previous.purpose === "start" ? "start" : `run ${previous.purpose}`}" of ${previous.startedAt}) did not end cleanly: putting things in order.`
      : `The last run ended by itself: ${previous.ended} Putting things in order.`,
  );
  if (previous.web === null || !stillRuns(previous.web)) return;
  say(`Its web server was still running (process ${previous.web.pid}) and is ended.`);
  signalGroup(previous.web.pid, "SIGTERM");
  for (let attempt = 0; attempt < GRACE_ATTEMPTS && stillRuns(previous.web); attempt += 1) await pause(100);
  signalGroup(previous.web.pid, "SIGKILL");
}
