import { ONE_HOUR_MILLISECONDS } from "#domain/turf/hourly-series";
import { type HourAhead, type HourInWeather, hoursUntil, when } from "#domain/weather/product-hour";
import { type WeatherLimits, type WeatherMix } from "#domain/weather/spray-limits";
import { type HourReason, type ReasonAuthority, careFor, closedBy, shown, shownRain, undecidedBy } from "#domain/weather/spray-reasons";

/**
 * Rain in inches an hour above which it is heavy. Source: American Meteorological Society, Glossary of Meteorology,
 * rain: heavy is over 0.30 in an hour.
 */
export const HEAVY_RAIN_ABOVE_INCHES = 0.3;

/**
 * How far heavy rain is looked for after the work, and the rain of all these hours together that washes off as much.
 * Source: University of Missouri (Warmund), March 28, 2018, rainfastness: 2 in or more within 24 h generally means to
 * apply again, and an inch in one hour removes more than a slow drizzle. That a single heavy hour of these is for care
 * is common practice.
 */
export const HEAVY_RAIN_WITHIN_HOURS = 24;
export const HEAVY_RAIN_TOGETHER_INCHES = 2;

const GROUND: ReasonAuthority = { basis: "common-practice", source: "common practice: nothing goes on frozen or saturated ground, from which it runs off" };
const GRANULES: ReasonAuthority = {
  basis: "common-practice",
  source: "common practice: granules wash away in heavy rain and stick to wet leaves; heavy is over 0.30 in an hour (American Meteorological Society, Glossary of Meteorology)",
};

const HEAVY_AFTER: ReasonAuthority = {
  basis: "common-practice",
  source:
    "common practice: nothing is put down before heavy rain; heavy is over 0.30 in an hour (American Meteorological Society, Glossary of Meteorology), or 2 in within 24 h (University of Missouri, March 28, 2018)",
};

/**
 * What the house asks of the ground and of rain in an hour, for sprays and granular work alike, where labels ask
 * nothing. Frozen or saturated soil closes every method; a state of the soil that nobody gave is for care, since no
 * forecast has it and whoever stands on the lawn sees it. Granular work is closed by falling heavy rain and by rain that
 * nobody knows, and lighter rain is for care. Heavy rain in the 24 h after is for care with both, and so is a forecast
 * that ends before them. A label that limits rain itself decides for its product instead. So it is where nobody has read
 * the label for heavy rain: the hour is then closed by the limit that is unread.
 */
export function judgeGroundHour({ method, products }: WeatherMix, hour: HourInWeather): readonly HourReason[] {
  const limitedByHouse = products.filter(({ rainfast, heavyRain }) => rainfast === "none" && heavyRain === "none");
  return [
    ...soilOfHour(products, hour),
    ...(method === "granular" ? limitedByHouse.flatMap((product) => granulesInRain(product, hour)) : []),
    ...limitedByHouse.flatMap((product) => heavyRainAfter(product, hour)),
  ];
}

function soilOfHour(products: readonly WeatherLimits[], { weather: { soil } }: HourInWeather): readonly HourReason[] {
  if (soil === "workable" || products.some((product) => labelSpeaksOfSoil(product, soil))) return [];
  if (soil === undefined) return [careFor("soil", GROUND, "Nobody has said whether the soil is frozen or saturated: look at the lawn.")];
  return [closedBy("soil", GROUND, `The soil is ${soil}; nothing goes on such soil.`)];
}

/** Whether a product's own limit already closes the hour for the state of the soil, so that it is said once. */
function labelSpeaksOfSoil({ soil: limit }: WeatherLimits, soil: "frozen" | "saturated" | undefined): boolean {
  if (limit === "none" || limit === "unknown") return false;
  return soil === undefined ? limit.closedWhen.length > 0 : limit.closedWhen.includes(soil);
}

function granulesInRain({ productName }: WeatherLimits, hour: HourInWeather): readonly HourReason[] {
  const { rainInches } = hour.weather;
  if (rainInches === undefined) return [undecidedBy("rain", GRANULES, `The rain in this hour is not known, and heavy rain washes ${productName} away.`, productName)];
  if (rainInches > HEAVY_RAIN_ABOVE_INCHES) return [closedBy("rain", GRANULES, `It rains hard in this hour (${shown(rainInches)} in); ${productName} would wash away.`, productName)];
  if (rainInches < hour.rainFromInches) return [];
  return [careFor("rain", GRANULES, `It rains in this hour (${shownRain(rainInches)} in); ${productName} sticks to wet leaves: see whether it must stay dry.`, productName)];
}

/** Heavy rain after the hour; what falls in the hour itself is judged by itself. */
function heavyRainAfter({ productName }: WeatherLimits, hour: HourInWeather): readonly HourReason[] {
  const after = hoursUntil(hour, HEAVY_RAIN_WITHIN_HOURS * ONE_HOUR_MILLISECONDS).slice(1);
  const washed = `${productName} may wash away`;
  const heavy = after.find(({ weather }) => weather?.rainInches !== undefined && weather.rainInches > HEAVY_RAIN_ABOVE_INCHES);
  if (heavy?.weather?.rainInches !== undefined) {
    return [careFor("heavy-rain", HEAVY_AFTER, `It is to rain hard ${when(heavy.startsAt, hour)} (${shown(heavy.weather.rainInches)} in); ${washed}.`, productName)];
  }
  const togetherInches = after.reduce((sum, { weather }) => sum + (weather?.rainInches ?? 0), 0);
  // Hundredths of an inch are added up in binary, so the sum may end a hair below what a gauge would show.
  if (togetherInches + 1e-9 >= HEAVY_RAIN_TOGETHER_INCHES) {
    return [careFor("heavy-rain", HEAVY_AFTER, `Rain of ${shown(togetherInches)} in is expected within ${HEAVY_RAIN_WITHIN_HOURS} h; ${washed}.`, productName)];
  }
  return rainNotKnown(after, hour).map((sentence) => careFor("heavy-rain", HEAVY_AFTER, `${sentence}: where heavy rain comes within ${HEAVY_RAIN_WITHIN_HOURS} h, ${washed}.`, productName));
}

function rainNotKnown(after: readonly HourAhead[], hour: HourInWeather): readonly string[] {
  const unknown = after.find(({ weather }) => weather?.rainInches === undefined);
  return unknown === undefined ? [] : [`The rain ${when(unknown.startsAt, hour)} is not known`];
}
