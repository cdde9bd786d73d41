import Link from "next/link";
import { notFound } from "next/navigation";
import { listFills, type FillOnFile, type TankOnFile } from "#application/fills/list-fills";
import { house } from "#application/house";
import { listPeople } from "#application/people/list-people";
import { readRecordPlan } from "#application/register/read-record-plan";
import { linesOf, type RecordPlan } from "#application/register/record-plan";
import { calendarDateIn, formatShortDate } from "#domain/foundation/calendar-date";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../../session";
import { pageFor } from "../../../page-for";
import { us } from "../mix-words";
import { type VisitPageProps } from "../visit-of-page";
import { listWords } from "../visit-words";
import { CompleteVisitForm, type MixAsked } from "./complete-visit-form.client";

export const metadata = { title: "Complete the visit" };

/** The desk's form of what really happened at a visit. */
export default async function CompleteVisitPage(props: VisitPageProps) {
  const { company } = await pageFor("register/complete-visit");
  const answer = await asMember(readRecordPlan, await props.params);
  if (!answer.ok) notFound();
  const people = await asMember(listPeople, {});
  const tanks = await asMember(listFills, {});
  const { visit, record, plan } = answer.value;
  const above = (
    <Link href={`/visits/${visit.visitId}`} prefetch={false}>
      {visit.property.street}
    </Link>
  );
  if (record !== undefined || visit.state !== "planned") {
    return (
      <>
        <PageHead above={above} title="Complete the visit" />
        <EmptyState sentence={record === undefined ? "This visit is over." : `Record ${String(record.number)} of this visit is written. A correction is an amendment to it.`} />
      </>
    );
  }
  const today = calendarDateIn(company.timeZone, house().now().getTime());
  const crew = people.ok ? people.value.people.filter(({ leftOn }) => leftOn === null) : [];
  return (
    <>
      <PageHead
        above={above}
        title="Complete the visit"
        sentence={`${visit.property.street}, ${visit.name}. Write down what really happened; findings go onto the record and none keeps it from being written.`}
      />
      <Sheet>
        <CompleteVisitForm
          fixed={{ requestId: house().newId(), visitId: visit.visitId }}
          values={{ doneOn: dayOfVisit(visit.stop?.date, today), applicatorId: visit.stop?.operatorId ?? "" }}
          lawns={plan.lawns.map(({ zoneId, name }) => ({ zoneId, name: name === "" ? "The lawn" : name }))}
          mixes={mixesAsked(plan, tanks.ok ? tanks.value.tanks : [])}
          people={crew.map(({ personId, name }) => ({ value: personId, word: name }))}
        />
      </Sheet>
    </>
  );
}

/** The day it was planned for, where that day has come. */
function dayOfVisit(planned: string | undefined, today: string): string {
  return planned === undefined || planned > today ? today : planned;
}

function mixesAsked({ mixes, treatments }: RecordPlan, tanks: readonly TankOnFile[]): readonly MixAsked[] {
  return mixes.map((mix): MixAsked => {
    if (mix.kind === "granular") return { key: String(mix.line), kind: "granular", name: mix.productName, planned: us(mix.total), fills: [] };
    const lines = linesOf(mix);
    const gearName = treatments.find(({ line }) => lines.includes(line))?.equipmentName;
    const tank = tanks.find(({ name }) => name === gearName);
    return {
      key: String(lines[0] ?? 0),
      kind: "spray",
      name: listWords(mix.products.map(({ productName }) => productName)),
      planned: `${us(mix.finished)} of finished spray`,
      fills: (tank?.fills ?? []).filter(({ left }) => left.amount > 0n).map((fill) => ({ value: fill.fillId, word: fillWords(fill) })),
    };
  });
}

/** "Fill 3 of Nov 25, 2026: 12 gal left of Ironside". */
function fillWords({ number, filledOn, left, products }: FillOnFile): string {
  return `Fill ${String(number)} of ${formatShortDate(filledOn)}: ${us(left)} left, with ${listWords(products.map(({ name }) => name))}`;
}
