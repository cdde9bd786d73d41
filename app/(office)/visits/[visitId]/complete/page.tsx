import Link from "next/link";
import { notFound } from "next/navigation";
import { listFills, type FillOnFile, type TankOnFile } from "#application/fills/list-fills";
import { house } from "#application/house";
import { type MixToRecord, readRecordPlan } from "#application/register/read-record-plan";
import { listWords } from "#domain/foundation/list-words";
import { calendarDateIn, formatShortDate } from "#domain/foundation/calendar-date";
import { EmptyState } from "#ui/empty-state";
import { PageHead } from "#ui/page-head";
import { Sheet } from "#ui/sheet";
import { asMember } from "../../../../session";
import { crewChoices } from "../../../crew-choices";
import { pageFor } from "../../../page-for";
import { us } from "../mix-words";
import { RECORD_CLEAN_OUT } from "../../hold-acts";
import { VisitFinding } from "../../visit-finding";
import { type VisitPageProps } from "../visit-of-page";
import { MOST_FURTHER_FILLS } from "#application/register/complete-visit.schema";
import { CompleteVisitForm, type MixAsked } from "./complete-visit-form.client";

export const metadata = { title: "Complete the visit" };

/** The desk's form of what really happened at a visit. */
export default async function CompleteVisitPage({ params }: VisitPageProps) {
  const { company } = await pageFor("register/complete-visit");
  const plan = await asMember(readRecordPlan, { visitId: (await params).visitId });
  if (!plan.ok) notFound();
  const { visit, record, lawns, cleanOuts, mixes: planned } = plan.value;
  const { people } = await crewChoices();
  const tanks = await asMember(listFills, {});
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
  const mixes = planned.map((mix) => mixAsked(mix, tanks.ok ? tanks.value.tanks : [], visit.visitId));
  return (
    <>
      <PageHead
        above={above}
        title="Complete the visit"
        sentence={`${visit.property.street}, ${visit.name}. Write down what really happened; findings go onto the record and none keeps it from being written.`}
      />
      {cleanOuts.map((finding) => (
        <VisitFinding key={finding.what} finding={finding} act={{ href: RECORD_CLEAN_OUT, words: "Was it done? Record the clean-out" }} />
      ))}
      <Sheet>
        <CompleteVisitForm
          fixed={{ requestId: house().newId(), visitId: visit.visitId }}
          values={{
            doneOn: dayOfVisit(visit.stop?.date, today),
            applicatorId: visit.stop?.operatorId ?? "",
            // Named beforehand, or the form would take numbered mixes for a list.
            ...Object.fromEntries(mixes.map(({ key }) => [`mixes.${key}.amount`, ""])),
            ...Object.fromEntries(planned.flatMap(fillsNamed)),
          }}
          lawns={lawns.map(({ zoneId, name }) => ({ zoneId, name }))}
          mixes={mixes}
          people={people}
        />
      </Sheet>
    </>
  );
}

/** So many rows for further fills where no more than one is named. */
const MOST_ROWS_OPEN = 2;

/** The day it was planned for, where that day has come. */
function dayOfVisit(planned: string | undefined, today: string): string {
  return planned === undefined || planned > today ? today : planned;
}

/** The fills that it is to come out of, each in its row of the form. Gallons are filled in for nobody: planned is not measured. */
function fillsNamed({ key, fillIds }: MixToRecord): readonly (readonly [string, string])[] {
  return fillIds.slice(0, 1 + MOST_FURTHER_FILLS).map((fillId, index) => [index === 0 ? `mixes.${key}.fillId` : `mixes.${key}.alsoFrom.${String(index - 1)}.fillId`, fillId]);
}

function mixAsked({ key, kind, productNames, planned, mixedAlone, equipmentId, fillIds, mayBeOneWith }: MixToRecord, tanks: readonly TankOnFile[], visitId: string): MixAsked {
  const tank = tanks.find((one) => one.equipmentId === equipmentId);
  const fills = kind === "granular" ? [] : (tank === undefined ? tanks.flatMap((one) => one.fills) : tank.fills).filter((fill) => isAtHand(fill, visitId) || fillIds.includes(fill.fillId));
  const named = Math.min(fillIds.length, 1 + MOST_FURTHER_FILLS);
  return {
    key,
    kind,
    name: listWords(productNames),
    planned: planned === null ? "no mix could be worked out" : plannedWords(us(planned), mixedAlone === null ? null : us(mixedAlone)),
    isWorkedOut: planned !== null,
    mayBeOneWith: listWords(mayBeOneWith),
    fills: fills.map((fill) => ({ value: fill.fillId, word: fillWords(fill) })),
    // One row more than the fills that are named, and none that no other fill could be named in.
    furtherRows: Math.min(Math.max(named, MOST_ROWS_OPEN), fills.length - 1, MOST_FURTHER_FILLS),
  };
}

/** Out of a fill goes what the ground takes; a load for this visit alone went to a mark of the gauge. */
function plannedWords(planned: string, mixedAlone: string | null): string {
  if (mixedAlone === null) return planned;
  return `${planned} of finished spray${mixedAlone === planned ? "" : ` out of a fill, ${mixedAlone} where it was mixed for this visit alone`}`;
}

/** What is left in a tank, and what was made for this visit: where the tank was measured since, its record takes it from what was missing. */
function isAtHand({ left, plannedVisitIds }: FillOnFile, visitId: string): boolean {
  return left.amount > 0n || plannedVisitIds.includes(visitId);
}

/** "Fill 3 of Nov 25, 2026: 12 gal left of Ironside". */
function fillWords({ number, filledOn, left, products }: FillOnFile): string {
  return `Fill ${String(number)} of ${formatShortDate(filledOn)}: ${left.amount === 0n ? "nothing" : us(left)} left, with ${listWords(products.map(({ name }) => name))}`;
}
