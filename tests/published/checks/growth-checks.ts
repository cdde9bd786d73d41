// Growth potential as printed, and each value of its curves by another way.
import { expect } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import {
  GROWTH_CURVES, type GrowthSeason, MONTHLY_NITROGEN_MAXIMUM_GRAMS_PER_SQUARE_METER, describeGrowth, growthCurveAt, growthPotential,
  monthlyNitrogenGramsPerSquareMeter, nitrogenShareOfStandard, overseedingInflection, overseedingWindow,
} from "#domain/turf/growth-potential";
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from "#domain/turf/temperature-scale";
import { day, valueOf } from "../../support/domain-answers";
import { type PublishedCheck, type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";

const WOODS = "Woods, Asian Turfgrass Center 2014, A number between 0 and 1 (after Gelernter & Stowell, GCM 2005)";
const R_CODE = "Woods, micahwoods/gp_inflection, r/2017_overseed_palm_springs.R";
const TOOL = "PACE Turf, https://www.paceturf.org/public/turf_growth_potentials_a_tool_with_many_uses";

const potential = (season: GrowthSeason, meanTemperatureC: number) => () => valueOf(growthPotential(season, meanTemperatureC));

/** The formula's values at round temperatures, and the same by powers of the value one spread off the optimum. */
const curve = (row: PublishedRow["row"], season: GrowthSeason, optimumC: number, spreadC: number, values: readonly (readonly [number, number])[]): readonly PublishedRow[] =>
  values.map(([temperatureC, expected]) => ({
    row,
    inputs: `${season} at ${String(temperatureC)} °C`,
    expected,
    tolerance: 0.00005,
    computed: () => growthCurveAt(GROWTH_CURVES[season], temperatureC),
    second: Math.exp(-0.5) ** (((temperatureC - optimumC) / spreadC) ** 2),
    source: `${WOODS} (formula)`,
    status: "calc",
  }));

const rows: readonly (PublishedCheck | PublishedRow)[] = [
  { row: "growth.4", name: "cool-season at its optimum, 20 °C", expected: 1, tolerance: 0, computed: potential("cool-season", 20), source: WOODS, status: "seen" },
  { row: "growth.4", name: "cool-season at 68 °F", expected: 1, tolerance: 1e-12, computed: potential("cool-season", celsiusFromFahrenheit(68)), source: "Stowell & Gelernter, Predicting Turf Performance, http://grounds-mag.com/mag/grounds_maintenance_predicting_turf_performance/", status: "seen" },
  { row: "growth.4", name: "warm-season at its optimum, 31 °C", expected: 1, tolerance: 0, computed: potential("warm-season", 31), source: WOODS, status: "seen" },
  { row: ["growth.3", "growth.4"], name: "warm-season at 88 °F", expected: 1, tolerance: 1e-12, computed: potential("warm-season", celsiusFromFahrenheit(88)), source: "PACE Turf, https://www.paceturf.org/gallery/detail/modified-warm-season-gp-model", status: "seen" },
  { row: ["growth.3", "growth.12"], name: "modified warm-season rule at 35 °C", expected: 1, tolerance: 0, computed: potential("warm-season", 35), source: R_CODE, status: "seen" },
  { row: "growth.3", name: "modified warm-season rule at 100 °F", expected: 1, tolerance: 0, computed: potential("warm-season", celsiusFromFahrenheit(100)), source: "PACE Turf, https://www.paceturf.org/gallery/detail/modified-warm-season-gp-model", status: "seen" },
  ...curve(["growth.1", "growth.8", "growth.12"], "cool-season", 20, 5.5, [[5, 0.0243], [10, 0.1915], [15, 0.6615], [20, 1], [25, 0.6615], [30, 0.1915], [35, 0.0243]]),
  ...curve(["growth.1", "growth.9"], "warm-season", 31, 7, [[5, 0.001], [10, 0.0111], [15, 0.0734], [20, 0.2909], [25, 0.6926], [30, 0.9898], [31, 1], [35, 0.8494]]),
  { row: "growth.10", name: "N of a month at 15 °C, cool-season, at most 3 g/m2", expected: 1.98, tolerance: 0.005, computed: () => monthlyNitrogenGramsPerSquareMeter(3, potential("cool-season", 15)()), source: "Woods, February 3, 2019 (formula)", status: "calc" },
  { row: "growth.7", name: "the month's maximum in the PACE map, g/m2", expected: 5, tolerance: 0, computed: () => MONTHLY_NITROGEN_MAXIMUM_GRAMS_PER_SQUARE_METER.pace.gramsPerSquareMeter, source: "https://www.paceturf.org/gallery/detail/turfgrass-nitrogen-demand", status: "seen" },
  { row: ["growth.7", "growth.11"], name: "the month's maximum of Woods for fine turf, g/m2", expected: 3, tolerance: 0, computed: () => MONTHLY_NITROGEN_MAXIMUM_GRAMS_PER_SQUARE_METER.fineTurf.gramsPerSquareMeter, source: "Woods, February 3, 2019", status: "seen" },
  { row: "growth.4", name: "the cool-season optimum in °F", expected: 68, tolerance: 1e-12, computed: () => fahrenheitFromCelsius(GROWTH_CURVES["cool-season"].optimumC), source: "PACE Turf, overseeding dates: 20 °C (68 °F)", status: "seen" },
];

const meanings = ([[1, "good"], [0.5, "good"], [0.49, "stress"], [0.11, "stress"], [0.1, "extremely-limited"], [0, "extremely-limited"]] as const).map(
  ([share, meaning]): PublishedStatement => ({ row: "growth.5", says: `growth at ${String(share)} is ${meaning}`, source: TOOL, status: "seen", holds: () => expect(describeGrowth(share)).toBe(meaning) }),
);

const statements: readonly PublishedStatement[] = [
  ...meanings,
  {
    row: "growth.11",
    says: "less than the standard nitrogen is a share below 1",
    source: "Woods, February 3, 2019",
    status: "seen",
    holds: () => {
      expect(valueOf(nitrogenShareOfStandard(2, 2.5))).toBeLessThan(1);
      expect(valueOf(nitrogenShareOfStandard(2.5, 2.5))).toBe(1);
    },
  },
];

/** Ten days of fall, made up, that cool down past both rules; curves cross at 24.84 °C. */
const fall = [30, 28, 26, 24, 23, 22, 20, 19, 18, 17].map((meanTemperatureC, place) => ({ date: day(`2026-10-${String(place + 1).padStart(2, "0")}`), meanTemperatureC }));
const fallPeriod = { from: day("2026-10-01"), through: day("2026-10-10") };

/** The window of days from October 1, 2026 on with these mean temperatures. */
function windowOf(...meansC: number[]) {
  const series = meansC.map((meanTemperatureC, place) => ({ date: addDays(day("2026-10-01"), place), meanTemperatureC }));
  return valueOf(overseedingWindow(series, { from: day("2026-10-01"), through: addDays(day("2026-10-01"), meansC.length - 1) }));
}

const overseeding: readonly PublishedStatement[] = [
  {
    row: "growth.6",
    says: "overseeding starts where cool-season growth passes warm-season, and ends with the 5-day mean under 20 °C",
    source: "PACE Turf, https://www.paceturf.org/gallery/detail/optimum-overseeding-dates-based-on-temperature",
    status: "seen",
    holds: () => expect(valueOf(overseedingWindow(fall, fallPeriod))).toEqual({ startsOn: "2026-10-04", endsOn: "2026-10-10" }),
  },
  {
    row: "growth.6",
    says: "the mean that ends overseeding is of five days: one of four would be under 20 °C a day before, one of six not yet",
    source: "PACE Turf, https://www.paceturf.org/gallery/detail/optimum-overseeding-dates-based-on-temperature",
    status: "seen",
    holds: () => {
      // Means of four days: 19.75 on October 6. Of five: 21 and 19 on October 6 and 7. Of six: 20.17 on October 7.
      expect(windowOf(30, 26, 24, 20, 18, 17, 16)).toEqual({ startsOn: "2026-10-03", endsOn: "2026-10-07" });
    },
  },
  {
    row: "growth.6",
    says: "a 5-day mean of 20 °C is not under 20 °C",
    source: "PACE Turf, https://www.paceturf.org/gallery/detail/optimum-overseeding-dates-based-on-temperature",
    status: "seen",
    holds: () => expect(windowOf(30, 26, 24, 20, 19, 19, 18)).toEqual({ startsOn: "2026-10-03" }),
  },
  {
    row: "growth.13",
    says: "the inflection is the day on which the running sum of the difference is least (no day of Palm Springs: its temperatures are not printed)",
    source: "Woods, November 5 and 13, 2017",
    status: "seen",
    holds: () => expect(valueOf(overseedingInflection(fall, fallPeriod))).toMatchObject({ kind: "found", date: "2026-10-03" }),
  },
];

export const GROWTH_CHECKS: readonly PublishedEntry[] = [...rows, ...statements, ...overseeding];
