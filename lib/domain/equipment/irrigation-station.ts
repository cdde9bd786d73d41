import { type StationRate } from "#domain/equipment/catch-can-test";
import { percentInWords } from "#domain/equipment/repeats";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import {
  canonicalAmountOf,
  compareExact,
  type ExactQuantity,
  type Measure,
  multiplyExact,
  ratioExact,
} from "#domain/quantities/exact-quantity";
import { formatQuantitiesApart, formatQuantity } from "#domain/quantities/format-quantity";
import {
  divideRational,
  multiplyRational,
  type Rational,
  rational,
  reduce,
  roundToWhole,
  subtractRational,
} from "#domain/quantities/rational";

/**
 * What is known of how fast the soil takes water: the depth in an hour that it takes steadily, and after how many
 * minutes of this station water first stands or runs off, which somebody has watched.
 */
export interface SoilIntake {
  readonly depthPerHour: Measure<"length">;
  readonly standsAfterMinutes: number | "not-watched";
}

/** Whose need the minutes serve: the average of the lawn, or its driest quarter, which takes longer. */
export type WateringAim = "average" | "driest-quarter";

export interface WateringWish {
  readonly depth: Measure<"length">;
  readonly aim: WateringAim;
  readonly intake: SoilIntake | "unknown";
  /** A depth never to be passed on average, such as a label's "no more than 1/4 in". */
  readonly neverAbove?: Measure<"length">;
}

/** How long a station is to run, as a controller takes it. */
export interface WateringPlan {
  readonly station: string;
  /** Before the minutes were made whole. */
  readonly exactMinutes: Rational;
  /** Equal runs, in whole minutes, with a pause after each but the last. */
  readonly cycles: number;
  readonly runMinutes: number;
  readonly soakMinutes: number;
  /** From the first minute of the first run to the last of the last, for the hours in which watering is allowed. */
  readonly elapsedMinutes: number;
  /** What the whole minutes put down on average. */
  readonly givesDepth: ExactQuantity<"length">;
}

const SIXTY = rational(60n);
const TEST_FIRST =
  "Set out cans in its reach, run it for a known time and enter what they caught. Until then the depth is all that can be said.";

/**
 * The minutes that a station runs for a depth, from that station's own rate: 60 times depth over rate, divided by its
 * distribution uniformity where the driest quarter is to get the depth. Where the station gives more than the soil takes
 * steadily, equal cycles are made, none longer than until water stands, with a pause long enough for the soil to take
 * what the cycle left standing. Minutes are made whole upwards, and downwards where the depth would pass `neverAbove`.
 *
 * Refused: a station without a rate (with how to test it), a soil whose intake is not known, one that gets more than it
 * takes and was not watched, an intake of nothing, a depth of nothing, one above its own limit or that an uneven station
 * can't give its driest quarter within that limit, and one that is over in under a minute.
 */
export function planWatering(
  station: string,
  rate: StationRate | "not-tested",
  wish: WateringWish,
): Outcome<WateringPlan> {
  if (rate === "not-tested") {
    return missingFact("rate", "a catch-can test of this station", `${station} has not been tested. ${TEST_FIRST}`);
  }
  const needed = neededMinutes(rate, wish);
  if (!needed.ok) return needed;
  const split = splitIntoCycles(station, rate.depthPerHour, needed.value, wish.intake);
  if (!split.ok) return split;
  const { cycles, soakMinutesFor } = split.value;
  const exactRun = divideRational(needed.value, rational(BigInt(cycles)));
  const depthOf = (runMinutes: bigint) => depthIn(rate.depthPerHour, rational(runMinutes * BigInt(cycles)));
  const up = roundToWhole(exactRun, "up");
  const { neverAbove } = wish;
  const isTooMuch = (minutes: bigint) => neverAbove !== undefined && compareExact(depthOf(minutes), neverAbove) > 0;
  const runMinutes = isTooMuch(up) ? roundToWhole(exactRun, "down") : up;
  if (isTooMuch(runMinutes)) return refuseTooUneven(station, rate);
  if (runMinutes === 0n) {
    const sentence = `${station} gives ${formatQuantity(wish.depth, "us")} in under a minute a run, which no controller can be set to.`;
    return badInput("depth", formatQuantity(wish.depth, "us"), "a minute of the station or more", sentence);
  }
  const soakMinutes = cycles === 1 ? 0 : soakMinutesFor(rational(runMinutes));
  return accept({
    station,
    exactMinutes: reduce(needed.value),
    cycles,
    runMinutes: Number(runMinutes),
    soakMinutes,
    elapsedMinutes: cycles * Number(runMinutes) + (cycles - 1) * soakMinutes,
    givesDepth: depthOf(runMinutes),
  });
}

function refuseTooUneven(station: string, { lowerQuarterUniformity }: StationRate) {
  const found = percentInWords(lowerQuarterUniformity);
  const sentence = `${station} is too uneven (DU ${found}): what its driest quarter needs gives the lawn more than is allowed.`;
  return badInput("aim", "driest quarter", "average, or a more even station", sentence);
}

function depthIn(depthPerHour: Measure<"length">, minutes: Rational): ExactQuantity<"length"> {
  return multiplyExact(depthPerHour, divideRational(minutes, SIXTY));
}

function neededMinutes(rate: StationRate, { depth, aim, neverAbove }: WateringWish): Outcome<Rational> {
  if (canonicalAmountOf(depth).numerator === 0n) {
    return badInput("depth", "0 in", "more than nothing", "A depth of nothing takes no watering.");
  }
  if (neverAbove !== undefined && compareExact(depth, neverAbove) > 0) {
    const [found, limit] = formatQuantitiesApart(depth, neverAbove, "us");
    return badInput("depth", found, `${limit} or less`, `${found} is wanted and no more than ${limit} is allowed.`);
  }
  const onAverage = multiplyRational(SIXTY, ratioExact(depth, rate.depthPerHour));
  if (aim === "average") return accept(reduce(onAverage));
  if (rate.lowerQuarterUniformity.numerator === 0n) {
    const sentence = "The driest quarter of the cans caught nothing; no time waters it. Repair the station and test it again.";
    return badInput("aim", "driest quarter", "average, or a repaired station", sentence);
  }
  return accept(reduce(divideRational(onAverage, rate.lowerQuarterUniformity)));
}

interface Cycles {
  readonly cycles: number;
  readonly soakMinutesFor: (runMinutes: Rational) => number;
}

function splitIntoCycles(
  station: string,
  depthPerHour: Measure<"length">,
  minutes: Rational,
  intake: SoilIntake | "unknown",
): Outcome<Cycles> {
  if (intake === "unknown") {
    const sentence = `How fast the soil under ${station} takes water is not known. Enter its intake, by a test or for its kind of soil.`;
    return missingFact("intake", "a depth in an hour", sentence);
  }
  if (canonicalAmountOf(intake.depthPerHour).numerator === 0n) {
    return badInput("intake", "0 in", "more than nothing", "A soil that takes no water can't be watered in.");
  }
  if (compareExact(depthPerHour, intake.depthPerHour) <= 0) {
    return accept({ cycles: 1, soakMinutesFor: () => 0 });
  }
  const { standsAfterMinutes } = intake;
  if (standsAfterMinutes === "not-watched") {
    const [given, taken] = formatQuantitiesApart(depthPerHour, intake.depthPerHour, "us");
    const sentence = `${station} gives ${given} each hour and the soil takes ${taken}. Run it once and note after how many minutes water stands.`;
    return missingFact("standsAfterMinutes", "whole minutes from 1", sentence);
  }
  if (!Number.isInteger(standsAfterMinutes) || standsAfterMinutes < 1) {
    const sentence = "The time until water stands is counted in whole minutes, from one.";
    return badInput("standsAfterMinutes", String(standsAfterMinutes), "whole minutes from 1", sentence);
  }
  const longestRun = rational(BigInt(standsAfterMinutes));
  const cycles = Number(roundToWhole(divideRational(minutes, longestRun), "up"));
  const surplus = subtractRational(ratioExact(depthPerHour, intake.depthPerHour), rational(1n));
  return accept({
    cycles,
    soakMinutesFor: (run) => Number(roundToWhole(multiplyRational(run, surplus), "up")),
  });
}
