import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatCompound } from "#domain/quantities/format-compound";
import { parseLength } from "#domain/quantities/parse-length";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { of, type Quantity, zero } from "#domain/quantities/quantity";
import { units } from "#domain/quantities/units";
import { anyQuantity } from "../../support/quantity-arbitraries";

describe("large and small unit together", () => {
  test.each([
    [of("fl oz", "152"), 1, "1 gal 24 fl oz"],
    [of("fl oz", "152.5"), 1, "1 gal 24\u00BD fl oz"],
    [of("fl oz", "152.3"), 1, "1 gal 24.3 fl oz"],
    [of("fl oz", "255.99"), 1, "2 gal"],
    [of("fl oz", "12.3"), 0, "12 fl oz"],
    [of("lb", "2.25"), 0, "2 lb 4 oz wt"],
    [of("lb", "1250"), 0, "1,250 lb"],
    [of("in", "150"), 0, "12 ft 6 in"],
    [zero("volume"), 1, "0 fl oz"],
  ] as const)("%o at %i decimals is %s", (quantity, decimals, expected) => {
    expect(formatCompound(quantity, decimals)).toBe(expected);
  });

  test("what rounds to nothing is shown as it is", () => {
    expect(formatCompound(of("fl oz", "0.04"), 0)).toBe("0.04 fl oz");
  });
});

const decimals = fc.constantFrom(0 as const, 1 as const, 2 as const, 3 as const);

function isWithinHalf(shown: Quantity<"mass" | "length">, back: Quantity<"mass" | "length">, half: bigint): boolean {
  const distance = back.amount - shown.amount;
  return (distance < 0n ? -distance : distance) <= half + 1n;
}

test("a compound weight reads back within half of its last digit", () => {
  fc.assert(
    fc.property(anyQuantity("mass", 10_000_000_000n), decimals, (shown, places) => {
      const back = parseQuantity(formatCompound(shown, places), { field: "amount", dimensions: ["mass"] });
      if (!back.ok) throw new Error(back.refusal.sentence);
      const half = units["oz wt"].canonicalAmount / (2n * 10n ** BigInt(places));
      expect(isWithinHalf(shown, back.value.quantity, half)).toBe(true);
    }),
  );
});

test("a compound length reads back within half of its last digit", () => {
  fc.assert(
    fc.property(anyQuantity("length", 1_000_000n), decimals, (shown, places) => {
      const back = parseLength(formatCompound(shown, places), { field: "side" });
      if (!back.ok) throw new Error(back.refusal.sentence);
      expect(isWithinHalf(shown, back.value.quantity, units.in.canonicalAmount / (2n * 10n ** BigInt(places)))).toBe(
        true,
      );
    }),
  );
});
