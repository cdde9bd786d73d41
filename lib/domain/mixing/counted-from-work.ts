import { type AftercareKind, AT_ONCE_MINUTES, type DueReach, type Reach, type StatedConstraint, statedConstraint, type Until } from "#domain/label/aftercare-constraint";
import { reachInWords } from "#domain/label/label-sentences";
import { type MowingCount } from "#domain/label/mowing-count";
import { type ApplicationTimes, dueBy, notBefore } from "#domain/mixing/aftercare-instants";
import { type AftercareReason, type AftercareStep } from "#domain/mixing/aftercare-step";
import { type AppliedProduct } from "#domain/mixing/applied-product";

/**
 * What the end of a step is counted from, where that is the work itself: "4 hours after the work ends". Null where the
 * calendar, a state of the lawn or an earlier visit sets it, and where none can be given: such an end does not move with
 * the hour of the work. Whoever prints a planned time beforehand says both.
 * @param products those of the visit; whatever else they are asked is left out
 */
export function countedFromWork({ endsAtEpochMilliseconds: end, reasons }: Pick<AftercareStep, "endsAtEpochMilliseconds" | "reasons">, products: readonly AppliedProduct[], timeZone: string): string | null {
  if (end === null) return null;
  const own = products.filter(({ appliedIn }) => appliedIn === "this-visit");
  const found = reasons.flatMap((reason) =>
    own.filter(({ label }) => label.productName === reason.productName).flatMap((applied) => countsOf(applied, reason, timeZone).filter(({ endsAt }) => endsAt === end)),
  );
  return found[0]?.words ?? null;
}

/** Labels' times before which a lawn is not watered. */
const NOT_BEFORE_KINDS: readonly AftercareKind[] = ["watering-not-before", "rain-that-spoils"];

/**
 * What the beginning of a step waits for that is counted from the work: the latest of the times before which its lawn is not
 * watered, "12 hours after the work ends", and when that is as planned. Null where nothing of the kind waits beyond the work.
 * Where other hours make the step begin later still it says what that beginning must not come before, if the work is late.
 * @param products those of the visit; whatever else they are asked is left out
 */
export function beginningCountedFromWork(
  { startsAtEpochMilliseconds: start, reasons }: Pick<AftercareStep, "startsAtEpochMilliseconds" | "reasons">,
  products: readonly AppliedProduct[],
  timeZone: string,
): { readonly words: string; readonly atEpochMilliseconds: number } | null {
  const own = products.filter(({ appliedIn }) => appliedIn === "this-visit");
  const found = reasons
    .filter(({ kind }) => NOT_BEFORE_KINDS.includes(kind))
    .flatMap((reason) => own.filter(({ label }) => label.productName === reason.productName).flatMap((applied) => countsAfterWork(applied, reason, timeZone)))
    .filter(({ atEpochMilliseconds: at }) => at <= start);
  return found.toSorted((one, other) => other.atEpochMilliseconds - one.atEpochMilliseconds)[0] ?? null;
}

function countsAfterWork(applied: AppliedProduct, reason: AftercareReason, timeZone: string) {
  return countsOf(applied, reason, timeZone).flatMap(({ words, endsAt }) =>
    endsAt === null || endsAt <= applied.application.endsAtEpochMilliseconds ? [] : [{ words, atEpochMilliseconds: endsAt }],
  );
}

/** One time of a label that counts from the work. */
interface CountedTime {
  readonly words: string;
  readonly endsAt: number | null;
}

function countsOf({ label, application }: AppliedProduct, { kind, labelWords, source }: AftercareReason, timeZone: string): readonly CountedTime[] {
  const own = statedConstraint(label, kind).filter((constraint) => constraint.labelWords === labelWords && constraint.source === source);
  return own.flatMap((constraint: StatedConstraint): readonly CountedTime[] => {
    switch (constraint.kind) {
      case "people-and-pets":
      case "watering-not-before":
      case "mowing-after":
        return constraint.untilLaterOf.flatMap((until) => after(until, application, timeZone));
      case "rain-that-spoils":
        return after(constraint.within, application, timeZone);
      case "seeding-after":
        return constraint.intervals.flatMap(({ until }) => after(until, application, timeZone));
      case "watering-in":
        return constraint.by === "not-stated" ? [] : due(constraint.by, application, timeZone);
      case "posting-sign":
        return signDown(constraint.mayComeDown, application, timeZone);
      case "leaf-at-application":
      case "soil-at-application":
      case "mowing-before":
      case "seeding-before":
        return [];
    }
  });
}

function movesWithWork(reach: Until | DueReach | MowingCount): reach is Exclude<Reach, { readonly anchor: "calendar-day" | "calendar-month" }> {
  return reach.anchor === "application-start" || reach.anchor === "application-end" || reach.anchor === "posting" || reach.anchor === "days";
}

function after(until: Until | MowingCount, application: ApplicationTimes, timeZone: string): readonly CountedTime[] {
  if (!movesWithWork(until)) return [];
  return [{ words: reachInWords(until, "work"), endsAt: notBefore(until, application, timeZone).atEpochMilliseconds }];
}

function due(by: DueReach, application: ApplicationTimes, timeZone: string): readonly CountedTime[] {
  const endsAt = dueBy(by, application, timeZone);
  if (by.anchor === "at-once") return [{ words: reachInWords({ anchor: "application-end", durationMinutes: AT_ONCE_MINUTES }, "work"), endsAt }];
  if (!movesWithWork(by)) return [];
  // Days that do not say from when are due by the earlier of both.
  const said = by.anchor === "days" && by.from === "not-said" ? { ...by, from: "application-start" as const } : by;
  return [{ words: reachInWords(said, "work"), endsAt }];
}

function signDown(down: StatedConstraint<"posting-sign">["mayComeDown"], application: ApplicationTimes, timeZone: string): readonly CountedTime[] {
  if (down.trigger === "days-after-completion") return after({ anchor: "days", from: "application-end", days: down.daysAfter }, application, timeZone);
  if (down.trigger !== "elapsed") return [];
  // A sign that does not stand yet is put up as the work begins, or right after it.
  const posted = [application.startsAtEpochMilliseconds, application.endsAtEpochMilliseconds];
  return posted.flatMap((postedAtEpochMilliseconds) => after({ anchor: down.anchor, durationMinutes: down.durationMinutes }, { ...application, postedAtEpochMilliseconds }, timeZone));
}
