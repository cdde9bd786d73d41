import { describe, expect, test } from "vitest";
import { dailyReferenceEvapotranspiration } from "#domain/turf/evapotranspiration";
import { type ReferenceHour, hourlyReferenceEvapotranspiration } from "#domain/turf/hourly-evapotranspiration";
import { clearSkyRadiation } from "#domain/turf/solar-radiation";
import { day, refusalOf, valueOf } from "../../support/domain-answers";

/** 13 to 14 h on the clock of Indianapolis in summer. */
const noon: ReferenceHour = {
  startsAtEpochMilliseconds: Date.UTC(2026, 6, 6, 17),
  latitudeDegrees: 39.8,
  longitudeDegrees: -86.2,
  elevationMeters: 220,
  temperatureC: 28,
  actualVaporPressureKilopascals: 1.8,
  solarRadiation: 2.8,
  clearnessBeforeSunset: 0.8,
  windMetersPerSecond: 2,
  windHeightMeters: 2,
};
const result = (change: Partial<ReferenceHour>, surface: "fao-56" | "asce-short" | "asce-tall" = "fao-56") =>
  valueOf(hourlyReferenceEvapotranspiration({ ...noon, ...change }, surface));
const atUtcHour = (hour: number) => ({ startsAtEpochMilliseconds: Date.UTC(2026, 6, 6, hour) });

describe("an hour's reference evapotranspiration", () => {
  test("is some tenths of a millimeter around noon and next to nothing at night", () => {
    expect(result({}).evapotranspirationMillimeters).toBeGreaterThan(0.5);
    expect(result({}).evapotranspirationMillimeters).toBeLessThan(0.9);
    const night = result({ ...atUtcHour(6), solarRadiation: 0, temperatureC: 20 });
    expect(night.extraterrestrialRadiation).toBe(0);
    expect(Math.abs(night.evapotranspirationMillimeters)).toBeLessThan(0.1);
  });
  test("soil takes a tenth of net radiation by day and gives half by night", () => {
    const night = result({ ...atUtcHour(6), solarRadiation: 0 });
    expect(result({}).soilHeatFlux).toBeCloseTo(0.1 * result({}).netRadiation, 12);
    expect(night.netRadiation).toBeLessThan(0);
    expect(night.soilHeatFlux).toBeCloseTo(0.5 * night.netRadiation, 12);
  });
  test("the tall reference has its own shares, and at night its own denominator", () => {
    expect(result({}, "asce-tall").soilHeatFlux).toBeCloseTo(0.04 * result({}, "asce-tall").netRadiation, 12);
    const night = { ...atUtcHour(6), solarRadiation: 0, temperatureC: 25 };
    expect(result(night, "asce-tall").soilHeatFlux).toBeCloseTo(0.2 * result(night, "asce-tall").netRadiation, 12);
    expect(result({}, "asce-tall").evapotranspirationMillimeters).toBeGreaterThan(
      result({}, "asce-short").evapotranspirationMillimeters,
    );
  });
  test("while the sun is low, how clear it was before stands in", () => {
    const late = { ...atUtcHour(6), solarRadiation: 0 };
    expect(result({ ...late, clearnessBeforeSunset: 1 }).netLongwaveRadiation).toBeGreaterThan(
      result({ ...late, clearnessBeforeSunset: 0.5 }).netLongwaveRadiation,
    );
    expect(result({ clearnessBeforeSunset: 1 }).netLongwaveRadiation).toBe(
      result({ clearnessBeforeSunset: 0.5 }).netLongwaveRadiation,
    );
  });
  test("a day of hours comes near the day, when all of its hours are alike but for the sun", () => {
    const steady = { temperatureC: 22, actualVaporPressureKilopascals: 1.7, clearnessBeforeSunset: 1 };
    let ofHours = 0;
    let sun = 0;
    for (let hour = 0; hour < 24; hour += 1) {
      const start = { startsAtEpochMilliseconds: Date.UTC(2026, 6, 6, 6 + hour) };
      const solarRadiation = clearSkyRadiation(
        noon.elevationMeters,
        result({ ...start, ...steady, solarRadiation: 0 }).extraterrestrialRadiation,
      );
      ofHours += result({ ...start, ...steady, solarRadiation }).evapotranspirationMillimeters;
      sun += solarRadiation;
    }
    const ofDay = valueOf(
      dailyReferenceEvapotranspiration(
        {
          ...noon,
          date: day("2026-07-06"),
          minimumTemperatureC: 22,
          maximumTemperatureC: 22,
          actualVaporPressureKilopascals: 1.7,
          solarRadiation: sun,
          clearSkyFrom: "elevation",
        },
        "fao-56",
      ),
    );
    expect(Math.abs(ofHours / ofDay.evapotranspirationMillimeters - 1)).toBeLessThan(0.1);
  });
  test.each([
    ["startsAtEpochMilliseconds", Number.NaN],
    ["longitudeDegrees", 181],
    ["clearnessBeforeSunset", 1.1],
    ["temperatureC", 100],
    ["solarRadiation", -1],
    ["startsAtEpochMilliseconds", 8e15],
    ["latitudeDegrees", 91],
    ["windMetersPerSecond", 1.7e308],
  ])("refuses %s of %d", (field, value) => {
    expect(refusalOf(hourlyReferenceEvapotranspiration({ ...noon, [field]: value }, "fao-56")).field).toBe(field);
  });
  test("watts typed as MJ, sun at night, and vapor beyond saturation are refused with the range", () => {
    const refused = (change: object) => refusalOf(hourlyReferenceEvapotranspiration({ ...noon, ...change }, "fao-56"));
    const { extraterrestrialRadiation } = result({});
    const most = (Math.ceil((extraterrestrialRadiation + 0.3) * 100) / 100).toString();
    expect(refused({ solarRadiation: 500 })).toMatchObject({ field: "solarRadiation", found: "500 MJ/m2", allowed: `from 0 to ${most} MJ/m2` });
    expect(refused({ ...atUtcHour(6), solarRadiation: 1 })).toMatchObject({ field: "solarRadiation", allowed: "from 0 to 0.3 MJ/m2" });
    expect(refused({ temperatureC: 20, actualVaporPressureKilopascals: 2.5 })).toMatchObject({
      field: "actualVaporPressureKilopascals",
      found: "2.5 kPa",
      allowed: "from 0 to 2.34 kPa",
    });
  });
});
