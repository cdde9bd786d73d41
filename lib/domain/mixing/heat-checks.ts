import { type Finding, type FindingSource, hold, takeCare } from "#domain/foundation/finding";
import { type Outcome, accept } from "#domain/foundation/outcome";
import { seasonOf } from "#domain/turf/grass";
import { type LabelFacts } from "#domain/label/label-facts";
import { judgeDayByForecastHigh } from "#domain/weather/forecast-high";
import { type WeatherMix } from "#domain/weather/spray-limits";
import { type ReasonAuthority } from "#domain/weather/spray-reasons";
import { isSprayed, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

/** True where a label limits the heat, or nobody has read whether it does: then a day without a forecast can't be judged. */
function limitsHeat({ use }: TicketTreatment): boolean {
  return use.weather.highestTemperature !== "none" || use.weather.highestTemperatureAhead !== "none";
}

function weatherMix(treatment: TicketTreatment): WeatherMix {
  return { mixId: String(treatment.line), method: isSprayed(treatment) ? "spray" : "granular", products: [treatment.use.weather] };
}

function sourceOf({ basis }: ReasonAuthority): FindingSource {
  return basis;
}

/**
 * What a day's forecast high says of a visit: a label's limit at or under it is a hold that nobody may answer; feed and
 * iron on cool-season turf in the heat want care (common practice: the 70s F go, the 80s wait). Without a forecast a
 * limit can't be judged and holds. Refuses what is no temperature of outdoor air.
 */
export function checkHeat(question: TicketQuestion): Outcome<readonly Finding[]> {
  const { forecastHighF, treatments, on } = question;
  if (forecastHighF === "not-entered") {
    return accept(treatments.filter(limitsHeat).map(withoutForecast));
  }
  const judged = judgeDayByForecastHigh({ date: on, forecastHighF }, treatments.map(weatherMix));
  if (!judged.ok) return judged;
  const holds = judged.value.flatMap(({ reasons }) =>
    reasons.map((reason) =>
      hold(reason.basis === "label" && !reason.isUndecided ? "nobody" : "office", {
        rule: reason.isUndecided ? "heat-limit-not-read" : "too-hot",
        source: sourceOf(reason),
        what: reason.isUndecided ? `Whether ${reason.productName ?? "the product"} has a heat limit is not on file.` : `Too hot for ${reason.productName ?? "the product"} that day.`,
        figure: reason.sentence,
        toDo: reason.isUndecided ? "Read the label and enter what it states, or that it states nothing." : "Move it to a cooler day, or leave it out of this visit.",
        citation: reason.source,
        about: reason.productName === undefined ? [] : [reason.productName],
      }),
    ),
  );
  return accept([...holds, ...careInHeat(question, forecastHighF)]);
}

function withoutForecast({ use, label }: TicketTreatment): Finding {
  return hold("office", {
    rule: "forecast-not-entered",
    source: "weather",
    what: `${use.weather.productName} has a heat limit and the day has no forecast.`,
    toDo: "Enter the day's forecast high and where it is from.",
    about: [label.productName],
  });
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

function careInHeat({ treatments, lawns, settings }: TicketQuestion, forecastHighF: number): readonly Finding[] {
  if (forecastHighF < settings.heatCautionFromF) return [];
  return treatments
    .filter(({ label, zoneIds }) => canBurn(label) && lawns.some((lawn) => zoneIds.includes(lawn.zoneId) && seasonOf(lawn.grasses) === "cool"))
    .map(({ label }) =>
      takeCare({
        rule: "heat-on-cool-season-turf",
        source: "common-practice",
        what: `${label.productName} can burn cool-season turf in heat.`,
        figure: `The forecast high is ${String(forecastHighF)} °F; the house takes care from ${String(settings.heatCautionFromF)} °F on.`,
        toDo: "Wait for a cooler day, or water as the label says.",
        about: [label.productName],
      }),
    );
}
