// The computing core without anything around it: the mix ticket and the aftercare of visits with three lawns and three
// treatments, worked out anew for each visit, and the tank plan of routes on which every second stop has another mix.
// Prints rows as JSON. Part of npm run bench.
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { makeMixTicket } from "#domain/mixing/mix-ticket";
import { planTanks } from "#domain/mixing/tank-plan";
import { type TicketQuestion } from "#domain/mixing/ticket-question";
import { of } from "#domain/quantities/quantity";
import { aftercareQuestion, appliedOf, byHouse, daily, FEED as FEED_CARE, hoursAfterEnd, IRON as IRON_CARE, labelOf, says } from "../../tests/support/aftercare-builders";
import { BARRIER, FEED, IRON, LAWN, QUESTION } from "../../tests/support/ticket";
import { tankQuestion, truckStop } from "../../tests/support/truck-stops";
import { rowsOfRounds } from "./report.mjs";

const ROUNDS = 3;
const COUNTS = [10, 100, 1000] as const;
const WARM_UP_VISITS = 300;
const STOP_COUNTS = [100, 1000] as const;
const zoneIds = ["front", "back", "side"];

const BARRIER_CARE = labelOf("Barrier Nine", {
  ...says("watering-in", { by: hoursAfterEnd(14 * 24), depth: { least: of("in", "0.5"), most: "none" }, rain: "counts" }),
  ...says("people-and-pets", { untilLaterOf: [hoursAfterEnd(4)] }),
});

/** No two visits have lawns of one size. */
function questionOf(visit: number): TicketQuestion {
  const lawns = zoneIds.map((zoneId, index) => ({
    ...LAWN,
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

const STRONGER_IRON = { ...IRON, rate: IRON.use.rates.high };

/** Milliseconds for each stop of a route; the tickets of its stops are made before. */
function millisecondsAStop(stops: number): number {
  const route = Array.from({ length: stops }, (_, stop) => truckStop(String(stop), [FEED, stop % 2 === 0 ? IRON : STRONGER_IRON], BigInt(1500 + stop)));
  const question = tankQuestion(route, { truck: { name: "Truck 1", payload: null, staysAboard: "counted-in-payload" } });
  const begin = performance.now();
  const plan = planTanks(question);
  const spent = performance.now() - begin;
  if (plan.fills.length !== stops) throw new Error(`${String(plan.fills.length)} fills for ${String(stops)} stops with a mix each.`);
  return spent / stops;
}

const nameOf = (visits: number) => `mix ticket and aftercare, each of ${visits.toLocaleString("en-US")} visits`;
const routeNameOf = (stops: number) => `tank plan, each stop of ${stops.toLocaleString("en-US")}`;
millisecondsAVisit(WARM_UP_VISITS);
millisecondsAStop(WARM_UP_VISITS);
const rounds = Array.from({ length: ROUNDS }, () => Object.fromEntries(COUNTS.map((visits) => [nameOf(visits), millisecondsAVisit(visits)])));
const routes = Array.from({ length: ROUNDS }, () => Object.fromEntries(STOP_COUNTS.map((stops) => [routeNameOf(stops), millisecondsAStop(stops)])));
process.stdout.write(JSON.stringify([...rowsOfRounds("ms", nameOf(COUNTS[0]), rounds), ...rowsOfRounds("ms", routeNameOf(STOP_COUNTS[0]), routes)]));
