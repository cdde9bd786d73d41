import { type Outcome, accept } from "#domain/foundation/outcome";
import {
  type ConditionsAnswer,
  type DiseaseModel,
  type TurfHour,
  answerFromConditions,
} from "#domain/turf/disease-risk";
import { ONE_HOUR_MILLISECONDS, unbrokenHoursBetween } from "#domain/turf/hourly-series";
import { percentRange, refuseOutOfRange, temperatureRange } from "#domain/turf/physical-range";
import { celsiusFromFahrenheit } from "#domain/turf/temperature-scale";

/** Nutter, Cole & Schein; the University of Kentucky prints the same as its model 2 (86 °F, 68 °F, 14 h, 90 %). */
export const NUTTER_PYTHIUM: DiseaseModel = {
  disease: "pythium-blight",
  name: "Nutter, Cole & Schein",
  madeFor: "golf turf in Pennsylvania, seasons 1978 to 1980",
  validity: "warm-weather Pythium blight; the day of the model runs from noon to noon",
  source: "Nutter, Cole & Schein 1983, Plant Disease 67: 1126-1128",
  address: "https://www.apsnet.org/publications/plantdisease/backissues/Documents/1983Abstracts/PD_67_1126.htm",
  reading: "read",
};

/** Model 1 of the University of Kentucky. */
export const KENTUCKY_PYTHIUM: DiseaseModel = {
  disease: "pythium-blight",
  name: "Kentucky model 1",
  madeFor: "cool-season grasses, mostly high-maintenance creeping bentgrass and perennial ryegrass",
  validity:
    "not yet fully validated in Kentucky; the page does not print how high a humidity counts, so the caller says it",
  source: "University of Kentucky, Turf grass diseases evaluation",
  address: "http://weather.uky.edu/cgi-bin/kyc_grass_PCB1.pl",
  reading: "read",
};

/** From noon to the next noon in local time: 24 h, or 23 or 25 when the clocks change in between. */
export interface NoonToNoon {
  readonly fromEpochMilliseconds: number;
  readonly untilEpochMilliseconds: number;
}

/**
 * The model of Nutter et al. for one day from noon to noon: a highest temperature above 30 °C, followed by at least 14
 * hours of more than 90 % relative humidity, with a lowest temperature above 20 °C. Hours count from the first one
 * above 30 °C on, since the humid hours have to follow the heat. Refuses a missing hour (naming it) and impossible
 * readings. Source: NUTTER_PYTHIUM.
 */
export function judgePythiumNutter(hours: readonly TurfHour[], day: NoonToNoon): Outcome<ConditionsAnswer> {
  const read = readDay(hours, day);
  if (!read.ok) return read;
  const { value: dayHours } = read;
  const firstHot = dayHours.findIndex(({ airTemperatureC }) => airTemperatureC > 30);
  const afterHeat = firstHot === -1 ? [] : dayHours.slice(firstHot);
  const humidHours = afterHeat.filter(({ relativeHumidityPercent }) => relativeHumidityPercent > 90).length;
  const temperatures = dayHours.map(({ airTemperatureC }) => airTemperatureC);
  return accept(
    answerFromConditions(NUTTER_PYTHIUM, [
      above("highest air temperature above 30 °C", Math.max(...temperatures), 30),
      { condition: "then relative humidity above 90 % for at least 14 h", found: humidHours, isMet: humidHours >= 14 },
      above("lowest air temperature above 20 °C", Math.min(...temperatures), 20),
    ]),
  );
}

/**
 * The Kentucky model 1 for one day from noon to noon: a highest temperature above 82 °F, a lowest above 68 °F, and at
 * least nine hours of high humidity. The page leaves out what is high, so `highHumidityPercent` is the caller's, and
 * hours at it or above count. Refuses a missing hour (naming it) and impossible readings. Source: KENTUCKY_PYTHIUM.
 */
export function judgePythiumKentucky(
  hours: readonly TurfHour[],
  day: NoonToNoon,
  highHumidityPercent: number,
): Outcome<ConditionsAnswer> {
  const refusal = refuseOutOfRange([
    percentRange("highHumidityPercent", "The humidity that counts as high", highHumidityPercent),
  ]);
  if (refusal !== undefined) return refusal;
  const read = readDay(hours, day);
  if (!read.ok) return read;
  const { value: dayHours } = read;
  const temperatures = dayHours.map(({ airTemperatureC }) => airTemperatureC);
  const humidHours = dayHours.filter(
    ({ relativeHumidityPercent }) => relativeHumidityPercent >= highHumidityPercent,
  ).length;
  return accept(
    answerFromConditions(KENTUCKY_PYTHIUM, [
      above("highest air temperature above 82 °F (27.8 °C)", Math.max(...temperatures), celsiusFromFahrenheit(82)),
      above("lowest air temperature above 68 °F (20 °C)", Math.min(...temperatures), celsiusFromFahrenheit(68)),
      {
        condition: `relative humidity ${highHumidityPercent} % or more for at least 9 h`,
        found: humidHours,
        isMet: humidHours >= 9,
      },
    ]),
  );
}

function readDay(hours: readonly TurfHour[], day: NoonToNoon): Outcome<readonly TurfHour[]> {
  const dayHours = unbrokenHoursBetween(hours, day.fromEpochMilliseconds, day.untilEpochMilliseconds);
  if (!dayHours.ok) return dayHours;
  const refusal = refuseOutOfRange(
    dayHours.value.flatMap((hour) => {
      const afterNoon = (hour.startsAtEpochMilliseconds - day.fromEpochMilliseconds) / ONE_HOUR_MILLISECONDS;
      const when = `${afterNoon} h after noon`;
      return [
        temperatureRange(`${when} airTemperatureC`, `The air temperature ${when}`, hour.airTemperatureC),
        percentRange(`${when} relativeHumidityPercent`, `The relative humidity ${when}`, hour.relativeHumidityPercent),
      ];
    }),
  );
  return refusal ?? dayHours;
}

function above(condition: string, found: number, limit: number) {
  return { condition, found, isMet: found > limit };
}
