import { type Outcome, accept, missingFact } from "#domain/foundation/outcome";
import {
  type ConditionsAnswer,
  type DiseaseModel,
  type IndexAnswer,
  type TurfHour,
  answerFromConditions,
} from "#domain/turf/disease-risk";
import { unbrokenHours } from "#domain/turf/hourly-series";
import {
  MOST_RAIN,
  type Refused,
  amountRange,
  hoursOfDayRange,
  percentRange,
  refuseOutOfRange,
  temperatureRange,
} from "#domain/turf/physical-range";

const FIDANZA_SOURCE = "Fidanza, Dernoeden & Grybauskas 1996, Phytopathology 86(4): 385-390";
const FIDANZA_ADDRESS = "https://acnpsearch.unibo.it";

/** The two-variable index of Fidanza et al. */
export const FIDANZA_BROWN_PATCH: DiseaseModel = {
  disease: "brown-patch",
  name: "Fidanza E2",
  madeFor: "perennial ryegrass",
  validity:
    "85 % accurate over three years; the index falls again above a lowest air temperature of 21.2 °C, where heat does " +
    "not end the disease, so there it warns and never gives the all-clear",
  source: FIDANZA_SOURCE,
  address: FIDANZA_ADDRESS,
  reading: "read",
};

/** The six-variable index of the same paper, of which only the conditions are printed in the abstract. */
export const FIDANZA_INITIAL_CONDITIONS: DiseaseModel = {
  ...FIDANZA_BROWN_PATCH,
  name: "Fidanza E6, conditions only",
  validity: "the weights of the conditions were not read, so they are listed and not added up",
};

/** Model 2 of the University of Kentucky. */
const KENTUCKY_BROWN_PATCH: DiseaseModel = {
  disease: "brown-patch",
  name: "Kentucky model 2",
  madeFor: "cool-season grasses",
  validity: "published with limited evaluations and not yet fully validated in Kentucky",
  source: "Vincelli, University of Kentucky, Predictive models for turf grass diseases",
  address: "http://weather.uky.edu/turf_forecasting.htm",
  reading: "read",
};

/** The published warning threshold of the index, and the lower one that Vincelli found more accurate in Kentucky. */
export const BROWN_PATCH_THRESHOLDS = { published: 6, kentucky: 5 } as const;

/**
 * The lowest air temperature in °C at which the index is greatest and turns: 1.4 / (2 x 0.033), from the equation of
 * FIDANZA_BROWN_PATCH.
 */
export const BROWN_PATCH_TURN_C = 1.4 / 0.066;

/** The index of a day with what it says. Above its turn, an index under the threshold rules nothing out. */
export interface BrownPatchAnswer extends Omit<IndexAnswer, "isFavorable"> {
  readonly verdict: "favorable" | "not-favorable" | "cannot-rule-out";
}

/**
 * The brown patch index of a day: E = -21.5 + 0.15 RH + 1.4 T - 0.033 T2, where RH is the mean relative humidity in %
 * and T the lowest air temperature in °C. A warning stands from the threshold up. Under it the day is not favorable up
 * to the turn of the curve; above the turn it falls because it is a parabola and not because hot nights stop the
 * fungus, so the model can't rule the disease out there. Refuses impossible readings and a threshold outside 0 to 10.
 * Source: FIDANZA_BROWN_PATCH.
 */
export function judgeBrownPatch(
  day: { readonly meanRelativeHumidityPercent: number; readonly minimumTemperatureC: number },
  threshold: number,
): Outcome<BrownPatchAnswer> {
  const { meanRelativeHumidityPercent: humidity, minimumTemperatureC: lowest } = day;
  const refusal = refuseOutOfRange([
    percentRange("meanRelativeHumidityPercent", "The mean relative humidity", humidity),
    temperatureRange("minimumTemperatureC", "The lowest air temperature", lowest),
    { field: "threshold", words: "The threshold", value: threshold, lowest: 0, highest: 10, unit: "(index)" },
  ]);
  if (refusal !== undefined) return refusal;
  const index = -21.5 + 0.15 * humidity + 1.4 * lowest - 0.033 * lowest ** 2;
  const underThreshold = lowest > BROWN_PATCH_TURN_C ? "cannot-rule-out" : "not-favorable";
  return accept({ model: FIDANZA_BROWN_PATCH, index, threshold, verdict: index >= threshold ? "favorable" : underThreshold });
}

/** What the initial index of Fidanza et al. looks at in a day. */
export interface BrownPatchDay {
  readonly hoursAtOrAbove95PercentHumidity: number;
  readonly meanRelativeHumidityPercent: number;
  readonly leafWetHours: number;
  readonly rainMillimeters: number;
  readonly minimumAirTemperatureC: number;
  readonly minimumSoilTemperatureC: number;
}

/**
 * The conditions of the initial index (E6), each met or not: at least 8 h at 95 % humidity or more; mean humidity at
 * least 75 %; leaves wet at least 6 h or at least 12 mm of rain; air and soil never below 16 °C. Favorable here means
 * that all are met. Refuses impossible readings. Source: FIDANZA_INITIAL_CONDITIONS.
 */
export function judgeBrownPatchInitial(day: BrownPatchDay): Outcome<ConditionsAnswer> {
  const refusal = refuseOutOfRange([
    hoursOfDayRange(
      "hoursAtOrAbove95PercentHumidity",
      "The time at 95 % humidity or more",
      day.hoursAtOrAbove95PercentHumidity,
    ),
    percentRange("meanRelativeHumidityPercent", "The mean relative humidity", day.meanRelativeHumidityPercent),
    hoursOfDayRange("leafWetHours", "The time with wet leaves", day.leafWetHours),
    amountRange("rainMillimeters", "The rain", day.rainMillimeters, MOST_RAIN.dayMillimeters),
    temperatureRange("minimumAirTemperatureC", "The lowest air temperature", day.minimumAirTemperatureC),
    temperatureRange("minimumSoilTemperatureC", "The lowest soil temperature", day.minimumSoilTemperatureC),
  ]);
  if (refusal !== undefined) return refusal;
  const isWet = day.leafWetHours >= 6 || day.rainMillimeters >= 12;
  return accept(
    answerFromConditions(FIDANZA_INITIAL_CONDITIONS, [
      atLeast("relative humidity 95 % or more for at least 8 h", day.hoursAtOrAbove95PercentHumidity, 8),
      atLeast("mean relative humidity at least 75 %", day.meanRelativeHumidityPercent, 75),
      { condition: "leaves wet for at least 6 h, or at least 12 mm of rain", found: day.leafWetHours, isMet: isWet },
      atLeast("lowest air temperature at least 16 °C", day.minimumAirTemperatureC, 16),
      atLeast("lowest soil temperature at least 16 °C", day.minimumSoilTemperatureC, 16),
    ]),
  );
}

/** An hour with what the Kentucky model asks besides air: soil temperature, and rain or irrigation. */
export interface BrownPatchHour extends TurfHour {
  readonly soilTemperatureC: number;
  readonly rainOrIrrigationMillimeters: number;
}

/**
 * The hours that the Kentucky model counts: humid ones, those of its temperatures and those of its rain. Source:
 * KENTUCKY_BROWN_PATCH.
 */
const HUMID_HOURS = 10;
const TEMPERATURE_HOURS = 24;
const RAIN_HOURS = 36;

/** The answer when fewer than ten hours were humid: the conditions on temperature and rain have no hour to refer to. */
export type KentuckyBrownPatchAnswer = ConditionsAnswer & { readonly humidHours: number };

/**
 * The Kentucky model at the end of a series of hours without a gap. It looks for more than 95 % humidity in
 * ten hours of the last 24 and then, over the hours before the tenth of them: in 24 h soil on average above
 * 21 °C and never at or below 18 °C, air above 20 and 15 °C; in 36 h at least 3 mm of rain or irrigation.
 * The source does not say that the humid hours must follow each other, so they need not.
 *
 * Refuses a gap, impossible readings, and fewer than 36 hours before the tenth humid hour.
 */
export function judgeBrownPatchKentucky(hours: readonly BrownPatchHour[]): Outcome<KentuckyBrownPatchAnswer> {
  const refusal = refuseHours(hours);
  if (refusal !== undefined) return refusal;
  const lastDay = hours.slice(-TEMPERATURE_HOURS);
  const humid = lastDay.filter(({ relativeHumidityPercent }) => relativeHumidityPercent > 95);
  const humidCondition = atLeast("relative humidity above 95 % for at least 10 h", humid.length, HUMID_HOURS);
  const tenth = humid[HUMID_HOURS - 1];
  if (tenth === undefined) {
    return accept({ ...answerFromConditions(KENTUCKY_BROWN_PATCH, [humidCondition]), humidHours: humid.length });
  }
  const before = hours.slice(0, hours.indexOf(tenth));
  if (before.length < RAIN_HOURS) {
    return missingFact(
      "hours",
      `${RAIN_HOURS} hours before the tenth humid hour`,
      `The ${RAIN_HOURS} hours before the tenth humid hour are not all on file.`,
    );
  }
  const temperatures = before.slice(-TEMPERATURE_HOURS);
  const soil = temperatures.map(({ soilTemperatureC }) => soilTemperatureC);
  const air = temperatures.map(({ airTemperatureC }) => airTemperatureC);
  const rain = sum(before.slice(-RAIN_HOURS).map((hour) => hour.rainOrIrrigationMillimeters));
  const conditions = [
    humidCondition,
    above("mean soil temperature above 21 °C", sum(soil) / soil.length, 21),
    above("lowest soil temperature above 18 °C", Math.min(...soil), 18),
    above("mean air temperature above 20 °C", sum(air) / air.length, 20),
    above("lowest air temperature above 15 °C", Math.min(...air), 15),
    atLeast("at least 3 mm of rain or irrigation in the 36 h before", rain, 3),
  ];
  return accept({ ...answerFromConditions(KENTUCKY_BROWN_PATCH, conditions), humidHours: humid.length });
}

function refuseHours(hours: readonly BrownPatchHour[]): Refused | undefined {
  if (hours.length < TEMPERATURE_HOURS) {
    return missingFact(
      "hours",
      `at least ${TEMPERATURE_HOURS} hours`,
      `Only ${hours.length === 1 ? "1 hour is" : `${hours.length} hours are`} on file; the model needs ${TEMPERATURE_HOURS}.`,
    );
  }
  const unbroken = unbrokenHours(hours);
  if (!unbroken.ok) return unbroken;
  return refuseOutOfRange(
    hours.flatMap((hour, index) => [
      temperatureRange(`hour ${index + 1} airTemperatureC`, "The air temperature", hour.airTemperatureC),
      temperatureRange(`hour ${index + 1} soilTemperatureC`, "The soil temperature", hour.soilTemperatureC),
      percentRange(`hour ${index + 1} relativeHumidityPercent`, "The relative humidity", hour.relativeHumidityPercent),
      amountRange(
        `hour ${index + 1} rainOrIrrigationMillimeters`,
        "The rain or irrigation",
        hour.rainOrIrrigationMillimeters,
        MOST_RAIN.hourMillimeters,
      ),
    ]),
  );
}

function atLeast(condition: string, found: number, limit: number) {
  return { condition, found, isMet: found >= limit };
}

function above(condition: string, found: number, limit: number) {
  return { condition, found, isMet: found > limit };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
