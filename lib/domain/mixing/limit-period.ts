import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding, takeCare } from "#domain/foundation/finding";
import { type SeasonLimit } from "#domain/label/label-facts";
import { monthsBefore } from "#domain/rules/nutrient-law";
import { type PastApplication } from "#domain/mixing/ticket-question";

/** The stretch of time in which a limit over time is counted. */
export type CountedPeriod = "calendar-year" | "12-months";

/**
 * What lies at most a year before or after a day: no stretch of any period that has the day in it reaches farther, so
 * that what is counted does not grow with the years that are on file. Days of the same date a year away are in.
 */
export function withinAYearOf<Past extends Pick<PastApplication, "on">>(history: readonly Past[], on: CalendarDate): readonly Past[] {
  const [year, dayOfYear] = [Number(on.slice(0, 4)), on.slice(4)];
  const [earliest, latest] = [`${String(year - 1)}${dayOfYear}`, `${String(year + 1)}${dayOfYear}`];
  return history.filter((past) => past.on >= earliest && past.on <= latest);
}

/**
 * What was put down in each stretch of the period that has the day in it: one calendar year, or any 12 months. Twelve
 * months are over on the day of the same date. Common practice.
 */
export function periodsAround<Past extends Pick<PastApplication, "on">>(period: CountedPeriod, history: readonly Past[], on: CalendarDate): readonly (readonly Past[])[] {
  if (period === "calendar-year") return [history.filter((past) => past.on.slice(0, 4) === on.slice(0, 4))];
  // Twelve months are over on the day of the same date: April 14 counts with the next April 13.
  const dated = withinAYearOf(history, on).map((past) => ({ past, overSince: monthsBefore(past.on, 12) }));
  const yearBefore = monthsBefore(on, 12);
  const begins = new Set([on, ...dated.map(({ past }) => past.on)].filter((day) => day <= on && day > yearBefore));
  return [...begins].map((begin) => dated.filter(({ past, overSince }) => begin <= past.on && begin > overSince).map(({ past }) => past));
}

/** The stretches of time that a limit's own period may mean: a season without dates is held against both. */
export function periodsMeantBy(period: SeasonLimit["period"]): readonly CountedPeriod[] {
  return period === "season" ? ["calendar-year", "12-months"] : [period];
}

/** "calendar year", "12 months". */
export function periodWords(period: CountedPeriod): string {
  return period === "calendar-year" ? "calendar year" : "12 months";
}

/**
 * What a limit says in its period. A season without dates says what the calendar year does, and with care what only the
 * 12 months do: the growing season lies within a year, and a label may mean either.
 */
export function inPeriodOf(period: SeasonLimit["period"], findingsIn: (period: CountedPeriod) => readonly Finding[]): readonly Finding[] {
  if (period !== "season") return findingsIn(period);
  const inYear = findingsIn("calendar-year");
  return [...inYear, ...findingsIn("12-months").filter(({ rule }) => !inYear.some((found) => found.rule === rule)).map(withCare)];
}

/** Over the 12 months alone nobody can say that a season was passed, but the label may mean just that. */
function withCare({ rule, source, what, figure, citation, about }: Finding): Finding {
  return takeCare({
    rule,
    source,
    what,
    ...(figure === undefined ? {} : { figure: `${figure} It names a season or a year without dates; in the calendar year alone it is not so.` }),
    ...(citation === undefined ? {} : { citation }),
    toDo: "Read what the label means by it, and wait where it is not over.",
    about,
  });
}
