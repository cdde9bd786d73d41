import { notFound } from "next/navigation";
import { cache } from "react";
import { readVisit, type VisitRead } from "#application/visits/read-visit";
import { asMember } from "../../../session";

/** What a page below a visit's address is given. */
export interface VisitPageProps {
  readonly params: Promise<{ readonly visitId: string }>;
}

/** Asked once for a page, however many of its parts want to know. */
const readOnce = cache((visitId: string) => asMember(readVisit, { visitId }));

/** The visit whose page is drawn; where there is none, there is no page. */
export async function visitOfPage({ params }: VisitPageProps): Promise<VisitRead> {
  const answer = await readOnce((await params).visitId);
  if (!answer.ok) notFound();
  return answer.value;
}

/** The title of a visit's page; whether there is a page is not for its title to say. */
export async function titleOfVisit({ params }: VisitPageProps): Promise<string> {
  const answer = await readOnce((await params).visitId);
  return answer.ok ? `${answer.value.visit.property.street}, ${answer.value.visit.name}` : "Visit";
}
