import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { listEquipment } from "#application/equipment/list-equipment";
import { shownOrNone } from "#application/equipment/typed-amount";
import { Dialog } from "#ui/dialog.client";
import { PageHead } from "#ui/page-head";
import { Section } from "#ui/section";
import { Sheet } from "#ui/sheet";
import { PressForm } from "../../../../../action-form.client";
import { asMember } from "../../../../../session";
import { pageFor } from "../../../../page-for";
import { standDownVehicleAction } from "../../action";
import { truckWords } from "../../gear-words";
import { ChangeVehicleForm } from "./change-vehicle-form.client";

export const metadata: Metadata = { title: "Change a truck" };

interface Props {
  readonly params: Promise<{ readonly vehicleId: string }>;
}

export default async function TruckPage({ params }: Props) {
  await pageFor("equipment/change-vehicle");
  const { vehicleId } = await params;
  const answer = await asMember(listEquipment, {});
  const truck = answer.ok ? answer.value.vehicles.find((vehicle) => vehicle.vehicleId === vehicleId) : undefined;
  if (truck === undefined) notFound();
  return (
    <>
      <PageHead
        above={<Link href="/crew/gear">Trucks and gear</Link>}
        title={truckWords(truck)}
        sentence={truck.isStoodDown ? "Stood down. It is planned no more and stays in the books." : undefined}
      />
      {!truck.isStoodDown && (
        <>
          <Sheet>
            <ChangeVehicleForm
              vehicleId={vehicleId}
              version={String(truck.version)}
              values={{ number: String(truck.number), name: truck.name, payload: shownOrNone("mass", truck.payload?.amount ?? null) ?? "", staysAboard: shownOrNone("mass", truck.staysAboard?.amount ?? null) ?? "" }}
            />
          </Sheet>
          <Section id="stand-down" name="No longer used">
            <Dialog open="Stand down the truck" title={`Stand down truck ${String(truck.number)}?`} close="Keep it">
              <p>It is planned no more. Past papers still name it, so its number is never given again.</p>
              <PressForm action={standDownVehicleAction} fixed={{ vehicleId }} whilePending="Standing down">
                Stand it down
              </PressForm>
            </Dialog>
          </Section>
        </>
      )}
    </>
  );
}
