import { notFound } from "next/navigation";
import { cache } from "react";
import { readVisit, type VisitRead } from "#application/visits/read-visit";
import { asMember } from "../../../session";

/** What a page below a visit's address is given. */
export interface VisitPageProps {
  readonly params: Promise<{ readonly visitId: string }>;
}

/** Asked once for the visit's own page, whose title wants to know too. */
const readOnce = cache((visitId: string) => asMember(readVisit, { visitId, withCost: true }));

/** The visit of a page below its own; where there is none, there is no page. */
export async function visitOfPage({ params }: VisitPageProps): Promise<Omit<VisitRead, "cost">> {
  return orNotFound(await asMember(readVisit, { visitId: (await params).visitId }));
}

/** The visit whose own page is drawn, which alone shows what it costs. */
export async function visitWithCost({ params }: VisitPageProps): Promise<VisitRead> {
  return orNotFound(await readOnce((await params).visitId));
}

function orNotFound(answer: Awaited<ReturnType<typeof readOnce>>): VisitRead {
  if (!answer.ok) notFound();
  return answer.value;
}

/** The title of a visit's own page; whether there is a page is not for its title to say. */
export async function titleOfVisit({ params }: VisitPageProps): Promise<string> {
  const answer = await readOnce((await params).visitId);
  return answer.ok ? `${answer.value.visit.property.street}, ${answer.value.visit.name}` : "Visit";
}
