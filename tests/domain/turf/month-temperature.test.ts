import { describe, expect, test } from "vitest";
import { addDays, daysBetween } from "#domain/foundation/calendar-date";
import { type DayTemperatures } from "#domain/turf/day-temperatures";
import { MOST_MISSING_DAYS, monthTemperatures, yearPeriod } from "#domain/turf/month-temperature";

/** Every day of a year, its high 10 °C above and its low at the number of its month. */
function wholeYear(year: number): readonly DayTemperatures[] {
  const { from, through } = yearPeriod(year);
  return Array.from({ length: daysBetween(from, through) + 1 }, (_none, index) => {
    const date = addDays(from, index);
    const month = Number(date.slice(5, 7));
    return { date, scale: "celsius", highTenths: (month + 10) * 10, lowTenths: month * 10 };
  });
}

const without = (...dates: readonly string[]) => wholeYear(2026).filter(({ date }) => !dates.includes(date));
const april = (...days: readonly number[]) => days.map((day) => `2026-04-${String(day).padStart(2, "0")}`);
const ofApril = (days: readonly DayTemperatures[]) => monthTemperatures(days, 2026)[3];

describe("the mean temperature of months", () => {
  test("is the mean of the days' means, for months of every length", () => {
    const months = monthTemperatures(wholeYear(2026), 2026);
    expect(months.map(({ month }) => month)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(months.map(({ daysOfMonth }) => daysOfMonth)).toEqual([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]);
    for (const each of months) expect(each).toMatchObject({ kind: "mean", daysKept: each.daysOfMonth, gaps: [], meanTemperatureC: expect.closeTo(each.month + 5, 9) as number });
    expect(monthTemperatures(wholeYear(2028), 2028)[1]?.daysOfMonth).toBe(29);
  });

  test("is of the days of its own year only", () => {
    expect(monthTemperatures(wholeYear(2025), 2026).every(({ kind, daysKept }) => kind === "too-few-days" && daysKept === 0)).toBe(true);
  });

  test("days on both scales count alike", () => {
    const days = wholeYear(2026).map((day): DayTemperatures => (day.date === "2026-04-02" ? { ...day, scale: "fahrenheit", highTenths: 572, lowTenths: 392 } : day));
    expect(ofApril(days)).toMatchObject({ kind: "mean", meanTemperatureC: expect.closeTo(9, 9) as number });
  });

  test("stands with five days missing, and with three in a row, and is over the days that are kept", () => {
    const left = without(...april(1, 2, 3, 9, 30)).map((day) => (day.date === "2026-04-10" ? { ...day, highTenths: day.highTenths + 500 } : day));
    expect(ofApril(left)).toMatchObject({
      kind: "mean",
      daysKept: 25,
      meanTemperatureC: expect.closeTo(10, 9) as number,
      gaps: [{ from: "2026-04-01", through: "2026-04-03" }, { from: "2026-04-09", through: "2026-04-09" }, { from: "2026-04-30", through: "2026-04-30" }],
    });
    expect(MOST_MISSING_DAYS).toEqual({ inAll: 5, inARow: 3 });
  });

  test.each([["six in all", april(1, 3, 5, 7, 9, 11)], ["four in a row", april(27, 28, 29, 30)]])("does not stand with %s missing", (_words, missing) => {
    const month = ofApril(without(...missing));
    expect(month).toMatchObject({ kind: "too-few-days", daysKept: 30 - missing.length });
    expect(month).not.toHaveProperty("meanTemperatureC");
  });

  test("a stretch across two months counts in each for its own days", () => {
    const months = monthTemperatures(without("2026-03-29", "2026-03-30", "2026-03-31", ...april(1, 2, 3)), 2026);
    expect([months[2]?.kind, months[3]?.kind]).toEqual(["mean", "mean"]);
  });
});
