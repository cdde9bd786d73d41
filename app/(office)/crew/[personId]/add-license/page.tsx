import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { readPerson } from "#application/people/read-person";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../../session";
import { pageFor } from "../../../page-for";
import { AddLicenseForm } from "./add-license-form.client";

export const metadata: Metadata = { title: "Add a license" };

interface Props {
  readonly params: Promise<{ readonly personId: string }>;
}

export default async function AddLicensePage({ params }: Props) {
  const { company } = await pageFor("people/add-license");
  const answer = await asMember(readPerson, await params);
  if (!answer.ok) notFound();
  const { person } = answer.value;
  return (
    <>
      <PageHead
        above={<Link href={`/crew/${person.personId}`}>{person.name}</Link>}
        title="Add a license"
        sentence="As the state printed it. A renewal is a new entry with its own dates."
      />
      <Sheet>
        <AddLicenseForm personId={person.personId} state={company.state} />
      </Sheet>
    </>
  );
}
