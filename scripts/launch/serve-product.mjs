// @ts-check
import { buildIfChanged, generateClientIfChanged } from "./build.mjs";
import { loadMigrations, openDatabase } from "./database.mjs";
import { freeMegabytes } from "./disk-space.mjs";
import { discardCutOffDemonstration, runCompanyCommand, settleFirstCompany } from "./first-company.mjs";
import { refuseTakenPort } from "./ports.mjs";
import { identify } from "./process-identity.mjs";
import { say, show } from "./say.mjs";
import { builtSite, readBindAddress, startWebServer, waitForFirstAnswer } from "./web-server.mjs";

const SPACE_CHECK_MILLISECONDS = 60_000;
const LOW_MEGABYTES = 200;

/**
 * The part of the start that needs the packages: database, tables, first company, build, web server.
 *
 * @param {object} request
 * @param {import("./settings.mjs").Settings} request.settings
 * @param {import("./data-folder.mjs").DataFolder} request.folder
 * @param {import("./running.mjs").Claim} request.claim
 * @param {import("./secrets.mjs").Secrets} request.secrets
 * @param {{ empty: boolean }} request.options
 * @param {import("./ending.mjs").Ending} request.ending
 * @param {import("./web-server.mjs").Site} [request.site] what serves instead of the build, which then is not made
 */
export async function serveProduct({ settings, folder, claim, secrets: keptSecrets, options, ending, site }) {
  const { checkout, port } = settings;
  const { aborted } = ending;
  const migrations = await loadMigrations(checkout);
  const database = await openDatabase({ settings, folder, secrets: keptSecrets, purpose: "start" });
  ending.later(() => database.close());
  database.watch((sentence) => ending.begin({ sentence, exitCode: 1, unexpected: true }));
  aborted.throwIfAborted();
  await discardCutOffDemonstration(database);
  await database.migrate(migrations);
  aborted.throwIfAborted();
  await generateClientIfChanged(checkout, migrations);
  const { needsLink, secrets } = await settleFirstCompany({
    settings, folder, secrets: keptSecrets, database, empty: options.empty, aborted,
  });
  await database.settled();
  if (site === undefined) await buildIfChanged({ checkout, folder, secrets, aborted });
  const bindAddress = await readBindAddress(database.adminUrl);
  await refuseTakenPort(port, bindAddress);
  aborted.throwIfAborted();
  const web = startWebServer({ site: site ?? builtSite(checkout), settings, folder, secrets, appUrl: database.appUrl, bindAddress });
  ending.later(() => web.end());
  claim.update({ web: identify(web.pid) });
  await waitForFirstAnswer(web, port, bindAddress, aborted);
  void web.ended.then(({ code, signal }) => {
    const how = signal === null ? `exit code ${code}` : signal;
    ending.begin({ sentence: `The web server ended unexpectedly (${how}); its log is ${web.logPath}.`, exitCode: 1, unexpected: true });
  });
  claim.update({ serving: true });
  ending.serving();
  warnWhenSpaceRunsLow(folder);
  announce(settings, bindAddress, secrets);
  if (needsLink) await runCompanyCommand({ settings, secrets, database, args: [] });
}

/**
 * @param {import("./settings.mjs").Settings} settings
 * @param {string} bindAddress
 * @param {import("./secrets.mjs").Secrets} secrets
 */
function announce(settings, bindAddress, { demonstration }) {
  say("Halfpass is running.");
  show(`\n  ${settings.address}`);
  if (bindAddress !== "127.0.0.1") show(`  It listens on ${bindAddress}, so other machines may reach it too.`);
  if (demonstration !== undefined) {
    show(`  Demonstration sign-in: ${demonstration.email}  password: ${demonstration.password}`);
  }
  show("  Ctrl-C ends it.\n");
}

/**
 * Says once when the disk is getting full. PostgreSQL refuses what it can't write and harms nothing that it
 * has written.
 *
 * @param {import("./data-folder.mjs").DataFolder} folder
 */
function warnWhenSpaceRunsLow(folder) {
  const check = () => {
    const free = freeMegabytes(folder.path);
    if (free >= LOW_MEGABYTES) return;
    clearInterval(timer);
    say(`The disk of ${folder.path} is getting full (${free} MB free): make room, or new entries will be refused.`);
  };
  const timer = setInterval(check, SPACE_CHECK_MILLISECONDS);
  timer.unref();
  check();
}
