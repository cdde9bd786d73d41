import { type FindingShown, type StopShown } from "#application/days/truck-shown";
import { FINDING_SOURCE_WORDS } from "#domain/foundation/finding";
import { FINDING_LEVELS } from "#domain/foundation/finding";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { isZero } from "#domain/quantities/quantity";
import { LinkButton } from "#ui/button";
import { Disclosure } from "#ui/disclosure";
import { Finding } from "#ui/finding";
import { FindingMark } from "#ui/finding-mark";
import { Row } from "#ui/row";
import { type Choice } from "#ui/select-field";
import { Stack } from "#ui/stack";
import { VisitMark, type VisitState } from "#ui/visit-mark";
import { PressForm } from "../../action-form.client";
import { clockWords } from "#domain/foundation/clock-words";
import { pinVisitAction, takeOffDayAction } from "./action";
import { counted } from "./day-words";
import { MoveForm } from "./move-form.client";
import styles from "./stop-row.module.css";

export interface StopRowProps {
  readonly stop: StopShown;
  readonly routeDayId: string;
  readonly trucks: readonly Choice[];
  readonly mayPlan: boolean;
}

/** One row of the timetable, which opens in place to everything about the stop. */
export function StopRow({ stop, routeDayId, trucks, mayPlan }: StopRowProps) {
  const { visit, position, arrivesAtMinute, isPinned, isHeld, aboard } = stop;
  return (
    <details className={styles.stop} id={`stop-${visit.visitId}`} aria-label={`Stop ${String(position)}: ${visit.property.street}`} data-held={isHeld || undefined}>
      <summary className={styles.row}>
        <span className={styles.order}>{position}</span>
        <span className={styles.arrival}>{arrivesAtMinute === null ? "no time" : clockWords(arrivesAtMinute)}</span>
        <span className={styles.street}>
          {visit.property.street}
          {isPinned && <span className={styles.pin}> pinned</span>}
          {aboard !== null && aboard.letters.length > 0 && <span className={styles.pin}> fill {aboard.letters.join(", ")}</span>}
        </span>
        <StopMark stop={stop} />
      </summary>
      <div className={styles.body}>
        <Stack gap={4}>
          <AtTheGate stop={stop} />
          <WhatGoesDown stop={stop} />
          <StopFindings findings={stop.findings} />
          <Row>
            <LinkButton href={`/visits/${visit.visitId}`} second={ticketWords(stop)}>
              Mix ticket
            </LinkButton>
            <LinkButton href={`/properties/${visit.property.propertyId}`}>Property</LinkButton>
          </Row>
          {mayPlan && visit.state === "planned" && (
            <>
              <MoveForm key={`${routeDayId} ${String(position)}`} visitId={visit.visitId} routeDayId={routeDayId} position={position} trucks={trucks} />
              <Row align="top">
                <PressForm action={pinVisitAction} fixed={{ visitId: visit.visitId, pin: isPinned ? "unpin" : "pin" }} whilePending={isPinned ? "Unpinning" : "Pinning"}>
                  {isPinned ? "Unpin" : "Pin to this place"}
                </PressForm>
                <PressForm action={takeOffDayAction} fixed={{ visitId: visit.visitId }} whilePending="Taking off">
                  Take off
                </PressForm>
              </Row>
            </>
          )}
        </Stack>
      </div>
    </details>
  );
}

const DONE_MARKS: Readonly<Record<string, VisitState>> = { done: "done", "part-done": "part-done", "not-done": "not-done" };

function StopMark({ stop: { visit, findings, isHeld } }: { readonly stop: StopShown }) {
  const done = DONE_MARKS[visit.state];
  if (done !== undefined) return <VisitMark state={done} size={24} word="spoken" />;
  if (isHeld) return <FindingMark level="hold" />;
  if (findings.some(({ finding }) => finding.level === "take-care")) return <FindingMark level="take-care" />;
  if (findings.some(({ answer }) => answer !== null)) return <FindingMark level="answered" />;
  return <span />;
}

function ticketWords({ ticket, visit }: StopShown): string {
  if (ticket !== null) return ticket.isOfPresentPlan ? `number ${String(ticket.number)}, of this plan` : `number ${String(ticket.number)}, of an older plan`;
  return visit.treatments.length === 0 ? "none needed" : "not issued";
}

function AtTheGate({ stop: { visit, driveMinutes, record } }: { readonly stop: StopShown }) {
  const { property, client, window } = visit;
  return (
    <div>
      <p>
        <strong>{client.name}</strong>
        {client.phone === null ? "" : `, ${client.phone}`} · {property.city} · {visit.name}, {String(visit.serviceMinutes)} min
      </p>
      {window !== null && (
        <p>
          Customer&apos;s hours: <strong>{clockWords(window.fromMinute)} to {clockWords(window.untilMinute)}</strong>
        </p>
      )}
      {property.dogNote !== null && <p>Dog: {property.dogNote}</p>}
      {property.accessNote !== null && <p>Way in: {property.accessNote}</p>}
      {driveMinutes !== null && <p className={styles.small}>Drive to it: {driveMinutes} min, an estimate.</p>}
      {record !== null && <p>Written: record {record.number}.</p>}
    </div>
  );
}

function WhatGoesDown({ stop: { puts, visit, aboard } }: { readonly stop: StopShown }) {
  const tanks = aboard?.tanks.filter(({ arrives, leaves }) => !isZero(arrives) || !isZero(leaves)) ?? [];
  return (
    <div>
      {puts.map((put) => (
        <div key={put.words}>
          <p>
            <strong>{put.words}</strong>
          </p>
          <ul className={styles.lawns}>
            {put.lawns.map(({ lawn, treatedArea, amount }) => (
              <li key={lawn}>
                {lawn}: <strong>{amount}</strong> on {treatedArea}
              </li>
            ))}
          </ul>
          <p className={styles.small}>
            {put.gearName}: {put.how}
          </p>
        </div>
      ))}
      {tanks.map(({ gearName, arrives, leaves }) => (
        <p key={gearName} className={styles.small}>
          In {gearName}: {formatQuantity(arrives, "us")} when the truck comes, {formatQuantity(leaves, "us")} when it leaves.
        </p>
      ))}
      {visit.looks.map(({ line, reason }) => (
        <p key={line}>Look: {reason}</p>
      ))}
    </div>
  );
}

function StopFindings({ findings }: { readonly findings: readonly FindingShown[] }) {
  const sorted = FINDING_LEVELS.flatMap((level) => findings.filter(({ finding }) => finding.level === level));
  const grave = sorted.filter(({ finding }) => finding.level !== "note");
  const notes = sorted.filter(({ finding }) => finding.level === "note");
  const block = (shown: FindingShown) => <FindingOfStop key={`${shown.finding.rule} ${shown.finding.what} ${shown.finding.figure ?? ""}`} shown={shown} />;
  if (findings.length === 0) return null;
  return (
    <Stack gap={2}>
      {grave.map(block)}
      {notes.length > 0 && (
        <Disclosure name={counted(notes.length, "note")}>
          <Stack gap={2}>{notes.map(block)}</Stack>
        </Disclosure>
      )}
    </Stack>
  );
}

function FindingOfStop({ shown: { finding, answer } }: { readonly shown: FindingShown }) {
  const words = { what: finding.what, figure: finding.figure, toDo: finding.toDo, source: FINDING_SOURCE_WORDS[finding.source] };
  if (answer === null) return <Finding level={finding.level} {...words} />;
  const at = new Intl.DateTimeFormat("en-US", { dateStyle: "medium" }).format(new Date(answer.answeredAt));
  return <Finding level="answered" {...words} answer={{ by: answer.by, license: answer.license, at, reason: answer.reason }} />;
}
