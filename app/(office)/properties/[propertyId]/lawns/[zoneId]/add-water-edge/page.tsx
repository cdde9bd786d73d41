import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../../../page-for";
import { type LawnPageProps, lawnOfPage } from "../../../property-of-page";
import { AddWaterEdgeForm } from "./add-water-edge-form.client";

export const metadata: Metadata = { title: "Add water" };

export default async function AddWaterEdgePage(props: LawnPageProps) {
  await pageFor("properties/add-water-edge");
  const { property, lawn } = await lawnOfPage(props);
  return (
    <>
      <PageHead
        above={<Link href={`/properties/${property.propertyId}?lawn=${lawn.zoneId}`}>{`${property.street}, ${lawn.letter} ${lawn.name}`}</Link>}
        title="Add water at this lawn"
        sentence="A pond, a ditch, a creek or a drain. What nobody measured stays empty, and checks say so instead of guessing."
      />
      <Sheet>
        <AddWaterEdgeForm zoneId={lawn.zoneId} />
      </Sheet>
    </>
  );
}
