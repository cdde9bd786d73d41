import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Outcome, accept, badInput, missingFact } from "#domain/foundation/outcome";
import { ONE_HOUR_MILLISECONDS } from "#domain/turf/hourly-series";
import {
  MOST_RAIN,
  MOST_WIND,
  type RangeCheck,
  type Refused,
  amountRange,
  percentRange,
  refuseOutOfRange,
} from "#domain/turf/physical-range";
import { judgeGroundHour } from "#domain/weather/ground-hour";
import { type LocalHour, localHours } from "#domain/weather/local-hours";
import { type HourInWeather, judgeProductHour } from "#domain/weather/product-hour";
import { type WeatherMix, limitsAskedOf, refuseImpossibleLimits } from "#domain/weather/spray-limits";
import {
  type HourReason,
  type HourVerdict,
  type WeatherHour,
  undecidedBy,
  worstVerdict,
} from "#domain/weather/spray-reasons";
import { type SpraySite, judgeSprayHour } from "#domain/weather/spraying-hour";
import { type SunTimes, sunTimesOn } from "#domain/weather/sun-times";

/** Where the weather comes from. A station's reading is never a reading at the site, and every paper says which it is. */
export interface WeatherOrigin {
  readonly kind: "forecast" | "station" | "site";
  readonly name: string;
}

/** A question about one local day: which hours suit which mix. */
export interface SprayDayQuestion extends SpraySite {
  readonly date: CalendarDate;
  readonly timeZone: string;
  readonly origin: WeatherOrigin;
  /** Hourly weather of that day and, for what must stay dry after it, of the hours that follow. */
  readonly hours: readonly WeatherHour[];
  readonly mixes: readonly WeatherMix[];
}

/** One hour of a day for one mix, with every reason. */
export interface JudgedHour extends LocalHour {
  readonly verdict: HourVerdict;
  readonly reasons: readonly HourReason[];
}

/** A day's hours for one mix. */
export interface JudgedMix {
  readonly mixId: string;
  readonly method: WeatherMix["method"];
  readonly origin: WeatherOrigin;
  readonly hours: readonly JudgedHour[];
}

/**
 * Judges every hour of a local day for each mix. An hour is closed by a label, a law or the company's own
 * limit, by a limit nobody has read, by a missing fact that a limit needs, and when there is no weather for
 * it; the company's wind, drift and inversion concern sprays only, so granular work may go on while sprays are held; a wind
 * that its own label states closes it too. Frozen or saturated soil closes both, and heavy rain closes granular work too.
 *
 * Refuses impossible readings, limits and places, hours that are given twice or don't begin on the
 * hour grid of the day, and a day for which no hour at all is on file.
 */
export function judgeSprayDay(question: SprayDayQuestion): Outcome<readonly JudgedMix[]> {
  const slots = localHours(question.date, question.timeZone);
  if (!slots.ok) return slots;
  const sun = sunTimesOn(question.date, question.timeZone, question.place);
  if (!sun.ok) return sun;
  const refusal =
    refuseImpossibleLimits(question.mixes, question.sensitivePlaces, question.settings) ??
    refuseElevation(question.place.elevationMeters) ??
    refuseHours(question.hours, slots.value);
  if (refusal !== undefined) return refusal;
  const byStart = new Map(question.hours.map((hour) => [hour.startsAtEpochMilliseconds, hour]));
  return accept(
    question.mixes.map((mix) => ({
      mixId: mix.mixId,
      method: mix.method,
      origin: question.origin,
      hours: slots.value.map((slot) => judgeHour(question, mix, slot, byStart, sun.value)),
    })),
  );
}

function judgeHour(
  question: SprayDayQuestion,
  mix: WeatherMix,
  slot: LocalHour,
  byStart: ReadonlyMap<number, WeatherHour>,
  sun: SunTimes,
): JudgedHour {
  const weather = byStart.get(slot.startsAtEpochMilliseconds);
  if (weather === undefined) {
    const authority = { basis: "weather", source: question.origin.name } as const;
    const reasons = [undecidedBy("no-weather", authority, "There is no weather on file for this hour.")];
    return { ...slot, verdict: "closed", reasons };
  }
  const hour: HourInWeather = {
    slot,
    weather,
    weatherAt: (startsAt) => byStart.get(startsAt),
    timeZone: question.timeZone,
    rainFromInches: question.settings.rainFromInches,
    rainChanceFromPercent: question.settings.rainChanceFromPercent,
  };
  const products = mix.products.map((product) => limitsAskedOf(product, mix.method));
  const reasons = [
    ...products.flatMap((product) => judgeProductHour(product, hour)),
    ...judgeGroundHour({ ...mix, products }, hour),
    ...(mix.method === "spray" ? judgeSprayHour(question, hour, sun) : []),
  ];
  return { ...slot, verdict: worstVerdict(reasons), reasons };
}

/** Land lies from below the Dead Sea's shore to where nobody keeps turf: beyond it a unit is wrong. Common practice. */
function refuseElevation(elevationMeters: number): Refused | undefined {
  return refuseOutOfRange([
    {
      field: "elevationMeters",
      words: "The elevation",
      value: elevationMeters,
      lowest: -450,
      highest: 6000,
      unit: "m",
    },
  ]);
}

function refuseHours(hours: readonly WeatherHour[], slots: readonly LocalHour[]): Refused | undefined {
  const starts = hours.map(({ startsAtEpochMilliseconds }) => startsAtEpochMilliseconds);
  const firstSlot = slots[0]?.startsAtEpochMilliseconds ?? Number.NaN;
  const offGrid = starts.find((start) => !Number.isInteger((start - firstSlot) / ONE_HOUR_MILLISECONDS));
  if (offGrid !== undefined) {
    return badInput(
      "startsAtEpochMilliseconds",
      String(offGrid),
      "hours that begin when the day's hours begin",
      "An hour of weather does not begin when an hour of the day begins.",
    );
  }
  const twice = starts.find((start, index) => starts.indexOf(start) !== index);
  if (twice !== undefined) {
    return badInput("startsAtEpochMilliseconds", String(twice), "each hour once", "An hour of weather is given twice.");
  }
  const known = new Set(starts);
  if (!slots.some(({ startsAtEpochMilliseconds }) => known.has(startsAtEpochMilliseconds))) {
    return missingFact("hours", "hourly weather of the day", "There is no hourly weather on file for this day.");
  }
  return refuseOutOfRange(hours.flatMap(readingRanges));
}

/**
 * What is taken for a reading of one hour. The coldest and hottest air ever measured are -128.6 and 134 °F (World
 * Meteorological Organization, from memory).
 */
function readingRanges(hour: WeatherHour): readonly RangeCheck[] {
  const temperature = (value: number): RangeCheck => ({
    field: "temperatureF",
    words: "The temperature",
    value,
    lowest: -130,
    highest: 140,
    unit: "°F",
  });
  const direction = (value: number): RangeCheck => ({
    field: "windFromDegrees",
    words: "The wind direction",
    value,
    lowest: 0,
    highest: 360,
    unit: "°",
  });
  return [
    ...given(hour.temperatureF, temperature),
    ...given(hour.relativeHumidityPercent, (value) =>
      percentRange("relativeHumidityPercent", "The relative humidity", value),
    ),
    ...given(hour.windMph, (value) => amountRange("windMph", "The wind", value, MOST_WIND.milesPerHour)),
    ...given(hour.gustMph, (value) => amountRange("gustMph", "The gusts", value, MOST_WIND.milesPerHour)),
    ...given(hour.windFromDegrees, direction),
    ...given(hour.rainInches, (value) => amountRange("rainInches", "The rain", value, MOST_RAIN.hourInches)),
    ...given(hour.rainChancePercent, (value) => percentRange("rainChancePercent", "The chance of rain", value)),
  ];
}

function given(value: number | undefined, check: (value: number) => RangeCheck): readonly RangeCheck[] {
  return value === undefined ? [] : [check(value)];
}
