import { canonicalAmountOf, exactly, type Measure, settle } from "#domain/quantities/exact-quantity";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { formatRate } from "#domain/quantities/format-rate";
import { compareRates, type Rate, rateOf, times } from "#domain/quantities/rate";
import { roundToWhole } from "#domain/quantities/rational";

/** What a calibration can find out. */
export type CalibratedBasis = "carrier-volume-per-area" | "product-mass-per-area";

/** A rate as it is kept: whole canonical units, each of which fits a column of 64 bits. */
export interface RateOnFile {
  readonly rateAmount: bigint;
  readonly ratePer: bigint;
}

const AREA_ON_FILE: Measure<"area"> = exactly("sq ft", 1000n);

/**
 * What turf equipment gives, generously: a mist of 1.3 fl oz to a drench of 0.16 in of water, a dusting to a thick
 * topdressing. Beyond it a unit is wrong or a digit too many. Common practice.
 */
const SPRAYER_LIMITS = {
  lowest: rateOf("carrier-volume-per-area", "0.01", "gal per 1,000 sq ft"),
  highest: rateOf("carrier-volume-per-area", "100", "gal per 1,000 sq ft"),
} as const;
const SPREADER_LIMITS = {
  lowest: rateOf("product-mass-per-area", "0.01", "lb per 1,000 sq ft"),
  highest: rateOf("product-mass-per-area", "1000", "lb per 1,000 sq ft"),
} as const;

/**
 * A calibrated rate as it is kept on file: over 1,000 sq ft, to the nearest canonical unit (under 2 pL or 7 ng off);
 * the exact one follows from the inputs, which are kept too. Refused under `field`: outside 0.01 to 100 gal, or 0.01 to
 * 1,000 lb, per 1,000 sq ft.
 */
export function rateOnFile(field: string, rate: Rate<"carrier-volume-per-area"> | Rate<"product-mass-per-area">): Outcome<RateOnFile> {
  const outside =
    rate.basis === "carrier-volume-per-area" ? isOutside(rate, SPRAYER_LIMITS) : isOutside(rate, SPREADER_LIMITS);
  if (outside) {
    const found = formatRate<CalibratedBasis>(rate, "us");
    return badInput(field, found, "what turf equipment gives", `That makes ${found}, which no such equipment gives. Look at the units and digits again.`);
  }
  const amount =
    rate.basis === "carrier-volume-per-area"
      ? settle(times(rate, AREA_ON_FILE), "nearest").amount
      : settle(times(rate, AREA_ON_FILE), "nearest").amount;
  return accept({ rateAmount: amount, ratePer: roundToWhole(canonicalAmountOf(AREA_ON_FILE), "nearest") });
}

function isOutside<B extends CalibratedBasis>(rate: Rate<B>, limits: { readonly lowest: Rate<B>; readonly highest: Rate<B> }): boolean {
  return compareRates(rate, limits.lowest) < 0 || compareRates(rate, limits.highest) > 0;
}
