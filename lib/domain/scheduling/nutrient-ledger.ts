import { NO_NUTRIENT_RATE } from "#domain/turf/nutrients";
import { US_STATES, type UsState } from "#domain/company/us-state";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Outcome } from "#domain/foundation/outcome";
import { addRates, type Rate, rateIn } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { NOT_ON_FILE, type RuleName, type RulePack } from "#domain/rules/rule-pack";
import { type NutrientRates } from "#domain/mixing/ticket-question";
import { capOf } from "#domain/mixing/nutrient-caps";
import { addNitrogen, nitrogenByRelease, type NitrogenByRelease, NO_NITROGEN, wholeNitrogen } from "#domain/mixing/year-nitrogen";
import { besideRangeWords, besideYearlyRange, endsOfRange, poundsApart } from "#domain/scheduling/season-nitrogen";
import { type AnnualNitrogenRange, annualNitrogenRangesIn, annualNitrogenRangesOf, rangeFigures, sourceOfRange } from "#domain/turf/annual-nitrogen";
import { type Grass } from "#domain/turf/grass";

type NutrientRate = Rate<"nutrient-mass-per-area">;

/** The nutrients of the ledger, as labels and laws count them. */
export const LEDGER_NUTRIENTS = ["nitrogen", "phosphate", "potash", "iron"] as const;
export type LedgerNutrient = (typeof LEDGER_NUTRIENTS)[number];

/** Their names, the short ones that stand beside a figure, and the decimals that a figure needs to say something. */
export const LEDGER_NUTRIENT_WORDS: Readonly<Record<LedgerNutrient, { readonly name: string; readonly sign: string; readonly decimals: number }>> = {
  nitrogen: { name: "Nitrogen", sign: "N", decimals: 2 },
  phosphate: { name: "Phosphate", sign: "P2O5", decimals: 2 },
  potash: { name: "Potash", sign: "K2O", decimals: 2 },
  iron: { name: "Iron", sign: "Fe", decimals: 3 },
};

/** How an entry stands: put down, of the visit that is looked at, or planned. */
export const LEDGER_STANDINGS = ["put-down", "this-visit", "planned"] as const;
export type LedgerStanding = (typeof LEDGER_STANDINGS)[number];

/** One product that went or shall go on a lawn. What can't be counted says why. */
export interface LedgerEntry {
  readonly id: string;
  readonly on: CalendarDate;
  readonly productName: string;
  readonly standing: LedgerStanding;
  readonly brought: Outcome<NutrientRates>;
}

/** What one entry brings of one nutrient. Only nitrogen has a release; all of another nutrient stands under quick. */
export interface LedgerPart extends Pick<LedgerEntry, "id" | "on" | "productName" | "standing"> {
  readonly amount: NitrogenByRelease;
}

/** The most that the law lets go down of a nutrient in a year. */
export type YearlyLimit =
  | { readonly kind: "law"; readonly most: NutrientRate; readonly citation: string }
  | { readonly kind: "not-on-file"; readonly words: string }
  /** No yearly limit of this nutrient is kept here. */
  | { readonly kind: "not-kept" };

/** One nutrient of one lawn over a calendar year. */
export interface NutrientYearOfLawn {
  readonly nutrient: LedgerNutrient;
  /** In order of time, those that bring none of it left out. */
  readonly parts: readonly LedgerPart[];
  readonly sums: Readonly<Record<LedgerStanding, NitrogenByRelease>>;
  readonly limit: YearlyLimit;
  /** Ranges published for the lawn's main grass in its state; nitrogen only. */
  readonly ranges: readonly AnnualNitrogenRange[];
}

/** A lawn's calendar year, nutrient by nutrient. */
export interface LawnLedger {
  readonly year: number;
  readonly nutrients: readonly NutrientYearOfLawn[];
  /** Why an entry of the year is not in the sums, once each; they are lowest sums then. */
  readonly missing: readonly string[];
  /** The published yearly range in words, also where none is for this grass and state. */
  readonly rangeWords: string;
}

/** What a lawn's calendar year is computed from. */
export interface LedgerQuestion {
  readonly year: number;
  readonly state: UsState;
  readonly pack: RulePack | undefined;
  /** The main one first. */
  readonly grasses: readonly Grass[];
  readonly entries: readonly LedgerEntry[];
}


/**
 * The nutrients of one lawn over a calendar year: put down, of this visit, and planned ahead, beside the published yearly
 * range of its main grass and the law's most. Rates on the ground that was or will be treated add up as if all went on
 * the same ground. Iron that a label does not name counts as none, because labels that bring some name it.
 */
export function lawnLedger({ year, state, pack, grasses, entries }: LedgerQuestion): LawnLedger {
  const own = entries.filter(({ on }) => Number(on.slice(0, 4)) === year).toSorted((one, other) => (one.on < other.on ? -1 : one.on > other.on ? 1 : 0));
  const [grass] = grasses;
  const ranges = grass === undefined ? [] : annualNitrogenRangesIn(state, grass);
  return {
    year,
    nutrients: LEDGER_NUTRIENTS.map((nutrient) => ofNutrient(nutrient, own, limitOf(nutrient, pack, state), nutrient === "nitrogen" ? ranges : [])),
    missing: [...new Set(own.flatMap(({ brought }) => (brought.ok ? [] : [brought.refusal.sentence])))],
    rangeWords: wordsOfRanges(grass, state, ranges),
  };
}

function ofNutrient(nutrient: LedgerNutrient, entries: readonly LedgerEntry[], limit: YearlyLimit, ranges: readonly AnnualNitrogenRange[]): NutrientYearOfLawn {
  const parts = entries.flatMap(({ id, on, productName, standing, brought }): readonly LedgerPart[] => {
    const amount = brought.ok ? amountOf(nutrient, brought.value) : NO_NITROGEN;
    return wholeNitrogen(amount).amount === 0n ? [] : [{ id, on, productName, standing, amount }];
  });
  const sumOf = (standing: LedgerStanding) => parts.filter((part) => part.standing === standing).map(({ amount }) => amount).reduce(addNitrogen, NO_NITROGEN);
  return { nutrient, parts, sums: { "put-down": sumOf("put-down"), "this-visit": sumOf("this-visit"), planned: sumOf("planned") }, limit, ranges };
}

function amountOf(nutrient: LedgerNutrient, rates: NutrientRates): NitrogenByRelease {
  if (nutrient === "nitrogen") return nitrogenByRelease(rates);
  const rate = rates[nutrient];
  return { ...NO_NITROGEN, quick: rate === "not-stated" ? NO_NUTRIENT_RATE : rate };
}

/** The rules of law on a nutrient's year; of the others no law was seen. */
const RULE_OF_YEAR = { nitrogen: "nitrogen-per-year", phosphate: "phosphate-per-year", potash: undefined, iron: undefined } as const satisfies Readonly<Record<LedgerNutrient, RuleName | undefined>>;

function limitOf(nutrient: LedgerNutrient, pack: RulePack | undefined, state: UsState): YearlyLimit {
  const name = RULE_OF_YEAR[nutrient];
  if (name === undefined) return { kind: "not-kept" };
  const cap = capOf(pack?.facts[name]);
  if (cap !== undefined) return { kind: "law", ...cap };
  return { kind: "not-on-file", words: `The most ${nutrient} that the law of ${US_STATES[state].name} lets down in a year is ${NOT_ON_FILE}.` };
}

/** Pounds per 1,000 sq ft, for a drawing or a figure in words. */
export function poundsPerThousand(rate: NutrientRate): number {
  return toNumber(rateIn(rate, "lb per 1,000 sq ft"));
}

function wordsOfRanges(grass: Grass | undefined, state: UsState, ranges: readonly AnnualNitrogenRange[]): string {
  if (grass === undefined) return "The grass is not on file, so no published range can stand beside it.";
  if (ranges.length > 0) return `Published for ${grass}: ${ranges.map((range) => `${rangeFigures(range)} lb in ${range.region} (${sourceOfRange(range)})`).join("; ")}.`;
  const elsewhere = annualNitrogenRangesOf(grass);
  if (elsewhere.length === 0) return `No yearly nitrogen range of ${grass} is on file.`;
  return `No yearly nitrogen range of ${grass} in ${US_STATES[state].name} is on file; published elsewhere: ${elsewhere.map((range) => `${rangeFigures(range)} lb in ${range.region}`).join(", ")}.`;
}

/**
 * What follows from one nutrient's year, as a sentence: "0.80 of at most 4.00 lb N per 1,000 sq ft; 1.60 after this
 * visit; 3.20 with what is planned." A law's most stands in it, else how the whole lies beside the one published range. No
 * figure reads like a most or an end of the range that it is not.
 */
export function conclusionOfYear({ nutrient, sums, limit, ranges }: NutrientYearOfLawn, missing: readonly string[]): string {
  const { sign, decimals } = LEDGER_NUTRIENT_WORDS[nutrient];
  const [range, ...others] = ranges;
  const beside = range === undefined || others.length > 0 ? undefined : range;
  const limits = [...(limit.kind === "law" ? [limit.most] : []), ...(beside === undefined ? [] : endsOfRange(beside))];
  const figure = (rate: NutrientRate) => poundsApart(rate, limits, decimals);
  const [had, visit, ahead] = LEDGER_STANDINGS.map((standing) => wholeNitrogen(sums[standing])) as [NutrientRate, NutrientRate, NutrientRate];
  const after = addRates(had, visit);
  const whole = addRates(after, ahead);
  const least = missing.length > 0 ? "At least " : "";
  const steps = [
    limit.kind === "law" ? `${least}${figure(had)} of at most ${figure(limit.most)} lb ${sign} per 1,000 sq ft` : `${least}${figure(had)} lb ${sign} per 1,000 sq ft put down`,
    ...(visit.amount === 0n ? [] : [`${figure(after)} after this visit`]),
    ...(ahead.amount === 0n ? [] : [`${figure(whole)} with what is planned`]),
  ];
  // Where several regions of a state have a range, none of them is meant.
  return `${steps.join("; ")}${beside === undefined ? "" : `, ${besideRangeWords(besideYearlyRange({ known: whole, missing }, beside), beside)}`}.`;
}
