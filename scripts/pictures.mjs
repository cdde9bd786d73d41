// Pictures of every page in every theme at three widths, in .artifacts/pages: npm run pictures. The browser tests take
// them on the way, and keep two of each page when they run as part of `npm test`. One of each paper stands beside them,
// in .artifacts/papers.
import { spawn, spawnSync } from "node:child_process";
import { join } from "node:path";
import process from "node:process";

spawnSync(process.execPath, ["--import", "tsx", join(import.meta.dirname, "sample-papers.ts")], { stdio: "inherit" });

const test = spawn(process.execPath, [join(import.meta.dirname, "test.mjs"), "browser"], {
  env: { ...process.env, HALFPASS_PICTURES: "all" },
  stdio: "inherit",
});
test.once("close", (code) => {
  process.exitCode = code ?? 1;
});
