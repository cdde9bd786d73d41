import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../../../page-for";
import { type LawnPageProps, lawnOfPage } from "../../../property-of-page";
import { AddSeedingForm } from "./add-seeding-form.client";

export const metadata: Metadata = { title: "Add seed or sod" };

export default async function AddSeedingPage(props: LawnPageProps) {
  await pageFor("properties/add-seeding");
  const { property, lawn } = await lawnOfPage(props);
  return (
    <>
      <PageHead
        above={<Link href={`/properties/${property.propertyId}?lawn=${lawn.zoneId}`}>{`${property.street}, ${lawn.letter} ${lawn.name}`}</Link>}
        title="Add seed or sod"
        sentence="What went into this lawn or will: each seeding by itself, for labels count their waiting times from every one."
      />
      <Sheet>
        <AddSeedingForm zoneId={lawn.zoneId} />
      </Sheet>
    </>
  );
}
