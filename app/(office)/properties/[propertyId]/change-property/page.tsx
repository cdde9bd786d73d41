import { type Metadata } from "next";
import Link from "next/link";
import { type PropertyOnFile } from "#application/properties/read-property";
import { PAST_MIDNIGHT_NOT_KNOWN } from "#application/properties/watering-fields.schema";
import { passesMidnight, type TownRule, type WateringFact } from "#domain/properties/watering-fact";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../page-for";
import { propertyOfPage, type PropertyPageProps } from "../property-of-page";
import { ChangePropertyForm } from "./change-property-form.client";

export const metadata: Metadata = { title: "Change a property" };

/** "05:30", as a time field takes it. */
function clockValue(minuteOfDay: number | undefined): string {
  if (minuteOfDay === undefined) return "";
  return `${String(Math.floor(minuteOfDay / 60) % 24).padStart(2, "0")}:${String(minuteOfDay % 60).padStart(2, "0")}`;
}

/** The town's rule or the controller, as the form's fields hold it. */
function factValues(name: string, fact: WateringFact): Record<string, string> {
  if (fact === "none" || fact === "unknown") return { [`${name}.by`]: "weekdays", ...(fact === "none" ? { [`${name}.isNone`]: "yes" } : {}) };
  const { days, hours } = fact;
  return {
    [`${name}.from`]: clockValue(hours?.fromMinute),
    [`${name}.until`]: clockValue(hours?.untilMinute),
    [`${name}.by`]: days !== null && "dates" in days ? days.dates : "weekdays",
    ...Object.fromEntries((days !== null && "weekdays" in days ? days.weekdays : []).map((weekday) => [`${name}.on.${String(weekday)}`, "yes"])),
  };
}

/** What is on file, as the form's fields hold it. */
function valuesOf(property: PropertyOnFile): Record<string, string> {
  const { street, city, state, zip, position } = property;
  return {
    ...{ street, city, state, zip },
    position: position?.origin === "entered" ? `${String(position.latitude)}, ${String(position.longitude)}` : "",
    accessNote: property.accessNote ?? "",
    gateCode: property.gateCode ?? "",
    narrowestGate: property.narrowestGate === null ? "" : formatQuantityIn(property.narrowestGate, "in", 2),
    dogNote: property.dogNote ?? "",
    tankWater: property.tankWater === "unknown" ? "" : property.tankWater,
    mowingDay: property.mowingDay === null ? "" : String(property.mowingDay),
    mowedBy: property.mowedBy ?? "",
    lotArea: property.lotArea === null ? "" : formatQuantityIn(property.lotArea, "sq ft", 2),
    ...factValues("townRule", property.townRule),
    "townRule.pastMidnight": pastMidnightValue(property.townRule),
    ...factValues("controller", property.controller),
    note: property.note ?? "",
  };
}

export default async function ChangePropertyPage(props: PropertyPageProps) {
  await pageFor("properties/change-property");
  const property = await propertyOfPage(props);
  return (
    <>
      <PageHead above={<Link href={`/properties/${property.propertyId}`}>{property.street}</Link>} title="Change a property" />
      <Sheet>
        <ChangePropertyForm propertyId={property.propertyId} version={String(property.version)} values={valuesOf(property)} />
      </Sheet>
    </>
  );
}

/** Of hours that were kept without it, it is not known: the rest of the property can be changed all the same. */
function pastMidnightValue(townRule: TownRule): string {
  if (typeof townRule !== "object" || townRule.hours === null || !passesMidnight(townRule.hours)) return "";
  return townRule.hours.pastMidnight ?? PAST_MIDNIGHT_NOT_KNOWN;
}
