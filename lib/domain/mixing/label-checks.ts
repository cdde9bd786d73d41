import { type CalendarDate, daysBetween } from "#domain/foundation/calendar-date";
import { type Finding, hold, note, takeCare } from "#domain/foundation/finding";
import { activeIngredientRate } from "#domain/quantities/active-ingredient";
import { formatRate } from "#domain/quantities/format-rate";
import { addRates, compareRates, type Rate, rateFromAmounts } from "#domain/quantities/rate";
import { type LabelFacts, type LabelRates, type ProductRate, type SeasonLimit } from "#domain/label/label-facts";
import { isSprayed, type PastApplication, type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

const fromLabel = (treatment: TicketTreatment) => `label of ${treatment.label.productName}, ${treatment.use.useName}`;

function words(treatment: TicketTreatment, rule: string, what: string, more: { figure?: string; toDo?: string; about?: readonly string[] } = {}) {
  const { about = [], ...rest } = more;
  return { rule, source: "label", what, ...rest, citation: fromLabel(treatment), about: [treatment.label.productName, ...about] } as const;
}

/** Below zero, zero or above zero as the planned rate is under, at or over one of the label's. Undefined on another basis. */
function compareToLabel(rate: ProductRate, rates: LabelRates, end: "low" | "high"): -1 | 0 | 1 | undefined {
  if (rate.basis === "product-mass-per-area" && rates.basis === rate.basis) return compareRates(rate, rates[end]);
  if (rate.basis === "product-volume-per-area" && rates.basis === rate.basis) return compareRates(rate, rates[end]);
  return undefined;
}

function checkRate(treatment: TicketTreatment): readonly Finding[] {
  const { rate, use, label } = treatment;
  const [low, high] = [compareToLabel(rate, use.rates, "low"), compareToLabel(rate, use.rates, "high")];
  const range = `The label's range is ${formatRate(use.rates.low, "us")} to ${formatRate(use.rates.high, "us")}; planned is ${formatRate(rate, "us")}.`;
  if (low === undefined || high === undefined) {
    const what = `The rate of ${label.productName} is planned by another measure than its label's.`;
    return [hold("office", words(treatment, "rate-on-another-basis", what, { figure: range, toDo: "Plan it as the label states it." }))];
  }
  if (high > 0) {
    return [hold("nobody", words(treatment, "label-rate-above-highest", `${label.productName} is above the label's highest rate.`, { figure: range, toDo: "Lower the rate." }))];
  }
  if (low < 0) {
    return [takeCare(words(treatment, "label-rate-below-lowest", `${label.productName} is below the label's lowest rate.`, { figure: range, toDo: "It may do little; make sure that it is meant." }))];
  }
  return [];
}

function checkCarrier(treatment: TicketTreatment): readonly Finding[] {
  if (!isSprayed(treatment)) return [];
  const { use, label, gear } = treatment;
  if (use.carrier === "none") return [];
  if (use.carrier === "unknown") return [unread(treatment, "carrier-not-read", "the finished spray it wants per 1,000 sq ft")];
  const { low, high } = use.carrier;
  if (compareRates(gear.carrier.rate, low) >= 0 && compareRates(gear.carrier.rate, high) <= 0) return [];
  return [
    hold(
      "nobody",
      words(treatment, "carrier-out-of-range", `${gear.name} does not put out the spray volume that ${label.productName} wants.`, {
        figure: `It puts out ${formatRate(gear.carrier.rate, "us")}; the label's range is ${formatRate(low, "us")} to ${formatRate(high, "us")}.`,
        toDo: "Change tip, pressure or pace and calibrate again, or take other equipment.",
        about: [gear.name],
      }),
    ),
  ];
}

function unread(treatment: TicketTreatment, rule: string, what: string): Finding {
  return hold("office", words(treatment, rule, `It has not been entered from the label of ${treatment.label.productName} ${what}.`, { toDo: "Read the label and enter what it states, or that it states nothing." }));
}

function checkGrass(treatment: TicketTreatment, lawns: readonly TicketLawn[]): readonly Finding[] {
  const { use, label } = treatment;
  if (use.grasses === "unknown") return [unread(treatment, "grasses-not-read", "on which grasses it may go")];
  const assumed = lawns
    .filter(({ grassesAssumed }) => grassesAssumed)
    .map((lawn) =>
      takeCare({
        rule: "grass-assumed",
        source: "house",
        what: `The grass of ${lawn.name} is only assumed: ${lawn.grasses.join(", ")}.`,
        toDo: "Look before you put anything down.",
        about: [label.productName, lawn.name],
      }),
    );
  if (use.grasses === "any turfgrass") return assumed;
  const { grasses: allowed } = use;
  const wrong = lawns.flatMap((lawn) => {
    const missing = lawn.grasses.filter((grass) => !allowed.includes(grass));
    if (missing.length === 0) return [];
    const figure = `${lawn.name} has ${missing.join(", ")}; the label names ${allowed.join(", ")}.`;
    return [hold("nobody", words(treatment, "grass-not-on-label", `${label.productName} may not go on this grass.`, { figure, toDo: "Take another product.", about: [lawn.name] }))];
  });
  return [...wrong, ...assumed];
}

function checkInterval(treatment: TicketTreatment, lawns: readonly TicketLawn[], on: CalendarDate): readonly Finding[] {
  const { use, label, productId } = treatment;
  if (use.leastDaysBetween === "none") return [];
  if (use.leastDaysBetween === "unknown") return [unread(treatment, "interval-not-read", "how many days must lie between two applications")];
  const { days } = use.leastDaysBetween;
  return lawns.flatMap((lawn) => {
    const since = lawn.history.filter((past) => past.productId === productId).map((past) => Math.abs(daysBetween(past.on, on)));
    const nearest = since.length === 0 ? undefined : Math.min(...since);
    if (nearest === undefined || nearest >= days) return [];
    const figure = `${String(nearest)} days lie between this and the other application on ${lawn.name}; the label asks for at least ${String(days)}.`;
    return [hold("nobody", words(treatment, "too-soon-again", `${label.productName} comes too soon again.`, { figure, toDo: "Move the visit.", about: [lawn.name] }))];
  });
}

const NO_ACTIVE: Rate<"active-ingredient-mass-per-area"> = rateFromAmounts("active-ingredient-mass-per-area", 0n, 1n);

function activeRateOf(label: LabelFacts, rate: ProductRate, name: string): Rate<"active-ingredient-mass-per-area"> | "unknown" {
  if (label.activeIngredients === "unknown") return "unknown";
  const ingredient = label.activeIngredients.find((active) => active.name === name);
  if (ingredient === undefined) return NO_ACTIVE;
  const density = label.density === "unknown" ? undefined : label.density;
  const active = activeIngredientRate(rate, ingredient.concentration, density);
  return active.ok ? active.value : "unknown";
}

function countsIn(limit: SeasonLimit, past: PastApplication, on: CalendarDate): boolean {
  if (past.on > on) return past.on.slice(0, 4) === on.slice(0, 4) && limit.period === "calendar-year";
  return limit.period === "calendar-year" ? past.on.slice(0, 4) === on.slice(0, 4) : daysBetween(past.on, on) < 365;
}

/** Over all products of the visit and of the lawn's history that bring the same active ingredient. */
function checkSeason(treatment: TicketTreatment, lawns: readonly TicketLawn[], question: TicketQuestion): readonly Finding[] {
  const { use, label } = treatment;
  if (use.seasonLimits === "none") return [];
  if (use.seasonLimits === "unknown") return [unread(treatment, "season-limit-not-read", "what may go on the same ground in a season")];
  return use.seasonLimits.limits.flatMap((limit) => lawns.flatMap((lawn) => judgeSeason(treatment, limit, lawn, question, label)));
}

function judgeSeason(
  treatment: TicketTreatment,
  limit: SeasonLimit,
  lawn: TicketLawn,
  question: TicketQuestion,
  label: LabelFacts,
): readonly Finding[] {
  const together = question.treatments
    .filter(({ zoneIds }) => zoneIds.includes(lawn.zoneId))
    .map((other) => activeRateOf(other.label, other.rate, limit.activeIngredient));
  if (together.includes("unknown")) {
    const what = `How much ${limit.activeIngredient} this visit brings can't be worked out.`;
    return [hold("office", words(treatment, "season-limit-undecided", what, { toDo: "Enter active ingredients, their concentration and the density of every product of the visit.", about: [lawn.name] }))];
  }
  const before = lawn.history
    .filter((past) => countsIn(limit, past, question.on))
    .flatMap((past) => past.activeIngredients.filter(({ name }) => name === limit.activeIngredient).map(({ rate }) => rate));
  const planned = together.filter((rate) => rate !== "unknown").reduce(addRates, NO_ACTIVE);
  const total = before.reduce(addRates, planned);
  if (compareRates(total, limit.most) <= 0) return [];
  const period = limit.period === "calendar-year" ? "calendar year" : "12 months";
  const figure = `With this visit ${lawn.name} gets ${formatRate(total, "us")} in the ${period}; the label's most is ${formatRate(limit.most, "us")}.`;
  return [hold("nobody", words(treatment, "season-limit-passed", `Too much ${limit.activeIngredient} in the season.`, { figure, toDo: "Lower the rate or take a product without it.", about: [label.productName, lawn.name] }))];
}

function checkReading(treatment: TicketTreatment): readonly Finding[] {
  const { label, labelConfirmedBy, use } = treatment;
  const findings: Finding[] = [];
  if (labelConfirmedBy === null) {
    findings.push(
      hold("office", {
        rule: "label-not-confirmed",
        source: "house",
        what: `Nobody has held the entry of ${label.productName} against its label.`,
        toDo: "Confirm the entry in the Shed, with the container at hand.",
        about: [label.productName],
      }),
    );
  }
  if (label.isRestrictedUse === true) {
    findings.push(takeCare(words(treatment, "restricted-use", `${label.productName} is for restricted use.`, { toDo: "A certified applicator puts it down or supervises as the state asks." })));
  }
  if (label.isRestrictedUse === "unknown") findings.push(unread(treatment, "restricted-use-not-read", "whether it is for restricted use"));
  if (use.stainsHardSurfaces === "unknown") findings.push(unread(treatment, "staining-not-read", "whether it stains hard surfaces"));
  if (use.stainsHardSurfaces === true) {
    findings.push(note(words(treatment, "stains", `${label.productName} stains concrete and stone.`, { toDo: "Blow walks and drives off before they get wet." })));
  }
  return findings;
}

/** Everything that a label says of a planned treatment, without the weather and the aftercare, which have their own files. */
export function checkLabel(treatment: TicketTreatment, question: TicketQuestion): readonly Finding[] {
  const lawns = question.lawns.filter(({ zoneId }) => treatment.zoneIds.includes(zoneId));
  return [
    ...checkReading(treatment),
    ...checkRate(treatment),
    ...checkCarrier(treatment),
    ...checkGrass(treatment, lawns),
    ...checkInterval(treatment, lawns, question.on),
    ...checkSeason(treatment, lawns, question),
  ];
}
