// Mowing days and mowings against a second way that asks each minute of a day whether the words of a label forbid it.
import fc from "fast-check";
import { expect, test } from "vitest";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { mowedTooShortlyBefore } from "#domain/mixing/mowing-aftercare";
import { type DrawnVisit, questionOf, reachesBack, visitsDrawn } from "../../support/aftercare-arbitraries";
import { labelOf, says } from "../../support/aftercare-builders";
import { valueOf } from "../../support/domain-answers";
import { firstMinuteFree, keptOff, within } from "../../support/label-by-the-minute";
import { rowsAsJudged } from "../../support/let-go-by-the-minute";
import { dateAfter, dateAt, DAY, firstMinuteOf, MINUTE, weekdayOn, writtenDate } from "../../support/wall-clock";

const weekdays = fc.integer({ min: 0, max: 6 });

/** The mowing days of which some minute after the visit is forbidden, and the first minute at which nothing is any more. */
function daysInTheWay({ ground, products }: DrawnVisit, weekday: number): { readonly dates: readonly string[]; readonly freeAt: number | undefined } {
  const { zone, visitUntil } = ground;
  const off = products.map((product) => keptOff(product, "mowing-after", ground));
  const isOff = (instant: number) => off.some((holds) => holds(instant));
  const freeAt = firstMinuteFree(isOff, visitUntil);
  const today = dateAt(zone, visitUntil);
  const following = Array.from({ length: 60 }, (_, days) => dateAfter(today, days)).filter((date) => weekdayOn(date) === weekday);
  if (freeAt === undefined) return { dates: following.slice(0, 1), freeAt };
  return { dates: following.filter((date) => isOff(Math.max(firstMinuteOf(zone, date), visitUntil))), freeAt };
}

test("the mowing days in the way are those with a forbidden minute, and one that ends free may still be mowed on", () => {
  const seen: number[] = [];
  fc.assert(
    fc.property(visitsDrawn, weekdays, (visit, weekday) => {
      const { findings } = valueOf(aftercareTimeline(questionOf(visit, { mowing: { weekday, lastMowedAtEpochMilliseconds: "unknown" } })));
      const found = findings.filter(({ rule }) => rule === "mowing-day-in-the-way");
      const { dates, freeAt } = daysInTheWay(rowsAsJudged(visit), weekday);
      seen.push(dates.length);
      expect(found).toHaveLength(Math.min(1, dates.length));
      const [finding] = found;
      if (finding === undefined) return;
      expect(finding.figure).toMatch(new RegExp(`^Mowing days: ${dates.map(writtenDate).join("; ")}\\. `, "u"));
      const isOverThatDay = dates.length === 1 && freeAt !== undefined && dateAt(visit.ground.zone, freeAt) === dates[0];
      expect(finding.toDo?.includes("only after")).toBe(isOverThatDay);
    }),
    { numRuns: 250 },
  );
  expect(seen).toEqual(expect.arrayContaining([0, 1]));
});

const befores = fc.record({ visit: visitsDrawn, within: reachesBack, mowedBefore: fc.integer({ min: -60, max: 6 * 1440 }), weekday: weekdays });

test("a lawn was mowed too shortly before when that minute lies within the time that the label names", () => {
  const seen = new Set<boolean>();
  fc.assert(
    fc.property(befores, ({ visit, within: back, mowedBefore, weekday }) => {
      const [first] = visit.products;
      if (first === undefined) return;
      const applied = { ...first, appliedIn: "this-visit", label: labelOf("Tall", says("mowing-before", { within: back })) } as const;
      const { zone } = visit.ground;
      const start = applied.application.startsAtEpochMilliseconds;
      const isWithin = within(back, applied.application, zone);
      const mowedAt = start - mowedBefore * MINUTE;
      const rules = (lastMowedAtEpochMilliseconds: number | "unknown") => mowedTooShortlyBefore([applied], { weekday, lastMowedAtEpochMilliseconds }, zone).map(({ level, rule }) => `${level} ${rule}`);
      const isTooShort = mowedAt < start && isWithin(mowedAt);
      expect(rules(mowedAt)).toEqual(isTooShort ? ["hold mowed-too-shortly-before"] : []);
      const minutesBefore = Array.from({ length: (6 * DAY) / MINUTE }, (_, index) => start - (index + 1) * MINUTE);
      const mayHave = minutesBefore.some((minute) => isWithin(minute) && weekdayOn(dateAt(zone, minute)) === weekday);
      expect(rules("unknown")).toEqual(mayHave ? ["take-care last-mowing-missing"] : []);
      seen.add(isTooShort);
    }),
    { numRuns: 150 },
  );
  expect(seen.size).toBe(2);
});
