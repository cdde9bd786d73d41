import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../page-for";
import { propertyOfPage, type PropertyPageProps } from "../property-of-page";
import { AddPropertyForm } from "./add-property-form.client";

export const metadata: Metadata = { title: "Add another property" };

export default async function AddPropertyPage(props: PropertyPageProps) {
  await pageFor("properties/add-property");
  const { client, propertyId, street, city, state, zip } = await propertyOfPage(props);
  return (
    <>
      <PageHead above={<Link href={`/properties/${propertyId}`}>{street}</Link>} title="Add another property" sentence={`Of ${client.name}.`} />
      <Sheet>
        <AddPropertyForm clientId={client.clientId} values={{ city, state, zip }} />
      </Sheet>
    </>
  );
}
