import { invariant } from "#domain/foundation/invariant";
import { compareRates, type Rate, type RateBasis, ratioOfRates, scaleRate } from "#domain/quantities/rate";
import { roundToWhole } from "#domain/quantities/rational";

/** A rate in equal parts: how many applications, from one, and the rate of each. */
export interface SplitRate<B extends RateBasis> {
  readonly applications: number;
  readonly each: Rate<B>;
}

/**
 * Splits a rate into equal applications, as few as the most in one allows. Throws at a most of zero. Common practice.
 */
export function splitRate<B extends RateBasis>(whole: Rate<B>, most: Rate<NoInfer<B>>): SplitRate<B> {
  invariant(most.amount > 0n, "the most in one application is above zero");
  if (compareRates(whole, most) <= 0) return { applications: 1, each: whole };
  const applications = roundToWhole(ratioOfRates(whole, most), "up");
  return { applications: Number(applications), each: scaleRate(whole, { numerator: 1n, denominator: applications }) };
}
