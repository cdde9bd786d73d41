import { describe, expect, test } from "vitest";
import { PUBLISHED_DEGREE_DAY_WINDOWS } from "#domain/turf/degree-day-windows";
import { type DegreeDayMethod, openingLine, sumDegreeDays } from "#domain/turf/degree-days";
import { day, valueOf } from "../../support/domain-answers";
import { SEATTLE, type WeatherDay, weatherPlaces } from "../../support/daily-weather";

const inCelsius = (days: readonly WeatherDay[]) => ({
  scale: "celsius" as const,
  days: days.map(({ date, minimumC, maximumC }) => ({ date: day(date), minimumDegrees: minimumC, maximumDegrees: maximumC })),
});

/** The methods once more, in whole thousandths of a degree Fahrenheit and with no branch in common. */
function plainSum(
  days: readonly WeatherDay[],
  kind: DegreeDayMethod["kind"],
  baseF: number,
  cutF: number,
  from: string,
  through: string,
): { total: number; dates: string[]; totals: number[] } {
  let total = 0;
  const dates: string[] = [];
  const totals: number[] = [];
  for (const { date, minimumC, maximumC } of days) {
    if (date < from || date > through) continue;
    let low = Math.round(minimumC * 1800 + 32000);
    let high = Math.round(maximumC * 1800 + 32000);
    const base = baseF * 1000;
    let twice;
    if (kind === "reset") {
      low = low < base ? base : low > cutF * 1000 ? cutF * 1000 : low;
      high = high < base ? base : high > cutF * 1000 ? cutF * 1000 : high;
      twice = low + high - 2 * base;
    } else if (kind === "simple-average") {
      twice = low + high > 2 * base ? low + high - 2 * base : 0;
    } else if (high <= base) twice = 0;
    else if (low >= base) twice = low + high - 2 * base;
    else twice = low + high > 2 * base ? high - base - (base - low) / 2 : (high - base) / 2;
    total += twice;
    dates.push(date);
    totals.push(total / 2000);
  }
  return { total: total / 2000, dates, totals };
}

describe.each(weatherPlaces)("degree days over four years of $name, against a second implementation", ({ days }) => {
  const celsius = inCelsius(days);
  const periods = [
    ["2012-02-15", "2012-12-31"],
    ["2013-01-01", "2013-06-30"],
    ["2012-01-01", "2015-12-31"],
  ] as const;
  const methods = [
    ["simple-average", 32, undefined],
    ["simple-average", 50, undefined],
    ["reset", 50, 86],
    ["reset", 41, undefined],
    ["met-eireann", 50, undefined],
  ] as const;
  test("the series has all its days", () => expect(days).toHaveLength(1461));
  test.each(
    periods.flatMap(([from, through]) => methods.map(([kind, baseF, cutF]) => ({ from, through, kind, baseF, cutF }))),
  )("$kind, base $baseF, cut $cutF, $from through $through", ({ from, through, kind, baseF, cutF }) => {
    const base = { scale: "fahrenheit" as const, baseDegrees: baseF };
    const method: DegreeDayMethod =
      kind === "reset" && cutF !== undefined ? { kind, ...base, upperCutDegrees: cutF } : { kind, ...base };
    const sum = valueOf(sumDegreeDays(method, celsius, { from: day(from), through: day(through) }));
    const plain = plainSum(days, kind, baseF, cutF ?? 1000, from, through);
    expect(Math.abs(sum.totalDegreeDays - plain.total)).toBeLessThan(1e-6);
    expect(sum.lines.map(({ date }) => date)).toEqual(plain.dates);
    for (const threshold of [70, 140, 200, 250, 500, 1000]) {
      expect(openingLine(sum, threshold)?.date).toBe(
        plain.dates[plain.totals.findIndex((total) => total >= threshold)],
      );
    }
  });
});

test("the crabgrass window of 2013 in Seattle opens in spring and closes before summer", () => {
  const { method, opensAtDegreeDays, closesAtDegreeDays } = PUBLISHED_DEGREE_DAY_WINDOWS.crabgrassPreEmergent;
  const sum = valueOf(sumDegreeDays(method, inCelsius(SEATTLE.days), { from: day("2013-02-15"), through: day("2013-06-30") }));
  const plain = plainSum(SEATTLE.days, "simple-average", 32, 1000, "2013-02-15", "2013-06-30");
  expect(openingLine(sum, opensAtDegreeDays)?.date).toBe(
    plain.dates[plain.totals.findIndex((total) => total >= 250)],
  );
  expect(openingLine(sum, closesAtDegreeDays)?.date).toBe(
    plain.dates[plain.totals.findIndex((total) => total >= 500)],
  );
  expect(openingLine(sum, opensAtDegreeDays)?.date.slice(0, 7)).toBe("2013-03");
});
