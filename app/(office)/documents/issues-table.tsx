import { type PaperIssue } from "#application/documents/issued-papers";
import { momentOnPaper } from "#domain/papers/paper-time";
import { EmptyState } from "#ui/empty-state";
import { Section } from "#ui/section";
import { Table } from "#ui/table";

/** What was printed before, the newest first: each opens as it was printed then. */
export function IssuesTable({ issues, timeZone, empty }: { readonly issues: readonly PaperIssue[]; readonly timeZone: string; readonly empty: string }) {
  return (
    <Section id="printed" name="Printed before">
      <Table
        caption="Printed before, the newest first"
        captionSpoken
        columns={[
          { id: "at", head: "When" },
          { id: "what", head: "What" },
          { id: "by", head: "By" },
        ]}
        rows={issues.map((issue) => ({
          id: issue.issuedPaperId,
          cells: { at: momentOnPaper(issue.issuedAt.getTime(), timeZone), what: <OpenIssue issue={issue} />, by: issue.issuedBy },
        }))}
        empty={<EmptyState sentence={empty} />}
      />
    </Section>
  );
}

/** A file, which the browser must fetch itself. */
function OpenIssue({ issue: { issuedPaperId, about, packetLeftOut } }: { readonly issue: PaperIssue }) {
  const paper = <a href={`/documents/papers/${issuedPaperId}`}>{about}</a>;
  if (packetLeftOut === null) return paper;
  const lacking = packetLeftOut.length === 0 ? "complete" : `without ${packetLeftOut.map(({ what }) => what).join("; ")}`;
  return (
    <>
      {paper}, <a href={`/documents/papers/${issuedPaperId}?extent=packet`}>with its whole packet</a> ({lacking})
    </>
  );
}
