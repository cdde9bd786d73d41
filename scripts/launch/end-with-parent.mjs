// @ts-check
// Loaded into every program that the launcher starts (node --import). The channel to the launcher closes when
// the launcher dies, however it dies, and then nothing that it started may go on. The programs' own workers inherit
// this too and are left alone: unlike them, a worker lives by its channel, and would end whenever it had to wait.
import process from "node:process";
import { isMainThread } from "node:worker_threads";

const isOfLauncher = process.env.HALFPASS_LAUNCHER_PID === String(process.ppid);

if (isMainThread && isOfLauncher && process.channel !== undefined) {
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
