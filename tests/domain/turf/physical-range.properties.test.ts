import { describe, expect, test } from "vitest";
import { flowForCarrier } from "#domain/equipment/carrier-planning";
import { flowAtPressure, ratedFlowOfSize } from "#domain/equipment/nozzle";
import { measurePace } from "#domain/equipment/pace";
import { type Outcome } from "#domain/foundation/outcome";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { judgeAnthracnose } from "#domain/turf/anthracnose";
import { judgeBrownPatch, judgeBrownPatchInitial } from "#domain/turf/brown-patch";
import { degreeDaysOfDay } from "#domain/turf/degree-days";
import { dollarSpotProbability, judgeDollarSpot } from "#domain/turf/dollar-spot";
import { dailyReferenceEvapotranspiration, hargreavesEvapotranspirationMillimeters } from "#domain/turf/evapotranspiration";
import { growthPotential, nitrogenShareOfStandard } from "#domain/turf/growth-potential";
import { hourlyReferenceEvapotranspiration } from "#domain/turf/hourly-evapotranspiration";
import { judgePythiumKentucky } from "#domain/turf/pythium-blight";
import { turfCoefficient, turfWaterUseMillimeters } from "#domain/turf/turf-coefficients";
import { judgeDriving, rootZoneWater } from "#domain/turf/water-balance";
import { judgeDayByForecastHigh } from "#domain/weather/forecast-high";
import { judgeInversion } from "#domain/weather/inversion";
import { sunTimesOn } from "#domain/weather/sun-times";
import { deltaT, psychrometricWetBulbC, stullWetBulbC } from "#domain/weather/wet-bulb";
import { day } from "../../support/domain-answers";

/** A number of an input, by the way to it. */
type Way = readonly (string | number)[];

/** Every number in an input, by the way to it. */
function numbersIn(input: unknown, way: Way = []): readonly Way[] {
  if (typeof input === "number") return [way];
  if (typeof input !== "object" || input === null) return [];
  return Object.entries(input).flatMap(([key, value]) => numbersIn(value, [...way, key]));
}

function replaced(input: unknown, [first, ...rest]: Way, value: number): unknown {
  if (first === undefined) return value;
  const inner = (input as Readonly<Record<string | number, unknown>>)[first];
  const next = replaced(inner, rest, value);
  if (Array.isArray(input)) return input.map((each: unknown, index) => (index === Number(first) ? next : each));
  return { ...(input as object), [first]: next };
}

interface Door {
  readonly name: string;
  /** An input that is taken. */
  readonly input: readonly unknown[];
  readonly ask: (input: readonly unknown[]) => Outcome<unknown>;
}

function door<Input extends readonly unknown[]>(name: string, ask: (...input: Input) => Outcome<unknown>, ...input: Input): Door {
  return { name, input, ask: (given) => ask(...(given as Input)) };
}

const AT_NOON = Date.UTC(2026, 5, 15, 17);
const uccle = {
  date: day("2026-07-06"), latitudeDegrees: 50.8, elevationMeters: 100, minimumTemperatureC: 12.3, maximumTemperatureC: 21.5,
  actualVaporPressureKilopascals: 1.409, solarRadiation: 22.07, clearSkyFrom: "elevation", windMetersPerSecond: 2.78, windHeightMeters: 10,
} as const;
const hour = {
  startsAtEpochMilliseconds: AT_NOON, latitudeDegrees: 40, longitudeDegrees: -88, elevationMeters: 200, temperatureC: 25, actualVaporPressureKilopascals: 1.8,
  solarRadiation: 2.4, clearnessBeforeSunset: 0.8, windMetersPerSecond: 2, windHeightMeters: 2,
} as const;
const fiveDays = [1, 2, 3, 4, 5].map((place) => ({ date: day(`2026-06-0${String(place)}`), meanTemperatureC: 22, meanRelativeHumidityPercent: 80 }));
const ONE_HOUR = 3_600_000;
const dayHours = Array.from({ length: 24 }, (_, place) => ({ startsAtEpochMilliseconds: place * ONE_HOUR, airTemperatureC: 25, relativeHumidityPercent: 80 }));
const sun = { kind: "rises-and-sets", sunriseEpochMilliseconds: 6 * ONE_HOUR, sunsetEpochMilliseconds: 20 * ONE_HOUR } as const;
const span = { fromEpochMilliseconds: 5 * ONE_HOUR, untilEpochMilliseconds: 6 * ONE_HOUR };

/** The ways on which plain numbers come in: readings, settings, places. Areas, amounts and rates are whole numbers and come in elsewhere. */
const doors: readonly Door[] = [
  door("dollarSpotProbability", dollarSpotProbability, 22, 80),
  door("judgeDollarSpot", (series, threshold) => judgeDollarSpot(series, day("2026-06-05"), threshold), fiveDays, 0.2),
  door("judgeBrownPatch", judgeBrownPatch, { meanRelativeHumidityPercent: 90, minimumTemperatureC: 20 }, 6),
  door("judgeBrownPatchInitial", judgeBrownPatchInitial, { hoursAtOrAbove95PercentHumidity: 8, meanRelativeHumidityPercent: 75, leafWetHours: 6, rainMillimeters: 0, minimumAirTemperatureC: 16, minimumSoilTemperatureC: 16 }),
  door("judgeAnthracnose", judgeAnthracnose, { meanTemperatureC: 22, meanLeafWetHoursPerDay: 12 }, 2),
  door("judgePythiumKentucky", (hours, high) => judgePythiumKentucky(hours.map((each, place) => ({ ...each, startsAtEpochMilliseconds: place * ONE_HOUR })), { fromEpochMilliseconds: 0, untilEpochMilliseconds: 24 * ONE_HOUR }, high), dayHours.map(({ airTemperatureC, relativeHumidityPercent }) => ({ airTemperatureC, relativeHumidityPercent })), 90),
  door("degreeDaysOfDay, simple", degreeDaysOfDay, { kind: "simple-average", scale: "fahrenheit", baseDegrees: 50 }, { minimumDegrees: 50, maximumDegrees: 70 }),
  door("degreeDaysOfDay, reset", degreeDaysOfDay, { kind: "reset", scale: "fahrenheit", baseDegrees: 50, upperCutDegrees: 86 }, { minimumDegrees: 50, maximumDegrees: 70 }),
  door("degreeDaysOfDay, Met Eireann", degreeDaysOfDay, { kind: "met-eireann", scale: "celsius", baseDegrees: 10 }, { minimumDegrees: 5, maximumDegrees: 20 }),
  door("growthPotential", growthPotential, "cool-season", 20),
  door("nitrogenShareOfStandard", nitrogenShareOfStandard, 2, 2.5),
  door("hargreavesEvapotranspirationMillimeters", hargreavesEvapotranspirationMillimeters, { date: uccle.date, latitudeDegrees: 50.8, minimumTemperatureC: 12.3, maximumTemperatureC: 21.5 }),
  door("dailyReferenceEvapotranspiration", dailyReferenceEvapotranspiration, uccle, "fao-56"),
  door("hourlyReferenceEvapotranspiration", hourlyReferenceEvapotranspiration, hour, "fao-56"),
  door("turfCoefficient", turfCoefficient, "cool-season", 6),
  door("turfWaterUseMillimeters", turfWaterUseMillimeters, "cool-season", 6, 5),
  door("rootZoneWater", rootZoneWater, { rootDepthMillimeters: 100, fieldCapacityPercent: 30, wiltingPointPercent: 12, readilyAvailableShare: 0.4 }),
  door("judgeDriving", judgeDriving, 4, 5),
  door("stullWetBulbC", stullWetBulbC, 20, 50),
  door("psychrometricWetBulbC", psychrometricWetBulbC, 20, 50, 101.325),
  door("deltaT", deltaT, 20, 50, 101.325),
  door("judgeInversion", (air: { readonly windMph: number; readonly sky: "clear" }) => judgeInversion(span, air, sun), { windMph: 2, sky: "clear" } as const),
  door("judgeDayByForecastHigh", (high: number, after: number) => judgeDayByForecastHigh({ date: day("2026-06-05"), forecastHighF: high, followingHighsF: [after] }, []), 80, 82),
  door("sunTimesOn", (place: { readonly latitudeDegrees: number; readonly longitudeDegrees: number }) => sunTimesOn(day("2026-06-05"), "America/Chicago", place), { latitudeDegrees: 40, longitudeDegrees: -88 }),
  door("measurePace, speed", measurePace, { kind: "speed", milesPerHour: 3 }),
  door("measurePace, timed", measurePace, { kind: "timed-course", course: of("ft", 200n), seconds: [45, 46] }),
  door("flowAtPressure", (psi: number) => flowAtPressure(ratedFlowOfSize("04"), psi), 40),
  door("flowForCarrier", (milesPerHour: number) => flowForCarrier(rateOf("carrier-volume-per-area", 20n, "gal per acre"), of("in", 20n), { kind: "speed", milesPerHour }), 3),
];

describe("what is not a number can't get in", () => {
  test.each(doors)("$name takes what is possible", ({ ask, input }) => {
    expect(ask(input).ok).toBe(true);
    expect(numbersIn(input).length).toBeGreaterThan(0);
  });

  const cases = doors.flatMap((each) => numbersIn(each.input).map((way) => ({ ...each, way, place: way.join(".") })));
  test.each(cases)("$name refuses NaN and both infinities at $place", ({ ask, input, way }) => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      const answer = ask(replaced(input, way, value) as readonly unknown[]);
      expect(answer.ok, String(value)).toBe(false);
    }
  });

});
