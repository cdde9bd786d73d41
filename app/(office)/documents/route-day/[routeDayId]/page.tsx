import { type Metadata } from "next";
import { notFound } from "next/navigation";
import { readPacket } from "#application/documents/read-packet";
import { type LeftOut } from "#application/documents/issued-papers";
import { formatLongDate } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { listWords } from "#domain/foundation/list-words";
import { PAPER_WORDS } from "#domain/papers/issued-paper-data";
import { Finding } from "#ui/finding";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { PressForm } from "../../../../action-form.client";
import { asMember } from "../../../../session";
import { pageFor } from "../../../page-for";
import { printLoadingListAction, printPacketAction, printRouteSheetAction } from "../../action";
import { IssuesTable } from "../../issues-table";

export const metadata: Metadata = { title: "Papers of a day" };

export default async function RouteDayPapersPage({ params }: { readonly params: Promise<{ readonly routeDayId: string }> }) {
  const { company } = await pageFor("documents/read-packet");
  const { routeDayId } = await params;
  const answer = await asMember(readPacket, { routeDayId });
  if (!answer.ok && answer.refusal.kind !== "not-allowed") notFound();
  if (!answer.ok) return <PageHead title="Papers of a day" sentence={answer.refusal.sentence} />;
  const { truck, date, papers, leftOut, issues } = answer.value;
  const fixed = { routeDayId };
  return (
    <>
      <PageHead
        title={`Papers of ${truck}`}
        sentence={`${formatLongDate(date)}. ${papers.length === 1 ? "One paper" : `${String(papers.length)} papers`} can be printed${leftOut.length === 0 ? "." : `, ${String(leftOut.length)} can’t.`}`}
      />
      <Section id="packet" name="The packet">
        <Stack gap={5}>
          <LeftOutList leftOut={leftOut} />
          <Table
            caption="What is printed"
            captionSpoken
            columns={[
              { id: "kind", head: "Paper" },
              { id: "about", head: "About" },
            ]}
            rows={papers.map(({ about, kind }) => ({ id: `${kind} ${about}`, cells: { kind: PAPER_WORDS[kind], about } }))}
          />
          <Row align="top" fillOnPhone>
            <PressForm kind="act" action={printPacketAction} fixed={fixed} whilePending="Printing">
              Print the packet
            </PressForm>
            <PressForm action={printRouteSheetAction} fixed={fixed} whilePending="Printing">
              Route sheet only
            </PressForm>
            <PressForm action={printLoadingListAction} fixed={fixed} whilePending="Printing">
              Loading list only
            </PressForm>
          </Row>
        </Stack>
      </Section>
      <IssuesTable issues={issues} timeZone={company.timeZone} empty="Nothing of this day was printed yet. Each print is kept here as it was, with the time and the person." />
    </>
  );
}

/** What will be missing from the packet, once for each reason. */
function LeftOutList({ leftOut }: { readonly leftOut: readonly LeftOut[] }) {
  const reasons = groupedBy(leftOut, ({ why }) => why);
  return [...reasons].map(([why, missing]) => (
    <Finding
      key={why}
      level="take-care"
      what={missing.length === 1 ? "One paper is not printed." : `${String(missing.length)} papers are not printed.`}
      figure={`${listWords(missing.map(({ what }) => what))}: ${why}`}
      source="house"
    />
  ));
}
