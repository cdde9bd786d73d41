// Builders: feeds by what they bring of their nutrient and how they let it go, and what a lawn had of them before.
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type LabelFacts } from "#domain/label/label-facts";
import { nutrientRatesOf } from "#domain/mixing/delivered";
import { type PastApplication, type TicketTreatment } from "#domain/mixing/ticket-question";
import { rateOf } from "#domain/quantities/rate";
import { decimal } from "#domain/quantities/rational";
import { gradeOf, type NitrogenRelease } from "#domain/turf/nutrients";
import { FEED, PAST } from "./ticket";

/** So many percent of the nitrogen are slow. */
export function slow(percentOfNitrogen: string): NitrogenRelease {
  return { kind: "slow-percent-of-nitrogen", percent: decimal(percentOfNitrogen) };
}

/**
 * A feed of a tenth of its nutrient, which is nitrogen where no other grade is given: ten times the nutrient's pounds per
 * 1,000 sq ft are the product's.
 */
export function feeding(pounds: string, release: NitrogenRelease = slow("0"), grade = gradeOf("10", "0", "0", "0")): TicketTreatment {
  const rate = rateOf("product-mass-per-area", pounds, "lb per 1,000 sq ft");
  return { ...withAnalysis({ grade, release }), rate: { ...rate, amount: rate.amount * 10n } };
}

/** The feed of the tickets at its own rate, with this analysis on its label. */
export function withAnalysis(analysis: LabelFacts["analysis"]): TicketTreatment {
  return { ...FEED, label: { ...FEED.label, analysis } };
}

/** The feed of the tickets at its own rate and grade, which lets its nitrogen go like this. */
export function releasing(release: NitrogenRelease): TicketTreatment {
  return withAnalysis({ grade: gradeOf("32", "0", "0"), release });
}

/** What a lawn had of a treatment on an earlier day. */
export function had({ label, rate }: TicketTreatment, on: string = PAST.on): PastApplication {
  return { ...PAST, on: on as CalendarDate, nutrients: nutrientRatesOf(label, rate) };
}
