import { type AftercareKind, AT_ONCE_MINUTES, type DueReach, type ReachAnchor, type StatedConstraint, statedConstraint, type Until } from "#domain/label/aftercare-constraint";
import { reachInWords } from "#domain/label/label-sentences";
import { type MowingCount } from "#domain/label/mowing-count";
import { type ApplicationTimes, dueBy, notBefore } from "#domain/mixing/aftercare-instants";
import { type AftercareReason } from "#domain/mixing/aftercare-step";
import { type AppliedProduct, isOfOtherWork } from "#domain/mixing/applied-product";
import { signUpAt } from "#domain/mixing/sign-aftercare";

/** A time that a label or a law states, as it comes out for the work as planned. */
export interface StatedTime {
  readonly atEpochMilliseconds: number;
  /** What it is counted from where the hour of the work moves it: "4 hours after the work ends"; null where the calendar sets it. */
  readonly counted: { readonly words: string; readonly from: ReachAnchor } | null;
}

/**
 * The times that the statements behind a step name, each by itself: the longest as planned need not be the longest if the work
 * is done at another hour. Of this visit's products only; states of the lawn, and what waits for a sunset, are no such times.
 * @param products those of the visit; whatever else they are asked is left out
 */
export function statedTimes(reasons: readonly AftercareReason[], products: readonly AppliedProduct[], timeZone: string): readonly StatedTime[] {
  const own = products.filter((applied) => !isOfOtherWork(applied));
  return reasons.flatMap((reason) => own.filter(({ label }) => label.productName === reason.productName).flatMap((applied) => timesBehind(reason, applied, timeZone)));
}

/** Labels' times before which a lawn is not watered. */
const NOT_BEFORE_KINDS: readonly AftercareKind[] = ["watering-not-before", "rain-that-spoils"];

/** Of the reasons of a watering those that keep it off. */
export function keepOffReasons(reasons: readonly AftercareReason[]): readonly AftercareReason[] {
  return reasons.filter(({ kind }) => NOT_BEFORE_KINDS.includes(kind));
}

/** Of the reasons of a watering those that ask for it. */
export function dueReasons(reasons: readonly AftercareReason[]): readonly AftercareReason[] {
  return reasons.filter(({ kind }) => kind === "watering-in");
}

function timesBehind({ kind, labelWords, source }: AftercareReason, applied: AppliedProduct, timeZone: string): readonly StatedTime[] {
  const own = statedConstraint(applied.label, kind).filter((constraint) => constraint.labelWords === labelWords && constraint.source === source);
  return own.flatMap((constraint) => timesOf(constraint, applied, timeZone));
}

function timesOf(constraint: StatedConstraint, applied: AppliedProduct, timeZone: string): readonly StatedTime[] {
  const { application } = applied;
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
      return signDown(constraint, applied, timeZone);
    case "leaf-at-application":
    case "soil-at-application":
    case "mowing-before":
    case "seeding-before":
      return [];
  }
}

function after(until: Until | MowingCount, application: ApplicationTimes, timeZone: string): readonly StatedTime[] {
  if (until.anchor === "state" || until.anchor === "mowings") return [];
  const { atEpochMilliseconds: at } = notBefore(until, application, timeZone);
  if (at === null) return [];
  if (until.anchor === "calendar-day" || until.anchor === "calendar-month") return [{ atEpochMilliseconds: at, counted: null }];
  // Days that do not say from when are over by the later of both.
  const from = until.anchor !== "days" ? until.anchor : until.from === "not-said" ? "application-end" : until.from;
  return [{ atEpochMilliseconds: at, counted: { words: reachInWords(until, "work"), from } }];
}

function due(by: DueReach, application: ApplicationTimes, timeZone: string): readonly StatedTime[] {
  const at = dueBy(by, application, timeZone);
  if (by.anchor === "calendar-day") return [{ atEpochMilliseconds: at, counted: null }];
  const reach = by.anchor === "at-once" ? ({ anchor: "application-end", durationMinutes: AT_ONCE_MINUTES } as const) : by;
  // Days that do not say from when are due by the earlier of both.
  const said = reach.anchor === "days" && reach.from === "not-said" ? { ...reach, from: "application-start" as const } : reach;
  const from = said.anchor === "days" ? said.from : said.anchor;
  return [{ atEpochMilliseconds: at, counted: { words: reachInWords(said, "work"), from: from === "not-said" ? "application-start" : from } }];
}

function signDown(constraint: StatedConstraint<"posting-sign">, applied: AppliedProduct, timeZone: string): readonly StatedTime[] {
  const { mayComeDown: down } = constraint;
  if (down.trigger === "no-time-required") return [];
  const posted = { ...applied.application, postedAtEpochMilliseconds: signUpAt({ applied, constraint }) };
  const [people] = down.orReentryIfLater ? statedConstraint(applied.label, "people-and-pets") : [];
  const reentry = people === undefined ? [] : timesOf(people, applied, timeZone);
  switch (down.trigger) {
    case "elapsed":
      return [...after({ anchor: down.anchor, durationMinutes: down.durationMinutes }, posted, timeZone), ...reentry];
    case "day-following":
      return [...after({ anchor: "calendar-day", days: down.daysFollowing }, posted, timeZone), ...reentry];
    case "days-after-completion":
      return [...after({ anchor: "days", from: "application-end", days: down.daysAfter }, posted, timeZone), ...reentry];
    case "state":
      return reentry;
    case "sunset-of-day-following":
      return [];
  }
}
