import { type Finding, type FindingSource, hold, takeCare } from "#domain/foundation/finding";
import { type Outcome, accept } from "#domain/foundation/outcome";
import { seasonOf } from "#domain/turf/grass";
import { type LabelFacts } from "#domain/label/label-facts";
import { READ_THE_LABEL } from "#domain/label/not-read";
import { judgeDayByForecastHigh } from "#domain/weather/forecast-high";
import { type WeatherMix } from "#domain/weather/spray-limits";
import { type HourReason, type ReasonAuthority } from "#domain/weather/spray-reasons";
import { isSprayed, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

function weatherMix(treatment: TicketTreatment): WeatherMix {
  return { mixId: String(treatment.line), method: isSprayed(treatment) ? "spray" : "granular", products: [treatment.use.weather] };
}

function sourceOf({ basis }: ReasonAuthority): FindingSource {
  return basis;
}

/**
 * What a day's forecast high says of a visit: a label's limit at or under it is a hold that nobody may answer; feed and
 * iron on cool-season turf in the heat want care (common practice: the 70s F go, the 80s wait). A limit on the hours
 * afterwards is held against the next day's high too, and holds while that is not entered. Without a forecast a label's
 * limit can't be judged and holds, and the house's own care says that it waits for one. Refuses what is no temperature of
 * outdoor air.
 */
export function checkHeat(question: TicketQuestion): Outcome<readonly Finding[]> {
  const { forecastHighF, forecastNextHighF, treatments, on } = question;
  if (forecastHighF === "not-entered") {
    return accept([...treatments.flatMap(withoutForecast), ...careWithoutForecast(question)]);
  }
  const followingHighsF = forecastNextHighF === "not-entered" ? [] : [forecastNextHighF];
  const judged = judgeDayByForecastHigh({ date: on, forecastHighF, followingHighsF }, treatments.map(weatherMix));
  if (!judged.ok) return judged;
  const holds = judged.value.flatMap(({ reasons }) => reasons.map((reason) => heldBy(reason, forecastNextHighF)));
  return accept([...holds, ...careInHeat(question, forecastHighF)]);
}

function heldBy(reason: HourReason, forecastNextHighF: TicketQuestion["forecastNextHighF"]): Finding {
  const product = reason.productName ?? "the product";
  return hold(reason.basis === "label" && !reason.isUndecided ? "nobody" : "office", {
    ...saidOf(reason, product, forecastNextHighF),
    figure: reason.sentence,
    citation: reason.source,
    about: reason.productName === undefined ? [] : [reason.productName],
  });
}

function saidOf(reason: HourReason, product: string, forecastNextHighF: TicketQuestion["forecastNextHighF"]): Pick<Finding, "rule" | "source" | "what" | "toDo"> {
  if (!reason.isUndecided) {
    const what = reason.rule === "temperature-ahead" ? `Too hot for ${product} soon after that day.` : `Too hot for ${product} that day.`;
    return { rule: "too-hot", source: sourceOf(reason), what, toDo: "Move it to a cooler day, or leave it out of this visit." };
  }
  if (reason.rule !== "temperature-ahead") {
    const what = `Whether ${product} has a heat limit is not on file.`;
    return { rule: "heat-limit-not-read", source: sourceOf(reason), what, toDo: READ_THE_LABEL };
  }
  const what = `The heat limit of ${product} reaches beyond the day, and the forecast on file does not.`;
  const toDo =
    forecastNextHighF === "not-entered"
      ? "Enter the high of the day after with the day's forecast."
      : "Look up the highs of the days that follow, and answer this if none reaches the limit.";
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

/** Quick nitrogen or iron: what burns in heat. Slow nitrogen alone does not count. */
function canBurn({ analysis }: LabelFacts): boolean {
  if (analysis === "none") return false;
  if (analysis === "unknown") return true;
  const { grade, release } = analysis;
  const hasIron = grade.ironPercent !== "not-stated" && grade.ironPercent.numerator > 0n;
  if (hasIron) return true;
  if (grade.nitrogenPercent.numerator === 0n) return false;
  if (release.kind === "not-stated") return true;
  const slow = release.percent;
  const whole = release.kind === "slow-percent-of-nitrogen" ? { numerator: 100n, denominator: 1n } : grade.nitrogenPercent;
  return slow.numerator * whole.denominator < whole.numerator * slow.denominator;
}

/** Those that can burn a cool-season lawn of the visit; a lawn whose grass nobody entered is taken for one. */
function onCoolSeasonTurf({ treatments, lawns }: TicketQuestion): readonly TicketTreatment[] {
  const isCool = ({ grasses }: TicketQuestion["lawns"][number]) => grasses.length === 0 || seasonOf(grasses) === "cool";
  return treatments.filter(({ label, zoneIds }) => canBurn(label) && lawns.some((lawn) => zoneIds.includes(lawn.zoneId) && isCool(lawn)));
}

function careInHeat(question: TicketQuestion, forecastHighF: number): readonly Finding[] {
  const { heatCautionFromF } = question.settings;
  if (forecastHighF < heatCautionFromF) return [];
  return onCoolSeasonTurf(question).map(({ label }) =>
    takeCare({
      rule: "heat-on-cool-season-turf",
      source: "common-practice",
      what: `${label.productName} can burn cool-season turf in heat.`,
      figure: `The forecast high is ${String(forecastHighF)} °F; the company's settings ask for care from ${String(heatCautionFromF)} °F on.`,
      toDo: "Wait for a cooler day, or water as the label says.",
      about: [label.productName],
    }),
  );
}

function careWithoutForecast(question: TicketQuestion): readonly Finding[] {
  return onCoolSeasonTurf(question).map(({ label }) =>
    takeCare({
      rule: "heat-not-judged",
      source: "common-practice",
      what: `${label.productName} can burn cool-season turf in heat, and the day has no forecast.`,
      toDo: `Look at the forecast: from ${String(question.settings.heatCautionFromF)} °F on, wait.`,
      about: [label.productName],
    }),
  );
}
