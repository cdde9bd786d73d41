// @ts-check
// Packages may not be installed yet, so what needs them is imported when they are.
import { join } from "node:path";
import { runTool } from "../launch/run-tool.mjs";
import { Refusal, say } from "../launch/say.mjs";
import { readFileName } from "./run-backup.mjs";

/**
 * `npm run restore -- FILE`: puts a backup into a database without data, whole or not at all.
 *
 * @param {string[]} args
 */
export function runRestore(args) {
  return runTool({
    purpose: "restore",
    needsTables: false,
    needsData: false,
    needsCharge: true,
    async work({ settings, folder, secrets, charge, aborted }) {
      const path = readFileName(args, "npm run restore -- FILE");
      if (charge === null) throw new Refusal("A restore needs the database for itself: end Halfpass first.");
      const { loadBackup } = await import("./load-backup.mjs");
      const { loadMigrations } = await import("../launch/database.mjs");
      const { forgetFirstStart } = await import("../launch/first-company.mjs");
      const { rememberDemonstration } = await import("../launch/secrets.mjs");
      const prismaFolder = join(settings.checkout, "prisma");
      const { madeAt, tables, rows } = await loadBackup({ ownerUrl: charge.ownerUrl, path, prismaFolder, aborted });
      forgetFirstStart(folder);
      rememberDemonstration(folder, secrets, undefined);
      await charge.migrate(await loadMigrations(settings.checkout));
      say(`The backup of ${madeAt} is restored (${tables} tables, ${rows} rows): npm start opens it.`);
      return 0;
    },
  });
}
