/**
 * npm run company                  prints a one-time link that opens the page for a new company
 * npm run company -- reset EMAIL   prints a one-time link by which a locked-out owner sets a new password
 *
 * scripts/company.mjs runs this with DATABASE_APP_URL and NEXTAUTH_URL set.
 */
import { randomBytes, randomUUID } from "node:crypto";
import { openClient } from "#adapters/postgres/client";
import { issueOwnerResetLink } from "#application/accounts/issue-owner-reset-link";
import { issueFirstRunLink } from "#application/companies/issue-first-run-link";
import { type House } from "#application/use-case";

const USAGE = "Usage: npm run company, or: npm run company -- reset EMAIL";

function when(instant: Date): string {
  return new Intl.DateTimeFormat("en-US", { dateStyle: "medium", timeStyle: "short" }).format(instant);
}

async function main(words: readonly string[], house: House, address: string): Promise<string> {
  const [verb, email, ...rest] = words;
  if (verb === undefined) {
    const { secret, expiresAt } = await issueFirstRunLink(house);
    return `Open this once, before ${when(expiresAt)}, to create the company:\n  ${new URL(`/first-run/${secret}`, address).href}`;
  }
  if (verb !== "reset" || email === undefined || rest.length > 0) throw new Error(USAGE);
  const answer = await issueOwnerResetLink(house, email);
  if (!answer.ok) throw new Error(answer.refusal.sentence);
  const { secret, expiresAt } = answer.value;
  return `Open this once, before ${when(expiresAt)}, to set a new password:\n  ${new URL(`/reset-password/${secret}`, address).href}`;
}

const databaseAddress = process.env["DATABASE_APP_URL"];
if (databaseAddress === undefined) throw new Error("DATABASE_APP_URL is not set.");
const client = openClient(databaseAddress, 1);
const house: House = { client, now: () => new Date(), newId: randomUUID, newSecret: () => randomBytes(32).toString("base64url") };
try {
  process.stdout.write(`${await main(process.argv.slice(2), house, process.env["NEXTAUTH_URL"] ?? "http://localhost:3210")}\n`);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
} finally {
  await client.$disconnect();
}
