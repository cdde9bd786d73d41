import Link from "next/link";
import { may } from "#application/permission";
import { type ProgramOnFile } from "#application/programs/read-program";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { memberOfPage } from "../../../session";
import { NitrogenOfSeason, rangeNamed } from "./nitrogen-of-season";
import { nameOfProgram, programOfPage, type ProgramPageProps } from "./program-of-page";
import { RoundsOfProgram } from "./rounds-of-program";

export async function generateMetadata(props: ProgramPageProps) {
  return { title: (await nameOfProgram(props)) ?? "Programs" };
}

function headSentence({ season, rounds, properties }: ProgramOnFile) {
  const late = rounds.reduce((sum, { visits }) => sum + visits["past-its-window"], 0);
  const counted = `${rounds.length === 1 ? "1 round" : `${String(rounds.length)} rounds`}, ${properties === 1 ? "1 property" : `${String(properties)} properties`}`;
  return (
    <>
      Season {season}: {counted}. {late > 0 && <strong>{late === 1 ? "One visit is past its window." : `${String(late)} visits are past their window.`}</strong>}
    </>
  );
}

/** A program: its rounds in the order of time, and the nitrogen of its season. */
export default async function ProgramPage(props: ProgramPageProps) {
  const { member } = await memberOfPage();
  const { program, today } = await programOfPage(props);
  const { beside } = await props.searchParams;
  const base = `/programs/${program.programId}`;
  const mayChange = may(member.role, "programs/add-round");
  const hasRounds = program.rounds.length > 0;
  const addRound = (
    <LinkButton kind={hasRounds ? "plain" : "act"} href={`${base}/add-round`}>
      Add a round
    </LinkButton>
  );
  const actions = mayChange && hasRounds && (
    <Row>
      {addRound}
      <LinkButton kind="act" href={`${base}/put-on-program`}>
        Put properties on
      </LinkButton>
    </Row>
  );
  return (
    <>
      <PageHead above={<Link href="/programs">Programs</Link>} title={program.name} sentence={headSentence(program)} actions={actions} />
      {hasRounds ? (
        <Stack gap={6}>
          <Section id="rounds" name="Rounds">
            <RoundsOfProgram rounds={program.rounds} today={today} hrefOf={mayChange ? ({ roundId }) => `${base}/rounds/${roundId}/change-round` : undefined} />
          </Section>
          <Section id="nitrogen" name="Nitrogen over the season">
            <NitrogenOfSeason program={program} range={rangeNamed(typeof beside === "string" ? beside : undefined)} />
          </Section>
        </Stack>
      ) : (
        <EmptyState sentence="This program has no round yet. A round says when it may be done and what goes down." actions={mayChange ? addRound : undefined} />
      )}
    </>
  );
}
