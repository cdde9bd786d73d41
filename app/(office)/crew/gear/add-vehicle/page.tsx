import { type Metadata } from "next";
import Link from "next/link";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../page-for";
import { AddVehicleForm } from "./add-vehicle-form.client";

export const metadata: Metadata = { title: "Add a truck" };

export default async function AddVehiclePage() {
  await pageFor("equipment/add-vehicle");
  return (
    <>
      <PageHead above={<Link href="/crew/gear">Trucks and gear</Link>} title="Add a truck" />
      <Sheet>
        <AddVehicleForm />
      </Sheet>
    </>
  );
}
