import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding, hold } from "#domain/foundation/finding";
import { citationOfUse, type MostApplications } from "#domain/label/label-facts";
import { type CountedPeriod, inPeriodOf, periodsAround, periodWords } from "#domain/mixing/limit-period";
import { type TicketLawn, type TicketTreatment } from "#domain/mixing/ticket-question";

/**
 * How often a label lets its product go on the same ground, lawn by lawn: the visits of the lawn's history that brought it,
 * with this one, in the label's own period. Several entries of one visit are one application. Of the 12 months the fullest
 * that has the day in it counts, so that what is recorded for later counts too. What nobody has read is not judged here.
 */
export function checkApplicationCount(treatment: TicketTreatment, lawns: readonly TicketLawn[], on: CalendarDate): readonly Finding[] {
  const { mostApplications } = treatment.use;
  if (mostApplications === "none" || mostApplications === "unknown") return [];
  return lawns.flatMap((lawn) => inPeriodOf(mostApplications.period, (period) => tooMany(treatment, mostApplications, lawn, on, period)));
}

function tooMany({ label, use, productId }: TicketTreatment, { count }: MostApplications, lawn: TicketLawn, on: CalendarDate, period: CountedPeriod): readonly Finding[] {
  const own = lawn.history.filter((past) => past.productId === productId);
  const times = 1 + Math.max(0, ...periodsAround(period, own, on).map((past) => new Set(past.map(({ visitId }) => visitId)).size));
  if (times <= count) return [];
  return [
    hold("nobody", {
      rule: "too-many-applications",
      source: "label",
      what: `${label.productName} comes too often on ${lawn.name}.`,
      figure: `With this visit ${lawn.name} gets it ${String(times)} times in the ${periodWords(period)}; the label's most is ${String(count)}.`,
      toDo: "Leave it out of this visit, or take another product.",
      citation: citationOfUse(label.productName, use.useName),
      about: [label.productName, lawn.name],
    }),
  ];
}
