import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../page-for";
import { propertyOfPage, type PropertyPageProps } from "../property-of-page";
import { ChangeClientForm } from "./change-client-form.client";

export const metadata: Metadata = { title: "Change a customer" };

export default async function ChangeClientPage(props: PropertyPageProps) {
  await pageFor("properties/change-client");
  const { client, propertyId, street } = await propertyOfPage(props);
  return (
    <>
      <PageHead above={<Link href={`/properties/${propertyId}`}>{street}</Link>} title={`Change ${client.name}`} sentence="For all of their properties." />
      <Sheet>
        <ChangeClientForm
          propertyId={propertyId}
          clientId={client.clientId}
          version={String(client.version)}
          values={{ name: client.name, phone: client.phone ?? "", email: client.email ?? "", standing: client.standing }}
        />
      </Sheet>
    </>
  );
}
