// @ts-check
import { runTool } from "./run-tool.mjs";

/**
 * `npm run company`: makes the database available and hands over to scripts/company-command.ts.
 *
 * @param {string[]} args
 */
export function runCompany(args) {
  return runTool({
    purpose: "company",
    needsTables: true,
    needsData: false,
    needsCharge: false,
    async work({ settings, secrets, database }) {
      const { runCompanyCommand } = await import("./first-company.mjs");
      return runCompanyCommand({ settings, secrets, database, args });
    },
  });
}
