import { addDays, type CalendarDate, daysBetween, parseCalendarDate } from "#domain/foundation/calendar-date";
import { invariant } from "#domain/foundation/invariant";
import { type DatePeriod, gapsIn } from "#domain/turf/daily-series";
import { dayMeanC, type DayTemperatures } from "#domain/turf/day-temperatures";

/**
 * A month's mean stands while no more than this many of its days are missing, in all and in a row; else the month has none.
 * Source: Utah Climate Center, help on normals (https://climate.usu.edu/help.php?s=general&ss=norm), quoting the World
 * Meteorological Organization's rule: more than 3 in a row or more than 5 in all, and the mean is not computed.
 */
export const MOST_MISSING_DAYS = { inAll: 5, inARow: 3 } as const;

/** One month of a year as its kept days have it. */
export interface MonthOfDays {
  /** 1 for January. */
  readonly month: number;
  readonly daysKept: number;
  readonly daysOfMonth: number;
  /** The stretches of days that are missing. */
  readonly gaps: readonly DatePeriod[];
}

/** A month's mean air temperature in °C, or that too many of its days are missing for one. */
export type MonthTemperature = (MonthOfDays & { readonly kind: "mean"; readonly meanTemperatureC: number }) | (MonthOfDays & { readonly kind: "too-few-days" });

/** The days of a year, from January 1 through December 31. Throws outside the years 1900 to 2199. */
export function yearPeriod(year: number): DatePeriod {
  return { from: dateOf(`${String(year)}-01-01`), through: dateOf(`${String(year)}-12-31`) };
}

function dateOf(text: string): CalendarDate {
  const read = parseCalendarDate("date", text);
  invariant(read.ok, `${text} is a day of the calendar`);
  return read.value;
}

function monthPeriod(year: number, month: number): DatePeriod {
  const firstOf = (index: number) => dateOf(`${String(year + Math.floor(index / 12))}-${String((index % 12) + 1).padStart(2, "0")}-01`);
  return { from: firstOf(month - 1), through: addDays(firstOf(month), -1) };
}

/**
 * The mean air temperature of each month of a year, January first, over the days that are kept of it, in order of time:
 * the mean of the days' means. A month of which too many days are missing has no mean, and no other month stands for
 * it. Throws outside the years 1900 to 2198.
 */
export function monthTemperatures(days: readonly DayTemperatures[], year: number): readonly MonthTemperature[] {
  return Array.from({ length: 12 }, (_none, index) => monthTemperature(days, monthPeriod(year, index + 1), index + 1));
}

function monthTemperature(days: readonly DayTemperatures[], period: DatePeriod, month: number): MonthTemperature {
  const own = days.filter(({ date }) => date >= period.from && date <= period.through);
  const gaps = gapsIn(own, period);
  const daysOfMonth = daysBetween(period.from, period.through) + 1;
  const facts = { month, daysKept: own.length, daysOfMonth, gaps };
  const longest = Math.max(0, ...gaps.map(({ from, through }) => daysBetween(from, through) + 1));
  if (daysOfMonth - own.length > MOST_MISSING_DAYS.inAll || longest > MOST_MISSING_DAYS.inARow) return { kind: "too-few-days", ...facts };
  return { kind: "mean", ...facts, meanTemperatureC: own.reduce((sum, day) => sum + dayMeanC(day), 0) / own.length };
}
