import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { canonicalAmountOf, compareExact, type ExactQuantity, fromExactAmount, type Measure, measureInUnit, multiplyExact } from "#domain/quantities/exact-quantity";
import { formatQuantityIn, type UnitSystem } from "#domain/quantities/format-quantity";
import { divideRational, type Rational, rational, reduce, roundToWhole } from "#domain/quantities/rational";
import { type WateringDepth } from "#domain/label/aftercare-constraint";

/** One station of the customer's irrigation, as it was tested. */
export interface IrrigationStation {
  readonly stationName: string;
  /** What it puts down in an hour, from its own catch-can test. */
  readonly depthPerHour: Measure<"length"> | "not-tested";
  /** Where the soil can't take the water at once: the longest run, and the rest before the next. */
  readonly cycle: { readonly longestRunMinutes: number; readonly soakMinutes: number } | "none";
}

/**
 * What to set at a station. Without a test there are no minutes, only the depth and how to test. Nor are there any where
 * a minute less puts down less than the least and a minute more puts down more than the most, or where it would take more
 * than a day.
 */
export type StationRun =
  | {
      readonly kind: "run";
      readonly stationName: string;
      readonly totalMinutes: number;
      /** Each run in order, which together are the total. */
      readonly runsMinutes: readonly number[];
      readonly soakMinutes: number;
      /** From the first drop to the last, with the rests. */
      readonly elapsedMinutes: number;
      readonly rounding: MinuteRounding;
      /** What these minutes put down, as an exact fraction of 0.125 micrometers: "50800" or "152401/3". */
      readonly depthReached: string;
      readonly sentence: string;
    }
  | { readonly kind: "test-first"; readonly stationName: string; readonly sentence: string }
  | { readonly kind: "no-minutes"; readonly stationName: string; readonly sentence: string };

/** A station with its minutes. */
export type TimedRun = Extract<StationRun, { readonly kind: "run" }>;

/**
 * How whole minutes were reached: up, or they were whole. Mix tickets that were issued earlier may hold minutes that were
 * rounded down to stay within the most.
 */
export type MinuteRounding = "unchanged" | "up-to-whole-minute" | "down-to-stay-within-most";

const MINUTES_AN_HOUR: Rational = { numerator: 60n, denominator: 1n };
/** A day. A station that would run longer is on file with a wrong rate. Common practice. */
const LONGEST_RUN_MINUTES = 1_440;

/** A fraction as text that can be stored and read back exactly. */
export function exactText(value: Rational): string {
  const { numerator, denominator } = reduce(value);
  return denominator === 1n ? String(numerator) : `${numerator}/${denominator}`;
}

/**
 * A depth as it is kept, in 0.125 micrometers, by {@link exactText}: "50800" or "152401/3". Throws for text that is no
 * such fraction.
 */
export function depthFrom(text: string): ExactQuantity<"length"> {
  const [numerator = "0", denominator = "1"] = text.split("/");
  return fromExactAmount("length", rational(BigInt(numerator), BigInt(denominator)));
}

/** A depth of water in words: "¼ in", "6.4 mm"; with three digits of an inch where two don't say it exactly: "0.125 in". */
export function depthWords(depth: Measure<"length">, system: UnitSystem): string {
  if (system === "metric") return formatQuantityIn(depth, "mm", 1);
  const { numerator, denominator } = measureInUnit(depth, "in");
  return formatQuantityIn(depth, "in", (numerator * 100n) % denominator === 0n ? 2 : 3);
}

/**
 * Minutes for a depth at one station, only from its own tested rate, in cycles of at most its longest run. The exact
 * minutes are rounded up to whole ones as a step of its own, so that the least is reached. Where that passes the most
 * there are no minutes, and the sentence says what a minute less and a minute more would put down; nor are there any
 * where a day would not do. Refuses a rate of nothing ("… depthPerHour") and a longest run or a rest that is no whole
 * number of minutes within a day ("… cycle"). Minutes = 60 times depth over rate (Klickitat PUD, sprinkler rates).
 */
export function irrigationRun(station: IrrigationStation, depth: WateringDepth, system: UnitSystem): Outcome<StationRun> {
  const { stationName, depthPerHour, cycle } = station;
  if (depthPerHour === "not-tested") return accept(testFirst(stationName, depth, system));
  if (canonicalAmountOf(depthPerHour).numerator === 0n) {
    const sentence = `Station ${stationName} is on file with no water an hour; test it again.`;
    return badInput(`${stationName} depthPerHour`, "0", "more than nothing", sentence);
  }
  if (cycle !== "none" && !(isWhole(cycle.longestRunMinutes, 1) && isWhole(cycle.soakMinutes, 0))) {
    const sentence = `The longest run of station ${stationName} and its rest must be whole minutes within a day.`;
    const found = `${cycle.longestRunMinutes} min, rest ${cycle.soakMinutes} min`;
    return badInput(`${stationName} cycle`, found, "whole minutes, a run of at least 1", sentence);
  }
  const exact = exactMinutes(depthPerHour, depth.least);
  const minutes = Number(roundToWhole(exact, "up"));
  if (minutes > LONGEST_RUN_MINUTES) return accept({ kind: "no-minutes", stationName, sentence: moreThanADay(stationName, depth, system) });
  if (depth.most !== "none" && compareExact(depthIn(depthPerHour, minutes), depth.most) > 0) {
    return accept(noWholeMinute(station.stationName, { depthPerHour, minutes, most: depth.most, least: depth.least }, system));
  }
  const runsMinutes = cycle === "none" ? [minutes] : equalRuns(minutes, cycle.longestRunMinutes);
  const soakMinutes = cycle === "none" ? 0 : cycle.soakMinutes;
  return accept({
    kind: "run",
    stationName,
    totalMinutes: minutes,
    runsMinutes,
    soakMinutes,
    elapsedMinutes: minutes + soakMinutes * (runsMinutes.length - 1),
    rounding: roundToWhole(exact, "down") === BigInt(minutes) ? "unchanged" : "up-to-whole-minute",
    depthReached: exactText(canonicalAmountOf(depthIn(depthPerHour, minutes))),
    sentence: runSentence(stationName, runsMinutes, soakMinutes),
  });
}

function isWhole(value: number, lowest: number): boolean {
  return Number.isInteger(value) && value >= lowest && value <= LONGEST_RUN_MINUTES;
}

function depthIn(depthPerHour: Measure<"length">, minutes: number): Measure<"length"> {
  return multiplyExact(depthPerHour, rational(BigInt(minutes), MINUTES_AN_HOUR.numerator));
}

/**
 * The minutes that put a depth down, before they are made whole: 60 times the depth over what the station gives an
 * hour. Throws at a rate of nothing. Source: as for {@link irrigationRun}.
 */
export function exactMinutes(depthPerHour: Measure<"length">, depth: Measure<"length">): Rational {
  return divideRational(canonicalAmountOf(multiplyExact(depth, MINUTES_AN_HOUR)), canonicalAmountOf(depthPerHour));
}

function moreThanADay(stationName: string, { least }: WateringDepth, system: UnitSystem): string {
  return `${stationName}: ${depthWords(least, system)} would take more than a day at the rate that its test gave. Test it again.`;
}

interface BetweenMinutes {
  readonly depthPerHour: Measure<"length">;
  /** The first whole minute that reaches the least. */
  readonly minutes: number;
  readonly least: Measure<"length">;
  readonly most: Measure<"length">;
}

function noWholeMinute(stationName: string, { depthPerHour, minutes, least, most }: BetweenMinutes, system: UnitSystem): StationRun {
  const putsDown = (whole: number) => `${whole} min put down ${closeDepthWords(depthIn(depthPerHour, whole), system)}`;
  const lessWords = minutes > 1 ? `${putsDown(minutes - 1)} and ` : "";
  const asked = `at least ${closeDepthWords(least, system)} and at most ${closeDepthWords(most, system)}`;
  return { kind: "no-minutes", stationName, sentence: `${stationName}: ${lessWords}${putsDown(minutes)}; wanted are ${asked}.` };
}

/** A depth finely enough to tell a minute more from a minute less: thousandths of an inch, hundredths of a millimeter. */
function closeDepthWords(depth: Measure<"length">, system: UnitSystem): string {
  return system === "us" ? formatQuantityIn(depth, "in", 3) : formatQuantityIn(depth, "mm", 2);
}

/** The fewest runs that are none longer than allowed, as equal as whole minutes go, the longer ones first. */
function equalRuns(minutes: number, longestRunMinutes: number): readonly number[] {
  const count = Math.max(1, Math.ceil(minutes / longestRunMinutes));
  const base = Math.floor(minutes / count);
  const longer = minutes - base * count;
  return Array.from({ length: count }, (_, index) => (index < longer ? base + 1 : base));
}

function runSentence(stationName: string, runsMinutes: readonly number[], soakMinutes: number): string {
  if (runsMinutes.length === 1) return `${stationName}: ${runsMinutes.join("")} min.`;
  return `${stationName}: ${runsMinutes.join(", then ")} min, with ${soakMinutes} min of rest between.`;
}

/** Straight-sided cans and the least wind are common practice; see NMSU Guide H-510 (Kent and Leinauer), wind up to 5 mph. */
function testFirst(stationName: string, { least }: WateringDepth, system: UnitSystem): StationRun {
  const sentence =
    `${stationName}: ${depthWords(least, system)}. Its rate has not been tested. Set straight-sided cans across the lawn on a ` +
    `calm day, run the station for 15 min, measure the water in each, and take four times the average as its depth per hour.`;
  return { kind: "test-first", stationName, sentence };
}
