import { MOST_WIND, type RangeCheck, type Refused, amountRange, refuseOutOfRange } from "#domain/turf/physical-range";

/** What a limit rests on. */
export type LimitBasis = "label" | "law" | "handbook" | "common-practice" | "house";

/** Who says so: the kind of authority and where it is written. */
export interface Authority {
  readonly basis: LimitBasis;
  readonly source: string;
}

/**
 * A limit as it is on file: stated, read and found to be none, or not read. An unread limit closes every hour,
 * since a label that nobody read is not a label without limits; see {@link limitsAskedOf} for what is spread.
 */
export type OnFile<Limit> = (Limit & Authority) | "none" | "unknown";

/** A limit that is stated. */
export type Stated<Limit> = Exclude<Limit, "none" | "unknown">;

/**
 * A temperature in °F that must not be passed. "Do not apply above 90 °F" allows reaching it; "at 85 °F or higher"
 * doesn't.
 */
export interface TemperatureLimit {
  readonly limitF: number;
  readonly reaching: "allowed" | "forbidden";
}

/** A temperature that must not be passed in the hours that follow an application. */
export interface TemperatureAheadLimit extends TemperatureLimit {
  readonly withinHours: number;
}

/** A wind speed that must not be passed. */
export interface WindLimit {
  readonly limitMph: number;
}

/** How many minutes a product must stay without rain after it is applied. */
export interface RainfastLimit {
  readonly minutes: number;
}

/** An amount of rain, within hours after an application, from which on it would wash away. */
export interface HeavyRainLimit {
  readonly inches: number;
  readonly withinHours: number;
}

/** States of the soil in which nothing may be applied. */
export interface SoilLimit {
  readonly closedWhen: readonly ("frozen" | "saturated")[];
}

/** What the weather must be for one product. */
export interface WeatherLimits {
  readonly productName: string;
  readonly lowestTemperature: OnFile<TemperatureLimit>;
  readonly highestTemperature: OnFile<TemperatureLimit>;
  readonly highestTemperatureAhead: OnFile<TemperatureAheadLimit>;
  readonly lowestWind: OnFile<WindLimit>;
  readonly highestWind: OnFile<WindLimit>;
  readonly rainfast: OnFile<RainfastLimit>;
  readonly heavyRain: OnFile<HeavyRainLimit>;
  readonly soil: OnFile<SoilLimit>;
}

/** What goes out in one pass of a visit: a tank of one or more products, or one granular product. */
export interface WeatherMix {
  readonly mixId: string;
  readonly method: "spray" | "granular";
  readonly products: readonly WeatherLimits[];
}

/** Something near a lawn that drift must not reach, and the compass bearing to it from the lawn (north 0, east 90). */
export interface SensitivePlace {
  readonly name: string;
  readonly bearingDegrees: number;
}

/** What the company holds to beyond labels. */
export interface SprayWeatherSettings {
  /** Wind in mph above which nothing is sprayed; a label may be stricter and never looser. */
  readonly highestWind: WindLimit & Authority;
  /** Wind within this angle to either side of the line to a sensitive place counts as blowing there. */
  readonly towardsWithinDegrees: number;
  /** Rain per hour from which an hour counts as rainy. */
  readonly rainFromInches: number;
  /** Chance of rain from which a dry forecast hour is a matter for care. */
  readonly rainChanceFromPercent: number;
}

/**
 * The settings a company starts with. The angle, the rain (the least that a gauge shows) and the chance of rain are
 * common practice.
 */
export const DEFAULT_SPRAY_WEATHER_SETTINGS: SprayWeatherSettings = {
  highestWind: {
    limitMph: 10,
    basis: "common-practice",
    source: "usual lawn label wording, UF/IFAS NW District, August 26, 2021: wind 10 mph or less",
  },
  towardsWithinDegrees: 45,
  rainFromInches: 0.01,
  rainChanceFromPercent: 50,
};

/** Wind in mph below which it has no direction to rely on. Source: National Pesticide Stewardship. */
export const VARIABLE_BELOW_WIND_MPH = 3;

/**
 * Refuses limits and settings that can't be meant: a negative wind or amount, an angle over 180 degrees, a bearing that
 * is none; of a product a temperature outside -60 to 140 °F, a wind over 100 mph, more than ten days of waiting, rain
 * outside 0.01 to 20 in. Beyond these ends, which are common practice, a unit is wrong. Each at its field, a product's
 * with its name before it.
 */
export function refuseImpossibleLimits(
  mixes: readonly WeatherMix[],
  sensitivePlaces: readonly SensitivePlace[],
  settings: SprayWeatherSettings,
): Refused | undefined {
  return refuseOutOfRange([
    amountRange("highestWind", "The company's highest wind", settings.highestWind.limitMph, MOST_WIND.milesPerHour),
    {
      field: "towardsWithinDegrees",
      words: "The angle towards a sensitive place",
      value: settings.towardsWithinDegrees,
      lowest: 0,
      highest: 180,
      unit: "°",
    },
    {
      field: "rainFromInches",
      words: "The rain that counts",
      value: settings.rainFromInches,
      lowest: 0.001,
      highest: 10,
      unit: "in",
    },
    {
      field: "rainChanceFromPercent",
      words: "The chance of rain that counts",
      value: settings.rainChanceFromPercent,
      lowest: 0,
      highest: 100,
      unit: "%",
    },
    ...sensitivePlaces.map(({ name, bearingDegrees }) => ({
      field: `bearing ${name}`,
      words: `The bearing to ${name}`,
      value: bearingDegrees,
      lowest: 0,
      highest: 360,
      unit: "°",
    })),
    ...mixes.flatMap(({ products }) => products.flatMap(productRanges)),
  ]);
}

function productRanges(product: WeatherLimits): readonly RangeCheck[] {
  const named = (
    field: keyof WeatherLimits,
    words: string,
    value: number,
    lowest: number,
    highest: number,
    unit: string,
  ) => ({
    field: `${product.productName} ${field}`,
    words: `${words} of ${product.productName}`,
    value,
    lowest,
    highest,
    unit,
  });
  const {
    lowestTemperature,
    highestTemperature,
    highestTemperatureAhead,
    lowestWind,
    highestWind,
    rainfast,
    heavyRain,
  } = product;
  return [
    ...stated(lowestTemperature).map(({ limitF }) =>
      named("lowestTemperature", "The lowest temperature", limitF, -60, 140, "°F"),
    ),
    ...stated(highestTemperature).map(({ limitF }) =>
      named("highestTemperature", "The highest temperature", limitF, -60, 140, "°F"),
    ),
    ...stated(highestTemperatureAhead).flatMap(({ limitF, withinHours }) => [
      named("highestTemperatureAhead", "The highest temperature ahead", limitF, -60, 140, "°F"),
      named("highestTemperatureAhead", "The time ahead", withinHours, 0, 240, "h"),
    ]),
    ...stated(lowestWind).map(({ limitMph }) => named("lowestWind", "The lowest wind", limitMph, 0, 100, "mph")),
    ...stated(highestWind).map(({ limitMph }) => named("highestWind", "The highest wind", limitMph, 0, 100, "mph")),
    ...stated(rainfast).map(({ minutes }) => named("rainfast", "The rainfast time", minutes, 0, 14_400, "min")),
    ...stated(heavyRain).flatMap(({ inches, withinHours }) => [
      named("heavyRain", "The heavy rain", inches, 0.01, 20, "in"),
      named("heavyRain", "The time for heavy rain", withinHours, 0, 240, "h"),
    ]),
  ];
}

/** The limits that must have been read for sprays alone: wind carries drops off, and rain washes them off the leaf. */
const ASKED_OF_SPRAYS_ALONE = ["lowestWind", "highestWind", "rainfast"] as const satisfies readonly (keyof WeatherLimits)[];

/**
 * A product's limits as they are asked of it in a mix of this method. Most bags name no wind and no time without rain, so
 * that for what is spread those count where they are stated and close and hold nothing where nobody has read them: in the
 * hours of a day as on the mix ticket. Heavy rain on granules is judged by the house's own rule where no label limits rain.
 */
export function limitsAskedOf(product: WeatherLimits, method: WeatherMix["method"]): WeatherLimits {
  const unread = method === "spray" ? [] : ASKED_OF_SPRAYS_ALONE.filter((limit) => product[limit] === "unknown");
  return unread.length === 0 ? product : { ...product, ...Object.fromEntries(unread.map((limit) => [limit, "none" as const])) };
}

/** The limit when it is stated, as a list of one or none. */
export function stated<Limit>(limit: OnFile<Limit>): readonly (Limit & Authority)[] {
  return limit === "none" || limit === "unknown" ? [] : [limit];
}
