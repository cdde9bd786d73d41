// @ts-check
// Loaded into every program that the launcher starts (node --import). The channel to the launcher closes when
// the launcher dies, however it dies, and then nothing that it started may go on.
import process from "node:process";
import { isMainThread } from "node:worker_threads";

/**
 * A program that is started hands this file on to the workers that it forks. They have a channel too, to the program
 * and not to the launcher, and need it kept: a build whose worker loses it ends in the middle without a word.
 */
const isStartedByLauncher = process.env.HALFPASS_LAUNCHER === String(process.ppid);

if (isMainThread && isStartedByLauncher && process.channel !== undefined) {
  process.once("disconnect", () => {
    try {
      // The programs are leaders of their own process groups, so this reaches what they have started too.
      process.kill(-process.pid, "SIGKILL");
    } catch {
      process.exit(1);
    }
  });
  // Listening must not keep a program alive that is done.
  process.channel.unref();
}
