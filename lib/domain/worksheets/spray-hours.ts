import { withoutFullStop } from "#domain/foundation/full-stop";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { INVERSION_SOURCE } from "#domain/weather/inversion";
import { type HourRule } from "#domain/weather/spray-reasons";
import { readClockMinute } from "#domain/worksheets/clock-time";
import { deltaTLines, wetBulbAndDeltaT } from "#domain/worksheets/delta-t-lines";
import { type EnteredLimits, type EnteredSun, type HourStanding, type JudgedHourByClock, judgeHours } from "#domain/worksheets/judged-hours";
import { type FieldAsk, ifTyped, type NumberRange, readModelNumber, readTogether } from "#domain/worksheets/read-fields";
import { hourWords, readHours, stretchWords } from "#domain/worksheets/typed-hours";
import { type Typed, type WorkedWorksheet, type WorksheetAnswer, type WorksheetExample, type WorksheetOutcome, type WorksheetTable } from "#domain/worksheets/worksheet";

/** The fields of the worksheet. */
export type SprayHoursField = "hours" | "coolest" | "hottest" | "hottestAfter" | "hoursAfter" | "wind" | "rainfast" | "sunrise" | "sunset";

/** One hour as it was judged, in minutes after the first day's midnight, for the drawing of the day. */
export interface SprayHourSpan {
  readonly fromMinute: number;
  readonly toMinute: number;
  readonly standing: HourStanding;
  readonly reasons: readonly string[];
}

/** The worked hours, with what is drawn of them. */
export interface WorkedSprayHours extends WorkedWorksheet {
  readonly spans: readonly SprayHourSpan[];
}

const FLORIDA = "UF/IFAS Extension, August 26, 2021, https://nwdistrict.ifas.ufl.edu/hort/2021/08/26/timing-is-everything-when-controlling-lawn-weeds/";
const DELTA_T = "Delta T: Australian Bureau of Meteorology, quoted by sprayers101.com/delta-t";
const WET_BULB = "wet bulb: FAO Irrigation and Drainage Paper 56, Eq. 11, 15 and 16, at sea level";

export const SPRAY_HOURS_EXAMPLE: WorksheetExample<SprayHoursField> = {
  typed: {
    hours: ["7 am, 62, 88, 2, 0", "8 am, 66, 80, 3, 0", "9 am, 70, 70, 4, 0", "10 am, 74, 62, 5, 0", "11 am, 78, 55, 6, 0", "noon, 81, 50, 8, 0", "1 pm, 84, 45, 9, 0", "2 pm, 86, 40, 11, 0", "3 pm, 87, 38, 10, 0", "4 pm, 84, 48, 9, 0.02", "5 pm, 79, 60, 6, 0", "6 pm, 77, 64, 4, 0", "7 pm, 75, 68, 3, 0"].join("\n"),
    coolest: "",
    hottest: "85",
    hottestAfter: "",
    hoursAfter: "",
    wind: "10",
    rainfast: "1",
    sunrise: "6:20 am",
    sunset: "8:10 pm",
  },
  from: `made-up weather and dry time; not above 85 °F on St. Augustinegrass and a wind of 10 mph or less are usual wording of labels, ${FLORIDA}`,
};

const TEMPERATURE: NumberRange = { lowest: "-40", highest: "130", unit: "°F" };
const WIND: NumberRange = { lowest: "0", highest: "100", unit: "mph" };
const HOURS_DRY: NumberRange = { lowest: "0", highest: "72", unit: "h" };
const HOURS_AFTER: NumberRange = { lowest: "1", highest: "72", unit: "h" };
const NOON_MINUTES = 720;

/** The sun rises before noon and sets after it: "7:45" for a sunset was meant for the evening. */
function readSun(field: "sunrise" | "sunset", text: string): Outcome<number | undefined> {
  return ifTyped(text, (typed) => {
    const minute = readClockMinute(field, typed);
    if (!minute.ok || minute.value < NOON_MINUTES === (field === "sunrise")) return minute;
    if (field === "sunrise") return badInput(field, typed, "a time before noon", `"${typed.trim()}" is after noon. Write the sunrise as 6:20 am.`);
    return badInput(field, typed, "a time after noon", `"${typed.trim()}" is before noon. Write the sunset as 8:10 pm, with the pm.`);
  });
}

/** A limit on the hours afterwards takes both its figures. */
function readAfter({ hottestAfter, hoursAfter }: Typed<SprayHoursField>): Outcome<EnteredLimits["hottestAfter"]> {
  if (hottestAfter.trim() === "" && hoursAfter.trim() === "") return accept(undefined);
  if (hottestAfter.trim() === "") return missingFact("hottestAfter", "85", "Give the temperature that these hours must not pass, such as 85, or leave both empty.");
  if (hoursAfter.trim() === "") return missingFact("hoursAfter", "24", "Give the hours that this temperature counts for, such as 24, or leave both empty.");
  const limit = readModelNumber({ field: "hottestAfter", what: "the highest temperature afterwards", such: "85" }, hottestAfter, TEMPERATURE);
  if (!limit.ok) return limit;
  const within = readModelNumber({ field: "hoursAfter", what: "the hours that it counts for", such: "24" }, hoursAfter, HOURS_AFTER);
  return within.ok ? accept({ limitF: limit.value, withinHours: within.value }) : within;
}

const STANDING_WORDS: Readonly<Record<HourStanding, string>> = { open: "open", "take-care": "take care", closed: "closed", undecided: "can't be decided" };

/**
 * "closed. The wind is 11 mph...": the figure of Delta T stands in a column of its own. What can't be decided of an hour
 * that is closed anyhow is left out, and of one that can't be decided the first is enough.
 */
function standingWords({ standing, reasons }: JudgedHourByClock): string {
  const undecided = reasons.filter(({ isUndecided }) => isUndecided).slice(0, standing === "undecided" ? 1 : 0);
  const sentences = [...undecided, ...reasons.filter(({ isUndecided }) => !isUndecided)].map(({ sentence }) => sentence.replace(/^Delta T is [\d.]+ °C, /u, "Delta T ").replace(", and this spray depends on it.", ""));
  return [STANDING_WORDS[standing], ...sentences].map(withoutFullStop).join(". ");
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
      return [hourWords(hour.minute).replace(" ", "\u00a0"), ...[temperatureF, relativeHumidityPercent, windMph, rainInches].map(String), ...wetBulbAndDeltaT(hour.weather), standingWords(hour)];
    }),
  };
}

/** The stretches of hours that stand so, one after the other: "7 am to 2 pm; 5 pm to 7 pm". */
function stretches(judged: readonly JudgedHourByClock[], standings: readonly HourStanding[]): string {
  const joined: { from: number; to: number }[] = [];
  for (const { minute, standing } of judged) {
    const last = joined.at(-1);
    if (!standings.includes(standing)) continue;
    if (last?.to === minute) last.to = minute + 60;
    else joined.push({ from: minute, to: minute + 60 });
  }
  return joined.map(({ from, to }) => stretchWords(from, to)).join("; ");
}

interface Count {
  readonly all: number;
  readonly closed: number;
  readonly undecided: number;
  readonly notClosed: number;
}

function countOf(judged: readonly JudgedHourByClock[]): Count {
  const standing = (wanted: HourStanding) => judged.filter((hour) => hour.standing === wanted).length;
  const [closed, undecided] = [standing("closed"), standing("undecided")];
  return { all: judged.length, closed, undecided, notClosed: judged.length - closed - undecided };
}

function whenWords(judged: readonly JudgedHourByClock[], { notClosed, undecided }: Count): string {
  if (notClosed > 0) return `Not closed: ${stretches(judged, ["open", "take-care"])}.`;
  return undecided > 0 ? "No hour is known to be open." : "No hour is open.";
}

function undecidedWords(judged: readonly JudgedHourByClock[]): string {
  return `Can't be decided: ${stretches(judged, ["undecided"])}.`;
}

function answersOf(judged: readonly JudgedHourByClock[], count: Count): readonly WorksheetAnswer[] {
  const { all, undecided, notClosed } = count;
  return [
    { figure: String(notClosed), unit: `of ${all} h`, of: whenWords(judged, count) },
    ...(undecided === 0 ? [] : [{ figure: String(undecided), unit: `of ${all} h`, of: `${undecidedWords(judged)} Write the hours after them too.` }]),
  ];
}

/**
 * Which hours are open for a spray and why others are not, from weather typed hour by hour (each line: hour, °F,
 * humidity in percent, wind in mph, rain in inches) and the limits of the label. Hours run on past midnight. One that
 * nothing closes but what is not known of the hours after it can't be decided, and is neither open nor closed. Wet bulb
 * and Delta T are notes and close no hour. Refused by field: what is missing or can't be read, hours out of their order,
 * one of the two figures of a limit on the hours afterwards without the other, a `sunrise` after noon, a `sunset` before.
 */
export function sprayHoursWorksheet(typed: Typed<SprayHoursField>): WorksheetOutcome<WorkedSprayHours> {
  const windAsk: FieldAsk = { field: "wind", what: "the most wind", such: "10" };
  const rainAsk: FieldAsk = { field: "rainfast", what: "the hours that must stay dry after it, 0 for none", such: "4" };
  const read = readTogether({
    hours: readHours(typed.hours),
    coolestF: ifTyped(typed.coolest, (text) => readModelNumber({ field: "coolest", what: "the lowest temperature", such: "50" }, text, TEMPERATURE)),
    hottestF: ifTyped(typed.hottest, (text) => readModelNumber({ field: "hottest", what: "the highest temperature", such: "85" }, text, TEMPERATURE)),
    hottestAfter: readAfter(typed),
    windMph: readModelNumber(windAsk, typed.wind, WIND),
    rainfastHours: readModelNumber(rainAsk, typed.rainfast, HOURS_DRY),
    sunriseMinute: readSun("sunrise", typed.sunrise),
    sunsetMinute: readSun("sunset", typed.sunset),
  });
  if (!read.ok) return read;
  const { hours, sunriseMinute, sunsetMinute, ...limits } = read.value;
  const sun = { sunriseMinute, sunsetMinute };
  const judged = judgeHours(hours, limits, sun);
  const count = countOf(judged);
  return accept({
    answers: answersOf(judged, count),
    working: {
      title: "Hours for a spray",
      formula:
        "An hour is closed when one of its figures passes a limit, when a limit on the hours afterwards is passed in them, and when rain falls in it or within the rainfast time after it. It can't be decided when only hours that are not entered could close it. Delta T = temperature − wet bulb, both in °C, with °C = (°F − 32) ÷ 1.8; it is a note and closes no hour. The wet bulb is the W for which RH ÷ 100 × e(T) = e(W) − 0.000662 × 101.3 × (T − W), with e(T) = 0.6108 × exp(17.27 × T ÷ (T + 237.3)).",
      inputs: limitInputs(typed, limits),
      steps: stepsOf(judged, limits, sun),
      result: [`${count.notClosed} of ${count.all} hours are not closed.`, whenWords(judged, count), ...(count.undecided === 0 ? [] : [undecidedWords(judged)])].join(" "),
      source: `${DELTA_T}; ${WET_BULB}; inversions: ${INVERSION_SOURCE}`,
    },
    findings: [],
    tables: [tableOf(judged)],
    spans: judged.map(({ minute, standing, reasons }) => ({ fromMinute: minute, toMinute: minute + 60, standing, reasons: reasons.filter((reason) => reason.verdict !== "note").map(({ sentence }) => sentence) })),
  });
}

function limitInputs(typed: Typed<SprayHoursField>, { coolestF, hottestF, hottestAfter, windMph, rainfastHours }: EnteredLimits) {
  const limitWords = (limit: number | undefined) => (limit === undefined ? "none entered" : `${limit} °F`);
  const sunWords = [typed.sunrise, typed.sunset].map((text) => (text.trim() === "" ? "not entered" : text.trim()));
  return [
    { name: "Coolest and hottest", figure: `${limitWords(coolestF)}; ${limitWords(hottestF)}`, from: "the label" },
    ...(hottestAfter === undefined ? [] : [{ name: "Hottest afterwards", figure: `${hottestAfter.limitF} °F within ${hottestAfter.withinHours} h`, from: "the label" }]),
    { name: "Most wind", figure: `${windMph} mph`, from: "the label or the company, the stricter" },
    { name: "Dry hours after", figure: `${rainfastHours} h`, from: "the label" },
    { name: "Sunrise and sunset", figure: sunWords.every((words) => words === "not entered") ? "not entered" : sunWords.join("; ") },
  ];
}

function hoursWords(number: number): string {
  return `${number} ${number === 1 ? "hour" : "hours"}`;
}

/** How many hours a rule closes, and how many it leaves undecided. */
function closesWords(judged: readonly JudgedHourByClock[], rules: readonly HourRule[]): string {
  const count = (isUndecided: boolean) =>
    judged.filter(({ reasons }) => reasons.some((reason) => reason.verdict === "closed" && reason.isUndecided === isUndecided && rules.includes(reason.rule))).length;
  const undecided = count(true);
  return `closes ${hoursWords(count(false))}${undecided === 0 ? "" : ` and leaves ${undecided} undecided for want of later ones`}.`;
}

function stepsOf(judged: readonly JudgedHourByClock[], { coolestF, hottestF, hottestAfter, windMph, rainfastHours }: EnteredLimits, sun: EnteredSun): readonly string[] {
  const { all, closed, undecided, notClosed } = countOf(judged);
  const closedWords = `${closed} of ${all} ${closed === 1 ? "is" : "are"} closed for one reason or more`;
  return [
    ...(coolestF === undefined && hottestF === undefined
      ? ["Temperature: no limit was entered."]
      : [`Temperature against ${coolestF === undefined ? "no lowest" : `${coolestF} °F`} and ${hottestF === undefined ? "no highest" : `${hottestF} °F`}: ${closesWords(judged, ["temperature-low", "temperature-high"])}`]),
    ...(hottestAfter === undefined ? [] : [`Temperature against ${hottestAfter.limitF} °F in the hour and the ${hottestAfter.withinHours} h after it: ${closesWords(judged, ["temperature-ahead"])}`]),
    `Wind above ${windMph} mph: ${closesWords(judged, ["wind-high"])}`,
    `Rain in the hour${rainfastHours === 0 ? "" : `, or in the ${rainfastHours} h after it`}: ${closesWords(judged, ["rain"])}`,
    sunWords(sun),
    undecided === 0
      ? `Hours that are not closed, where ${closedWords}: ${all} − ${closed} = ${notClosed}.`
      : `Hours that are not closed, where ${closedWords} and ${undecided} can't be decided: ${all} − ${closed} − ${undecided} = ${notClosed}.`,
    ...deltaTLines(judged),
  ];
}

/** Which ends of the night were looked at for inversions. */
function sunWords({ sunriseMinute, sunsetMinute }: EnteredSun): string {
  const take = "with wind under 3 mph: take care, an inversion may lie over the lawn.";
  if (sunriseMinute === undefined && sunsetMinute === undefined) return "Inversions were not looked at: sunrise and sunset are not entered.";
  if (sunsetMinute === undefined) return `Near sunrise ${take} The evening was not looked at: sunset is not entered.`;
  if (sunriseMinute === undefined) return `Near sunset ${take} The morning was not looked at: sunrise is not entered.`;
  return `Near sunrise and sunset ${take}`;
}
