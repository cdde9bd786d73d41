import { accept, refuse } from "#domain/foundation/outcome";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { parseNumber } from "#domain/quantities/parse-number";
import { toNumber } from "#domain/quantities/rational";
import {
  type Authority,
  DEFAULT_SPRAY_WEATHER_SETTINGS,
  type OnFile,
  refuseImpossibleLimits,
  type TemperatureLimit,
  type WeatherLimits,
} from "#domain/weather/spray-limits";
import { gather, partsOf, type ReadAnswer, readOnFile, readWord } from "#domain/label/label-answer";
import { type LabelUseText } from "#domain/label/label-fields";
import { readTime } from "#domain/label/label-time";
import { readDepth } from "#domain/label/label-water";

const NUMBER = String.raw`([\d.]+)`;
const DEGREES = String.raw`(?: ?(?:\u00B0 ?F?|degrees(?: F)?|F))`;
const FIGURE = `${NUMBER}${DEGREES}`;

function oneOf(patterns: readonly string[]): RegExp {
  return new RegExp(`^(?:${patterns.join("|")})$`, "iu");
}

// Which of two wordings is meant decides whether the figure itself is still allowed, so a bare figure is asked about.
const PATTERNS = {
  highest: {
    forbidden: oneOf([`(?:under|below|less than) ${FIGURE}`, `not at ${FIGURE} (?:or|and) (?:above|over|more|higher)`]),
    allowed: oneOf([`(?:up to|at most|not above|not over) ${FIGURE}`, `${FIGURE} (?:or|and) (?:under|below|less|lower)`]),
    ask: "Write under 85 °F where 85 is already too hot, or up to 85 °F where it is still allowed.",
  },
  lowest: {
    forbidden: oneOf([`(?:above|over|more than) ${FIGURE}`, `not at ${FIGURE} (?:or|and) (?:under|below|less|lower)`]),
    allowed: oneOf([`(?:at least|not below|not under|from) ${FIGURE}`, `${FIGURE} (?:or|and) (?:above|over|more|higher|up)`]),
    ask: "Write at least 50 °F where 50 is still allowed, or above 50 °F where it is already too cold.",
  },
} as const;

/**
 * Reads a temperature limit in °F. Refused: °C, words that are no limit, and a bare figure, because it does not say
 * whether the figure itself is allowed.
 */
export function readTemperature(value: string, bound: "highest" | "lowest"): ReadAnswer<TemperatureLimit> {
  const { forbidden, allowed, ask } = PATTERNS[bound];
  if (/(?:\u00B0 ?|\d ?)C\b/iu.test(value)) return refuse("Temperatures are kept in °F, as US labels print them.");
  for (const [pattern, reaching] of [[forbidden, "forbidden"], [allowed, "allowed"]] as const) {
    // One of the wordings has matched; the groups of the others are empty.
    const figure = (pattern.exec(value) ?? []).slice(1).join("");
    if (figure === "") continue;
    const read = parseNumber("temperature", figure);
    if (read.ok) return accept({ limitF: toNumber(read.value), reaching });
  }
  return refuse(`"${value}" can't be read as a limit. ${ask}`);
}

function readHours(value: string): ReadAnswer<number> {
  const time = readTime(value);
  if (!time.ok) return time;
  if (time.value.unit === "months") return refuse("Write hours or days.");
  return accept(time.value.unit === "minutes" ? time.value.count / 60 : time.value.count * 24);
}

/** Reads "under 85 °F for 24 hours". In °F and hours. Refused: no time, months, and what readTemperature refuses. */
export function readTemperatureAhead(value: string): ReadAnswer<TemperatureLimit & { readonly withinHours: number }> {
  const [, limit, time] = /^(.*\S) (?:for|within|in)(?: the)?(?: following| next)? (\d.*)$/iu.exec(value) ?? [];
  if (limit === undefined || time === undefined) return refuse("Write the limit and for how long: under 85 °F for 24 hours.");
  const temperature = readTemperature(limit, "highest");
  if (!temperature.ok) return temperature;
  const withinHours = readHours(time);
  return withinHours.ok ? accept({ ...temperature.value, withinHours: withinHours.value }) : withinHours;
}

const WIND_WORDS = {
  highest: /^(?:(?:up to|at most|not above|not over) )?([\d.]+) ?mph(?: or less)?$/iu,
  lowest: /^(?:(?:at least|from|not below) )?([\d.]+) ?mph(?: or more)?$/iu,
} as const;

/**
 * Reads a wind speed: "10 mph", with the words that lead to it if they are printed. Words of the other bound are refused:
 * "at least 3 mph" is no highest wind.
 */
export function readWind(value: string, bound: "highest" | "lowest"): ReadAnswer<{ readonly limitMph: number }> {
  const [, figure] = WIND_WORDS[bound].exec(value) ?? [];
  const read = figure === undefined ? undefined : parseNumber("wind", figure);
  if (read?.ok === true) return accept({ limitMph: toNumber(read.value) });
  const such = bound === "highest" ? "10 mph or up to 10 mph" : "3 mph or at least 3 mph";
  return refuse(`"${value}" is not a ${bound} wind speed. Write it as in ${such}.`);
}

/**
 * Reads a time without rain in minutes: "4 hours" (60 minutes each), "1 day". Refused: months, and what readTime
 * refuses.
 */
export function readRainfast(value: string): ReadAnswer<{ readonly minutes: number }> {
  const hours = readHours(value);
  return hours.ok ? accept({ minutes: Math.round(hours.value * 60) }) : hours;
}

/**
 * Reads "0.5 in within 24 hours". In inches and hours. Refused: one of the two alone, months, and what readDepth and
 * readTime refuse.
 */
export function readHeavyRain(value: string): ReadAnswer<{ readonly inches: number; readonly withinHours: number }> {
  const [, amount, time] = /^(.*?)(?: of rain| rain)? within (.+)$/iu.exec(value) ?? [];
  if (amount === undefined || time === undefined) return refuse("Write how much within which time: 0.5 in within 24 hours.");
  const depth = readDepth(amount.replace(/^(?:more than|over) /iu, ""));
  if (!depth.ok) return depth;
  const withinHours = readHours(time);
  return withinHours.ok ? accept({ inches: toNumber(measureInUnit(depth.value, "in")), withinHours: withinHours.value }) : withinHours;
}

/** Reads states of the soil in which nothing goes down: "frozen, saturated". Every other word is refused. */
export function readClosedSoil(value: string): ReadAnswer<{ readonly closedWhen: readonly ("frozen" | "saturated")[] }> {
  const closedWhen: ("frozen" | "saturated")[] = [];
  for (const part of partsOf(value.replace(/ or | and /giu, ","))) {
    const word = readWord(["frozen", "saturated"], part);
    if (!word.ok) return word;
    closedWhen.push(word.value);
  }
  return accept({ closedWhen });
}

const NO_LIMITS: Omit<WeatherLimits, "productName"> = {
  lowestTemperature: "none", highestTemperature: "none", highestTemperatureAhead: "none", lowestWind: "none",
  highestWind: "none", rainfast: "none", heavyRain: "none", soil: "none",
};

/** The limits of a use that the weather decides, or, refused, every complaint by its field. */
export function readWeatherLimits(productName: string, use: LabelUseText, authority: Authority) {
  const limit = <Limit>(
    field: keyof typeof NO_LIMITS & keyof LabelUseText,
    read: (value: string) => ReadAnswer<Limit>,
  ): ReadAnswer<OnFile<Limit>> =>
    readOnFile(use[field], (value) => {
      const found = read(value);
      if (!found.ok) return found;
      const stated = { ...found.value, ...authority };
      // Judged alone, so that a figure that can't be meant is complained of at its own field.
      const alone = { productName, ...NO_LIMITS, [field]: stated };
      const impossible = refuseImpossibleLimits([{ mixId: productName, method: "spray", products: [alone] }], [], DEFAULT_SPRAY_WEATHER_SETTINGS);
      return impossible === undefined ? accept(stated) : refuse(impossible.refusal.sentence);
    });
  return gather({
    lowestTemperature: limit("lowestTemperature", (value) => readTemperature(value, "lowest")),
    highestTemperature: limit("highestTemperature", (value) => readTemperature(value, "highest")),
    highestTemperatureAhead: limit("highestTemperatureAhead", readTemperatureAhead),
    lowestWind: limit("lowestWind", (value) => readWind(value, "lowest")),
    highestWind: limit("highestWind", (value) => readWind(value, "highest")),
    rainfast: limit("rainfast", readRainfast),
    heavyRain: limit("heavyRain", readHeavyRain),
    soil: limit("soil", readClosedSoil),
  });
}
