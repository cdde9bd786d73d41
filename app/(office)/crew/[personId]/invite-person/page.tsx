import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { INVITATION_DAYS } from "#application/people/invite-person";
import { readPerson } from "#application/people/read-person";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../../session";
import { pageFor } from "../../../page-for";
import { InvitePersonForm } from "./invite-person-form.client";

export const metadata: Metadata = { title: "Invite" };

interface Props {
  readonly params: Promise<{ readonly personId: string }>;
}

export default async function InvitePersonPage({ params }: Props) {
  await pageFor("people/invite-person");
  const answer = await asMember(readPerson, await params);
  if (!answer.ok) notFound();
  const { person } = answer.value;
  return (
    <>
      <PageHead
        above={<Link href={`/crew/${person.personId}`}>{person.name}</Link>}
        title={`Invite ${person.name}`}
        sentence={`You get a link to hand over. It works once, within ${String(INVITATION_DAYS)} days.`}
      />
      <Sheet>
        <InvitePersonForm personId={person.personId} />
      </Sheet>
    </>
  );
}
