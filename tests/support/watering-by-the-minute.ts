// A second way to find when a lawn is watered in: a walk minute by minute, in which each minute is asked whether every
// label and every hour lets water run. Depths are whole hundredths of an inch, stations run as a controller counts.
import { type Measure } from "#domain/quantities/exact-quantity";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type IrrigationStation } from "#domain/mixing/irrigation-run";
import { firstMinuteFree, type Ground, hoursPermit, keptOff, rainSpoils, statedBy, waterWanted } from "./label-by-the-minute";
import { dateAfter, dateAt, DAY, MINUTE } from "./wall-clock";

/** A hundredth of an inch is 254 micrometers, and what is kept counts eighths of one. */
function hundredths(depth: Measure<"length">): number {
  return Number("amount" in depth ? depth.amount : depth.exactAmount.numerator) / 2032;
}

/** A stretch of whole minutes, in instants. */
export interface Minutes {
  readonly from: number;
  readonly until: number;
}

/** The answer of the walk: the stretches, how long the stations take that have minutes, and how long all do where all have; or why there is none. */
export type Walked =
  | { readonly kind: "undecided" | "none-needed" | "no-common-depth" | "minutes-miss-depth" | "no-common-time" }
  | { readonly kind: "walked"; readonly stretches: readonly Minutes[]; readonly longestWithoutHours: number; readonly knownMinutes: number; readonly elapsedMinutes: number | undefined; readonly stationMinutes: readonly number[] };

/** The minutes of one station, rests counted; undefined where it has none, "no-minutes" where no whole minutes serve. */
function runsOf({ depthPerHour, cycle }: IrrigationStation, least: number, most: number): { readonly runs: number[]; readonly soak: number } | "not-tested" | "no-minutes" {
  if (depthPerHour === "not-tested") return "not-tested";
  const rate = hundredths(depthPerHour);
  let minutes = 0;
  while (minutes * rate < least * 60) minutes += 1;
  if (minutes > 1440 || minutes * rate > most * 60) return "no-minutes";
  const longest = cycle === "none" ? 1440 : cycle.longestRunMinutes;
  const runs = Array.from({ length: Math.ceil(minutes / longest) }, () => 0);
  for (let minute = 0; minute < minutes; minute += 1) runs[minute % runs.length] = (runs[minute % runs.length] ?? 0) + 1;
  return { runs, soak: cycle === "none" ? 0 : cycle.soakMinutes };
}

/** Minutes until the last drop where one station runs at a time: at each minute without water the rested one begins that still needs the longest. */
function minutesInTurn(stations: readonly { readonly runs: readonly number[]; readonly soak: number }[]): number {
  const states = stations.map(({ runs, soak }) => ({ left: [...runs], soak, rest: 0 }));
  let running: { left: number; soak: number } | undefined;
  for (let minute = 0; ; minute += 1) {
    if (running === undefined) {
      if (states.every(({ left }) => left.length === 0)) return minute;
      const need = ({ left, soak }: (typeof states)[number]) => left.reduce((sum, run) => sum + run, 0) + soak * (left.length - 1);
      const [next] = states.filter(({ left, rest }) => left.length > 0 && rest <= 0).toSorted((one, other) => need(other) - need(one));
      const run = next?.left.shift();
      if (next !== undefined && run !== undefined) {
        // Its own rest begins when the run is over.
        next.rest = run + next.soak;
        running = { left: run, soak: 0 };
      }
    }
    for (const state of states) state.rest -= 1;
    if (running !== undefined && (running.left -= 1) === 0) running = undefined;
  }
}

/** The most water of one watering in hundredths of an inch times 60, where it is known how much is wanted. */
export function waterPutDown(products: readonly AppliedProduct[], stations: readonly IrrigationStation[], ground: Ground): number | undefined {
  const depths = depthsWanted(products, ground);
  if (isUndecided(products, ground) || depths.length === 0) return undefined;
  const { least, most } = commonDepth(depths);
  if (least > most) return undefined;
  const rates = stations.flatMap((station) => {
    const run = runsOf(station, least, most);
    return typeof run === "string" || station.depthPerHour === "not-tested" ? [] : [run.runs.reduce((sum, one) => sum + one, 0) * hundredths(station.depthPerHour)];
  });
  return Math.max(least * 60, ...rates);
}

/** Whether water is kept off at an instant by one product, where so much is put down. */
export function waterKeptOff(product: AppliedProduct, water: number | undefined, ground: Ground): (instant: number) => boolean {
  const byLabel = keptOff(product, "watering-not-before", ground);
  const from = statedBy(product, "rain-that-spoils")?.from;
  const isAsMuch = from === "any" || (from !== undefined && water !== undefined && water >= hundredths(from) * 60);
  const byRain = rainSpoils(product, ground.zone);
  return (instant) => byLabel(instant) || (isAsMuch && byRain(instant));
}

function depthsWanted(products: readonly AppliedProduct[], ground: Ground): readonly { readonly least: number; readonly most: number }[] {
  return products.flatMap((product) => {
    const depth = statedBy(product, "watering-in")?.depth;
    if (depth === undefined || depth === "not-stated" || waterWanted(product, ground) === undefined) return [];
    return [{ least: hundredths(depth.least), most: depth.most === "none" ? Infinity : hundredths(depth.most) }];
  });
}

function commonDepth(depths: readonly { readonly least: number; readonly most: number }[]): { readonly least: number; readonly most: number } {
  return { least: Math.max(...depths.map(({ least }) => least)), most: Math.min(...depths.map(({ most }) => most)) };
}

/** Whether a fact is missing that the time of the water hangs on. */
export function isUndecided(products: readonly AppliedProduct[], ground: Ground): boolean {
  const isWanted = products.some((product) => waterWanted(product, ground) !== undefined);
  return products.some((product) => {
    const { label, wateredInAtEpochMilliseconds: at } = product;
    if (label.facts["watering-not-before"] === "unknown") return true;
    if (label.facts["watering-in"] === "unknown" && typeof at !== "number") return true;
    if (statedBy(product, "watering-in") !== undefined && at === "unknown") return true;
    const waitsForever = (statedBy(product, "watering-not-before")?.untilLaterOf ?? []).some(
      (until) => until.anchor === "state" && ground.estimates[until.state === "dry" ? "untilDry" : "untilDustSettled"] === "unknown",
    );
    return isWanted && (label.facts["rain-that-spoils"] === "unknown" || waitsForever || ground.localRules === "unknown" || ground.controller === "unknown");
  });
}

/** Whether some minute from an instant on is dry enough for the first and in time for the second product. */
export function haveCommonMinute(dry: AppliedProduct, due: AppliedProduct, water: number | undefined, ground: Ground, from: number): boolean {
  const isOff = waterKeptOff(dry, water, ground);
  const late = waterWanted(due, ground)?.late;
  if (late === undefined) throw new Error(`${due.label.productName} wants no water`);
  for (let minute = from; !late(minute + MINUTE) && minute < from + 60 * DAY; minute += MINUTE) if (!isOff(minute)) return true;
  return false;
}

/** The first minute at which the visit is over and all that counts at it is down. */
export function allDownAt(products: readonly AppliedProduct[], { visitUntil }: Ground): number {
  return Math.max(visitUntil, ...products.map(({ application }) => application.endsAtEpochMilliseconds));
}

/** Walks from the minute at which all is down until the first date of a label, or four weeks. */
export function walk(products: readonly AppliedProduct[], stations: readonly IrrigationStation[], ground: Ground): Walked {
  const wanted = products.flatMap((product) => waterWanted(product, ground) ?? []);
  if (isUndecided(products, ground)) return { kind: "undecided" };
  if (wanted.length === 0) return { kind: "none-needed" };
  const depths = depthsWanted(products, ground);
  const { least, most } = commonDepth(depths);
  if (depths.length > 0 && least > most) return { kind: "no-common-depth" };
  const runs = depths.length === 0 || stations.length === 0 ? ["not-tested" as const] : stations.map((station) => runsOf(station, least, most));
  if (runs.includes("no-minutes")) return { kind: "minutes-miss-depth" };
  const timed = runs.flatMap((run) => (typeof run === "string" ? [] : [run]));
  const knownMinutes = minutesInTurn(timed);
  const elapsedMinutes = timed.length < runs.length ? undefined : knownMinutes;
  const water = waterPutDown(products, stations, ground);
  const off = products.map((product) => waterKeptOff(product, water, ground));
  const isOff = (instant: number) => off.some((holds) => holds(instant));
  const from = allDownAt(products, ground);
  const isOver = searchIsOver(wanted, firstMinuteFree(isOff, from) ?? Infinity, from, ground);
  const dry: Minutes[] = [];
  const stretches: Minutes[] = [];
  for (let minute = from; !isOver(minute); minute += MINUTE) {
    if (isOff(minute)) continue;
    addMinute(dry, minute);
    if (hoursPermit(ground, minute)) addMinute(stretches, minute);
  }
  if (dry.length === 0) return { kind: "no-common-time" };
  const longestWithoutHours = Math.max(...dry.map(({ from, until }) => (until - from) / MINUTE));
  return { kind: "walked", stretches, longestWithoutHours, knownMinutes, elapsedMinutes, stationMinutes: timed.map((one) => minutesInTurn([one])) };
}

function searchIsOver(wanted: readonly { readonly late: (instant: number) => boolean; readonly hasDate: boolean }[], dryFrom: number, from: number, { zone }: Ground): (minute: number) => boolean {
  const dated = wanted.filter(({ hasDate }) => hasDate);
  if (dated.length > 0) return (minute) => dated.some(({ late }) => late(minute + MINUTE));
  const lastDate = dateAfter(dateAt(zone, dryFrom - from > 7 * DAY ? dryFrom : from), 28);
  return (minute) => dateAt(zone, minute) > lastDate;
}

function addMinute(stretches: Minutes[], minute: number): void {
  const last = stretches.at(-1);
  if (last?.until === minute) stretches[stretches.length - 1] = { from: last.from, until: minute + MINUTE };
  else stretches.push({ from: minute, until: minute + MINUTE });
}
