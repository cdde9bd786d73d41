import { type Metadata } from "next";
import Link from "next/link";
import { type TankOnFile } from "#application/fills/list-fills";
import { house } from "#application/house";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { listWords } from "#domain/foundation/list-words";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { KeyValueList } from "#ui/key-value-list";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { crewChoices } from "../../crew-choices";
import { pageFor } from "../../page-for";
import { us } from "../../visits/[visitId]/mix-words";
import { type SprayerFormProps, sprayersAsked } from "../sprayers-asked";
import { productsWords } from "../tank-words";
import { RecordTankReadingForm } from "./record-tank-reading-form.client";

export const metadata: Metadata = { title: "Write down what a tank holds" };

/** "14.3 gal: 14.3 gal of fill 3 with 10.7 fl oz of Ironside" */
function booksWords({ left, fills, isClean, holdUp, readings }: TankOnFile): string {
  const lines = holdUp === null ? "" : ` Pump and hose hold ${us(holdUp)} when they are full.`;
  if (isClean) return `Cleaned out and not filled since.${lines}`;
  if (fills.length === 0) return readings.length === 0 ? `No fill is on the books.${lines}` : `${us(left)} of which no fill is on the books.${lines}`;
  const rests = fills.filter((fill) => fill.left.amount > 0n);
  if (rests.length === 0) return `Nothing left.${lines}`;
  const parts = rests.map(({ number, left: rest, leftOf }) => `${us(rest)} of fill ${String(number)} with ${productsWords(leftOf)}`);
  return `${rests.length > 1 ? `${us(left)}: ` : ""}${listWords(parts)}.${lines}`;
}

/** What somebody found in a tank, beside its books: when, by whom, with what, and where a difference went. */
export default async function RecordTankReadingPage(props: SprayerFormProps) {
  const { company } = await pageFor("fills/record-tank-reading");
  const { sprayers, chosen, choices, tanks } = await sprayersAsked(props);
  const { people, own } = await crewChoices();
  const asked = chosen === undefined ? sprayers : [chosen];
  const shown = tanks.filter(({ equipmentId }) => asked.some((one) => one.equipmentId === equipmentId));
  const today = calendarDateIn(company.timeZone, house().now().getTime());
  return (
    <>
      <PageHead above={<Link href="/fills">Fills</Link>} title="Write down what a tank holds" sentence="Dip it or read its gauge. The books follow what was found, and a difference is posted where you say it went." />
      {sprayers.length === 0 ? (
        <EmptyState sentence="No sprayer is on file, so there is no tank to measure." actions={<LinkButton href="/crew/gear">Trucks and gear</LinkButton>} />
      ) : (
        <Stack gap={6}>
          <Stack gap={3}>
            <h2>What the books have now</h2>
            <KeyValueList pairs={shown.map((tank) => ({ key: tank.name, value: booksWords(tank) }))} />
          </Stack>
          <Sheet>
            <RecordTankReadingForm
              fixed={{ requestId: house().newId() }}
              values={{ equipmentId: chosen?.equipmentId ?? "", readOn: today, readById: own }}
              sprayers={choices}
              people={people}
            />
          </Sheet>
        </Stack>
      )}
    </>
  );
}
