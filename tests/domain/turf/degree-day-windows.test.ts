import { describe, expect, test } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import { PUBLISHED_DEGREE_DAY_WINDOWS, stateOfDegreeDayWindow } from "#domain/turf/degree-day-windows";
import { sumDegreeDays } from "#domain/turf/degree-days";
import { day, valueOf } from "../../support/domain-answers";

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

describe("a degree day window", () => {
  test("before it opens, what remains is said", () => {
    expect(stateOfDegreeDayWindow(sumOf(9), crabgrassPreEmergent)).toEqual({ kind: "before", remainingDegreeDays: 25 });
  });
  test("it opens on the day that reaches it", () => {
    const state = stateOfDegreeDayWindow(sumOf(12), crabgrassPreEmergent);
    expect(state).toMatchObject({ kind: "open", openedOn: { date: addDays(first, 9), totalDegreeDays: 250 } });
  });
  test("it is past from the day that reaches its end", () => {
    expect(stateOfDegreeDayWindow(sumOf(19), crabgrassPreEmergent).kind).toBe("open");
    expect(stateOfDegreeDayWindow(sumOf(20), crabgrassPreEmergent)).toMatchObject({
      kind: "past",
      openedOn: { date: addDays(first, 9) },
      closedOn: { date: addDays(first, 19) },
    });
  });
  test("without a printed end it stays open", () => {
    expect(stateOfDegreeDayWindow(sumOf(60), { opensAtDegreeDays: 200 }).kind).toBe("open");
  });
  test("every published window ends after it opens and names its turf and source", () => {
    for (const window of Object.values(PUBLISHED_DEGREE_DAY_WINDOWS)) {
      if ("closesAtDegreeDays" in window) expect(window.closesAtDegreeDays).toBeGreaterThan(window.opensAtDegreeDays);
      expect(window.madeFor).not.toBe("");
      expect(window.source).not.toBe("");
    }
  });
});
