import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { EARTH_MEAN_RADIUS_METERS, type Position, estimateTravel, greatCircleMeters, travelMatrixOf, travelMeters, travelSeconds } from "#domain/routing/travel-time";

const basis = { kind: "by-road", words: "Made up." } as const;
const settings = { detourFactor: 1.3, speedMetersPerSecond: 10, secondsPerWay: 20 };
const position = fc.record({ latitudeDegrees: fc.integer({ min: -90, max: 90 }), longitudeDegrees: fc.integer({ min: -180, max: 180 }) });

test("great circles: the same there and back, never beyond half the earth, a quarter from pole to equator", () => {
  fc.assert(
    fc.property(position, position, (one: Position, other: Position) => {
      const meters = greatCircleMeters(one, other);
      expect(Math.abs(meters - greatCircleMeters(other, one))).toBeLessThanOrEqual(1e-6);
      expect(meters).toBeLessThanOrEqual(Math.PI * EARTH_MEAN_RADIUS_METERS + 1e-6);
    }),
  );
  const quarter = greatCircleMeters({ latitudeDegrees: 90, longitudeDegrees: 12 }, { latitudeDegrees: 0, longitudeDegrees: -70 });
  expect(quarter).toBeCloseTo((Math.PI / 2) * EARTH_MEAN_RADIUS_METERS, 3);
});

test("an estimate is the straight line with detour and speed, says so, and takes nothing from a place to itself", () => {
  const north = (degrees: number) => ({ latitudeDegrees: 40 + degrees, longitudeDegrees: -75 });
  const outcome = estimateTravel([north(0), north(0.01), north(0)], settings);
  if (!outcome.ok) throw new Error(outcome.refusal.sentence);
  // A hundredth of a degree is 1111.95 m on this sphere; with the detour 1445.5 m, which take 144.55 s and 20 s.
  expect([travelMeters(outcome.value, 0, 1), travelSeconds(outcome.value, 0, 1)]).toEqual([1446, 165]);
  expect([travelSeconds(outcome.value, 1, 1), travelSeconds(outcome.value, 0, 2)]).toEqual([0, 0]);
  expect(outcome.value.basis).toEqual({ kind: "estimate", words: "Estimated: the straight line times 1.3, at 10 meters per second, plus 20 seconds for each way." });
});

describe("refusals", () => {
  test.each([
    ["detourFactor", { ...settings, detourFactor: 0.9 }],
    ["detourFactor", { ...settings, detourFactor: NaN }],
    ["speedMetersPerSecond", { ...settings, speedMetersPerSecond: 0 }],
    ["secondsPerWay", { ...settings, secondsPerWay: -1 }],
  ])("%s", (field, wrong) => {
    expect(estimateTravel([], wrong)).toMatchObject({ ok: false, refusal: { field } });
  });

  test.each([
    ["latitudeDegrees", { latitudeDegrees: 91, longitudeDegrees: 0 }],
    ["longitudeDegrees", { latitudeDegrees: 0, longitudeDegrees: NaN }],
  ])("%s", (field, wrong) => {
    expect(estimateTravel([wrong], settings)).toMatchObject({ ok: false, refusal: { field } });
  });

  test.each([
    ["seconds", [[0, 1]], [[0]]],
    ["seconds", [[0, 1.5], [1, 0]], [[0, 1], [1, 0]]],
    ["seconds", [[0, Infinity], [1, 0]], [[0, 1], [1, 0]]],
    ["meters", [[0, 1], [1, 0]], [[0, 1]]],
    ["meters", [[0, 1], [1, 0]], [[0, -1], [1, 0]]],
  ])("a matrix whose %s are not a square of whole numbers", (field, seconds, meters) => {
    expect(travelMatrixOf(basis, seconds, meters)).toMatchObject({ ok: false, refusal: { field } });
  });
});

test("there and back may differ; a place that isn't there is a defect", () => {
  const outcome = travelMatrixOf(basis, [[0, 7], [9, 0]], [[0, 70], [90, 0]]);
  if (!outcome.ok) throw new Error(outcome.refusal.sentence);
  expect([travelSeconds(outcome.value, 0, 1), travelSeconds(outcome.value, 1, 0), travelMeters(outcome.value, 1, 0)]).toEqual([7, 9, 90]);
  expect(() => travelSeconds(outcome.value, 0, 2)).toThrow(RangeError);
});
