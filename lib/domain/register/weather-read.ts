import { type Finding, hold } from "#domain/foundation/finding";
import { citationOfUse, type LabelUse } from "#domain/label/label-facts";
import { type LabelPutDown, usesPutDown } from "#domain/register/put-down";
import { judgeProductHour } from "#domain/weather/product-hour";
import { DEFAULT_SPRAY_WEATHER_SETTINGS } from "#domain/weather/spray-limits";
import { type HourReason, type HourRule, type WeatherHour } from "#domain/weather/spray-reasons";

/** What was read at the site while something was put down; null: not taken. */
export interface WeatherRead {
  readonly temperatureF: number | null;
  readonly windMph: number | null;
}

/** When it was put down, and where. */
export interface TimeOfWork {
  readonly startedAt: Date;
  readonly endedAt: Date;
  readonly timeZone: string;
}

/** The limits that a reading decides by itself, each with what it means where it is passed. The others take a forecast. */
const DECIDED_BY_READING: ReadonlyMap<HourRule, string> = new Map([
  ["temperature-low", "in more cold than its label allows"],
  ["temperature-high", "in more heat than its label allows"],
  ["temperature-ahead", "in more heat than its label allows at the time and in the hours after"],
  ["wind-low", "in less wind than its label asks for"],
  ["wind-high", "in more wind than its label allows"],
]);

/**
 * The weather as it was read at the site against the label of what was put down in it. A limit that the reading passes is
 * said as what it is, one finding for each; nothing keeps it from being recorded. What was not read decides nothing here, nor
 * does a limit that nobody has read: the first is said of the record, the other was said of the plan. Of a use that nobody
 * knows, nothing is said that one of its label's uses allows.
 */
export function checkWeatherRead(label: LabelPutDown, read: WeatherRead, time: TimeOfWork): readonly Finding[] {
  if (label === "not-on-file") return [];
  const ofUses = usesPutDown(label).map((use) => judgeReading(label.label.productName, use, read, time));
  return ofUses.some((findings) => findings.length === 0) ? [] : (ofUses[0] ?? []);
}

function judgeReading(productName: string, use: LabelUse, read: WeatherRead, { startedAt, endedAt, timeZone }: TimeOfWork): readonly Finding[] {
  const startsAtEpochMilliseconds = startedAt.getTime();
  const weather: WeatherHour = { startsAtEpochMilliseconds, temperatureF: read.temperatureF ?? undefined, windMph: read.windMph ?? undefined };
  const reasons = judgeProductHour(use.weather, {
    // The time of the work takes the place of an hour; what its clock shows is asked of no limit that a reading decides.
    slot: { startsAtEpochMilliseconds, endsAtEpochMilliseconds: endedAt.getTime(), localTime: "", utcOffsetMinutes: 0 },
    weather,
    weatherAt: (epochMilliseconds) => (epochMilliseconds === startsAtEpochMilliseconds ? weather : undefined),
    timeZone,
    rainFromInches: DEFAULT_SPRAY_WEATHER_SETTINGS.rainFromInches,
    rainChanceFromPercent: DEFAULT_SPRAY_WEATHER_SETTINGS.rainChanceFromPercent,
  });
  return reasons.flatMap((reason) => passed(productName, use, reason));
}

function passed(productName: string, { useName }: LabelUse, { rule, isUndecided, verdict, sentence }: HourReason): readonly Finding[] {
  const how = DECIDED_BY_READING.get(rule);
  if (how === undefined || isUndecided || verdict !== "closed") return [];
  return [
    hold("nobody", {
      rule: "weather-outside-label",
      source: "label",
      what: `${productName} went down ${how}.`,
      figure: `As it was read at the site: ${sentence}`,
      toDo: "Tell the license holder today.",
      citation: citationOfUse(productName, useName),
      about: [productName],
    }),
  ];
}
