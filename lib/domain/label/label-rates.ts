import { accept, refuse } from "#domain/foundation/outcome";
import { plainCharacters } from "#domain/quantities/parse-number";
import { parseRate, RATE_DIVIDER } from "#domain/quantities/parse-rate";
import { compareRates, type Rate, type RateBasis, rateBases } from "#domain/quantities/rate";
import { parseShare } from "#domain/quantities/share";
import { answerOf, type ReadAnswer } from "#domain/label/label-answer";
import { areOverArea, type BesideRates, type LabelRates, type LabelUse, type UseRate } from "#domain/label/label-facts";

/** A second number in an amount, as the 8 of "lb 8 oz"; the 3 of "m3" is none. */
const SECOND_NUMBER = /^(?!to ).*(?<![a-z^])\d/iu;

/**
 * The two ends of "2 to 3 lb per 1,000 sq ft", each with its unit; a single rate is both ends. Refused: a bare number
 * before an amount of two units, of which it may have either.
 */
function endsOf(value: string): ReadAnswer<readonly [string, string]> {
  const [, low, high] = /^(.+?) to (.+)$/iu.exec(value) ?? [];
  if (low === undefined || high === undefined) return accept([value, value]);
  if (RATE_DIVIDER.test(low) || low.includes("%")) return accept([low, high]);
  const divider = RATE_DIVIDER.exec(high)?.index ?? high.length;
  const [amount, per] = [high.slice(0, divider), high.slice(divider)];
  if (/[a-z]/iu.test(low)) return accept([low + per, high]);
  const unit = /^[\d./ ,-]+(.*)$/u.exec(amount)?.[1] ?? "";
  if (SECOND_NUMBER.test(unit)) return refuse(`The ${low} of "${value}" may have either unit of ${amount}. Write both with their units, as in 2 lb to 2 lb 8 oz per 1,000 sq ft.`);
  return accept([`${low} ${unit}${per}`, high]);
}

/** Reads a range of rates of one kind. Refuses ends whose units nobody can tell, two kinds, a high under the low, a rate of nothing. */
export function readRange<Basis extends RateBasis>(value: string, bases: readonly Basis[]): ReadAnswer<{ readonly low: Rate<Basis>; readonly high: Rate<Basis> }> {
  const ends = endsOf(plainCharacters(value));
  if (!ends.ok) return ends;
  const [lowText, highText] = ends.value;
  const low = parseRate(lowText, { field: "rate", bases });
  if (!low.ok) return refuse(low.refusal.sentence);
  const high = parseRate(highText, { field: "rate", bases });
  if (!high.ok) return refuse(high.refusal.sentence);
  const range: { readonly low: Rate<RateBasis>; readonly high: Rate<RateBasis> } = { low: low.value.rate, high: high.value.rate };
  if (range.low.basis !== range.high.basis) return refuse("One end is by weight and the other by volume.");
  if (range.low.amount === 0n) return refuse("A rate of nothing is none.");
  if (compareRates(range.low, range.high) > 0) return refuse("The first rate is higher than the second.");
  return accept(range as { low: Rate<Basis>; high: Rate<Basis> });
}

/** The bases in which a label states a rate of product. */
export const USE_RATE_BASES = ["product-mass-per-area", "product-volume-per-area", "product-volume-per-spray-volume", "product-mass-per-spray-volume"] as const;

/** Below zero, zero or above zero as a rate is under, at or over an end of a label's. Undefined by another measure. */
export function compareToLabel(rate: UseRate, rates: LabelRates, end: "low" | "high"): -1 | 0 | 1 | undefined {
  return rate.basis === rates.basis ? compareRates<RateBasis>(rate, rates[end]) : undefined;
}

/** One thing said after the rates: a most over area, a most of the lawn for spot work, or that leaves are to be wet. */
function readBeside(part: string, rates: LabelRates): ReadAnswer<BesideRates> {
  if (/^(?:spray )?(?:foliage )?to wet$/iu.test(part)) return areOverArea(rates) ? refuse("Spray to wet goes with a rate in the finished spray, such as 1.5 fl oz per gal.") : accept({ isToWet: true });
  const [, words] = /^(?:spots? |spot work )?(?:no more than|not more than|at most|up to) (.+)$/iu.exec(part) ?? [];
  if (words === undefined) return refuse(`"${part}" is not known after a rate. Write spray to wet, no more than 3 fl oz per 1,000 sq ft, or spots no more than 10% of the lawn.`);
  if (words.includes("%")) {
    const share = parseShare("rates", words);
    return share.ok ? accept({ mostSpotShareBasisPoints: share.value }) : refuse(share.refusal.sentence);
  }
  if (areOverArea(rates)) return refuse("A rate over area has its most at its higher end: write it as a range.");
  const most = parseRate(words, { field: "rate", bases: ["product-mass-per-area", "product-volume-per-area"] });
  if (!most.ok) return refuse(most.refusal.sentence);
  if (rateBases[most.value.rate.basis].amount !== rateBases[rates.basis].amount) return refuse("The rate and the most over area are of two kinds, weight and volume.");
  return most.value.rate.amount === 0n ? refuse("A most of nothing allows none.") : accept({ mostOnArea: most.value.rate });
}

/**
 * Reads the rates of a use: a range over area, or of product in the finished spray ("1 to 1.5 fl oz per gal", "0.5 oz
 * wt per gal", "2% v/v"); after semicolons a most over area for the latter, a most of the lawn for spot work, and
 * "spray to wet". Refused: no rate, what readRange refuses, a part that is not known, that is said twice, or that does
 * not go with the rate.
 */
export function readRates(text: string): ReadAnswer<Pick<LabelUse, "rates" | "besideRates">> {
  const answer = answerOf(text);
  if (answer.kind !== "printed") return refuse("Write the rate of this use: without one there is nothing to measure out.");
  const [first = "", ...parts] = answer.value.split(";").map((part) => part.trim());
  const range = readRange(first, USE_RATE_BASES);
  if (!range.ok) return range;
  // readRange has found both ends to be of one basis.
  const rates = { basis: range.value.low.basis, ...range.value } as LabelRates;
  let beside: BesideRates = {};
  for (const part of parts) {
    const read = readBeside(part, rates);
    if (!read.ok) return read;
    if (Object.keys(read.value).some((said) => said in beside)) return refuse(`"${part}" is said twice.`);
    beside = { ...beside, ...read.value };
  }
  return accept(parts.length === 0 ? { rates } : { rates, besideRates: beside });
}
