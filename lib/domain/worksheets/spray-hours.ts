import { typedLines } from "#domain/equipment/typed-test";
import { namedClockWords } from "#domain/foundation/clock-words";
import { withoutFullStop } from "#domain/foundation/full-stop";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { ONE_HOUR_MILLISECONDS } from "#domain/turf/hourly-series";
import { INVERSION_SOURCE } from "#domain/weather/inversion";
import { type HourInWeather, judgeProductHour } from "#domain/weather/product-hour";
import { DEFAULT_SPRAY_WEATHER_SETTINGS, type SprayWeatherSettings, type WeatherLimits } from "#domain/weather/spray-limits";
import { type HourReason, type HourVerdict, worstVerdict } from "#domain/weather/spray-reasons";
import { judgeSprayHour, type SpraySite } from "#domain/weather/spraying-hour";
import { type SunTimes } from "#domain/weather/sun-times";
import { readClockMinute } from "#domain/worksheets/clock-time";
import { deltaTLines, type HourByClock, wetBulbAndDeltaT } from "#domain/worksheets/delta-t-lines";
import { type FieldAsk, ifTyped, type NumberRange, readModelNumber, readTogether, refuseOne } from "#domain/worksheets/read-fields";
import { type Typed, type WorkedWorksheet, type WorksheetExample, type WorksheetOutcome, type WorksheetTable } from "#domain/worksheets/worksheet";

/** The fields of the worksheet. */
export type SprayHoursField = "hours" | "coolest" | "hottest" | "wind" | "rainfast" | "sunrise" | "sunset";

/** One hour as it was judged, in minutes after midnight, for the drawing of the day. */
export interface SprayHourSpan {
  readonly fromMinute: number;
  readonly toMinute: number;
  readonly verdict: HourVerdict;
  readonly reasons: readonly string[];
}

/** The worked hours, with what is drawn of them. */
export interface WorkedSprayHours extends WorkedWorksheet {
  readonly spans: readonly SprayHourSpan[];
}

const IOWA = "Iowa State Extension, https://hortnews.extension.iastate.edu/faq/what-proper-way-apply-broadleaf-herbicides-lawn";
const DELTA_T = "Delta T: Australian Bureau of Meteorology, quoted by sprayers101.com/delta-t";
const WET_BULB = "wet bulb: FAO Irrigation and Drainage Paper 56, Eq. 11, 15 and 16, at sea level";

export const SPRAY_HOURS_EXAMPLE: WorksheetExample<SprayHoursField> = {
  typed: {
    hours: ["7 am, 62, 88, 2, 0", "8 am, 66, 80, 3, 0", "9 am, 70, 70, 4, 0", "10 am, 74, 62, 5, 0", "11 am, 78, 55, 6, 0", "noon, 81, 50, 8, 0", "1 pm, 84, 45, 9, 0", "2 pm, 86, 40, 11, 0", "3 pm, 87, 38, 10, 0", "4 pm, 84, 48, 9, 0.02", "5 pm, 79, 60, 6, 0", "6 pm, 77, 64, 4, 0", "7 pm, 75, 68, 3, 0"].join("\n"),
    coolest: "",
    hottest: "85",
    wind: "10",
    rainfast: "1",
    sunrise: "6:20 am",
    sunset: "8:10 pm",
  },
  from: `made-up weather; 85 °F as ${IOWA} has it`,
};

const TEMPERATURE: NumberRange = { lowest: "-40", highest: "130", unit: "°F" };
const HUMIDITY: NumberRange = { lowest: "1", highest: "100", unit: "%" };
const WIND: NumberRange = { lowest: "0", highest: "100", unit: "mph" };
const RAIN: NumberRange = { lowest: "0", highest: "10", unit: "in" };
const PARTS = ["hour", "temperature", "humidity", "wind", "rain"] as const;

function ask(what: string, such: string): FieldAsk {
  return { field: "hours", what, such };
}

function readHour(line: string): Outcome<HourByClock> {
  const parts = line.split(/[,;\t]/u).map((part) => part.trim());
  const [hourText = "", temperature = "", humidity = "", wind = "", rain = ""] = parts;
  if (parts.length !== PARTS.length || parts.includes("")) {
    return badInput("hours", line, PARTS.join(", "), `"${line}" has not these five with commas between: ${PARTS.join(", ")}. Write it as 7 am, 62, 88, 2, 0.`);
  }
  const minute = readClockMinute("hours", hourText.replace(/^noon$/iu, "12 pm").replace(/^midnight$/iu, "12 am"));
  if (!minute.ok) return minute;
  if (minute.value % 60 !== 0) return badInput("hours", line, "hours that begin on the hour", `"${line}" does not begin on the hour. Write it as 7 am, 62, 88, 2, 0.`);
  const read = readTogether({
    temperatureF: readModelNumber(ask("the temperature", "62"), temperature, TEMPERATURE),
    relativeHumidityPercent: readModelNumber(ask("the humidity", "88"), humidity, HUMIDITY),
    windMph: readModelNumber(ask("the wind", "2"), wind, WIND),
    rainInches: readModelNumber(ask("the rain", "0"), rain, RAIN),
  });
  if (!read.ok) {
    const [{ allowed, sentence }] = read.refusal;
    return badInput("hours", line, allowed, `In "${line}": ${sentence}`);
  }
  return accept({ minute: minute.value, weather: { startsAtEpochMilliseconds: (minute.value / 60) * ONE_HOUR_MILLISECONDS, ...read.value } });
}

/** The hours in the order of the day, each once. */
function readHours(text: string): Outcome<readonly HourByClock[]> {
  const lines = typedLines(text);
  if (lines.length === 0) return missingFact("hours", "one hour to a line", "Give the hours, one to a line, such as 7 am, 62, 88, 2, 0.");
  const hours: HourByClock[] = [];
  for (const line of lines) {
    const hour = readHour(line);
    if (!hour.ok) return hour;
    if (hours.some(({ minute }) => minute === hour.value.minute)) return badInput("hours", line, "each hour once", `${namedClockWords(hour.value.minute)} stands there twice.`);
    hours.push(hour.value);
  }
  return accept(hours.toSorted((left, right) => left.minute - right.minute));
}

function readSun(field: "sunrise" | "sunset", text: string): Outcome<number | undefined> {
  return ifTyped(text, (typed) => readClockMinute(field, typed));
}

const LABEL = { basis: "label", source: "as entered, from the label" } as const;

interface Limits {
  readonly coolest: number | undefined;
  readonly hottest: number | undefined;
  readonly wind: number;
  readonly rainfastHours: number;
}

function productOf({ coolest, hottest, wind, rainfastHours }: Limits): WeatherLimits {
  const temperature = (limitF: number | undefined) => (limitF === undefined ? ("none" as const) : { limitF, reaching: "allowed" as const, ...LABEL });
  return {
    productName: "this spray",
    lowestTemperature: temperature(coolest),
    highestTemperature: temperature(hottest),
    highestTemperatureAhead: "none",
    lowestWind: "none",
    highestWind: { limitMph: wind, ...LABEL },
    rainfast: rainfastHours === 0 ? "none" : { minutes: rainfastHours * 60, ...LABEL },
    heavyRain: "none",
    soil: "none",
  };
}

function siteOf(wind: number): SpraySite {
  const settings: SprayWeatherSettings = { ...DEFAULT_SPRAY_WEATHER_SETTINGS, highestWind: { limitMph: wind, ...LABEL } };
  return { place: { latitudeDegrees: 0, longitudeDegrees: 0, elevationMeters: 0 }, sensitivePlaces: [], settings };
}

/** Without sunrise and sunset no hour is near the night, and a step says that inversions were not looked at. */
function sunOf(sunrise: number | undefined, sunset: number | undefined): SunTimes {
  if (sunrise === undefined || sunset === undefined) return { kind: "always-up" };
  return { kind: "rises-and-sets", sunriseEpochMilliseconds: sunrise * 60_000, sunsetEpochMilliseconds: sunset * 60_000 };
}

interface JudgedHourByClock extends HourByClock {
  readonly verdict: HourVerdict;
  readonly reasons: readonly HourReason[];
}

function judge(hours: readonly HourByClock[], limits: Limits, sun: SunTimes): readonly JudgedHourByClock[] {
  const byStart = new Map(hours.map(({ weather }) => [weather.startsAtEpochMilliseconds, weather]));
  const site = siteOf(limits.wind);
  return hours.map((hour) => {
    const start = hour.weather.startsAtEpochMilliseconds;
    const inWeather: HourInWeather = {
      slot: { startsAtEpochMilliseconds: start, endsAtEpochMilliseconds: start + ONE_HOUR_MILLISECONDS, localTime: namedClockWords(hour.minute), utcOffsetMinutes: 0 },
      weather: hour.weather,
      weatherAt: (startsAt) => byStart.get(startsAt),
      timeZone: "UTC",
      rainFromInches: site.settings.rainFromInches,
      rainChanceFromPercent: site.settings.rainChanceFromPercent,
    };
    const ofProduct = judgeProductHour(productOf(limits), inWeather);
    // The wind, and the rain of the hour itself, are said once: by the product's own limit where it has one.
    const ofSpraying = judgeSprayHour(site, inWeather, sun).filter(({ rule }) => rule !== "wind-high" && !ofProduct.some((own) => own.rule === rule));
    const reasons = [...ofProduct, ...ofSpraying].map((reason) => ({ ...reason, sentence: inClockWords(reason.sentence) }));
    return { ...hour, verdict: worstVerdict(reasons), reasons };
  });
}

/** The weather's sentences have the time of a record; a worksheet has no date and reads "4 pm". */
function inClockWords(sentence: string): string {
  return sentence.replace(/\bat (\d{2}):00(?: on (\S+))?/gu, (_all, hour: string, date?: string) => `at ${namedClockWords(Number(hour) * 60)}${date === undefined ? "" : " the next day"}`);
}

const VERDICT_WORDS: Readonly<Record<HourVerdict, string>> = { open: "open", "take-care": "take care", closed: "closed" };

/** "closed. The wind is 11 mph...": the figure of Delta T stands in a column of its own. */
function standingWords({ verdict, reasons }: JudgedHourByClock): string {
  const sentences = reasons.map(({ sentence }) => sentence.replace(/^Delta T is [\d.]+ °C, /u, "Delta T "));
  return [VERDICT_WORDS[verdict], ...sentences].map(withoutFullStop).join(". ");
}

function tableOf(judged: readonly JudgedHourByClock[]): WorksheetTable {
  return {
    caption: "Hour by hour: °F, percent, mph and inches; wet bulb and Delta T in °C",
    columns: [
      { head: "From", align: "word" },
      { head: "°F", align: "figure" },
      { head: "RH", align: "figure" },
      { head: "Wind", align: "figure" },
      { head: "Rain", align: "figure" },
      { head: "Wet bulb °C", align: "figure" },
      { head: "Delta T °C", align: "figure" },
      { head: "Standing and reasons", align: "word" },
    ],
    rows: judged.map((hour) => {
      const { temperatureF, relativeHumidityPercent, windMph, rainInches } = hour.weather;
      return [namedClockWords(hour.minute).replace(" ", "\u00a0"), ...[temperatureF, relativeHumidityPercent, windMph, rainInches].map(String), ...wetBulbAndDeltaT(hour.weather), standingWords(hour)];
    }),
  };
}

function stretches(judged: readonly JudgedHourByClock[]): readonly string[] {
  const joined: { from: number; to: number }[] = [];
  for (const { minute, verdict } of judged) {
    const last = joined.at(-1);
    if (verdict === "closed") continue;
    if (last?.to === minute) last.to = minute + 60;
    else joined.push({ from: minute, to: minute + 60 });
  }
  return joined.map(({ from, to }) => `${namedClockWords(from)} to ${namedClockWords(to)}`);
}

/**
 * Which hours are open for a spray and why others are not, from weather typed hour by hour (each line: hour, °F,
 * humidity in percent, wind in mph, rain in inches) and the limits of the label. Wet bulb and Delta T are notes and
 * close no hour. Refused by field: what is missing or can't be read, an hour that stands twice, a `sunset` that is not
 * after sunrise.
 */
export function sprayHoursWorksheet(typed: Typed<SprayHoursField>): WorksheetOutcome<WorkedSprayHours> {
  const windAsk: FieldAsk = { field: "wind", what: "the most wind", such: "10" };
  const rainAsk: FieldAsk = { field: "rainfast", what: "the hours that must stay dry after it, 0 for none", such: "4" };
  const read = readTogether({
    hours: readHours(typed.hours),
    coolest: ifTyped(typed.coolest, (text) => readModelNumber({ field: "coolest", what: "the lowest temperature", such: "50" }, text, TEMPERATURE)),
    hottest: ifTyped(typed.hottest, (text) => readModelNumber({ field: "hottest", what: "the highest temperature", such: "85" }, text, TEMPERATURE)),
    wind: readModelNumber(windAsk, typed.wind, WIND),
    rainfast: readModelNumber(rainAsk, typed.rainfast, { lowest: "0", highest: "72", unit: "h" }),
    sunrise: readSun("sunrise", typed.sunrise),
    sunset: readSun("sunset", typed.sunset),
  });
  if (!read.ok) return read;
  const { hours, coolest, hottest, wind, rainfast, sunrise, sunset } = read.value;
  if (sunrise !== undefined && sunset !== undefined && sunset <= sunrise) {
    return refuseOne(badInput("sunset", typed.sunset, "later than sunrise", "The sun sets after it rises. Write 8:10 pm, not 8:10.").refusal);
  }
  const limits: Limits = { coolest, hottest, wind, rainfastHours: rainfast };
  const judged = judge(hours, limits, sunOf(sunrise, sunset));
  const open = judged.filter(({ verdict }) => verdict !== "closed").length;
  const spells = stretches(judged);
  const when = spells.length === 0 ? "No hour is open." : `Not closed: ${spells.join("; ")}.`;
  return accept({
    answers: [{ figure: String(open), unit: `of ${judged.length} h`, of: when }],
    working: {
      title: "Hours for a spray",
      formula: "An hour is closed when one of its figures passes a limit, and when rain falls in it or within the rainfast time after it. Delta T = temperature − wet bulb, both in °C, with °C = (°F − 32) ÷ 1.8; it is a note and closes no hour. The wet bulb is the W for which RH ÷ 100 × e(T) = e(W) − 0.000662 × 101.3 × (T − W), with e(T) = 0.6108 × exp(17.27 × T ÷ (T + 237.3)).",
      inputs: limitInputs(typed, limits),
      steps: stepsOf(judged, limits, sunrise !== undefined && sunset !== undefined),
      result: `${open} of ${judged.length} hours are not closed. ${when}`,
      source: `${DELTA_T}; ${WET_BULB}; inversions: ${INVERSION_SOURCE}`,
    },
    findings: [],
    tables: [tableOf(judged)],
    spans: judged.map(({ minute, verdict, reasons }) => ({ fromMinute: minute, toMinute: minute + 60, verdict, reasons: reasons.filter((reason) => reason.verdict !== "note").map(({ sentence }) => sentence) })),
  });
}

function limitInputs(typed: Typed<SprayHoursField>, { coolest, hottest, wind, rainfastHours }: Limits) {
  const limitWords = (limit: number | undefined) => (limit === undefined ? "none entered" : `${limit} °F`);
  return [
    { name: "Coolest and hottest", figure: `${limitWords(coolest)}; ${limitWords(hottest)}`, from: "the label" },
    { name: "Most wind", figure: `${wind} mph`, from: "the label or the company, the stricter" },
    { name: "Dry hours after", figure: `${rainfastHours} h`, from: "the label" },
    { name: "Sunrise and sunset", figure: typed.sunrise.trim() === "" || typed.sunset.trim() === "" ? "not entered" : `${typed.sunrise.trim()}; ${typed.sunset.trim()}` },
  ];
}

function stepsOf(judged: readonly JudgedHourByClock[], { coolest, hottest, wind, rainfastHours }: Limits, hasSun: boolean): readonly string[] {
  const count = (rules: readonly string[]) => judged.filter(({ reasons }) => reasons.some(({ verdict, rule }) => verdict === "closed" && rules.includes(rule))).length;
  const closed = judged.filter(({ verdict }) => verdict === "closed").length;
  const hours = (number: number) => `${number} ${number === 1 ? "hour" : "hours"}`;
  return [
    ...(coolest === undefined && hottest === undefined ? ["Temperature: no limit was entered."] : [`Temperature against ${coolest === undefined ? "no lowest" : `${coolest} °F`} and ${hottest === undefined ? "no highest" : `${hottest} °F`}: closes ${hours(count(["temperature-low", "temperature-high"]))}.`]),
    `Wind above ${wind} mph: closes ${hours(count(["wind-high"]))}.`,
    `Rain in the hour${rainfastHours === 0 ? "" : `, or in the ${rainfastHours} h after it`}: closes ${hours(count(["rain"]))}, hours without an entry after them included.`,
    hasSun ? "Near sunrise and sunset with wind under 3 mph: take care, an inversion may lie over the lawn." : "Inversions were not looked at: sunrise and sunset are not entered.",
    `Hours that are not closed, where ${hours(closed)} of ${judged.length} ${closed === 1 ? "is" : "are"} closed for one reason or more: ${judged.length} − ${closed} = ${judged.length - closed}.`,
    ...deltaTLines(judged),
  ];
}
