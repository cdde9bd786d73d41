import { type HourInWeather } from "#domain/weather/product-hour";
import { type WeatherLimits, type WeatherMix } from "#domain/weather/spray-limits";
import { type HourReason, type ReasonAuthority, careFor, closedBy, shown, shownRain, undecidedBy } from "#domain/weather/spray-reasons";

/**
 * Rain in inches an hour above which it is heavy. Source: American Meteorological Society, Glossary of Meteorology,
 * rain: heavy is over 0.30 in an hour.
 */
export const HEAVY_RAIN_ABOVE_INCHES = 0.3;

const GROUND: ReasonAuthority = { basis: "common-practice", source: "common practice: nothing goes on frozen or saturated ground, from which it runs off" };
const GRANULES: ReasonAuthority = {
  basis: "common-practice",
  source: "common practice: granules wash away in heavy rain and stick to wet leaves; heavy is over 0.30 in an hour (American Meteorological Society, Glossary of Meteorology)",
};

/**
 * What the house asks of the ground and of rain in an hour, for sprays and granular work alike, where labels ask
 * nothing. Frozen or saturated soil closes every method; a state of the soil that nobody gave is for care, since no
 * forecast has it and whoever stands on the lawn sees it. Granular work is closed by falling heavy rain and by rain that
 * nobody knows, and lighter rain is for care; a label that limits rain itself decides for its product instead. So it is
 * where nobody has read the label for heavy rain: the hour is then closed by the limit that is unread.
 */
export function judgeGroundHour({ method, products }: WeatherMix, hour: HourInWeather): readonly HourReason[] {
  return [...soilOfHour(products, hour), ...(method === "granular" ? products.flatMap((product) => granulesInRain(product, hour)) : [])];
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

function granulesInRain({ productName, rainfast, heavyRain }: WeatherLimits, hour: HourInWeather): readonly HourReason[] {
  const { rainInches } = hour.weather;
  if (rainfast !== "none" || heavyRain !== "none") return [];
  if (rainInches === undefined) return [undecidedBy("rain", GRANULES, `The rain in this hour is not known, and heavy rain washes ${productName} away.`, productName)];
  if (rainInches > HEAVY_RAIN_ABOVE_INCHES) return [closedBy("rain", GRANULES, `It rains hard in this hour (${shown(rainInches)} in); ${productName} would wash away.`, productName)];
  if (rainInches < hour.rainFromInches) return [];
  return [careFor("rain", GRANULES, `It rains in this hour (${shownRain(rainInches)} in); ${productName} sticks to wet leaves: see whether it must stay dry.`, productName)];
}
