import { z } from "zod";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type PaperKind } from "#domain/papers/issued-paper-data";
import { issuesAbout, type PaperIssue, type PaperToPrint, refuseOthersPaper, refuseUnprintable } from "#application/documents/issued-papers";
import { mixTicketToPrint } from "#application/documents/mix-ticket-to-print";
import { PRINTING } from "#application/documents/read-issued-paper";
import { recordToPrint } from "#application/documents/record-to-print";
import { noticeToPrint, signToPrint } from "#application/documents/visit-papers-to-print";
import { idField } from "#application/field.schema";
import { may } from "#application/permission";
import { notFound, type UseCaseRefusal } from "#application/refusal";
import { useCase, type Work } from "#application/use-case";

/** The kinds that have a page of their own; a day's papers are on the day's page. */
const KINDS_WITH_PAGE = ["mix-ticket", "application-record", "customer-notice", "posting-sign"] as const;
type KindWithPage = (typeof KINDS_WITH_PAGE)[number];

const PREPARE: Readonly<Record<KindWithPage, (work: Work, subjectId: string) => Promise<Outcome<PaperToPrint, UseCaseRefusal>>>> = {
  "mix-ticket": mixTicketToPrint,
  "application-record": recordToPrint,
  "customer-notice": noticeToPrint,
  "posting-sign": signToPrint,
};

/** What a page says before a paper is printed. */
export interface PaperPreview {
  readonly kind: PaperKind;
  /** Null where nothing can be printed, and then there is a reason. */
  readonly about: string | null;
  readonly why: string | null;
  readonly warnings: readonly string[];
  readonly issues: readonly PaperIssue[];
}

const readPaperToPrintSchema = z.object({ kind: z.enum(KINDS_WITH_PAGE), subjectId: idField });

/** Says what would be printed, what is missing for it and why, and when the same paper was printed before. */
export const readPaperToPrint = useCase("documents/read-paper-to-print", readPaperToPrintSchema, async (work, { kind, subjectId }) => {
  if (!may(work.member.role, PRINTING[kind])) return notFound("paper");
  const prepared = await PREPARE[kind](work, subjectId);
  if (!prepared.ok && prepared.refusal.kind !== "conflict") return prepared;
  const issues = await issuesAbout(work, [subjectId], kind);
  if (!prepared.ok) return accept<PaperPreview>({ kind, about: null, why: prepared.refusal.sentence, warnings: [], issues });
  const refusal = refuseOthersPaper(work, prepared.value);
  if (refusal !== undefined) return { ok: false, refusal };
  const unprintable = await refuseUnprintable(prepared.value);
  const { about, warnings } = prepared.value;
  if (unprintable !== undefined) return accept<PaperPreview>({ kind, about: null, why: unprintable.sentence, warnings, issues });
  return accept<PaperPreview>({ kind, about, why: null, warnings, issues });
});
