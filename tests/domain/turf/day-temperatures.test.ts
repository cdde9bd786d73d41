import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import { besideKept, dayMeanC, dayTemperatures, haveSameFigures, temperaturesToKeep, tenthsWords } from "#domain/turf/day-temperatures";
import { day, refusalOf, valueOf } from "../../support/domain-answers";

const date = day("2026-03-01");
const today = day("2026-04-14");
const extremes = (maximumDegrees: number, minimumDegrees: number, on = date) => ({ date: on, maximumDegrees, minimumDegrees });
const kept = (high: number, low: number, on = date) => valueOf(dayTemperatures(extremes(high, low, on), "fahrenheit"));

describe("a day as it is kept", () => {
  test("holds every tenth as it was given, on either scale", () => {
    fc.assert(
      fc.property(fc.integer({ min: -500, max: 560 }), fc.nat(200), fc.constantFrom("fahrenheit", "celsius"), (highTenths, less, scale) => {
        const lowTenths = highTenths - Math.min(less, highTenths + 500);
        expect(valueOf(dayTemperatures(extremes(highTenths / 10, lowTenths / 10), scale))).toEqual({ date, scale, highTenths, lowTenths });
      }),
    );
  });

  test("is refused by its date: too fine, upside down, no air of this earth", () => {
    expect(refusalOf(dayTemperatures(extremes(65.25, 40), "fahrenheit")).sentence).toBe("The high of 2026-03-01 is 65.25 °F; temperatures are kept to a tenth of a degree.");
    expect(refusalOf(dayTemperatures(extremes(65, 40.01), "fahrenheit")).sentence).toContain("The low of 2026-03-01 is 40.01 °F");
    expect(refusalOf(dayTemperatures(extremes(40, 65), "fahrenheit")).sentence).toBe("The low of 2026-03-01, 65 °F, is above its high, 40 °F.");
    expect(refusalOf(dayTemperatures(extremes(200, 65), "fahrenheit")).sentence).toContain("The high of 2026-03-01 is");
    expect(refusalOf(dayTemperatures(extremes(20, -91), "celsius")).sentence).toContain("The low of 2026-03-01 is -91 °C");
    expect(refusalOf(dayTemperatures(extremes(Number.NaN, 4), "celsius")).kind).toBe("missing-fact");
    expect(valueOf(dayTemperatures(extremes(40, 40), "fahrenheit")).highTenths).toBe(400);
  });

  test("has the mean of its high and low, in °C", () => {
    expect(dayMeanC(kept(86, 50))).toBeCloseTo(20, 12);
    expect(dayMeanC({ date, scale: "celsius", highTenths: 183, lowTenths: 44 })).toBeCloseTo(11.35, 12);
  });

  test("is written as it was given", () => {
    expect([tenthsWords(653, "fahrenheit"), tenthsWords(-40, "celsius"), tenthsWords(0, "celsius")]).toEqual(["65.3 °F", "-4 °C", "0 °C"]);
  });
});

describe("days to keep", () => {
  test("come in any order and are put in the order of time", () => {
    const given = [extremes(60, 40, day("2026-03-03")), extremes(61, 41), extremes(62, 42, day("2026-03-02"))];
    expect(valueOf(temperaturesToKeep(given, "fahrenheit", today)).map((one) => one.date)).toEqual(["2026-03-01", "2026-03-02", "2026-03-03"]);
  });

  test("are refused where one stands twice, is not over, or can't be", () => {
    expect(refusalOf(temperaturesToKeep([extremes(60, 40), extremes(61, 40)], "fahrenheit", today)).sentence).toBe("The day 2026-03-01 stands twice.");
    expect(refusalOf(temperaturesToKeep([extremes(60, 40, today)], "fahrenheit", today)).sentence).toBe("The day 2026-04-14 is not over, so its high and low are not known yet.");
    expect(temperaturesToKeep([extremes(60, 40, addDays(today, -1))], "fahrenheit", today).ok).toBe(true);
    expect(refusalOf(temperaturesToKeep([extremes(40, 60)], "fahrenheit", today)).field).toBe("days");
  });
});

test("days beside those kept are new, others in their place, or the same", () => {
  const [first, second, third] = [date, addDays(date, 1), addDays(date, 2)];
  const beside = besideKept([kept(65, 40), kept(66, 41, second), kept(67, 42, third)], [kept(65, 40), kept(66, 40, second), kept(10, 0, addDays(date, 9))]);
  expect(beside.same.map((one) => one.date)).toEqual([first]);
  expect(beside.replaced).toEqual([{ before: kept(66, 40, second), after: kept(66, 41, second) }]);
  expect(beside.added.map((one) => one.date)).toEqual([third]);
  expect(haveSameFigures(kept(65, 40), { ...kept(65, 40), scale: "celsius" })).toBe(false);
  expect(haveSameFigures(kept(65, 40), kept(66, 40))).toBe(false);
});
