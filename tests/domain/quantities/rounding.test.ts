import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { compareExact, type ExactQuantity, exactly } from "#domain/quantities/exact-quantity";
import { add, of, type Quantity, zero } from "#domain/quantities/quantity";
import { compareRational, ONE, rational } from "#domain/quantities/rational";
import {
  amountOfMarks,
  type GraduationMode,
  type GraduationRounding,
  roundToGraduation,
  wholeBagsFor,
} from "#domain/quantities/rounding";
import { anyQuantity, anyRational } from "../../support/quantity-arbitraries";

const halfOunceCup = exactly("fl oz", "0.5");
const quarterPoundScale = exactly("lb", "0.25");

function rounded(rounding: GraduationRounding<"volume"> | GraduationRounding<"mass">) {
  if (rounding.kind !== "rounded") throw new Error("the amount is below the first mark");
  return rounding;
}

describe("to the marks of a tool", () => {
  const table: readonly (readonly [string, GraduationMode, string, bigint, string])[] = [
    ["4.6", "nearest", "4.5", 9n, "down"],
    ["4.75", "nearest", "5", 10n, "up"],
    ["4.6", "up", "5", 10n, "up"],
    ["4.9", "down", "4.5", 9n, "down"],
    ["4.5", "up", "4.5", 9n, "unchanged"],
    ["0", "nearest", "0", 0n, "unchanged"],
  ];
  test.each(table)("%s fl oz, %s", (amount, mode, expected, marks, direction) => {
    const result = rounded(roundToGraduation(exactly("fl oz", amount), halfOunceCup, { mode }));
    expect(result).toMatchObject({ rounded: of("fl oz", expected), marks, direction, heldByMaximum: false });
  });

  test("says what the rate becomes", () => {
    const result = rounded(roundToGraduation(of("fl oz", "4.8"), halfOunceCup, { mode: "nearest" }));
    expect(compareRational(result.ofPlanned, rational(5n * 18_927_058_920n, of("fl oz", "4.8").amount))).toBe(0);
    const nothing = rounded(roundToGraduation(zero("volume"), halfOunceCup, { mode: "nearest" }));
    expect(nothing.ofPlanned).toEqual(ONE);
  });

  test("an amount that would round to nothing is an answer of its own", () => {
    const result = roundToGraduation(of("fl oz", "0.2"), halfOunceCup, { mode: "nearest" });
    expect(result).toMatchObject({ kind: "below-first-mark", heldByMaximum: false });
    const held = roundToGraduation(of("fl oz", "0.4"), halfOunceCup, {
      mode: "nearest",
      neverAbove: of("fl oz", "0.4"),
    });
    expect(held).toMatchObject({ kind: "below-first-mark", heldByMaximum: true });
  });

  test("a maximum takes the mark below it", () => {
    const result = rounded(
      roundToGraduation(exactly("lb", "10.2"), quarterPoundScale, { mode: "up", neverAbove: of("lb", "10.2") }),
    );
    expect(result).toMatchObject({ rounded: of("lb", 10n), heldByMaximum: true, direction: "down" });
  });

  test("an amount above the maximum is brought down to it", () => {
    const result = rounded(
      roundToGraduation(exactly("lb", "12"), quarterPoundScale, { mode: "nearest", neverAbove: of("lb", "10.2") }),
    );
    expect(result).toMatchObject({ rounded: of("lb", 10n), heldByMaximum: true, direction: "down" });
  });

  test("a maximum that is itself a mark is reached, however it was stored", () => {
    const hundredth = exactly("gal", "0.01");
    for (const gallons of ["0.01", "0.02", "0.03", "0.04", "0.33"]) {
      for (const maximum of [of("gal", gallons), exactly("gal", gallons)]) {
        const result = rounded(
          roundToGraduation(exactly("gal", gallons), hundredth, { mode: "nearest", neverAbove: maximum }),
        );
        expect(result.heldByMaximum).toBe(false);
        expect(compareExact<"volume">(result.rounded as Quantity<"volume">, maximum) <= 0).toBe(true);
      }
      // Stored to the nearest canonical unit, the maximum is the very amount that the mark is.
      const stored = rounded(roundToGraduation(exactly("gal", gallons), hundredth, { mode: "nearest", neverAbove: of("gal", gallons) }));
      expect(stored.rounded).toEqual(of("gal", gallons));
    }
  });

  test("a mark that lies within half a canonical unit above the maximum is stored under it", () => {
    const mark = exactly("fl oz", { numerator: 1n, denominator: 499_992n });
    // 75,708.99 canonical units; two marks are 75,709.45.
    const maximum = exactly("fl oz", { numerator: 4n, denominator: 999_990n });
    const result = rounded(roundToGraduation(exactly("fl oz", "1"), mark, { mode: "nearest", neverAbove: maximum }));
    expect(result.marks).toBe(2n);
    expect(result.rounded.amount).toBe(75_708n);
  });

  test("a maximum that is far off changes nothing, not even the canonical unit to which a mark is stored", () => {
    const hundredth = exactly("gal", "0.01");
    const free = rounded(roundToGraduation(exactly("gal", "0.03"), hundredth, { mode: "nearest" }));
    expect(rounded(roundToGraduation(exactly("gal", "0.03"), hundredth, { mode: "nearest", neverAbove: of("gal", 1n) }))).toEqual(free);
    // 72,679,906,252.8 canonical units.
    expect(free.rounded.amount).toBe(72_679_906_253n);
  });

  test("a hundred marks of a hundredth of a gallon are a gallon", () => {
    expect(amountOfMarks(exactly("gal", "0.01"), 100n)).toEqual(of("gal", 1n));
  });

  test("a tool without marks, or of another dimension, throws", () => {
    expect(() => roundToGraduation(of("lb", 1n), zero("mass"), { mode: "up" })).toThrow("the marks of a tool are apart");
    const cup = halfOunceCup as unknown as ExactQuantity<"mass">;
    expect(() => roundToGraduation(of("lb", 1n), cup, { mode: "up" })).toThrow(BrokenInvariant);
    expect(() => roundToGraduation(of("lb", 1n), of("lb", 1n), { mode: "up", neverAbove: cup })).toThrow(
      BrokenInvariant,
    );
  });
});

describe("for any amount, tool and maximum", () => {
  const mode = fc.constantFrom<GraduationMode>("nearest", "down", "up");
  const graduation = anyRational(1n).map((value) => exactly("fl oz", value));

  test("the result is never above the maximum", () => {
    fc.assert(
      fc.property(anyRational(), graduation, anyRational(), mode, (amount, tool, most, by) => {
        const maximum = exactly("fl oz", most);
        const result = roundToGraduation(exactly("fl oz", amount), tool, { mode: by, neverAbove: maximum });
        if (result.kind === "rounded") expect(compareExact(result.rounded, maximum) <= 0).toBe(true);
      }),
    );
  });

  test("a larger amount never gets fewer marks", () => {
    fc.assert(
      fc.property(anyQuantity("volume"), anyQuantity("volume"), graduation, mode, (one, other, tool, by) => {
        const [low, high] = one.amount <= other.amount ? [one, other] : [other, one];
        const marks = [low, high].map((quantity) => {
          const result = roundToGraduation(quantity, tool, { mode: by });
          return result.kind === "rounded" ? result.marks : 0n;
        });
        expect((marks[0] ?? 0n) <= (marks[1] ?? 0n)).toBe(true);
      }),
    );
  });

  test("the nearest mark is at most half a mark away, the others less than one", () => {
    fc.assert(
      fc.property(anyRational(1n), graduation, mode, (amount, tool, by) => {
        const asked = exactly("fl oz", amount);
        const result = roundToGraduation(asked, tool, { mode: by });
        const marks = result.kind === "rounded" ? result.marks : 0n;
        const onMark = { numerator: tool.exactAmount.numerator * marks, denominator: tool.exactAmount.denominator };
        const error =
          onMark.numerator * asked.exactAmount.denominator - asked.exactAmount.numerator * onMark.denominator;
        const oneMark = tool.exactAmount.numerator * asked.exactAmount.denominator;
        const size = error < 0n ? -error : error;
        expect(by === "nearest" ? 2n * size <= oneMark : size < oneMark).toBe(true);
      }),
    );
  });

  test("the rounded amount is the planned one times what it became, within a canonical unit", () => {
    fc.assert(
      fc.property(anyQuantity("volume", 1n), graduation, mode, (planned, tool, by) => {
        const result = roundToGraduation(planned, tool, { mode: by });
        if (result.kind !== "rounded") return;
        const { numerator, denominator } = result.ofPlanned;
        const error = planned.amount * numerator - result.rounded.amount * denominator;
        expect(2n * (error < 0n ? -error : error) <= denominator).toBe(true);
      }),
    );
  });
});

describe("whole bags", () => {
  test("enough for the need, and what comes back", () => {
    const load = wholeBagsFor(of("lb", "101"), of("lb", 50n));
    expect(load).toEqual({ bags: 3n, total: of("lb", 150n), leftOver: of("lb", 49n) });
    expect(wholeBagsFor(of("lb", 100n), of("lb", 50n))).toMatchObject({ bags: 2n, leftOver: zero("mass") });
    expect(wholeBagsFor(zero("mass"), of("lb", 50n)).bags).toBe(0n);
  });

  test("need and left over make the total, and less than a bag is left", () => {
    fc.assert(
      fc.property(anyQuantity("mass"), anyQuantity("mass", 1n), (need, bag) => {
        const load = wholeBagsFor(need, bag);
        expect(add(need, load.leftOver)).toEqual(load.total);
        expect(load.leftOver.amount < bag.amount).toBe(true);
      }),
    );
  });

  test("a bag of nothing, or of something else, throws", () => {
    expect(() => wholeBagsFor(of("lb", 1n), zero("mass"))).toThrow("a bag holds something");
    expect(() => wholeBagsFor(of("lb", 1n), of("gal", 1n) as unknown as Quantity<"mass">)).toThrow(BrokenInvariant);
  });
});
