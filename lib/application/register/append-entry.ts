import { registerHash } from "#adapters/register-hash";
import { canonicalJson, type PlainValue } from "#domain/register/canonical-json";
import { type RecordContent } from "#domain/register/record-content";
import { type Work } from "#application/use-case";

interface EntryFacts {
  readonly requestId: string;
  readonly visitId: string;
  readonly content: RecordContent;
  readonly startedAt: Date;
  readonly endedAt: Date;
  readonly applicatorId: string;
  readonly stockPostingId: string | null;
}

/** What the first entry has before it: thirty-two zero bytes. */
export const BEFORE_THE_FIRST = new Uint8Array(32);

/**
 * Appends a record to the company's register: the next number, the canonical bytes, and the hash over the hash before it
 * and these bytes. The company's row must be locked. The database checks number, chain and hash once more.
 */
export async function appendRecord(work: Work, facts: EntryFacts): Promise<{ readonly registerEntryId: string; readonly number: number }> {
  const { companyId } = work.company;
  const { content, ...columns } = facts;
  const last = await work.tx.registerEntry.findFirst({ where: { companyId }, orderBy: { number: "desc" }, select: { number: true, hash: true } });
  const previousHash = last?.hash ?? BEFORE_THE_FIRST;
  const text = canonicalJson(content as unknown as PlainValue);
  const registerEntryId = work.newId();
  const number = (last?.number ?? 0) + 1;
  await work.tx.registerEntry.create({
    data: {
      ...columns,
      companyId,
      registerEntryId,
      number,
      kind: "record",
      content: text,
      previousHash: new Uint8Array(previousHash),
      hash: registerHash(previousHash, text),
      writtenAt: work.now,
      personId: work.member.personId,
    },
  });
  return { registerEntryId, number };
}
