import { renderIssuedPaper } from "#adapters/pdf/render-issued-paper";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type IssuedPaperData, type PaperKind } from "#domain/papers/issued-paper-data";
import { type BusinessOnFile } from "#domain/papers/company-on-paper";
import { type Deed, writeDeed } from "#application/audit-trail";
import { conflict, type UseCaseRefusal } from "#application/refusal";
import { fromStoredJson, toStoredJson } from "#application/stored-json";
import { type Work } from "#application/use-case";

/** A paper that is ready to be issued. */
export interface PaperToPrint {
  readonly data: IssuedPaperData;
  /** The mix ticket, visit, route day or register entry that it is about. */
  readonly subjectId: string;
  readonly rulesVersion: string;
  /** Who applies by it: of the crew only this person may print and read it. Null: nobody of the crew. */
  readonly operatorId: string | null;
  /** What it is about, in the words of lists: "Mix ticket 12, 4 Sorrel Lane". */
  readonly about: string;
  /** What whoever prints it should know first, as sentences. */
  readonly warnings: readonly string[];
}

/** Something of a packet that was not printed, and why. */
export interface LeftOut {
  readonly what: string;
  readonly why: string;
}

/** What is kept with an issued paper: all that it says, and whose it is. */
export interface StoredPaper {
  readonly form: "issued-paper-1";
  readonly about: string;
  readonly operatorId: string | null;
  readonly data: IssuedPaperData;
  /** On the first paper of a packet: everything that was printed with it, and what was not. */
  readonly packet?: { readonly paperIds: readonly string[]; readonly leftOut: readonly LeftOut[] };
}

/** An issued paper as a list shows it. */
export interface PaperIssue {
  readonly issuedPaperId: string;
  readonly kind: PaperKind;
  readonly about: string;
  readonly issuedAt: Date;
  readonly issuedBy: string;
  /** What was not printed with it, where it is the first paper of a packet; else null. */
  readonly packetLeftOut: readonly LeftOut[] | null;
}

/** The business as papers name it now. */
export async function businessOnFile(work: Work): Promise<BusinessOnFile> {
  const { companyId } = work.company;
  const { name, address, phone, businessLicenseNumber } = await work.tx.company.findUniqueOrThrow({ where: { companyId } });
  return { name, address, phone, businessLicenseNumber };
}

/** Only the office and the person of the day print a paper by which somebody works. */
export function refuseOthersPaper({ member }: Work, { operatorId }: Pick<PaperToPrint, "operatorId">): UseCaseRefusal | undefined {
  const isCrew = member.role === "applicator" || member.role === "technician";
  if (!isCrew || operatorId === member.personId) return undefined;
  return { kind: "not-allowed", sentence: "This paper is for somebody else’s day. Ask the office." };
}

/** Why a paper can't be drawn, or nothing. */
export async function refuseUnprintable({ data }: PaperToPrint): Promise<UseCaseRefusal | undefined> {
  const drawn = await renderIssuedPaper(data);
  return drawn.ok ? undefined : conflict(drawn.refusal.sentence).refusal;
}

/** Keeps a paper as it is printed now, without a deed. */
export async function keepPaper(work: Work, issuedPaperId: string, paper: PaperToPrint, packet?: StoredPaper["packet"]): Promise<void> {
  const { data, subjectId, rulesVersion, operatorId, about } = paper;
  const stored: StoredPaper = { form: "issued-paper-1", about, operatorId, data, ...(packet === undefined ? {} : { packet }) };
  await work.tx.issuedPaper.create({
    data: { companyId: work.company.companyId, issuedPaperId, kind: data.kind, subjectId, data: toStoredJson(stored), rulesVersion, personId: work.member.personId, issuedAt: work.now },
  });
}

/** Issues a paper, after it was drawn once to see that it can be: keeps what it says and writes the deed. */
export async function issuePaper(work: Work, prepared: Outcome<PaperToPrint, UseCaseRefusal>): Promise<Outcome<{ readonly issuedPaperId: string }, UseCaseRefusal>> {
  if (!prepared.ok) return prepared;
  const paper = prepared.value;
  const refusal = refuseOthersPaper(work, paper) ?? (await refuseUnprintable(paper));
  if (refusal !== undefined) return { ok: false, refusal };
  const issuedPaperId = work.newId();
  await keepPaper(work, issuedPaperId, paper);
  const deed: Deed = { deed: "paper-printed", details: { kind: paper.data.kind, about: paper.about } };
  await writeDeed(work, paper.subjectId, deed);
  return accept({ issuedPaperId });
}

/** An issued paper with what is kept of it. Undefined when the company has none of that id. */
export async function paperOnFile(work: Work, issuedPaperId: string) {
  const { companyId } = work.company;
  const row = await work.tx.issuedPaper.findUnique({ where: { companyId_issuedPaperId: { companyId, issuedPaperId } } });
  return row === null ? undefined : { ...row, kind: row.kind as PaperKind, stored: fromStoredJson(row.data) as StoredPaper };
}

/** Earlier issues of papers about these subjects, the newest first; of one kind where a kind is named. */
export async function issuesAbout(work: Work, subjectIds: readonly string[], kind?: PaperKind): Promise<readonly PaperIssue[]> {
  const { companyId } = work.company;
  const rows = await work.tx.issuedPaper.findMany({
    where: { companyId, subjectId: { in: [...subjectIds] }, ...(kind === undefined ? {} : { kind }) },
    orderBy: [{ issuedAt: "desc" }, { issuedPaperId: "desc" }],
    take: 100,
  });
  const people = await work.tx.person.findMany({ where: { companyId, personId: { in: rows.map(({ personId }) => personId) } } });
  const nameOf = new Map(people.map(({ personId, name }) => [personId, name]));
  return rows.map((row) => {
    const { about, packet } = fromStoredJson(row.data) as StoredPaper;
    return {
      issuedPaperId: row.issuedPaperId,
      kind: row.kind as PaperKind,
      about,
      issuedAt: row.issuedAt,
      issuedBy: nameOf.get(row.personId) ?? "",
      packetLeftOut: packet?.leftOut ?? null,
    };
  });
}
