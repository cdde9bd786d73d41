import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../../../page-for";
import { type LawnPageProps, lawnOfPage } from "../../../property-of-page";
import { AddSoilTestForm } from "./add-soil-test-form.client";

export const metadata: Metadata = { title: "Add a soil test" };

export default async function AddSoilTestPage(props: LawnPageProps) {
  await pageFor("properties/add-soil-test");
  const { property, lawn } = await lawnOfPage(props);
  return (
    <>
      <PageHead
        above={<Link href={`/properties/${property.propertyId}?lawn=${lawn.zoneId}`}>{`${property.street}, ${lawn.letter} ${lawn.name}`}</Link>}
        title="Add a soil test"
        sentence="What the laboratory said of phosphorus, in its own words: the law of some states asks for it."
      />
      <Sheet>
        <AddSoilTestForm zoneId={lawn.zoneId} />
      </Sheet>
    </>
  );
}
