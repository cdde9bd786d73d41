import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { activeIngredientRate } from "#domain/quantities/active-ingredient";
import { formatRatesApart } from "#domain/quantities/format-rate";
import { addRates, compareRates, type Rate, rateFromAmounts } from "#domain/quantities/rate";
import { isSameIngredient } from "#domain/label/ingredient-name";
import { type LabelFacts, type ProductRate, type SeasonLimit } from "#domain/label/label-facts";
import { monthsBefore } from "#domain/rules/nutrient-law";
import { type PastApplication, type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

type ActiveRate = Rate<"active-ingredient-mass-per-area">;
const NO_ACTIVE: ActiveRate = rateFromAmounts("active-ingredient-mass-per-area", 0n, 1n);

/** What a rate of product brings of an ingredient; "unknown" where ingredients, or the density that it takes, are not on file. */
function activeRateOf(label: LabelFacts, rate: ProductRate, name: string): ActiveRate | "unknown" {
  if (label.activeIngredients === "unknown") return "unknown";
  const density = label.density === "unknown" ? undefined : label.density;
  const rates = label.activeIngredients
    .filter((active) => isSameIngredient(active.name, name))
    .map(({ concentration }) => activeIngredientRate(rate, concentration, density));
  if (rates.some(({ ok }) => !ok)) return "unknown";
  return rates.flatMap((active) => (active.ok ? [active.value] : [])).reduce(addRates, NO_ACTIVE);
}

/** True when the later day comes before twelve months after the earlier are over: April 14 counts with the next April 13. */
function isWithin12Months(earlier: CalendarDate, later: CalendarDate): boolean {
  return earlier <= later && earlier > monthsBefore(later, 12);
}

/** What was put down in each stretch of the limit's period that has the day in it: one calendar year, or any 12 months. */
function periodsAround({ period }: CountedLimit, history: readonly PastApplication[], on: CalendarDate): readonly (readonly PastApplication[])[] {
  if (period === "calendar-year") return [history.filter((past) => past.on.slice(0, 4) === on.slice(0, 4))];
  const begins = [on, ...history.map((past) => past.on)].filter((day) => isWithin12Months(day, on));
  return begins.map((begin) => history.filter((past) => isWithin12Months(begin, past.on)));
}

/** A limit with the stretch of time in which it is counted. */
type CountedLimit = SeasonLimit & { readonly period: "calendar-year" | "12-months" };

function mostIn(limit: CountedLimit, lawn: TicketLawn, on: CalendarDate): ActiveRate {
  const totals = periodsAround(limit, lawn.history, on).map((period) =>
    period
      .flatMap(({ activeIngredients }) => activeIngredients.filter(({ name }) => isSameIngredient(name, limit.activeIngredient)).map(({ rate }) => rate))
      .reduce(addRates, NO_ACTIVE),
  );
  return totals.reduce((most, total) => (compareRates(total, most) > 0 ? total : most), NO_ACTIVE);
}

/** What a treatment of the visit brings of a limited ingredient, on each of its lawns the same. */
interface BroughtOfIngredient {
  readonly zoneIds: readonly string[];
  readonly rate: ActiveRate | "unknown";
}

/** What a lawn gets of a limited ingredient with this visit, over all products, or "unknown". */
function totalWith(limit: CountedLimit, lawn: TicketLawn, brought: readonly BroughtOfIngredient[], on: CalendarDate): ActiveRate | "unknown" {
  const together = brought.filter(({ zoneIds }) => zoneIds.includes(lawn.zoneId)).map(({ rate }) => rate);
  if (together.includes("unknown")) return "unknown";
  return together.filter((rate) => rate !== "unknown").reduce(addRates, mostIn(limit, lawn, on));
}

function words({ label, use }: TicketTreatment, lawn: TicketLawn) {
  return { source: "label", citation: `label of ${label.productName}, ${use.useName}`, about: [label.productName, lawn.name] } as const;
}

function judge(treatment: TicketTreatment, limit: SeasonLimit, lawn: TicketLawn, totalOf: (limit: CountedLimit) => ActiveRate | "unknown"): readonly Finding[] {
  const { label } = treatment;
  const { activeIngredient } = limit;
  if (label.activeIngredients !== "unknown" && !label.activeIngredients.some(({ name }) => isSameIngredient(name, activeIngredient))) {
    const what = `${label.productName} limits ${activeIngredient}, and its own entry has no such ingredient.`;
    return [hold("office", { ...words(treatment, lawn), rule: "season-limit-undecided", what, toDo: "Enter the ingredient as the label names it.", about: [label.productName] })];
  }
  if (limit.period !== "season") return passes(treatment, { ...limit, period: limit.period }, lawn, totalOf);
  const inYear = passes(treatment, { ...limit, period: "calendar-year" }, lawn, totalOf);
  return inYear.length > 0 ? inYear : passes(treatment, { ...limit, period: "12-months" }, lawn, totalOf).map(withCare);
}

/** Over the 12 months alone nobody can say that a season was passed, but the label may mean just that. */
function withCare({ rule, source, what, figure, citation, about }: Finding): Finding {
  const more = { ...(figure === undefined ? {} : { figure: `${figure} It says "season" without dates; in the calendar year it is not passed.` }), ...(citation === undefined ? {} : { citation }) };
  return takeCare({ rule, source, what, ...more, toDo: "Read what the label means by a season, and wait where it is not over.", about });
}

function passes(treatment: TicketTreatment, limit: CountedLimit, lawn: TicketLawn, totalOf: (limit: CountedLimit) => ActiveRate | "unknown"): readonly Finding[] {
  const { activeIngredient, most } = limit;
  const total = totalOf(limit);
  if (total === "unknown") {
    const toDo = "Enter active ingredients, their concentration and the density of every product of the visit.";
    return [hold("office", { ...words(treatment, lawn), rule: "season-limit-undecided", what: `How much ${activeIngredient} this visit brings can't be worked out.`, toDo })];
  }
  if (compareRates(total, most) <= 0) return [];
  const period = limit.period === "calendar-year" ? "calendar year" : "12 months";
  const [above, limited] = formatRatesApart(total, most, "us");
  const figure = `With this visit ${lawn.name} gets ${above} in the ${period}; the label's most is ${limited}.`;
  const what = `Too much ${activeIngredient} in the season.`;
  return [hold("nobody", { ...words(treatment, lawn), rule: "season-limit-passed", what, figure, toDo: "Lower the rate or take a product without it." })];
}

/**
 * What a label's limits over time say of a treatment, lawn by lawn: over all products of the visit and of the lawn's
 * history that bring the same active ingredient, in the label's own period. Of the 12 months, the fullest that has the
 * day in it counts, so that what is already planned for later counts too. A season without dates holds by calendar year
 * and wants care by the 12 months. Limits that nobody has read are not judged here.
 */
export function checkSeason(treatment: TicketTreatment, lawns: readonly TicketLawn[], question: TicketQuestion): readonly Finding[] {
  const { seasonLimits } = treatment.use;
  if (seasonLimits === "none" || seasonLimits === "unknown") return [];
  return seasonLimits.limits.flatMap((limit) => {
    const brought = question.treatments.map(({ label, rate, zoneIds }) => ({ zoneIds, rate: activeRateOf(label, rate, limit.activeIngredient) }));
    return lawns.flatMap((lawn) => judge(treatment, limit, lawn, (counted) => totalWith(counted, lawn, brought, question.on)));
  });
}
