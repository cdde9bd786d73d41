import { type CalendarDate } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { accept } from "#domain/foundation/outcome";
import { type DatePeriod, gapsIn } from "#domain/turf/daily-series";
import { type MonthTemperature, monthTemperatures, yearPeriod } from "#domain/turf/month-temperature";
import { calendarDayOf } from "#application/stored-day";
import { keptTemperatures, type KeptDay, sourceInUse } from "#application/temperatures/kept-temperatures";
import { readTemperaturesSchema } from "#application/temperatures/read-temperatures.schema";
import { useCase, type Work } from "#application/use-case";

/** What is kept of one source. */
export interface SourceOnFile {
  readonly source: string;
  readonly isInUse: boolean;
  readonly days: number;
  readonly period: DatePeriod;
  /** What is missing between its first and its last day. */
  readonly gaps: readonly DatePeriod[];
  /** The years of which it has a day, newest first. */
  readonly years: readonly number[];
}

/** One year of one source, with its days in order of time. */
export interface YearOfSource {
  readonly source: string;
  readonly year: number;
  readonly months: readonly MonthTemperature[];
  readonly days: readonly KeptDay[];
}

interface TemperaturesOnFile {
  /** The one in use first. */
  readonly sources: readonly SourceOnFile[];
  readonly shown: YearOfSource | null;
}

/** The daily temperatures that are kept: every source with its gaps, and one year of one of them day by day. */
export const readTemperatures = useCase("temperatures/read-temperatures", readTemperaturesSchema, async (work, asked) => {
  const sources = await sourcesOnFile(work);
  const chosen = sources.find(({ source }) => source === asked.source) ?? sources[0];
  const year = chosen?.years.find((each) => String(each) === asked.year) ?? chosen?.years[0];
  if (chosen === undefined || year === undefined) return accept<TemperaturesOnFile>({ sources, shown: null });
  const { source } = chosen;
  const days = await keptTemperatures(work, source, yearPeriod(year));
  return accept<TemperaturesOnFile>({ sources, shown: { source, year, months: monthTemperatures(days, year), days } });
});

async function sourcesOnFile(work: Work): Promise<readonly SourceOnFile[]> {
  const inUse = await sourceInUse(work);
  const rows = await work.tx.dailyTemperature.findMany({
    where: { companyId: work.company.companyId, entryNumber: 1 },
    select: { source: true, date: true },
    orderBy: [{ source: "asc" }, { date: "asc" }],
  });
  const sources = [...groupedBy(rows, ({ source }) => source)].flatMap(([source, own]) => {
    const [from, ...later] = own.map(({ date }) => calendarDayOf(date));
    return from === undefined ? [] : [sourceOf(source, [from, ...later], inUse)];
  });
  return sources.toSorted((one, other) => Number(other.isInUse) - Number(one.isInUse));
}

function sourceOf(source: string, dates: readonly [CalendarDate, ...CalendarDate[]], inUse: string | null): SourceOnFile {
  const [from] = dates;
  const through = dates.at(-1) ?? from;
  const years = [...new Set(dates.map((date) => Number(date.slice(0, 4))))].toReversed();
  return { source, isInUse: source === inUse, days: dates.length, period: { from, through }, gaps: gapsIn(dates.map((date) => ({ date })), { from, through }), years };
}
