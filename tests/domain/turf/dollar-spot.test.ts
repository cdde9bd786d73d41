import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import { DOLLAR_SPOT_THRESHOLD, SMITH_KERNS, dollarSpotProbability, judgeDollarSpot } from "#domain/turf/dollar-spot";
import { day, refusalOf, valueOf } from "../../support/domain-answers";
import { between } from "../../support/real-numbers";

const first = day("2026-06-01");
const temperature = between(10, 35);
const humidity = between(0, 100);
const seriesOf = (days: readonly (readonly [number, number])[]) =>
  days.map(([meanTemperatureC, meanRelativeHumidityPercent], index) => ({
    date: addDays(first, index),
    meanTemperatureC,
    meanRelativeHumidityPercent,
  }));

describe("dollar spot probability", () => {
  test("is a probability that rises with warmth and with humidity", () => {
    fc.assert(
      fc.property(temperature, humidity, (degreesC, percent) => {
        const probability = valueOf(dollarSpotProbability(degreesC, percent));
        expect(probability).toBeGreaterThan(0);
        expect(probability).toBeLessThan(1);
        expect(valueOf(dollarSpotProbability(Math.min(35, degreesC + 1), percent))).toBeGreaterThanOrEqual(probability);
        expect(valueOf(dollarSpotProbability(degreesC, Math.min(100, percent + 1)))).toBeGreaterThanOrEqual(
          probability,
        );
      }),
    );
  });
  test("is refused outside 10 to 35 °C whatever the humidity", () => {
    fc.assert(
      fc.property(fc.oneof(between(-50, 9.999), between(35.001, 60)), humidity, (degreesC, percent) => {
        expect(refusalOf(dollarSpotProbability(degreesC, percent)).field).toBe("meanTemperatureC");
      }),
    );
  });
  test("is refused for a humidity that is none", () => {
    expect(dollarSpotProbability(20, 100.1).ok).toBe(false);
    expect(refusalOf(dollarSpotProbability(20, Number.NaN)).kind).toBe("missing-fact");
  });
});

describe("the answer for a day", () => {
  const mild = seriesOf([
    [18, 60],
    [19, 65],
    [20, 70],
    [21, 75],
    [22, 80],
    [35, 100],
  ]);
  test("comes from that day and the four before it, and carries its model", () => {
    const answer = valueOf(judgeDollarSpot(mild, addDays(first, 4), DOLLAR_SPOT_THRESHOLD));
    expect(answer).toMatchObject({
      model: SMITH_KERNS,
      meanTemperatureC: 20,
      meanRelativeHumidityPercent: 70,
      isFavorable: true,
    });
    expect(answer.probability).toBeCloseTo(0.2172, 4);
  });
  test("is held against the threshold that is given", () => {
    expect(valueOf(judgeDollarSpot(mild, addDays(first, 4), 0.3)).isFavorable).toBe(false);
    expect(refusalOf(judgeDollarSpot(mild, addDays(first, 4), 20)).field).toBe("threshold");
  });
  test("a single day beyond 35 °C is fine while the mean is inside", () => {
    const oneHotDay = seriesOf([
      [36, 70],
      [20, 70],
      [20, 70],
      [20, 70],
      [20, 70],
    ]);
    expect(judgeDollarSpot(oneHotDay, addDays(first, 4), 0.2).ok).toBe(true);
  });
  test("refusals: a day missing, a reading missing, a cold week", () => {
    expect(refusalOf(judgeDollarSpot(mild, addDays(first, 3), 0.2)).field).toBe("2026-05-31");
    const unread = mild.map((each, index) =>
      index === 2 ? { ...each, meanRelativeHumidityPercent: Number.NaN } : each,
    );
    expect(refusalOf(judgeDollarSpot(unread, addDays(first, 4), 0.2)).field).toBe(
      "2026-06-03 meanRelativeHumidityPercent",
    );
    const cold = seriesOf([
      [5, 90],
      [5, 90],
      [5, 90],
      [5, 90],
      [5, 90],
    ]);
    expect(refusalOf(judgeDollarSpot(cold, addDays(first, 4), 0.2)).sentence).toContain("must be from 10 to 35 °C");
  });
});
