// Disease models: their numbers, each by its plain formula too, and what their publications say in words.
import { expect } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import { DANNEBERGER_ANTHRACNOSE, judgeAnthracnose } from "#domain/turf/anthracnose";
import {
  BROWN_PATCH_THRESHOLDS, FIDANZA_BROWN_PATCH, judgeBrownPatch, judgeBrownPatchInitial, judgeBrownPatchKentucky,
} from "#domain/turf/brown-patch";
import { DOLLAR_SPOT_MEAN_DAYS, DOLLAR_SPOT_THRESHOLD, SMITH_KERNS, dollarSpotProbability, judgeDollarSpot } from "#domain/turf/dollar-spot";
import { judgePythiumKentucky, judgePythiumNutter } from "#domain/turf/pythium-blight";
import { celsiusFromFahrenheit } from "#domain/turf/temperature-scale";
import { day, refusalOf, valueOf } from "../../support/domain-answers";
import { type PublishedCheck, type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";

const SMITH = "Smith, Kerns et al. 2018, PLOS ONE 13(3):e0194216 (coefficients second-hand)";
const FIDANZA = "Fidanza, Dernoeden & Grybauskas 1996, Phytopathology 86(4):385-390";
const KENTUCKY = "Univ. of Kentucky, http://weather.uky.edu/turf_forecasting.htm";
const NUTTER = "Nutter, Cole & Schein 1983, Plant Dis. 67:1126-1128";
const DANNEBERGER = "Danneberger, Vargas & Jones 1984, Phytopathology 74:448-451";

const FORMULA_ROWS = ["disease.1", "disease.3", "disease.5", "disease.15"];
const dollarSpot = (temperatureC: number, humidityPercent: number, expected: number, row: PublishedRow["row"] = FORMULA_ROWS): PublishedRow => ({
  row,
  inputs: `dollar spot at ${String(temperatureC)} °C, ${String(humidityPercent)} %`,
  expected,
  tolerance: 0.0005,
  computed: () => valueOf(dollarSpotProbability(temperatureC, humidityPercent)),
  second: 1 / (1 + Math.exp(11.4041 - 0.0894 * humidityPercent - 0.1932 * temperatureC)),
  source: SMITH,
  status: "calc",
});
const brownPatch = (humidityPercent: number, temperatureC: number, expected: number): PublishedRow => ({
  row: ["disease.7", "disease.10"],
  inputs: `brown patch index at ${String(humidityPercent)} %, lowest ${String(temperatureC)} °C`,
  expected,
  tolerance: 0.0005,
  computed: () => valueOf(judgeBrownPatch({ meanRelativeHumidityPercent: humidityPercent, minimumTemperatureC: temperatureC }, 6)).index,
  second: -21.5 + 0.15 * humidityPercent + 1.4 * temperatureC - 0.033 * temperatureC ** 2,
  source: `${FIDANZA} (formula)`,
  status: "calc",
});
const anthracnose = (temperatureC: number, wetHours: number, expected: number): PublishedRow => ({
  row: "disease.14",
  inputs: `anthracnose index at ${String(temperatureC)} °C, ${String(wetHours)} h wet`,
  expected,
  tolerance: 0.0001,
  computed: () => valueOf(judgeAnthracnose({ meanTemperatureC: temperatureC, meanLeafWetHoursPerDay: wetHours }, 2)).index,
  second: 4.0233 - 0.2283 * wetHours - 0.5308 * temperatureC - 0.0013 * wetHours ** 2 + 0.0197 * temperatureC ** 2 + 0.0155 * wetHours * temperatureC,
  source: `${DANNEBERGER} (formula)`,
  status: "calc",
});

const rows: readonly (PublishedCheck | PublishedRow)[] = [
  dollarSpot(20, 70, 0.2172), dollarSpot(20, 80, 0.4042), dollarSpot(25, 60, 0.2297), dollarSpot(25, 80, 0.6406),
  dollarSpot(15, 90, 0.387), dollarSpot(30, 85, 0.8798), dollarSpot(10, 100, 0.37, "disease.4"), dollarSpot(13, 100, 0.512, "disease.4"), dollarSpot(35, 20, 0.0545, "disease.4"),
  { row: "disease.2", name: "dollar spot threshold", expected: 0.2, tolerance: 0, computed: () => DOLLAR_SPOT_THRESHOLD, source: "Smith et al. 2018, abstract, pubmed 29522560", status: "seen" },
  { row: ["disease.2", "disease.17"], name: "days of the moving means", expected: 5, tolerance: 0, computed: () => DOLLAR_SPOT_MEAN_DAYS, source: "Smith et al. 2018, abstract, pubmed 29522560", status: "seen" },
  brownPatch(95, 20, 7.55), brownPatch(90, 18, 6.508), brownPatch(80, 16, 4.452), brownPatch(75, 22, 4.578), brownPatch(70, 22, 3.828),
  { row: "disease.7", name: "brown patch warning threshold", expected: 6, tolerance: 0, computed: () => BROWN_PATCH_THRESHOLDS.published, source: FIDANZA, status: "seen" },
  { row: "disease.8", name: "brown patch threshold in Kentucky", expected: 5, tolerance: 0, computed: () => BROWN_PATCH_THRESHOLDS.kentucky, source: KENTUCKY, status: "seen" },
  anthracnose(22, 12, 3.0457), anthracnose(25, 18, 5.5102), anthracnose(20, 8, 1.8577),
];

const dollarSpotInWords: readonly PublishedStatement[] = [
  {
    row: "disease.18",
    says: "the thresholds of 20, 30 and 40 % that were tried can each be set: a day of 35 % is over the first two",
    source: "Rutgers (Zhang, Clarke, Ward, Murphy), ASA-CSSA-SSSA 2022 abstract 142645, https://tic.msu.edu/tgif/fullrecord?recno=324988",
    status: "seen",
    holds: () => {
      // 15 °C and 87.5 % come to 0.335.
      const week = Array.from({ length: 5 }, (_, index) => ({ date: addDays(day("2026-06-01"), index), meanTemperatureC: 15, meanRelativeHumidityPercent: 87.5 }));
      const over = (threshold: number) => valueOf(judgeDollarSpot(week, day("2026-06-05"), threshold)).isFavorable;
      expect([over(0.2), over(0.3), over(0.4)]).toEqual([true, true, false]);
    },
  },
  {
    row: "disease.19",
    says: "20 % is where a site starts, to be adjusted",
    source: "Woods (Asian Turfgrass Center) 30 May 2018, micahwoods.github.io, _posts/2018-05-30-probability-of-dollar-spot.md",
    status: "seen",
    holds: () => {
      expect(DOLLAR_SPOT_THRESHOLD).toBe(0.2);
      expect(SMITH_KERNS.validity).toContain("the threshold of 20 % is a start");
    },
  },
  { row: "disease.4", says: "at 100 % humidity and low temperature dollar spot comes near 50 %", source: "Woods, asianturfgrass 2018", status: "seen", holds: () => expect(valueOf(dollarSpotProbability(13, 100))).toBeCloseTo(0.5, 1) },
  {
    row: "disease.4",
    says: "at 20 % humidity or less dollar spot stays under 10 % however hot",
    source: "Woods, asianturfgrass 2018",
    status: "seen",
    holds: () => {
      for (let temperatureC = 10; temperatureC <= 35; temperatureC += 1) expect(valueOf(dollarSpotProbability(temperatureC, 20))).toBeLessThan(0.1);
    },
  },
  {
    row: "disease.16",
    says: "10 and 35 °C belong to the dollar spot model, what lies beyond doesn't",
    source: "README quoting the Wisconsin page",
    status: "seen-2nd",
    holds: () => {
      expect(dollarSpotProbability(10, 80).ok && dollarSpotProbability(35, 80).ok).toBe(true);
      expect(refusalOf(dollarSpotProbability(9.9, 80)).allowed).toBe("from 10 to 35 °C");
      expect(refusalOf(dollarSpotProbability(35.1, 80)).allowed).toBe("from 10 to 35 °C");
      expect(SMITH_KERNS.reading).toBe("read-second-hand");
    },
  },
];

const enough = { hoursAtOrAbove95PercentHumidity: 8, meanRelativeHumidityPercent: 75, leafWetHours: 6, rainMillimeters: 0, minimumAirTemperatureC: 16, minimumSoilTemperatureC: 16 };
const initial = ([
  ["all just met", enough, true],
  ["rain in place of wet leaves", { ...enough, leafWetHours: 0, rainMillimeters: 12 }, true],
  ["7.9 h humid", { ...enough, hoursAtOrAbove95PercentHumidity: 7.9 }, false],
  ["mean humidity 74 %", { ...enough, meanRelativeHumidityPercent: 74 }, false],
  ["leaves wet 5.9 h and 11 mm of rain", { ...enough, leafWetHours: 5.9, rainMillimeters: 11 }, false],
  ["air 15.9 °C", { ...enough, minimumAirTemperatureC: 15.9 }, false],
  ["soil 15.9 °C", { ...enough, minimumSoilTemperatureC: 15.9 }, false],
] as const).map(([name, found, isFavorable]): PublishedStatement => ({
  row: "disease.9",
  says: `brown patch, initial index: ${name}`,
  source: FIDANZA,
  status: "seen",
  holds: () => expect(valueOf(judgeBrownPatchInitial(found)).isFavorable).toBe(isFavorable),
}));

const hour = { airTemperatureC: 21, soilTemperatureC: 22, relativeHumidityPercent: 80, rainOrIrrigationMillimeters: 0 };
const kentucky = (before: Partial<typeof hour>, last: Partial<typeof hour>, rainMillimeters: number) =>
  Array.from({ length: 60 }, (_, index) => ({
    ...hour, ...(index >= 50 ? { relativeHumidityPercent: 96, ...last } : before),
    ...(index === 30 ? { rainOrIrrigationMillimeters: rainMillimeters } : {}),
    startsAtEpochMilliseconds: index * 3_600_000,
  }));
/** Sixty hours of which the last ten are humid, each changed by its place; the tenth humid hour is the last. */
const kentuckyAt = (change: (place: number) => Partial<typeof hour>) => kentucky({}, {}, 3).map((one, place) => ({ ...one, ...change(place) }));
const onceAt = (at: number, change: Partial<typeof hour>) => kentuckyAt((place) => (place === at ? change : {}));
/** All the rain in one hour, so many hours before the tenth humid one. */
const rainBefore = (hoursBefore: number) => kentuckyAt((place) => ({ rainOrIrrigationMillimeters: place === 59 - hoursBefore ? 3 : 0 }));
const kentuckyBrownPatch = ([
  ["all met", kentucky({}, {}, 3), true],
  ["95 % is not above 95 %", kentucky({}, { relativeHumidityPercent: 95 }, 3), false],
  ["2.9 mm of rain", kentucky({}, {}, 2.9), false],
  ["soil 21 °C on average", kentucky({ soilTemperatureC: 21 }, { soilTemperatureC: 21 }, 3), false],
  ["air 20 °C on average", kentucky({ airTemperatureC: 20 }, { airTemperatureC: 20 }, 3), false],
  ["soil that falls to 18 °C is not above 18", onceAt(45, { soilTemperatureC: 18 }), false],
  ["soil that falls to 18.1 °C", onceAt(45, { soilTemperatureC: 18.1 }), true],
  ["air that falls to 15 °C is not above 15", onceAt(45, { airTemperatureC: 15 }), false],
  ["air that falls to 15.1 °C", onceAt(45, { airTemperatureC: 15.1 }), true],
  ["nine humid hours", onceAt(50, { relativeHumidityPercent: 80 }), false],
  ["rain 36 hours before the tenth humid hour", rainBefore(36), true],
  ["rain 37 hours before it", rainBefore(37), false],
] as const).map(([name, hours, isFavorable]): PublishedStatement => ({
  row: "disease.11",
  says: `brown patch, Kentucky model 2 (10 h above 95 %; soil above 21 °C on average and 18 °C at least, air above 20 and 15 °C; 3 mm in 36 h): ${name}`,
  source: KENTUCKY,
  status: "seen",
  holds: () => expect(valueOf(judgeBrownPatchKentucky(hours)).isFavorable).toBe(isFavorable),
}));

const brownPatchInWords: readonly PublishedStatement[] = [
  {
    row: "disease.10",
    says: "the brown patch index is highest at a lowest temperature of 21.2 °C",
    source: `${FIDANZA} (formula)`,
    status: "calc",
    holds: () => {
      const index = (minimumTemperatureC: number) => valueOf(judgeBrownPatch({ meanRelativeHumidityPercent: 90, minimumTemperatureC }, 6)).index;
      expect(index(21.2)).toBeGreaterThan(index(21));
      expect(index(21.2)).toBeGreaterThan(index(21.4));
    },
  },
  { row: "disease.7", says: "the brown patch index was made for perennial ryegrass", source: FIDANZA, status: "seen", holds: () => expect(FIDANZA_BROWN_PATCH.madeFor).toBe("perennial ryegrass") },
];

const noon = { fromEpochMilliseconds: 0, untilEpochMilliseconds: 24 * 3_600_000 };
const hours = (highC: number, lowC: number, humidHours: number, humidityPercent: number) =>
  Array.from({ length: 24 }, (_, index) => ({
    startsAtEpochMilliseconds: index * 3_600_000,
    airTemperatureC: index < 4 ? highC : lowC,
    relativeHumidityPercent: index >= 4 && index < 4 + humidHours ? humidityPercent : 60,
  }));
const nutter = ([
  ["31 / 21 °C, 14 h at 91 %", hours(31, 21, 14, 91), true],
  ["30 °C is not above 30", hours(30, 21, 14, 91), false],
  ["20 °C is not above 20", hours(31, 20, 14, 91), false],
  ["13 h", hours(31, 21, 13, 91), false],
  ["90 % is not above 90", hours(31, 21, 14, 90), false],
] as const).map(([name, dayHours, isFavorable]): PublishedStatement => ({
  row: "disease.12",
  says: `Pythium blight: ${name} (Kentucky's model 2 prints the same as 86 °F, 68 °F)`,
  source: NUTTER,
  status: "seen",
  holds: () => expect(valueOf(judgePythiumNutter(dayHours, noon)).isFavorable).toBe(isFavorable),
}));
const kentuckyPythium = ([
  ["83 / 69 °F, 9 h", 83, 69, 9, true],
  ["82 °F is not above 82", 82, 69, 9, false],
  ["68 °F is not above 68", 83, 68, 9, false],
  ["8 h", 83, 69, 8, false],
] as const).map(([name, highF, lowF, humidHours, isFavorable]): PublishedStatement => ({
  row: "disease.13",
  says: `Pythium blight, Kentucky model 1: ${name}`,
  source: "http://weather.uky.edu/cgi-bin/kyc_grass_PCB1.pl",
  status: "seen",
  holds: () => {
    const dayHours = hours(celsiusFromFahrenheit(highF), celsiusFromFahrenheit(lowF), humidHours, 92);
    expect(valueOf(judgePythiumKentucky(dayHours, noon, 90)).isFavorable).toBe(isFavorable);
  },
}));

const anthracnoseInWords: PublishedStatement = {
  row: "disease.14",
  says: "anthracnose from an index of 2, on annual bluegrass",
  source: DANNEBERGER,
  status: "seen",
  holds: () => {
    const at = (meanTemperatureC: number, meanLeafWetHoursPerDay: number) => valueOf(judgeAnthracnose({ meanTemperatureC, meanLeafWetHoursPerDay }, 2));
    expect(at(22, 12).isFavorable).toBe(true);
    expect(at(20, 8).isFavorable).toBe(false);
    expect(DANNEBERGER_ANTHRACNOSE.madeFor).toContain("annual bluegrass");
  },
};

export const DISEASE_CHECKS: readonly PublishedEntry[] = [
  ...rows, ...dollarSpotInWords, ...initial, ...kentuckyBrownPatch, ...brownPatchInWords, ...nutter, ...kentuckyPythium, anthracnoseInWords,
];
