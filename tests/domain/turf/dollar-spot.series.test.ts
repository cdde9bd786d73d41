import { describe, expect, test } from "vitest";
import { DOLLAR_SPOT_THRESHOLD, judgeDollarSpot } from "#domain/turf/dollar-spot";
import { saturationVaporPressureKilopascals, vaporPressureFromDewPointKilopascals } from "#domain/turf/vapor-pressure";
import { plainHumidityPercent, weatherPlaces } from "../../support/daily-weather";
import { day, refusalOf, valueOf } from "../../support/domain-answers";

describe.each(weatherPlaces)("dollar spot over four years of $name, against a second implementation", ({ days }) => {
  const series = days.map(({ date, minimumC, maximumC }) => {
    const meanTemperatureC = (minimumC + maximumC) / 2;
    const share = vaporPressureFromDewPointKilopascals(minimumC) / saturationVaporPressureKilopascals(meanTemperatureC);
    return { date: day(date), meanTemperatureC, meanRelativeHumidityPercent: 100 * share };
  });

  test("every day from the fifth on has the plain probability, or lies outside 10 to 35 °C", () => {
    let favorable = 0;
    let plainFavorable = 0;
    let outside = 0;
    for (const [place, weather] of days.entries()) {
      if (place < 4) continue;
      const five = days.slice(place - 4, place + 1);
      const warmth = five.reduce((sum, { minimumC, maximumC }) => sum + minimumC + maximumC, 0) / 10;
      const damp = five.reduce((sum, each) => sum + plainHumidityPercent(each), 0) / 5;
      const answer = judgeDollarSpot(series, day(weather.date), DOLLAR_SPOT_THRESHOLD);
      if (warmth < 10 || warmth > 35) {
        expect(refusalOf(answer).field).toBe("meanTemperatureC");
        outside += 1;
        continue;
      }
      const odds = Math.exp(-11.4041 + 0.0894 * damp + 0.1932 * warmth);
      expect(Math.abs(valueOf(answer).probability - odds / (1 + odds))).toBeLessThan(1e-9);
      favorable += valueOf(answer).isFavorable ? 1 : 0;
      plainFavorable += odds / (1 + odds) >= 0.2 ? 1 : 0;
    }
    expect(favorable).toBe(plainFavorable);
    // Both cities have winters without the disease and summers with it.
    expect(outside).toBeGreaterThan(300);
    expect(favorable).toBeGreaterThan(100);
    expect(favorable).toBeLessThan(1461 - outside);
  });
});
