import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../../../page-for";
import { type LawnPageProps, lawnOfPage } from "../../../property-of-page";
import { ChangeLawnForm } from "./change-lawn-form.client";

export const metadata: Metadata = { title: "Change a lawn" };

export default async function ChangeLawnPage(props: LawnPageProps) {
  await pageFor("properties/change-zone");
  const { property, lawn } = await lawnOfPage(props);
  const [grass = "", secondGrass = "", thirdGrass = ""] = lawn.grasses;
  return (
    <>
      <PageHead
        above={<Link href={`/properties/${property.propertyId}?lawn=${lawn.zoneId}`}>{`${property.street}, ${lawn.letter} ${lawn.name}`}</Link>}
        title="Change a lawn"
      />
      <Sheet>
        <ChangeLawnForm
          zoneId={lawn.zoneId}
          version={String(lawn.version)}
          values={{ name: lawn.name, grass, secondGrass, thirdGrass, grassesKnown: lawn.grassesAssumed ? "assumed" : "looked", waterBeside: lawn.waterBeside }}
        />
      </Sheet>
    </>
  );
}
