import { namedClockWords } from "#domain/foundation/clock-words";
import { ONE_HOUR_MILLISECONDS } from "#domain/turf/hourly-series";
import { type HourInWeather, judgeProductHour } from "#domain/weather/product-hour";
import { DEFAULT_SPRAY_WEATHER_SETTINGS, type SprayWeatherSettings, type TemperatureAheadLimit, type WeatherLimits } from "#domain/weather/spray-limits";
import { type HourReason, type HourVerdict, worstVerdict } from "#domain/weather/spray-reasons";
import { judgeSprayHour, type SpraySite } from "#domain/weather/spraying-hour";
import { type SunTimes } from "#domain/weather/sun-times";
import { DAY_MINUTES, dayWords, type HourByClock, hourWords } from "#domain/worksheets/typed-hours";

/** The limits of a label and of the house as they were entered; what is undefined was left empty. */
export interface EnteredLimits {
  readonly coolestF: number | undefined;
  readonly hottestF: number | undefined;
  readonly hottestAfter: Pick<TemperatureAheadLimit, "limitF" | "withinHours"> | undefined;
  readonly windMph: number;
  readonly rainfastHours: number;
}

/** Sunrise and sunset in minutes after midnight, each by itself; undefined where it was not entered. */
export interface EnteredSun {
  readonly sunriseMinute: number | undefined;
  readonly sunsetMinute: number | undefined;
}

/** How an hour stands; undecided where nothing closes it but what is not known of the hours after it. */
export type HourStanding = HourVerdict | "undecided";

/** An hour with how it stands and every reason. */
export interface JudgedHourByClock extends HourByClock {
  readonly standing: HourStanding;
  readonly reasons: readonly HourReason[];
}

const LABEL = { basis: "label", source: "as entered, from the label" } as const;

function productOf({ coolestF, hottestF, hottestAfter, windMph, rainfastHours }: EnteredLimits): WeatherLimits {
  const temperature = (limitF: number | undefined) => (limitF === undefined ? ("none" as const) : { limitF, reaching: "allowed" as const, ...LABEL });
  return {
    productName: "this spray",
    lowestTemperature: temperature(coolestF),
    highestTemperature: temperature(hottestF),
    highestTemperatureAhead: hottestAfter === undefined ? "none" : { ...hottestAfter, reaching: "allowed", ...LABEL },
    lowestWind: "none",
    highestWind: { limitMph: windMph, ...LABEL },
    rainfast: rainfastHours === 0 ? "none" : { minutes: rainfastHours * 60, ...LABEL },
    heavyRain: "none",
    soil: "none",
  };
}

function siteOf(windMph: number): SpraySite {
  const settings: SprayWeatherSettings = { ...DEFAULT_SPRAY_WEATHER_SETTINGS, highestWind: { limitMph: windMph, ...LABEL } };
  return { place: { latitudeDegrees: 0, longitudeDegrees: 0, elevationMeters: 0 }, sensitivePlaces: [], settings };
}

/** The sun of the day that an hour is of. An end that was not entered lies out of reach: no hour is near it. */
function sunOf({ sunriseMinute, sunsetMinute }: EnteredSun, days: number): SunTimes {
  if (sunriseMinute === undefined && sunsetMinute === undefined) return { kind: "always-up" };
  const at = (minute: number) => (days * DAY_MINUTES + minute) * 60_000;
  return { kind: "rises-and-sets", sunriseEpochMilliseconds: at(sunriseMinute ?? -Infinity), sunsetEpochMilliseconds: at(sunsetMinute ?? Infinity) };
}

/** Judges each hour by the limits that were entered, by the rain and the wind of spraying, and by the sun for inversions. */
export function judgeHours(hours: readonly HourByClock[], limits: EnteredLimits, sun: EnteredSun): readonly JudgedHourByClock[] {
  const byStart = new Map(hours.map(({ weather }) => [weather.startsAtEpochMilliseconds, weather]));
  const [product, site] = [productOf(limits), siteOf(limits.windMph)];
  return hours.map((hour) => {
    const start = hour.weather.startsAtEpochMilliseconds;
    const inWeather: HourInWeather = {
      slot: { startsAtEpochMilliseconds: start, endsAtEpochMilliseconds: start + ONE_HOUR_MILLISECONDS, localTime: hourWords(hour.minute), utcOffsetMinutes: 0 },
      weather: hour.weather,
      weatherAt: (startsAt) => byStart.get(startsAt),
      timeZone: "UTC",
      rainFromInches: site.settings.rainFromInches,
      rainChanceFromPercent: site.settings.rainChanceFromPercent,
    };
    const ofProduct = judgeProductHour(product, inWeather);
    // The wind, and the rain of the hour itself, are said once: by the product's own limit where it has one.
    const ofSpraying = judgeSprayHour(site, inWeather, sunOf(sun, Math.floor(hour.minute / DAY_MINUTES))).filter(({ rule }) => rule !== "wind-high" && !ofProduct.some((own) => own.rule === rule));
    const reasons = [...ofProduct, ...ofSpraying].map((reason) => ({ ...reason, sentence: inClockWords(reason.sentence) }));
    return { ...hour, standing: standingOf(reasons), reasons };
  });
}

function standingOf(reasons: readonly HourReason[]): HourStanding {
  const closing = reasons.filter(({ verdict }) => verdict === "closed");
  return closing.length > 0 && closing.every(({ isUndecided }) => isUndecided) ? "undecided" : worstVerdict(reasons);
}

/** The weather's sentences have the time of a record; a worksheet's days have no dates, and it reads "4 pm the next day". */
function inClockWords(sentence: string): string {
  return sentence.replace(/\bat (\d{2}):00(?: on 1970-01-(\d{2}))?/gu, (_all, hour: string, date?: string) => `at ${namedClockWords(Number(hour) * 60)}${date === undefined ? "" : dayWords(Number(date) - 1)}`);
}
