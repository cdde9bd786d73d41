import { spawn } from "node:child_process";
import { accessSync, chmodSync, constants } from "node:fs";
import { delimiter, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder of the checkout. */
export const PROJECT_FOLDER = fileURLToPath(new URL("..", import.meta.url));

const ENGINE_FILE = join(PROJECT_FOLDER, "scripts", "schema-engine.mjs");

/**
 * Runs the Prisma command line, without npx, and collects what it says.
 * @param {string[]} args what follows `prisma`, except `--config`
 * @param {{prismaFolder: string, ownerUrl?: string}} place the folder that holds `prisma.config.ts`, and the address of
 *   the database as its owner where the command needs one
 * @returns {Promise<{exitCode: number | null, output: string, complaint: string}>} `complaint` is what it printed as an
 *   error, on one line
 */
export function runPrisma(args, { prismaFolder, ownerUrl }) {
  makeEngineExecutable();
  const cli = join(PROJECT_FOLDER, "node_modules", "prisma", "build", "index.js");
  const env = {
    ...process.env,
    ...(ownerUrl === undefined ? {} : { DATABASE_OWNER_URL: ownerUrl }),
    // The engine is started through its first line, and must find the very Node that runs this.
    PATH: [dirname(process.execPath), process.env.PATH].join(delimiter),
    CHECKPOINT_DISABLE: "1",
    PRISMA_HIDE_UPDATE_MESSAGE: "1",
    NO_COLOR: "1",
  };
  return new Promise((resolve, reject) => {
    const config = join(prismaFolder, "prisma.config.ts");
    const child = spawn(process.execPath, [cli, ...args, "--config", config], {
      cwd: PROJECT_FOLDER,
      env,
      stdio: ["ignore", "pipe", "pipe"],
    });
    let output = "";
    let errors = "";
    child.stdout.setEncoding("utf8").on("data", (text) => (output += text));
    child.stderr.setEncoding("utf8").on("data", (text) => (errors += text));
    child.once("error", reject);
    child.once("close", (exitCode) => resolve({ exitCode, output, complaint: extractComplaint(errors) }));
  });
}

/** Some ways of copying a checkout lose the mark that makes a file a program. */
function makeEngineExecutable() {
  try {
    accessSync(ENGINE_FILE, constants.X_OK);
  } catch {
    chmodSync(ENGINE_FILE, 0o755);
  }
}

/** What a person can use of the errors: not Prisma's own progress, and not the places in the engine's source. */
function extractComplaint(errors) {
  const noise = /^(Loaded Prisma config|Prisma schema loaded|external connector error$|\d+: \w+::|with migration_name=|at schema-engine\/)/;
  const lines = errors.split("\n").map((line) => line.trim().replace(/^Error: /, ""));
  return lines.filter((line) => line !== "" && !noise.test(line)).join(" ");
}
