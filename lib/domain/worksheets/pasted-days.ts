import { typedLines } from "#domain/equipment/typed-test";
import { type CalendarDate, parseCalendarDate } from "#domain/foundation/calendar-date";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { type TemperatureScale, temperatureSign } from "#domain/turf/temperature-scale";
import { type FieldAsk, type NumberRange, readModelNumber, readTogether } from "#domain/worksheets/read-fields";

// Daily highs and lows as they are pasted, one day to a line. The worksheet of degree days and the company's daily
// temperatures are read alike.

/** More lines than this are a paste of something else. Common practice. */
const MOST_DAYS = 400;

/**
 * What is taken for a day's air temperature: the hottest ever measured is 56.7 °C (physical-range.ts), and under -60 °F
 * nobody looks after a lawn (common practice).
 */
const TEMPERATURES: Readonly<Record<TemperatureScale, NumberRange>> = {
  fahrenheit: { lowest: "-60", highest: "135", unit: temperatureSign("fahrenheit") },
  celsius: { lowest: "-51", highest: "57", unit: temperatureSign("celsius") },
};

/** A day as it is written on each scale. */
const SUCH: Readonly<Record<TemperatureScale, { readonly high: string; readonly low: string }>> = {
  fahrenheit: { high: "65", low: "40" },
  celsius: { high: "18.3", low: "4.4" },
};

/** One line: the day's highest and lowest, and its date where the line has one. */
export interface PastedDay {
  readonly date: CalendarDate | undefined;
  readonly maximumDegrees: number;
  readonly minimumDegrees: number;
}

/** How a day is written on a scale: "2026-03-01, 65, 40". */
export function pastedDaySuch(scale: TemperatureScale): string {
  const { high, low } = SUCH[scale];
  return `2026-03-01, ${high}, ${low}`;
}

/** The refusal of a line that is no day at all. */
export function refusePastedLine(field: string, line: string, scale: TemperatureScale) {
  return badInput(field, line, "date, high, low", `"${line}" is no day. Write date, high, low, such as ${pastedDaySuch(scale)}, or high, low with the first day below.`);
}

function readDay(field: string, line: string, scale: TemperatureScale): Outcome<PastedDay> {
  const parts = line.split(/[,;\t]/u).map((part) => part.trim());
  const [dateText, high, low] = parts.length === 2 ? [undefined, ...parts] : parts;
  if (high === undefined || low === undefined || parts.length > 3) return refusePastedLine(field, line, scale);
  const date = dateText === undefined ? accept(undefined) : parseCalendarDate(field, dateText);
  const ask = (what: string): FieldAsk => ({ field, what, such: SUCH[scale].high });
  const range = TEMPERATURES[scale];
  const read = readTogether({ date, maximumDegrees: readModelNumber(ask("the day's high"), high, range), minimumDegrees: readModelNumber(ask("the day's low"), low, range) });
  if (read.ok) return read;
  const [{ allowed, sentence }] = read.refusal;
  return badInput(field, line, allowed, `In "${line}": ${sentence}`);
}

/** A first line without any number in it names the columns. */
function withoutHeading(lines: readonly string[]): readonly string[] {
  return lines[0] !== undefined && !/\d/u.test(lines[0]) ? lines.slice(1) : lines;
}

/**
 * Reads daily highs and lows, one day to a line: "date, high, low" or "high, low", apart by commas, semicolons or tabs,
 * on one scale. Refused at `field`: no line, more than 400, and the first line that can't be read, named as it was
 * written.
 */
export function readPastedDays(field: string, text: string, scale: TemperatureScale): Outcome<readonly PastedDay[]> {
  const lines = withoutHeading(typedLines(text));
  if (lines.length === 0) return missingFact(field, "date, high, low", `Give the days, one to a line, such as ${pastedDaySuch(scale)}.`);
  if (lines.length > MOST_DAYS) return badInput(field, `${lines.length} lines`, `up to ${MOST_DAYS}`, `These are ${lines.length} lines; at most ${MOST_DAYS} days are read.`);
  const days: PastedDay[] = [];
  for (const line of lines) {
    const day = readDay(field, line, scale);
    if (!day.ok) return day;
    days.push(day.value);
  }
  return accept(days);
}
