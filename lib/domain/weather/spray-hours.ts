import { type InputRefusal, type Outcome, accept, badInput, missingFact } from "#domain/foundation/outcome";
import { ONE_HOUR_MILLISECONDS } from "#domain/turf/hourly-series";
import { type RangeCheck, amountRange, percentRange, refuseOutOfRange } from "#domain/turf/physical-range";
import { celsiusFromFahrenheit } from "#domain/turf/temperature-scale";
import { airPressureKilopascals } from "#domain/turf/vapor-pressure";
import { INVERSION_SOURCE, judgeInversion } from "#domain/weather/inversion";
import { type LocalHour, localHours } from "#domain/weather/local-hours";
import { type HourInWeather, judgeProductHour } from "#domain/weather/product-hour";
import {
  type Authority, type SensitivePlace, type SprayWeatherSettings, VARIABLE_BELOW_WIND_MPH, type WeatherMix, refuseImpossibleLimits,
} from "#domain/weather/spray-limits";
import {
  type HourReason, type HourVerdict, type WeatherHour, careFor, closedBy, noteOf, shown, undecidedBy, worstVerdict,
} from "#domain/weather/spray-reasons";
import { type Place, type SunTimes, sunTimesOn } from "#domain/weather/sun-times";
import { type DeltaTClass, deltaT } from "#domain/weather/wet-bulb";

/** Where the weather comes from. A station's reading is never a reading at the site, and every paper says which it is. */
export interface WeatherOrigin {
  readonly kind: "forecast" | "station" | "site";
  readonly name: string;
}

/** A question about one local day: which hours suit which mix. */
export interface SprayDayQuestion {
  readonly date: string;
  readonly timeZone: string;
  readonly place: Place & { readonly elevationMeters: number };
  readonly origin: WeatherOrigin;
  /** Hourly weather of that day and, for what must stay dry after it, of the hours that follow. */
  readonly hours: readonly WeatherHour[];
  readonly mixes: readonly WeatherMix[];
  readonly sensitivePlaces: readonly SensitivePlace[];
  readonly settings: SprayWeatherSettings;
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

const PESTICIDE_STEWARDSHIP = "National Pesticide Stewardship, drift: wind 3 to 8 mph and away from sensitive areas";
const DELTA_T_SOURCE = "Australian Bureau of Meteorology, quoted by sprayers101.com/delta-t";

/**
 * Judges every hour of a local day for each mix. An hour is closed by a label, a law or the company's own
 * limit, by a limit nobody has read, by a missing fact that a limit needs, and when there is no weather for
 * it; wind, drift and inversion concern sprays only, so granular work may go on while sprays are held.
 *
 * Refuses impossible readings, limits, places and dates, hours that are given twice or don't begin on the
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
    const authority: Authority = { basis: "house", source: question.origin.name };
    const reasons = [undecidedBy("no-weather", authority, "There is no weather on file for this hour.")];
    return { ...slot, verdict: "closed", reasons };
  }
  const hour: HourInWeather = {
    slot,
    weather,
    weatherAt: (startsAt) => byStart.get(startsAt),
    timeZone: question.timeZone,
    rainFromInches: question.settings.rainFromInches,
  };
  const reasons = [
    ...mix.products.flatMap((product) => judgeProductHour(product, hour)),
    ...(mix.method === "spray" ? judgeSpraying(question, hour, sun) : []),
  ];
  return { ...slot, verdict: worstVerdict(reasons), reasons };
}

/** What holds for every spray, whatever is in the tank. */
function judgeSpraying(question: SprayDayQuestion, hour: HourInWeather, sun: SunTimes): readonly HourReason[] {
  const { settings, sensitivePlaces, place } = question;
  return [
    ...companyWind(hour.weather, settings),
    ...towardsSensitive(hour.weather, sensitivePlaces, settings),
    ...rainNow(hour.weather, settings),
    ...inversion(hour, sun),
    ...deltaTNote(hour.weather, place.elevationMeters),
  ];
}

function companyWind({ windMph, gustMph }: WeatherHour, { highestWind }: SprayWeatherSettings): HourReason[] {
  if (windMph === undefined) return [undecidedBy("wind-high", highestWind, "The wind is not known.")];
  const limit = `${shown(highestWind.limitMph)} mph`;
  if (windMph > highestWind.limitMph) {
    return [closedBy("wind-high", highestWind, `The wind is ${shown(windMph)} mph; the company sprays up to ${limit}.`)];
  }
  if (gustMph === undefined || gustMph <= highestWind.limitMph) return [];
  return [careFor("gusts", highestWind, `Gusts reach ${shown(gustMph)} mph; the company sprays up to ${limit}.`)];
}

function towardsSensitive(
  { windMph, windFromDegrees }: WeatherHour,
  places: readonly SensitivePlace[],
  { towardsWithinDegrees }: SprayWeatherSettings,
): HourReason[] {
  const authority: Authority = { basis: "handbook", source: PESTICIDE_STEWARDSHIP };
  return places.flatMap(({ name, bearingDegrees }) => {
    if (windMph === undefined) return [undecidedBy("towards-sensitive", authority, `The wind is not known, and ${name} is near.`)];
    if (windMph < VARIABLE_BELOW_WIND_MPH) {
      return [careFor("towards-sensitive", authority, `The wind is light (${shown(windMph)} mph) and may turn towards ${name}.`)];
    }
    if (windFromDegrees === undefined) {
      return [undecidedBy("towards-sensitive", authority, `The direction of the wind is not known, and ${name} is near.`)];
    }
    if (angleBetweenDegrees(windFromDegrees + 180, bearingDegrees) > towardsWithinDegrees) return [];
    return [closedBy("towards-sensitive", authority, `The wind blows towards ${name}.`)];
  });
}

/** The smaller angle between two compass directions, from 0 to 180 degrees. */
export function angleBetweenDegrees(oneDegrees: number, otherDegrees: number): number {
  const difference = Math.abs(oneDegrees - otherDegrees) % 360;
  return Math.min(difference, 360 - difference);
}

function rainNow({ rainInches, rainChancePercent }: WeatherHour, settings: SprayWeatherSettings): HourReason[] {
  const authority: Authority = { basis: "common-practice", source: "company setting on rain" };
  if (rainInches !== undefined && rainInches >= settings.rainFromInches) {
    return [closedBy("rain", authority, `It rains in this hour (${shown(rainInches)} in).`)];
  }
  if (rainChancePercent === undefined || rainChancePercent < settings.rainChanceFromPercent) return [];
  return [careFor("rain-chance", authority, `The chance of rain in this hour is ${shown(rainChancePercent)} %.`)];
}

function inversion({ slot, weather }: HourInWeather, sun: SunTimes): HourReason[] {
  const span = { fromEpochMilliseconds: slot.startsAtEpochMilliseconds, untilEpochMilliseconds: slot.endsAtEpochMilliseconds };
  const answer = judgeInversion(span, { windMph: weather.windMph, sky: weather.sky ?? "unknown" }, sun);
  const authority: Authority = { basis: "handbook", source: INVERSION_SOURCE };
  if (!answer.ok || answer.value.kind === "not-expected") return [];
  if (answer.value.kind === "expected") {
    return [careFor("inversion", authority, "Light wind and a clear sky near dawn or dusk: expect an inversion, in which fine drops drift far.")];
  }
  return [careFor("inversion", authority, `An inversion can't be ruled out: ${answer.value.unknown.join(" and ")} not known.`)];
}

const DELTA_T_WORDS: Readonly<Record<Exclude<DeltaTClass, "ideal">, string>> = {
  "below-2": "below 2: drops last and may drift far",
  "above-8": "above 8: drops dry fast",
  "above-10": "above 10: drops dry out before they work",
};

function deltaTNote({ temperatureF, relativeHumidityPercent }: WeatherHour, elevationMeters: number): HourReason[] {
  if (temperatureF === undefined || relativeHumidityPercent === undefined) return [];
  const answer = deltaT(celsiusFromFahrenheit(temperatureF), relativeHumidityPercent, airPressureKilopascals(elevationMeters));
  if (!answer.ok || answer.value.classification === "ideal") return [];
  const authority: Authority = { basis: "handbook", source: DELTA_T_SOURCE };
  const { deltaTC, classification } = answer.value;
  return [noteOf("delta-t", authority, `Delta T is ${deltaTC.toFixed(1)} °C, ${DELTA_T_WORDS[classification]}.`)];
}

type Refused = { readonly ok: false; readonly refusal: InputRefusal };

function refuseElevation(elevationMeters: number): Refused | undefined {
  return refuseOutOfRange([
    { field: "elevationMeters", words: "The elevation", value: elevationMeters, lowest: -450, highest: 6000, unit: "m" },
  ]);
}

function refuseHours(hours: readonly WeatherHour[], slots: readonly LocalHour[]): Refused | undefined {
  const starts = hours.map(({ startsAtEpochMilliseconds }) => startsAtEpochMilliseconds);
  const firstSlot = slots[0]?.startsAtEpochMilliseconds ?? Number.NaN;
  const offGrid = starts.find((start) => !Number.isInteger((start - firstSlot) / ONE_HOUR_MILLISECONDS));
  if (offGrid !== undefined) {
    return badInput("startsAtEpochMilliseconds", String(offGrid), "hours that begin when the day's hours begin", "An hour of weather does not begin when an hour of the day begins.");
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

function readingRanges(hour: WeatherHour): readonly RangeCheck[] {
  const temperature = (value: number): RangeCheck => ({ field: "temperatureF", words: "The temperature", value, lowest: -130, highest: 140, unit: "°F" });
  const direction = (value: number): RangeCheck => ({ field: "windFromDegrees", words: "The wind direction", value, lowest: 0, highest: 360, unit: "°" });
  return [
    ...given(hour.temperatureF, temperature),
    ...given(hour.relativeHumidityPercent, (value) => percentRange("relativeHumidityPercent", "The relative humidity", value)),
    ...given(hour.windMph, (value) => amountRange("windMph", "The wind", value, "mph")),
    ...given(hour.gustMph, (value) => amountRange("gustMph", "The gusts", value, "mph")),
    ...given(hour.windFromDegrees, direction),
    ...given(hour.rainInches, (value) => amountRange("rainInches", "The rain", value, "in")),
    ...given(hour.rainChancePercent, (value) => percentRange("rainChancePercent", "The chance of rain", value)),
  ];
}

function given(value: number | undefined, check: (value: number) => RangeCheck): readonly RangeCheck[] {
  return value === undefined ? [] : [check(value)];
}
