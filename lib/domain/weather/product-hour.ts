import { ONE_HOUR_MILLISECONDS } from "#domain/turf/hourly-series";
import { type LocalHour, localTimeAt } from "#domain/weather/local-hours";
import { type OnFile, type Stated, type TemperatureAheadLimit, type TemperatureLimit, type WeatherLimits } from "#domain/weather/spray-limits";
import {
  type HourReason,
  type HourRule,
  type WeatherHour,
  careFor,
  closedBy,
  shown,
  shownApart,
  shownRain,
  undecidedBy,
  unreadLimit,
} from "#domain/weather/spray-reasons";

/**
 * An hour to be judged, with its weather, a way to the weather of the hours after it, from how much rain (inches in an
 * hour) an hour is rainy, and from which chance of rain (percent) a dry one is for care.
 */
export interface HourInWeather {
  readonly slot: LocalHour;
  readonly weather: WeatherHour;
  /** The hour that begins at an instant, or undefined where there is none on file. */
  readonly weatherAt: (startsAtEpochMilliseconds: number) => WeatherHour | undefined;
  readonly timeZone: string;
  readonly rainFromInches: number;
  readonly rainChanceFromPercent: number;
}

/** Every reason that one product's own limits give in one hour; none when the product may go out. */
export function judgeProductHour(product: WeatherLimits, hour: HourInWeather): readonly HourReason[] {
  return [
    ...temperature("temperature-low", product, product.lowestTemperature, hour),
    ...temperature("temperature-high", product, product.highestTemperature, hour),
    ...temperatureAhead(product, hour),
    ...wind("wind-low", product, product.lowestWind, hour),
    ...wind("wind-high", product, product.highestWind, hour),
    ...rainfast(product, hour),
    ...heavyRain(product, hour),
    ...soil(product, hour),
  ];
}

/** Whether a temperature in °F passes a limit, on the side that the rule looks at. */
export function passesTemperature(
  rule: "temperature-low" | "temperature-high",
  limit: TemperatureLimit,
  degreesF: number,
): boolean {
  if (degreesF === limit.limitF) return limit.reaching === "forbidden";
  return rule === "temperature-low" ? degreesF < limit.limitF : degreesF > limit.limitF;
}

function temperature(
  rule: "temperature-low" | "temperature-high",
  { productName }: WeatherLimits,
  limit: OnFile<TemperatureLimit>,
  { weather: { temperatureF } }: HourInWeather,
): HourReason[] {
  const what = rule === "temperature-low" ? "lowest temperature" : "highest temperature";
  if (limit === "none") return [];
  if (limit === "unknown") return [unreadLimit(rule, productName, what)];
  if (temperatureF === undefined)
    return [undecidedBy(rule, limit, `The temperature is not known; ${productName} has a limit.`, productName)];
  if (!passesTemperature(rule, limit, temperatureF)) return [];
  const [found, allowed] = shownApart(temperatureF, limit.limitF);
  const side = rule === "temperature-low" ? "above" : "below";
  const wanted = temperatureF === limit.limitF ? `${productName} must stay ${side} ${allowed} °F` : `the ${what} for ${productName} is ${allowed} °F`;
  const sentence = `The temperature is ${found} °F; ${wanted}.`;
  return [closedBy(rule, limit, sentence, productName)];
}

function temperatureAhead(product: WeatherLimits, hour: HourInWeather): HourReason[] {
  const { highestTemperatureAhead: limit, productName } = product;
  if (limit === "none") return [];
  if (limit === "unknown")
    return [unreadLimit("temperature-ahead", productName, "highest temperature of the following hours")];
  const ahead = hoursUntil(hour, limit.withinHours * ONE_HOUR_MILLISECONDS);
  const hot = ahead.find(
    ({ weather }) =>
      weather?.temperatureF !== undefined && passesTemperature("temperature-high", limit, weather.temperatureF),
  );
  if (hot?.weather?.temperatureF !== undefined) {
    const [found, allowed] = shownApart(hot.weather.temperatureF, limit.limitF);
    const sentence = `The temperature is ${found} °F ${when(hot.startsAt, hour)}; ${mustNotSee(productName, limit, allowed)}`;
    return [closedBy("temperature-ahead", limit, sentence, productName)];
  }
  const unknown = ahead.find(({ weather }) => weather?.temperatureF === undefined);
  return unknown === undefined
    ? []
    : [notForecast("temperature-ahead", limit, "temperature", unknown.startsAt, hour, productName)];
}

/** "Alpha must not see 85 °F or more within 24 h.", where the limit itself is forbidden too; the limit as it is written. */
export function mustNotSee(productName: string, { reaching, withinHours }: TemperatureAheadLimit, allowed: string): string {
  return `${productName} must not see ${reaching === "forbidden" ? `${allowed} °F or more` : `more than ${allowed} °F`} within ${shown(withinHours)} h.`;
}

/**
 * A label limits the wind and seldom says how it is measured. It is taken for the mean wind of the hour, as a forecast
 * gives it, and closes by that; gusts above it are wind too, in which the limit is passed again and again, so they are
 * for care. No published rule on gusts was at hand: this is common practice on the label's figure.
 */
function wind(
  rule: "wind-low" | "wind-high",
  { productName }: WeatherLimits,
  limit: WeatherLimits["highestWind"],
  { weather: { windMph, gustMph } }: HourInWeather,
): HourReason[] {
  const what = rule === "wind-low" ? "lowest wind" : "highest wind";
  if (limit === "none") return [];
  if (limit === "unknown") return [unreadLimit(rule, productName, what)];
  if (windMph === undefined)
    return [undecidedBy(rule, limit, `The wind is not known; ${productName} has a limit.`, productName)];
  const passes = rule === "wind-low" ? windMph < limit.limitMph : windMph > limit.limitMph;
  if (!passes) return rule === "wind-high" ? gusts(productName, limit, gustMph) : [];
  const [found, allowed] = shownApart(windMph, limit.limitMph);
  return [closedBy(rule, limit, `The wind is ${found} mph; the ${what} for ${productName} is ${allowed} mph.`, productName)];
}

function gusts(productName: string, limit: Stated<WeatherLimits["highestWind"]>, gustMph: number | undefined): HourReason[] {
  if (gustMph === undefined || gustMph <= limit.limitMph) return [];
  const [found, allowed] = shownApart(gustMph, limit.limitMph);
  const sentence = `Gusts reach ${found} mph; the highest wind for ${productName} is ${allowed} mph.`;
  return [careFor("gusts", limit, sentence, productName)];
}

/**
 * Rain from the start of the hour until the rainfast time after its end: the work may take the whole hour. Where all of
 * it is forecast dry, a chance of rain that reaches the company's setting is for care.
 */
function rainfast({ rainfast: limit, productName }: WeatherLimits, hour: HourInWeather): HourReason[] {
  if (limit === "none") return [];
  if (limit === "unknown") return [unreadLimit("rain", productName, "rainfast time")];
  const ahead = hoursUntil(hour, limit.minutes * 60_000);
  const wet = ahead.find(
    ({ weather }) => weather?.rainInches !== undefined && weather.rainInches >= hour.rainFromInches,
  );
  if (wet?.weather?.rainInches !== undefined) {
    const sentence = `Rain of ${shownRain(wet.weather.rainInches)} in is expected ${when(wet.startsAt, hour)}; ${productName} needs ${shown(limit.minutes / 60)} h without rain.`;
    return [closedBy("rain", limit, sentence, productName)];
  }
  const unknown = ahead.find(({ weather }) => weather?.rainInches === undefined);
  return unknown === undefined ? chanceOfRain(productName, limit, ahead, hour) : [notForecast("rain", limit, "rain", unknown.startsAt, hour, productName)];
}

function chanceOfRain(productName: string, limit: Stated<WeatherLimits["rainfast"]>, ahead: readonly HourAhead[], hour: HourInWeather): HourReason[] {
  const likely = ahead.find(({ weather }) => weather?.rainChancePercent !== undefined && weather.rainChancePercent >= hour.rainChanceFromPercent);
  if (likely?.weather?.rainChancePercent === undefined) return [];
  const sentence = `The chance of rain is ${shown(likely.weather.rainChancePercent)} % ${when(likely.startsAt, hour)}; ${productName} needs ${shown(limit.minutes / 60)} h without rain.`;
  return [careFor("rain-chance", limit, sentence, productName)];
}

function heavyRain({ heavyRain: limit, productName }: WeatherLimits, hour: HourInWeather): HourReason[] {
  if (limit === "none") return [];
  if (limit === "unknown") return [unreadLimit("heavy-rain", productName, "limit on heavy rain")];
  const ahead = hoursUntil(hour, limit.withinHours * ONE_HOUR_MILLISECONDS);
  const known = ahead.flatMap(({ weather }) => (weather?.rainInches === undefined ? [] : [weather.rainInches]));
  const totalInches = known.reduce((sum, inches) => sum + inches, 0);
  // Hundredths of an inch are added up in binary, so the sum may end a hair below what a gauge would show.
  if (totalInches + 1e-9 >= limit.inches) {
    const sentence = `Rain of ${shown(totalInches)} in is expected within ${shown(limit.withinHours)} h; ${productName} must not be followed by ${shown(limit.inches)} in.`;
    return [closedBy("heavy-rain", limit, sentence, productName)];
  }
  const unknown = ahead.find(({ weather }) => weather?.rainInches === undefined);
  return unknown === undefined ? [] : [notForecast("heavy-rain", limit, "rain", unknown.startsAt, hour, productName)];
}

function soil({ soil: limit, productName }: WeatherLimits, { weather }: HourInWeather): HourReason[] {
  if (limit === "none" || (limit !== "unknown" && limit.closedWhen.length === 0)) return [];
  if (limit === "unknown") return [unreadLimit("soil", productName, "limit on frozen or saturated soil")];
  if (weather.soil === undefined) {
    const sentence = `Nobody has said whether the soil is ${limit.closedWhen.join(" or ")}; ${productName} must not go on such soil.`;
    return [undecidedBy("soil", limit, sentence, productName)];
  }
  if (weather.soil === "workable" || !limit.closedWhen.includes(weather.soil)) return [];
  return [
    closedBy("soil", limit, `The soil is ${weather.soil}; ${productName} must not go on such soil.`, productName),
  ];
}

/** An hour after another, with its weather as far as there is any on file. */
export interface HourAhead {
  readonly startsAt: number;
  readonly weather: WeatherHour | undefined;
}

/** The hours that a span touches which begins with this hour and ends so long after its end; this hour is the first. */
export function hoursUntil({ slot, weatherAt }: HourInWeather, afterEndMilliseconds: number): readonly HourAhead[] {
  const milliseconds = slot.endsAtEpochMilliseconds + afterEndMilliseconds - slot.startsAtEpochMilliseconds;
  return Array.from({ length: Math.ceil(milliseconds / ONE_HOUR_MILLISECONDS) }, (_, index) => {
    const startsAt = slot.startsAtEpochMilliseconds + index * ONE_HOUR_MILLISECONDS;
    return { startsAt, weather: weatherAt(startsAt) };
  });
}

function notForecast(
  rule: HourRule,
  authority: Stated<OnFile<object>>,
  what: string,
  startsAt: number,
  hour: HourInWeather,
  productName: string,
): HourReason {
  return undecidedBy(
    rule,
    authority,
    `The ${what} ${when(startsAt, hour)} is not known, and ${productName} depends on it.`,
    productName,
  );
}

/** "at 14:00", with the date when it is another day. */
export function when(epochMilliseconds: number, { slot, timeZone }: HourInWeather): string {
  const there = localTimeAt(epochMilliseconds, timeZone);
  const here = localTimeAt(slot.startsAtEpochMilliseconds, timeZone);
  return there.date === here.date ? `at ${there.localTime}` : `at ${there.localTime} on ${there.date}`;
}
