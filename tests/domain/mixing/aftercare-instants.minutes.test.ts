// Each end, due time and reach back against a second way that asks the minutes around it what the words say of them.
import fc from "fast-check";
import { expect, test } from "vitest";
import { dueBy, notBefore, reachesBackTo } from "#domain/mixing/aftercare-instants";
import { dueReach, longReach, reachesBack, visitsDrawn } from "../../support/aftercare-arbitraries";
import { type Holds, notBefore as stillForbidden, tooLate, within } from "../../support/label-by-the-minute";
import { MINUTE } from "../../support/wall-clock";

/** Work of some visit, in all zones and nights. */
const works = visitsDrawn.map(({ ground: { zone }, products: [first] }) => ({ zone, work: first?.application ?? { startsAtEpochMilliseconds: 0, endsAtEpochMilliseconds: 0, postedAtEpochMilliseconds: "not-posted" as const } }));

/** What each minute is, of the three hours before an instant and of those from it on: the same for all, where it is the right one. */
function around(instant: number, holds: Holds): readonly [before: readonly boolean[], from: readonly boolean[]] {
  const minutes = Array.from({ length: 180 }, (_, index) => index);
  return [[...new Set(minutes.map((minute) => holds(instant - (minute + 1) * MINUTE)))], [...new Set(minutes.map((minute) => holds(instant + minute * MINUTE)))]];
}

test("what must wait is forbidden by its words until just the minute at which it ends", () => {
  fc.assert(
    fc.property(works, longReach, ({ zone, work }, reach) => {
      const { atEpochMilliseconds } = notBefore(reach, work, zone);
      expect(around(atEpochMilliseconds ?? 0, stillForbidden(reach, work, zone))).toEqual([[true], [false]]);
    }),
    { numRuns: 1000 },
  );
});

test("what is due is in time by its words until just the minute at which it is due", () => {
  fc.assert(
    fc.property(works, dueReach, ({ zone, work }, reach) => {
      const late = tooLate(reach, work, zone);
      expect(around(dueBy(reach, work, zone) + MINUTE, late)).toEqual([[false], [true]]);
    }),
    { numRuns: 1000 },
  );
});

test("what reaches back begins at just the first minute that its words take in", () => {
  fc.assert(
    fc.property(works, reachesBack, ({ zone, work }, back) => {
      expect(around(reachesBackTo(back, work, zone), within(back, work, zone))).toEqual([[false], [true]]);
    }),
    { numRuns: 1000 },
  );
});
