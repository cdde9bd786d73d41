import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  PSYCHROMETER_COEFFICIENTS,
  airPressureKilopascals,
  dewPointC,
  meanSaturationVaporPressureKilopascals,
  psychrometricConstant,
  saturationVaporPressureKilopascals,
  vaporPressureFromDewPointKilopascals,
  vaporPressureFromHumidityExtremesKilopascals,
  vaporPressureFromMaximumHumidityKilopascals,
  vaporPressureFromMeanHumidityKilopascals,
  vaporPressureFromWetBulbKilopascals,
  vaporPressureSlope,
} from "#domain/turf/vapor-pressure";
import { between } from "../../support/real-numbers";

const temperature = between(-30, 50);

describe("vapor pressure", () => {
  test("of saturated air rises with temperature, and its slope is its derivative", () => {
    fc.assert(
      fc.property(temperature, (degreesC) => {
        const step = 1e-4;
        const rise =
          saturationVaporPressureKilopascals(degreesC + step) - saturationVaporPressureKilopascals(degreesC - step);
        expect(rise).toBeGreaterThan(0);
        // 4098 stands for 17.27 x 237.3 = 4098.17.
        expect(Math.abs(vaporPressureSlope(degreesC) / (rise / (2 * step)) - 1)).toBeLessThan(1e-4);
      }),
    );
  });
  test("the mean of the extremes is above that of the mean temperature", () => {
    expect(meanSaturationVaporPressureKilopascals(10, 30)).toBeGreaterThan(saturationVaporPressureKilopascals(20));
  });
  test("dew point and vapor pressure are each other's inverse", () => {
    fc.assert(
      fc.property(temperature, (degreesC) => {
        expect(dewPointC(vaporPressureFromDewPointKilopascals(degreesC))).toBeCloseTo(degreesC, 8);
      }),
    );
  });
  test("a wet bulb as warm as the air means saturated air, and a colder one drier air", () => {
    expect(vaporPressureFromWetBulbKilopascals(20, 20, 101.3)).toBe(saturationVaporPressureKilopascals(20));
    expect(vaporPressureFromWetBulbKilopascals(20, 12, 101.3)).toBeLessThan(
      vaporPressureFromWetBulbKilopascals(20, 15, 101.3),
    );
    expect(vaporPressureFromWetBulbKilopascals(20, 15, 101.3, PSYCHROMETER_COEFFICIENTS.indoors)).toBeLessThan(
      vaporPressureFromWetBulbKilopascals(20, 15, 101.3),
    );
  });
  test("all ways from humidity agree when the day is even", () => {
    const half = saturationVaporPressureKilopascals(20) / 2;
    const even = {
      minimumTemperatureC: 20,
      maximumTemperatureC: 20,
      minimumRelativeHumidityPercent: 50,
      maximumRelativeHumidityPercent: 50,
    };
    expect(vaporPressureFromHumidityExtremesKilopascals(even)).toBeCloseTo(half, 12);
    expect(vaporPressureFromMaximumHumidityKilopascals(20, 50)).toBeCloseTo(half, 12);
    expect(vaporPressureFromMeanHumidityKilopascals(20, 20, 50)).toBeCloseTo(half, 12);
  });
  test("pressure falls with height, and the psychrometric constant with it", () => {
    expect(airPressureKilopascals(0)).toBe(101.3);
    expect(airPressureKilopascals(1000)).toBeLessThan(airPressureKilopascals(500));
    expect(psychrometricConstant(100)).toBeCloseTo(0.0665, 12);
  });
});
