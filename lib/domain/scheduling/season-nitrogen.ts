import { NO_NUTRIENT_RATE } from "#domain/turf/nutrients";
import { type Outcome } from "#domain/foundation/outcome";
import { addRates, compareRates, type Rate, rateIn } from "#domain/quantities/rate";
import { type PlannedNitrogen } from "#domain/scheduling/planned-rate";
import { toDecimalString } from "#domain/quantities/rational";
import { type AnnualNitrogenRange, isOneFigure, rangeFigures, rangeHeldAgainst } from "#domain/turf/annual-nitrogen";

type NitrogenRate = Rate<"nutrient-mass-per-area">;

/** Nitrogen on the same ground, summed over treatments. What could not be worked out is named and makes the sum a lowest one. */
export interface NitrogenSum {
  readonly known: NitrogenRate;
  /** What of it is released slowly, as far as labels state it. */
  readonly slow: NitrogenRate;
  /** True where a label does not state how much of its nitrogen is slow. */
  readonly isReleaseMissing: boolean;
  /** Why a treatment is not in the sum, once each. */
  readonly missing: readonly string[];
}

/** The sum over treatments that each went, or shall go, on the same ground. */
export function sumNitrogen(treatments: readonly Outcome<PlannedNitrogen>[]): NitrogenSum {
  const brought = treatments.flatMap((each) => (each.ok ? [each.value] : []));
  const known = brought.reduce((sum, { nitrogen }) => addRates(sum, nitrogen), NO_NUTRIENT_RATE);
  const slow = brought.reduce((sum, each) => (each.slow === "not-stated" ? sum : addRates(sum, each.slow)), NO_NUTRIENT_RATE);
  const isReleaseMissing = brought.some((each) => each.slow === "not-stated");
  const missing = treatments.flatMap((each) => (each.ok ? [] : [each.refusal.sentence]));
  return { known, slow, isReleaseMissing, missing: [...new Set(missing)] };
}

/** How a year's or season's nitrogen lies beside a published range. */
export type BesideRange = "below" | "within" | "above" | "not-known";

/**
 * A season's nitrogen beside a published yearly range, of which a single figure is about so much; a sum that something is
 * missing from can't be called enough or little.
 */
export function besideYearlyRange(sum: Pick<NitrogenSum, "known" | "missing">, range: AnnualNitrogenRange): BesideRange {
  const { lowest, highest } = rangeHeldAgainst(range);
  if (compareRates(sum.known, highest) > 0) return "above";
  if (sum.missing.length > 0) return "not-known";
  return compareRates(sum.known, lowest) < 0 ? "below" : "within";
}

const BESIDE: Readonly<Record<BesideRange, string>> = { below: "less than ", within: "within ", above: "more than ", "not-known": "beside " };

/** "within the 2 to 4 published for tall fescue in Illinois", "more than about 2, as published for tall fescue in Pennsylvania". */
export function besideRangeWords(beside: BesideRange, range: AnnualNitrogenRange): string {
  const of = `for ${range.grass} in ${range.region}`;
  if (!isOneFigure(range)) return `${BESIDE[beside]}the ${rangeFigures(range)} published ${of}`;
  return `${beside === "within" ? "" : BESIDE[beside]}${rangeFigures(range)}, as published ${of}`;
}

/** The ends of a range that a figure beside it must not read like unless it is one of them; about a single figure there are none. */
export function endsOfRange(range: AnnualNitrogenRange): readonly NitrogenRate[] {
  return isOneFigure(range) ? [] : [range.lowest, range.highest];
}

/** Pounds per 1,000 sq ft with so many decimals, and more where it would read like another that it is not. */
export function poundsApart(rate: NitrogenRate, others: readonly NitrogenRate[], decimals: number): string {
  const written = (each: NitrogenRate, digits: number) => toDecimalString(rateIn(each, "lb per 1,000 sq ft"), digits, "nearest");
  const differing = others.filter((other) => compareRates(rate, other) !== 0);
  let digits = decimals;
  while (differing.some((other) => written(rate, digits) === written(other, digits))) digits += 1;
  return written(rate, digits);
}
