import { type Metadata } from "next";
import Link from "next/link";
import { Columns } from "#ui/columns";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { pageFor } from "../../../page-for";
import { GroundPlan } from "../ground-plan";
import { offerPlace, shapeOf } from "../place-on-ground";
import { propertyOfPage, type PropertyPageProps, wordOfSearch } from "../property-of-page";
import { ShapeLinks } from "../shape-links";
import { MeasureLawnForm } from "./measure-lawn-form.client";

export const metadata: Metadata = { title: "Measure a lawn" };

export default async function MeasureLawnPage(props: PropertyPageProps) {
  await pageFor("properties/add-zone");
  const property = await propertyOfPage(props);
  const word = await wordOfSearch(props, "shape");
  const shape = word === "area" ? "area" : shapeOf(word);
  const base = `/properties/${property.propertyId}`;
  return (
    <>
      <PageHead
        above={<Link href={base}>{property.street}</Link>}
        title="Measure a lawn"
        sentence="Begin with its largest piece. More pieces, beds and drives come one by one, and the plan shows each."
      />
      <Columns split="two">
      <Sheet>
        <Stack gap={5}>
          <ShapeLinks shape={shape} hrefOf={(each) => `${base}/measure-lawn?shape=${each}`} offersArea />
          <MeasureLawnForm key={shape} propertyId={property.propertyId} shape={shape} place={offerPlace(property.lawns, "lawn")} />
        </Stack>
      </Sheet>
      {property.lawns.length > 0 && <GroundPlan property={property} lawns={property.lawns} mayMeasure={false} />}
      </Columns>
    </>
  );
}
