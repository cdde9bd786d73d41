import { type Outcome, accept, badInput } from "#domain/foundation/outcome";
import { type DatePeriod, type Dated, unbrokenDays } from "#domain/turf/daily-series";
import { READABLE_TEMPERATURE_C, type RangeCheck, refuseOutOfRange } from "#domain/turf/physical-range";
import { type TemperatureScale, convertTemperature, temperatureSign } from "#domain/turf/temperature-scale";

/** The lowest and highest air temperature of a day, on the scale of the series it belongs to. */
export interface DailyExtremes extends Dated {
  readonly minimumDegrees: number;
  readonly maximumDegrees: number;
}

/** Daily extremes of one place, day after day, on one scale. */
export interface ExtremesSeries {
  readonly scale: TemperatureScale;
  readonly days: readonly DailyExtremes[];
}

/**
 * How a day's extremes become degree days. The methods differ much in cool weather, so a sum is only worth
 * something beside the method it was made with.
 *
 * - `simple-average`: max(0, mean of the extremes - base).
 * - `reset`: extremes below the base count as the base, and above the upper cut as the cut, before they are
 *   averaged; 50 and 86 °F is the method for corn. McMaster & Wilhelm 1997, Agric. Forest Meteorol. 87:291-300.
 * - `met-eireann`: a share of the day when only its warm part passes the base. met.ie, degree days above base.
 */
export type DegreeDayMethod =
  | { readonly kind: "simple-average"; readonly scale: TemperatureScale; readonly baseDegrees: number }
  | {
      readonly kind: "reset";
      readonly scale: TemperatureScale;
      readonly baseDegrees: number;
      /** Left out where the method has no upper cut. */
      readonly upperCutDegrees?: number;
    }
  | { readonly kind: "met-eireann"; readonly scale: TemperatureScale; readonly baseDegrees: number };

/** "simple average, base 50 °F", "reset, base 50 °F, upper cut 86 °F". */
export function methodWords(method: DegreeDayMethod): string {
  const sign = temperatureSign(method.scale);
  const cut = method.kind === "reset" && method.upperCutDegrees !== undefined ? `, upper cut ${method.upperCutDegrees} ${sign}` : "";
  return `${METHOD_NAMES[method.kind]}, base ${method.baseDegrees} ${sign}${cut}`;
}

const METHOD_NAMES: Readonly<Record<DegreeDayMethod["kind"], string>> = {
  "simple-average": "simple average",
  reset: "reset",
  "met-eireann": "Met Eireann",
};

/**
 * The reset method with 50 °F as its base and 86 °F as its upper cut. Source: McMaster & Wilhelm 1997, as for the
 * methods.
 */
export const EIGHTY_SIX_FIFTY: DegreeDayMethod = {
  kind: "reset",
  scale: "fahrenheit",
  baseDegrees: 50,
  upperCutDegrees: 86,
};

/** One day of a running sum, in degree days on the scale of the method. */
export interface DegreeDayLine extends Dated {
  readonly degreeDays: number;
  readonly totalDegreeDays: number;
}

/** A running sum of degree days. The day it begins with counts. */
export interface DegreeDaySum extends DatePeriod {
  readonly method: DegreeDayMethod;
  readonly lines: readonly DegreeDayLine[];
  readonly totalDegreeDays: number;
}

/**
 * Temperatures come in tenths, and a binary sum of tenths may end a hair below the whole number it stands
 * for. A threshold counts as reached within this much.
 */
const SUMMING_ERROR_DEGREE_DAYS = 1e-9;

/**
 * The degree days of one day, zero or more, on the method's scale. Both extremes must be on that scale. Refuses
 * extremes that are not numbers or no weather of this earth, a minimum above the maximum, a base or upper cut that is
 * no such temperature, and a cut that is not above the base. Source: as for the methods; the simple average is that of
 * Michigan State (Nugent).
 */
export function degreeDaysOfDay(
  method: DegreeDayMethod,
  extremes: { readonly minimumDegrees: number; readonly maximumDegrees: number },
): Outcome<number> {
  const wrongMethod = refuseMethod(method);
  if (wrongMethod !== undefined) return wrongMethod;
  const { minimumDegrees, maximumDegrees } = extremes;
  const unreadable = refuseOutOfRange([
    readableCheck("minimumDegrees", "The day's lowest temperature", minimumDegrees, method.scale),
    readableCheck("maximumDegrees", "The day's highest temperature", maximumDegrees, method.scale),
  ]);
  if (unreadable !== undefined) return unreadable;
  if (minimumDegrees > maximumDegrees) {
    const sign = temperatureSign(method.scale);
    return badInput(
      "minimumDegrees",
      `${minimumDegrees} ${sign}`,
      `at most the day's highest, ${maximumDegrees} ${sign}`,
      `The day's lowest temperature, ${minimumDegrees} ${sign}, is above its highest, ${maximumDegrees} ${sign}.`,
    );
  }
  return accept(degreeDaysAbove(method, minimumDegrees, maximumDegrees));
}

/**
 * Sums degree days from one date through another, both counted; a series on the other scale is converted.
 * Refuses as {@link degreeDaysOfDay} does, with the date, and names a day that is missing from the series.
 * After an application the sum begins on the day after it, or on the day itself: the caller says which.
 */
export function sumDegreeDays(
  method: DegreeDayMethod,
  series: ExtremesSeries,
  period: DatePeriod,
): Outcome<DegreeDaySum> {
  const days = unbrokenDays(series.days, period);
  if (!days.ok) return days;
  const lines: DegreeDayLine[] = [];
  let totalDegreeDays = 0;
  for (const day of days.value) {
    const degreeDays = degreeDaysOfDay(method, {
      minimumDegrees: convertTemperature(day.minimumDegrees, series.scale, method.scale),
      maximumDegrees: convertTemperature(day.maximumDegrees, series.scale, method.scale),
    });
    if (!degreeDays.ok) {
      const { refusal } = degreeDays;
      return {
        ok: false,
        refusal: { ...refusal, field: `${day.date} ${refusal.field}`, sentence: `${day.date}: ${refusal.sentence}` },
      };
    }
    totalDegreeDays += degreeDays.value;
    lines.push({ date: day.date, degreeDays: degreeDays.value, totalDegreeDays });
  }
  return accept({ method, ...period, lines, totalDegreeDays });
}

/** The first day on which a running sum reaches a number of degree days, or undefined while it hasn't. */
export function openingLine(sum: DegreeDaySum, thresholdDegreeDays: number): DegreeDayLine | undefined {
  return sum.lines.find(({ totalDegreeDays }) => totalDegreeDays + SUMMING_ERROR_DEGREE_DAYS >= thresholdDegreeDays);
}

function degreeDaysAbove(method: DegreeDayMethod, minimum: number, maximum: number): number {
  const base = method.baseDegrees;
  switch (method.kind) {
    case "simple-average":
      return Math.max(0, (minimum + maximum) / 2 - base);
    case "reset": {
      const cut = method.upperCutDegrees ?? Infinity;
      const reset = (degrees: number) => Math.min(Math.max(degrees, base), cut);
      return (reset(minimum) + reset(maximum)) / 2 - base;
    }
    case "met-eireann":
      if (minimum >= base) return (minimum + maximum) / 2 - base;
      if (maximum <= base) return 0;
      return (minimum + maximum) / 2 >= base ? (maximum - base) / 2 - (base - minimum) / 4 : (maximum - base) / 4;
  }
}

function refuseMethod(method: DegreeDayMethod) {
  const sign = temperatureSign(method.scale);
  const wrongBase = refuseOutOfRange([readableCheck("baseDegrees", "The base temperature", method.baseDegrees, method.scale)]);
  if (wrongBase !== undefined) return wrongBase;
  if (method.kind !== "reset" || method.upperCutDegrees === undefined) return undefined;
  const wrongCut = refuseOutOfRange([readableCheck("upperCutDegrees", "The upper cut", method.upperCutDegrees, method.scale)]);
  if (wrongCut !== undefined) return wrongCut;
  if (method.upperCutDegrees > method.baseDegrees) return undefined;
  return badInput(
    "upperCutDegrees",
    `${method.upperCutDegrees} ${sign}`,
    `above the base, ${method.baseDegrees} ${sign}`,
    `The upper cut of ${method.upperCutDegrees} ${sign} must be above the base of ${method.baseDegrees} ${sign}.`,
  );
}

function readableCheck(field: string, words: string, value: number, scale: TemperatureScale): RangeCheck {
  const lowest = convertTemperature(READABLE_TEMPERATURE_C.lowest, "celsius", scale);
  const highest = convertTemperature(READABLE_TEMPERATURE_C.highest, "celsius", scale);
  return { field, words, value, lowest, highest, unit: temperatureSign(scale) };
}
