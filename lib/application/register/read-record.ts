import { z } from "zod";
import { registerHash } from "#adapters/register-hash";
import { accept } from "#domain/foundation/outcome";
import { type RecordContent } from "#domain/register/record-content";
import { idField } from "#application/field.schema";
import { notFound } from "#application/refusal";
import { useCase, type Work } from "#application/use-case";

/** A record as it stands in the register. */
export interface RecordOnFile {
  readonly registerEntryId: string;
  readonly number: number;
  readonly visitId: string;
  readonly content: RecordContent;
  readonly writtenAt: Date;
  readonly writtenBy: string;
  readonly hash: string;
  readonly previousHash: string;
  /** Whether the hash is that of the bytes that stand there. */
  readonly isUnaltered: boolean;
}

interface EntryRow {
  readonly registerEntryId: string;
  readonly number: number;
  readonly visitId: string;
  readonly content: string;
  readonly writtenAt: Date;
  readonly hash: Uint8Array;
  readonly previousHash: Uint8Array;
  readonly person: { readonly name: string };
}

/** Bytes as papers print them. */
export function hexOf(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString("hex");
}

/** Whether the hash of an entry is that of the bytes that stand there. */
export function isHashOf({ hash, previousHash, content }: Pick<EntryRow, "hash" | "previousHash" | "content">): boolean {
  return hexOf(registerHash(previousHash, content)) === hexOf(hash);
}

/** A row of the register with its content read and its hash computed again. */
export function recordOf(row: EntryRow): RecordOnFile {
  const { registerEntryId, number, visitId, content, writtenAt, hash, previousHash, person } = row;
  return {
    registerEntryId,
    number,
    visitId,
    content: JSON.parse(content) as RecordContent,
    writtenAt,
    writtenBy: person.name,
    hash: hexOf(hash),
    previousHash: hexOf(previousHash),
    isUnaltered: isHashOf(row),
  };
}

/** One record of the company. Undefined when there is none of that id. */
export async function recordOnFile(work: Work, registerEntryId: string): Promise<RecordOnFile | undefined> {
  const { companyId } = work.company;
  const row = await work.tx.registerEntry.findFirst({ where: { companyId, registerEntryId }, include: { person: true }, take: 1 });
  return row === null ? undefined : recordOf(row);
}

/** One record whole, with its hash checked against its bytes. */
export const readRecord = useCase("register/read-record", z.object({ registerEntryId: idField }), async (work, { registerEntryId }) => {
  const record = await recordOnFile(work, registerEntryId);
  return record === undefined ? notFound("record") : accept({ record });
});
