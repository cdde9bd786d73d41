// The computing core without anything around it: the mix ticket and the aftercare of visits with three lawns and three
// treatments, worked out anew for each visit; whole days of such stops with their tank plan; and the tank plan of routes
// on which every second stop has another mix. Prints rows as JSON. Part of npm run bench.
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { type AftercareQuestion } from "#domain/mixing/aftercare-question";
import { makeMixTicket } from "#domain/mixing/mix-ticket";
import { planTanks } from "#domain/mixing/tank-plan";
import { type LoadedTruck, type TreatedStop } from "#domain/mixing/tank-plan-question";
import { type PastApplication, type TicketQuestion } from "#domain/mixing/ticket-question";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { aftercareQuestion, appliedOf, byHouse, daily, FEED as FEED_CARE, hoursAfterEnd, IRON as IRON_CARE, labelOf, says } from "../../tests/support/aftercare-builders";
import { BARRIER, FEED, IRON, LAWN, PAST, QUESTION } from "../../tests/support/ticket";
import { tankQuestion, truckStop } from "../../tests/support/truck-stops";
import { rowsOfRounds } from "./report.mjs";

const ROUNDS = 5;
const VISITS = [10, 100, 1000] as const;
const DAYS = [10, 100, 120, 1000] as const;
const ROUTES = [10, 100, 1000] as const;
const WARM_UP_VISITS = 300;
const WITHOUT_PAYLOAD: LoadedTruck = { name: "Truck 1", payload: null, staysAboard: of("lb", 0n) };
const zoneIds = ["front", "back", "side"];

const BARRIER_CARE = labelOf("Barrier Nine", {
  ...says("watering-in", { by: hoursAfterEnd(14 * 24), depth: { least: of("in", "0.5"), most: "none" }, rain: "counts" }),
  ...says("people-and-pets", { untilLaterOf: [hoursAfterEnd(4)] }),
});

const ROUNDS_A_YEAR = 8;
const active = (pounds: string) => rateOf("active-ingredient-mass-per-area", pounds, "lb per acre");

/** Two seasons of eight rounds with three products each, the barrier in two of the rounds: what a lawn that is looked after has on file. */
const HISTORY: readonly PastApplication[] = [2024, 2025].flatMap((year) =>
  Array.from({ length: ROUNDS_A_YEAR }, (_, round) => ({ on: `${String(year)}-${String(round + 3).padStart(2, "0")}-20` as CalendarDate, isBarrier: round < 2 })).flatMap(({ on, isBarrier }) => [
    { ...PAST, on, visitId: on, productId: FEED.productId, productName: "Harrowgate 32" },
    { ...PAST, on, visitId: on, productId: IRON.productId, productName: "Rustwater Iron" },
    { ...PAST, on, visitId: on, activeIngredients: isBarrier ? [{ name: "velodiamine", rate: active("0.37"), modeOfAction: "unknown" as const }] : [] },
  ]),
);

/** No two visits have lawns of one size. */
function questionOf(visit: number): TicketQuestion {
  const lawns = zoneIds.map((zoneId, index) => ({
    ...LAWN,
    history: HISTORY,
    zoneId,
    letter: "ABC"[index] ?? "",
    name: zoneId,
    area: of("sq ft", BigInt(1500 + visit * 3 + index * 700)),
  }));
  return { ...QUESTION, lawns, treatments: [FEED, IRON, BARRIER].map((treatment) => ({ ...treatment, zoneIds })) };
}

const careQuestion = aftercareQuestion([appliedOf(IRON_CARE), appliedOf(FEED_CARE), appliedOf(BARRIER_CARE)], {
  hours: { localRules: "none", controller: byHouse(daily(4, 9, [1, 3, 5])) },
});

/** Milliseconds for each visit. */
function millisecondsAVisit(visits: number): number {
  const questions = Array.from({ length: visits }, (_, visit) => questionOf(visit));
  let mixes = 0;
  let steps = 0;
  const begin = performance.now();
  for (const question of questions) {
    const ticket = makeMixTicket(question);
    const care = aftercareTimeline(careQuestion);
    if (!ticket.ok || !care.ok) throw new Error("The visit of the measurement can't be worked out.");
    mixes += ticket.value.mixes.length;
    steps += care.value.steps.length;
  }
  const spent = performance.now() - begin;
  if (mixes !== visits * 3 || steps === 0) throw new Error(`${String(mixes)} mixes and ${String(steps)} steps of ${String(visits)} visits.`);
  return spent / visits;
}

const ONE_MINUTE_MILLISECONDS = 60_000;
const MINUTES_AT_A_STOP = 4;
const STOPS_FROM_MORNING_TO_EVENING = 120;
const DAY_BEGINS_AT = Date.parse("2026-05-01T08:00-05:00");

/** No two stops of one truck's day begin at one minute; a day of more stops than a truck makes has several trucks. */
function careOf(stop: number): AftercareQuestion {
  const beginsAt = DAY_BEGINS_AT + (stop % STOPS_FROM_MORNING_TO_EVENING) * MINUTES_AT_A_STOP * ONE_MINUTE_MILLISECONDS;
  const endsAt = beginsAt + MINUTES_AT_A_STOP * ONE_MINUTE_MILLISECONDS;
  const application = { startsAtEpochMilliseconds: beginsAt, endsAtEpochMilliseconds: endsAt, postedAtEpochMilliseconds: endsAt };
  return {
    ...careQuestion,
    products: careQuestion.products.map((product) => ({ ...product, application })),
    visit: { fromEpochMilliseconds: beginsAt, untilEpochMilliseconds: endsAt },
  };
}

/** Milliseconds for each stop of a day: its mix ticket with all findings, its aftercare, and its part of the truck's tank plan. */
function millisecondsAStop(stopCount: number): number {
  const stops = Array.from({ length: stopCount }, (_, stop) => ({ ticket: questionOf(stop), care: careOf(stop) }));
  const loaded: TreatedStop[] = [];
  let findings = 0;
  const begin = performance.now();
  for (const [index, stop] of stops.entries()) {
    const ticket = makeMixTicket(stop.ticket);
    const care = aftercareTimeline(stop.care);
    if (!ticket.ok || !care.ok) throw new Error("The stop of the measurement can't be worked out.");
    findings += ticket.value.findings.length + care.value.findings.length;
    const { lawns, treatments } = stop.ticket;
    loaded.push({ visitId: String(index), name: `stop ${String(index)}`, water: "no", mixes: ticket.value.mixes, lawns, treatments });
  }
  const { fills, found } = planTanks(tankQuestion(loaded, { truck: WITHOUT_PAYLOAD }));
  const spent = performance.now() - begin;
  findings += found.length;
  if (findings === 0 || fills.length === 0) throw new Error(`${String(findings)} findings and ${String(fills.length)} fills of ${String(stopCount)} stops.`);
  return spent / stopCount;
}

const STRONGER_IRON = { ...IRON, rate: IRON.use.rates.high };

/** Milliseconds for each stop of a route; the tickets of its stops are made before. */
function millisecondsOfPlan(stops: number): number {
  const route = Array.from({ length: stops }, (_, stop) => truckStop(String(stop), [FEED, stop % 2 === 0 ? IRON : STRONGER_IRON], BigInt(1500 + stop)));
  const question = tankQuestion(route, { truck: WITHOUT_PAYLOAD });
  const begin = performance.now();
  const plan = planTanks(question);
  const spent = performance.now() - begin;
  if (plan.fills.length !== stops) throw new Error(`${String(plan.fills.length)} fills for ${String(stops)} stops with a mix each.`);
  return spent / stops;
}

const nameOf = (visits: number) => `mix ticket and aftercare, each of ${visits.toLocaleString("en-US")} visits`;
const nameOfDay = (stops: number) => `a day of ${stops.toLocaleString("en-US")} stops with tank plan and findings, each stop`;
const nameOfPlan = (stops: number) => `tank plan, each stop of ${stops.toLocaleString("en-US")}`;

/** Rows of one measurement at growing counts, each against the first. */
function rowsOf(counts: readonly number[], nameOfRow: (count: number) => string, measure: (count: number) => number): readonly unknown[] {
  measure(WARM_UP_VISITS);
  const rounds = Array.from({ length: ROUNDS }, () => Object.fromEntries(counts.map((count) => [nameOfRow(count), measure(count)])));
  return rowsOfRounds("ms", nameOfRow(counts[0] ?? 0), rounds);
}

const rows = [...rowsOf(VISITS, nameOf, millisecondsAVisit), ...rowsOf(DAYS, nameOfDay, millisecondsAStop), ...rowsOf(ROUTES, nameOfPlan, millisecondsOfPlan)];
process.stdout.write(JSON.stringify(rows));
