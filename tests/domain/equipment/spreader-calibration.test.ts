import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { courseFor, rateFromCollected, ratePerPass } from "#domain/equipment/spreader-calibration";
import { compareExact, exactly, multiplyExact } from "#domain/quantities/exact-quantity";
import { of, zero } from "#domain/quantities/quantity";
import { addRates, compareRates, rateOf } from "#domain/quantities/rate";
import { rational } from "#domain/quantities/rational";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { anyQuantity } from "../../support/quantity-arbitraries";

const thousand = of("sq ft", 1000n);
const run = (pounds: string, area = thousand) => ({ collected: exactly("lb", pounds), area });
const pounds = (value: string) => rateOf("product-mass-per-area", value, "lb per 1,000 sq ft");

describe("the rate at a setting", () => {
  test("is the average of its runs, with their spread and all that went in", () => {
    const runs = [run("2.4"), run("2.5"), run("2.6"), run("1.25", of("sq ft", 500n))];
    expect(valueOf(rateFromCollected(runs))).toEqual({
      runs,
      method: "collected-over-area",
      rate: pounds("2.5"),
      uncertainty: { kind: "spread-of-repeats", part: rational(1n, 25n), repeats: 4 },
    });
  });

  test("of one run has no spread", () => {
    expect(valueOf(rateFromCollected([run("2.5")])).uncertainty).toEqual({ kind: "not-given" });
  });

  test("does not depend on how long the course was, whatever was collected", () => {
    fc.assert(
      fc.property(anyQuantity("mass", 1n), anyQuantity("area", 1n), fc.bigInt({ min: 1n, max: 1000n }), (collected, area, factor) => {
        const times = rational(factor);
        const longer = rateFromCollected([{ collected: multiplyExact(collected, times), area: multiplyExact(area, times) }]);
        expect(valueOf(longer).rate).toEqual(valueOf(rateFromCollected([{ collected, area }])).rate);
      }),
    );
  });

  test("is refused without a run, an area or anything collected", () => {
    expect(refusalOf(rateFromCollected([]))).toMatchObject({ kind: "missing-fact", field: "runs" });
    expect(refusalOf(rateFromCollected([run("2.5", zero("area"))])).field).toBe("area");
    expect(refusalOf(rateFromCollected([run("2.5"), run("0")])).field).toBe("collected");
  });
});

test("two passes crosswise add up to the wanted rate, and one pass is all of it", () => {
  const half = ratePerPass(pounds("3.57"), "two-passes-crosswise");
  expect(compareRates(addRates(half, half), pounds("3.57"))).toBe(0);
  expect(ratePerPass(pounds("3.57"), "one-pass")).toEqual(pounds("3.57"));
});

test("a swath of 8 ft takes 125 ft for 1,000 sq ft, and one of nothing is refused", () => {
  expect(compareExact(valueOf(courseFor(thousand, of("ft", 8n))), of("ft", 125n))).toBe(0);
  expect(refusalOf(courseFor(thousand, zero("length"))).field).toBe("swath");
});
