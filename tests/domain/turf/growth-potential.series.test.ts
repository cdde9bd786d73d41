import { describe, expect, test } from "vitest";
import { growthPotential, overseedingInflection } from "#domain/turf/growth-potential";
import { day, valueOf } from "../../support/domain-answers";
import { SEATTLE, type WeatherDay, weatherPlaces } from "../../support/daily-weather";

const meansOf = (days: readonly WeatherDay[]) => days.map(({ date, minimumC, maximumC }) => ({ date: day(date), meanTemperatureC: (minimumC + maximumC) / 2 }));

/** The curves once more, by powers and in °F of spread. */
function plainGrowth(isWarmSeason: boolean, meanC: number): number {
  if (isWarmSeason && meanC >= 31) return 1;
  const distanceF = (meanC - (isWarmSeason ? 31 : 20)) * 1.8;
  const spreadF = isWarmSeason ? 12.6 : 9.9;
  return Math.E ** -((distanceF * distanceF) / (2 * spreadF * spreadF));
}

describe.each(weatherPlaces)("growth potential over four years of $name, against a second implementation", ({ days }) => {
  const series = meansOf(days);
  test.each(["cool-season", "warm-season"] as const)("%s, day by day and over the years", (season) => {
    let sum = 0;
    let plainSum = 0;
    for (const { meanTemperatureC } of series) {
      const share = valueOf(growthPotential(season, meanTemperatureC));
      const plain = plainGrowth(season === "warm-season", meanTemperatureC);
      expect(Math.abs(share - plain)).toBeLessThan(1e-12);
      sum += share;
      plainSum += plain;
    }
    expect(series).toHaveLength(1461);
    expect(sum).toBeCloseTo(plainSum, 8);
  });
});

// Seattle is too cool for warm-season grass; 10 °C more make its fall one of the transition zone.
test.each([2012, 2013, 2014, 2015])("the overseeding inflection of %d, were it 10 °C warmer", (year) => {
  const warmer = meansOf(SEATTLE.days).map(({ date, meanTemperatureC }) => ({ date, meanTemperatureC: meanTemperatureC + 10 }));
  const period = { from: day(`${year}-08-01`), through: day(`${year}-12-31`) };
  let running = 0;
  const sums = warmer
    .filter(({ date }) => date >= period.from && date <= period.through)
    .map(({ date, meanTemperatureC }) => {
      running += plainGrowth(false, meanTemperatureC) - plainGrowth(true, meanTemperatureC);
      return { date, running };
    });
  const least = sums.reduce((one, other) => (other.running < one.running ? other : one));
  const answer = valueOf(overseedingInflection(warmer, period));
  expect(answer).toMatchObject({ kind: "found", date: least.date });
  expect(least.date > `${year}-09-01`).toBe(true);
});
