import { z } from "zod";
import { renderIssuedPaper, renderPacket } from "#adapters/pdf/render-issued-paper";
import { invariant } from "#domain/foundation/invariant";
import { accept } from "#domain/foundation/outcome";
import { fileNameOf, type PaperKind } from "#domain/papers/issued-paper-data";
import { type LeftOut, paperOnFile, refuseOthersPaper, type StoredPaper } from "#application/documents/issued-papers";
import { idField } from "#application/field.schema";
import { may, type UseCaseName } from "#application/permission";
import { conflict, notFound } from "#application/refusal";
import { useCase, type Work } from "#application/use-case";

/** The use case that prints each kind: who may not print a kind may not read it either. */
export const PRINTING: Readonly<Record<PaperKind, UseCaseName>> = {
  "route-sheet": "documents/print-route-sheet",
  "loading-list": "documents/print-loading-list",
  "mix-ticket": "documents/print-mix-ticket",
  "customer-notice": "documents/print-customer-notice",
  "posting-sign": "documents/print-posting-sign",
  "application-record": "documents/print-application-record",
};

const readIssuedPaperSchema = z.object({
  issuedPaperId: idField,
  /** The paper alone, or everything that was printed with it. */
  extent: z.enum(["paper", "packet"]).default("paper"),
});

/** Draws an issued paper again from what is kept of it: the same bytes each time, whatever has changed since. */
export const readIssuedPaper = useCase("documents/read-issued-paper", readIssuedPaperSchema, async (work, { issuedPaperId, extent }) => {
  const found = await paperOnFile(work, issuedPaperId);
  if (found === undefined || !may(work.member.role, PRINTING[found.kind])) return notFound("paper");
  const { stored } = found;
  const refusal = refuseOthersPaper(work, stored);
  if (refusal !== undefined) return { ok: false, refusal };
  if (extent === "packet" && stored.packet === undefined) return notFound("packet");
  const drawn = extent === "packet" ? await renderPacket(stored.data.paper.frame, await papersOf(work, stored)) : await renderIssuedPaper(stored.data);
  if (!drawn.ok) return conflict(drawn.refusal.sentence);
  const fileName = extent === "packet" ? fileNameOf(stored.data).replace(stored.data.kind, "packet") : fileNameOf(stored.data);
  const leftOut: readonly LeftOut[] = stored.packet?.leftOut ?? [];
  return accept({ kind: found.kind, about: stored.about, issuedAt: found.issuedAt, fileName, pdf: drawn.value, leftOut });
});

async function papersOf(work: Work, { packet }: StoredPaper): Promise<readonly StoredPaper["data"][]> {
  const papers: StoredPaper["data"][] = [];
  for (const paperId of packet?.paperIds ?? []) {
    const paper = await paperOnFile(work, paperId);
    invariant(paper !== undefined, "the papers of a packet are kept with it");
    papers.push(paper.stored.data);
  }
  return papers;
}
