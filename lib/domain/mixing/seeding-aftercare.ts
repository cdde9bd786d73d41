import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding, hold } from "#domain/foundation/finding";
import { type SeedingMethod, type StatedConstraint } from "#domain/label/aftercare-constraint";
import { latestEnd, notBefore, reachesBackTo } from "#domain/mixing/aftercare-instants";
import { type MayNot, reasonFor } from "#domain/mixing/aftercare-step";
import { type AppliedProduct, appliedName, constraintsOf, weakestAuthority } from "#domain/mixing/applied-product";
import { dayIn } from "#domain/mixing/clock-periods";
import { dateWords, localWords } from "#domain/mixing/local-words";

/** Seed on the zone: of its history or of its plan. */
export interface ZoneSeeding {
  readonly date: CalendarDate;
  readonly method: SeedingMethod;
  readonly standing: "done" | "planned";
}

/** How long the lawn must not be seeded, by the longest of each product's intervals. */
export function seedingMayNots(products: readonly AppliedProduct[], timeZone: string): readonly MayNot[] {
  return constraintsOf(products, "seeding-after").map(({ applied, constraint }) => ({
    row: "seeding",
    startsAtEpochMilliseconds: applied.application.startsAtEpochMilliseconds,
    end: latestEnd(constraint.intervals.map(({ until }) => notBefore(until, applied.application, timeZone))),
    reason: reasonFor(appliedName(applied, timeZone), constraint),
  }));
}

/**
 * Seed that would come too soon after a product, by the interval for its own method, and products that come too soon
 * after seed. A method for which the label states nothing is a hold that says so.
 */
export function seedingFindings(
  products: readonly AppliedProduct[],
  seedings: readonly ZoneSeeding[],
  timeZone: string,
): readonly Finding[] {
  const after = constraintsOf(products, "seeding-after").flatMap(({ applied, constraint }) =>
    seedings.flatMap((seeding) => seedAfterProduct(applied, constraint, seeding, timeZone)),
  );
  const planned = products.filter(({ appliedIn }) => appliedIn === "this-visit");
  const before = constraintsOf(planned, "seeding-before").flatMap(({ applied, constraint }) =>
    seedings.flatMap((seeding) => productAfterSeed(applied, constraint, seeding, timeZone)),
  );
  return [...after, ...before];
}

function seedAfterProduct(
  applied: AppliedProduct,
  constraint: StatedConstraint<"seeding-after">,
  { date, method, standing }: ZoneSeeding,
  timeZone: string,
): readonly Finding[] {
  const day = dayIn(date, timeZone);
  const { application, label } = applied;
  if (standing === "done" || day.untilEpochMilliseconds <= application.startsAtEpochMilliseconds) return [];
  const name = appliedName(applied, timeZone);
  const { source, answerableBy, citation } = weakestAuthority([constraint]);
  const intervals = constraint.intervals.filter((interval) => interval.method === method || interval.method === "any");
  const words = { source, citation, about: [label.productName] };
  if (intervals.length === 0) {
    return [
      hold(answerableBy, {
        ...words,
        rule: "seeding-interval-missing",
        what: `Seeding (${method}) is planned for ${dateWords(date)}, and the label of ${name} states no interval for that method.`,
        toDo: "Read the label again, or take the product or the seeding out of the plan.",
      }),
    ];
  }
  const end = latestEnd(intervals.map(({ until }) => notBefore(until, application, timeZone)));
  const at = end.atEpochMilliseconds;
  if (at !== null && at <= day.fromEpochMilliseconds) return [];
  return [
    hold(answerableBy, {
      ...words,
      rule: "seeding-too-soon-after",
      what: `Seeding (${method}) is planned for ${dateWords(date)}, too soon after ${name}.`,
      ...(at === null ? {} : { figure: `Not before ${localWords(at, timeZone, "end")}.` }),
      toDo: "Seed later, or leave the product out.",
    }),
  ];
}

function productAfterSeed(
  applied: AppliedProduct,
  constraint: StatedConstraint<"seeding-before">,
  { date }: ZoneSeeding,
  timeZone: string,
): readonly Finding[] {
  const day = dayIn(date, timeZone);
  const from = reachesBackTo(constraint.within, applied.application, timeZone);
  const isBefore = day.fromEpochMilliseconds < applied.application.endsAtEpochMilliseconds;
  if (!isBefore || day.untilEpochMilliseconds <= from) return [];
  const { source, answerableBy, citation } = weakestAuthority([constraint]);
  return [
    hold(answerableBy, {
      rule: "too-soon-after-seeding",
      source,
      what: `${appliedName(applied, timeZone)} comes too soon after the seeding of ${dateWords(date)}.`,
      figure: `Not on a lawn seeded since ${localWords(from, timeZone, "start")}.`,
      toDo: "Move the visit, or leave the product out.",
      citation,
      about: [applied.label.productName],
    }),
  ];
}
