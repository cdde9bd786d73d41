import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type ReferenceDay,
  dailyReferenceEvapotranspiration,
  hargreavesEvapotranspirationMillimeters,
  hargreavesMillimeters,
} from "#domain/turf/evapotranspiration";
import { day, refusalOf, valueOf } from "../../support/domain-answers";
import { between } from "../../support/real-numbers";

const summer: ReferenceDay = {
  date: day("2026-07-06"),
  latitudeDegrees: 40,
  elevationMeters: 200,
  minimumTemperatureC: 16,
  maximumTemperatureC: 29,
  actualVaporPressureKilopascals: 1.7,
  solarRadiation: 25,
  clearSkyFrom: "elevation",
  windMetersPerSecond: 2,
  windHeightMeters: 2,
};
const millimeters = (change: Partial<ReferenceDay>, surface: "fao-56" | "asce-short" | "asce-tall" = "fao-56") =>
  valueOf(dailyReferenceEvapotranspiration({ ...summer, ...change }, surface)).evapotranspirationMillimeters;

describe("a day's reference evapotranspiration", () => {
  test("is some millimeters in summer, more for the tall reference", () => {
    expect(millimeters({})).toBeGreaterThan(4);
    expect(millimeters({})).toBeLessThan(7);
    expect(millimeters({}, "asce-tall")).toBeGreaterThan(millimeters({}, "asce-short"));
  });
  test("rises with radiation and falls with humidity", () => {
    fc.assert(
      fc.property(between(5, 28), between(0.5, 1.7), (solarRadiation, vaporPressure) => {
        const base = { solarRadiation, actualVaporPressureKilopascals: vaporPressure };
        expect(millimeters({ ...base, solarRadiation: solarRadiation + 1 })).toBeGreaterThan(millimeters(base));
        expect(millimeters({ ...base, actualVaporPressureKilopascals: vaporPressure + 0.1 })).toBeLessThan(
          millimeters(base) + 0.05,
        );
      }),
    );
  });
  test("shows its steps: net radiation is shortwave less longwave, and soil heat is none", () => {
    const result = valueOf(dailyReferenceEvapotranspiration(summer, "fao-56"));
    expect(result.netRadiation).toBe(result.netShortwaveRadiation - result.netLongwaveRadiation);
    expect(result.soilHeatFlux).toBe(0);
    expect(result.meanTemperatureC).toBe(22.5);
    expect(result.surface).toBe("fao-56");
  });
  test("more sun than a clear sky gives counts as a clear sky", () => {
    const beyond = valueOf(dailyReferenceEvapotranspiration({ ...summer, solarRadiation: 40 }, "fao-56"));
    const clear = valueOf(
      dailyReferenceEvapotranspiration({ ...summer, solarRadiation: beyond.clearSkyRadiation }, "fao-56"),
    );
    expect(beyond.netLongwaveRadiation).toBe(clear.netLongwaveRadiation);
  });
  test("the two clear skies differ a little", () => {
    const one = millimeters({ clearSkyFrom: "elevation" });
    const other = millimeters({ clearSkyFrom: "elevation-and-humidity" });
    expect(one).not.toBe(other);
    expect(Math.abs(one - other)).toBeLessThan(0.2);
  });
  test.each([
    ["a lowest above the highest", { minimumTemperatureC: 30 }, "minimumTemperatureC"],
    ["no lowest", { minimumTemperatureC: Number.NaN }, "minimumTemperatureC"],
    ["negative sun", { solarRadiation: -1 }, "solarRadiation"],
    ["a latitude that is none", { latitudeDegrees: 91 }, "latitudeDegrees"],
    ["the polar night", { latitudeDegrees: -80 }, "latitudeDegrees"],
    ["a day that the calendar does not have", { date: "2026-13-45" as ReferenceDay["date"] }, "date"],
  ])("refuses %s", (_, change, field) => {
    expect(refusalOf(dailyReferenceEvapotranspiration({ ...summer, ...change }, "fao-56")).field).toBe(field);
  });
});

describe("readings in another unit", () => {
  const uccle = { ...summer, latitudeDegrees: 50.8, minimumTemperatureC: 12.3, maximumTemperatureC: 21.5, actualVaporPressureKilopascals: 1.409 };
  const refused = (change: Partial<ReferenceDay>) => refusalOf(dailyReferenceEvapotranspiration({ ...uccle, ...change }, "fao-56"));
  test("vapor beyond saturation (FAO-56 Eq. 12: 2.00 kPa between 12.3 and 21.5 °C) is refused with the range", () => {
    expect(refused({ actualVaporPressureKilopascals: 5 })).toMatchObject({ field: "actualVaporPressureKilopascals", found: "5 kPa", allowed: "from 0 to 2 kPa" });
  });
  test("674 langleys as MJ are refused: 41.1 MJ reach the top of the atmosphere (FAO-56, example 18: Ra 41.09)", () => {
    expect(refused({ solarRadiation: 674 })).toMatchObject({ field: "solarRadiation", found: "674 MJ/m2", allowed: "from 0 to 42.09 MJ/m2" });
  });
  test("a wind beyond a hurricane is refused", () => {
    expect(refused({ windMetersPerSecond: 1.7e308 })).toMatchObject({ field: "windMetersPerSecond", allowed: "from 0 to 60 m/s" });
  });
});

describe("Hargreaves", () => {
  const from = { date: day("2026-07-06"), latitudeDegrees: 40, minimumTemperatureC: 16, maximumTemperatureC: 29 };
  test("is near Penman-Monteith on an ordinary summer day", () => {
    expect(Math.abs(valueOf(hargreavesEvapotranspirationMillimeters(from)) - millimeters({}))).toBeLessThan(1.5);
  });
  test("is never negative, none without a spread, and rises with it", () => {
    fc.assert(
      fc.property(between(-60, 40), between(0, 20), (minimumTemperatureC, spread) => {
        const at = (degrees: number) =>
          valueOf(
            hargreavesEvapotranspirationMillimeters({
              ...from,
              minimumTemperatureC,
              maximumTemperatureC: minimumTemperatureC + degrees,
            }),
          );
        expect(at(spread)).toBeGreaterThanOrEqual(0);
        expect(at(0)).toBe(0);
        expect(at(spread + 1)).toBeGreaterThanOrEqual(at(spread));
      }),
    );
  });
  test("takes a mean of its own where one was measured", () => {
    const spread = { minimumTemperatureC: 28, maximumTemperatureC: 38 };
    expect(() => hargreavesMillimeters({ minimumTemperatureC: 20, maximumTemperatureC: 10 }, 40)).toThrow();
    expect(() => hargreavesMillimeters(spread, Number.NaN)).toThrow();
    expect(hargreavesMillimeters({ ...spread, meanTemperatureC: 35 }, 40)).toBeGreaterThan(
      hargreavesMillimeters(spread, 40),
    );
  });
  test.each([
    ["a lowest above the highest", { minimumTemperatureC: 30 }, "minimumTemperatureC"],
    ["a latitude that is none", { latitudeDegrees: -91 }, "latitudeDegrees"],
    ["no highest", { maximumTemperatureC: Number.NaN }, "maximumTemperatureC"],
    ["a day that the calendar does not have", { date: "2026-13-45" as ReferenceDay["date"] }, "date"],
  ])("refuses %s", (_, change, field) =>
    expect(refusalOf(hargreavesEvapotranspirationMillimeters({ ...from, ...change })).field).toBe(field),
  );
});
