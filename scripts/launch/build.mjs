// @ts-check
import { createHash } from "node:crypto";
import { cpSync, existsSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { refuseWhileOthersUse } from "./checkout-use.mjs";
import { runToEnd } from "./child.mjs";
import { requireFreeSpace } from "./disk-space.mjs";
import { Refusal, say } from "./say.mjs";

const NEEDED_MEGABYTES = 400;
const SOURCES = [
  "app", "lib", "public", "prisma/schema.prisma", "proxy.ts", "instrumentation.ts", "next.config.ts",
  "postcss.config.mjs", "package.json", "package-lock.json", "tsconfig.json",
];
/** Made from prisma/schema.prisma, which is a source itself. */
const GENERATED = "lib/adapters/postgres/generated";

/**
 * Where the web server of a checkout is started from.
 *
 * @param {string} checkout
 */
export function standaloneFolder(checkout) {
  return join(checkout, ".next", "standalone");
}

/**
 * Makes Prisma's client anew when the schema or the packages have changed since it was last made.
 *
 * @param {string} checkout
 * @param {import("./database.mjs").Migrations} migrations
 */
export async function generateClientIfChanged(checkout, migrations) {
  const marker = join(checkout, "node_modules", ".halfpass-client");
  const hash = hashSources(checkout, ["prisma/schema.prisma", "package-lock.json"]);
  if (existsSync(join(checkout, GENERATED)) && readText(marker) === hash) return;
  await migrations.generateClient();
  writeFileSync(marker, hash);
}

/**
 * Builds the web server when its sources have changed since the last build.
 *
 * @param {object} request
 * @param {string} request.checkout
 * @param {import("./data-folder.mjs").DataFolder} request.folder
 * @param {import("./secrets.mjs").Secrets} request.secrets
 * @param {AbortSignal} request.aborted
 */
export async function buildIfChanged({ checkout, folder, secrets, aborted }) {
  const marker = join(checkout, ".next", "built-from");
  const hash = hashSources(checkout, SOURCES);
  if (readText(marker) === hash) return;
  refuseWhileOthersUse(checkout, "built anew");
  requireFreeSpace(checkout, NEEDED_MEGABYTES, "the build");
  // A build that is cut off must not pass for a finished one.
  rmSync(marker, { force: true });
  say(existsSync(join(checkout, ".next", "BUILD_ID")) ? "The source has changed: building …" : "Building …");
  const standalone = standaloneFolder(checkout);
  rmSync(standalone, { recursive: true, force: true });
  await runToEnd({
    title: "The build",
    folder,
    log: "build",
    args: [join(checkout, "node_modules", "next", "dist", "bin", "next"), "build"],
    cwd: checkout,
    env: {
      ...process.env,
      NODE_ENV: "production",
      NEXT_TELEMETRY_DISABLED: "1",
      NEXT_SERVER_ACTIONS_ENCRYPTION_KEY: process.env.NEXT_SERVER_ACTIONS_ENCRYPTION_KEY ?? secrets.serverActionsEncryptionKey,
    },
    aborted,
  });
  if (!existsSync(join(standalone, "server.js"))) {
    throw new Refusal(`The build made no ${join(standalone, "server.js")}: next.config.ts must say output: "standalone".`);
  }
  cpSync(join(checkout, ".next", "static"), join(standalone, ".next", "static"), { recursive: true });
  if (existsSync(join(checkout, "public"))) cpSync(join(checkout, "public"), join(standalone, "public"), { recursive: true });
  writeFileSync(marker, hash);
  say("The build is done.");
}

/**
 * One hash over the names and contents of files and folders; what is absent counts as empty.
 *
 * @param {string} checkout
 * @param {readonly string[]} sources
 */
export function hashSources(checkout, sources) {
  const hash = createHash("sha256");
  for (const path of sources.flatMap((source) => listFiles(checkout, source))) {
    const content = readFileSync(join(checkout, path));
    hash.update(`${path}\0${content.length}\0`).update(content);
  }
  return hash.digest("hex");
}

/**
 * @param {string} checkout
 * @param {string} path
 * @returns {string[]}
 */
function listFiles(checkout, path) {
  const found = statSync(join(checkout, path), { throwIfNoEntry: false });
  if (found === undefined || path === GENERATED) return [];
  if (found.isFile()) return [path];
  return readdirSync(join(checkout, path)).sort().flatMap((name) => listFiles(checkout, `${path}/${name}`));
}

/** @param {string} path */
function readText(path) {
  return existsSync(path) ? readFileSync(path, "utf8") : null;
}
