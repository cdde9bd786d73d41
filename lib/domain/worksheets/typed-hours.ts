import { typedLines } from "#domain/equipment/typed-test";
import { namedClockWords } from "#domain/foundation/clock-words";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { type WeatherHour } from "#domain/weather/spray-reasons";
import { readClockMinute } from "#domain/worksheets/clock-time";
import { type FieldAsk, type NumberRange, readListField, readModelNumber, readTogether } from "#domain/worksheets/read-fields";

/** An hour with its weather. It begins so many minutes after the midnight before the first hour that was typed. */
export interface HourByClock {
  readonly minute: number;
  readonly weather: WeatherHour;
}

export const DAY_MINUTES = 1440;
const HOUR_MINUTES = 60;
const MINUTE_MILLISECONDS = 60_000;
/**
 * An hour that goes back on the clock is the next day's. Where that leaves out more than these, it was rather typed out
 * of its order, as 8 am after 9 am. Common practice.
 */
const MOST_MINUTES_LEFT_OUT = 20 * HOUR_MINUTES;

const TEMPERATURE: NumberRange = { lowest: "-40", highest: "130", unit: "°F" };
const HUMIDITY: NumberRange = { lowest: "1", highest: "100", unit: "%" };
const WIND: NumberRange = { lowest: "0", highest: "100", unit: "mph" };
const RAIN: NumberRange = { lowest: "0", highest: "10", unit: "in" };
const PARTS = ["hour", "temperature", "humidity", "wind", "rain"] as const;
const SUCH = "7 am, 62, 88, 2, 0";

/** An hour and the day that it is of, as they are read: "8 pm", "8 am the next day", "8 am 2 days later". */
export function hourWords(minute: number): string {
  return `${namedClockWords(minute)}${dayWords(Math.floor(minute / DAY_MINUTES))}`;
}

/** What stands behind an hour of a day: nothing on the first day, " the next day", " 2 days later". */
export function dayWords(days: number): string {
  if (days === 0) return "";
  return days === 1 ? " the next day" : ` ${String(days)} days later`;
}

/** A stretch of hours: "9 pm to midnight", where it ends with the day that it begins on; else with the day of its end. */
export function stretchWords(fromMinute: number, toMinute: number): string {
  const endsWithDay = toMinute % DAY_MINUTES === 0 && toMinute - fromMinute <= DAY_MINUTES;
  return `${hourWords(fromMinute)} to ${endsWithDay ? "midnight" : hourWords(toMinute)}`;
}

function ask(what: string, such: string): FieldAsk {
  return { field: "hours", what, such };
}

/** The hour by its own clock: minutes after midnight. */
function readHour(line: string): Outcome<HourByClock> {
  const parts = line.split(/[,;\t]/u).map((part) => part.trim());
  const [hourText = "", temperature = "", humidity = "", wind = "", rain = ""] = parts;
  if (parts.length !== PARTS.length || parts.includes("")) {
    return badInput("hours", line, PARTS.join(", "), `"${line}" has not these five with commas between: ${PARTS.join(", ")}. Write it as ${SUCH}.`);
  }
  const minute = readClockMinute("hours", hourText.replace(/^noon$/iu, "12 pm").replace(/^midnight$/iu, "12 am"));
  if (!minute.ok) return minute;
  if (minute.value % HOUR_MINUTES !== 0) return badInput("hours", line, "hours that begin on the hour", `"${line}" does not begin on the hour. Write it as ${SUCH}.`);
  const read = readTogether({
    temperatureF: readModelNumber(ask("the temperature", "62"), temperature, TEMPERATURE),
    relativeHumidityPercent: readModelNumber(ask("the humidity", "88"), humidity, HUMIDITY),
    windMph: readModelNumber(ask("the wind", "2"), wind, WIND),
    rainInches: readModelNumber(ask("the rain", "0"), rain, RAIN),
  });
  if (!read.ok) {
    const [{ allowed, sentence }] = read.refusal;
    return badInput("hours", line, allowed, `In "${line}": ${sentence}`);
  }
  return accept({ minute: minute.value, weather: { startsAtEpochMilliseconds: 0, ...read.value } });
}

/**
 * Reads hours of weather as they were typed, one to a line (hour, °F, humidity in percent, wind in mph, rain in inches),
 * in the order of time: an hour that goes back on the clock is the next day's, so that midnight after 11 pm is the
 * midnight to come. Refused, at `hours`: none, more than 200, a line that can't be read, an hour that stands there
 * twice, and one that goes back so little that it was typed out of its order.
 */
export function readHours(text: string): Outcome<readonly HourByClock[]> {
  const lines = typedLines(text);
  const read = readListField(ask("the hours, one to a line", SUCH), lines, readHour);
  if (!read.ok) return read;
  const hours: HourByClock[] = [];
  for (const [index, { minute: ofClock, weather }] of read.value.entries()) {
    const before = hours.at(-1)?.minute;
    const minute = before === undefined ? ofClock : nextAt(before, ofClock);
    const refusal = before === undefined ? undefined : refuseOrder(lines[index] ?? "", before, minute);
    if (refusal !== undefined) return refusal;
    hours.push({ minute, weather: { ...weather, startsAtEpochMilliseconds: minute * MINUTE_MILLISECONDS } });
  }
  return accept(hours);
}

/** The next time after a minute at which the clock shows this: the same day's or the next day's. */
function nextAt(before: number, ofClock: number): number {
  const onSameDay = before - (before % DAY_MINUTES) + ofClock;
  return onSameDay > before ? onSameDay : onSameDay + DAY_MINUTES;
}

function refuseOrder(line: string, before: number, minute: number) {
  const [hour, hourBefore] = [namedClockWords(minute), namedClockWords(before)];
  if (minute - before === DAY_MINUTES) return badInput("hours", line, "each hour once", `${hour} stands there twice.`);
  const goesBack = minute % DAY_MINUTES < before % DAY_MINUTES;
  if (!goesBack || minute - before - HOUR_MINUTES <= MOST_MINUTES_LEFT_OUT) return undefined;
  return badInput("hours", line, "hours in the order of time", `${hour} stands after ${hourBefore}. Write the hours in the order of time; those after midnight are the next day's.`);
}
