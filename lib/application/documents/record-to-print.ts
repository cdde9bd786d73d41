import { accept, type Outcome } from "#domain/foundation/outcome";
import { momentOnPaper } from "#domain/papers/paper-time";
import { type RecordAmendment } from "#domain/papers/application-record-paper";
import { recordOnPaper } from "#domain/papers/record-on-paper";
import { type PaperToPrint } from "#application/documents/issued-papers";
import { notFound, type UseCaseRefusal } from "#application/refusal";
import { recordOnFile } from "#application/register/read-record";
import { type Work } from "#application/use-case";

/** A record of the register on paper, with what was amended since. */
export async function recordToPrint(work: Work, registerEntryId: string): Promise<Outcome<PaperToPrint, UseCaseRefusal>> {
  const record = await recordOnFile(work, registerEntryId);
  if (record === undefined) return notFound("record");
  const { number, content, writtenAt, writtenBy, hash, previousHash, isUnaltered } = record;
  const amendments = await amendmentsOf(work, registerEntryId);
  const paper = recordOnPaper({ number, content, writtenAtEpochMilliseconds: writtenAt.getTime(), writtenBy, hash, previousHash, isUnaltered, amendments }, work.company.isDemonstration);
  return accept({
    data: { kind: "application-record", paper },
    subjectId: registerEntryId,
    rulesVersion: content.rulesVersion,
    operatorId: null,
    about: `Record ${String(number)}, ${content.site.street}`,
    warnings: isUnaltered ? [] : ["The hash of this record is not that of what stands in it. The paper says so."],
  });
}

async function amendmentsOf(work: Work, amendsId: string): Promise<readonly RecordAmendment[]> {
  const { companyId, timeZone } = work.company;
  const rows = await work.tx.registerEntry.findMany({ where: { companyId, amendsId }, orderBy: { number: "asc" }, include: { person: true }, take: 50 });
  return rows.map(({ writtenAt, person, content, hash }) => ({
    when: momentOnPaper(writtenAt.getTime(), timeZone),
    who: person.name,
    words: wordsOf(content),
    hash: Buffer.from(hash).toString("hex"),
  }));
}

/** The words of an amendment; one of another form is printed as it stands, because nothing of the register is left out. */
function wordsOf(content: string): string {
  const said: unknown = JSON.parse(content);
  const words = typeof said === "object" && said !== null && "words" in said ? said.words : undefined;
  return typeof words === "string" ? words : content;
}
