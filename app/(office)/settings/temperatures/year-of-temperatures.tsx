import Link from "next/link";
import { type YearOfSource } from "#application/temperatures/read-temperatures";
import { type KeptDay } from "#application/temperatures/kept-temperatures";
import { addDays, type CalendarDate, calendarDateIn, formatShortDate, monthWords } from "#domain/foundation/calendar-date";
import { daysWords } from "#domain/foundation/days-words";
import { type DatePeriod } from "#domain/turf/daily-series";
import { tenthsWords } from "#domain/turf/day-temperatures";
import { MOST_MISSING_DAYS, type MonthTemperature } from "#domain/turf/month-temperature";
import { Disclosure } from "#ui/disclosure";
import { Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { Table, type TableRow } from "#ui/table";
import { Text } from "#ui/text";
import { meanWords, spansWords } from "../temperature-words";

/** Where a year of a source is shown. */
export function yearHref(source: string, year: number): string {
  return `/settings/temperatures?source=${encodeURIComponent(source)}&year=${String(year)}`;
}

const MONTH_COLUMNS = [
  { id: "month", head: "Month" },
  { id: "days", head: "Days kept", align: "figure" },
  { id: "mean", head: "Mean", align: "figure" },
  { id: "missing", head: "Missing" },
] as const;

/** The stretches that are missing, of days that are over: a day to come is not missed yet. */
function missedBefore(today: CalendarDate, gaps: readonly DatePeriod[]): readonly DatePeriod[] {
  const yesterday = addDays(today, -1);
  return gaps.filter(({ from }) => from < today).map(({ from, through }) => ({ from, through: through < yesterday ? through : yesterday }));
}

function monthRow(month: MonthTemperature, today: CalendarDate): TableRow {
  const missing = spansWords(missedBefore(today, month.gaps));
  const mean = month.kind === "mean" ? meanWords(month.meanTemperatureC) : "none, too few days";
  return { id: String(month.month), cells: { month: monthWords(month.month), days: `${String(month.daysKept)} of ${String(month.daysOfMonth)}`, mean, missing } };
}

const DAY_COLUMNS = [
  { id: "day", head: "Day" },
  { id: "high", head: "High", align: "figure" },
  { id: "low", head: "Low", align: "figure" },
  { id: "from", head: "From" },
  { id: "entered", head: "Entered" },
] as const;

function dayRow({ date, scale, highTenths, lowTenths, figuresFrom, entryNumber, enteredAt, enteredBy }: KeptDay, timeZone: string): TableRow {
  const replaces = entryNumber === 1 ? "" : `, replaces ${entryNumber === 2 ? "an entry" : `${String(entryNumber - 1)} entries`}`;
  const entered = `${formatShortDate(calendarDateIn(timeZone, enteredAt.getTime()))}, ${enteredBy}${replaces}`;
  return { id: date, cells: { day: formatShortDate(date), high: tenthsWords(highTenths, scale), low: tenthsWords(lowTenths, scale), from: figuresFrom, entered } };
}

interface Props {
  readonly shown: YearOfSource;
  readonly years: readonly number[];
  readonly timeZone: string;
  readonly today: CalendarDate;
}

/** One year of a source: its months with their means, and behind a word every day. */
export function YearOfTemperatures({ shown: { source, year, months, days }, years, timeZone, today }: Props) {
  const others = years.filter((each) => each !== year);
  return (
    <Section
      id="year"
      name={`${source}, ${String(year)}`}
      aside={others.map((each) => (
        <span key={each}>
          <Link prefetch={false} href={`${yearHref(source, each)}#year`}>
            {each}
          </Link>{" "}
        </span>
      ))}
    >
      <Stack gap={5}>
        <Table caption={`${source} in ${String(year)}, month by month`} captionSpoken columns={MONTH_COLUMNS} rows={months.filter(({ daysKept }) => daysKept > 0).map((month) => monthRow(month, today))} />
        <Text size="small" tone="second">
          A month’s mean is that of its days’ means, each halfway between high and low. It stands while no more than {MOST_MISSING_DAYS.inAll} days are missing, and no more than{" "}
          {MOST_MISSING_DAYS.inARow} in a row: the World Meteorological Organization’s rule as the Utah Climate Center quotes it.
        </Text>
        <Disclosure name={`All ${daysWords(days.length)}`} onPaper="as-left">
          <Table caption={`${source} in ${String(year)}, day by day`} captionSpoken columns={DAY_COLUMNS} rows={days.map((day) => dayRow(day, timeZone))} dense />
        </Disclosure>
      </Stack>
    </Section>
  );
}
