import { celsiusFromFahrenheit } from "#domain/turf/temperature-scale";
import { airPressureKilopascals } from "#domain/turf/vapor-pressure";
import { INVERSION_SOURCE, judgeInversion } from "#domain/weather/inversion";
import { type HourInWeather } from "#domain/weather/product-hour";
import {
  type Authority,
  type SensitivePlace,
  type SprayWeatherSettings,
  VARIABLE_BELOW_WIND_MPH,
} from "#domain/weather/spray-limits";
import {
  type HourReason,
  type WeatherHour,
  careFor,
  closedBy,
  noteOf,
  shown,
  shownApart,
  shownRain,
  undecidedBy,
} from "#domain/weather/spray-reasons";
import { type Place, type SunTimes } from "#domain/weather/sun-times";
import { type DeltaTClass, deltaT } from "#domain/weather/wet-bulb";

/** Where is sprayed, what must not be hit there, and what the company holds to. */
export interface SpraySite {
  readonly place: Place & { readonly elevationMeters: number };
  readonly sensitivePlaces: readonly SensitivePlace[];
  readonly settings: SprayWeatherSettings;
}

const PESTICIDE_STEWARDSHIP = "National Pesticide Stewardship, drift: wind 3 to 8 mph and away from sensitive areas";
const DELTA_T_SOURCE = "Australian Bureau of Meteorology, quoted by sprayers101.com/delta-t";

/**
 * What holds in an hour for every spray at a site, whatever is in the tank. Light wind, drift and inversion: National
 * Pesticide Stewardship and GRDC; Delta T: Australian Bureau of Meteorology; wind and rain: the company's own settings.
 */
export function judgeSprayHour(site: SpraySite, hour: HourInWeather, sun: SunTimes): readonly HourReason[] {
  const { settings, sensitivePlaces, place } = site;
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
  if (windMph > highestWind.limitMph) {
    const [found, allowed] = shownApart(windMph, highestWind.limitMph);
    return [closedBy("wind-high", highestWind, `The wind is ${found} mph; the company sprays up to ${allowed} mph.`)];
  }
  if (gustMph === undefined || gustMph <= highestWind.limitMph) return [];
  const [found, allowed] = shownApart(gustMph, highestWind.limitMph);
  return [careFor("gusts", highestWind, `Gusts reach ${found} mph; the company sprays up to ${allowed} mph.`)];
}

function towardsSensitive(
  { windMph, windFromDegrees }: WeatherHour,
  places: readonly SensitivePlace[],
  { towardsWithinDegrees }: SprayWeatherSettings,
): HourReason[] {
  const authority: Authority = { basis: "handbook", source: PESTICIDE_STEWARDSHIP };
  return places.flatMap(({ name, bearingDegrees }) => {
    if (windMph === undefined)
      return [undecidedBy("towards-sensitive", authority, `The wind is not known, and ${name} is near.`)];
    if (windMph < VARIABLE_BELOW_WIND_MPH) {
      return [
        careFor(
          "towards-sensitive",
          authority,
          `The wind is light (${shown(windMph)} mph) and may turn towards ${name}.`,
        ),
      ];
    }
    if (windFromDegrees === undefined) {
      return [
        undecidedBy("towards-sensitive", authority, `The direction of the wind is not known, and ${name} is near.`),
      ];
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
  const authority = { basis: "weather", source: "company setting on rain" } as const;
  if (rainInches === undefined) return [undecidedBy("rain", authority, "The rain in this hour is not known.")];
  if (rainInches >= settings.rainFromInches) {
    return [closedBy("rain", authority, `It rains in this hour (${shownRain(rainInches)} in).`)];
  }
  if (rainChancePercent === undefined || rainChancePercent < settings.rainChanceFromPercent) return [];
  return [careFor("rain-chance", authority, `The chance of rain in this hour is ${shown(rainChancePercent)} %.`)];
}

function inversion({ slot, weather }: HourInWeather, sun: SunTimes): HourReason[] {
  const span = {
    fromEpochMilliseconds: slot.startsAtEpochMilliseconds,
    untilEpochMilliseconds: slot.endsAtEpochMilliseconds,
  };
  const answer = judgeInversion(span, { windMph: weather.windMph, sky: weather.sky ?? "unknown" }, sun);
  const authority: Authority = { basis: "handbook", source: INVERSION_SOURCE };
  if (!answer.ok || answer.value.kind === "not-expected") return [];
  if (answer.value.kind === "expected") {
    return [
      careFor(
        "inversion",
        authority,
        "Light wind and a clear sky near dawn or dusk: expect an inversion, in which fine drops drift far.",
      ),
    ];
  }
  return [
    careFor(
      "inversion",
      authority,
      `An inversion can't be ruled out: ${notKnown(answer.value.unknown)}.`,
    ),
  ];
}

function notKnown(facts: readonly ("wind" | "sky")[]): string {
  return `${facts.map((fact) => `the ${fact}`).join(" and ")} ${facts.length === 1 ? "is" : "are"} not known`;
}

const DELTA_T_WORDS: Readonly<Record<Exclude<DeltaTClass, "ideal">, string>> = {
  "below-2": "below 2: drops last and may drift far",
  "above-8": "above 8: drops dry fast",
  "above-10": "above 10: drops dry out before they work",
};

function deltaTNote({ temperatureF, relativeHumidityPercent }: WeatherHour, elevationMeters: number): HourReason[] {
  if (temperatureF === undefined || relativeHumidityPercent === undefined) return [];
  const answer = deltaT(
    celsiusFromFahrenheit(temperatureF),
    relativeHumidityPercent,
    airPressureKilopascals(elevationMeters),
  );
  if (!answer.ok || answer.value.classification === "ideal") return [];
  const authority: Authority = { basis: "handbook", source: DELTA_T_SOURCE };
  const { deltaTC, classification } = answer.value;
  return [noteOf("delta-t", authority, `Delta T is ${deltaTC.toFixed(1)} °C, ${DELTA_T_WORDS[classification]}.`)];
}
