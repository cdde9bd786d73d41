import { NO_NUTRIENT_RATE } from "#domain/turf/nutrients";
import { type Outcome } from "#domain/foundation/outcome";
import { addRates, compareRates, type Rate } from "#domain/quantities/rate";
import { type PlannedNitrogen } from "#domain/scheduling/planned-rate";
import { type AnnualNitrogenRange } from "#domain/turf/annual-nitrogen";

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

/** A season's nitrogen beside a published yearly range; a sum that something is missing from can't be called enough or little. */
export function besideYearlyRange(sum: NitrogenSum, range: AnnualNitrogenRange): "below" | "within" | "above" | "not-known" {
  if (compareRates(sum.known, range.highest) > 0) return "above";
  if (sum.missing.length > 0) return "not-known";
  return compareRates(sum.known, range.lowest) < 0 ? "below" : "within";
}
