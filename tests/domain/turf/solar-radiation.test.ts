import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  STEFAN_BOLTZMANN_PER_DAY,
  TEMPERATURE_RADIATION_COEFFICIENTS,
  clearSkyRadiation,
  clearSkyRadiationWithHumidity,
  daylightHours,
  evaporationMillimeters,
  extraterrestrialRadiation,
  extraterrestrialRadiationOfHour,
  inverseRelativeDistance,
  monthlySoilHeatFlux,
  monthlySoilHeatFluxSoFar,
  netLongwaveRadiation,
  netLongwaveRadiationOfHour,
  netShortwaveRadiation,
  radians,
  radiationFromSunshine,
  radiationFromTemperatures,
  seasonalCorrectionHours,
  sineOfSunHeight,
  solarDeclinationRadians,
  solarTimeAngleRadians,
  sunsetHourAngleRadians,
} from "#domain/turf/solar-radiation";
import { between } from "../../support/real-numbers";

const dayOfYear = fc.integer({ min: 1, max: 366 });
const latitude = between(-89, 89);

describe("the sun over a year", () => {
  test("declination and distance stay in their bounds and turn with the seasons", () => {
    fc.assert(
      fc.property(dayOfYear, (each) => {
        expect(Math.abs(solarDeclinationRadians(each))).toBeLessThanOrEqual(0.409);
        expect(Math.abs(inverseRelativeDistance(each) - 1)).toBeLessThanOrEqual(0.033);
        expect(Math.abs(seasonalCorrectionHours(each))).toBeLessThan(0.3);
      }),
    );
    expect(solarDeclinationRadians(172)).toBeGreaterThan(0.4);
    expect(solarDeclinationRadians(355)).toBeLessThan(-0.4);
    expect(inverseRelativeDistance(3)).toBeGreaterThan(inverseRelativeDistance(185));
  });
  test("daylight is 12 h at the equator, all day or none near the poles", () => {
    fc.assert(
      fc.property(dayOfYear, (each) => {
        expect(daylightHours(0, each)).toBeCloseTo(12, 9);
      }),
    );
    expect(daylightHours(80, 172)).toBe(24);
    expect(daylightHours(80, 355)).toBe(0);
    expect(sunsetHourAngleRadians(radians(80), solarDeclinationRadians(172))).toBe(Math.PI);
  });
  test("radiation outside the air is never negative, and none in the polar night", () => {
    fc.assert(
      fc.property(latitude, dayOfYear, (degrees, each) => {
        expect(extraterrestrialRadiation(degrees, each)).toBeGreaterThanOrEqual(-1e-9);
      }),
    );
    expect(extraterrestrialRadiation(80, 355)).toBeCloseTo(0, 9);
  });
  test("the hours of a day add up to the day", () => {
    fc.assert(
      fc.property(latitude, dayOfYear, (degrees, each) => {
        const correction = seasonalCorrectionHours(each);
        let sum = 0;
        for (let hour = 0; hour < 24; hour += 1)
          sum += extraterrestrialRadiationOfHour(degrees, each, hour + 0.5 - correction);
        expect(Math.abs(sum - extraterrestrialRadiation(degrees, each))).toBeLessThan(1e-6);
      }),
    );
  });
  test("the sun is highest at solar noon and at the horizon at sunset", () => {
    expect(solarTimeAngleRadians(12 - seasonalCorrectionHours(100), 100)).toBeCloseTo(0, 12);
    const sunset = sunsetHourAngleRadians(radians(40), solarDeclinationRadians(100));
    expect(sineOfSunHeight(40, 100, sunset)).toBeCloseTo(0, 12);
    expect(sineOfSunHeight(40, 100, 0)).toBeGreaterThan(sineOfSunHeight(40, 100, 0.5));
  });
});

describe("radiation on the ground", () => {
  test("is a quarter without sunshine, three quarters with all of it", () => {
    expect(radiationFromSunshine(0, 12, 40)).toBe(10);
    expect(radiationFromSunshine(12, 12, 40)).toBe(30);
    expect(clearSkyRadiation(0, 40)).toBe(30);
  });
  test("from temperatures it grows with the spread of the day and near the coast", () => {
    const { interior, coastal } = TEMPERATURE_RADIATION_COEFFICIENTS;
    expect(radiationFromTemperatures(10, 26, 40, interior)).toBeCloseTo(25.6, 9);
    expect(radiationFromTemperatures(10, 26, 40, coastal)).toBeGreaterThan(
      radiationFromTemperatures(10, 26, 40, interior),
    );
  });
  test("a humid clear sky lets less through than a dry one, and both less than all", () => {
    const sky = { latitudeDegrees: 40, dayOfYear: 180, pressureKilopascals: 100 };
    const dry = clearSkyRadiationWithHumidity({ ...sky, actualVaporPressureKilopascals: 0.5 });
    const humid = clearSkyRadiationWithHumidity({ ...sky, actualVaporPressureKilopascals: 3 });
    expect(humid).toBeLessThan(dry);
    expect(dry).toBeLessThan(extraterrestrialRadiation(40, 180));
  });
  test("a beam too weak for the one diffuse equation takes the other", () => {
    const low = clearSkyRadiationWithHumidity({
      latitudeDegrees: 65,
      dayOfYear: 355,
      pressureKilopascals: 105,
      actualVaporPressureKilopascals: 7,
    });
    expect(low).toBeGreaterThan(0);
    expect(low).toBeLessThan(extraterrestrialRadiation(65, 355));
  });
  test("grass keeps 77 % of shortwave, and loses less longwave under clouds and in humid air", () => {
    expect(netShortwaveRadiation(10)).toBeCloseTo(7.7, 12);
    const factors = {
      stefanBoltzmannPerDay: STEFAN_BOLTZMANN_PER_DAY.fao56,
      actualVaporPressureKilopascals: 1,
      clearness: 1,
    };
    const clear = netLongwaveRadiation(10, 20, factors);
    expect(netLongwaveRadiation(10, 20, { ...factors, clearness: 0.5 })).toBeLessThan(clear);
    expect(netLongwaveRadiation(10, 20, { ...factors, actualVaporPressureKilopascals: 2 })).toBeLessThan(clear);
    expect(netLongwaveRadiation(15, 15, factors)).toBeCloseTo(24 * netLongwaveRadiationOfHour(15, factors), 9);
  });
  test("soil takes up heat while months get warmer, and energy becomes water", () => {
    expect(monthlySoilHeatFlux(10, 20)).toBeCloseTo(0.7, 12);
    expect(monthlySoilHeatFluxSoFar(10, 15)).toBeCloseTo(0.7, 12);
    expect(evaporationMillimeters(1)).toBe(0.408);
  });
});
