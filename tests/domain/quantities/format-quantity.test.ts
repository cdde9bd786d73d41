import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  addExact,
  compareExact,
  type ExactQuantity,
  exactly,
  multiplyExact,
  sumExact,
} from "#domain/quantities/exact-quantity";
import {
  formatQuantitiesApart,
  formatQuantity,
  formatQuantityIn,
  type UnitSystem,
  writeQuantity,
  writeQuantityIn,
} from "#domain/quantities/format-quantity";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { fromAmount, of, type Quantity, zero } from "#domain/quantities/quantity";
import { rational } from "#domain/quantities/rational";
import { type Dimension, type Unit } from "#domain/quantities/units";
import { anyQuantity, dimensions } from "../../support/quantity-arbitraries";

describe("the unit by size", () => {
  const table: readonly (readonly [Unit, string, string, string])[] = [
    ["lb", "13.5", "13\u00BD lb", "6.12 kg"],
    ["lb", "1250.25", "1,250\u00BC lb", "567.1 kg"],
    ["lb", "0.25", "4 oz wt", "113.4 g"],
    ["lb", "0.99999", "16 oz wt", "453.6 g"],
    ["lb", "21.4286", "21.43 lb", "9.72 kg"],
    ["oz wt", "0.4", "0.4 oz wt", "11.34 g"],
    ["fl oz", "24", "24 fl oz", "709.8 mL"],
    ["fl oz", "0.8", "0.8 fl oz", "23.66 mL"],
    ["gal", "1", "1 gal", "3.79 L"],
    ["gal", "1.1875", "1.19 gal", "4.5 L"],
    ["gal", "100.5", "100\u00BD gal", "380.4 L"],
    ["sq ft", "8250", "8,250 sq ft", "766.5 m\u00B2"],
    ["sq ft", "43560", "43,560 sq ft", "4,047 m\u00B2"],
    ["acre", "2", "2 acres", "8,094 m\u00B2"],
    ["acre", "2.75", "2\u00BE acres", "1.11 ha"],
    ["ft", "12.5", "12\u00BD ft", "3.81 m"],
    ["in", "0.25", "\u00BC in", "6.35 mm"],
    ["in", "6", "6 in", "15.24 cm"],
  ];
  test.each(table)("%s: %s", (unit, value, us, metric) => {
    const quantity: Quantity<Dimension> = of(unit, value);
    expect([formatQuantity(quantity, "us"), formatQuantity(quantity, "metric")]).toEqual([us, metric]);
  });

  test("nothing, and more than nothing but less than can be shown", () => {
    expect(formatQuantity(zero("mass"), "us")).toBe("0 oz wt");
    expect(formatQuantity({ dimension: "mass", amount: 2n }, "us")).toBe("under 0.001 oz wt");
    expect(formatQuantity({ dimension: "volume", amount: 1n }, "metric")).toBe("under 0.001 mL");
  });
});

test("in a chosen unit, at chosen decimals, in one part or two", () => {
  expect(formatQuantityIn(of("lb", "1250.126"), "lb", 2)).toBe("1,250.13 lb");
  expect(formatQuantityIn(of("lb", "1250.126"), "lb")).toBe("1,250 lb");
  expect(formatQuantityIn(of("gal", "0.5"), "fl oz")).toBe("64 fl oz");
  expect(formatQuantityIn(of("acre", "0.5"), "acre")).toBe("\u00BD acre");
  expect(formatQuantityIn(of("acre", "1"), "acre")).toBe("1 acre");
  expect(formatQuantityIn(of("acre", "0"), "acre")).toBe("0 acres");
  expect(formatQuantityIn(of("cup", "2"), "cup")).toBe("2 cups");
  expect(writeQuantityIn(of("lb", "13.5"), "lb")).toEqual({ figure: "13\u00BD", unit: "lb" });
  expect(writeQuantity(of("lb", "13.5"), "us")).toEqual({ figure: "13\u00BD", unit: "lb" });
});

/** Half of the last digit that is ever shown, in the smallest unit of each ladder. */
const HALF_LEAST: Readonly<Record<UnitSystem, readonly ExactQuantity<Dimension>[]>> = {
  us: [exactly("oz wt", "0.0005"), exactly("fl oz", "0.0005"), exactly("sq ft", "0.05"), exactly("in", "0.0005")],
  metric: [exactly("g", "0.0005"), exactly("mL", "0.0005"), exactly("m2", "0.005"), exactly("mm", "0.0005")],
};

function distance(left: Quantity<Dimension>, right: Quantity<Dimension>): Quantity<Dimension> {
  const size = left.amount - right.amount;
  return { dimension: left.dimension, amount: size < 0n ? -size : size };
}

test("what is shown reads back right to three figures, or to half of the last digit that is ever shown", () => {
  const system = fc.constantFrom<UnitSystem>("us", "metric");
  const size = fc.constantFrom(10n ** 7n, 10n ** 9n, 10n ** 12n, 10n ** 15n, 10n ** 18n);
  const quantity = fc
    .tuple(fc.constantFrom<Dimension>(...dimensions), size)
    .chain(([dimension, most]) => fc.bigInt({ min: 0n, max: most }).map((amount) => ({ dimension, amount })));
  fc.assert(
    fc.property(quantity, system, (shown, by) => {
      const text = formatQuantity(shown, by);
      fc.pre(!text.startsWith("under"));
      const back = parseQuantity(text, { field: "amount", dimensions });
      if (!back.ok) throw new Error(back.refusal.sentence);
      const least = HALF_LEAST[by].find((half) => half.dimension === shown.dimension);
      if (least === undefined) throw new Error("each dimension has a smallest unit");
      const tolerance = sumExact<Dimension>(shown.dimension, [multiplyExact(shown, rational(1n, 200n)), least]);
      expect(compareExact<Dimension>(distance(shown, back.value.quantity), tolerance) <= 0).toBe(true);
    }),
  );
});

test("what is shown at stated decimals reads back within half of its last digit, and a canonical unit", () => {
  fc.assert(
    fc.property(anyQuantity("mass"), fc.integer({ min: 0, max: 4 }), (shown, decimals) => {
      const text = formatQuantityIn(shown, "lb", decimals);
      fc.pre(!text.startsWith("under"));
      const back = parseQuantity(text, { field: "amount", dimensions: ["mass"] });
      if (!back.ok) throw new Error(back.refusal.sentence);
      const half = addExact(exactly("lb", rational(1n, 2n * 10n ** BigInt(decimals))), fromAmount("mass", 1n));
      expect(compareExact<Dimension>(distance(shown, back.value.quantity), half) <= 0).toBe(true);
    }),
  );
});

test("two quantities side by side read the same where they are the same, and only there", () => {
  expect(formatQuantitiesApart(exactly("gal", "5.001"), exactly("gal", "5"), "us")).toEqual(["5.001 gal", "5 gal"]);
  expect(formatQuantitiesApart(exactly("lb", "13.5"), exactly("lb", "13.5"), "us")).toEqual(["13\u00BD lb", "13\u00BD lb"]);
  fc.assert(
    fc.property(anyQuantity("mass"), fc.bigInt({ min: 0n, max: 1000n }), (one, more) => {
      const [left, right] = formatQuantitiesApart(one, fromAmount("mass", one.amount + more), "us");
      expect(left === right).toBe(more === 0n);
    }),
  );
});
