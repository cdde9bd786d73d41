// @ts-check
import { get } from "node:http";
import { join } from "node:path";
import process from "node:process";
import { setTimeout as pause } from "node:timers/promises";
import { standaloneFolder } from "./build.mjs";
import { lastWords, startChild } from "./child.mjs";
import { isPostgresError, readValue, withConnection } from "./connection.mjs";
import { refuseTakenPort } from "./ports.mjs";
import { Refusal } from "./say.mjs";

const LOOPBACK = "127.0.0.1";
const STRIP_FORWARDED_HEADERS = new URL("../server/strip-forwarded-headers.mjs", import.meta.url).href;
const FIRST_ANSWER_MILLISECONDS = 60_000;
const POLL_MILLISECONDS = 50;
const HTTP_SERVER_ERROR = 500;

/**
 * The address to listen on, which the owner can set in the office; this machine alone until then.
 *
 * @param {string} ownerUrl
 * @returns {Promise<string>}
 */
export async function readBindAddress(ownerUrl) {
  try {
    const found = await withConnection(ownerUrl, (client) => readValue(client, "select bind_address from installation limit 1"));
    return typeof found === "string" && found !== "" ? found : LOOPBACK;
  } catch (error) {
    // undefined_table and undefined_column: a database from before there was such a setting.
    if (isPostgresError(error, "42P01", "42703")) return LOOPBACK;
    throw error;
  }
}

/**
 * Starts the web server and waits for its first answer.
 *
 * @param {object} request
 * @param {import("./settings.mjs").Settings} request.settings
 * @param {import("./data-folder.mjs").DataFolder} request.folder
 * @param {import("./secrets.mjs").Secrets} request.secrets
 * @param {string} request.appUrl
 * @param {string} request.bindAddress
 * @returns {import("./child.mjs").Child}
 */
export function startWebServer({ settings, folder, secrets, appUrl, bindAddress }) {
  const standalone = standaloneFolder(settings.checkout);
  // The web server must not know the way past the walls between companies.
  const { DATABASE_OWNER_URL: _owner, ...environment } = process.env;
  return startChild({
    folder,
    log: "web",
    args: ["--import", STRIP_FORWARDED_HEADERS, join(standalone, "server.js")],
    cwd: standalone,
    env: {
      ...environment,
      ...productEnvironment(settings, secrets),
      NODE_ENV: "production",
      PORT: String(settings.port),
      HOSTNAME: bindAddress,
      DATABASE_APP_URL: appUrl,
    },
  });
}

/**
 * What every part of the product is told.
 *
 * @param {import("./settings.mjs").Settings} settings
 * @param {import("./secrets.mjs").Secrets} secrets
 * @returns {Record<string, string>}
 */
export function productEnvironment(settings, secrets) {
  return {
    NEXTAUTH_URL: settings.address,
    NEXTAUTH_SECRET: process.env.NEXTAUTH_SECRET ?? secrets.nextAuthSecret,
    NEXT_SERVER_ACTIONS_ENCRYPTION_KEY:
      process.env.NEXT_SERVER_ACTIONS_ENCRYPTION_KEY ?? secrets.serverActionsEncryptionKey,
    NEXT_TELEMETRY_DISABLED: "1",
  };
}

/**
 * Waits until the web server answers, or refuses when it ends before it does or answers only with errors.
 *
 * @param {import("./child.mjs").Child} web
 * @param {number} port
 * @param {string} bindAddress
 * @param {AbortSignal} aborted
 */
export async function waitForFirstAnswer(web, port, bindAddress, aborted) {
  const host = bindAddress === "0.0.0.0" ? LOOPBACK : bindAddress === "::" ? "::1" : bindAddress;
  const deadline = performance.now() + FIRST_ANSWER_MILLISECONDS;
  let isGone = false;
  void web.ended.then(() => (isGone = true), () => (isGone = true));
  let status = 0;
  while (!isGone && performance.now() < deadline) {
    aborted.throwIfAborted();
    status = await askStatus(host, port);
    if (status > 0 && status < HTTP_SERVER_ERROR) return;
    await pause(POLL_MILLISECONDS);
  }
  const output = web.output();
  if (/EADDRINUSE/.test(output)) await refuseTakenPort(port, bindAddress);
  const what = isGone ? "ended as soon as it was started" : status > 0 ? `answers only with error ${status}` : "does not answer";
  throw new Refusal(`The web server ${what}: ${lastWords(output)} The whole output is in ${web.logPath}.`);
}

/**
 * @param {string} host
 * @param {number} port
 * @returns {Promise<number>} the HTTP status, or 0 for no answer
 */
function askStatus(host, port) {
  return new Promise((resolve) => {
    const request = get({ host, port, path: "/", agent: false, timeout: 10_000 }, (response) => {
      response.resume();
      resolve(response.statusCode ?? 0);
    });
    request.once("timeout", () => request.destroy());
    request.once("error", () => resolve(0));
  });
}
