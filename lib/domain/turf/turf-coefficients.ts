import { type Outcome, accept, badInput } from "#domain/foundation/outcome";
import { type GrowthSeason } from "#domain/turf/growth-potential";

/**
 * Crop coefficients from January to December, to be multiplied by short (grass) reference evapotranspiration: University
 * of California Center for Landscape & Urban Horticulture, Turfgrass crop coefficients, after Meyer et al. 1985.
 */
export const TURF_COEFFICIENTS: Readonly<Record<GrowthSeason, readonly number[]>> = {
  "cool-season": [0.61, 0.64, 0.75, 1.04, 0.95, 0.88, 0.94, 0.86, 0.74, 0.75, 0.69, 0.6],
  "warm-season": [0.61, 0.54, 0.76, 0.72, 0.79, 0.68, 0.71, 0.71, 0.62, 0.54, 0.58, 0.55],
};

/**
 * The coefficients for a whole year, as printed; they are not the plain means of the months. Source: as for the months.
 */
export const TURF_COEFFICIENTS_OF_YEAR: Readonly<Record<GrowthSeason, number>> = {
  "cool-season": 0.8,
  "warm-season": 0.6,
};

/**
 * The coefficient of a month, from 1 (January) to 12. Refuses any other number at `month`. Source: as for the table.
 */
export function turfCoefficient(season: GrowthSeason, month: number): Outcome<number> {
  const coefficient = TURF_COEFFICIENTS[season][month - 1];
  if (coefficient !== undefined) return accept(coefficient);
  return badInput("month", String(month), "from 1 to 12", `${month} is not a month of the year.`);
}

/**
 * Water that turf uses in a month's day, in mm: its coefficient times reference evapotranspiration (FAO-56 Eq. 58).
 * What comes out a hair below zero on a cold day counts as nothing. Refuses what is no month (`month`) and what is no
 * number (`referenceMillimeters`).
 */
export function turfWaterUseMillimeters(
  season: GrowthSeason,
  month: number,
  referenceMillimeters: number,
): Outcome<number> {
  if (!Number.isFinite(referenceMillimeters)) {
    const found = String(referenceMillimeters);
    return badInput("referenceMillimeters", found, "a depth in mm", `Reference evapotranspiration of ${found} mm is not a number.`);
  }
  const coefficient = turfCoefficient(season, month);
  return coefficient.ok ? accept(coefficient.value * Math.max(0, referenceMillimeters)) : coefficient;
}
