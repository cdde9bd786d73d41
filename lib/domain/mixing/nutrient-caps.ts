import { type Finding, hold } from "#domain/foundation/finding";
import { formatRate, formatRatesApart } from "#domain/quantities/format-rate";
import { compareRates, type Rate, rateOf } from "#domain/quantities/rate";
import { type NutrientCapRule, type PackFact } from "#domain/rules/rule-pack";
import { type TicketLawn } from "#domain/mixing/ticket-question";

type NutrientRate = Rate<"nutrient-mass-per-area">;
type BroughtNutrients = TicketLawn["history"][number]["nutrients"];

/** The most of a nutrient that a law lets down, and where it says so. */
export interface NutrientCap {
  readonly most: NutrientRate;
  readonly citation: string;
}

/** What a pack has on file as a most; undefined where it has none. Source: the pack's own citation. */
export function capOf(fact: PackFact<NutrientCapRule> | undefined): NutrientCap | undefined {
  if (fact?.onFile !== true) return undefined;
  return { most: rateOf("nutrient-mass-per-area", fact.value.poundsPer1000SqFt, "lb per 1,000 sq ft"), citation: fact.citation };
}

/** Whether a rate is more than a cap lets down; nothing is more than none. */
export function isAboveCap(rate: NutrientRate, cap: NutrientCap | undefined): cap is NutrientCap {
  return cap !== undefined && compareRates(rate, cap.most) > 0;
}

/** What was put on a lawn in the calendar year of a day. A day is written as a calendar date is. */
export function historyOfYear({ history }: TicketLawn, on: string): TicketLawn["history"] {
  return history.filter((past) => past.on.slice(0, 4) === on.slice(0, 4));
}

/** What a lawn's history brought in the calendar year of a day, on the ground that was treated. */
export function broughtInYear(lawn: TicketLawn, on: string): readonly BroughtNutrients[] {
  return historyOfYear(lawn, on).map(({ nutrients }) => nutrients);
}

/** Why something of what was brought can't be counted, once each. */
export function uncountedOf(brought: readonly BroughtNutrients[]): readonly string[] {
  return [...new Set(brought.filter((each) => !each.ok).map(({ refusal }) => refusal.sentence))];
}

/** The hold for more than a law's most on one lawn in one visit. */
export function aboveAtOnce(said: Pick<Finding, "rule" | "what" | "toDo">, { planned, ofWhat, more = "" }: { readonly planned: NutrientRate; readonly ofWhat: string; readonly more?: string }, { most, citation }: NutrientCap, lawnName: string): Finding {
  const [above, limit] = formatRatesApart(planned, most, "us");
  return hold("license-holder", { ...said, source: "law", figure: `Planned is ${above}${ofWhat}; the law's most is ${limit}.${more}`, citation, about: [lawnName] });
}

/** A lawn's year of a nutrient, with this visit and before it, as far as it can be counted. */
export interface YearOfNutrient {
  readonly lawnName: string;
  readonly year: NutrientRate;
  readonly before: NutrientRate;
  readonly uncounted: readonly string[];
}

/** How a nutrient is spoken of. */
export interface NutrientWords {
  /** Begins the names of its rules. */
  readonly name: "nitrogen" | "phosphate";
  /** After a rate: " of P2O5", or nothing. */
  readonly ofWhat: string;
  /** What to do where the year has too much of it. */
  readonly toDo: string;
}

/** The holds of a law's most in a calendar year: a feed of it that can't be counted, and too much. */
export function overYear({ lawnName, year, before, uncounted }: YearOfNutrient, cap: NutrientCap | undefined, { name, ofWhat, toDo }: NutrientWords): readonly Finding[] {
  if (cap === undefined) return [];
  const words = { source: "law", citation: cap.citation, about: [lawnName] } as const;
  const undecided = hold("license-holder", {
    ...words,
    rule: `${name}-of-the-year-undecided`,
    what: `How much ${name} ${lawnName} had this year can't be counted.`,
    figure: `${uncounted.join(" ")} The law's most in a year is ${formatRate(cap.most, "us")}${ofWhat}.`,
    toDo: "Enter what is missing, or add up this year's feeds of the lawn before it gets another.",
  });
  const open = uncounted.length === 0 ? [] : [undecided];
  if (!isAboveCap(year, cap)) return open;
  const [above, limit] = formatRatesApart(year, cap.most, "us");
  const figure = `It had ${formatRate(before, "us")} and has ${above}${ofWhat} after this visit; the law's most is ${limit}.`;
  return [...open, hold("license-holder", { ...words, rule: `${name}-of-the-year-above-the-law`, what: `${lawnName} gets more ${name} in the year than the law lets it.`, figure, toDo })];
}
