import { calendarDateIn } from "#domain/foundation/calendar-date";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type DatePeriod, gapsIn } from "#domain/turf/daily-series";
import { type BesideKept, besideKept, type DayTemperatures, temperaturesToKeep } from "#domain/turf/day-temperatures";
import { type DailyExtremes } from "#domain/turf/degree-days";
import { readPastedDays } from "#domain/worksheets/pasted-days";
import { badField, type UseCaseRefusal } from "#application/refusal";
import { type TemperaturesForm } from "#application/temperatures/keep-temperatures.schema";
import { keptTemperatures, type KeptDay, sourceInUse } from "#application/temperatures/kept-temperatures";
import { type Work } from "#application/use-case";

/** Pasted days, read and held against what is kept, before anything is written. */
export interface TemperaturesToWrite extends BesideKept {
  readonly source: string;
  readonly figuresFrom: string;
  /** All that were pasted, in order of time. */
  readonly given: readonly DayTemperatures[];
  readonly period: DatePeriod;
  /** What is missing within the period once these are written. */
  readonly gaps: readonly DatePeriod[];
  /** What the source has of the period now. */
  readonly kept: readonly KeptDay[];
  /** The source that curves are drawn by, or null where these would be the first days of all. */
  readonly inUse: string | null;
}

/** Reads what was pasted and holds it against the days kept of the source; writes nothing. Refused at the field "days". */
export async function temperaturesToWrite(work: Work, { source, figuresFrom, scale, days: pasted }: TemperaturesForm): Promise<Outcome<TemperaturesToWrite, UseCaseRefusal>> {
  const read = readPastedDays("days", pasted, scale);
  if (!read.ok) return badField("days", read.refusal.sentence);
  const dated = read.value.flatMap(({ date, ...extremes }): readonly DailyExtremes[] => (date === undefined ? [] : [{ date, ...extremes }]));
  if (dated.length < read.value.length) return badField("days", "A line has no date. Write every day as date, high, low.");
  const given = temperaturesToKeep(dated, scale, calendarDateIn(work.company.timeZone, work.now.getTime()));
  if (!given.ok) return badField("days", given.refusal.sentence);
  const [first, last] = [given.value[0], given.value.at(-1)];
  if (first === undefined || last === undefined) return badField("days", "Give the days, one to a line: date, high, low.");
  const period = { from: first.date, through: last.date };
  const kept = await keptTemperatures(work, source, period);
  const beside = besideKept(given.value, kept);
  const all = [...new Map([...kept, ...given.value].map((day) => [day.date, day])).values()].toSorted((one, other) => (one.date < other.date ? -1 : 1));
  return accept({ source, figuresFrom, given: given.value, period, gaps: gapsIn(all, period), kept, inUse: await sourceInUse(work), ...beside });
}
