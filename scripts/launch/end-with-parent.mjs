// @ts-check
// Loaded into every program that the launcher starts (node --import). The channel to the launcher closes when
// the launcher dies, however it dies, and then nothing that it started may go on.
import process from "node:process";
import { isMainThread } from "node:worker_threads";

if (isMainThread && process.channel !== undefined) {
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
