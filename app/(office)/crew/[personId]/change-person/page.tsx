import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../page-for";
import { personOfPage, type PersonPageProps } from "../person-of-page";
import { ChangePersonForm } from "./change-person-form.client";

export const metadata: Metadata = { title: "Change a person" };

export default async function ChangePersonPage(props: PersonPageProps) {
  await pageFor("people/change-person");
  const person = await personOfPage(props);
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
