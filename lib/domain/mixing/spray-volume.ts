import { distanceFrom, isMoreThanPercent } from "#domain/equipment/repeats";
import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { canonicalAmountOf, type ExactQuantity, type Measure, multiplyExact, settle } from "#domain/quantities/exact-quantity";
import { formatQuantitiesApart } from "#domain/quantities/format-quantity";
import { formatRatesApart } from "#domain/quantities/format-rate";
import { type Quantity } from "#domain/quantities/quantity";
import { rateFrom, times } from "#domain/quantities/rate";
import { rational } from "#domain/quantities/rational";
import { nearestMarks } from "#domain/quantities/rounding";
import { CARE_ABOVE_PERCENT, NEAR_ENOUGH_PERCENT } from "#domain/mixing/rounded-rate";
import { type TicketSprayer } from "#domain/mixing/ticket-question";

/**
 * The marks that so much spray is mixed to: the nearest, and the next one up where that would leave the ground more than
 * 2 % short of what the sprayer puts out. A house rule. Throws for no spray.
 */
export function marksFor(taken: ExactQuantity<"volume">, tankMark: Measure<"volume">): bigint {
  const marks = nearestMarks(taken, tankMark);
  const off = distanceFrom(taken.exactAmount, canonicalAmountOf(multiplyExact(tankMark, rational(marks))));
  return off.numerator < 0n && isMoreThanPercent(off, NEAR_ENOUGH_PERCENT) ? marks + 1n : marks;
}

/** Says so where the marks of the gauge make more than 2 % more spray than the ground takes, and with care above 10 %. */
export function moreThanTaken({ name, carrier }: TicketSprayer, isByStrength: boolean, finished: Quantity<"volume">, area: Quantity<"area">): readonly Finding[] {
  const taken = times(carrier.rate, area);
  const off = distanceFrom(taken.exactAmount, rational(finished.amount));
  if (off.numerator <= 0n || !isMoreThanPercent(off, NEAR_ENOUGH_PERCENT)) return [];
  const [mixed, needed] = formatQuantitiesApart(finished, settle(taken, "nearest"), "us");
  const [becomes, asMeasured] = formatRatesApart(rateFrom("carrier-volume-per-area", finished, area), carrier.rate, "us");
  const outcome = isByStrength ? "It is mixed at its strength, and the rest is left." : `The product for this ground is in all of it: spread evenly, that is ${becomes} in place of ${asMeasured}.`;
  const words = {
    rule: "spray-more-than-taken",
    source: "house",
    what: `Mixed for this visit alone, the marks of the gauge of ${name} make more spray than its ground takes.`,
    figure: `They make ${mixed} where ${needed} are taken. ${outcome}`,
    toDo: isByStrength ? "Take a smaller sprayer with finer marks, or use the rest where it is labeled." : "Spray all of it evenly on this ground, or take a smaller sprayer with finer marks.",
    about: [name],
  } as const;
  return [isMoreThanPercent(off, CARE_ABOVE_PERCENT) ? takeCare(words) : note(words)];
}
