import { type Metadata } from "next";
import Link from "next/link";
import { type EquipmentOnFile } from "#application/equipment/gear-on-file";
import { shown, shownOrNone } from "#application/equipment/typed-amount";
import { EQUIPMENT_KIND_WORDS, isSprayer } from "#domain/equipment/equipment-kind";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../../page-for";
import { trucksToChoose } from "../../trucks-to-choose";
import { equipmentOfPage, type EquipmentPageProps } from "../equipment-of-page";
import { ChangeEquipmentForm } from "./change-equipment-form.client";

export const metadata: Metadata = { title: "Change gear" };

/** What the form holds at first. Measures are shown rounded; given back unchanged they stay unrounded. */
function valuesOf(equipment: EquipmentOnFile): Readonly<Record<string, string>> {
  const { hasDeflector, nominal } = equipment;
  return {
    ...nominal,
    name: equipment.name,
    vehicleId: equipment.vehicleId ?? "",
    capacity: shown(equipment.capacity.dimension, equipment.capacity.amount),
    swath: shownOrNone("length", equipment.swath?.amount ?? null) ?? "",
    holdUp: shownOrNone("volume", equipment.holdUp?.amount ?? null) ?? "",
    deflector: hasDeflector === null ? "nobody-looked" : hasDeflector ? "yes" : "no",
  };
}

export default async function ChangeEquipmentPage(props: EquipmentPageProps) {
  await pageFor("equipment/change-equipment");
  const { equipment, vehicles } = await equipmentOfPage(props);
  const { equipmentId, kind, name, version } = equipment;
  return (
    <>
      <PageHead
        above={<Link href={`/crew/gear/${equipmentId}`}>{name}</Link>}
        title="Change gear"
        sentence={`${EQUIPMENT_KIND_WORDS[kind]}. The kind stands fast, because calibrations were made with it.`}
      />
      <Sheet>
        <ChangeEquipmentForm
          what={isSprayer(kind) ? "sprayer" : "spreader"}
          fixed={{ equipmentId, version: String(version), kind }}
          values={valuesOf(equipment)}
          trucks={trucksToChoose(vehicles)}
        />
      </Sheet>
    </>
  );
}
