import { type CalendarDate, formatShortDate } from "#domain/foundation/calendar-date";
import { type Finding, hold } from "#domain/foundation/finding";
import { activeIngredientRate, type Concentration } from "#domain/quantities/active-ingredient";
import { formatRatesApart } from "#domain/quantities/format-rate";
import { addRates, compareRates, type Rate, rateFromAmounts } from "#domain/quantities/rate";
import { countsToward, mayBeUnderAnotherName, type NamedIngredient } from "#domain/label/ingredient-name";
import { citationOfUse, knownDensity, type LabelFacts, type SeasonLimit } from "#domain/label/label-facts";
import { type CountedPeriod, inPeriodOf, periodsAround, periodsMeantBy, periodWords, withinAYearOf } from "#domain/mixing/limit-period";
import { hasIngredients, type PastIngredient, type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

type ActiveRate = Rate<"active-ingredient-mass-per-area">;
const NO_ACTIVE: ActiveRate = rateFromAmounts("active-ingredient-mass-per-area", 0n, 1n);

/** How much of an ingredient goes down, as far as it can be counted, and what can't be, each in words. */
interface Total {
  readonly rate: ActiveRate;
  readonly uncounted: readonly string[];
}

function uncountedIn(parts: readonly Total[]): readonly string[] {
  const open = parts.filter(({ uncounted }) => uncounted.length > 0);
  return open.length === 0 ? [] : open.flatMap(({ uncounted }) => uncounted);
}

function sumOf(parts: readonly Total[]): Total {
  return { rate: parts.reduce((sum, { rate }) => addRates(sum, rate), NO_ACTIVE), uncounted: [...new Set(uncountedIn(parts))] };
}

function notCounted(words: string): Total {
  return { rate: NO_ACTIVE, uncounted: [words] };
}

/**
 * What ingredients add to a limit's total: by their acid where the limit names that, else as themselves. Ingredients that
 * nobody read leave it open, and so does a form of what is limited whose acid equivalent nobody entered, or one that may
 * be of it under another name.
 * @param own the ingredients of the label that limits it
 * @param product in words, with its day where it was put down before
 * @returns a part for each ingredient that counts; none for a product without any
 */
function broughtOf({ limited, own }: Limited, ingredients: readonly Brought[] | "unknown", product: () => string): readonly Total[] {
  const uncountable = () => notCounted(`What ${product()} brings of it can't be counted.`);
  if (ingredients === "unknown") return [uncountable()];
  return ingredients.flatMap((active) => {
    const counts = countsToward(limited, active);
    if (counts === "not") return mayBeUnderAnotherName(limited, active, own) ? [notCounted(`${product()} has ${active.name}, which may be ${limited} under another name.`)] : [];
    if (counts === "undecided") return [notCounted(`${product()} has ${active.name}, of which no acid equivalent as ${limited} is on file.`)];
    const rate = counts === "by-acid" ? active.acid?.rate : active.rate;
    return [rate === undefined || rate === "not-countable" ? uncountable() : { rate, uncounted: [] }];
  });
}

type Brought = Pick<PastIngredient, "name" | "rate" | "acid" | "modeOfAction">;

/** What a label limits, with the ingredients that it has itself. */
interface Limited {
  readonly limited: string;
  readonly own: LabelFacts["activeIngredients"];
}

/** What a treatment's rate brings of each ingredient; not countable where the density that it takes is not on file. */
function ingredientsOf({ label, rate }: TicketTreatment): readonly Brought[] | "unknown" {
  const density = knownDensity(label);
  const rateOf = (part: Concentration) => {
    const active = activeIngredientRate(rate, part, density);
    return active.ok ? active.value : "not-countable";
  };
  if (label.activeIngredients === "unknown") return "unknown";
  return label.activeIngredients.map(({ name, concentration, acid, modeOfAction }) => ({
    ...{ name, modeOfAction },
    rate: rateOf(concentration),
    ...(acid === undefined ? {} : { acid: { name: acid.name, rate: rateOf(acid.equivalent) } }),
  }));
}

/** What the applications of a lawn's history around a day brought of a limited ingredient, each with its day. */
function broughtAround(limited: Limited, { history }: TicketLawn, day: CalendarDate): readonly DatedTotal[] {
  return withinAYearOf(history.filter(hasIngredients), day).flatMap(({ on, productName, activeIngredients }) =>
    broughtOf(limited, activeIngredients, () => `${productName}, put down on ${formatShortDate(on)},`).map((total) => ({ on, total })),
  );
}

interface DatedTotal {
  readonly on: CalendarDate;
  readonly total: Total;
}

/** The fullest of the stretches; what can't be counted in any of them leaves all of them open. */
function mostIn(period: CountedPeriod, before: readonly DatedTotal[], on: CalendarDate): Total {
  const totals = periodsAround(period, before, on).map((stretch) => sumOf(stretch.map(({ total }) => total)));
  return { rate: totals.reduce((most, { rate }) => (compareRates(rate, most) > 0 ? rate : most), NO_ACTIVE), uncounted: uncountedIn(totals) };
}

/** A limit of a label as it meets one lawn of the visit. */
interface LimitOnLawn {
  readonly limit: SeasonLimit;
  readonly lawn: TicketLawn;
  /** What the lawn gets of the limited ingredient with this visit, over all products. */
  readonly totalIn: (period: CountedPeriod) => Total;
}

function limitsOnLawns({ use: { seasonLimits }, label: { activeIngredients: own } }: TicketTreatment, lawns: readonly TicketLawn[], { treatments, on }: TicketQuestion): readonly LimitOnLawn[] {
  if (seasonLimits === "none" || seasonLimits === "unknown") return [];
  const planned = treatments.map((one) => ({ zoneIds: one.zoneIds, productName: one.label.productName, ingredients: ingredientsOf(one) }));
  return seasonLimits.limits.flatMap((limit) => {
    const limited = { limited: limit.activeIngredient, own };
    const brought = planned.map(({ zoneIds, productName, ingredients }) => ({ zoneIds, totals: broughtOf(limited, ingredients, () => productName) }));
    return lawns.map((lawn): LimitOnLawn => {
      const now = brought.filter(({ zoneIds }) => zoneIds.includes(lawn.zoneId)).flatMap(({ totals }) => totals);
      const before = broughtAround(limited, lawn, on);
      return { limit, lawn, totalIn: (period) => sumOf([...now, mostIn(period, before, on)]) };
    });
  });
}

function words({ label, use }: TicketTreatment, lawn: TicketLawn) {
  return { source: "label", citation: citationOfUse(label.productName, use.useName), about: [label.productName, lawn.name] } as const;
}

/** A label that limits an ingredient which its own entry does not have names it otherwise there, and nothing can be counted. */
function isEnteredOtherwise({ label: { activeIngredients } }: TicketTreatment, limited: string): boolean {
  return activeIngredients !== "unknown" && activeIngredients.every((active) => countsToward(limited, active) === "not");
}

function judge(treatment: TicketTreatment, onLawn: LimitOnLawn): readonly Finding[] {
  const { label } = treatment;
  const { limit: { activeIngredient, period: stated }, lawn } = onLawn;
  if (isEnteredOtherwise(treatment, activeIngredient)) {
    const what = `${label.productName} limits ${activeIngredient}, and its own entry has no such ingredient.`;
    return [hold("office", { ...words(treatment, lawn), rule: "season-limit-undecided", what, toDo: "Enter the ingredient as the label names it.", about: [label.productName] })];
  }
  return inPeriodOf(stated, (period) => passes(treatment, onLawn, period));
}

/** A total with a part that nobody can count may be any: it holds until the part is counted, whatever the rest comes to. */
function undecided(treatment: TicketTreatment, activeIngredient: string, lawn: TicketLawn, uncounted: readonly string[]): Finding {
  const what = `How much ${activeIngredient} ${lawn.name} gets can't be worked out.`;
  const toDo = "Enter active ingredients, by their common names where they have one, their concentration and the density of these products as their labels have them, with the acid equivalent where one is printed.";
  return hold("office", { ...words(treatment, lawn), rule: "season-limit-undecided", what, figure: [...new Set(uncounted)].join(" "), toDo });
}

function isAbove({ rate }: Total, most: ActiveRate): boolean {
  return compareRates(rate, most) > 0;
}

function passes(treatment: TicketTreatment, { limit: { activeIngredient, most }, lawn, totalIn }: LimitOnLawn, period: CountedPeriod): readonly Finding[] {
  const total = totalIn(period);
  const { rate, uncounted } = total;
  const open = uncounted.length === 0 ? [] : [undecided(treatment, activeIngredient, lawn, uncounted)];
  if (!isAbove(total, most)) return open;
  const [above, limited] = formatRatesApart(rate, most, "us");
  const figure = `With this visit ${lawn.name} gets ${above} in the ${periodWords(period)}; the label's most is ${limited}.`;
  const what = `Too much ${activeIngredient} in the season.`;
  return [...open, hold("nobody", { ...words(treatment, lawn), rule: "season-limit-passed", what, figure, toDo: "Lower the rate or take a product without it." })];
}

/**
 * Whether a limit over time of any product on the same lawns already says that this ingredient of a treatment can't be
 * counted: one that counts it by its own name, or by an acid that can't be counted either.
 */
export function isSaidByLimit({ zoneIds }: TicketTreatment, active: NamedIngredient, isAcidCountable: boolean, treatments: readonly TicketTreatment[]): boolean {
  return treatments.some((limiting) => {
    const { seasonLimits } = limiting.use;
    if (seasonLimits === "none" || seasonLimits === "unknown" || !limiting.zoneIds.some((zoneId) => zoneIds.includes(zoneId))) return false;
    return seasonLimits.limits.some(({ activeIngredient }) => {
      const counts = countsToward(activeIngredient, active);
      return (counts === "as-itself" || (counts === "by-acid" && !isAcidCountable)) && !isEnteredOtherwise(limiting, activeIngredient);
    });
  });
}

/**
 * What a label's limits over time say of a treatment, lawn by lawn: over all products of the visit and of the lawn's
 * history that bring the same active ingredient, by its acid equivalent where the limit names the acid, in the label's own period. Of the 12 months, the fullest that has the
 * day in it counts, so that what is already planned for later counts too. A season without dates holds by calendar year
 * and wants care by the 12 months. What can't be counted leaves a total undecided, never too low. Limits that nobody has read are not judged here.
 */
export function checkSeason(treatment: TicketTreatment, lawns: readonly TicketLawn[], question: TicketQuestion): readonly Finding[] {
  return limitsOnLawns(treatment, lawns, question).flatMap((onLawn) => judge(treatment, onLawn));
}

/** Whether a treatment passes one of its label's limits over time on one of the lawns: where checkSeason says "season-limit-passed". */
export function passesSeason(treatment: TicketTreatment, lawns: readonly TicketLawn[], question: TicketQuestion): boolean {
  return limitsOnLawns(treatment, lawns, question).some(
    ({ limit: { activeIngredient, most, period }, totalIn }) =>
      !isEnteredOtherwise(treatment, activeIngredient) && periodsMeantBy(period).some((counted) => isAbove(totalIn(counted), most)),
  );
}
