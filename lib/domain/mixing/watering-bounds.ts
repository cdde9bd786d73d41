import { addDays, calendarDateIn } from "#domain/foundation/calendar-date";
import { type AwaitedState, type StatedConstraint, type Until } from "#domain/label/aftercare-constraint";
import { type AftercareEnd, type AftercareEstimates, type ApplicationTimes, dueBy, endOf, notBefore } from "#domain/mixing/aftercare-instants";
import { type AppliedConstraint, type AppliedProduct, constraintsOf, isOfOtherWork } from "#domain/mixing/applied-product";
import { dayIn } from "#domain/mixing/clock-periods";
import { type WateringHours, withinWateringHours } from "#domain/mixing/watering-hours";
import { compareExact, type Measure } from "#domain/quantities/exact-quantity";
import { type Span } from "#domain/weather/local-hours";
import { type Authority } from "#domain/weather/spray-limits";

/**
 * How many days ahead a time for watering in is looked for where no label sets a later date. A habit of the house and no
 * limit: a day of the week that must have an even date too comes within three weeks, and this is a week more.
 */
const WATERING_SEARCH_DAYS = 28;

/** A time that hangs on what the house or the trade takes something to be; empty where a label or law states all of it. */
interface Estimated {
  readonly estimatedBy: readonly Authority[];
}

/** A product that must stay dry, and until when: its label says so of water, or of rain that would spoil it. */
export interface StaysDry extends Estimated {
  readonly applied: AppliedProduct;
  readonly constraint: StatedConstraint<"watering-not-before"> | StatedConstraint<"rain-that-spoils">;
  readonly end: AftercareEnd;
}

/** A product that must be watered in, and by when. */
export interface WateringNeed extends AppliedConstraint<"watering-in">, Estimated {
  /** Null where the label sets no date, or where the date of an earlier visit has passed or can't be kept any more. */
  readonly dueAtEpochMilliseconds: number | null;
  readonly isOverdue: boolean;
}

/** Who says how long "at once" is. */
const AT_ONCE: Authority = { basis: "common-practice", source: "common practice: at once is within an hour after the application" };
/** Who says what counts from a sign that does not stand yet. */
const NOT_POSTED: Authority = { basis: "common-practice", source: "common practice: until a sign stands, what counts from it counts from the work" };

const ESTIMATE_OF: Readonly<Record<AwaitedState, keyof AftercareEstimates | undefined>> = {
  dry: "untilDry",
  "dust-settled": "untilDustSettled",
  "watered-in": undefined,
  "watered-in-and-dry": "untilDryAfterWatering",
};

/** Whose estimates an end rests on, where it is one. */
function estimatesBehind({ isEstimate }: AftercareEnd, untils: readonly Until[], estimates: AftercareEstimates): readonly Authority[] {
  if (!isEstimate) return [];
  const stated = untils.flatMap((until) => {
    const name = until.anchor === "state" ? ESTIMATE_OF[until.state] : undefined;
    const estimate = name === undefined ? "unknown" : estimates[name];
    return estimate === "unknown" ? [] : [{ basis: estimate.basis, source: estimate.source }];
  });
  return stated.length > 0 ? stated : [NOT_POSTED];
}

function dueEstimatedBy(by: StatedConstraint<"watering-in">["by"], { postedAtEpochMilliseconds }: ApplicationTimes): readonly Authority[] {
  if (by === "not-stated") return [];
  if (by.anchor === "at-once") return [AT_ONCE];
  const isFromSign = by.anchor === "posting" || (by.anchor === "days" && by.from === "posting");
  return isFromSign && postedAtEpochMilliseconds === "not-posted" ? [NOT_POSTED] : [];
}

/** Until when each product must stay dry. */
export function stayingDry(
  products: readonly AppliedProduct[],
  context: { readonly timeZone: string; readonly estimates: AftercareEstimates },
): readonly StaysDry[] {
  return constraintsOf(products, "watering-not-before").map(({ applied, constraint }) => {
    const end = endOf(constraint.untilLaterOf, applied.application, { ...context, wateredInAtEpochMilliseconds: null });
    return { applied, constraint, end, estimatedBy: estimatesBehind(end, constraint.untilLaterOf, context.estimates) };
  });
}

/**
 * What rain would spoil, as long as it would, where the water of one watering is as much: a sprinkler washes off what
 * rain does. The depth is the most that any station puts down; where nobody knows it, only a label that means any rain
 * keeps water off.
 */
export function keptDryForRain(
  products: readonly AppliedProduct[],
  water: Measure<"length"> | "not-known",
  timeZone: string,
): readonly StaysDry[] {
  return constraintsOf(products, "rain-that-spoils")
    .filter(({ constraint: { from } }) => from === "any" || (water !== "not-known" && compareExact(water, from) >= 0))
    .map(({ applied, constraint }) => {
      const end = notBefore(constraint.within, applied.application, timeZone);
      return { applied, constraint, end, estimatedBy: end.isEstimate ? [NOT_POSTED] : [] };
    });
}

/** Until when rain would spoil a product, whatever amount of it; null where it spoils none. */
export function rainKeepsOffUntil(products: readonly AppliedProduct[], timeZone: string): number | null {
  const ends = constraintsOf(products, "rain-that-spoils").flatMap(({ applied, constraint: { within } }) => notBefore(within, applied.application, timeZone).atEpochMilliseconds ?? []);
  return ends.length === 0 ? null : Math.max(...ends);
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
    const isOverdue = isOfOtherWork(applied) && due !== null && due <= visit.untilEpochMilliseconds;
    return { applied, constraint, dueAtEpochMilliseconds: isOverdue ? null : due, isOverdue, estimatedBy: dueEstimatedBy(constraint.by, applied.application) };
  });
}

/** A visit until all that counts at it is down: other work that crosses it may take longer, and nothing is watered in before. */
export function untilAllIsDown(visit: Span, products: readonly AppliedProduct[]): Span {
  const ends = products.map(({ application }) => application.endsAtEpochMilliseconds);
  return { ...visit, untilEpochMilliseconds: Math.max(visit.untilEpochMilliseconds, ...ends) };
}

/** A dry time longer than this moves the days that are looked at, so that enough of them are left for every rule on dates. */
const LONG_DRY_MILLISECONDS = 7 * 86_400_000;

/**
 * From when on and until when a time for watering in is looked for: from the end of the visit or of the last dry time
 * until the first due time, however late, or for {@link WATERING_SEARCH_DAYS} where no label sets one. Empty or turned
 * where the due time comes first.
 */
export function searchSpan(
  visit: Span,
  { dryUntil, dueAt }: { readonly dryUntil: number | null; readonly dueAt: number | null },
  timeZone: string,
): Span {
  const visitEnd = visit.untilEpochMilliseconds;
  const fromEpochMilliseconds = Math.max(visitEnd, dryUntil ?? visitEnd);
  if (dueAt !== null) return { fromEpochMilliseconds, untilEpochMilliseconds: dueAt };
  const counted = fromEpochMilliseconds - visitEnd > LONG_DRY_MILLISECONDS ? fromEpochMilliseconds : visitEnd;
  const lastDay = dayIn(addDays(calendarDateIn(timeZone, counted), WATERING_SEARCH_DAYS), timeZone);
  return { fromEpochMilliseconds, untilEpochMilliseconds: lastDay.untilEpochMilliseconds };
}

/**
 * When a product will have been watered in at the latest: when it was, or the end of the last watering hours before its
 * own date. Null where nothing sets a date, and where no such hours are left after the visit, by whose end it was not
 * watered in. Other products do not move it, so that it is never too early.
 */
export function wateredInAtLatest(
  applied: AppliedProduct,
  visit: Span,
  hours: WateringHours,
  timeZone: string,
): number | null {
  const { wateredInAtEpochMilliseconds: at } = applied;
  if (typeof at === "number") return at;
  const [need] = wateringNeeds([applied], visit, timeZone);
  const due = need?.dueAtEpochMilliseconds ?? null;
  if (due === null) return null;
  const span = { fromEpochMilliseconds: untilAllIsDown(visit, [applied]).untilEpochMilliseconds, untilEpochMilliseconds: due };
  return withinWateringHours(span, hours, timeZone).at(-1)?.untilEpochMilliseconds ?? null;
}
