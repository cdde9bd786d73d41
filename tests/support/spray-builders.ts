// Builders for the tests of spray weather: a product that limits nothing, and ordinary hours of a local day.
import { type CalendarDate, addDays } from "#domain/foundation/calendar-date";
import { localHours } from "#domain/weather/local-hours";
import { type SprayDayQuestion } from "#domain/weather/spray-hours";
import { DEFAULT_SPRAY_WEATHER_SETTINGS, type WeatherLimits, type WeatherMix } from "#domain/weather/spray-limits";
import { type WeatherHour } from "#domain/weather/spray-reasons";
import { valueOf } from "./domain-answers";

/** A limit that stands on a label. */
export const label = { basis: "label", source: "label of Alpha, directions" } as const;

/** A product whose label was read and limits nothing. */
export const FREE_OF_LIMITS: WeatherLimits = {
  productName: "Alpha",
  lowestTemperature: "none",
  highestTemperature: "none",
  highestTemperatureAhead: "none",
  lowestWind: "none",
  highestWind: "none",
  rainfast: "none",
  heavyRain: "none",
  soil: "none",
};

/** A mix of one product with these limits. */
export function mixOf(change: Partial<WeatherLimits> = {}, method: WeatherMix["method"] = "spray"): WeatherMix {
  return { mixId: method, method, products: [{ ...FREE_OF_LIMITS, ...change }] };
}

/** Weather that closes nothing. */
export const FAIR = {
  temperatureF: 72,
  relativeHumidityPercent: 55,
  windMph: 6,
  gustMph: 9,
  windFromDegrees: 270,
  rainInches: 0,
  rainChancePercent: 5,
  sky: "clear",
  soil: "workable",
} as const satisfies Omit<WeatherHour, "startsAtEpochMilliseconds">;

/** Fair hours of a local day and the next, changed by their index from the first. */
export function fairHours(
  date: CalendarDate,
  timeZone: string,
  change: (index: number) => Partial<WeatherHour> = () => ({}),
): WeatherHour[] {
  const hours = [...valueOf(localHours(date, timeZone)), ...valueOf(localHours(addDays(date, 1), timeZone))];
  return hours.map(({ startsAtEpochMilliseconds }, index) => ({
    startsAtEpochMilliseconds,
    ...FAIR,
    ...change(index),
  }));
}

/** A question about a fair day near Columbus, Ohio. */
export function questionOf(date: CalendarDate, change: Partial<SprayDayQuestion> = {}): SprayDayQuestion {
  return {
    date,
    timeZone: "America/New_York",
    place: { latitudeDegrees: 39.96, longitudeDegrees: -83, elevationMeters: 240 },
    origin: { kind: "forecast", name: "hourly forecast" },
    hours: fairHours(date, "America/New_York"),
    mixes: [mixOf()],
    sensitivePlaces: [],
    settings: DEFAULT_SPRAY_WEATHER_SETTINGS,
    ...change,
  };
}
