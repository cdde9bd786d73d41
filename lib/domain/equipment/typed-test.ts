import { isNozzleSize, ratedFlowOfSize } from "#domain/equipment/nozzle";
import { measurePace } from "#domain/equipment/pace";
import { type SprayerTest } from "#domain/equipment/sprayer-calibration";
import { type CollectedRun } from "#domain/equipment/spreader-calibration";
import { type TimedCatch } from "#domain/equipment/sprayer-flow";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { parseLength } from "#domain/quantities/parse-length";
import { readNumberWithUnit } from "#domain/quantities/number-with-unit";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { isZero, type Quantity } from "#domain/quantities/quantity";
import { toNumber } from "#domain/quantities/rational";
import { type Dimension } from "#domain/quantities/units";

// What somebody typed of a calibration, and what it means. The typed words are what is kept on file: whoever doubts a
// rate years later sees what was measured. Several repeats stand one to a line.

/** A sprayer's test as it was typed, by method. Sizes of tips are those of ISO 10625, or empty. */
export type TypedSprayerTest =
  | { readonly method: "timed-area"; readonly caught: string; readonly caughtSeconds: string; readonly area: string; readonly areaSeconds: string }
  | {
      readonly method: "timed-course";
      readonly caught: string;
      readonly caughtSeconds: string;
      readonly tipSize: string;
      readonly swath: string;
      readonly course: string;
      readonly courseSeconds: string;
    }
  | {
      readonly method: "boom";
      readonly caught: string;
      readonly caughtSeconds: string;
      readonly tipSize: string;
      readonly nozzleSpacing: string;
      readonly course: string;
      readonly courseSeconds: string;
    }
  | { readonly method: "small-area"; readonly area: string; readonly used: string };

/** A spreader's test as it was typed. */
export interface TypedSpreaderTest extends TypedSpreaderPace {
  readonly area: string;
  readonly collected: string;
}

/** How the operator goes with a spreader, as it was typed; calibrations of before it was asked have none of it. */
export interface TypedSpreaderPace {
  readonly swath?: string | undefined;
  readonly speedMph?: string | undefined;
  readonly minutesPerThousand?: string | undefined;
}

/** More repeats than this are a paste of something else. Common practice. */
const MOST_LINES = 40;

/** The lines of a text that hold something. */
export function typedLines(text: string): readonly string[] {
  return text.split(/\r?\n/u).map((line) => line.trim()).filter((line) => line !== "");
}

/** One line of a table of three columns as it was typed. */
export interface TypedRow<Row> {
  readonly line: string;
  /** Its three parts between semicolons; undefined where it has more or less, or an empty one. */
  readonly parts: readonly [string, string, string] | undefined;
  readonly before: readonly Row[];
}

/** More rows than this are a paste of something else. */
const MOST_ROWS = 100;

/**
 * Reads a table of three columns, one row to a line, which may be empty. Refused at `field`: more than 100 lines, and
 * the first row that is refused.
 */
export function readTypedTable<Row>(field: string, text: string, readRow: (typed: TypedRow<Row>) => Outcome<Row>): Outcome<readonly Row[]> {
  const lines = typedLines(text);
  if (lines.length > MOST_ROWS) return badInput(field, String(lines.length), `up to ${String(MOST_ROWS)} lines`, `These are ${String(lines.length)} lines; at most ${String(MOST_ROWS)} are read.`);
  const rows: Row[] = [];
  for (const line of lines) {
    const row = readRow({ line, parts: threeParts(line), before: rows });
    if (!row.ok) return row;
    rows.push(row.value);
  }
  return accept(rows);
}

function threeParts(line: string): TypedRow<unknown>["parts"] {
  const [first = "", second = "", third = "", ...more] = line.split(";").map((part) => part.trim());
  return first === "" || second === "" || third === "" || more.length > 0 ? undefined : [first, second, third];
}

/** Reads one thing a line. Refused at `field`: no line, more than 40, and the first line that can't be read. */
export function readLines<Value>(field: string, text: string, read: (line: string) => Outcome<Value>): Outcome<readonly [Value, ...Value[]]> {
  const lines = typedLines(text);
  if (lines.length > MOST_LINES) {
    return badInput(field, `${lines.length} lines`, `up to ${MOST_LINES} lines`, `These are ${lines.length} lines; at most ${MOST_LINES} are read.`);
  }
  const values: Value[] = [];
  for (const line of lines) {
    const value = read(line);
    if (!value.ok) return value;
    values.push(value.value);
  }
  const [first, ...rest] = values;
  return first === undefined ? missingFact(field, "one to a line", "Write at least one, one to a line.") : accept([first, ...rest]);
}

/**
 * Reads an amount of one dimension with its unit. Refused as parseQuantity refuses, and an amount of nothing. All at
 * `field`.
 */
export function readAmount<D extends Dimension>(field: string, text: string, dimension: D): Outcome<Quantity<D>> {
  const read = dimension === "length" ? parseLength(text, { field }) : parseQuantity(text, { field, dimensions: [dimension] });
  if (!read.ok) return read;
  if (isZero(read.value.quantity)) return badInput(field, text, "more than nothing", "It must be more than nothing; measure it again.");
  // The field takes this one dimension only.
  return accept(read.value.quantity as Quantity<D>);
}

/** Under a second nobody can time, and over two hours nobody did: a unit is wrong. Common practice. */
const LEAST_SECONDS = 1;
const MOST_SECONDS = 7200;

/** Reads a time by the watch in seconds, 1 s to 2 h. Refused at `field`: another time, and what readNumberWithUnit refuses. */
export function readSeconds(field: string, text: string): Outcome<number> {
  const read = readNumberWithUnit(field, text, "s");
  if (!read.ok) return read;
  const seconds = toNumber(read.value);
  if (seconds < LEAST_SECONDS || seconds > MOST_SECONDS) {
    return badInput(field, text, `${LEAST_SECONDS} to ${MOST_SECONDS} s`, `${text} is no time for this: from ${LEAST_SECONDS} s to 2 hours, in seconds.`);
  }
  return accept(seconds);
}

/** The pressures of sprayers for turf, generously, as in nozzle.ts. Common practice. */
const LEAST_PSI = 1;
const MOST_PSI = 1000;

/** Reads a pressure in psi, 1 to 1,000. Refused at `field`: another pressure, and what readNumberWithUnit refuses. */
export function readPressure(field: string, text: string): Outcome<number> {
  const read = readNumberWithUnit(field, text, "psi");
  if (!read.ok) return read;
  const pressurePsi = toNumber(read.value);
  if (pressurePsi >= LEAST_PSI && pressurePsi <= MOST_PSI) return accept(pressurePsi);
  return badInput(field, text, "1 to 1,000 psi", `${text} is no pressure of a sprayer: from 1 to 1,000 psi.`);
}

/** Reads a speed in mph, 0.2 to 20. Refused at `field`: another speed, and what readNumberWithUnit refuses. */
export function readSpeed(field: string, text: string): Outcome<number> {
  const read = readNumberWithUnit(field, text, "mph");
  if (!read.ok) return read;
  const pace = measurePace({ kind: "speed", milesPerHour: toNumber(read.value) });
  if (pace.ok) return accept(toNumber(read.value));
  return badInput(field, text, pace.refusal.allowed, pace.refusal.sentence);
}

/** The seconds of a minute, by definition. */
export const SECONDS_PER_MINUTE = 60;

/** Reads minutes by the watch, 1 second to 2 hours. Refused at `field`: another time, and what readNumberWithUnit refuses. */
export function readMinutes(field: string, text: string): Outcome<number> {
  const read = readNumberWithUnit(field, text, "min");
  if (!read.ok) return read;
  const minutes = toNumber(read.value);
  if (minutes * SECONDS_PER_MINUTE >= LEAST_SECONDS && minutes * SECONDS_PER_MINUTE <= MOST_SECONDS) return accept(minutes);
  return badInput(field, text, "1 second to 120 minutes", `${text} is no time for this: up to 120 minutes.`);
}

function readCatches(test: { readonly method: string; readonly caught: string; readonly caughtSeconds: string }): Outcome<readonly TimedCatch[]> {
  const volumes = readLines("caught", test.caught, (line) => readAmount("caught", line, "volume"));
  if (!volumes.ok) return volumes;
  const seconds = readSeconds("caughtSeconds", test.caughtSeconds);
  if (!seconds.ok) return seconds;
  const nozzleOf = (index: number) => (test.method === "boom" ? `Nozzle ${index + 1}` : "The tip");
  return accept(volumes.value.map((volume, index) => ({ nozzle: nozzleOf(index), volume, seconds: seconds.value })));
}

/**
 * What a typed test of a sprayer means. Each line of a boom's catches is a nozzle of its own; each line of the others
 * is a repeat. The pressure in psi belongs to the nominal flow of a tip of a known size. Refused at the field that
 * can't be read.
 */
export function readSprayerTest(test: TypedSprayerTest, pressurePsi: number): Outcome<SprayerTest> {
  if (test.method === "small-area") return readSmallArea(test);
  const catches = readCatches(test);
  if (!catches.ok) return catches;
  if (test.method === "timed-area") {
    const area = readAmount("area", test.area, "area");
    if (!area.ok) return area;
    const times = readLines("areaSeconds", test.areaSeconds, (line) => readSeconds("areaSeconds", line));
    if (!times.ok) return times;
    return accept({ method: "gun", catches: catches.value, coverings: times.value.map((seconds) => ({ area: area.value, seconds })) });
  }
  const isBoom = test.method === "boom";
  const width = isBoom ? readAmount("nozzleSpacing", test.nozzleSpacing, "length") : readAmount("swath", test.swath, "length");
  if (!width.ok) return width;
  const course = readAmount("course", test.course, "length");
  if (!course.ok) return course;
  const seconds = readLines("courseSeconds", test.courseSeconds, (line) => readSeconds("courseSeconds", line));
  if (!seconds.ok) return seconds;
  const pace = { kind: "timed-course", course: course.value, seconds: seconds.value } as const;
  const nominal = isNozzleSize(test.tipSize) ? { nominal: { rated: ratedFlowOfSize(test.tipSize), pressurePsi } } : {};
  const flow = { catches: catches.value, pace, ...nominal };
  return accept(isBoom ? { method: "boom", nozzleSpacing: width.value, ...flow } : { method: "backpack", swath: width.value, ...flow });
}

function readSmallArea(test: { readonly area: string; readonly used: string }): Outcome<SprayerTest> {
  const area = readAmount("area", test.area, "area");
  if (!area.ok) return area;
  const volumes = readLines("used", test.used, (line) => readAmount("used", line, "volume"));
  if (!volumes.ok) return volumes;
  return accept({ method: "small-area", runs: volumes.value.map((volume) => ({ area: area.value, volume })) });
}

/**
 * What a typed test of a spreader means: each line one run over the same area. Refused at `area` or `collected`, where
 * it can't be read.
 */
export function readSpreaderTest(test: TypedSpreaderTest): Outcome<readonly CollectedRun[]> {
  const area = readAmount("area", test.area, "area");
  if (!area.ok) return area;
  const masses = readLines("collected", test.collected, (line) => readAmount("collected", line, "mass"));
  if (!masses.ok) return masses;
  return accept(masses.value.map((collected) => ({ collected, area: area.value })));
}
