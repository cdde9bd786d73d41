import fc from "fast-check";
import { expect, test } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { type ApplicationTimes, reachesBackTo } from "#domain/mixing/aftercare-instants";
import { of } from "#domain/quantities/quantity";
import { instantOfMinute, localTimeAt, minuteOfDayAt } from "#domain/weather/local-hours";
import { aftercareQuestion, appliedOf, at, CHICAGO, HOUR, labelOf, says } from "../../support/aftercare-builders";
import { valueOf } from "../../support/domain-answers";

/** Work of up to two hours on an ordinary day, on the days before clocks change, and on those on which they do. */
const works = fc
  .record({
    midnight: fc.constantFrom("2026-05-01T00:00-05:00", "2026-03-07T00:00-06:00", "2026-03-08T00:00-06:00", "2026-10-31T00:00-05:00", "2026-11-01T00:00-05:00"),
    startMinute: fc.integer({ min: 0, max: 1438 }),
    lastingMinutes: fc.integer({ min: 1, max: 120 }),
  })
  .map(({ midnight, startMinute, lastingMinutes }): ApplicationTimes => {
    const startsAtEpochMilliseconds = at(midnight) + startMinute * 60_000;
    return { startsAtEpochMilliseconds, endsAtEpochMilliseconds: startsAtEpochMilliseconds + lastingMinutes * 60_000, postedAtEpochMilliseconds: "not-posted" };
  });
const counts = fc.integer({ min: 1, max: 3 });

/** What a clock shows some days after a moment, in words that sort; undefined where clocks skip it on that day. */
function sameHourDaysAfter(moment: number, days: number): string | undefined {
  const { date, localTime } = localTimeAt(moment, CHICAGO);
  const wanted = addDays(date, days);
  const shown = localTimeAt(instantOfMinute(wanted, minuteOfDayAt(moment, CHICAGO), CHICAGO), CHICAGO);
  return shown.localTime === localTime ? `${wanted} ${localTime}` : undefined;
}

const clockAt = (moment: number) => Object.values(localTimeAt(moment, CHICAGO)).slice(0, 2).join(" ");

test("a timeline keeps days of a label under every reading: 24 h each, the same hour on the clock, from the start of the work and from its end", () => {
  fc.assert(
    fc.property(works, counts, (application, days) => {
      const reach = { anchor: "days", from: "not-said", days } as const;
      const label = labelOf("Alpha", {
        ...says("mowing-after", { untilLaterOf: [reach] }),
        ...says("rain-that-spoils", { within: reach, from: of("in", "2") }),
        ...says("watering-in", { by: reach, depth: { least: of("in", "0.1"), most: "none" }, rain: "counts" }),
      });
      const { startsAtEpochMilliseconds: start, endsAtEpochMilliseconds: end } = application;
      const visit = { fromEpochMilliseconds: start, untilEpochMilliseconds: end };
      const { steps, spoilingRain, watering } = valueOf(aftercareTimeline(aftercareQuestion([appliedOf(label, { application })], { visit })));
      const free = [steps.find(({ row }) => row === "mowing")?.endsAtEpochMilliseconds ?? 0, spoilingRain[0]?.endsAtEpochMilliseconds ?? 0];
      const wateredBy = watering.kind === "window" ? Math.max(...watering.windows.map(({ untilEpochMilliseconds }) => untilEpochMilliseconds)) : Infinity;
      for (const moment of [start, end]) {
        for (const freeAt of free) expect(freeAt).toBeGreaterThanOrEqual(moment + days * 24 * HOUR);
        expect(wateredBy).toBeLessThanOrEqual(moment + days * 24 * HOUR);
        const sameHour = sameHourDaysAfter(moment, days);
        if (sameHour === undefined) continue;
        for (const freeAt of free) expect(clockAt(freeAt) >= sameHour).toBe(true);
        expect(clockAt(wateredBy) <= sameHour).toBe(true);
      }
    }),
    { numRuns: 400 },
  );
});

test("days before the work reach back over every reading too: 24 h each, and the whole of the first day", () => {
  fc.assert(
    fc.property(works, counts, (application, days) => {
      const from = reachesBackTo({ anchor: "days", from: "application-start", days }, application, CHICAGO);
      const { startsAtEpochMilliseconds: start } = application;
      expect(from).toBeLessThanOrEqual(start - days * 24 * HOUR);
      expect(clockAt(from) <= `${addDays(localTimeAt(start, CHICAGO).date, -days)} 00:00`).toBe(true);
      // And no farther than a day and the hour of a change beyond: a label's days are not stretched.
      expect(from).toBeGreaterThan(start - (days * 24 + 25) * HOUR);
    }),
    { numRuns: 200 },
  );
});
