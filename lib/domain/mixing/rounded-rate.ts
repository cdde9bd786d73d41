import { distanceFrom, isMoreThanPercent, percentInWords } from "#domain/equipment/repeats";
import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { formatRatesApart } from "#domain/quantities/format-rate";
import { rational } from "#domain/quantities/rational";
import { type UseRate } from "#domain/label/label-facts";
import { plannedStrength } from "#domain/mixing/stated-rate";
import { type TicketTreatment } from "#domain/mixing/ticket-question";

/** How many percent from its plan marks may bring an amount before a finer tool is taken or, without one, it is said. A house rule. */
export const NEAR_ENOUGH_PERCENT = rational(2n);

/** From where on it wants care. A house rule. */
export const CARE_ABOVE_PERCENT = rational(10n);

/**
 * Says what the rate of a product really becomes where marks bring it more than 2 % off the plan, up or down, and with care
 * above 10 %. A plan by strength is held against the strength. Nothing is said where one is by another measure than the
 * other, or where nothing is planned. How the amount comes about begins the sentence.
 */
export function roundedOffPlan(treatment: TicketTreatment, became: UseRate, how: string): readonly Finding[] {
  const { label } = treatment;
  const planned: UseRate = plannedStrength(treatment) ?? treatment.rate;
  if (planned.basis !== became.basis || planned.amount === 0n) return [];
  const off = distanceFrom(rational(planned.amount, planned.per), rational(became.amount, became.per));
  if (!isMoreThanPercent(off, NEAR_ENOUGH_PERCENT)) return [];
  const side = off.numerator > 0n ? "more" : "less";
  const [becomes, asPlanned] = formatRatesApart<UseRate["basis"]>(became, planned, "us");
  const words = {
    rule: "rounded-off-plan",
    source: "house",
    what: `${how}, ${label.productName} comes to ${side} than planned.`,
    figure: `It becomes ${becomes}, ${percentInWords(off)} ${side} than the ${asPlanned} that are planned.`,
    toDo: "Measure it with a finer tool, or plan a rate that the marks give.",
    about: [label.productName],
  } as const;
  return [isMoreThanPercent(off, CARE_ABOVE_PERCENT) ? takeCare(words) : note(words)];
}
