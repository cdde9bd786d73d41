import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CalendarDate, addDays, daysBetween } from "#domain/foundation/calendar-date";
import { judgeRoundWindow, type RoundWindow, type RoundWindowQuestion } from "#domain/scheduling/round-window";
import { PUBLISHED_DEGREE_DAY_WINDOWS } from "#domain/turf/degree-day-windows";
import { type DegreeDayMethod, sumDegreeDays } from "#domain/turf/degree-days";
import { PUBLISHED_SOIL_WINDOWS } from "#domain/turf/soil-temperature";
import { day, valueOf } from "../../support/domain-answers";

const NOTHING = { previousRoundDoneOn: "not-done", degreeDays: "none-on-file", soil: "none-on-file" } as const;
const ask = (window: RoundWindow, on: CalendarDate, facts: Partial<RoundWindowQuestion> = {}) => judgeRoundWindow({ ...NOTHING, window, on, ...facts });
const refusedAs = (window: RoundWindow, on: CalendarDate, facts: Partial<RoundWindowQuestion> = {}) => {
  const answer = ask(window, on, facts);
  if (answer.kind !== "cannot-say") throw new Error(`It said ${answer.kind}.`);
  return answer.refusal;
};
const unreal = "2026-13-45" as CalendarDate;

describe("dates", () => {
  const april = { kind: "dates", opensOn: day("2026-04-06"), closesOn: day("2026-04-24") } as const;
  test("both ends belong to it", () => {
    expect(ask(april, day("2026-04-05"))).toEqual({ kind: "not-yet", opensOn: "2026-04-06" });
    for (const on of ["2026-04-06", "2026-04-24"]) expect(ask(april, day(on))).toEqual({ kind: "open", since: "2026-04-06", lastDay: "2026-04-24" });
    expect(ask(april, day("2026-04-25"))).toEqual({ kind: "over", since: "2026-04-25" });
  });
  test("dates that can't be meant are refused by name", () => {
    expect(refusedAs({ ...april, closesOn: day("2026-04-05") }, day("2026-04-10"))).toMatchObject({ field: "window.closesOn", allowed: "2026-04-06 or later" });
    expect(refusedAs({ ...april, opensOn: unreal }, day("2026-04-10")).field).toBe("window.opensOn");
    expect(refusedAs({ ...april, closesOn: unreal }, day("2026-04-10")).field).toBe("window.closesOn");
    expect(refusedAs(april, unreal).field).toBe("on");
  });
});

describe("days since the previous round", () => {
  const fiveToSevenWeeks = { kind: "days-since-previous", leastDays: 35, mostDays: 49 } as const;
  const done = { previousRoundDoneOn: day("2026-04-10") };
  test("counts from the day on which it was done", () => {
    expect(ask(fiveToSevenWeeks, day("2026-05-14"), done)).toEqual({ kind: "not-yet", opensOn: "2026-05-15" });
    for (const on of ["2026-05-15", "2026-05-29"]) expect(ask(fiveToSevenWeeks, day(on), done)).toEqual({ kind: "open", since: "2026-05-15", lastDay: "2026-05-29" });
    expect(ask(fiveToSevenWeeks, day("2026-05-30"), done)).toEqual({ kind: "over", since: "2026-05-30" });
  });
  test("may stay open, and a later round before moves the window with it", () => {
    expect(ask({ ...fiveToSevenWeeks, mostDays: "no-end" }, day("2027-01-01"), done)).toEqual({ kind: "open", since: "2026-05-15", lastDay: "no-end" });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 90 }), (moved, later) => {
        const previousRoundDoneOn = addDays(done.previousRoundDoneOn, moved);
        const on = addDays(previousRoundDoneOn, later);
        const expected = later < 35 ? "not-yet" : later > 49 ? "over" : "open";
        expect(ask(fiveToSevenWeeks, on, { previousRoundDoneOn }).kind).toBe(expected);
      }),
    );
  });
  test("no previous round done can't be said, nor one that comes after", () => {
    expect(refusedAs(fiveToSevenWeeks, day("2026-05-20"))).toMatchObject({ kind: "missing-fact", field: "previousRoundDoneOn" });
    expect(refusedAs(fiveToSevenWeeks, day("2026-04-09"), done)).toMatchObject({ kind: "bad-input", field: "previousRoundDoneOn", allowed: "2026-04-09 or earlier" });
    expect(refusedAs(fiveToSevenWeeks, day("2026-04-09"), { previousRoundDoneOn: unreal }).field).toBe("previousRoundDoneOn");
  });
  test.each([
    [-1, 49, "window.leastDays"],
    [Number.NaN, 49, "window.leastDays"],
    [35, 34, "window.mostDays"],
    [35, 367, "window.mostDays"],
    [35.5, 49, "window"],
    [35, 48.5, "window"],
  ])("%d to %d days can't be meant", (leastDays, mostDays, field) => {
    expect(refusedAs({ kind: "days-since-previous", leastDays, mostDays }, day("2026-05-20"), done).field).toBe(field);
  });
});

/** A sum of so many degree days each day, on the scale of the method and with its base. */
function sumOf(method: DegreeDayMethod, from: CalendarDate, days: number, perDay: number) {
  const extremes = { minimumDegrees: method.baseDegrees + perDay - 5, maximumDegrees: method.baseDegrees + perDay + 5 };
  const series = { scale: method.scale, days: Array.from({ length: days }, (_, index) => ({ date: addDays(from, index), ...extremes })) };
  return valueOf(sumDegreeDays(method, series, { from, through: addDays(from, days - 1) }));
}

describe("degree days from a date (pre-emergent against crabgrass: 250 to 500, base 32 °F, from February 15; Calhoun 2004)", () => {
  const window = PUBLISHED_DEGREE_DAY_WINDOWS.crabgrassPreEmergent;
  const crabgrass = { kind: "degree-days", window } as const;
  const february = day("2026-02-15");
  const at = (days: number, on = addDays(february, days - 1)) => ask(crabgrass, on, { degreeDays: sumOf(window.method, february, days, 25) });

  test("not yet with what is lacking, open from the day that reaches 250, over from the day that reaches 500", () => {
    expect(at(9)).toEqual({ kind: "not-yet", opensOn: "by-weather", remainingDegreeDays: 25 });
    expect(at(10)).toEqual({ kind: "open", since: "2026-02-24", lastDay: "by-weather" });
    expect(at(19).kind).toBe("open");
    expect(at(20)).toEqual({ kind: "over", since: "2026-03-06" });
  });
  test("before its start it needs no sum", () => {
    expect(ask(crabgrass, day("2026-02-14"))).toEqual({ kind: "not-yet", opensOn: "by-weather", remainingDegreeDays: 250 });
    expect(refusedAs(crabgrass, february)).toMatchObject({ kind: "missing-fact", field: "degreeDays" });
  });
  test("what comes after the day asked about is not looked at", () => expect(at(40, addDays(february, 8))).toMatchObject({ kind: "not-yet", remainingDegreeDays: 25 }));
  test("yesterday's sum is enough; an earlier one names the missing day unless the window is over already", () => {
    expect(at(10, addDays(february, 10)).kind).toBe("open");
    const sum = sumOf(window.method, february, 10, 25);
    expect(refusedAs(crabgrass, addDays(february, 11), { degreeDays: sum })).toMatchObject({ kind: "missing-fact", field: "degreeDays 2026-02-25", allowed: "readings through 2026-02-25" });
    expect(refusedAs(crabgrass, addDays(february, 11), { degreeDays: sumOf(window.method, february, 5, 25) }).field).toBe("degreeDays 2026-02-20");
    expect(at(20, addDays(february, 90)).kind).toBe("over");
  });
  test("a sum of another method, base or year is refused by name", () => {
    const base50 = { ...window.method, baseDegrees: 50 };
    expect(refusedAs(crabgrass, addDays(february, 9), { degreeDays: sumOf(base50, february, 10, 25) })).toMatchObject({ field: "degreeDays.method", found: "simple average, base 50 °F", allowed: "simple average, base 32 °F" });
    expect(refusedAs(crabgrass, addDays(february, 9), { degreeDays: sumOf(window.method, day("2025-02-15"), 375, 25) })).toMatchObject({ field: "degreeDays.from", found: "2025-02-15", allowed: "a sum from 2026-02-15" });
  });
  test("a base-32 sum is not held against the base-50 window, where it would be open", () => {
    const emergence = { kind: "degree-days", window: PUBLISHED_DEGREE_DAY_WINDOWS.crabgrassEmergence } as const;
    expect(refusedAs(emergence, addDays(february, 3), { degreeDays: sumOf(window.method, february, 4, 25) }).field).toBe("degreeDays.method");
    expect(ask(emergence, addDays(february, 3), { degreeDays: sumOf(emergence.window.method, february, 4, 25) })).toMatchObject({ kind: "open" });
  });
});

describe("degree days from the last application (trinexapac-ethyl again at 200, base 0 °C; Kreuser & Soldat 2009)", () => {
  const window = PUBLISHED_DEGREE_DAY_WINDOWS.trinexapacAgain;
  const again = { kind: "degree-days", window } as const;
  const done = day("2026-06-01");
  test("25 °C a day reach 200 on the eighth day, counted from the application or the day after", () => {
    for (const from of [done, addDays(done, 1)]) {
      const facts = (days: number) => ({ previousRoundDoneOn: done, degreeDays: sumOf(window.method, from, days, 25) });
      expect(ask(again, addDays(from, 6), facts(7))).toMatchObject({ kind: "not-yet", remainingDegreeDays: 25 });
      expect(ask(again, addDays(from, 7), facts(8))).toMatchObject({ kind: "open", since: addDays(from, 7) });
      expect(ask(again, addDays(from, 9), facts(10))).toMatchObject({ kind: "over", since: addDays(from, 9) });
    }
  });
  test("on the day of the application nothing is counted yet", () => {
    expect(ask(again, done, { previousRoundDoneOn: done, degreeDays: sumOf(window.method, addDays(done, 1), 8, 25) })).toMatchObject({ kind: "not-yet", remainingDegreeDays: 200 });
  });
  test("no previous round, or a sum from another day, can't be said", () => {
    expect(refusedAs(again, addDays(done, 7), { degreeDays: sumOf(window.method, done, 8, 25) })).toMatchObject({ kind: "missing-fact", field: "previousRoundDoneOn" });
    expect(refusedAs(again, addDays(done, 7), { previousRoundDoneOn: done, degreeDays: sumOf(window.method, addDays(done, -20), 28, 25) })).toMatchObject({ field: "degreeDays.from", allowed: "a sum from 2026-06-01 or 2026-06-02" });
  });
  test("a window without a printed end stays open, and missing days can't close it", () => {
    const paclobutrazol = PUBLISHED_DEGREE_DAY_WINDOWS.paclobutrazolAgain;
    const facts = { previousRoundDoneOn: done, degreeDays: sumOf(paclobutrazol.method, done, 12, 25) };
    expect(ask({ kind: "degree-days", window: paclobutrazol }, addDays(done, 60), facts)).toEqual({ kind: "open", since: "2026-06-12", lastDay: "no-end" });
  });
});

describe("soil temperature (pre-emergent against crabgrass: 50 to 55 °F at 0 to 2 in; University of Wisconsin)", () => {
  const soilWindow = (window = PUBLISHED_SOIL_WINDOWS.crabgrassPreEmergent as (typeof PUBLISHED_SOIL_WINDOWS)[keyof typeof PUBLISHED_SOIL_WINDOWS]) => ({ kind: "soil-temperature", window }) as const;
  const march = day("2026-03-20");
  const watched = (degreesF: readonly number[], depth = "0 to 2 in") => ({ soil: { depth, from: march, days: degreesF.map((soilTemperatureF, index) => ({ date: addDays(march, index), soilTemperatureF })) } });
  const after = (days: number) => addDays(march, days);

  test("before, within and past", () => {
    expect(ask(soilWindow(), after(1), watched([45, 49]))).toEqual({ kind: "not-yet", opensOn: "by-weather" });
    expect(ask(soilWindow(), after(2), watched([45, 50, 48]))).toEqual({ kind: "open", since: after(1), lastDay: "by-weather" });
    expect(ask(soilWindow(), after(3), watched([45, 50, 48, 56]))).toEqual({ kind: "over", since: after(3) });
  });
  test("what comes after the day asked about is not looked at", () => expect(ask(soilWindow(), after(1), watched([45, 50, 48, 56])).kind).toBe("open"));
  test("a rule of thumb without an end stays open through missing days; its depth is not printed and any will do", () => {
    const rule = soilWindow(PUBLISHED_SOIL_WINDOWS.crabgrassRuleOfThumb);
    expect(ask(rule, after(30), watched([51, 52, 53], "4 in"))).toEqual({ kind: "open", since: after(2), lastDay: "no-end" });
  });
  test("no soil on file, another depth, a gap, days that are missing and soil watched later can't be said, by name", () => {
    expect(refusedAs(soilWindow(), march)).toMatchObject({ kind: "missing-fact", field: "soil" });
    expect(refusedAs(soilWindow(), after(1), watched([45, 49], "4 in"))).toMatchObject({ field: "soil.depth", found: "4 in", allowed: "0 to 2 in" });
    const gap = watched([45, 46, 47, 48]).soil;
    expect(refusedAs(soilWindow(), after(3), { soil: { ...gap, days: gap.days.filter(({ date }) => date !== after(2)) } }).field).toBe("soil 2026-03-22");
    expect(refusedAs(soilWindow(), after(3), watched([45, 46]))).toMatchObject({ kind: "missing-fact", field: "soil 2026-03-22" });
    expect(ask(soilWindow(), after(2), watched([45, 46])).kind).toBe("not-yet");
    expect(refusedAs(soilWindow(), after(3), watched([]))).toMatchObject({ kind: "missing-fact", field: "soil 2026-03-20" });
    expect(refusedAs(soilWindow(), after(-1), watched([45]))).toMatchObject({ field: "soil.from", allowed: "2026-03-19 or earlier" });
    expect(refusedAs(soilWindow(), after(1), watched([45, 500])).field).toContain("soilTemperatureF");
  });
});

test("once a day is open, a later one is open or over, whatever the weather", () => {
  const window = PUBLISHED_DEGREE_DAY_WINDOWS.crabgrassPreEmergent;
  const order = ["not-yet", "open", "over"];
  const from = day("2026-02-15");
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -10, max: 40 }), { minLength: 30, maxLength: 60 }), (means) => {
      const days = means.map((mean, index) => ({ date: addDays(from, index), minimumDegrees: 32 + mean - 5, maximumDegrees: 32 + mean + 5 }));
      const through = addDays(from, days.length - 1);
      const degreeDays = valueOf(sumDegreeDays(window.method, { scale: "fahrenheit", days }, { from, through }));
      const kinds = Array.from({ length: daysBetween(from, through) }, (_, index) => order.indexOf(ask({ kind: "degree-days", window }, addDays(from, index), { degreeDays }).kind));
      expect(kinds).toEqual(kinds.toSorted((one, other) => one - other));
      expect(kinds).not.toContain(-1);
    }),
    { numRuns: 30 },
  );
});
