import { notFound } from "next/navigation";
import { cache } from "react";
import { readProgram } from "#application/programs/read-program";
import { asMember } from "../../../session";

/** What a page below a program's address is given. */
export interface ProgramPageProps {
  readonly params: Promise<{ readonly programId: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

/** What a page below a round's address is given. */
export interface RoundPageProps {
  readonly params: Promise<{ readonly programId: string; readonly roundId: string }>;
}

/** Asked once for a page, however many of its parts want to know. */
const readOnce = cache((programId: string) => asMember(readProgram, { programId }));

/** The program whose page is drawn; where there is none, there is no page. */
export async function programOfPage({ params }: Pick<ProgramPageProps, "params">) {
  const answer = await readOnce((await params).programId);
  if (!answer.ok) notFound();
  return answer.value;
}

/** The program and the round of a page below a round's address. */
export async function roundOfPage({ params }: RoundPageProps) {
  const { program } = await programOfPage({ params });
  const { roundId } = await params;
  const round = program.rounds.find((each) => each.roundId === roundId);
  if (round === undefined) notFound();
  return { program, round };
}

/** The name for the page's title, or undefined: whether there is a page is not for its title to say. */
export async function nameOfProgram({ params }: Pick<ProgramPageProps, "params">): Promise<string | undefined> {
  const answer = await readOnce((await params).programId);
  return answer.ok ? answer.value.program.name : undefined;
}
