import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../page-for";
import { propertyOfPage, type PropertyPageProps } from "../property-of-page";
import { AddStationForm } from "./add-station-form.client";

export const metadata: Metadata = { title: "Add a station" };

export default async function AddStationPage(props: PropertyPageProps) {
  await pageFor("properties/add-station");
  const { propertyId, street, stations, lawns } = await propertyOfPage(props);
  const next = Math.max(0, ...stations.map(({ number }) => number)) + 1;
  return (
    <>
      <PageHead above={<Link href={`/properties/${propertyId}`}>{street}</Link>} title="Add a station" sentence="One valve of the customer's irrigation." />
      <Sheet>
        <AddStationForm propertyId={propertyId} number={String(next)} lawns={lawns.map(({ zoneId, letter, name }) => ({ zoneId, words: `${letter} ${name}` }))} />
      </Sheet>
    </>
  );
}
