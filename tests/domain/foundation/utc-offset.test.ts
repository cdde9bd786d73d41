import { tzOffset } from "@date-fns/tz";
import { describe, expect, it } from "vitest";
import { instantOfClock, utcOffsetAt } from "#domain/foundation/utc-offset";

const ZONES = ["America/Chicago", "America/Indiana/Indianapolis", "America/New_York", "Pacific/Apia", "Australia/Lord_Howe"] as const;
// In these years Indiana began to change its clocks, the United States moved the days of the change, and Apia left out a day.
const SPANS = [
  [Date.UTC(2005, 0, 1), Date.UTC(2008, 0, 1)],
  [Date.UTC(2011, 0, 1), Date.UTC(2012, 6, 1)],
  [Date.UTC(2026, 0, 1), Date.UTC(2027, 6, 1)],
] as const;
const HALF_HOUR = 1_800_000;
const MINUTE = 60_000;
const DAY = 86_400_000;

const iso = (instant: number) => new Date(instant).toISOString().slice(0, 16);
const halfHoursOf = ([from, until]: (typeof SPANS)[number]) => Array.from({ length: (until - from) / HALF_HOUR }, (_, index) => from + index * HALF_HOUR);

describe.each(ZONES)("%s, compared with the library in every half hour of six years", (timeZone) => {
  it.each(SPANS)("from %d until %d", { timeout: 60_000 }, (...span) => {
    const halfHours = halfHoursOf(span).map((instant) => ({ instant, offset: tzOffset(timeZone, new Date(instant)) * MINUTE }));
    const unequal = halfHours
      .filter(({ instant, offset }) => utcOffsetAt(instant, timeZone) !== offset)
      .map(({ instant, offset }) => `at ${iso(instant)} ${String(utcOffsetAt(instant, timeZone))}, by the library ${String(offset)}`);
    // The library's own way back hangs on the time zone of the computer where clocks change, so its way there is turned round.
    const firstShowing = new Map(halfHours.toReversed().map(({ instant, offset }) => [instant + offset, instant]));
    const unequalBack = [...firstShowing]
      .filter(([shown, instant]) => instantOfClock(shown, timeZone) !== instant)
      .map(([shown, instant]) => `${iso(shown)} is ${iso(instantOfClock(shown, timeZone))}, by the library ${iso(instant)}`);
    expect({ unequal, unequalBack }).toEqual({ unequal: [], unequalBack: [] });
  });
});

describe("utcOffsetAt", () => {
  it("changes on the very second", () => {
    const change = Date.parse("2026-03-08T02:00-06:00");
    expect(utcOffsetAt(change - 1, "America/Chicago")).toBe(-6 * 60 * MINUTE);
    expect(utcOffsetAt(change, "America/Chicago")).toBe(-5 * 60 * MINUTE);
  });

  it("answers again the same when more days were asked for than are kept", () => {
    const dayIn1950 = Date.UTC(1950, 5, 1);
    const before = utcOffsetAt(dayIn1950, "America/Denver");
    for (let day = 0; day < 2_100; day += 1) utcOffsetAt(dayIn1950 + day * DAY, "America/Denver");
    expect([before, utcOffsetAt(dayIn1950, "America/Denver")]).toEqual([-7 * 60 * MINUTE, -7 * 60 * MINUTE]);
  });

  it("is no number where the name is no zone", () => {
    expect(utcOffsetAt(0, "Nowhere/Nothing")).toBeNaN();
  });
});

describe("instantOfClock", () => {
  it("takes the first of an hour that comes twice", () => {
    expect(iso(instantOfClock(Date.UTC(2026, 10, 1, 1, 30), "America/Chicago"))).toBe("2026-11-01T06:30");
  });

  it("goes on as long after an hour that is left out as it lies in it", () => {
    expect(iso(instantOfClock(Date.UTC(2026, 2, 8, 2, 30), "America/Chicago"))).toBe("2026-03-08T08:30");
    // Lord Howe Island leaves out half an hour.
    expect(iso(instantOfClock(Date.UTC(2026, 9, 4, 2, 0), "Australia/Lord_Howe"))).toBe("2026-10-03T15:30");
  });

  it("begins a day that is left out with the next", () => {
    // Apia went from the end of December 29, 2011 to December 31, over the date line.
    expect(iso(instantOfClock(Date.UTC(2011, 11, 30), "Pacific/Apia"))).toBe("2011-12-30T10:00");
    expect(iso(instantOfClock(Date.UTC(2011, 11, 31), "Pacific/Apia"))).toBe("2011-12-30T10:00");
  });
});
