import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { evennessWords } from "#domain/equipment/station-test";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { pageFor } from "../../../../../page-for";
import { rateWords } from "../../../ground-words";
import { propertyOfPage } from "../../../property-of-page";
import { ChangeStationForm } from "./change-station-form.client";

export const metadata: Metadata = { title: "Change a station" };

interface StationPageProps {
  readonly params: Promise<{ readonly propertyId: string; readonly stationId: string }>;
}

export default async function ChangeStationPage(props: StationPageProps) {
  await pageFor("properties/change-station");
  const property = await propertyOfPage(props);
  const { stationId } = await props.params;
  const station = property.stations.find((each) => each.stationId === stationId);
  if (station === undefined) notFound();
  const { number, name, test, evenness, longestRunMinutes, zoneIds } = station;
  return (
    <>
      <PageHead above={<Link href={`/properties/${property.propertyId}`}>{property.street}</Link>} title={`Station ${String(number)} ${name}`} />
      <Sheet>
        <ChangeStationForm
          stationId={stationId}
          version={String(station.version)}
          lawns={property.lawns.map((lawn) => ({ zoneId: lawn.zoneId, words: `${lawn.letter} ${lawn.name}` }))}
          {...(test === null ? {} : { testOnFile: `On file: ${rateWords(station)}, ${evenness?.uniformity ? `${evennessWords(evenness)}, ` : ""}tested on ${formatShortDate(test.testedOn)}. A new test takes its place; left empty, it stays.` })}
          values={{
            ...{ number: String(number), name, depths: "", minutes: "", wind: "", testedOn: "" },
            longestRun: longestRunMinutes === null ? "" : String(longestRunMinutes),
            ...Object.fromEntries(zoneIds.map((zoneId) => [`waters.${zoneId}`, "yes"])),
          }}
        />
      </Sheet>
    </>
  );
}
