import { rectangleArea } from "#domain/equipment/measured-space";
import { listWords } from "#domain/foundation/list-words";
import { measurePace, milesPerHourOf, type Pace } from "#domain/equipment/pace";
import { averageOf, percentInWords, type Uncertainty } from "#domain/equipment/repeats";
import { densityAfterWater, type SprayerCalibration, type SprayerTest } from "#domain/equipment/sprayer-calibration";
import { type TypedSpreaderPace } from "#domain/equipment/typed-test";
import { type SpreaderRate } from "#domain/equipment/spreader-calibration";
import { densityIn } from "#domain/quantities/density";
import { invariant } from "#domain/foundation/invariant";
import { type ExactQuantity, type Measure, multiplyExact } from "#domain/quantities/exact-quantity";
import { formatFigure } from "#domain/quantities/format-number";
import { formatQuantity, formatQuantityIn } from "#domain/quantities/format-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { withoutUnit } from "#domain/quantities/number-with-unit";
import { times } from "#domain/quantities/rate";
import { fromNumber, type Rational } from "#domain/quantities/rational";
import { type Dimension } from "#domain/quantities/units";

/** A calibration's arithmetic as a person would tell it: the rule, what was measured, each step, and what comes of it. */
export interface CalibrationWorking {
  readonly formula: string;
  readonly measured: readonly string[];
  readonly steps: readonly string[];
  readonly result: string;
}

const SECONDS_DECIMALS = 3;
const SPEED_DECIMALS = 6;

function words(measure: Measure<Dimension>): string {
  return formatQuantity(measure, "us");
}

function figure(value: Rational): string {
  return formatFigure(value, { decimals: 2, quarters: false });
}

function secondsInWords(seconds: readonly number[]): string {
  return listWords(seconds.map((one) => `${figure(fromNumber(one, SECONDS_DECIMALS))} s`));
}

function averageSeconds(seconds: readonly number[]): Rational {
  return averageOf(seconds.map((one) => fromNumber(one, SECONDS_DECIMALS)));
}

/** How far a calibration may be off, by its repeats. */
export function spreadSentence(uncertainty: Uncertainty): string {
  return uncertainty.kind === "not-given"
    ? "Not everything was measured twice, so how far it may be off is not known."
    : `Going by the repeats it may be off by ${percentInWords(uncertainty.part)}.`;
}

function averageSentence(count: number, noun: string, average: string): readonly string[] {
  return count < 2 ? [] : [`The average of the ${count} ${noun} is ${average}.`];
}

/** What was measured and what follows, without the last step. */
interface Words {
  readonly measured: readonly string[];
  readonly steps: readonly string[];
}

/** What was caught, and the flow that it makes. */
function catchWords({ method, catches }: Exclude<SprayerTest, { method: "small-area" }>, flow: string): Words {
  const seconds = catches[0]?.seconds;
  if (seconds === undefined) return { measured: [], steps: [] };
  const volumes = listWords(catches.map(({ volume }) => words(volume)));
  const watch = secondsInWords([seconds]);
  if (catches.length < 2) {
    return { measured: [`The catch was ${volumes} in ${watch}.`], steps: [`${volumes} in ${watch} is ${flow} a minute.`] };
  }
  const noun = method === "boom" ? "nozzles" : "catches";
  const were = method === "boom" ? "The nozzles, one by one, gave" : "The catches were";
  return {
    measured: [`${were} ${volumes}, each in ${watch}.`],
    steps: [`On the average of the ${catches.length} ${noun} that is ${flow} a minute.`],
  };
}

/**
 * The working of a sprayer's calibration. Throws for one that calibrateSprayer did not make: without a flow, or with a
 * pace that measurePace refuses.
 */
export function sprayerWorking(calibration: SprayerCalibration): CalibrationWorking {
  const { test, caughtRate, carrierRate, flowPerMinute, uncertainty } = calibration;
  const rate = formatRate(caughtRate, "us");
  const result = `${formatRate(carrierRate, "us")}. ${spreadSentence(uncertainty)}`;
  if (test.method === "small-area") {
    const told = smallAreaWords(test, caughtRate);
    return { ...told, steps: [...told.steps, ...densityWords(calibration)], result };
  }
  invariant(flowPerMinute !== undefined, "every method but that of the small area has a flow");
  const caught = catchWords(test, words(flowPerMinute));
  const timed = test.method === "gun" ? areaWords(test.coverings, flowPerMinute, rate) : courseWords(test, flowPerMinute, rate);
  return {
    formula: timed.formula,
    measured: [...caught.measured, ...timed.measured],
    steps: [...caught.steps, ...timed.steps, ...densityWords(calibration)],
    result,
  };
}

/** The step from water to the spray that it stood for; none where the rate is that of the spray already. */
function densityWords({ liquid, basis, caughtRate, carrierRate, densityFactor }: SprayerCalibration): readonly string[] {
  const density = densityAfterWater(liquid, basis);
  if (density === undefined) return [];
  const weight = `${figure(densityIn(density, "lb per gal"))} lb a gallon`;
  return [
    `The spray weighs ${weight}, so it comes slower than water, by the root of its weight over water’s: ${figure(densityFactor)}.`,
    `${formatRate(caughtRate, "us")} of water over ${figure(densityFactor)} is ${formatRate(carrierRate, "us")} of the spray.`,
  ];
}

type Told = Words & { readonly formula: string };

function smallAreaWords({ runs }: Extract<SprayerTest, { method: "small-area" }>, rate: SprayerCalibration["carrierRate"]): Told {
  const formula = "The rate is what a measured area took, over that area.";
  const area = runs[0]?.area;
  if (area === undefined) return { formula, measured: [], steps: [] };
  const average = words(times(rate, area));
  return {
    formula,
    measured: [`${words(area)} took ${listWords(runs.map(({ volume }) => words(volume)))}.`],
    steps: [...averageSentence(runs.length, "runs", average), `${average} over ${words(area)} is ${formatRate(rate, "us")}.`],
  };
}

function areaWords(coverings: Extract<SprayerTest, { method: "gun" }>["coverings"], flow: ExactQuantity<"volume">, rate: string): Told {
  const formula = "The rate is the flow a minute, times the minutes that a measured area takes, over that area.";
  const area = coverings[0]?.area;
  if (area === undefined) return { formula, measured: [], steps: [] };
  const seconds = coverings.map((covering) => covering.seconds);
  const average = averageSeconds(seconds);
  const minutes: Rational = { numerator: average.numerator, denominator: average.denominator * 60n };
  const onArea = words(multiplyExact(flow, minutes));
  return {
    formula,
    measured: [`${words(area)} took ${secondsInWords(seconds)}.`],
    steps: [
      ...averageSentence(seconds.length, "times", `${figure(average)} s`),
      `${words(flow)} a minute for ${figure(average)} s is ${onArea}.`,
      `${onArea} over ${words(area)} is ${rate}.`,
    ],
  };
}

function courseWords(test: Extract<SprayerTest, { method: "boom" | "backpack" }>, flow: ExactQuantity<"volume">, rate: string): Told {
  const [width, widthWords, name] =
    test.method === "boom"
      ? ([test.nozzleSpacing, formatQuantityIn(test.nozzleSpacing, "in"), "The nozzles stand apart by"] as const)
      : ([test.swath, words(test.swath), "The swath is"] as const);
  const formula = `The rate is the flow of ${test.method === "boom" ? "one nozzle" : "the tip"} in a minute, over the area that it covers in a minute.`;
  const pace = measurePace(test.pace);
  invariant(pace.ok, "a calibration was made with this pace");
  const { distancePerMinute } = pace.value;
  const area = words(rectangleArea(distancePerMinute, width));
  const speed = `${words(distancePerMinute)} a minute, or ${figure(fromNumber(milesPerHourOf(distancePerMinute), SPEED_DECIMALS))} mph`;
  const timed = test.pace.kind === "speed" ? { measured: [`The speed was ${speed}.`], steps: [] } : timedCourse(test.pace, speed);
  return {
    formula,
    measured: [`${name} ${widthWords}.`, ...timed.measured],
    steps: [...timed.steps, `${words(distancePerMinute)} times ${widthWords} is ${area} a minute.`, `${words(flow)} over ${area} is ${rate}.`],
  };
}

function timedCourse({ course, seconds }: Extract<Pace, { kind: "timed-course" }>, speed: string): Words {
  const average = `${figure(averageSeconds(seconds))} s`;
  return {
    measured: [`${words(course)} took ${secondsInWords(seconds)}.`],
    steps: [...averageSentence(seconds.length, "times", average), `${words(course)} in ${average} is ${speed}.`],
  };
}

function paceWords({ swath = "", speedMph = "", minutesPerThousand = "" }: TypedSpreaderPace): readonly string[] {
  const width = swath === "" ? [] : [`The swath is ${swath}.`];
  if (minutesPerThousand !== "") return [...width, `1,000 sq ft take ${withoutUnit(minutesPerThousand, "min")} min.`];
  return speedMph === "" ? width : [...width, `The speed is ${withoutUnit(speedMph, "mph")} mph.`];
}

/**
 * The working of a spreader's calibration at one setting, with the pace that was given with it. Throws without a run.
 */
export function spreaderWorking({ runs, rate, uncertainty }: SpreaderRate, pace: TypedSpreaderPace = {}): CalibrationWorking {
  const area = runs[0]?.area;
  invariant(area !== undefined, "a spreader's rate is of one run or more");
  const average = words(times(rate, area));
  const inWords = formatRate(rate, "us");
  return {
    formula: "The rate at this setting is what the spreader gave over a measured area, over that area.",
    measured: [`Over ${words(area)} it gave ${listWords(runs.map(({ collected }) => words(collected)))}.`, ...paceWords(pace)],
    steps: [...averageSentence(runs.length, "runs", average), `${average} over ${words(area)} is ${inWords}.`],
    result: `${inWords}. ${spreadSentence(uncertainty)}`,
  };
}
