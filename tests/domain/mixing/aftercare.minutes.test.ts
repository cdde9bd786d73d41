// The rows of the timeline, minute by minute, against a second way that reads each label statement by what the wall shows.
import fc from "fast-check";
import { expect, test } from "vitest";
import { aftercareTimeline, type AftercareTimeline } from "#domain/mixing/aftercare";
import { type AftercareStep } from "#domain/mixing/aftercare-step";
import { type DrawnVisit, questionOf, visitsDrawn } from "../../support/aftercare-arbitraries";
import { valueOf } from "../../support/domain-answers";
import { keptOff, seedKeptOff, signStands } from "../../support/label-by-the-minute";
import { DAY, MINUTE } from "../../support/wall-clock";
import { waterKeptOff, waterPutDown } from "../../support/watering-by-the-minute";

type Says = (instant: number) => boolean | undefined;

/** What each product says of a row, from the start of its own work on. */
function saidOf(row: AftercareStep["row"], { ground, products, stations }: DrawnVisit): readonly Says[] {
  const water = waterPutDown(products, stations, ground);
  return products.map((product): Says => {
    const rows: Readonly<Record<AftercareStep["row"], () => Says>> = {
      "people-and-pets": () => keptOff(product, "people-and-pets", ground),
      watering: () => waterKeptOff(product, water, ground),
      mowing: () => keptOff(product, "mowing-after", ground),
      seeding: () => seedKeptOff(product, ground.zone),
      sign: () => signStands(product, ground),
    };
    const says = rows[row]();
    const from = row === "sign" ? -Infinity : product.application.startsAtEpochMilliseconds;
    return (instant) => (instant >= from ? says(instant) : false);
  });
}

/** Each fifth minute for a week, each hour for ten more, and each minute around where the timeline says that something begins or ends. */
function minutesOf({ ground }: DrawnVisit, steps: readonly AftercareStep[]): readonly number[] {
  const start = ground.visitFrom;
  const week = Array.from({ length: (7 * DAY) / (5 * MINUTE) }, (_, index) => start + index * 5 * MINUTE);
  const weeks = Array.from({ length: 70 * 24 }, (_, index) => start + 7 * DAY + index * 60 * MINUTE);
  const edges = steps.flatMap(({ startsAtEpochMilliseconds, endsAtEpochMilliseconds }) => [startsAtEpochMilliseconds, endsAtEpochMilliseconds ?? start]);
  const near = edges.flatMap((edge) => Array.from({ length: 11 }, (_, index) => Math.floor(edge / MINUTE) * MINUTE + (index - 5) * MINUTE));
  return [...week, ...weeks, ...near].filter((instant) => instant >= start);
}

function forbids(steps: readonly AftercareStep[], instant: number): boolean {
  return steps.some(({ startsAtEpochMilliseconds: from, endsAtEpochMilliseconds: until }) => from <= instant && (until === null || instant < until));
}

const timelineOf = (visit: DrawnVisit): AftercareTimeline => valueOf(aftercareTimeline(questionOf(visit)));

test.each(["people-and-pets", "watering", "mowing", "seeding", "sign"] as const)("%s: forbidden at just those minutes at which the words of some product forbid it", (row) => {
  fc.assert(
    fc.property(visitsDrawn, (visit) => {
      const steps = timelineOf(visit).steps.filter((step) => step.row === row && step.kind === "may-not");
      const said = saidOf(row, visit);
      for (const instant of minutesOf(visit, steps)) {
        const answers = said.map((says) => says(instant));
        if (answers.includes(undefined) && !answers.includes(true)) continue;
        if (forbids(steps, instant) !== answers.includes(true)) expect([new Date(instant).toISOString(), forbids(steps, instant)]).toEqual([new Date(instant).toISOString(), answers.includes(true)]);
      }
    }),
    { numRuns: 120 },
  );
});
