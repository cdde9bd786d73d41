import { type CalendarDate } from "#domain/foundation/calendar-date";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { type Dated } from "#domain/turf/daily-series";
import { type DailyExtremes } from "#domain/turf/degree-days";
import { refuseOutOfRange, temperatureRange } from "#domain/turf/physical-range";
import { convertTemperature, type TemperatureScale, temperatureSign } from "#domain/turf/temperature-scale";

/**
 * The highest and lowest air temperature of a day as they are kept: whole tenths of a degree on the scale on which they
 * were given, so that what is kept is what was read, to the last figure.
 */
export interface DayTemperatures extends Dated {
  readonly scale: TemperatureScale;
  readonly highTenths: number;
  readonly lowTenths: number;
}

/** Temperatures are read to a tenth of a degree; a number beyond a double's last figure is none of the reader's. */
const TENTHS_ERROR = 1e-9;

function inTenths(what: string, date: CalendarDate, degrees: number, scale: TemperatureScale): Outcome<number> {
  const tenths = Math.round(degrees * 10);
  if (Math.abs(degrees * 10 - tenths) <= TENTHS_ERROR) return accept(tenths);
  return badInput("days", `${degrees} ${temperatureSign(scale)}`, "tenths of a degree", `${what} of ${date} is ${degrees} ${temperatureSign(scale)}; temperatures are kept to a tenth of a degree.`);
}

/**
 * A day's extremes as they are kept. Refuses at `days`, by its date, what is no air temperature, what is finer than a
 * tenth of a degree, and a low above its high.
 */
export function dayTemperatures({ date, maximumDegrees, minimumDegrees }: DailyExtremes, scale: TemperatureScale): Outcome<DayTemperatures> {
  const inCelsius = (degrees: number) => convertTemperature(degrees, scale, "celsius");
  const unreadable = refuseOutOfRange([temperatureRange("days", `The high of ${date}`, inCelsius(maximumDegrees)), temperatureRange("days", `The low of ${date}`, inCelsius(minimumDegrees))]);
  if (unreadable !== undefined) return unreadable;
  const sign = temperatureSign(scale);
  if (minimumDegrees > maximumDegrees) {
    return badInput("days", `${minimumDegrees} ${sign}`, `at most ${maximumDegrees} ${sign}`, `The low of ${date}, ${minimumDegrees} ${sign}, is above its high, ${maximumDegrees} ${sign}.`);
  }
  const high = inTenths("The high", date, maximumDegrees, scale);
  if (!high.ok) return high;
  const low = inTenths("The low", date, minimumDegrees, scale);
  return low.ok ? accept({ date, scale, highTenths: high.value, lowTenths: low.value }) : low;
}

/**
 * Days that were given in any order, as they are kept, in order of time. Refuses what {@link dayTemperatures} refuses, a
 * day that stands twice, and a day that is not over: its high and low are not known before.
 */
export function temperaturesToKeep(days: readonly DailyExtremes[], scale: TemperatureScale, today: CalendarDate): Outcome<readonly DayTemperatures[]> {
  const kept = new Map<CalendarDate, DayTemperatures>();
  for (const day of days) {
    if (day.date >= today) return badInput("days", day.date, `a day before ${today}`, `The day ${day.date} is not over, so its high and low are not known yet.`);
    if (kept.has(day.date)) return badInput("days", day.date, "each day once", `The day ${day.date} stands twice.`);
    const read = dayTemperatures(day, scale);
    if (!read.ok) return read;
    kept.set(day.date, read.value);
  }
  return accept([...kept.values()].toSorted((one, other) => (one.date < other.date ? -1 : 1)));
}

/** Days that were given, held against what is kept of the same source. */
export interface BesideKept {
  readonly added: readonly DayTemperatures[];
  readonly replaced: readonly { readonly before: DayTemperatures; readonly after: DayTemperatures }[];
  /** Kept already with these very figures, on this scale. */
  readonly same: readonly DayTemperatures[];
}

/** Which of the days given are new, which replace others, and which are kept already. */
export function besideKept(given: readonly DayTemperatures[], kept: readonly DayTemperatures[]): BesideKept {
  const keptOn = new Map(kept.map((day) => [day.date, day]));
  const pairs = given.map((after) => ({ before: keptOn.get(after.date), after }));
  return {
    added: pairs.flatMap(({ before, after }) => (before === undefined ? [after] : [])),
    replaced: pairs.flatMap(({ before, after }) => (before === undefined || haveSameFigures(before, after) ? [] : [{ before, after }])),
    same: pairs.flatMap(({ before, after }) => (before !== undefined && haveSameFigures(before, after) ? [after] : [])),
  };
}

/** True where high, low and their scale are the same. */
export function haveSameFigures(one: DayTemperatures, other: DayTemperatures): boolean {
  return one.scale === other.scale && one.highTenths === other.highTenths && one.lowTenths === other.lowTenths;
}

/** The mean of a day's highest and lowest, in °C: the day's mean temperature of the degree-day methods (degree-days.ts). */
export function dayMeanC({ scale, highTenths, lowTenths }: DayTemperatures): number {
  return convertTemperature((highTenths + lowTenths) / 20, scale, "celsius");
}

/** "65.3 °F": a kept temperature, in tenths of a degree, as it was given, without a zero after the point. */
export function tenthsWords(tenths: number, scale: TemperatureScale): string {
  return `${String(tenths / 10)} ${temperatureSign(scale)}`;
}
