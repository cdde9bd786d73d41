import { type Outcome } from "#domain/foundation/outcome";
import { addRates, compareRates, type Rate, rateFromAmounts } from "#domain/quantities/rate";
import { type AnnualNitrogenRange } from "#domain/turf/annual-nitrogen";

type NitrogenRate = Rate<"nutrient-mass-per-area">;

/** Nitrogen on the same ground, summed over treatments. What could not be worked out is named and makes the sum a lowest one. */
export interface NitrogenSum {
  readonly known: NitrogenRate;
  /** Why a treatment is not in the sum, once each. */
  readonly missing: readonly string[];
}

/** The sum over treatments that each went, or shall go, on the same ground. */
export function sumNitrogen(treatments: readonly Outcome<NitrogenRate>[]): NitrogenSum {
  const none = rateFromAmounts("nutrient-mass-per-area", 0n, 1n);
  const known = treatments.reduce((sum, each) => (each.ok ? addRates(sum, each.value) : sum), none);
  const missing = treatments.flatMap((each) => (each.ok ? [] : [each.refusal.sentence]));
  return { known, missing: [...new Set(missing)] };
}

/** A season's nitrogen beside a published yearly range; a sum that something is missing from can't be called enough or little. */
export function besideYearlyRange(sum: NitrogenSum, range: AnnualNitrogenRange): "below" | "within" | "above" | "not-known" {
  if (compareRates(sum.known, range.highest) > 0) return "above";
  if (sum.missing.length > 0) return "not-known";
  return compareRates(sum.known, range.lowest) < 0 ? "below" : "within";
}
