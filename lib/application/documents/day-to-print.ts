import { formatShortDate } from "#domain/foundation/calendar-date";
import { type Finding } from "#domain/foundation/finding";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type LoadedStop } from "#domain/mixing/loading-list";
import { type TankPlan } from "#domain/mixing/tank-plan-answer";
import { fillPlaceWords, mixSentences, stopWords } from "#domain/mixing/tank-plan-words";
import { type DayToPrint, loadingListOnPaper, routeSheetOnPaper, type StopToPrint } from "#domain/papers/day-on-paper";
import { type PaperFinding } from "#domain/papers/paper";
import { answersOnPaper, findingsOnPaper } from "#domain/papers/ticket-on-paper";
import { timeInOrder } from "#domain/routing/time-in-order";
import { RULES_VERSION } from "#domain/rules/packs-on-file";
import { truckOf, withTanks } from "#application/days/tank-findings";
import { loadedStopOf, loadFactsOf, tankPlanOfDay, wantsSign } from "#application/days/tank-plan-of-day";
import { questionOfDay, shopPosition, stopsOfDays } from "#application/days/travel-of-day";
import { frameOfPaper, fromPlan } from "#application/documents/frame-of-paper";
import { businessOnFile, type LeftOut, type PaperToPrint } from "#application/documents/issued-papers";
import { notFound, type UseCaseRefusal } from "#application/refusal";
import { calendarDayOf } from "#application/stored-day";
import { licensesOnFile } from "#application/visits/ticket-facts";
import { answersOfVisits, type AnswerOnFile, isOfPresentPlan, type IssuedTicket, issuedTicketsOf } from "#application/visits/issued-ticket";
import { openHolds } from "#application/visits/read-visit";
import { type VisitRow } from "#application/visits/visit-rows";
import { type TicketOutcome, ticketsOfVisits, type WorkedVisit } from "#application/visits/visit-ticket";
import { type Work } from "#application/use-case";

/** A stop with the mix ticket that stands for it, or why none does. */
export interface StopOnFile {
  readonly visit: VisitRow;
  /** Null where none was issued, the plan has changed since, or the visit is over. */
  readonly ticket: IssuedTicket | null;
  readonly why: string | null;
  readonly toPrint: StopToPrint;
  readonly wantsSign: boolean;
}

/** A truck's day with everything that its papers say. */
export interface DayOnFile {
  readonly routeDayId: string;
  readonly operatorId: string;
  readonly about: string;
  readonly truck: string;
  readonly date: ReturnType<typeof calendarDayOf>;
  readonly stops: readonly StopOnFile[];
  readonly routeSheet: PaperToPrint;
  readonly loadingList: PaperToPrint;
}

/** Reads a truck's day for its papers. Undefined when the company has none of that id. */
export async function dayOnFile(work: Work, routeDayId: string): Promise<DayOnFile | undefined> {
  const { companyId } = work.company;
  const row = await work.tx.routeDay.findUnique({ where: { companyId_routeDayId: { companyId, routeDayId } } });
  if (row === null) return undefined;
  const vehicle = await work.tx.vehicle.findUniqueOrThrow({ where: { companyId_vehicleId: { companyId, vehicleId: row.vehicleId } } });
  const operator = await work.tx.person.findUniqueOrThrow({ where: { companyId_personId: { companyId, personId: row.operatorId } } });
  const date = calendarDayOf(row.date);
  const planned = (await stopsOfDays(work, [routeDayId])).get(routeDayId) ?? [];
  const visitIds = planned.map(({ visitId }) => visitId);
  const found = visitIds.length === 0 ? [] : await ticketsOfVisits(work, visitIds);
  const load = await loadFactsOf(work, date, found);
  const truck = truckOf(vehicle);
  const stops = await stopsOnFile(work, withTanks(found, truck, load).visits);
  const asked = questionOfDay(await shopPosition(work), { date, startsAtMinute: row.startsAtMinute, endsAtMinute: row.endsAtMinute }, planned);
  const timed = asked.kind === "missing" ? undefined : timeInOrder(asked.question, asked.travel);
  const { name } = truck;
  const loaded = stops.map(({ visit, ticket }) => loadedStopOf(visit, ticket?.snapshot ?? null));
  const license = (await licensesOnFile(work)).find(({ personId }) => personId === row.operatorId);
  const frame = (title: string) => frameOfPaper(work, business, { title, on: date, createdAt: work.now, rulesVersion: RULES_VERSION, source: fromPlan(work) });
  const business = await businessOnFile(work);
  const { plan, loading } = tankPlanOfDay(loaded, truck, load);
  const day: DayToPrint = {
    frame: frame("Route sheet"),
    truck: `${name}, ${vehicle.name}`,
    people: [license === undefined ? `${operator.name} (no license on file)` : `${operator.name} (license ${license.state} ${license.number})`],
    stops: stops.map(({ toPrint }) => toPrint),
    loading: { ...loading, findings: [...loading.findings, ...findingsAtStops(plan)] },
    tanks: tanksToPrint(plan, loaded),
    returnsAtMinute: timed?.ok === true ? Math.ceil(timed.value.returnSeconds / 60) : null,
    driveMeters: timed?.ok === true ? timed.value.driveMeters : null,
  };
  const about = `${name}, ${formatShortDate(date)}`;
  const paper = { subjectId: routeDayId, rulesVersion: RULES_VERSION, operatorId: row.operatorId, warnings: [] };
  return {
    routeDayId,
    operatorId: row.operatorId,
    about,
    truck: day.truck,
    date,
    stops,
    routeSheet: { ...paper, data: { kind: "route-sheet", paper: routeSheetOnPaper(day) }, about: `Route sheet, ${about}` },
    loadingList: { ...paper, data: { kind: "loading-list", paper: loadingListOnPaper(day, frame("Loading list")) }, about: `Loading list, ${about}` },
  };
}

/** What one of a day's own papers says, with the stops that have no mix ticket as warnings. */
export async function dayPaperToPrint(work: Work, routeDayId: string, which: "routeSheet" | "loadingList"): Promise<Outcome<PaperToPrint, UseCaseRefusal>> {
  const day = await dayOnFile(work, routeDayId);
  if (day === undefined) return notFound("truck on that day");
  return accept({ ...day[which], warnings: stopsWithoutTicket(day).map(({ what, why }) => `${what}: ${why}`) });
}

/** The stops at which nothing can be put down by paper, and why. */
export function stopsWithoutTicket({ stops }: Pick<DayOnFile, "stops">): readonly LeftOut[] {
  return stops.flatMap(({ visit, why }) => (why === null ? [] : [{ what: visit.property.street, why }]));
}

async function stopsOnFile(work: Work, found: readonly WorkedVisit[]): Promise<readonly StopOnFile[]> {
  const visitIds = found.map(({ visit }) => visit.visitId);
  const issued = await issuedTicketsOf(work, visitIds);
  const answers = await answersOfVisits(work, visitIds);
  return found.map(({ visit, outcome }, index) => {
    const own = answers.get(visit.visitId) ?? [];
    const ticket = issued.get(visit.visitId);
    const why = whyNoTicket(visit, outcome, ticket, own);
    const stands = why === null && ticket !== undefined && visit.state === "planned" ? ticket : null;
    const findings = stands === null ? [] : findingsOnPaper(stands.snapshot.findings, answersOnPaper(stands.snapshot.answers, work.company.timeZone)).filter(({ level }) => level !== "note");
    return {
      visit,
      ticket: stands,
      why,
      wantsSign: stands !== null && wantsSign(stands.snapshot),
      toPrint: stopToPrint(visit, index + 1, stands, [...ownLines(visit, why), ...findings]),
    };
  });
}

/** Why nothing is put down here by a mix ticket; null where one stands, and where nothing is put down at all. */
function whyNoTicket(visit: VisitRow, outcome: TicketOutcome, issued: IssuedTicket | undefined, answers: readonly AnswerOnFile[]): string | null {
  if (visit.state !== "planned") return "somebody has been there already.";
  if (visit.treatments.length === 0) return null;
  const holds = openHolds(outcome, answers);
  if (holds.length > 0) return `a hold stands. ${[...new Set(holds.map(holdWords))].join(" ")}`;
  if (!outcome.ok) return outcome.refusal.refusal.sentence;
  if (issued === undefined) return "no mix ticket was issued.";
  return isOfPresentPlan(issued, outcome.value) ? null : `the plan has changed since mix ticket ${String(issued.number)} was issued. Issue it again.`;
}

function holdWords({ what, toDo }: Finding): string {
  return toDo === undefined ? what : `${what} ${toDo}`;
}

function ownLines(visit: VisitRow, why: string | null): readonly PaperFinding[] {
  const looks: readonly PaperFinding[] = visit.looks.map(({ reason }) => ({ level: "note", words: `To look at: ${reason}.` }));
  if (why === null) return looks;
  const level = visit.state === "planned" ? ("hold" as const) : ("note" as const);
  return [{ level, words: `Nothing is put down here: ${why}` }, ...looks];
}

function stopToPrint({ stop, window, property, client }: VisitRow, position: number, ticket: IssuedTicket | null, findings: readonly PaperFinding[]): StopToPrint {
  const { street, city, accessNote, dogNote } = property;
  return {
    position,
    arrivesAtMinute: stop?.arrivesAtMinute ?? null,
    window,
    address: `${street}, ${city}`,
    customer: client.name,
    phone: client.phone,
    accessNotes: [...(accessNote === null ? [] : [accessNote]), ...(dogNote === null ? [] : [`Dog: ${dogNote}`])],
    ticket: ticket === null ? null : { number: ticket.number, mixes: ticket.snapshot.ticket.mixes },
    findings,
  };
}

function findingsAtStops({ found }: TankPlan): readonly Finding[] {
  return found.flatMap(({ visitId, finding }) => (visitId === null || finding.level === "note" ? [] : [finding]));
}

/** The fills and what lies between mixes, in the words of the papers. */
function tanksToPrint({ fills, mixes }: TankPlan, stops: readonly LoadedStop[]): DayToPrint["tanks"] {
  const names = new Map(stops.map(({ visitId, name }, index) => [visitId, stopWords(index + 1, name)]));
  const nameOf = (visitId: string) => names.get(visitId) ?? "";
  return {
    fills: fills.map((fill) => ({ fill, place: fillPlaceWords(fill, nameOf) })),
    mixes: mixes.map((mix) => ({ name: `${mix.gear.name}, ${mix.name}`, sentences: mixSentences(mix, nameOf) })),
  };
}
