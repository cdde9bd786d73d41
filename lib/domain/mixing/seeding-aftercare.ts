import { type CalendarDate, calendarDateIn, daysBetween } from "#domain/foundation/calendar-date";
import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { type Reach, type SeedingMethod, type StatedConstraint } from "#domain/label/aftercare-constraint";
import { mowedTimes, type MowingCount, SURELY_MOWED_AFTER_DAYS } from "#domain/label/mowing-count";
import { type AftercareEnd, endOnState, latestEnd, notBefore, reachesBackTo } from "#domain/mixing/aftercare-instants";
import { type MayNot, reasonFor } from "#domain/mixing/aftercare-step";
import { type AppliedProduct, appliedName, constraintsOf, isOfOtherWork, weakestAuthority } from "#domain/mixing/applied-product";
import { dayIn } from "#domain/mixing/clock-periods";
import { dateWords, localWords } from "#domain/mixing/local-words";
import { SOWING_METHODS, type SownSeed } from "#domain/properties/lawn-seeding";

/** Seed on the zone: of its history or of its plan. */
export interface ZoneSeeding extends Pick<SownSeed, "date" | "method" | "standing"> {
  /** Which lawns it is on, where a question is of several; left out where there is one only. */
  readonly lawnNames?: readonly string[];
}

/** " of Front and Side", or nothing where there is one lawn only. */
function ofLawns({ lawnNames }: ZoneSeeding): string {
  return lawnNames === undefined ? "" : ` of ${listWords(lawnNames)}`;
}

/** "the planned seeding of Front on April 3": one that was planned may have been done, so it counts until somebody says. */
function theSeeding(seeding: ZoneSeeding): string {
  const { date, standing, lawnNames } = seeding;
  const what = `the ${standing === "planned" ? "planned " : ""}seeding${ofLawns(seeding)}`;
  return `${what} ${lawnNames === undefined ? "of" : "on"} ${dateWords(date)}`;
}

/** "Front and Side were seeded", or that they were to be. */
function wasSeeded({ standing, lawnNames = ["The lawn"] }: ZoneSeeding): string {
  return `${listWords(lawnNames)} ${lawnNames.length === 1 ? "was" : "were"} ${standing === "planned" ? "to be seeded" : "seeded"}`;
}

/** When an interval ends. Mowings end at no instant: they are waited for, as a state of the lawn is. */
function intervalEnd(until: Reach | MowingCount, { application }: AppliedProduct, timeZone: string): AftercareEnd {
  if (until.anchor !== "mowings") return notBefore(until, application, timeZone);
  return endOnState(mowedTimes(until));
}

/** How long the lawn must not be seeded, by the longest of each product's intervals. */
export function seedingMayNots(products: readonly AppliedProduct[], timeZone: string): readonly MayNot[] {
  return constraintsOf(products, "seeding-after").map(({ applied, constraint }) => ({
    row: "seeding",
    startsAtEpochMilliseconds: applied.application.startsAtEpochMilliseconds,
    end: latestEnd(constraint.intervals.map(({ until }) => intervalEnd(until, applied, timeZone))),
    movesWithWork: !isOfOtherWork(applied),
    reason: reasonFor(appliedName(applied, timeZone), constraint),
  }));
}

/**
 * Seed that would come too soon after a product, by the interval for its own method, and products that come too soon
 * after seed. A method for which the label states nothing is a hold that says so, and where nobody knows the method, the
 * longest interval counts and a method that is missing wants care. Where a label counts mowings, only the
 * crew or the customer can say whether there were enough, so that wants care unless there can't have been. What is down by
 * other work can't be left out: seed that comes too soon after it wants care to be planned anew, and holds nothing.
 */
export function seedingFindings(
  products: readonly AppliedProduct[],
  seedings: readonly ZoneSeeding[],
  timeZone: string,
): readonly Finding[] {
  const after = constraintsOf(products, "seeding-after").flatMap(({ applied, constraint }) =>
    seedings.flatMap((seeding) => seedAfterProduct(applied, constraint, seeding, timeZone)),
  );
  const planned = products.filter((applied) => !isOfOtherWork(applied));
  const before = constraintsOf(planned, "seeding-before").flatMap(({ applied, constraint }) =>
    seedings.flatMap((seeding) => productAfterSeed(applied, constraint, seeding, timeZone)),
  );
  return [...after, ...before];
}

const METHODS: readonly SeedingMethod[] = SOWING_METHODS.filter((method) => method !== "unknown");

function seedAfterProduct(
  applied: AppliedProduct,
  constraint: StatedConstraint<"seeding-after">,
  seeding: ZoneSeeding,
  timeZone: string,
): readonly Finding[] {
  const { date, method, standing } = seeding;
  const day = dayIn(date, timeZone);
  const { application, label } = applied;
  if (standing === "done" || day.untilEpochMilliseconds <= application.startsAtEpochMilliseconds) return [];
  const name = appliedName(applied, timeZone);
  const { source, answerableBy, citation } = weakestAuthority([constraint]);
  const words = { source, citation, about: [label.productName] };
  const planned = `Seeding${ofLawns(seeding)}${method === "unknown" ? "" : ` (${method})`} is planned for ${dateWords(date)}`;
  const missing = methodsWithoutInterval(constraint, method);
  if (missing.length > 0 && method !== "unknown") {
    const what = `${planned}, and the label of ${name} states no interval for that method.`;
    const said = { ...words, rule: "seeding-interval-missing", what };
    return [
      isOfOtherWork(applied)
        ? takeCare({ ...said, toDo: "Read the label again, or sow by another method, or take the seeding out of the plan." })
        : hold(answerableBy, { ...said, toDo: "Read the label again, or take the product or the seeding out of the plan." }),
    ];
  }
  const unstated = missing.map((one) =>
    takeCare({
      ...words,
      rule: "seeding-interval-missing",
      what: `${planned}, and the label of ${name} states no interval for ${one} seed.`,
      toDo: `Put the seed down by another method than ${one}, or read the label again.`,
    }),
  );
  const until = untilMowedOrOver(applied, constraint, seeding, timeZone);
  if (until.tooSoon !== undefined) {
    const said = { ...words, rule: "seeding-too-soon-after", what: `${planned}, too soon after ${name}.`, figure: `Not before ${until.tooSoon}.` };
    const tooSoon = isOfOtherWork(applied)
      ? takeCare({ ...said, toDo: `${name} is down already: plan the seeding anew, for ${until.laterWords}.` })
      : hold(answerableBy, { ...said, toDo: "Seed later, or leave the product out." });
    return [tooSoon, ...unstated];
  }
  const waiting = until.mowings.map((mowings) =>
    takeCare({
      ...words,
      rule: "seeding-waits-for-mowings",
      what: `${planned}, and the label of ${name} wants the lawn ${mowedTimes(mowings)} before it.`,
      toDo: "Ask the customer before you seed, and seed later if it has not been.",
    }),
  );
  return [...waiting, ...unstated];
}

/** The methods that may be meant and for which a label states nothing. */
function methodsWithoutInterval({ intervals }: StatedConstraint<"seeding-after">, method: ZoneSeeding["method"]): readonly SeedingMethod[] {
  if (intervals.some((interval) => interval.method === "any")) return [];
  return METHODS.filter((one) => (method === one || method === "unknown") && !intervals.some((interval) => interval.method === one));
}

/** Why a day is too soon for seed, and else the mowings that it still hangs on. */
function untilMowedOrOver(
  applied: AppliedProduct,
  constraint: StatedConstraint<"seeding-after">,
  { date, method }: ZoneSeeding,
  timeZone: string,
): { readonly tooSoon?: undefined; readonly mowings: readonly MowingCount[] } | { readonly tooSoon: string; readonly laterWords: string } {
  const { application } = applied;
  const untils = constraint.intervals
    .filter((interval) => method === "unknown" || interval.method === method || interval.method === "any")
    .map(({ until }) => until);
  const ends = untils.flatMap((until) => (until.anchor === "mowings" ? [] : [notBefore(until, application, timeZone)]));
  const at = ends.length === 0 ? null : latestEnd(ends).atEpochMilliseconds;
  if (at !== null && at > dayIn(date, timeZone).fromEpochMilliseconds) {
    const words = localWords(at, timeZone, "end");
    return { tooSoon: words, laterWords: `${words}, or later` };
  }
  const mowings = untils.flatMap((until) => (until.anchor === "mowings" ? [until] : []));
  const appliedOn = calendarDateIn(timeZone, application.endsAtEpochMilliseconds);
  const tooMany = mowings.find((count) => !mayBeMowedBetween(appliedOn, date, count));
  if (tooMany === undefined) return { mowings };
  const words = `it has been ${mowedTimes(tooMany)}`;
  return { tooSoon: words, laterWords: `when ${words}` };
}

/** A lawn is mowed at most once a day: between two dates there can have been no more mowings than days. */
function mayBeMowedBetween(from: CalendarDate, until: CalendarDate, { count }: MowingCount): boolean {
  return daysBetween(from, until) >= count;
}

function productAfterSeed(
  applied: AppliedProduct,
  constraint: StatedConstraint<"seeding-before">,
  seeding: ZoneSeeding,
  timeZone: string,
): readonly Finding[] {
  const { date } = seeding;
  const day = dayIn(date, timeZone);
  const { within } = constraint;
  if (day.fromEpochMilliseconds >= applied.application.endsAtEpochMilliseconds) return [];
  if (within.anchor === "mowings") return productBeforeMowings(applied, { constraint, within, seeding }, timeZone);
  const from = reachesBackTo(within, applied.application, timeZone);
  if (day.untilEpochMilliseconds <= from) return [];
  const { source, answerableBy, citation } = weakestAuthority([constraint]);
  return [
    hold(answerableBy, {
      rule: "too-soon-after-seeding",
      source,
      what: `${appliedName(applied, timeZone)} comes too soon after ${theSeeding(seeding)}.`,
      figure: `Not on a lawn seeded since ${localWords(from, timeZone, "start")}.`,
      toDo: "Move the visit, or leave the product out.",
      citation,
      about: [applied.label.productName],
    }),
  ];
}

/** Nobody keeps count of mowings, so new seed wants a question at the gate, until it is surely old enough. */
function productBeforeMowings(
  applied: AppliedProduct,
  since: { readonly constraint: StatedConstraint<"seeding-before">; readonly within: MowingCount; readonly seeding: ZoneSeeding },
  timeZone: string,
): readonly Finding[] {
  const { constraint, within, seeding } = since;
  const seededOn = seeding.date;
  const appliedOn = calendarDateIn(timeZone, applied.application.startsAtEpochMilliseconds);
  if (daysBetween(seededOn, appliedOn) >= SURELY_MOWED_AFTER_DAYS) return [];
  const { source, answerableBy, citation } = weakestAuthority([constraint]);
  const name = appliedName(applied, timeZone);
  const figure = `Not on new seed until it has been ${mowedTimes(within)}.`;
  const words = { source, figure, citation, about: [applied.label.productName] };
  if (!mayBeMowedBetween(seededOn, appliedOn, within)) {
    const what = `${name} comes too soon after ${theSeeding(seeding)}.`;
    return [hold(answerableBy, { ...words, rule: "too-soon-after-seeding", what, toDo: "Move the visit, or leave the product out." })];
  }
  return [
    takeCare({
      ...words,
      rule: "new-seed-waits-for-mowings",
      what: `${wasSeeded(seeding)} on ${dateWords(seededOn)}, and how often it has been mowed since is not on file.`,
      toDo: `Ask the customer, and leave ${name} out if it has not been ${mowedTimes(within)}.`,
    }),
  ];
}
