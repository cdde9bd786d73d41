import { type Prisma, type PrismaClient } from "#adapters/postgres/generated/client";
import { type Role } from "#domain/crew/role";
import { type UsState } from "#domain/company/us-state";

/** A transaction in which the company is set: row level security shows that company's rows and no others. */
export type CompanyTransaction = Prisma.TransactionClient & { readonly companyTransaction: unique symbol };

/** What a signed-in browser carries. The database says at each use whether it still holds. */
export interface SessionKey {
  readonly accountId: string;
  readonly companyId: string;
  readonly sessionVersion: number;
}

/** The person who acts, as the company's books have it at this moment. */
export interface Member {
  readonly accountId: string;
  readonly personId: string;
  readonly personName: string;
  readonly role: Role;
}

/** The company as far as nearly every use case needs it. */
export interface CompanyFacts {
  readonly companyId: string;
  readonly name: string;
  readonly state: UsState;
  readonly timeZone: string;
  readonly isDemonstration: boolean;
}

interface OpenedRow {
  person_id: string;
  person_name: string;
  role: Role;
  company_name: string;
  state: UsState;
  time_zone: string;
  is_demonstration: boolean;
}

/**
 * Runs work in one transaction with the company set, when the session still stands; otherwise nothing runs
 * and the answer is "signed-out". Whatever the work throws rolls everything back.
 */
export function inCompany<Answer>(
  client: PrismaClient,
  key: SessionKey,
  work: (tx: CompanyTransaction, member: Member, company: CompanyFacts) => Promise<Answer>,
): Promise<Answer | "signed-out"> {
  return client.$transaction(async (transaction) => {
    const tx = transaction as CompanyTransaction;
    const [row] = await tx.$queryRaw<OpenedRow[]>`
      SELECT * FROM open_company_work(${key.companyId}::uuid, ${key.accountId}::uuid, ${key.sessionVersion}::int)`;
    if (row === undefined) return "signed-out";
    return work(
      tx,
      { accountId: key.accountId, personId: row.person_id, personName: row.person_name, role: row.role },
      {
        companyId: key.companyId,
        name: row.company_name,
        state: row.state,
        timeZone: row.time_zone,
        isDemonstration: row.is_demonstration,
      },
    );
  });
}

/** Runs work in one transaction with the company set for a guest's link or a command at the terminal. */
export function asGuest<Answer>(
  client: PrismaClient,
  companyId: string,
  work: (tx: CompanyTransaction) => Promise<Answer>,
): Promise<Answer> {
  return client.$transaction(async (transaction) => {
    const tx = transaction as CompanyTransaction;
    await tx.$queryRaw`SELECT open_guest_work(${companyId}::uuid)::text`;
    return work(tx);
  });
}

/** Makes this transaction the only one that writes for its company until it ends. Lock this row first. */
export async function lockCompany(tx: CompanyTransaction): Promise<void> {
  await tx.$queryRaw`SELECT 1 AS locked FROM company WHERE company_id = current_company() FOR UPDATE`;
}
