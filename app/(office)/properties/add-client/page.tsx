import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../page-for";
import { AddClientForm } from "./add-client-form.client";

export const metadata: Metadata = { title: "Add a customer" };

export default async function AddClientPage() {
  const { company } = await pageFor("properties/add-client");
  return (
    <>
      <PageHead
        above={<Link href="/properties">Properties</Link>}
        title="Add a customer"
        sentence="With the first of their properties. Lawns, access and watering come next, on the property's own page."
      />
      <Sheet>
        <AddClientForm state={company.state} />
      </Sheet>
    </>
  );
}
