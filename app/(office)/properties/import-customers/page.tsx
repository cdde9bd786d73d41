import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { pageFor } from "../../page-for";
import { ImportCustomersForm } from "./import-customers-form.client";

export const metadata: Metadata = { title: "Import a list" };

export default async function ImportCustomersPage() {
  await pageFor("properties/import-customers");
  return (
    <>
      <PageHead
        above={<Link href="/properties">Properties</Link>}
        title="Import a list"
        sentence="From a spreadsheet saved as CSV: a line for each property. Nothing is stored until you press Import at the end."
      />
      <ImportCustomersForm />
    </>
  );
}
