import Link from "next/link";
import { cache } from "react";
import { may } from "#application/permission";
import { listVisits, type VisitInList } from "#application/visits/list-visits";
import { onSpotsWords } from "#domain/quantities/share";
import { windowWords } from "#domain/scheduling/window-words";
import { formatLongDate } from "#domain/foundation/calendar-date";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { Text } from "#ui/text";
import { VisitMark } from "#ui/visit-mark";
import { asMember, memberOfPage } from "../../../session";
import { clockWordsInFull } from "#domain/foundation/clock-words";

/** Which property a section is of, and the one lawn that the page is narrowed to, if it is. */
export interface VisitsOfPropertyProps {
  readonly propertyId: string;
  readonly zoneId?: string | undefined;
}

/** Asked once for a page, however many of its sections want to know. */
const visitsOnce = cache((propertyId: string) => asMember(listVisits, { propertyId }));

function goesTo({ treatments, looks }: VisitInList, zoneId: string | undefined): boolean {
  return zoneId === undefined || [...treatments, ...looks].some((task) => task.zoneIds.includes(zoneId));
}

const AHEAD = ["on-a-day", "open", "waiting", "past-its-window"] as const;

/** The planned visits: those on a day by that day first, then what is open, what waits, and what is past its window. */
async function visitsAhead({ propertyId, zoneId }: VisitsOfPropertyProps) {
  const answer = await visitsOnce(propertyId);
  if (!answer.ok) return { visits: [], productNames: new Map<string, string>() };
  const { visits, productNames } = answer.value;
  const planned = visits.filter((visit) => visit.state === "planned" && goesTo(visit, zoneId));
  const dayOf = (visit: VisitInList) => visit.stop?.date ?? visit.opensOn;
  const ahead = AHEAD.flatMap((standing) => planned.filter((visit) => visit.standing === standing).toSorted((one, other) => (dayOf(one) < dayOf(other) ? -1 : 1)));
  return { visits: ahead, productNames };
}

function whenWords({ standing, stop, opensOn, closesOn }: VisitInList): string {
  return standing === "on-a-day" && stop !== null ? formatLongDate(stop.date) : windowWords({ opensOn, closesOn });
}

function TasksOfVisit({ visit, productNames }: { readonly visit: VisitInList; readonly productNames: ReadonlyMap<string, string> }) {
  return (
    <Stack gap={1} as="ul">
      {visit.treatments.map(({ line, productId, rateText, spot, reason }) => (
        <li key={line}>
          <strong>{productNames.get(productId)}</strong> at <strong>{rateText}</strong>
          {onSpotsWords(spot?.shareBasisPoints)} for {reason}
        </li>
      ))}
      {visit.looks.map(({ line, reason }) => (
        <li key={line}>Look: {reason}</li>
      ))}
    </Stack>
  );
}

async function VisitActions({ propertyId, isOnNoProgram }: { readonly propertyId: string; readonly isOnNoProgram: boolean }) {
  const { member } = await memberOfPage();
  if (!may(member.role, "visits/plan-visit")) return null;
  return (
    <Row>
      {isOnNoProgram && <LinkButton href="/programs">Put on a program</LinkButton>}
      <LinkButton href={`/properties/${propertyId}/add-visit`}>Add one visit</LinkButton>
    </Row>
  );
}

/** The next visit: its day or window, its round, and what goes down. */
export async function NextVisit(props: VisitsOfPropertyProps) {
  const { visits, productNames } = await visitsAhead(props);
  const [next] = visits;
  if (next === undefined) {
    return <EmptyState sentence="No visit is ahead here." actions={<VisitActions propertyId={props.propertyId} isOnNoProgram />} />;
  }
  return (
    <Stack gap={3}>
      <p>
        <strong>{whenWords(next)}</strong>,{" "}
        <Link href={`/visits/${next.visitId}`} prefetch={false}>
          {next.name}
        </Link>{" "}
        <VisitMark state={next.standing} />
      </p>
      <TasksOfVisit visit={next} productNames={productNames} />
      {next.window !== null && <Text size="small">The customer lets the crew on the ground from {clockWordsInFull(next.window.fromMinute)} to {clockWordsInFull(next.window.untilMinute)}.</Text>}
      <VisitActions propertyId={props.propertyId} isOnNoProgram={false} />
    </Stack>
  );
}

const COLUMNS = [
  { id: "name", head: "Visit" },
  { id: "when", head: "When" },
  { id: "standing", head: "Stands" },
  { id: "tasks", head: "What goes down" },
] as const;

/** The visits after the next one that are on a day, open, past their window or still waiting. */
export async function PromisedAndOpen(props: VisitsOfPropertyProps) {
  const { visits, productNames } = await visitsAhead(props);
  const rest = visits.slice(1);
  return (
    <Table
      caption="Promised and open"
      captionSpoken
      columns={COLUMNS}
      rows={rest.map((visit) => ({
        id: visit.visitId,
        href: `/visits/${visit.visitId}`,
        cells: { name: visit.name, when: whenWords(visit), standing: <VisitMark state={visit.standing} />, tasks: <TasksOfVisit visit={visit} productNames={productNames} /> },
      }))}
      empty={<EmptyState sentence="Nothing else is promised or open." />}
    />
  );
}
