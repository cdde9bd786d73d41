import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type DatePeriod } from "#domain/turf/daily-series";
import { type DayTemperatures } from "#domain/turf/day-temperatures";
import { type TemperatureScale } from "#domain/turf/temperature-scale";
import { calendarDayOf, dayOf } from "#application/stored-day";
import { type Work } from "#application/use-case";

/** A day as it stands now, with the entry that it stands by. */
export interface KeptDay extends DayTemperatures {
  /** How many entries there were for this day, this one included. */
  readonly entryNumber: number;
  readonly figuresFrom: string;
  readonly enteredAt: Date;
  readonly enteredBy: string;
}

interface StoredDay {
  readonly date: Date;
  readonly scale: string;
  readonly highTenths: number;
  readonly lowTenths: number;
}

/** A stored day's figures as the domain knows them. */
export function dayOfRow({ date, scale, highTenths, lowTenths }: StoredDay): DayTemperatures {
  // The column's check knows these two scales only.
  return { date: calendarDayOf(date), scale: scale as TemperatureScale, highTenths, lowTenths };
}

/** The source by which the company's curves are drawn, or null while none is kept. */
export async function sourceInUse({ tx, company: { companyId } }: Work): Promise<string | null> {
  const row = await tx.company.findUniqueOrThrow({ where: { companyId }, select: { temperatureSource: true } });
  return row.temperatureSource;
}

/** What a source has of a period, in order of time: of each day the latest entry, because that is the one that counts. */
export async function keptTemperatures({ tx, company: { companyId } }: Work, source: string, { from, through }: DatePeriod): Promise<readonly KeptDay[]> {
  const rows = await tx.dailyTemperature.findMany({
    where: { companyId, source, date: { gte: dayOf(from), lte: dayOf(through) } },
    orderBy: [{ date: "asc" }, { entryNumber: "asc" }],
  });
  const people = await tx.person.findMany({ where: { companyId, personId: { in: [...new Set(rows.map(({ personId }) => personId))] } }, select: { personId: true, name: true } });
  const nameOf = new Map(people.map(({ personId, name }) => [personId, name]));
  const latest = new Map<CalendarDate, KeptDay>();
  for (const row of rows) {
    const { entryNumber, figuresFrom, enteredAt, personId } = row;
    const day = dayOfRow(row);
    latest.set(day.date, { ...day, entryNumber, figuresFrom, enteredAt, enteredBy: nameOf.get(personId) ?? "" });
  }
  return [...latest.values()];
}
