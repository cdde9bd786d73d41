import { addDays, calendarDateIn } from "#domain/foundation/calendar-date";
import { type StatedConstraint } from "#domain/label/aftercare-constraint";
import { type AftercareEnd, type AftercareEstimates, dueBy, endOf } from "#domain/mixing/aftercare-instants";
import { type AppliedConstraint, type AppliedProduct, constraintsOf } from "#domain/mixing/applied-product";
import { dayIn } from "#domain/mixing/clock-periods";
import { type WateringHours, withinWateringHours } from "#domain/mixing/watering-hours";
import { type Span } from "#domain/weather/local-hours";

/** How many days ahead a time for watering in is looked for where no label sets a date. A habit of the house, no limit. */
const WATERING_SEARCH_DAYS = 14;

/** A product that must stay dry, and until when. */
export interface StaysDry {
  readonly applied: AppliedProduct;
  readonly constraint: StatedConstraint<"watering-not-before">;
  readonly end: AftercareEnd;
}

/** A product that must be watered in, and by when. */
export interface WateringNeed extends AppliedConstraint<"watering-in"> {
  /** Null where the label sets no date, or where the date of an earlier visit has passed. */
  readonly dueAtEpochMilliseconds: number | null;
  readonly isOverdue: boolean;
}

/** Until when each product must stay dry. */
export function stayingDry(
  products: readonly AppliedProduct[],
  context: { readonly timeZone: string; readonly estimates: AftercareEstimates },
): readonly StaysDry[] {
  return constraintsOf(products, "watering-not-before").map(({ applied, constraint }) => ({
    applied,
    constraint,
    end: endOf(constraint.untilLaterOf, applied.application, { ...context, wateredInAtEpochMilliseconds: null }),
  }));
}

/** What still has to be watered in, as of the end of the visit. */
export function wateringNeeds(
  products: readonly AppliedProduct[],
  visit: Span,
  timeZone: string,
): readonly WateringNeed[] {
  const unwatered = products.filter(({ wateredInAtEpochMilliseconds: at }) => at === "not-yet");
  return constraintsOf(unwatered, "watering-in").map(({ applied, constraint }) => {
    const due = constraint.by === "not-stated" ? null : dueBy(constraint.by, applied.application, timeZone);
    const isOverdue = applied.appliedIn === "earlier-visit" && due !== null && due <= visit.untilEpochMilliseconds;
    return { applied, constraint, dueAtEpochMilliseconds: isOverdue ? null : due, isOverdue };
  });
}

/** From the end of the visit until the last instant that is looked at. */
export function searchSpan(visit: Span, timeZone: string): Span {
  const date = calendarDateIn(timeZone, visit.untilEpochMilliseconds);
  const lastDay = dayIn(addDays(date, WATERING_SEARCH_DAYS), timeZone);
  return { fromEpochMilliseconds: visit.untilEpochMilliseconds, untilEpochMilliseconds: lastDay.untilEpochMilliseconds };
}

/**
 * When a product will have been watered in at the latest: when it was, or the end of the last watering hours before its
 * own date. Null where nothing sets a date. Other products do not move it, so that it is never too early.
 */
export function wateredInAtLatest(
  applied: AppliedProduct,
  visit: Span,
  hours: WateringHours,
  timeZone: string,
): number | null {
  const { wateredInAtEpochMilliseconds: at, application } = applied;
  if (typeof at === "number") return at;
  const [need] = wateringNeeds([applied], visit, timeZone);
  const due = need?.dueAtEpochMilliseconds ?? null;
  if (due === null) return null;
  const span = { fromEpochMilliseconds: application.endsAtEpochMilliseconds, untilEpochMilliseconds: due };
  return withinWateringHours(span, hours, timeZone).at(-1)?.untilEpochMilliseconds ?? null;
}
