import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { isOverArea, type LabelFacts, type LabelRates, type UseRate } from "#domain/label/label-facts";
import { compareToLabel } from "#domain/label/label-rates";
import { formatRatesApart } from "#domain/quantities/format-rate";
import { formatRateRange, joinRange, percentRangeWords } from "#domain/quantities/format-rate-range";
import { parseRate } from "#domain/quantities/parse-rate";
import { type Rate, scaleRate } from "#domain/quantities/rate";
import { partOfShare, WHOLE_LAWN } from "#domain/quantities/share";
import { NO_NUTRIENT_RATE, nutrientsDelivered } from "#domain/turf/nutrients";

/** Where a planned rate lies in the label's range; the ends belong to it. */
export type RateStanding = "within" | "below-lowest" | "above-highest" | "another-basis";

/** A rate that may be planned: it lies in the label's range, or below it and is said to. */
export interface PlannedRate {
  readonly typed: string;
  readonly rate: UseRate;
  readonly standing: "within" | "below-lowest";
}

/**
 * "2 to 3 lb per 1,000 sq ft" with both units written out where they differ; one rate where both ends are the same. Ends that
 * can't be written whole are rounded inward, and the range stands beside them as labels write it: "0.368 to 0.734 fl oz per
 * 1,000 sq ft (1 to 2 pt per acre)". A strength by volume is said in percent too.
 */
export function labelRangeWords(rates: LabelRates): string {
  const { from, to, otherwise } = formatRateRange<UseRate["basis"]>(rates.low, rates.high, "us");
  const range = `${joinRange(from, to)}${otherwise === undefined ? "" : ` (${otherwise})`}`;
  return rates.basis === "product-volume-per-spray-volume" ? `${range}, ${percentRangeWords(rates.low, rates.high)}` : range;
}

/** Where a rate lies in a label's range, exactly. Weight can't be held against volume, nor an area against finished spray. */
export function rateStanding(rate: UseRate, rates: LabelRates): RateStanding {
  const [low, high] = [compareToLabel(rate, rates, "low"), compareToLabel(rate, rates, "high")];
  if (low === undefined || high === undefined) return "another-basis";
  if (high > 0) return "above-highest";
  return low < 0 ? "below-lowest" : "within";
}

/**
 * Reads a rate that somebody typed for one use of a label, in the label's own measure (weight or volume, over area or
 * in the finished spray). Where in the range is the planner's decision: nothing typed is refused, there is no default.
 * Refused at `field`: no rate at all, a rate of nothing or by another measure, and with both figures one above the
 * label's highest, because nobody may answer for that; below the lowest it is accepted and says so.
 */
export function readPlannedRate(field: string, text: string, rates: LabelRates): Outcome<PlannedRate> {
  const range = labelRangeWords(rates);
  if (text.trim() === "") return missingFact(field, range, `Choose a rate. The label's range is ${range}.`);
  const read: Outcome<{ readonly typed: string; readonly rate: UseRate }> = parseRate<UseRate["basis"]>(text, { field, bases: [rates.basis] });
  if (!read.ok) return read;
  const { rate } = read.value;
  const typed = read.value.typed.trim();
  if (rate.amount === 0n) return badInput(field, typed, range, `A rate of nothing is none. The label's range is ${range}.`);
  const standing = rateStanding(rate, rates);
  if (standing === "within" || standing === "below-lowest") return accept({ typed, rate, standing });
  const [above, highest] = formatRatesApart<UseRate["basis"]>(rate, rates.high, "us");
  return badInput(field, typed, range, `${above} is above the label's highest rate, ${highest}. Nothing above the label may be planned.`);
}

/** What of a label says how much nitrogen its product brings. */
export type NitrogenFacts = Pick<LabelFacts, "productName" | "analysis" | "density">;

/** The nitrogen of a planned rate, and how much of it is slow. */
export interface PlannedNitrogen {
  readonly nitrogen: Rate<"nutrient-mass-per-area">;
  /** The part of it that is released slowly. */
  readonly slow: Rate<"nutrient-mass-per-area"> | "not-stated";
}


/**
 * The nitrogen that a product's rate puts on the ground; of spot work on the whole lawn, as the year's ledger counts
 * it. A product without an analysis brings none. Refused when the label's `analysis` was not read, for a liquid without
 * the `density` that turns volume into weight, more slow nitrogen than nitrogen, and (`rate`) a rate in the finished
 * spray, of which only the sprayer says how much goes on the ground.
 */
export function plannedNitrogen(rate: UseRate, { productName, analysis, density }: NitrogenFacts, spotShareBasisPoints: number | null = null): Outcome<PlannedNitrogen> {
  if (analysis === "none") return accept({ nitrogen: NO_NUTRIENT_RATE, slow: NO_NUTRIENT_RATE });
  if (analysis === "unknown") {
    return missingFact("analysis", "the grade on the label, or none", `The analysis of ${productName} has not been read from its label.`);
  }
  if (analysis.grade.nitrogenPercent.numerator === 0n) return accept({ nitrogen: NO_NUTRIENT_RATE, slow: NO_NUTRIENT_RATE });
  if (!isOverArea(rate)) return missingFact("rate", "a rate over area", `${productName} is planned by the gallon of spray: what it brings stands on the mix ticket of the day.`);
  const brought = nutrientsDelivered(rate, { ...analysis, ...(density === "unknown" ? {} : { density }) });
  if (!brought.ok) return brought;
  const { nitrogen, slowNitrogen } = brought.value;
  const part = partOfShare(spotShareBasisPoints ?? WHOLE_LAWN);
  return accept({ nitrogen: scaleRate(nitrogen, part), slow: slowNitrogen === "not-stated" ? slowNitrogen : scaleRate(slowNitrogen, part) });
}
