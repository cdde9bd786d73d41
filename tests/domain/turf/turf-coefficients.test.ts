import { describe, expect, test } from "vitest";
import {
  TURF_COEFFICIENTS,
  TURF_COEFFICIENTS_OF_YEAR,
  turfCoefficient,
  turfWaterUseMillimeters,
} from "#domain/turf/turf-coefficients";
import { refusalOf, valueOf } from "../../support/domain-answers";

describe("turf coefficients", () => {
  test.each(["cool-season", "warm-season"] as const)("%s: twelve months around the figure of the year", (season) => {
    const months = TURF_COEFFICIENTS[season];
    expect(months).toHaveLength(12);
    const mean = months.reduce((sum, coefficient) => sum + coefficient, 0) / 12;
    expect(Math.abs(mean - TURF_COEFFICIENTS_OF_YEAR[season])).toBeLessThan(0.06);
  });
  test("April for cool-season turf is its highest", () =>
    expect(valueOf(turfCoefficient("cool-season", 4))).toBe(1.04));
  test.each([0, 13, 1.5, Number.NaN])("month %d is refused", (month) =>
    expect(refusalOf(turfCoefficient("warm-season", month)).field).toBe("month"),
  );
  test("water use is the coefficient's share, and none in a night with dew", () => {
    expect(valueOf(turfWaterUseMillimeters("warm-season", 7, 5))).toBeCloseTo(3.55, 12);
    expect(valueOf(turfWaterUseMillimeters("warm-season", 7, -0.1))).toBe(0);
    expect(turfWaterUseMillimeters("warm-season", 13, 5).ok).toBe(false);
    expect(refusalOf(turfWaterUseMillimeters("warm-season", 7, Number.NaN)).field).toBe("referenceMillimeters");
  });
});
