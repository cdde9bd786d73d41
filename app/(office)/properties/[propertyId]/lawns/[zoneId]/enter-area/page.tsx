import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../../../page-for";
import { type LawnPageProps, lawnOfPage } from "../../../property-of-page";
import { EnterAreaForm } from "./enter-area-form.client";

export const metadata: Metadata = { title: "Give the size" };

export default async function EnterAreaPage(props: LawnPageProps) {
  await pageFor("properties/measure-zone");
  const { property, lawn } = await lawnOfPage(props);
  return (
    <>
      <PageHead
        above={<Link href={`/properties/${property.propertyId}?lawn=${lawn.zoneId}`}>{`${property.street}, ${lawn.letter} ${lawn.name}`}</Link>}
        title="Give its size"
        sentence={lawn.pieces.length === 0 ? "Kept as entered: there is no shape to draw." : "The pieces that were measured go off the plan, and only the size stays."}
      />
      <Sheet>
        <EnterAreaForm zoneId={lawn.zoneId} version={String(lawn.version)} />
      </Sheet>
    </>
  );
}
