import { type Metadata } from "next";
import { notFound } from "next/navigation";
import { may } from "#application/permission";
import { listPrograms, type ProgramInList } from "#application/programs/list-programs";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { dayWords, windowWords } from "#domain/scheduling/window-words";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { asMember, memberOfPage } from "../../session";
import { VisitCounts } from "./visit-counts";

export const metadata: Metadata = { title: "Programs" };

/** What is open now, or what comes next. */
function roundNow({ rounds }: ProgramInList, today: CalendarDate): string {
  const open = rounds.filter((round) => round.opensOn <= today && today <= round.closesOn);
  if (open.length > 0) return open.map((round) => `${round.name}, until ${dayWords(round.closesOn)}`).join("; ");
  const next = rounds.find((round) => round.opensOn > today);
  if (next !== undefined) return `next ${next.name}, ${windowWords(next)}`;
  return rounds.length === 0 ? "" : "all windows have closed";
}

const COLUMNS = [
  { id: "name", head: "Program" },
  { id: "rounds", head: "Rounds", align: "figure" },
  { id: "now", head: "Open now" },
  { id: "properties", head: "Properties", align: "figure" },
  { id: "visits", head: "Visits" },
] as const;

function headSentence(programs: readonly ProgramInList[]) {
  const late = programs.reduce((sum, { visits }) => sum + visits["past-its-window"], 0);
  return (
    <>
      What goes down, where and when.{" "}
      {late > 0 && <strong>{late === 1 ? "One visit is past its window." : `${String(late)} visits are past their window.`}</strong>}
    </>
  );
}

export default async function ProgramsPage() {
  const { member } = await memberOfPage();
  const answer = await asMember(listPrograms, {});
  if (!answer.ok) notFound();
  const { programs, today } = answer.value;
  const add = may(member.role, "programs/add-program") && (
    <LinkButton kind="act" href="/programs/add-program">
      Add a program
    </LinkButton>
  );
  return (
    <>
      <PageHead title="Programs" sentence={programs.length === 0 ? undefined : headSentence(programs)} actions={programs.length === 0 ? undefined : add} />
      {programs.length === 0 && (
        <EmptyState sentence="No program is written yet. Begin with one for most of your lawns; its rounds and what goes down in them come next." actions={add} />
      )}
      <Stack gap={6}>
        {[...groupedBy(programs, ({ season }) => season)].map(([season, own]) => (
          <Section key={season} id={`season-${String(season)}`} name={`Season ${String(season)}`}>
            <Table
              caption={`Programs of ${String(season)}`}
              captionSpoken
              columns={COLUMNS}
              rows={own.map((program) => ({
                id: program.programId,
                href: `/programs/${program.programId}`,
                cells: {
                  name: program.name,
                  rounds: String(program.rounds.length),
                  now: roundNow(program, today),
                  properties: String(program.properties),
                  visits: <VisitCounts visits={program.visits} />,
                },
              }))}
            />
          </Section>
        ))}
      </Stack>
    </>
  );
}
