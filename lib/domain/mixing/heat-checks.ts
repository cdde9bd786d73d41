import { type Finding, type FindingSource, hold } from "#domain/foundation/finding";
import { type Outcome, accept } from "#domain/foundation/outcome";
import { READ_THE_LABEL } from "#domain/label/not-read";
import { careInHeat, careWithoutForecast } from "#domain/mixing/heat-care";
import { daysAheadOf, type EnteredHigh, judgeDayByForecastHigh } from "#domain/weather/forecast-high";
import { stated, type WeatherLimits, type WeatherMix } from "#domain/weather/spray-limits";
import { type HourReason, type ReasonAuthority } from "#domain/weather/spray-reasons";
import { isSprayed, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

function weatherMix(treatment: TicketTreatment): WeatherMix {
  return { mixId: String(treatment.line), method: isSprayed(treatment) ? "spray" : "granular", products: [treatment.use.weather] };
}

function sourceOf({ basis }: ReasonAuthority): FindingSource {
  return basis;
}

/**
 * What the forecast highs of a day and the days after say of a visit: a label's limit at or under the day's high is a
 * hold that nobody may answer. A limit on the hours afterwards is held against the highs of the days that it reaches,
 * and holds, undecided, only while one of them is not entered. A lowest temperature that the high does not reach holds
 * as well. Without a forecast a label's highest temperatures can't be judged and hold; its lowest is asked about at the
 * site (site-checks.ts). What the house itself takes care of in heat is said beside it. Refuses what is no temperature
 * of outdoor air (`forecastHighF`, `followingHighsF`).
 */
export function checkHeat(question: TicketQuestion): Outcome<readonly Finding[]> {
  const { forecastHighF, forecastFollowingHighsF, treatments, on } = question;
  if (forecastHighF === "not-entered") return accept([...treatments.flatMap(withoutForecast), ...careWithoutForecast(question)]);
  const highs = { date: on, forecastHighF, followingHighsF: forecastFollowingHighsF };
  const judged = judgeDayByForecastHigh(highs, treatments.map(weatherMix));
  if (!judged.ok) return judged;
  const holds = judged.value.flatMap(({ reasons }, index) => reasons.map((reason) => heldBy(reason, treatments[index]?.use.weather, forecastFollowingHighsF)));
  return accept([...holds, ...careInHeat(question, highs)]);
}

function heldBy(reason: HourReason, limits: WeatherLimits | undefined, followingHighsF: readonly EnteredHigh[]): Finding {
  const product = reason.productName ?? "the product";
  return hold(reason.basis === "label" && !reason.isUndecided ? "nobody" : "office", {
    ...saidOf(reason, product, limits, followingHighsF),
    figure: reason.sentence,
    citation: reason.source,
    about: reason.productName === undefined ? [] : [reason.productName],
  });
}

function saidOf(reason: HourReason, product: string, limits: WeatherLimits | undefined, followingHighsF: readonly EnteredHigh[]): Pick<Finding, "rule" | "source" | "what" | "toDo"> {
  if (reason.rule === "temperature-low") {
    return { rule: "too-cold", source: sourceOf(reason), what: `Too cold for ${product} that day.`, toDo: "Move it to a warmer day, or leave it out of this visit." };
  }
  if (!reason.isUndecided) {
    const what = reason.rule === "temperature-ahead" ? `Too hot for ${product} soon after that day.` : `Too hot for ${product} that day.`;
    return { rule: "too-hot", source: sourceOf(reason), what, toDo: "Move it to a cooler day, or leave it out of this visit." };
  }
  if (reason.rule !== "temperature-ahead") {
    const what = `Whether ${product} has a heat limit is not on file.`;
    return { rule: "heat-limit-not-read", source: sourceOf(reason), what, toDo: READ_THE_LABEL };
  }
  const what = `The heat limit of ${product} reaches beyond the day, and the forecast on file does not.`;
  const reached = stated(limits?.highestTemperatureAhead ?? "none").map(daysAheadOf);
  const canBeEntered = followingHighsF.some((highF, index) => highF === "not-entered" && reached.some((days) => index < days));
  const toDo = canBeEntered ? "Enter the highs of the days after with the day's forecast." : "Look up the highs of the days that follow, and answer this if none reaches the limit.";
  return { rule: "forecast-after-not-entered", source: "weather", what, toDo };
}

function withoutForecast({ use, label }: TicketTreatment): readonly Finding[] {
  const limits = [use.weather.highestTemperature, use.weather.highestTemperatureAhead];
  const unread = hold("office", {
    rule: "heat-limit-not-read",
    source: "label",
    what: `Whether ${label.productName} has a heat limit is not on file.`,
    toDo: READ_THE_LABEL,
    about: [label.productName],
  });
  const undecided = hold("office", {
    rule: "forecast-not-entered",
    source: "weather",
    what: `${label.productName} has a heat limit and the day has no forecast.`,
    toDo: "Enter the day's forecast high and where it is from.",
    about: [label.productName],
  });
  return [...(limits.includes("unknown") ? [unread] : []), ...(limits.some((limit) => limit !== "none" && limit !== "unknown") ? [undecided] : [])];
}
