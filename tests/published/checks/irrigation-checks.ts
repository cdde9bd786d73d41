// Sprinklers: rates, uniformity, minutes and cycles as printed.
import { expect } from "vitest";
import { CALM_FOR_CANS_MPH, christiansenUniformity, designedDepthPerHour, distributionUniformity, type HeadSpacing, measureStation, type StationRate } from "#domain/equipment/catch-can-test";
import { exactMinutes, irrigationRun, type TimedRun } from "#domain/mixing/irrigation-run";
import { exactly, type Measure, measureInUnit } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { divideRational, rational, toNumber } from "#domain/quantities/rational";
import { valueOf } from "../../support/domain-answers";
import { printedTo, type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";

const SPREVAL_DU = "spreval (Grabow, NC State), https://glgrabow.github.io/spreval/reference/DU.html";
const SPREVAL_CU = "spreval (Grabow, NC State), https://glgrabow.github.io/spreval/reference/CU.html";
const SPREVAL_HALF = "spreval (Grabow, NC State), https://glgrabow.github.io/spreval/reference/DU.lh.html";
const WETS = "WETS study page";
const KLICKITAT = "Klickitat PUD, https://www.kpud.org/sprinklerRates.php";
const CALCADY = "https://calcady.com/trade/landscaping/precipitation-rate";
const AVIDGREEN = "irrigation course page, http://www.avidgreen.com/cobalt-group/frontpagewebs/Content/Irrigation/Irrigate5.htm";
const TEXAS = "Texas A&M Water University, http://wateruniversity.tamu.edu/irrigation/catch-can-test/";

const cans = [47, 42, 45, 24, 13, 26, 33, 34, 27, 30, 40, 44, 32, 12, 12];
const catches = cans.map((milliliters) => rational(BigInt(milliliters)));
const sorted = [...cans].sort((left, right) => left - right);
const average = (values: readonly number[]) => values.reduce((total, value) => total + value, 0) / values.length;

const inchesPerHour = (gallonsPerMinute: bigint, squareFeet: bigint, spacing: HeadSpacing = "square") =>
  toNumber(measureInUnit(valueOf(designedDepthPerHour(of("gal", gallonsPerMinute), of("sq ft", squareFeet), spacing)), "in"));

function station(depths: readonly Measure<"length">[], runMinutes: number): StationRate {
  return valueOf(measureStation({ station: "1", runMinutes, cans: { kind: "depths", depths }, windMph: 2 }));
}

/** The whole minutes of a station for a depth, in runs of at most so many minutes where water stands after them. */
function runOf({ depthPerHour }: StationRate, least: Measure<"length">, longestRunMinutes?: number): TimedRun {
  const cycle = longestRunMinutes === undefined ? "none" : { longestRunMinutes, soakMinutes: 30 };
  const run = valueOf(irrigationRun({ stationName: "1", depthPerHour, cycle }, { least, most: "none" }, "us"));
  if (run.kind !== "run") throw new Error("a tested station without a most has minutes");
  return run;
}

/** Hours in which the driest quarter gets a depth: those of the average over the uniformity. */
function hoursForTheDriest({ depthPerHour, lowerQuarterUniformity }: StationRate, depth: Measure<"length">): number {
  return toNumber(divideRational(exactMinutes(depthPerHour, depth), lowerQuarterUniformity)) / 60;
}

/** Four cans of which the lowest caught 7 mm and all together 12 on average, in an hour. */
const unevenCourse = () => station(["7", "13", "14", "14"].map((millimeters) => exactly("mm", millimeters)), 60);
const evenCourse = () => station(["0.68", "0.70", "0.70", "0.72"].map((inches) => exactly("in", inches)), 30);
/** The quarter inch that every can caught in five minutes. */
const quarterInFive = () => station(Array.from({ length: 5 }, () => exactly("in", "0.25")), 5);
/** A station whose cans tell the rate that its heads were designed for. */
const sixRotors = () => station(Array.from({ length: 4 }, () => valueOf(designedDepthPerHour(of("gal", 12n), of("sq ft", 900n), "square"))), 60);

const rows: readonly PublishedRow[] = [
  { row: ["water.26", "water.29"], inputs: "10 gal a minute on 1,000 sq ft, in an hour", expected: 0.9625, tolerance: printedTo(4), source: KLICKITAT, status: "seen", computed: () => inchesPerHour(10n, 1000n), second: 0.9625 },
  { row: ["water.27", "water.30"], inputs: "6 gal a minute, 25 x 30 ft in triangles, in an hour (printed 577.8 / 649.5)", expected: 577.8 / 649.5, tolerance: printedTo(2), source: KLICKITAT, status: "seen", computed: () => inchesPerHour(6n, 750n, "triangular"), second: (96.25 * 6) / (750 * 0.866) },
  { row: ["water.31", "water.34"], inputs: "fifteen cans, DU of the lower quarter, %", expected: 49.62039, tolerance: printedTo(5), source: SPREVAL_DU, status: "seen", computed: () => 100 * toNumber(valueOf(distributionUniformity(catches, "lower-quarter"))), second: (100 * average(sorted.slice(0, 4))) / average(cans) },
  { row: "water.34", inputs: "the same, DU of the lower half, %", expected: 71.58351, tolerance: printedTo(5), source: SPREVAL_HALF, status: "seen", computed: () => 100 * toNumber(valueOf(distributionUniformity(catches, "lower-half"))), second: (100 * average(sorted.slice(0, 8))) / average(cans) },
  { row: ["water.32", "water.34"], inputs: "the same, Christiansen's CU, %", expected: 69.13955, tolerance: printedTo(5), source: SPREVAL_CU, status: "seen", computed: () => 100 * toNumber(valueOf(christiansenUniformity(catches))), second: 100 * (1 - cans.reduce((total, value) => total + Math.abs(value - average(cans)), 0) / 461) },
  { row: "water.35", inputs: "0.70 in on average, 0.68 in the low quarter, DU %", expected: 97, tolerance: printedTo(0), source: WETS, status: "seen", computed: () => 100 * toNumber(evenCourse().lowerQuarterUniformity), second: 68 / 0.7 },
  { row: "infiltration.4", inputs: "6 rotors of 2 gal a minute, 30 x 30 ft, in an hour (weak)", expected: 1.28, tolerance: printedTo(2), source: CALCADY, status: "seen", computed: () => inchesPerHour(12n, 900n), second: (96.25 * 12) / 900 },
  { row: ["water.28", "infiltration.4"], inputs: "1/2 in from them, min (weak)", expected: 23.4, tolerance: printedTo(1), source: CALCADY, status: "seen", computed: () => toNumber(exactMinutes(sixRotors().depthPerHour, exactly("in", "0.5"))), second: 30 / ((96.25 * 12) / 900) },
  { row: "infiltration.4", inputs: "the same where water stands after 12 min, cycles (weak)", expected: 2, tolerance: 0, source: CALCADY, status: "seen", computed: () => runOf(sixRotors(), exactly("in", "0.5"), 12).runsMinutes.length, second: 2 },
  { row: "infiltration.4", inputs: "the same, min a cycle (weak)", expected: 12, tolerance: 0, source: CALCADY, status: "seen", computed: () => Math.max(...runOf(sixRotors(), exactly("in", "0.5"), 12).runsMinutes), second: 12 },
  { row: "infiltration.5", inputs: "12 mm an hour, driest 7, scheduling coefficient", expected: 1.7, tolerance: printedTo(1), source: AVIDGREEN, status: "seen", computed: () => 1 / toNumber(unevenCourse().lowerQuarterUniformity), second: 12 / 7 },
  { row: "infiltration.5", inputs: "9 mm a day for the driest of them, h", expected: 1.3, tolerance: printedTo(1), source: AVIDGREEN, status: "seen", computed: () => hoursForTheDriest(unevenCourse(), of("mm", 9n)), second: 9 / 7 },
  { row: "elsewhere.4", inputs: "1/4 in after 5 min, min for 1 in", expected: 20, tolerance: 0, source: TEXAS, status: "seen", computed: () => runOf(quarterInFive(), of("in", 1n)).totalMinutes, second: 20 },
  { row: "elsewhere.4", inputs: "the same where water stands after 10 min, cycles", expected: 2, tolerance: 0, source: TEXAS, status: "seen", computed: () => runOf(quarterInFive(), of("in", 1n), 10).runsMinutes.length, second: 2 },
  { row: "elsewhere.4", inputs: "the same, min a cycle", expected: 10, tolerance: 0, source: TEXAS, status: "seen", computed: () => Math.max(...runOf(quarterInFive(), of("in", 1n), 10).runsMinutes), second: 10 },
];

const calm: PublishedStatement = {
  row: "water.36",
  says: "cans are set out in wind of 5 mph or less",
  source: "New Mexico State University Guide H-510",
  status: "seen",
  holds: () => expect(CALM_FOR_CANS_MPH).toBe(5),
};

export const IRRIGATION_CHECKS: readonly PublishedEntry[] = [...rows, calm];
