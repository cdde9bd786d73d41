import { type Metadata } from "next";
import Link from "next/link";
import { INVITATION_DAYS } from "#application/people/invite-person";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../page-for";
import { personOfPage, type PersonPageProps } from "../person-of-page";
import { InvitePersonForm } from "./invite-person-form.client";

export const metadata: Metadata = { title: "Invite" };

export default async function InvitePersonPage(props: PersonPageProps) {
  await pageFor("people/invite-person");
  const person = await personOfPage(props);
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
