import { answerCovering } from "#domain/foundation/answered-hold";
import { type Finding, hold } from "#domain/foundation/finding";
import { type FindingAt } from "#domain/foundation/finding-causes";
import { type LoadingList } from "#domain/mixing/loading-list";
import { type PutDown, putDownOf } from "#domain/mixing/put-down";
import { type AboardAtStop, type TankPlan } from "#domain/mixing/tank-plan-answer";
import { findingsOfRun, findingsOfStop } from "#domain/routing/route-findings";
import { type Position } from "#domain/routing/travel-time";
import { type TimedStop, timeInOrder } from "#domain/routing/time-in-order";
import { type DayFacts } from "#application/days/day-facts";
import { withTanks } from "#application/days/tank-findings";
import { type LoadFacts, type TruckOfDay } from "#application/days/tank-plan-of-day";
import { type HoursOfDay, questionOfDay, type StopOfDay } from "#application/days/travel-of-day";
import { type AnswerOnFile, isOfPresentPlan } from "#application/visits/issued-ticket";
import { heldOf, type TicketOutcome } from "#application/visits/visit-ticket";
import { type VisitRow } from "#application/visits/visit-rows";

/** A finding as a screen shows it: a hold of law may have been answered by a license holder. */
export interface FindingShown {
  readonly finding: Finding;
  /** Its license in words: "license IN C-1". */
  readonly answer: AnswerOnFile | null;
}

/** One stop of a truck's day. */
export interface StopShown {
  readonly visit: VisitRow;
  readonly position: number;
  readonly isPinned: boolean;
  readonly arrivesAtMinute: number | null;
  readonly driveMinutes: number | null;
  readonly puts: readonly PutDown[];
  readonly findings: readonly FindingShown[];
  /** True where a hold stands that nobody has answered, and nobody has been there yet. */
  readonly isHeld: boolean;
  readonly ticket: { readonly number: number; readonly issuedAt: Date; readonly isOfPresentPlan: boolean } | null;
  readonly record: { readonly registerEntryId: string; readonly number: number } | null;
  readonly aboard: AboardAtStop | null;
}

/** A truck's day. */
export interface TruckShown {
  readonly routeDayId: string;
  readonly version: number;
  readonly vehicleId: string;
  readonly number: number;
  readonly name: string;
  readonly operatorId: string;
  readonly operatorName: string;
  readonly truck: TruckOfDay;
  readonly startsAtMinute: number;
  readonly endsAtMinute: number;
  readonly stops: readonly StopShown[];
  /** By the house's estimate; null where a position is missing. */
  readonly returnsAtMinute: number | null;
  readonly driveMeters: number | null;
  /** Why the day can't be put in order, as sentences; empty where it can. */
  readonly missing: readonly string[];
  readonly tankPlan: TankPlan;
  readonly loading: LoadingList;
  /** What was found at the stops and of the truck as a whole, each once and with where: a visit's id or the route day's. */
  readonly found: readonly FindingAt[];
}

/** A truck's day as its rows have it. */
export interface TruckRow extends HoursOfDay {
  readonly routeDayId: string;
  readonly version: number;
  readonly vehicleId: string;
  readonly number: number;
  readonly name: string;
  readonly truck: TruckOfDay;
  readonly operatorId: string;
  readonly operatorName: string;
}

/** The tickets of a day's visits as they would be made now. */
export type TicketsByVisit = ReadonlyMap<string, { readonly visit: VisitRow; readonly outcome: TicketOutcome }>;

/** Puts a truck's day together from what was read; asks the books for nothing. */
export function truckShown(row: TruckRow, stops: readonly StopOfDay[], shop: Position | null, tickets: TicketsByVisit, facts: DayFacts, load: LoadFacts): TruckShown {
  const asked = questionOfDay(shop, row, stops);
  const outcome = asked.kind === "missing" ? undefined : timeInOrder(asked.question, asked.travel);
  const timed = outcome?.ok === true ? outcome.value : undefined;
  const alone = stops.flatMap((stop) => tickets.get(stop.visitId) ?? []);
  const { visits, plan, loading } = withTanks(alone, row.truck, load);
  const timesOf = new Map(timed?.stops.map((times) => [times.stopId, times]));
  const aboardOf = new Map(plan.aboard.map((aboard) => [aboard.visitId, aboard]));
  const shown = visits.map(({ visit, outcome: ticket }): StopShown =>
    stopShown(visit, ticket, timesOf.get(visit.visitId), facts, aboardOf.get(visit.visitId) ?? null),
  );
  const ofRun = timed === undefined ? [] : findingsOfRun({ truck: row.truck.name, returnSeconds: timed.returnSeconds, dayEndSeconds: row.endsAtMinute * 60 });
  const ofTruck = [...ofRun, ...loading.findings];
  return {
    ...row,
    stops: shown,
    returnsAtMinute: timed === undefined ? null : Math.ceil(timed.returnSeconds / 60),
    driveMeters: timed?.driveMeters ?? null,
    missing: asked.kind === "missing" ? asked.sentences : [],
    tankPlan: plan,
    loading,
    found: [
      ...ofTruck.map((finding) => ({ at: row.routeDayId, finding })),
      ...shown
        .filter(({ visit }) => visit.state === "planned")
        .flatMap(({ visit, findings }) => findings.filter(({ finding, answer }) => answer === null && !ofTruck.includes(finding)).map(({ finding }) => ({ at: visit.visitId, finding }))),
    ],
  };
}

function stopShown(visit: VisitRow, outcome: TicketOutcome, times: TimedStop | undefined, facts: DayFacts, aboard: AboardAtStop | null): StopShown {
  const answers = facts.answersOf.get(visit.visitId) ?? [];
  const late = findingsOfStop({ street: visit.property.street, lateSeconds: times?.lateSeconds ?? 0 });
  const findings = [...late, ...findingsOf(visit, outcome)].map((finding): FindingShown => ({ finding, answer: answerShown(answerCovering(finding, heldOf(outcome).on, answers)) }));
  const issued = facts.ticketOf.get(visit.visitId);
  const isPlanned = visit.state === "planned";
  return {
    visit,
    position: visit.stop?.position ?? 0,
    isPinned: visit.stop?.isPinned ?? false,
    arrivesAtMinute: visit.stop?.arrivesAtMinute ?? null,
    driveMinutes: visit.stop?.driveMinutes ?? null,
    puts: outcome.ok ? putDownOf(outcome.value.ticket.mixes) : [],
    findings: isPlanned ? findings : [],
    isHeld: isPlanned && findings.some(({ finding, answer }) => finding.level === "hold" && answer === null),
    ticket:
      issued === undefined
        ? null
        : { number: issued.number, issuedAt: issued.issuedAt, isOfPresentPlan: outcome.ok && isOfPresentPlan(issued, outcome.value) },
    record: facts.recordOf.get(visit.visitId) ?? null,
    aboard,
  };
}

function answerShown(answer: AnswerOnFile | undefined): AnswerOnFile | null {
  return answer === undefined ? null : { ...answer, license: `license ${answer.license}` };
}

/** The findings of a visit's ticket. One that can't be worked out at all is a hold that says why; a look needs none. */
function findingsOf(visit: VisitRow, outcome: TicketOutcome): readonly Finding[] {
  if (outcome.ok) return outcome.value.findings;
  if (visit.treatments.length === 0 && visit.looks.length > 0) return [];
  const { refusal, findings } = outcome.refusal;
  const because = hold("office", { rule: "ticket-not-workable", source: "house", what: refusal.sentence, toDo: "Change the plan of the visit.", about: [visit.name] });
  // Where a treatment fell away for a reason that is named, "nothing is planned" would only repeat it.
  return findings.some(({ level }) => level === "hold") ? findings : [because, ...findings];
}
