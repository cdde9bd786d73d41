import { describe, expect, test } from "vitest";
import {
  GROWTH_CURVES, type GrowthSeason, MONTHLY_NITROGEN_MAXIMUM_GRAMS_PER_SQUARE_METER, describeGrowth, growthCurveAt, growthPotential,
  monthlyNitrogenGramsPerSquareMeter, nitrogenShareOfStandard,
} from "#domain/turf/growth-potential";
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from "#domain/turf/temperature-scale";
import { valueOf } from "../support/domain-answers";
import { type PublishedCheck, checkPublished } from "../support/published-check";

/*
 * Left out, because the temperatures are not printed: the overseeding inflections of Palm Springs (median October 13 over
 * 55 years; October 29, 2017), and Bangkok's 1,656 lb of sand a year. Left out, because other parts compute them:
 * topdressing depths and volumes, clippings, and the use of other nutrients. The Fahrenheit variances were never found in
 * print and are used nowhere.
 */

const WOODS = "Woods, Asian Turfgrass Center 2014, A number between 0 and 1 (after Gelernter & Stowell, GCM 2005)";
const R_CODE = "Woods, micahwoods/gp_inflection, r/2017_overseed_palm_springs.R";
const TOOL = "PACE Turf, https://www.paceturf.org/public/turf_growth_potentials_a_tool_with_many_uses";

const potential = (season: GrowthSeason, meanTemperatureC: number) => () => valueOf(growthPotential(season, meanTemperatureC));

/** The formula's values at round temperatures, as the reference page works them out. */
const curve = (season: GrowthSeason, values: readonly (readonly [number, number])[]): readonly PublishedCheck[] =>
  values.map(([temperatureC, expected]) => ({
    name: `${season} at ${temperatureC} °C`,
    expected,
    tolerance: 0.00005,
    computed: () => growthCurveAt(GROWTH_CURVES[season], temperatureC),
    source: `${WOODS} (formula)`,
    status: "calc",
  }));

const rows: readonly PublishedCheck[] = [
  { name: "cool-season at its optimum, 20 °C", expected: 1, tolerance: 0, computed: potential("cool-season", 20), source: WOODS, status: "seen" },
  { name: "cool-season at 68 °F", expected: 1, tolerance: 1e-12, computed: potential("cool-season", celsiusFromFahrenheit(68)), source: "Stowell & Gelernter, Predicting Turf Performance, http://grounds-mag.com/mag/grounds_maintenance_predicting_turf_performance/", status: "seen" },
  { name: "warm-season at its optimum, 31 °C", expected: 1, tolerance: 0, computed: potential("warm-season", 31), source: WOODS, status: "seen" },
  { name: "warm-season at 88 °F", expected: 1, tolerance: 1e-12, computed: potential("warm-season", celsiusFromFahrenheit(88)), source: "PACE Turf, https://www.paceturf.org/gallery/detail/modified-warm-season-gp-model", status: "seen" },
  { name: "modified warm-season rule at 35 °C", expected: 1, tolerance: 0, computed: potential("warm-season", 35), source: R_CODE, status: "seen" },
  { name: "modified warm-season rule at 100 °F", expected: 1, tolerance: 0, computed: potential("warm-season", celsiusFromFahrenheit(100)), source: "PACE Turf, https://www.paceturf.org/gallery/detail/modified-warm-season-gp-model", status: "seen" },
  ...curve("cool-season", [[5, 0.0243], [10, 0.1915], [15, 0.6615], [20, 1], [25, 0.6615], [30, 0.1915], [35, 0.0243]]),
  ...curve("warm-season", [[5, 0.001], [10, 0.0111], [15, 0.0734], [20, 0.2909], [25, 0.6926], [30, 0.9898], [31, 1], [35, 0.8494]]),
  { name: "N of a month at 15 °C, cool-season, at most 3 g/m2", expected: 1.98, tolerance: 0.005, computed: () => monthlyNitrogenGramsPerSquareMeter(3, potential("cool-season", 15)()), source: "Woods, February 3, 2019 (formula)", status: "calc" },
  { name: "the month's maximum in the PACE map, g/m2", expected: 5, tolerance: 0, computed: () => MONTHLY_NITROGEN_MAXIMUM_GRAMS_PER_SQUARE_METER.pace.gramsPerSquareMeter, source: "https://www.paceturf.org/gallery/detail/turfgrass-nitrogen-demand", status: "seen" },
  { name: "the month's maximum of Woods for fine turf, g/m2", expected: 3, tolerance: 0, computed: () => MONTHLY_NITROGEN_MAXIMUM_GRAMS_PER_SQUARE_METER.fineTurf.gramsPerSquareMeter, source: "Woods, February 3, 2019", status: "seen" },
  { name: "the cool-season optimum in °F", expected: 68, tolerance: 1e-12, computed: () => fahrenheitFromCelsius(GROWTH_CURVES["cool-season"].optimumC), source: "PACE Turf, overseeding dates: 20 °C (68 °F)", status: "seen" },
];

describe("published growth potential", () => {
  test.each(rows)("$name = $expected ($status; $source)", (row) => checkPublished(row));

  test.each([[1, "good"], [0.5, "good"], [0.49, "stress"], [0.11, "stress"], [0.1, "extremely-limited"], [0, "extremely-limited"]] as const)(
    `growth at %d is %s (seen; ${TOOL})`,
    (share, meaning) => expect(describeGrowth(share)).toBe(meaning),
  );

  test("less than the standard nitrogen is a share below 1 (seen; Woods, February 3, 2019)", () => {
    expect(valueOf(nitrogenShareOfStandard(2, 2.5))).toBeLessThan(1);
    expect(valueOf(nitrogenShareOfStandard(2.5, 2.5))).toBe(1);
  });
});
