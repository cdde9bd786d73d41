import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { listEquipment } from "#application/equipment/list-equipment";
import { listFills, type TankOnFile } from "#application/fills/list-fills";
import { house } from "#application/house";
import { listPeople } from "#application/people/list-people";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { type Choice } from "#ui/select-field";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../session";
import { pageFor } from "../../page-for";
import { RecordCleanOutForm } from "./record-clean-out-form.client";

export const metadata: Metadata = { title: "Record a clean-out" };

interface Props {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

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
export default async function RecordCleanOutPage({ searchParams }: Props) {
  const { company, member } = await pageFor("fills/record-clean-out");
  const { equipment: asked } = await searchParams;
  const gear = await asMember(listEquipment, {});
  const fills = await asMember(listFills, {});
  const crew = await asMember(listPeople, {});
  if (!gear.ok || !fills.ok || !crew.ok) notFound();
  const sprayers = gear.value.equipment.filter((piece) => isSprayer(piece.kind) && !piece.isStoodDown);
  const chosen = sprayers.find(({ equipmentId }) => equipmentId === asked) ?? (sprayers.length === 1 ? sprayers[0] : undefined);
  const people = crew.value.people.filter(({ leftOn }) => leftOn === null);
  const today = calendarDateIn(company.timeZone, house().now().getTime());
  return (
    <>
      <PageHead above={<Link href="/fills">Fills</Link>} title="Record a clean-out" sentence="Tank, pump and hose of a sprayer, cleaned out for whatever it holds next." />
      {sprayers.length === 0 ? (
        <EmptyState sentence="No sprayer is on file, so there is no tank to clean out." actions={<LinkButton href="/crew/gear">Trucks and gear</LinkButton>} />
      ) : (
        <Sheet>
          <RecordCleanOutForm
            fixed={{ requestId: house().newId() }}
            values={{ equipmentId: chosen?.equipmentId ?? "", cleanedOn: today, doneById: people.some(({ personId }) => personId === member.personId) ? member.personId : "" }}
            sprayers={sprayers.map(({ equipmentId, name }) => ({ value: equipmentId, word: name }))}
            people={people.map(({ personId, name }) => ({ value: personId, word: name }))}
            visits={visitsOf(fills.value.tanks)}
          />
        </Sheet>
      )}
    </>
  );
}
