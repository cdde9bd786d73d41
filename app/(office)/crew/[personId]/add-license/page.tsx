import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../page-for";
import { personOfPage, type PersonPageProps } from "../person-of-page";
import { AddLicenseForm } from "./add-license-form.client";

export const metadata: Metadata = { title: "Add a license" };

export default async function AddLicensePage(props: PersonPageProps) {
  const { company } = await pageFor("people/add-license");
  const person = await personOfPage(props);
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
