import { measurePace, milesPerHourOf } from "#domain/equipment/pace";
import { averageOf, percentInWords, type Uncertainty } from "#domain/equipment/repeats";
import { type SprayerCalibration, type SprayerTest } from "#domain/equipment/sprayer-calibration";
import { type SpreaderRate } from "#domain/equipment/spreader-calibration";
import { type ExactQuantity, fromExactAmount, type Measure } from "#domain/quantities/exact-quantity";
import { formatFigure } from "#domain/quantities/format-number";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { rateFrom, times } from "#domain/quantities/rate";
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

function words(measure: Measure<Dimension>): string {
  return formatQuantity(measure, "us");
}

function figure(value: Rational): string {
  return formatFigure(value, { decimals: 2, quarters: false });
}

function listed(items: readonly string[]): string {
  const last = items.at(-1) ?? "";
  return items.length < 2 ? last : `${items.slice(0, -1).join(", ")} and ${last}`;
}

function secondsInWords(seconds: readonly number[]): string {
  return listed(seconds.map((one) => `${figure(fromNumber(one, SECONDS_DECIMALS))} s`));
}

function averageSeconds(seconds: readonly number[]): Rational {
  return averageOf(seconds.map((one) => fromNumber(one, SECONDS_DECIMALS)));
}

function spreadSentence(uncertainty: Uncertainty): string {
  return uncertainty.kind === "not-given"
    ? "It was measured once, so nothing is known about how far it may be off."
    : `The repeats are up to ${percentInWords(uncertainty.part)} from their average.`;
}

function averageSentence(count: number, noun: string, average: string): readonly string[] {
  return count < 2 ? [] : [`The average of the ${count} ${noun} is ${average}.`];
}

/** What was caught, and the flow that it makes. */
function catchWords(test: Exclude<SprayerTest, { method: "small-area" }>, flow: ExactQuantity<"volume"> | undefined) {
  const { catches } = test;
  const seconds = catches[0]?.seconds;
  if (seconds === undefined || flow === undefined) return { measured: [], steps: [] };
  const watch = `${figure(fromNumber(seconds, SECONDS_DECIMALS))} s`;
  const noun = test.method === "boom" ? "nozzles" : "catches";
  const from = catches.length < 2 ? `${listed(catches.map(({ volume }) => words(volume)))} in ${watch}` : `The average of the ${catches.length} ${noun}`;
  return {
    measured: [`${test.method === "boom" ? "The nozzles, one by one, gave" : "The catch was"} ${listed(catches.map(({ volume }) => words(volume)))}, each in ${watch}.`],
    steps: [`${from} is ${words(flow)} a minute.`],
  };
}

/** The working of a sprayer's calibration. */
export function sprayerWorking(calibration: SprayerCalibration): CalibrationWorking {
  const { test, carrierRate, flowPerMinute, uncertainty } = calibration;
  const result = `${formatRate(carrierRate, "us")}. ${spreadSentence(uncertainty)}`;
  if (test.method === "small-area") {
    const volumes = test.runs.map(({ volume }) => volume);
    const area = test.runs[0]?.area;
    const onArea = area === undefined ? undefined : times(carrierRate, area);
    return {
      formula: "What a measured area took, over that area, is the rate.",
      measured: area === undefined ? [] : [`${words(area)} took ${listed(volumes.map(words))}.`],
      steps: [
        ...(onArea === undefined ? [] : averageSentence(volumes.length, "runs", words(onArea))),
        ...(onArea === undefined || area === undefined ? [] : [`${words(onArea)} over ${words(area)} is ${formatRate(carrierRate, "us")}.`]),
      ],
      result,
    };
  }
  const caught = catchWords(test, flowPerMinute);
  const timed = test.method === "gun" ? areaWords(test.coverings) : courseWords(test);
  const flow = flowPerMinute === undefined ? "" : words(flowPerMinute);
  return {
    formula: timed.formula,
    measured: [...caught.measured, ...timed.measured],
    steps: [...caught.steps, ...timed.steps, timed.last(flow, formatRate(carrierRate, "us"))],
    result,
  };
}

interface TimedWords {
  readonly formula: string;
  readonly measured: readonly string[];
  readonly steps: readonly string[];
  readonly last: (flow: string, rate: string) => string;
}

function areaWords(coverings: Extract<SprayerTest, { method: "gun" }>["coverings"]): TimedWords {
  const area = coverings[0]?.area;
  const seconds = coverings.map((covering) => covering.seconds);
  const areaInWords = area === undefined ? "the area" : words(area);
  const average = averageSeconds(seconds);
  const minutes = figure({ numerator: average.numerator, denominator: average.denominator * 60n });
  return {
    formula: "The flow a minute, times the minutes that a measured area takes, over that area, is the rate.",
    measured: [`${areaInWords} took ${secondsInWords(seconds)}.`],
    steps: [...averageSentence(seconds.length, "times", `${figure(average)} s`), `${figure(average)} s are ${minutes} minutes.`],
    last: (flow, rate) => `${flow} a minute, for ${minutes} minutes, over ${areaInWords} is ${rate}.`,
  };
}

function courseWords(test: Extract<SprayerTest, { method: "boom" | "backpack" }>): TimedWords {
  const width = test.method === "boom" ? test.nozzleSpacing : test.swath;
  const widthName = test.method === "boom" ? "The nozzles are spaced" : "The swath is";
  const formula = `The flow a minute of ${test.method === "boom" ? "one nozzle, over the spacing" : "the tip, over the swath"} times the distance in a minute, is the rate.`;
  const measured = [`${widthName} ${words(width)}${test.method === "boom" ? " apart" : ""}.`];
  const pace = measurePace(test.pace);
  if (test.pace.kind === "speed" || !pace.ok) {
    return { formula, measured, steps: [], last: (flow, rate) => `${flow} a minute is ${rate}.` };
  }
  const { course, seconds } = test.pace;
  const { distancePerMinute } = pace.value;
  const speed = figure(fromNumber(milesPerHourOf(distancePerMinute), SECONDS_DECIMALS));
  return {
    formula,
    measured: [...measured, `${words(course)} took ${secondsInWords(seconds)}.`],
    steps: [
      ...averageSentence(seconds.length, "times", `${figure(averageSeconds(seconds))} s`),
      `That is ${words(distancePerMinute)} a minute, or ${speed} mph.`,
    ],
    last: (flow, rate) => `${flow} a minute over ${words(width)} times ${words(distancePerMinute)} is ${rate}.`,
  };
}

/** The working of a spreader's calibration at one setting. */
export function spreaderWorking({ runs, rate, uncertainty }: SpreaderRate): CalibrationWorking {
  const area = runs[0]?.area;
  const masses = runs.map(({ collected }) => words(collected));
  const average = area === undefined ? undefined : fromExactAmount("mass", times(rate, area).exactAmount);
  const rateWords = formatRate(rate, "us");
  return {
    formula: "What the spreader gave over a measured area, over that area, is the rate at this setting.",
    measured: area === undefined ? [] : [`Over ${words(area)} it gave ${listed(masses)}.`],
    steps:
      area === undefined || average === undefined
        ? []
        : [
            ...averageSentence(runs.length, "runs", words(average)),
            `${words(average)} over ${words(area)} is ${formatRate(rateFrom("product-mass-per-area", average, area), "us")}.`,
          ],
    result: `${rateWords}. ${spreadSentence(uncertainty)}`,
  };
}
