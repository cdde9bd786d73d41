import { type Prisma, type PrismaClient } from "#adapters/postgres/generated/client";
import { type CompanyTransaction } from "#adapters/postgres/company-work";
import { type Role } from "#domain/crew/role";

// The doors to the global tables, one function each, named as the database names them.

/** A client or a transaction of one. */
export type AnyConnection = PrismaClient | Prisma.TransactionClient;

export interface AccountForSignIn {
  readonly accountId: string;
  readonly passwordHash: string;
  readonly sessionVersion: number;
}

/** The account of an email address, if there is one. */
export async function accountForSignIn(db: AnyConnection, email: string): Promise<AccountForSignIn | undefined> {
  const rows = await db.$queryRaw<{ account_id: string; password_hash: string; session_version: number }[]>`
    SELECT * FROM account_for_sign_in(${email})`;
  const row = rows[0];
  return row && { accountId: row.account_id, passwordHash: row.password_hash, sessionVersion: row.session_version };
}

/** The address and hash of a standing session's account. */
export async function accountOfSession(
  db: AnyConnection,
  accountId: string,
  sessionVersion: number,
): Promise<{ readonly email: string; readonly passwordHash: string } | undefined> {
  const rows = await db.$queryRaw<{ email: string; password_hash: string }[]>`
    SELECT * FROM account_of_session(${accountId}::uuid, ${sessionVersion}::int)`;
  return rows[0] && { email: rows[0].email, passwordHash: rows[0].password_hash };
}

export interface CompanyOfAccount {
  readonly companyId: string;
  readonly companyName: string;
  readonly role: Role;
}

/** The companies an account belongs to now, oldest membership first. */
export async function companiesOfAccount(db: AnyConnection, accountId: string): Promise<readonly CompanyOfAccount[]> {
  const rows = await db.$queryRaw<{ company_id: string; company_name: string; role: Role }[]>`
    SELECT * FROM companies_of_account(${accountId}::uuid)`;
  return rows.map((row) => ({ companyId: row.company_id, companyName: row.company_name, role: row.role }));
}

/** Email addresses of the open company's members by account. */
export async function emailsOfMembers(tx: CompanyTransaction): Promise<ReadonlyMap<string, string>> {
  const rows = await tx.$queryRaw<{ account_id: string; email: string }[]>`SELECT * FROM emails_of_members()`;
  return new Map(rows.map((row) => [row.account_id, row.email]));
}

/** Makes an account; false when the address has one. */
export async function createAccount(
  db: AnyConnection,
  account: { readonly accountId: string; readonly email: string; readonly passwordHash: string; readonly now: Date },
): Promise<boolean> {
  const rows = await db.$queryRaw<{ made: boolean }[]>`
    SELECT create_account(${account.accountId}::uuid, ${account.email}, ${account.passwordHash}, ${account.now}::timestamptz) AS made`;
  return rows[0]?.made === true;
}

/** Changes the password of a standing session; the new session version, or undefined when it no longer stood. */
export async function changePasswordOf(
  db: AnyConnection,
  accountId: string,
  sessionVersion: number,
  passwordHash: string,
): Promise<number | undefined> {
  const rows = await db.$queryRaw<{ version: number | null }[]>`
    SELECT change_password(${accountId}::uuid, ${sessionVersion}::int, ${passwordHash}) AS version`;
  return rows[0]?.version ?? undefined;
}

/** Counts an attempt before the password is looked at; false when the key has used up its attempts. */
export async function takeSignInAttempt(
  db: AnyConnection,
  key: string,
  limit: { readonly attempts: number; readonly windowMinutes: number; readonly now: Date },
): Promise<boolean> {
  const rows = await db.$queryRaw<{ may: boolean }[]>`
    SELECT take_sign_in_attempt(${key}, ${limit.attempts}::int, ${limit.now}::timestamptz, make_interval(mins => ${limit.windowMinutes}::int)) AS may`;
  return rows[0]?.may === true;
}

/** Gives one attempt back, or forgets all of the key's attempts. */
export async function returnSignInAttempt(db: AnyConnection, key: string, which: "one" | "all"): Promise<void> {
  await db.$queryRaw`SELECT return_sign_in_attempt(${key}, ${which === "all"})::text`;
}

export interface NewLink {
  readonly linkId: string;
  readonly secretHash: Uint8Array<ArrayBuffer>;
  readonly now: Date;
  readonly expiresAt: Date;
}

/** Keeps a link by which someone at the terminal opens the first-run page. */
export async function issueFirstRunLink(db: AnyConnection, link: NewLink): Promise<void> {
  await db.$queryRaw`
    SELECT issue_first_run_link(${link.linkId}::uuid, ${link.secretHash}, ${link.now}::timestamptz, ${link.expiresAt}::timestamptz)::text`;
}

/** What became of a reset link. A member of several companies gets one from the terminal only. */
export type ResetLinkIssue = "issued" | "not-a-member" | "in-other-companies";

/** Keeps a link by which a member of the open company sets a new password. */
export async function issuePasswordReset(
  tx: CompanyTransaction,
  accountId: string,
  link: NewLink & { readonly isFromTerminal: boolean },
): Promise<ResetLinkIssue> {
  const rows = await tx.$queryRaw<{ issue: ResetLinkIssue }[]>`
    SELECT issue_password_reset(${link.linkId}::uuid, ${accountId}::uuid, ${link.secretHash}, ${link.now}::timestamptz,
      ${link.expiresAt}::timestamptz, ${link.isFromTerminal}) AS issue`;
  return rows[0]?.issue ?? "not-a-member";
}

/** A link of this purpose that can still be used, with the address it is for. */
export async function standingLink(
  db: AnyConnection,
  purpose: "first-run" | "password-reset",
  secretHash: Uint8Array<ArrayBuffer>,
  now: Date,
): Promise<{ readonly email: string | null } | undefined> {
  const rows = await db.$queryRaw<{ email: string | null }[]>`
    SELECT * FROM standing_link(${purpose}, ${secretHash}, ${now}::timestamptz)`;
  return rows[0] && { email: rows[0].email };
}

/** Uses up a first-run link; false when it no longer stands. */
export async function consumeFirstRunLink(db: AnyConnection, secretHash: Uint8Array<ArrayBuffer>, now: Date): Promise<boolean> {
  const rows = await db.$queryRaw<{ used: boolean }[]>`
    SELECT use_first_run_link(${secretHash}, ${now}::timestamptz) AS used`;
  return rows[0]?.used === true;
}

/** Uses up a reset link and sets the password; the account, or undefined when the link no longer stands. */
export async function resetPasswordBy(
  db: AnyConnection,
  secretHash: Uint8Array<ArrayBuffer>,
  passwordHash: string,
  now: Date,
): Promise<string | undefined> {
  const rows = await db.$queryRaw<{ account_id: string | null }[]>`
    SELECT reset_password(${secretHash}, ${passwordHash}, ${now}::timestamptz) AS account_id`;
  return rows[0]?.account_id ?? undefined;
}

export type BindAddress = "127.0.0.1" | "0.0.0.0";

export interface InstallationFacts {
  readonly bindAddress: BindAddress;
  readonly demonstrationSeededAt: Date | null;
  readonly hasCompany: boolean;
}

/** What the one row about the installation says. */
export async function readInstallation(db: AnyConnection): Promise<InstallationFacts> {
  const rows = await db.$queryRaw<{ bind_address: BindAddress; demonstration_seeded_at: Date | null; has_company: boolean }[]>`
    SELECT * FROM read_installation()`;
  const row = rows[0];
  if (row === undefined) throw new Error("The installation row is missing: the migrations did not run to their end.");
  return { bindAddress: row.bind_address, demonstrationSeededAt: row.demonstration_seeded_at, hasCompany: row.has_company };
}

/** Keeps the address that the web server listens on from its next start. */
export async function setBindAddress(db: AnyConnection, bindAddress: BindAddress): Promise<void> {
  await db.$queryRaw`SELECT set_bind_address(${bindAddress})::text`;
}

/** Notes that the demonstration was made, so that no later start makes it again. */
export async function noteDemonstration(db: AnyConnection, now: Date): Promise<void> {
  await db.$queryRaw`SELECT note_demonstration(${now}::timestamptz)::text`;
}
