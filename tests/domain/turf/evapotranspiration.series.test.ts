import { describe, expect, test } from "vitest";
import { dailyReferenceEvapotranspiration, hargreavesEvapotranspirationMillimeters } from "#domain/turf/evapotranspiration";
import { extraterrestrialRadiation, radiationFromTemperatures } from "#domain/turf/solar-radiation";
import { vaporPressureFromDewPointKilopascals } from "#domain/turf/vapor-pressure";
import { day, valueOf } from "../../support/domain-answers";
import { plainVaporPressure, type WeatherDay, type WeatherPlace, weatherPlaces } from "../../support/daily-weather";

/** The number of the day in its year, plainly. */
function plainDayNumber(date: string): number {
  const [year = 0, month = 0, dayOfMonth = 0] = date.split("-").map(Number);
  const lengths = [31, year % 4 === 0 ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  return lengths.slice(0, month - 1).reduce((sum, length) => sum + length, 0) + dayOfMonth;
}

/** The day's radiation above the air in MJ per m2, as a sum over minutes of the sun's height, not by the closed formula. */
function plainRadiation(date: string, latitudeDegrees: number): number {
  const turn = (2 * Math.PI * plainDayNumber(date)) / 365;
  const declination = 0.409 * Math.sin(turn - 1.39);
  const latitude = (latitudeDegrees / 180) * Math.PI;
  let joules = 0;
  for (let minute = 0; minute < 1440; minute += 1) {
    const angle = ((minute + 0.5 - 720) / 720) * Math.PI;
    const height = Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.cos(angle);
    if (height > 0) joules += 0.082 * (1 + 0.033 * Math.cos(turn)) * height;
  }
  return joules;
}

/** Hargreaves once more. */
function plainHargreaves({ date, minimumC, maximumC }: WeatherDay, { latitudeDegrees }: WeatherPlace): number {
  const radiation = plainRadiation(date, latitudeDegrees) * 0.408;
  return Math.max(0, 0.0023 * (minimumC / 2 + maximumC / 2 + 17.8) * (maximumC - minimumC) ** 0.5 * radiation);
}

/** Penman-Monteith once more, with radiation from temperatures and dew at the lowest, as FAO-56 fills what is not measured. */
function plainPenmanMonteith(weather: WeatherDay, { latitudeDegrees, elevationMeters }: WeatherPlace): number {
  const { minimumC, maximumC, windMetersPerSecond } = weather;
  const mean = (minimumC + maximumC) / 2;
  const dew = plainVaporPressure(minimumC);
  const full = (plainVaporPressure(minimumC) + plainVaporPressure(maximumC)) / 2;
  const above = plainRadiation(weather.date, latitudeDegrees);
  const arriving = 0.16 * (maximumC - minimumC) ** 0.5 * above;
  const cloudless = (0.75 + elevationMeters / 50_000) * above;
  const warmth = ((minimumC + 273.16) ** 4 + (maximumC + 273.16) ** 4) / 2;
  const clear = Math.min(1, arriving / cloudless);
  const leaving = 4.903e-9 * warmth * (0.34 - 0.14 * dew ** 0.5) * (1.35 * clear - 0.35);
  const net = 0.77 * arriving - leaving;
  const slope = (4098 * plainVaporPressure(mean)) / (mean + 237.3) ** 2;
  const gamma = 0.000665 * 101.3 * ((293 - 0.0065 * elevationMeters) / 293) ** 5.26;
  const wind = (windMetersPerSecond * 4.87) / Math.log(67.8 * 10 - 5.42);
  return (0.408 * slope * net + (gamma * 900 * wind * (full - dew)) / (mean + 273)) / (slope + gamma * (1 + 0.34 * wind));
}

describe.each(weatherPlaces)("reference evapotranspiration over four years of $name, against a second implementation", (place) => {
  test("Hargreaves: every day to a hundredth of a millimeter, and the sum", () => {
    let sum = 0;
    let plainSum = 0;
    for (const weather of place.days) {
      const answer = valueOf(hargreavesEvapotranspirationMillimeters({
        date: day(weather.date),
        latitudeDegrees: place.latitudeDegrees,
        minimumTemperatureC: weather.minimumC,
        maximumTemperatureC: weather.maximumC,
      }));
      const plain = plainHargreaves(weather, place);
      expect(Math.abs(answer - plain)).toBeLessThan(0.01);
      sum += answer;
      plainSum += plain;
    }
    expect(Math.abs(sum - plainSum) / plainSum).toBeLessThan(0.0001);
    // Some 2 to 4 ft of water a year.
    expect(sum / 4).toBeGreaterThan(600);
    expect(sum / 4).toBeLessThan(1200);
  });

  test("Penman-Monteith with what FAO-56 fills in: every day to a hundredth of a millimeter", () => {
    for (const weather of place.days) {
      const { minimumC: minimumTemperatureC, maximumC: maximumTemperatureC, windMetersPerSecond } = weather;
      const date = day(weather.date);
      const above = extraterrestrialRadiation(place.latitudeDegrees, plainDayNumber(weather.date));
      const answer = valueOf(dailyReferenceEvapotranspiration({
        date, latitudeDegrees: place.latitudeDegrees, elevationMeters: place.elevationMeters, minimumTemperatureC, maximumTemperatureC,
        actualVaporPressureKilopascals: vaporPressureFromDewPointKilopascals(minimumTemperatureC),
        solarRadiation: radiationFromTemperatures(minimumTemperatureC, maximumTemperatureC, above, 0.16),
        clearSkyFrom: "elevation", windMetersPerSecond, windHeightMeters: 10,
      }, "fao-56"));
      expect(Math.abs(answer.evapotranspirationMillimeters - plainPenmanMonteith(weather, place))).toBeLessThan(0.01);
    }
  });
});
