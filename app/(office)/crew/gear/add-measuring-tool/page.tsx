import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../page-for";
import { AddMeasuringToolForm } from "./add-measuring-tool-form.client";

export const metadata: Metadata = { title: "Add a measuring tool" };

export default async function AddMeasuringToolPage() {
  await pageFor("equipment/add-measuring-tool");
  return (
    <>
      <PageHead
        above={<Link href="/crew/gear">Trucks and gear</Link>}
        title="Add a measuring tool"
        sentence="Amounts on a mix ticket are rounded to its marks."
      />
      <Sheet>
        <AddMeasuringToolForm />
      </Sheet>
    </>
  );
}
