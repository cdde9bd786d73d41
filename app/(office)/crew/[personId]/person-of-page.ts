import { notFound } from "next/navigation";
import { cache } from "react";
import { type PersonOfCrew } from "#application/people/list-people";
import { readPerson } from "#application/people/read-person";
import { asMember } from "../../../session";

/** What a page below a person's address is given. */
export interface PersonPageProps {
  readonly params: Promise<{ readonly personId: string }>;
}

/** Asked once for a page, however many of its parts want to know. */
const readOnce = cache((personId: string) => asMember(readPerson, { personId }));

/** The person whose page is drawn; where there is none, there is no page. */
export async function personOfPage({ params }: PersonPageProps): Promise<PersonOfCrew> {
  const answer = await readOnce((await params).personId);
  if (!answer.ok) notFound();
  return answer.value.person;
}

/** The person's name for the page's title, or undefined: whether there is a page is not for its title to say. */
export async function personNameOfPage({ params }: PersonPageProps): Promise<string | undefined> {
  const answer = await readOnce((await params).personId);
  return answer.ok ? answer.value.person.name : undefined;
}
