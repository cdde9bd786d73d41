import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { readPerson } from "#application/people/read-person";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../../session";
import { pageFor } from "../../../page-for";
import { ChangePersonForm } from "./change-person-form.client";

export const metadata: Metadata = { title: "Change a person" };

interface Props {
  readonly params: Promise<{ readonly personId: string }>;
}

export default async function ChangePersonPage({ params }: Props) {
  await pageFor("people/change-person");
  const answer = await asMember(readPerson, await params);
  if (!answer.ok) notFound();
  const { person } = answer.value;
  return (
    <>
      <PageHead above={<Link href={`/crew/${person.personId}`}>{person.name}</Link>} title="Change a person" />
      <Sheet>
        <ChangePersonForm
          personId={person.personId}
          version={String(person.version)}
          values={{ name: person.name, phone: person.phone ?? "", leftOn: person.leftOn ?? "" }}
        />
      </Sheet>
    </>
  );
}
