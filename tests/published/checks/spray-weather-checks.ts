// Wet bulb, humidity, Delta T, wind and inversions as printed.
import { expect } from "vitest";
import { dewPointC, saturationVaporPressureKilopascals, vaporPressureFromWetBulbKilopascals } from "#domain/turf/vapor-pressure";
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from "#domain/turf/temperature-scale";
import { INVERSION_BELOW_WIND_MPH, judgeInversion } from "#domain/weather/inversion";
import { DEFAULT_SPRAY_WEATHER_SETTINGS, VARIABLE_BELOW_WIND_MPH } from "#domain/weather/spray-limits";
import { classifyDeltaT, deltaT, psychrometricWetBulbC, relativeHumidityPercent, stullWetBulbC } from "#domain/weather/wet-bulb";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { type PublishedCheck, type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";

const STULL = "NCAR NCL wetbulb_stull, http://www.ncl.ucar.edu/Document/Functions/Contributed/wetbulb_stull.shtml";
const SEA_LEVEL_KPA = 101.325;
const stull = (temperatureC: number, humidityPercent: number) => valueOf(stullWetBulbC(temperatureC, humidityPercent));
/** Stull's fit once more, term by term. */
function plainStull(temperatureC: number, humidityPercent: number): number {
  const humid = temperatureC * Math.atan(0.151977 * (humidityPercent + 8.313659) ** 0.5);
  const turned = Math.atan(temperatureC + humidityPercent) - Math.atan(humidityPercent - 1.676331);
  return humid + turned + 0.00391838 * humidityPercent ** 1.5 * Math.atan(0.023101 * humidityPercent) - 4.686035;
}

const stullDeltaT = (temperatureC: number, humidityPercent: number, expected: number, row = "spray-window.6"): PublishedRow => ({
  row,
  inputs: `Delta T by Stull at ${String(temperatureC)} °C, ${String(humidityPercent)} %`,
  expected,
  tolerance: 0.006,
  computed: () => temperatureC - stull(temperatureC, humidityPercent),
  second: temperatureC - plainStull(temperatureC, humidityPercent),
  source: "Stull 2011 (formula)",
  status: "calc",
});

const rows: readonly (PublishedCheck | PublishedRow)[] = [
  { row: "spray-window.3", name: "wet bulb by Stull at 20 °C, 50 %", expected: 13.69934, tolerance: 0.00001, computed: () => stull(20, 50), source: STULL, status: "seen" },
  { row: "spray-window.3", name: "the same from 68 °F", expected: 13.69934, tolerance: 0.00001, computed: () => stull(celsiusFromFahrenheit(68), 50), source: STULL, status: "seen" },
  { row: "spray-window.3", name: "the same from 293.15 K", expected: 13.69934, tolerance: 0.00001, computed: () => stull(293.15 - 273.15, 50), source: STULL, status: "seen" },
  // The page does not print its psychrometric formula; that of a ventilated psychrometer comes out 0.09 °C higher.
  { row: "spray-window.3", name: "psychrometric wet bulb at 20 °C, 50 %, 1013.25 hPa", expected: 13.75, tolerance: 0.1, computed: () => valueOf(psychrometricWetBulbC(20, 50, SEA_LEVEL_KPA)), source: STULL, status: "seen" },
  { row: ["spray-window.2", "spray-window.3"], name: "Delta T by Stull at 20 °C, 50 %", expected: 6.3, tolerance: 0.005, computed: () => 20 - stull(20, 50), source: STULL, status: "seen" },
  { row: "spray-window.4", name: "ea at 25.6/19.5 °C, 87.9 kPa", expected: 1.91, tolerance: 0.005, computed: () => vaporPressureFromWetBulbKilopascals(25.6, 19.5, 87.9), source: "FAO-56 Ex. 4", status: "seen-2nd" },
  { row: "spray-window.4", name: "Delta T of that air by the psychrometer", expected: 6.1, tolerance: 0.001, computed: fao4DeltaT, source: "FAO-56 Ex. 4", status: "seen-2nd" },
  { row: "spray-window.5", name: "relative humidity at 20/12 °C (chart)", expected: 37, tolerance: 1, computed: () => relativeHumidityPercent(20, 12, SEA_LEVEL_KPA), source: "ATSC 110L lab 5, https://sites.google.com/view/atsc110l/lab-5-humidity/example-humidity-calculations", status: "seen" },
  { row: "spray-window.5", name: "dew point at 20/12 °C (chart)", expected: 5, tolerance: 0.5, computed: () => dewPointC(vaporPressureFromWetBulbKilopascals(20, 12, SEA_LEVEL_KPA)), source: "ATSC 110L lab 5", status: "seen" },
  { row: "spray-window.5", name: "vapor pressure at 20/12 °C, mb (chart)", expected: 8.7, tolerance: 0.1, computed: () => 10 * vaporPressureFromWetBulbKilopascals(20, 12, SEA_LEVEL_KPA), source: "ATSC 110L lab 5", status: "seen" },
  { row: "spray-window.5", name: "saturation vapor pressure at 20 °C, mb (chart)", expected: 23.2, tolerance: 0.2, computed: () => 10 * saturationVaporPressureKilopascals(20), source: "ATSC 110L lab 5", status: "seen" },
  { row: "wet-bulb-tables.12", name: "dew point at 47/44 °F", expected: 41, tolerance: 0.5, computed: () => fahrenheitFromCelsius(dewPointC(vaporPressureFromWetBulbKilopascals(celsiusFromFahrenheit(47), celsiusFromFahrenheit(44), SEA_LEVEL_KPA))), source: "R. DeC. Ward, Practical Exercises in Elementary Meteorology", status: "seen" },
  { row: "spray-window.1", name: "wet bulb by Stull at 30 °C, 50 %", expected: 22.297, tolerance: 0.0005, computed: () => stull(30, 50), source: "Stull 2011 (formula)", status: "calc" },
  stullDeltaT(30, 50, 7.7), stullDeltaT(25, 50, 7), stullDeltaT(25, 40, 8.62), stullDeltaT(15, 70, 3.38), stullDeltaT(10, 60, 3.98),
  stullDeltaT(28, 40, 9.18), stullDeltaT(30, 30, 11.63), stullDeltaT(35, 20, 15.7),
  ...([[20, 83, 2.1], [25, 70, 4.06], [30, 73, 3.94], [15, 62, 4.26]] as const).map(([temperatureC, humidity, expected]) => stullDeltaT(temperatureC, humidity, expected, "wet-bulb-tables.13")),
];

function fao4DeltaT(): number {
  const humidityPercent = relativeHumidityPercent(25.6, 19.5, 87.9);
  return valueOf(deltaT(25.6, humidityPercent, 87.9)).deltaTC;
}

/** The published row of each line of the tables. */
const ROW_OF_DEPRESSION: Readonly<Record<string, string>> = {
  "1 °F": "wet-bulb-tables.2", "2 °F": "wet-bulb-tables.3", "4 °F": "wet-bulb-tables.4", "5 °F": "wet-bulb-tables.5", "8 °F": "wet-bulb-tables.6",
  "10 °F": "wet-bulb-tables.7", "1 °C": "wet-bulb-tables.8", "2 °C": "wet-bulb-tables.9", "3 °C": "wet-bulb-tables.10", "4 °C": "wet-bulb-tables.11",
};

/** Relative humidity by dry bulb (columns) and depression (rows), from course slides. */
const psychrometricTables = [
  {
    unit: "F", dryBulbs: [60, 64, 72, 76, 80, 84, 88],
    table: [[1, 94, 95, 95, 96, 96, 96, 96], [2, 90, 90, 91, 91, 92, 92, 92], [4, 78, 80, 82, 83, 84, 84, 85], [5, 73, 75, 78, 79, 80, 80, 81], [8, 58, 61, 65, 67, 68, 70, 71], [10, 49, 52, 57, 59, 61, 63, 64]],
  },
  {
    unit: "C", dryBulbs: [15, 18, 20, 22, 25, 27, 30, 33],
    table: [[1, 90, 91, 91, 92, 92, 92, 93, 93], [2, 80, 82, 83, 84, 85, 85, 86, 87], [3, 71, 73, 75, 76, 77, 78, 79, 80], [4, 62, 65, 67, 68, 70, 71, 73, 74]],
  },
] as const;
const cells = psychrometricTables.flatMap(({ unit, dryBulbs, table }) =>
  table.flatMap(([depression, ...humidities]) => humidities.map((humidity, column) => ({ row: ROW_OF_DEPRESSION[`${String(depression)} °${unit}`] ?? "no row", unit, dryBulb: dryBulbs[column] ?? Number.NaN, depression, humidity }))),
);

const SLIDES = "course slides (weak)";
const ofTables = cells.map(({ row, unit, dryBulb, depression, humidity }): PublishedStatement => ({
  row: ["wet-bulb-tables.1", row],
  says: `${String(dryBulb)} °${unit}, depression ${String(depression)}: ${String(humidity)} %, forwards and backwards`,
  source: SLIDES,
  status: "seen",
  holds: () => {
    // Slides round to whole percent; one cell of 74 lies 1.12 % off, all others within 1.
    const dryBulbC = unit === "F" ? celsiusFromFahrenheit(dryBulb) : dryBulb;
    const depressionC = unit === "F" ? depression / 1.8 : depression;
    expect(Math.abs(relativeHumidityPercent(dryBulbC, dryBulbC - depressionC, SEA_LEVEL_KPA) - humidity)).toBeLessThanOrEqual(1.2);
    expect(Math.abs(valueOf(deltaT(dryBulbC, humidity, SEA_LEVEL_KPA)).deltaTC - depressionC)).toBeLessThanOrEqual(0.3);
  },
}));
const stullBesideTable = ([[20, 83, 2], [25, 70, 4], [30, 73, 4], [15, 62, 4]] as const).map(([dryBulbC, humidity, depression]): PublishedStatement => ({
  row: "wet-bulb-tables.13",
  says: `Stull at ${String(dryBulbC)} °C, ${String(humidity)} % comes within 0.3 of the table's ${String(depression)}`,
  source: SLIDES,
  status: "calc",
  holds: () => expect(Math.abs(dryBulbC - stull(dryBulbC, humidity) - depression)).toBeLessThanOrEqual(0.3),
}));

const BUREAU = "Bureau of Meteorology, quoted at http://sprayers101.com/delta-t/";
const ofDeltaT = ([[1.9, "below-2"], [2, "ideal"], [8, "ideal"], [8.1, "above-8"], [10, "above-8"], [10.1, "above-10"]] as const).map(
  ([deltaTC, expected]): PublishedStatement => ({ row: ["spray-window.7", "wet-bulb-tables.14"], says: `Delta T ${String(deltaTC)} is ${expected}`, source: BUREAU, status: "seen", holds: () => expect(classifyDeltaT(deltaTC)).toBe(expected) }),
);

const hours = (value: number) => value * 3_600_000;
const sun = { kind: "rises-and-sets", sunriseEpochMilliseconds: hours(6), sunsetEpochMilliseconds: hours(20) } as const;
const inversions = ([[5, true], [6, true], [7, false], [12, false], [17, false], [18, true], [19, true], [22, true]] as const).map(([hour, isExpected]): PublishedStatement => ({
  row: "spray-window.13",
  says: `clear and calm, sun from 6 to 20, the hour from ${String(hour)}: inversion ${isExpected ? "expected" : "not expected"}`,
  source: "GRDC Spray Manual 10.8",
  status: "seen",
  holds: () => {
    const span = { fromEpochMilliseconds: hours(hour), untilEpochMilliseconds: hours(hour + 1) };
    const answer = valueOf(judgeInversion(span, { windMph: 2, sky: "clear" }, sun));
    expect(answer.kind).toBe(isExpected ? "expected" : "not-expected");
  },
}));

const statements: readonly PublishedStatement[] = [
  {
    row: "spray-window.2",
    says: "Stull's fit is for 5 to 99 % and -20 to 50 °C",
    source: "Stull 2011, abstract",
    status: "seen",
    holds: () => {
      expect(refusalOf(stullWetBulbC(20, 4.9)).allowed).toBe("from 5 to 99 %");
      expect(refusalOf(stullWetBulbC(20, 99.1)).allowed).toBe("from 5 to 99 %");
      expect(refusalOf(stullWetBulbC(-20.1, 50)).allowed).toBe("from -20 to 50 °C");
      expect(refusalOf(stullWetBulbC(50.1, 50)).allowed).toBe("from -20 to 50 °C");
    },
  },
  {
    row: ["spray-window.1", "spray-window.2"],
    says: "the fit stays within its own error, -1 to 0.65 °C, of the psychrometer, whose constant may be another by 0.1 °C",
    source: "Stull 2011, abstract",
    status: "seen",
    holds: () => {
      const ANOTHER_PSYCHROMETER_C = 0.1;
      for (let temperatureC = 0; temperatureC <= 40; temperatureC += 5) for (let humidity = 20; humidity <= 95; humidity += 5) {
        const apart = stull(temperatureC, humidity) - valueOf(psychrometricWetBulbC(temperatureC, humidity, SEA_LEVEL_KPA));
        expect(apart).toBeGreaterThanOrEqual(-1 - ANOTHER_PSYCHROMETER_C);
        expect(apart).toBeLessThanOrEqual(0.65 + ANOTHER_PSYCHROMETER_C);
      }
    },
  },
  { row: "spray-window.8", says: "wind under 3 mph is variable and a sign of an inversion", source: "National Pesticide Stewardship", status: "seen", holds: () => expect([INVERSION_BELOW_WIND_MPH, VARIABLE_BELOW_WIND_MPH]).toEqual([3, 3]) },
  { row: "weather-limits.4", says: "the default is 10 mph", source: "UF/IFAS NW District, August 26, 2021", status: "seen", holds: () => expect(DEFAULT_SPRAY_WEATHER_SETTINGS.highestWind.limitMph).toBe(10) },
];

export const SPRAY_WEATHER_CHECKS: readonly PublishedEntry[] = [...rows, ...ofTables, ...stullBesideTable, ...ofDeltaT, ...inversions, ...statements];
