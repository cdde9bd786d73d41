import { type CalendarDate } from "#domain/foundation/calendar-date";
import { invariant } from "#domain/foundation/invariant";
import { type Outcome, accept, missingFact } from "#domain/foundation/outcome";
import { type DatePeriod, type Dated, unbrokenDays } from "#domain/turf/daily-series";
import { type AmountLimit, amountRange, refuseOutOfRange, temperatureRange } from "#domain/turf/physical-range";

/** Which grasses: cool-season (C3) or warm-season (C4). */
export type GrowthSeason = "cool-season" | "warm-season";

/** A day's mean air temperature. */
export interface MeanTemperatureDay extends Dated {
  readonly meanTemperatureC: number;
}

/** The temperature of best growth and the spread around it, in °C. */
export interface GrowthCurve {
  readonly optimumC: number;
  readonly spreadC: number;
}

/**
 * The curves in the Celsius form. Source: Woods, Asian Turfgrass Center 2014, after Gelernter & Stowell,
 * GCM 2005. The Fahrenheit constants were not found in print, so Fahrenheit is converted instead.
 */
export const GROWTH_CURVES: Readonly<Record<GrowthSeason, GrowthCurve>> = {
  "cool-season": { optimumC: 20, spreadC: 5.5 },
  "warm-season": { optimumC: 31, spreadC: 7 },
};

/**
 * The bare curve: exp(-0.5 ((T - optimum) / spread)^2), from 0 to 1, for a mean air temperature in °C. For warm-season
 * grass above its optimum use {@link growthPotential}, which holds at 1. Source: GROWTH_CURVES.
 */
export function growthCurveAt(curve: GrowthCurve, meanTemperatureC: number): number {
  return Math.exp(-0.5 * ((meanTemperatureC - curve.optimumC) / curve.spreadC) ** 2);
}

/**
 * Temperature-based growth potential, from 0 to 1, for a mean air temperature in °C. Warm-season grass stays at 1 from
 * 31 °C up (the modified rule of PACE Turf), since heat alone doesn't stop it. It is a curve to look at beside a
 * nutrient plan and never a target: in disease weather it would feed. Refuses what is not an air temperature
 * (`meanTemperatureC`). Source: GROWTH_CURVES.
 */
export function growthPotential(season: GrowthSeason, meanTemperatureC: number): Outcome<number> {
  const refusal = refuseOutOfRange([temperatureRange("meanTemperatureC", "The mean temperature", meanTemperatureC)]);
  return refusal ?? accept(cappedPotential(season, meanTemperatureC));
}

function cappedPotential(season: GrowthSeason, meanTemperatureC: number): number {
  const curve = GROWTH_CURVES[season];
  if (season === "warm-season" && meanTemperatureC >= curve.optimumC) return 1;
  return growthCurveAt(curve, meanTemperatureC);
}

/**
 * What a growth potential, from 0 to 1 (others throw), means: from 50 % up growth is good, below it the grass is under stress, at 10 % and
 * below growth is extremely limited. Source: PACE Turf, Turf growth potentials: a tool with many uses.
 */
export function describeGrowth(potential: number): "good" | "stress" | "extremely-limited" {
  invariant(potential >= 0 && potential <= 1, "a growth potential is a part of 1");
  if (potential >= 0.5) return "good";
  return potential > 0.1 ? "stress" : "extremely-limited";
}

/**
 * The largest nitrogen supply of a month at full growth that the two sources use. 1 lb N per 1,000 sq ft is
 * printed as 5 g/m2; Woods takes 3 g/m2 for fine turf.
 */
export const MONTHLY_NITROGEN_MAXIMUM_GRAMS_PER_SQUARE_METER = {
  pace: { gramsPerSquareMeter: 5, source: "PACE Turf, Turfgrass nitrogen demand" },
  fineTurf: { gramsPerSquareMeter: 3, source: "Woods, Asian Turfgrass Center, February 3, 2019" },
} as const;

/** Standard nitrogen of a month in g/m2: the month's maximum, from 0, x growth potential, from 0 to 1 (Woods 2019; PACE Turf). Throws for others. */
export function monthlyNitrogenGramsPerSquareMeter(maximumGramsPerSquareMeter: number, potential: number): number {
  invariant(maximumGramsPerSquareMeter >= 0 && Number.isFinite(maximumGramsPerSquareMeter), "a month's nitrogen is an amount");
  invariant(potential >= 0 && potential <= 1, "a growth potential is a part of 1");
  return maximumGramsPerSquareMeter * potential;
}

/**
 * 100 g/m2 are some 20 lb per 1,000 sq ft, nearly three times the most of any table on file for a year (7 lb, Florida):
 * beyond it a unit is wrong.
 */
const MOST_NITROGEN: AmountLimit = { highest: 100, unit: "g/m2" };

/**
 * Nitrogen applied as a share of the standard amount; below 1 means less was applied. Source: Woods,
 * February 3, 2019. Refuses when the standard amount is zero, since then there is no share of it, and what is no
 * amount.
 */
export function nitrogenShareOfStandard(
  appliedGramsPerSquareMeter: number,
  standardGramsPerSquareMeter: number,
): Outcome<number> {
  const refusal = refuseOutOfRange([
    amountRange("appliedGramsPerSquareMeter", "The nitrogen applied", appliedGramsPerSquareMeter, MOST_NITROGEN),
    amountRange("standardGramsPerSquareMeter", "The standard nitrogen", standardGramsPerSquareMeter, MOST_NITROGEN),
  ]);
  if (refusal !== undefined) return refusal;
  if (standardGramsPerSquareMeter > 0) return accept(appliedGramsPerSquareMeter / standardGramsPerSquareMeter);
  return missingFact(
    "standardGramsPerSquareMeter",
    "more than 0 g/m2",
    "The grass has no standard nitrogen here, so nothing can be held against it.",
  );
}

/** Where cool-season growth overtakes warm-season growth. */
export type OverseedingInflection =
  | { readonly kind: "found"; readonly date: CalendarDate; readonly runningSum: number }
  /** The running sum was still falling when the series ended: the date lies later. */
  | { readonly kind: "not-reached" };

/**
 * The overseeding inflection: the day on which the running sum of (cool-season - warm-season) growth potential is
 * least. Woods counts from August 1 (November 5 and 13, 2017). The series should reach into winter; where the least is
 * its last day, the answer is that it isn't reached. Refuses a series with a gap, naming the day. Refused too: what is
 * not an air temperature.
 */
export function overseedingInflection(
  series: readonly MeanTemperatureDay[],
  period: DatePeriod,
): Outcome<OverseedingInflection> {
  const days = readMeanDays(series, period);
  if (!days.ok) return days;
  let runningSum = 0;
  let least = { date: period.through, runningSum: Infinity };
  for (const { date, meanTemperatureC } of days.value) {
    runningSum += cappedPotential("cool-season", meanTemperatureC) - cappedPotential("warm-season", meanTemperatureC);
    if (runningSum < least.runningSum) least = { date, runningSum };
  }
  return accept(least.date === period.through ? { kind: "not-reached" } : { kind: "found", ...least });
}

/** The days between which to overseed; an end that the series doesn't show yet is left out. */
export interface OverseedingWindow {
  readonly startsOn?: CalendarDate;
  readonly endsOn?: CalendarDate;
}

/**
 * The window of PACE Turf: it starts on the first day on which cool-season growth potential is above warm-season, and
 * ends on the first day from then on whose five-day mean temperature is below 20 °C. Refuses a series with a gap,
 * naming the day. Refused too: what is not an air temperature. Source: PACE Turf, optimum overseeding dates based on
 * temperature.
 */
export function overseedingWindow(
  series: readonly MeanTemperatureDay[],
  period: DatePeriod,
): Outcome<OverseedingWindow> {
  const days = readMeanDays(series, period);
  if (!days.ok) return days;
  const start = days.value.findIndex(
    ({ meanTemperatureC }) =>
      cappedPotential("cool-season", meanTemperatureC) > cappedPotential("warm-season", meanTemperatureC),
  );
  const startsOn = days.value[start]?.date;
  if (startsOn === undefined) return accept({});
  const firstWithMean = Math.max(start, MEAN_DAYS - 1);
  const end = days.value.findIndex(
    (_, index) => index >= firstWithMean && meanOfLastDays(days.value, index) < GROWTH_CURVES["cool-season"].optimumC,
  );
  const endsOn = days.value[end]?.date;
  return accept(endsOn === undefined ? { startsOn } : { startsOn, endsOn });
}

/** Days of the mean that ends the overseeding window. Source: PACE Turf. */
const MEAN_DAYS = 5;

function meanOfLastDays(days: readonly MeanTemperatureDay[], lastIndex: number): number {
  const window = days.slice(lastIndex - MEAN_DAYS + 1, lastIndex + 1);
  return window.reduce((sum, { meanTemperatureC }) => sum + meanTemperatureC, 0) / MEAN_DAYS;
}

function readMeanDays(
  series: readonly MeanTemperatureDay[],
  period: DatePeriod,
): Outcome<readonly MeanTemperatureDay[]> {
  const days = unbrokenDays(series, period);
  if (!days.ok) return days;
  const refusal = refuseOutOfRange(
    days.value.map(({ date, meanTemperatureC }) =>
      temperatureRange(`${date} meanTemperatureC`, `The mean temperature of ${date}`, meanTemperatureC),
    ),
  );
  return refusal ?? days;
}
