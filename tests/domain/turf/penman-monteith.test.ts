import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type PenmanMonteithTerms,
  SURFACES,
  penmanMonteith,
  penmanMonteithDailyMillimeters,
  placeAndAirRanges,
  windAtTwoMeters,
} from "#domain/turf/penman-monteith";
import { latitudeRange, refuseOutOfRange } from "#domain/turf/physical-range";
import { between } from "../../support/real-numbers";

const summer: PenmanMonteithTerms = {
  slope: 0.145,
  psychrometricConstant: 0.066,
  netRadiation: 14,
  soilHeatFlux: 0,
  meanTemperatureC: 20,
  windAtTwoMeters: 2,
  saturationVaporPressureKilopascals: 2.4,
  actualVaporPressureKilopascals: 1.4,
};

describe("the Penman-Monteith equation", () => {
  test("in plain arithmetic", () => {
    const plain = (0.408 * 0.145 * 14 + (0.066 * 900 * 2 * 1) / 293) / (0.145 + 0.066 * 1.68);
    expect(penmanMonteithDailyMillimeters(summer)).toBeCloseTo(plain, 12);
  });
  test("rises with radiation and dryness, whatever the surface", () => {
    fc.assert(
      fc.property(fc.constantFrom(...Object.values(SURFACES)), between(0, 8), (surface, wind) => {
        const at = (change: Partial<PenmanMonteithTerms>) =>
          penmanMonteith(
            { ...summer, windAtTwoMeters: wind, ...change },
            surface.dailyNumerator,
            surface.dailyDenominator,
          );
        expect(at({ netRadiation: 15 })).toBeGreaterThan(at({}));
        expect(at({ soilHeatFlux: 1 })).toBeLessThan(at({}));
        expect(at({ actualVaporPressureKilopascals: 1.3 })).toBeGreaterThanOrEqual(at({}));
      }),
    );
  });
  test("without wind the surface makes no difference", () => {
    const still = { ...summer, windAtTwoMeters: 0 };
    const { "asce-short": short, "asce-tall": tall } = SURFACES;
    expect(penmanMonteith(still, short.dailyNumerator, short.dailyDenominator)).toBe(
      penmanMonteith(still, tall.dailyNumerator, tall.dailyDenominator),
    );
  });
  test("the short reference of a day is the grass of FAO-56", () => {
    expect([SURFACES["asce-short"].dailyNumerator, SURFACES["asce-short"].dailyDenominator]).toEqual([900, 0.34]);
  });
});

describe("wind at 2 m", () => {
  test("is itself when measured there, and less than higher up", () => {
    expect(windAtTwoMeters(3, 2)).toBe(3);
    for (const [wind, height] of [[3, 0.09], [3, Number.NaN], [-1, 2], [Number.POSITIVE_INFINITY, 10]] as const) expect(() => windAtTwoMeters(wind, height)).toThrow();
    fc.assert(
      fc.property(between(2.1, 100), (height) => {
        expect(windAtTwoMeters(3, height)).toBeLessThan(3);
        expect(windAtTwoMeters(3, height + 1)).toBeLessThan(windAtTwoMeters(3, height));
      }),
    );
  });
});

describe("what is asked of place and air", () => {
  const reading = {
    latitudeDegrees: 40,
    elevationMeters: 100,
    actualVaporPressureKilopascals: 1,
    solarRadiation: 20,
    windMetersPerSecond: 2,
    windHeightMeters: 2,
  };
  const limits = { saturationVaporPressureKilopascals: 2.331, extraterrestrialRadiation: 40.001, radiationMargin: 1 };
  test("an ordinary reading passes, and one at its ends", () => {
    expect(refuseOutOfRange(placeAndAirRanges(reading, limits))).toBeUndefined();
    const most = { ...reading, actualVaporPressureKilopascals: 2.34, solarRadiation: 41.01, windMetersPerSecond: 60 };
    expect(refuseOutOfRange(placeAndAirRanges(most, limits))).toBeUndefined();
  });
  test.each([
    ["actualVaporPressureKilopascals", 2.35, "from 0 to 2.34 kPa"],
    ["solarRadiation", 41.02, "from 0 to 41.01 MJ/m2"],
    ["windMetersPerSecond", 60.1, "from 0 to 60 m/s"],
  ])("%s of %d is too much", (field, value, allowed) => {
    expect(refuseOutOfRange(placeAndAirRanges({ ...reading, [field]: value }, limits))?.refusal).toMatchObject({ field, allowed, found: expect.stringContaining(String(value)) as unknown });
  });
  test.each([
    ["latitudeDegrees", 91],
    ["elevationMeters", 9000],
    ["actualVaporPressureKilopascals", -0.1],
    ["solarRadiation", -1],
    ["windMetersPerSecond", -1],
    ["windHeightMeters", 0],
  ])("%s of %d is refused", (field, value) => {
    expect(refuseOutOfRange(placeAndAirRanges({ ...reading, [field]: value }, limits))?.refusal.field).toBe(field);
  });
  test("the poles are latitudes", () =>
    expect(refuseOutOfRange([latitudeRange(90), latitudeRange(-90)])).toBeUndefined());
});
