import { depthOnArea, roundOpeningArea } from "#domain/equipment/measured-space";
import { averageMeasure, averageOf } from "#domain/equipment/repeats";
import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import {
  canonicalAmountOf,
  compareExact,
  exactly,
  type ExactQuantity,
  fromExactAmount,
  type Measure,
  multiplyExact,
} from "#domain/quantities/exact-quantity";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import {
  addRational,
  compareRational,
  divideRational,
  fromNumber,
  multiplyRational,
  ONE,
  type Rational,
  rational,
  reduce,
  subtractRational,
  ZERO,
} from "#domain/quantities/rational";
import { MOST_WIND, type Refused, amountRange, refuseOutOfRange } from "#domain/turf/physical-range";

/** What the cans of one station caught: by a ruler in straight cans, or by a measure in cans with equal round mouths. */
export type CanCatches =
  | { readonly kind: "depths"; readonly depths: readonly Measure<"length">[] }
  | {
      readonly kind: "volumes";
      readonly mouthDiameter: Measure<"length">;
      readonly volumes: readonly Measure<"volume">[];
    };

/** One catch-can test of one irrigation station. */
export interface CatchCanTest {
  readonly station: string;
  readonly runMinutes: number;
  readonly cans: CanCatches;
  /** The wind during the test, or that nobody looked. */
  readonly windMph: number | "not-taken";
}

/** What a test says of its station. */
export interface StationRate {
  /** All that went in. */
  readonly test: CatchCanTest;
  /** The average over the cans. */
  readonly depthPerHour: ExactQuantity<"length">;
  /** DU of the lower quarter, as a part: the average of the lowest quarter of the cans over that of all. */
  readonly lowerQuarterUniformity: Rational;
  /** Christiansen's CU as a part. Below zero for a very uneven station. */
  readonly christiansenUniformity: Rational;
  readonly findings: readonly Finding[];
}

/** A lower quarter takes four cans (arithmetic). */
const FEWEST_CANS = 4;

/** Above this wind a test says little. Source: New Mexico State University Guide H-510 (Kent and Leinauer). */
export const CALM_FOR_CANS_MPH = 5;
const CALM_CITATION = "New Mexico State University Guide H-510 (Kent and Leinauer), https://pubs.nmsu.edu/_h/H510/index.html";

/**
 * A foot of water in one can, and as much in an hour, is beyond every sprinkler, and so is a sprinkler that gives less
 * than a twentieth of an inch in an hour: a unit is wrong. An average under a hundredth of an inch can't be read off a
 * can. Common practice; heads for lawns give from about 0.2 in to 2.5 in an hour.
 */
const MOST_WATER = exactly("in", "12");
const LEAST_AVERAGE = exactly("in", "0.01");
const LEAST_PER_HOUR = exactly("in", "0.05");

/** Under a minute nothing stands in a can, and over four hours no station runs. Common practice. */
const RUN_MINUTES = { lowest: 1, highest: 240 } as const;
const MINUTES_DECIMALS = 3;

/** The part of the cans that counts as the low ones. */
export type LowShare = "lower-quarter" | "lower-half";

/**
 * How many cans are the low ones: their share to the nearest whole can, half a can to the even number, as R rounds in the
 * source of spreval (Grabow, NC State), R/CUDU.R. So of ten cans two are the low quarter, of fourteen four.
 */
export function lowCans(cans: number, share: LowShare): number {
  const exact = cans / (share === "lower-quarter" ? 4 : 2);
  const down = Math.floor(exact);
  return exact - down === 0.5 ? down + (down % 2) : Math.round(exact);
}

/**
 * Distribution uniformity as a part: the average of the lowest quarter (or half) of the catches over the average of
 * all. Source: spreval (Grabow, NC State), https://glgrabow.github.io/spreval/reference/DU.html. Refused at `cans`:
 * under four, and cans that are all empty.
 */
export function distributionUniformity(catches: readonly Rational[], share: LowShare): Outcome<Rational> {
  const refused = refuseCatches(catches);
  if (refused !== undefined) return refused;
  const lowest = [...catches].sort(compareRational).slice(0, lowCans(catches.length, share));
  return accept(reduce(divideRational(averageOf(lowest), averageOf(catches))));
}

/**
 * Christiansen's coefficient of uniformity as a part: one less the sum of the distances from the average, over the
 * number of cans times the average. Source: spreval (Grabow, NC State),
 * https://glgrabow.github.io/spreval/reference/CU.html. Refused at `cans`: under four, and cans that are all empty.
 */
export function christiansenUniformity(catches: readonly Rational[]): Outcome<Rational> {
  const refused = refuseCatches(catches);
  if (refused !== undefined) return refused;
  const average = averageOf(catches);
  const distances = catches
    .map((value) => subtractRational(value, average))
    .map((value) => (value.numerator < 0n ? { ...value, numerator: -value.numerator } : value))
    .reduce(addRational, ZERO);
  const whole = multiplyRational(average, rational(BigInt(catches.length)));
  return accept(reduce(subtractRational(ONE, divideRational(distances, whole))));
}

function refuseCatches(catches: readonly Rational[]) {
  if (catches.length < FEWEST_CANS) {
    const sentence = `${catches.length === 1 ? "1 can is" : `${catches.length} cans are`} too few; set out at least ${FEWEST_CANS} in the reach of the station.`;
    return badInput("cans", String(catches.length), `${FEWEST_CANS} or more`, sentence);
  }
  if (catches.every(({ numerator }) => numerator === 0n)) {
    return badInput("cans", "all empty", "water in one of them", "Every can is empty; see whether the station ran.");
  }
  return undefined;
}

/**
 * A station's own rate and evenness from its cans. The rate is the average depth over the time, as a depth in an hour.
 * Refused: `cans` that are under four or all empty, with over 12 in in one, under 0.01 in on the average or outside
 * 0.05 to 12 in an hour; a `mouthDiameter` of nothing, `runMinutes` outside 1 to 240, a `windMph` below zero or beyond
 * a hurricane.
 */
export function measureStation(test: CatchCanTest): Outcome<StationRate> {
  const refused = refuseOutOfRange([
    { field: "runMinutes", words: "The time that the station ran", value: test.runMinutes, ...RUN_MINUTES, unit: "min" },
    ...(test.windMph === "not-taken" ? [] : [amountRange("windMph", "The wind", test.windMph, MOST_WIND.milesPerHour)]),
  ]);
  if (refused !== undefined) return refused;
  const { cans } = test;
  if (cans.kind === "volumes" && canonicalAmountOf(cans.mouthDiameter).numerator === 0n) {
    return badInput("mouthDiameter", "0 in", "more than nothing", "The mouth of the cans is zero wide; measure it.");
  }
  const depths = depthsOf(cans);
  const catches = depths.map(canonicalAmountOf);
  const lowerQuarter = distributionUniformity(catches, "lower-quarter");
  if (!lowerQuarter.ok) return lowerQuarter;
  const christiansen = christiansenUniformity(catches);
  if (!christiansen.ok) return christiansen;
  const hours = divideRational(fromNumber(test.runMinutes, MINUTES_DECIMALS), rational(60n));
  const depthPerHour = fromExactAmount("length", divideRational(averageOf(catches), hours));
  const impossible = refuseImpossibleWater(depths, depthPerHour);
  if (impossible !== undefined) return impossible;
  return accept({
    test,
    depthPerHour,
    lowerQuarterUniformity: lowerQuarter.value,
    christiansenUniformity: christiansen.value,
    findings: [...windFindings(test), ...dryQuarterFindings(test, catches, lowerQuarter.value)],
  });
}

function refuseImpossibleWater(depths: readonly Measure<"length">[], depthPerHour: ExactQuantity<"length">): Refused | undefined {
  const inches = (depth: Measure<"length">) => formatQuantityIn(depth, "in");
  const tooFull = depths.find((depth) => compareExact(depth, MOST_WATER) > 0);
  if (tooFull !== undefined) {
    const sentence = `A can with ${inches(tooFull)} of water can't be meant; a can holds up to 12 in.`;
    return badInput("cans", inches(tooFull), "up to 12 in in each can", sentence);
  }
  const average = averageMeasure("length", depths);
  if (compareExact(average, LEAST_AVERAGE) < 0) {
    const sentence = "The cans caught less than 0.01 in on the average, which nobody can read; run the station longer.";
    return badInput("cans", "less than 0.01 in on the average", "0.01 in on the average or more", sentence);
  }
  const allowed = "from 0.05 in to 12 in an hour";
  if (compareExact(depthPerHour, MOST_WATER) > 0) {
    const sentence = `That would be ${inches(depthPerHour)} in an hour, and a station gives ${allowed}; see whether the depths and the minutes are right.`;
    return badInput("cans", `${inches(depthPerHour)} an hour`, allowed, sentence);
  }
  if (compareExact(depthPerHour, LEAST_PER_HOUR) < 0) {
    const sentence = `That would be less than 0.05 in in an hour, and a station gives ${allowed}; see whether the depths and the minutes are right.`;
    return badInput("cans", "less than 0.05 in an hour", allowed, sentence);
  }
  return undefined;
}

/** No minutes bring water where none falls. */
function dryQuarterFindings({ station }: CatchCanTest, catches: readonly Rational[], uniformity: Rational): readonly Finding[] {
  if (uniformity.numerator !== 0n) return [];
  const cans = lowCans(catches.length, "lower-quarter");
  return [
    takeCare({
      rule: "can-test-dry-quarter",
      source: "common-practice",
      what: "The driest quarter of the lawn gets no water, so this station can't water it evenly.",
      figure: `${cans === 1 ? "The driest can was" : `The ${cans} driest cans were`} empty: the DU is 0%.`,
      toDo: "See to the heads, their pressure and their spacing, and test again; more minutes don't help.",
      about: [station],
    }),
  ];
}

function depthsOf(cans: CanCatches): readonly Measure<"length">[] {
  if (cans.kind === "depths") return cans.depths;
  const mouth = roundOpeningArea(cans.mouthDiameter);
  return cans.volumes.map((volume) => depthOnArea(volume, mouth));
}

function windFindings({ station, windMph }: CatchCanTest): readonly Finding[] {
  if (windMph === "not-taken") {
    return [
      note({
        rule: "can-test-wind-not-taken",
        source: "handbook",
        what: `The wind was not taken during the can test of ${station}.`,
        toDo: `Test in wind of ${CALM_FOR_CANS_MPH} mph or less.`,
        citation: CALM_CITATION,
        about: [station],
      }),
    ];
  }
  if (windMph <= CALM_FOR_CANS_MPH) return [];
  return [
    takeCare({
      rule: "can-test-in-wind",
      source: "handbook",
      what: `It was too windy for the can test of ${station}.`,
      figure: `The wind was ${windMph} mph; up to ${CALM_FOR_CANS_MPH} mph is calm enough.`,
      toDo: "Test again on a calm morning.",
      citation: CALM_CITATION,
      about: [station],
    }),
  ];
}

/** How the heads of a station stand: in a square or rectangle, or in triangles, whose area is smaller. */
export type HeadSpacing = "square" | "triangular";

/**
 * Half of the square root of three: the height of a triangle of equal sides over its side, as Klickitat PUD prints it.
 */
const TRIANGLE_HEIGHT = rational(866n, 1000n);

/**
 * The depth in an hour that a station should give by its flow and area: printed as 96.25 gal/min over sq ft, which is
 * exact. For comparison only: it knows no pressure, wear or wind, and minutes are never taken from it. In triangles the
 * area is spacing by row distance times 0.866. Source: Klickitat PUD, https://www.kpud.org/sprinklerRates.php Refused:
 * no `area`.
 */
export function designedDepthPerHour(
  flowPerMinute: Measure<"volume">,
  area: Measure<"area">,
  spacing: HeadSpacing,
): Outcome<ExactQuantity<"length">> {
  if (canonicalAmountOf(area).numerator === 0n) {
    return badInput("area", "0 sq ft", "more than nothing", "The area that the station waters is zero.");
  }
  const watered = spacing === "triangular" ? multiplyExact(area, TRIANGLE_HEIGHT) : area;
  return accept(depthOnArea(multiplyExact(flowPerMinute, rational(60n)), watered));
}
