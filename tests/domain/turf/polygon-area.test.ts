import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { of } from "#domain/quantities/quantity";
import { fromSignedAmount } from "#domain/quantities/signed-quantity";
import { units } from "#domain/quantities/units";
import { areaOfCorners, type Corner, haveCrossingSides, withoutRepeats } from "#domain/turf/polygon-area";

/** Corners in whole feet. */
function corners(...feet: readonly (readonly [number, number])[]): Corner[] {
  const inFeet = (value: number) => fromSignedAmount("length", BigInt(value) * units.ft.canonicalAmount);
  return feet.map(([east, north]) => ({ east: inFeet(east), north: inFeet(north) }));
}

describe("areas", () => {
  test.each([
    ["a square", corners([0, 0], [10, 0], [10, 10], [0, 10]), "100"],
    ["the same, the other way round", corners([0, 10], [10, 10], [10, 0], [0, 0]), "100"],
    ["an L", corners([0, 0], [20, 0], [20, 10], [10, 10], [10, 20], [0, 20]), "300"],
    ["a triangle below and left of the origin", corners([-10, -10], [-4, -10], [-10, -2]), "24"],
    ["a square with a corner on a side", corners([0, 0], [5, 0], [10, 0], [10, 10], [0, 10]), "100"],
  ])("%s", (_name, outline, squareFeet) => {
    expect(areaOfCorners(outline)).toEqual(of("sq ft", squareFeet));
    expect(haveCrossingSides(outline)).toBe(false);
  });

  test("where the origin lies and at which corner the list begins makes no difference", () => {
    const coordinate = fc.integer({ min: -1000, max: 1000 });
    const outline = fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 8 });
    fc.assert(
      fc.property(outline, coordinate, coordinate, (feet, east, north) => {
        const moved = feet.map(([x, y]) => [x + east, y + north] as const);
        const rolled = [...moved.slice(1), ...moved.slice(0, 1)];
        expect(areaOfCorners(corners(...rolled))).toEqual(areaOfCorners(corners(...feet)));
      }),
    );
  });
});

describe("sides that meet, from whichever corner and whichever way round they are listed", () => {
  test.each([
    ["a bow tie", corners([0, 0], [10, 10], [10, 0], [0, 10])],
    ["a corner that touches a far side", corners([0, 0], [10, 0], [10, 10], [5, 0], [0, 10])],
    ["a spike that comes back on itself", corners([0, 0], [10, 0], [10, 10], [10, -5])],
    ["a side that goes back over its neighbor and beyond", corners([0, 0], [5, -5], [10, 0], [20, 0], [5, 0])],
    ["there and back on one line", corners([0, 0], [10, 0], [0, 0], [5, 5])],
    ["two loops that share a corner", corners([0, 0], [5, 5], [10, 0], [10, 10], [5, 5], [0, 10])],
    ["two sides on one line that overlap", corners([0, 0], [10, 0], [10, 5], [12, 5], [12, 0], [4, 0], [4, -5])],
  ])("%s", (_name, outline) => {
    for (const [index] of outline.entries()) {
      const rolled = [...outline.slice(index), ...outline.slice(0, index)];
      expect([haveCrossingSides(rolled), haveCrossingSides(rolled.toReversed())]).toEqual([true, true]);
    }
  });

  test("convex outlines have none", () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 40 }), fc.integer({ min: 100, max: 5000 }), (count, radius) => {
        const round = Array.from({ length: count }, (_, index) => {
          const angle = (2 * Math.PI * index) / count;
          return [Math.round(radius * Math.cos(angle) * 10), Math.round(radius * Math.sin(angle) * 10)] as const;
        });
        expect(haveCrossingSides(corners(...round))).toBe(false);
      }),
    );
  });
});

test("repeats are dropped, at the end too", () => {
  const square = corners([0, 0], [10, 0], [10, 10], [0, 10]);
  const drawn = corners([0, 0], [10, 0], [10, 0], [10, 10], [0, 10], [0, 0]);
  expect(withoutRepeats(drawn)).toHaveLength(4);
  expect(areaOfCorners(withoutRepeats(drawn))).toEqual(areaOfCorners(square));
  const one = square.slice(0, 1);
  for (const alone of [one, [...one, ...one]]) expect(withoutRepeats(alone)).toEqual(one);
});
