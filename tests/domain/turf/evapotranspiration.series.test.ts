import { describe, expect, test } from "vitest";
import { hargreavesEvapotranspirationMillimeters } from "#domain/turf/evapotranspiration";
import { day, valueOf } from "../../support/domain-answers";
import { SEATTLE, seattleDays } from "../../support/seattle-weather";

/** Hargreaves once more: the day's radiation as a sum over minutes of the sun's height, not by the closed formula. */
function plainHargreaves(date: string, latitudeDegrees: number, minimumC: number, maximumC: number): number {
  const [year = 0, month = 0, dayOfMonth = 0] = date.split("-").map(Number);
  const isLeap = year % 4 === 0;
  const lengths = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const dayNumber = lengths.slice(0, month - 1).reduce((sum, length) => sum + length, 0) + dayOfMonth;
  const turn = (2 * Math.PI * dayNumber) / 365;
  const declination = 0.409 * Math.sin(turn - 1.39);
  const latitude = (latitudeDegrees / 180) * Math.PI;
  let joules = 0;
  for (let minute = 0; minute < 1440; minute += 1) {
    const angle = ((minute + 0.5 - 720) / 720) * Math.PI;
    const height =
      Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.cos(angle);
    if (height > 0) joules += 0.082 * (1 + 0.033 * Math.cos(turn)) * height;
  }
  return Math.max(0, 0.0023 * (minimumC / 2 + maximumC / 2 + 17.8) * (maximumC - minimumC) ** 0.5 * joules * 0.408);
}

describe("Hargreaves over a real series, against a second implementation", () => {
  test("every day of four years to a hundredth of a millimeter, and their sums", () => {
    let sum = 0;
    let plainSum = 0;
    for (const { date, minimumC, maximumC } of seattleDays) {
      const reading = {
        date: day(date),
        latitudeDegrees: SEATTLE.latitudeDegrees,
        minimumTemperatureC: minimumC,
        maximumTemperatureC: maximumC,
      };
      const answer = valueOf(hargreavesEvapotranspirationMillimeters(reading));
      const plain = plainHargreaves(date, SEATTLE.latitudeDegrees, minimumC, maximumC);
      expect(Math.abs(answer - plain)).toBeLessThan(0.01);
      sum += answer;
      plainSum += plain;
    }
    expect(Math.abs(sum - plainSum) / plainSum).toBeLessThan(0.0001);
    // Some 2 to 3 ft of water a year.
    expect(sum / 4).toBeGreaterThan(600);
    expect(sum / 4).toBeLessThan(1000);
  });
});
