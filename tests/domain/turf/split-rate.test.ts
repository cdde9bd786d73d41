import fc from "fast-check";
import { expect, test } from "vitest";
import { splitRate } from "#domain/turf/split-rate";
import { compareRates, rateOf, scaleRate } from "#domain/quantities/rate";
import { rational } from "#domain/quantities/rational";

const pounds = (value: string | bigint) => rateOf("nutrient-mass-per-area", value, "lb per 1,000 sq ft");
const split = (potash: string | bigint, most: string | bigint) => splitRate(pounds(potash), pounds(most));

test("at the most it is one application, just above it two", () => {
  expect(split("1", "1")).toEqual({ applications: 1, each: pounds("1") });
  expect(split("1.001", "1").applications).toBe(2);
  expect(split("3", "1")).toMatchObject({ applications: 3 });
});

test("the applications are equal, together what was recommended, none above the most, and as few as that allows", () => {
  fc.assert(
    fc.property(fc.bigInt(1n, 5000n), fc.bigInt(1n, 5000n), (potash, most) => {
      const { applications, each } = split(potash, most);
      expect(compareRates(scaleRate(each, rational(BigInt(applications))), pounds(potash))).toBe(0);
      expect(compareRates(each, pounds(most))).toBeLessThanOrEqual(0);
      expect(BigInt(applications - 1) * most < potash).toBe(true);
    }),
  );
});

test("a most of nothing is a slip of the caller", () => {
  expect(() => split("1", 0n)).toThrow(/above zero/u);
});
