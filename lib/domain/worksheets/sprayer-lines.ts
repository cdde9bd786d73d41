import { rectangleArea } from "#domain/equipment/measured-space";
import { averageMeasure, averageOf } from "#domain/equipment/repeats";
import { type SprayerCalibration, type SprayerTest } from "#domain/equipment/sprayer-calibration";
import { invariant } from "#domain/foundation/invariant";
import { conversionLine, conversionLines, figure, inUnit, perThousand, unitOf } from "#domain/mixing/ticket-working-words";
import { type Density, densityFromSpecificGravity, densityIn } from "#domain/quantities/density";
import { type ExactQuantity, type Measure, measureInUnit, multiplyExact, sumExact } from "#domain/quantities/exact-quantity";
import { type Rate } from "#domain/quantities/rate";
import { addRational, divideRational, fromNumber, ONE, type Rational, rational, ZERO } from "#domain/quantities/rational";
import { type Unit } from "#domain/quantities/units";
import { averageLines, stepRate } from "#domain/worksheets/figure-words";

// The arithmetic of a sprayer's calibration, line by line, in one unit for all catches.

/** What went in as the lines have it, by field and in the order of the repeats, and the lines. */
export interface SprayerLines {
  readonly inputs: Readonly<Partial<Record<string, readonly string[]>>>;
  readonly steps: readonly string[];
}

type CarrierRate = Rate<"carrier-volume-per-area">;
const SECONDS_DECIMALS = 3;
/** A mile an hour is 88 ft a minute, exactly. */
const FEET_A_MINUTE_AT_ONE_MPH = 88n;

function volumeLines(what: string, volumes: readonly Measure<"volume">[], average: ExactQuantity<"volume">): readonly string[] {
  const unit = unitOf(average);
  return averageLines(what, volumes.map((one) => inUnit(one, unit)), inUnit(sumExact("volume", volumes), unit), inUnit(average, unit));
}

function secondsWords(seconds: Rational): string {
  return `${figure(seconds)} s`;
}

function secondsOf(seconds: readonly number[]) {
  const exact = seconds.map((one) => fromNumber(one, SECONDS_DECIMALS));
  const average = averageOf(exact);
  return { words: exact.map(secondsWords), average, lines: averageLines("times", exact.map(secondsWords), secondsWords(exact.reduce(addRational, ZERO)), secondsWords(average)) };
}

function inGallons(volume: ExactQuantity<"volume">, from: Unit): readonly string[] {
  return conversionLines(volume, from, "gal").map((line) => `In gallons: ${line}.`);
}

function rateLine(volume: ExactQuantity<"volume">, area: Measure<"area">, rate: CarrierRate): string {
  return `Rate: ${inUnit(volume, "gal")} ÷ ${inUnit(area, "sq ft")} × 1,000 sq ft = ${stepRate(rate, "gal")}.`;
}

/**
 * Every step from what was measured to the rate as it was caught. Throws for a calibration without a catch, a run or a
 * timed course, which the worksheet does not make.
 */
export function sprayerLines({ test, caughtRate, flowPerMinute }: SprayerCalibration): SprayerLines {
  if (test.method === "small-area") return smallAreaLines(test, caughtRate);
  invariant(flowPerMinute !== undefined, "every method but that of the small area has a flow");
  const volumes = test.catches.map(({ volume }) => volume);
  const average = averageMeasure("volume", volumes);
  const unit = unitOf(average);
  const watch = secondsWords(fromNumber(test.catches[0]?.seconds ?? 0, SECONDS_DECIMALS));
  const caught = [...volumeLines("catches", volumes, average), `Flow in a minute: ${inUnit(average, unit)} ÷ ${watch} × 60 s = ${inUnit(flowPerMinute, unit)}.`, ...inGallons(flowPerMinute, unit)];
  const timed = test.method === "gun" ? areaLines(test.coverings, flowPerMinute, caughtRate) : courseLines(test, flowPerMinute, caughtRate);
  return { inputs: { caught: volumes.map((one) => inUnit(one, unit)), caughtSeconds: [watch], ...timed.inputs }, steps: [...caught, ...timed.steps] };
}

function smallAreaLines({ runs }: Extract<SprayerTest, { method: "small-area" }>, rate: CarrierRate): SprayerLines {
  const volumes = runs.map(({ volume }) => volume);
  const [average, area] = [averageMeasure("volume", volumes), runs[0]?.area];
  invariant(area !== undefined, "a rate is of one run or more");
  return {
    inputs: { area: [inUnit(area, "sq ft")], used: volumes.map((one) => inUnit(one, unitOf(average))) },
    steps: [...volumeLines("runs", volumes, average), ...inGallons(average, unitOf(average)), rateLine(average, area, rate)],
  };
}

function areaLines(coverings: Extract<SprayerTest, { method: "gun" }>["coverings"], flow: ExactQuantity<"volume">, rate: CarrierRate): SprayerLines {
  const [area, seconds] = [coverings[0]?.area, secondsOf(coverings.map((covering) => covering.seconds))];
  invariant(area !== undefined, "a gun was timed once or more");
  const onArea = multiplyExact(flow, divideRational(seconds.average, rational(60n)));
  return {
    inputs: { area: [inUnit(area, "sq ft")], areaSeconds: seconds.words },
    steps: [...seconds.lines, `On the area: ${inUnit(flow, "gal")} ÷ 60 s × ${secondsWords(seconds.average)} = ${inUnit(onArea, "gal")}.`, rateLine(onArea, area, rate)],
  };
}

function courseLines(test: Extract<SprayerTest, { method: "boom" | "backpack" }>, flow: ExactQuantity<"volume">, rate: CarrierRate): SprayerLines {
  invariant(test.pace.kind === "timed-course", "a worksheet asks for a course and its time");
  const width = test.method === "boom" ? test.nozzleSpacing : test.swath;
  const seconds = secondsOf(test.pace.seconds);
  const course = test.pace.course;
  const perMinute = multiplyExact(course, divideRational(rational(60n), seconds.average));
  const milesPerHour = divideRational(measureInUnit(perMinute, "ft"), rational(FEET_A_MINUTE_AT_ONE_MPH));
  const covered = rectangleArea(perMinute, width);
  return {
    inputs: { nozzleSpacing: [inUnit(width, "in")], course: [inUnit(course, "ft")], courseSeconds: seconds.words },
    steps: [
      ...seconds.lines,
      `Feet in a minute: ${inUnit(course, "ft")} ÷ ${secondsWords(seconds.average)} × 60 s = ${inUnit(perMinute, "ft")}.`,
      `Speed, with 88 ft a minute for 1 mph: ${inUnit(perMinute, "ft")} ÷ 88 ft × 1 mph = ${figure(milesPerHour)} mph.`,
      `Nozzles apart in feet: ${conversionLine(width, "in", "ft")}.`,
      `Covered in a minute: ${inUnit(perMinute, "ft")} × ${inUnit(width, "ft")} = ${inUnit(covered, "sq ft")}.`,
      rateLine(flow, covered, rate),
    ],
  };
}

/** What a denser spray makes of a rate that was caught with water: over the root of its specific gravity. */
export function densityLines({ caughtRate, carrierRate, densityFactor }: SprayerCalibration, density: Density): readonly string[] {
  const [own, water] = [densityIn(density, "lb per gal"), densityIn(densityFromSpecificGravity(ONE), "lb per gal")];
  return [
    `Specific gravity, with ${figure(water)} lb for a gallon of water: ${figure(own)} lb ÷ ${figure(water)} lb = ${figure(divideRational(own, water))}.`,
    `Its root: √ ${figure(divideRational(own, water))} = ${figure(densityFactor)}.`,
    `Water was caught, and the spray is denser: ${perThousand(caughtRate, "gal")} ÷ ${figure(densityFactor)} = ${stepRate(carrierRate, "gal")}.`,
  ];
}
