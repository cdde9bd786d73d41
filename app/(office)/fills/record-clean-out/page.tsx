import { type Metadata } from "next";
import Link from "next/link";
import { type TankOnFile } from "#application/fills/list-fills";
import { house } from "#application/house";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { type Choice } from "#ui/select-field";
import { Sheet } from "#ui/sheet";
import { crewChoices } from "../../crew-choices";
import { pageFor } from "../../page-for";
import { type SprayerFormProps, sprayersAsked } from "../sprayers-asked";
import { RecordCleanOutForm } from "./record-clean-out-form.client";

export const metadata: Metadata = { title: "Record a clean-out" };

/** So many of the last visits that drew from a tank may have taken its rinsate. */
const MOST_VISITS = 30;

/** The visits that drew from the tanks, those of the newest fills first. */
function visitsOf(tanks: readonly TankOnFile[]): readonly Choice[] {
  const draws = tanks.flatMap(({ fills }) => fills.flatMap(({ number, draws: own }) => own.map((draw) => ({ ...draw, number }))));
  const newestFirst = draws.toSorted((one, other) => other.number - one.number || other.recordNumber - one.recordNumber);
  const words = new Map<string, string>();
  for (const { visitId, street, visitName, number } of newestFirst) if (!words.has(visitId)) words.set(visitId, `${street}, ${visitName}, sprayed from fill ${String(number)}`);
  return [...words].slice(0, MOST_VISITS).map(([value, word]) => ({ value, word }));
}

/** That a sprayer was cleaned out: when, by whom, how, and where the rinsate went. */
export default async function RecordCleanOutPage(props: SprayerFormProps) {
  const { company } = await pageFor("fills/record-clean-out");
  const { choices, chosen, tanks } = await sprayersAsked(props);
  const { people, own } = await crewChoices();
  const today = calendarDateIn(company.timeZone, house().now().getTime());
  return (
    <>
      <PageHead above={<Link href="/fills">Fills</Link>} title="Record a clean-out" sentence="Tank, pump and hose of a sprayer, cleaned out for whatever it holds next." />
      {choices.length === 0 ? (
        <EmptyState sentence="No sprayer is on file, so there is no tank to clean out." actions={<LinkButton href="/crew/gear">Trucks and gear</LinkButton>} />
      ) : (
        <Sheet>
          <RecordCleanOutForm
            fixed={{ requestId: house().newId() }}
            values={{ equipmentId: chosen?.equipmentId ?? "", cleanedOn: today, doneById: own }}
            sprayers={choices}
            people={people}
            visits={visitsOf(tanks)}
          />
        </Sheet>
      )}
    </>
  );
}
