import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import {
  GROWTH_CURVES,
  growthCurveAt,
  growthPotential,
  describeGrowth,
  monthlyNitrogenGramsPerSquareMeter,
  nitrogenShareOfStandard,
  overseedingInflection,
  overseedingWindow,
} from "#domain/turf/growth-potential";
import { day, refusalOf, valueOf } from "../../support/domain-answers";
import { between } from "../../support/real-numbers";

const temperature = between(-60, 60);
const first = day("2026-08-01");
const seriesOf = (degreesC: readonly number[]) =>
  degreesC.map((meanTemperatureC, index) => ({ date: addDays(first, index), meanTemperatureC }));
const periodOf = (degreesC: readonly number[]) => ({ from: first, through: addDays(first, degreesC.length - 1) });

describe("growth potential", () => {
  test("is a share, and is 1 at the optimum only (cool-season) or from it up (warm-season)", () => {
    fc.assert(
      fc.property(temperature, (meanTemperatureC) => {
        const cool = valueOf(growthPotential("cool-season", meanTemperatureC));
        const warm = valueOf(growthPotential("warm-season", meanTemperatureC));
        for (const share of [cool, warm]) {
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1);
        }
        if (meanTemperatureC >= 31) expect(warm).toBe(1);
      }),
    );
  });
  test("rises up to the optimum and, for cool-season grass, falls the same way beyond", () => {
    fc.assert(
      fc.property(between(0, 40), (away) => {
        expect(valueOf(growthPotential("cool-season", 20 + away))).toBeCloseTo(
          valueOf(growthPotential("cool-season", 20 - away)),
          12,
        );
        expect(valueOf(growthPotential("warm-season", 31 - away))).toBeLessThanOrEqual(
          valueOf(growthPotential("warm-season", 31 - away / 2)),
        );
      }),
    );
  });
  test("the bare curve of warm-season grass falls beyond its optimum", () =>
    expect(growthCurveAt(GROWTH_CURVES["warm-season"], 38)).toBeLessThan(0.7));
  test("an impossible temperature is refused", () => {
    expect(refusalOf(growthPotential("cool-season", Number.NaN)).kind).toBe("missing-fact");
    expect(refusalOf(growthPotential("cool-season", 90)).kind).toBe("bad-input");
  });
});

describe("nitrogen beside growth potential", () => {
  test("never passes the month's maximum", () => {
    fc.assert(
      fc.property(temperature, (meanTemperatureC) => {
        const grams = monthlyNitrogenGramsPerSquareMeter(5, valueOf(growthPotential("warm-season", meanTemperatureC)));
        expect(grams).toBeLessThanOrEqual(5);
        expect(grams).toBeGreaterThanOrEqual(0);
      }),
    );
  });
  test("a share of no standard is refused", () => {
    expect(valueOf(nitrogenShareOfStandard(3, 2))).toBe(1.5);
    expect(refusalOf(nitrogenShareOfStandard(3, 0)).kind).toBe("missing-fact");
    expect(refusalOf(nitrogenShareOfStandard(-1, 2)).field).toBe("appliedGramsPerSquareMeter");
    expect(refusalOf(nitrogenShareOfStandard(1e300, 2))).toMatchObject({ field: "appliedGramsPerSquareMeter", allowed: "from 0 to 100 g/m2" });
    expect(refusalOf(nitrogenShareOfStandard(2, 101)).field).toBe("standardGramsPerSquareMeter");
  });
});

describe("overseeding inflection", () => {
  const cooling = [30, 30, 28, 20, 15, 14];
  test("is the last day before cool-season growth overtakes", () => {
    const answer = valueOf(overseedingInflection(seriesOf(cooling), periodOf(cooling)));
    expect(answer).toMatchObject({ kind: "found", date: addDays(first, 2) });
  });
  test("is not reached while the sum still falls", () => {
    expect(valueOf(overseedingInflection(seriesOf([30, 30, 29]), periodOf([30, 30, 29])))).toEqual({
      kind: "not-reached",
    });
  });
  test("a gap and an impossible reading are named by their date", () => {
    const gap = seriesOf(cooling).filter(({ date }) => date !== "2026-08-03");
    expect(refusalOf(overseedingInflection(gap, periodOf(cooling))).field).toBe("2026-08-03");
    expect(refusalOf(overseedingInflection(seriesOf([30, Number.NaN]), periodOf([30, 30]))).field).toBe(
      "2026-08-02 meanTemperatureC",
    );
  });
});

describe("overseeding window", () => {
  test("starts when cool-season growth is greater and ends when the five-day mean falls below 20 °C", () => {
    const days = [30, 30, 30, 30, 24, 22, 21, 20, 19, 17, 15];
    // Cool-season growth is greater from 24 °C down. The mean of five days is 19.8 on the tenth.
    expect(valueOf(overseedingWindow(seriesOf(days), periodOf(days)))).toEqual({
      startsOn: addDays(first, 4),
      endsOn: addDays(first, 9),
    });
  });
  test("an end that isn't there yet is left out, and a start too", () => {
    expect(valueOf(overseedingWindow(seriesOf([30, 24, 24]), periodOf([30, 24, 24])))).toEqual({
      startsOn: addDays(first, 1),
    });
    expect(valueOf(overseedingWindow(seriesOf([30, 31]), periodOf([30, 31])))).toEqual({});
  });
});

test("what is no growth potential has no meaning and no nitrogen", () => {
  for (const potential of [Number.NaN, -0.1, 1.1]) {
    expect(() => describeGrowth(potential)).toThrow();
    expect(() => monthlyNitrogenGramsPerSquareMeter(3, potential)).toThrow();
  }
  expect(() => monthlyNitrogenGramsPerSquareMeter(-5, 0.5)).toThrow();
});
