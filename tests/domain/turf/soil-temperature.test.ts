import { describe, expect, test } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import { PUBLISHED_SOIL_WINDOWS, stateOfSoilWindow } from "#domain/turf/soil-temperature";
import { day, refusalOf, valueOf } from "../../support/domain-answers";

const first = day("2026-04-01");
const seriesOf = (...degreesF: readonly number[]) =>
  degreesF.map((soilTemperatureF, index) => ({ date: addDays(first, index), soilTemperatureF }));
const stateOf = (degreesF: readonly number[], window: Parameters<typeof stateOfSoilWindow>[2]) =>
  valueOf(
    stateOfSoilWindow(seriesOf(...degreesF), { from: first, through: addDays(first, degreesF.length - 1) }, window),
  );

describe("a soil temperature window", () => {
  const window = { lowestF: 50, lowestCounts: true, highestF: 55, consecutiveDays: 3 };
  test("has not opened before the soil held it for its days in a row", () => {
    expect(stateOf([50, 51, 49, 50, 50], window)).toEqual({ kind: "before" });
  });
  test("opens on the last of them; reaching the temperature is enough", () => {
    expect(stateOf([49, 50, 50, 50, 48], window)).toEqual({ kind: "open", openedOn: addDays(first, 3) });
  });
  test("closes when the soil has been above its highest as long", () => {
    expect(stateOf([50, 50, 50, 55, 55, 55], window).kind).toBe("open");
    expect(stateOf([50, 50, 50, 56, 56, 54, 56, 56, 56], window)).toEqual({
      kind: "past",
      openedOn: addDays(first, 2),
      closedOn: addDays(first, 8),
    });
  });
  test("without a highest it never closes", () => {
    expect(stateOf([60, 70, 80, 90], { lowestF: 50, lowestCounts: true, consecutiveDays: 1 })).toEqual({
      kind: "open",
      openedOn: first,
    });
  });
  test("three nights above 50 °F, the rule of thumb", () => {
    expect(stateOf([51, 52, 53], PUBLISHED_SOIL_WINDOWS.crabgrassRuleOfThumb).kind).toBe("open");
    expect(stateOf([51, 52], PUBLISHED_SOIL_WINDOWS.crabgrassRuleOfThumb).kind).toBe("before");
    expect(stateOf([51, 52, 50], PUBLISHED_SOIL_WINDOWS.crabgrassRuleOfThumb).kind).toBe("before");
  });
});

describe("refusals", () => {
  const period = { from: first, through: addDays(first, 2) };
  test("a missing day, by its date", () => {
    const gap = seriesOf(50, 50, 50).filter(({ date }) => date !== "2026-04-02");
    expect(
      refusalOf(stateOfSoilWindow(gap, period, { lowestF: 50, lowestCounts: true, consecutiveDays: 1 })).field,
    ).toBe("2026-04-02");
  });
  test("a reading that is none", () => {
    const answer = stateOfSoilWindow(seriesOf(50, Number.NaN, 50), period, {
      lowestF: 50,
      lowestCounts: true,
      consecutiveDays: 1,
    });
    expect(refusalOf(answer)).toMatchObject({ kind: "missing-fact", field: "2026-04-02 soilTemperatureF" });
    expect(
      stateOfSoilWindow(seriesOf(50, 500, 50), period, { lowestF: 50, lowestCounts: true, consecutiveDays: 1 }).ok,
    ).toBe(false);
  });
  test.each([0, -1, 1.5, Number.NaN])("%d days in a row", (consecutiveDays) => {
    expect(
      refusalOf(stateOfSoilWindow(seriesOf(50, 50, 50), period, { lowestF: 50, lowestCounts: true, consecutiveDays }))
        .field,
    ).toBe("consecutiveDays");
  });
});
