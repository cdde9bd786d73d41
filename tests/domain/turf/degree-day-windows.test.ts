import { describe, expect, test } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import { PUBLISHED_DEGREE_DAY_WINDOWS, monthAndDay, stateOfDegreeDayWindow } from "#domain/turf/degree-day-windows";
import { sumDegreeDays } from "#domain/turf/degree-days";
import { day, refusalOf, valueOf } from "../../support/domain-answers";

const first = day("2026-02-15");
const { crabgrassPreEmergent } = PUBLISHED_DEGREE_DAY_WINDOWS;

/** A sum over days of 25 degree days each. */
function sumOf(days: number) {
  const series = {
    scale: "fahrenheit" as const,
    days: Array.from({ length: days }, (_, index) => ({
      date: addDays(first, index),
      minimumDegrees: 47,
      maximumDegrees: 67,
    })),
  };
  return valueOf(
    sumDegreeDays(crabgrassPreEmergent.method, series, { from: first, through: addDays(first, days - 1) }),
  );
}

const stateOf = (days: number) => valueOf(stateOfDegreeDayWindow(sumOf(days), crabgrassPreEmergent));

describe("a sum that is not the window's own", () => {
  test.each([
    [PUBLISHED_DEGREE_DAY_WINDOWS.crabgrassEmergence, "simple average, base 50 °F"],
    [PUBLISHED_DEGREE_DAY_WINDOWS.paclobutrazolAgain, "simple average, base 0 °C"],
    [{ ...crabgrassPreEmergent, method: { kind: "reset", scale: "fahrenheit", baseDegrees: 32, upperCutDegrees: 86 } }, "reset, base 32 °F, upper cut 86 °F"],
    [{ ...crabgrassPreEmergent, method: { kind: "met-eireann", scale: "fahrenheit", baseDegrees: 32 } }, "Met Eireann, base 32 °F"],
  ] as const)("is refused by its method and base", (window, allowed) => {
    expect(refusalOf(stateOfDegreeDayWindow(sumOf(20), window))).toMatchObject({ kind: "bad-input", field: "method", found: "simple average, base 32 °F", allowed });
  });
  test("is refused by the day it begins on, where the window prints one", () => {
    const later = { ...sumOf(20), from: addDays(first, 1) };
    expect(refusalOf(stateOfDegreeDayWindow(later, crabgrassPreEmergent))).toMatchObject({ field: "from", found: "2026-02-16", allowed: "a sum from 02-15 (month-day)" });
    expect(stateOfDegreeDayWindow(later, { ...crabgrassPreEmergent, start: { kind: "not-printed" } }).ok).toBe(true);
    expect(monthAndDay({ kind: "calendar", month: 11, day: 3 })).toBe("11-03");
  });
});

describe("a degree day window", () => {
  test("before it opens, what remains is said", () => {
    expect(stateOf(9)).toEqual({ kind: "before", remainingDegreeDays: 25 });
  });
  test("it opens on the day that reaches it", () => {
    expect(stateOf(12)).toMatchObject({ kind: "open", openedOn: { date: addDays(first, 9), totalDegreeDays: 250 } });
  });
  test("it is past from the day that reaches its end", () => {
    expect(stateOf(19).kind).toBe("open");
    expect(stateOf(20)).toMatchObject({
      kind: "past",
      openedOn: { date: addDays(first, 9) },
      closedOn: { date: addDays(first, 19) },
    });
  });
  test("without a printed end it stays open", () => {
    const { method, start } = crabgrassPreEmergent;
    expect(valueOf(stateOfDegreeDayWindow(sumOf(60), { method, start, opensAtDegreeDays: 200 })).kind).toBe("open");
  });
  test("every published window ends after it opens and names its turf and source", () => {
    for (const window of Object.values(PUBLISHED_DEGREE_DAY_WINDOWS)) {
      if ("closesAtDegreeDays" in window) expect(window.closesAtDegreeDays).toBeGreaterThan(window.opensAtDegreeDays);
      expect(window.madeFor).not.toBe("");
      expect(window.source).not.toBe("");
    }
  });
});
