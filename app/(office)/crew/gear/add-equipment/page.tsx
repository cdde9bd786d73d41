import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { listEquipment } from "#application/equipment/list-equipment";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../../session";
import { pageFor } from "../../../page-for";
import { trucksToChoose } from "../trucks-to-choose";
import { AddEquipmentForm } from "./add-equipment-form.client";

export const metadata: Metadata = { title: "Add gear" };

interface Props {
  readonly searchParams: Promise<{ readonly what?: string | string[] }>;
}

export default async function AddEquipmentPage({ searchParams }: Props) {
  await pageFor("equipment/add-equipment");
  const answer = await asMember(listEquipment, {});
  if (!answer.ok) notFound();
  const what = (await searchParams).what === "spreader" ? "spreader" : "sprayer";
  const other = what === "sprayer" ? "spreader" : "sprayer";
  return (
    <>
      <PageHead
        above={<Link href="/crew/gear">Trucks and gear</Link>}
        title={`Add a ${what}`}
        sentence={
          <>
            Or <Link href={`/crew/gear/add-equipment?what=${other}`}>add a {other}</Link>.
          </>
        }
      />
      <Sheet>
        <AddEquipmentForm key={what} what={what} trucks={trucksToChoose(answer.value.vehicles)} />
      </Sheet>
    </>
  );
}
