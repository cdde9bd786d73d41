import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../page-for";
import { AddPersonForm } from "./add-person-form.client";

export const metadata: Metadata = { title: "Add a person" };

export default async function AddPersonPage() {
  await pageFor("people/add-person");
  return (
    <>
      <PageHead
        above={<Link href="/crew">Crew</Link>}
        title="Add a person"
        sentence="Into the crew's books. An account comes by invitation, if they need one."
      />
      <Sheet>
        <AddPersonForm />
      </Sheet>
    </>
  );
}
