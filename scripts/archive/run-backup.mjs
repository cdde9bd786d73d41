// @ts-check
// Packages may not be installed yet, so what needs them is imported when they are.
import { resolve } from "node:path";
import process from "node:process";
import { runTool } from "../launch/run-tool.mjs";
import { Refusal, say } from "../launch/say.mjs";

const WRONG_USE = 2;

/**
 * `npm run backup -- FILE`: writes every table into one file, while the office is open or not.
 *
 * @param {string[]} args
 */
export function runBackup(args) {
  return runTool({
    purpose: "backup",
    needsTables: false,
    needsData: true,
    needsCharge: false,
    async work({ database, aborted }) {
      const path = readFileName(args, "npm run backup -- FILE");
      const { writeBackup } = await import("./write-backup.mjs");
      const { tables, rows } = await writeBackup({ url: database.adminUrl, path, now: new Date(), aborted });
      say(`The backup is written: ${path} (${tables} tables, ${rows} rows). Keep it as safe as the office itself.`);
      return 0;
    },
  });
}

/**
 * The file that was named, from where the person stands: npm itself goes to the folder with package.json.
 *
 * @param {string[]} args
 * @param {string} usage
 */
export function readFileName(args, usage) {
  const [file, ...rest] = args;
  if (file === undefined || file.startsWith("-") || rest.length > 0) throw new Refusal(`Usage: ${usage}`, WRONG_USE);
  return resolve(process.env.INIT_CWD ?? process.cwd(), file);
}
