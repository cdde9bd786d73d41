import { isOfPresentPlan, type IssuedTicket } from "#application/visits/issued-ticket";
import { type VisitOnFile } from "#application/visits/read-visit";
import { allWorkings } from "#domain/mixing/ticket-working";
import { LinkButton } from "#ui/button";
import { MarkedWords } from "#ui/marked-words";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { HowWorkedOut } from "#ui/working";
import { holdId } from "./findings-of-visit";
import { IssueTicketForm } from "./issue-ticket-form.client";
import { momentOf } from "./visit-words";

interface TicketSectionProps {
  readonly found: VisitOnFile;
  readonly timeZone: string;
  readonly mayIssue: boolean;
}

function standsStill({ outcome }: VisitOnFile, issued: IssuedTicket): boolean {
  return outcome.ok && isOfPresentPlan(issued, outcome.value);
}

/** The issued mix ticket and whether it still says what would be issued now, with the press that issues it. */
export function TicketSection({ found, timeZone, mayIssue }: TicketSectionProps) {
  const { visit, issued, outcome } = found;
  const isOver = visit.state !== "planned";
  const isStanding = issued !== undefined && standsStill(found, issued);
  return (
    <Stack gap={4}>
      <IssuedWords found={found} timeZone={timeZone} isStanding={isStanding} isOver={isOver} />
      {!isOver && mayIssue && outcome.ok && !isStanding && (
        <IssueTicketForm
          visitId={visit.visitId}
          words={issued === undefined ? "Issue the mix ticket" : "Issue a new mix ticket"}
          isNext
          blockedBy={blockedBy(found)}
        />
      )}
      <Row fillOnPhone>
        {issued !== undefined && (
          <LinkButton document href={`/documents/mix-ticket/${issued.mixTicketId}`}>
            Mix ticket {issued.number}
          </LinkButton>
        )}
        {outcome.ok && (
          <>
            <LinkButton document href={`/documents/customer-notice/${visit.visitId}`}>
              Notice for the customer
            </LinkButton>
            <LinkButton document href={`/documents/posting-sign/${visit.visitId}`}>
              Posting sign
            </LinkButton>
          </>
        )}
      </Row>
      {/* Of what was kept when it was issued, so that the arithmetic is that of the paper. */}
      {issued !== undefined && <HowWorkedOut of={`every amount of mix ticket ${String(issued.number)}`} workings={allWorkings(issued.snapshot)} />}
    </Stack>
  );
}

function blockedBy({ openHolds }: VisitOnFile): { readonly words: string; readonly id: string } | undefined {
  const [first] = openHolds;
  if (first === undefined) return undefined;
  const words = openHolds.length === 1 ? `A hold stands: ${first.what}` : `${String(openHolds.length)} holds stand: ${first.what}`;
  return { words, id: holdId(0) };
}

interface IssuedWordsProps {
  readonly found: VisitOnFile;
  readonly timeZone: string;
  readonly isStanding: boolean;
  readonly isOver: boolean;
}

function IssuedWords({ found: { issued, outcome }, timeZone, isStanding, isOver }: IssuedWordsProps) {
  if (issued === undefined) {
    if (!outcome.ok) return <p>No mix ticket can be issued. {outcome.refusal.refusal.sentence}</p>;
    return <p>{isOver ? "No mix ticket was issued for this visit." : "No mix ticket is issued yet. Until then what stands above may change."}</p>;
  }
  const by = `issued by ${issued.issuedBy} on ${momentOf(issued.issuedAt, timeZone)}`;
  return (
    <Stack gap={2}>
      <p>
        <strong>Mix ticket {issued.number}</strong>, {by}.
      </p>
      {!isOver && (isStanding ? <p>It still says what would be issued now.</p> : <MarkedWords level="take-care">The plan has changed since: it says something else now. Issue a new one.</MarkedWords>)}
    </Stack>
  );
}
