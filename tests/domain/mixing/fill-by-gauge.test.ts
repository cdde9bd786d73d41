import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { filledBetween, gaugeFindings, inTheBooksBefore, type TankAtFill } from "#domain/mixing/fill-by-gauge";
import { type FillInBooks } from "#domain/mixing/tank-books";
import { sprayedBetween } from "#domain/mixing/tank-day";
import { exactly } from "#domain/quantities/exact-quantity";
import { fromAmount, of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/crew";

const gal = (value: string | bigint) => of("gal", value);

describe("what was filled in", () => {
  test("is the difference of the two readings, however much was left", () => {
    expect(valueOf(filledBetween({ before: gal(40n), after: gal(90n) }))).toEqual(gal(50n));
    expect(valueOf(filledBetween({ before: gal(0n), after: gal("38.5") }))).toEqual(gal("38.5"));
  });

  test("nothing and less than nothing are refused at the reading after it", () => {
    expect(filledBetween({ before: gal(40n), after: gal(40n) })).toMatchObject({
      ok: false,
      refusal: { field: "gaugeAfter", allowed: "more than 40 gal", sentence: "The tank held 40 gal before and after: nothing was filled in." },
    });
    expect(filledBetween({ before: gal("40.001"), after: gal(40n) })).toMatchObject({ ok: false, refusal: { sentence: "The tank held 40.001 gal before and 40 gal after: a fill leaves more in it." } });
  });

  test("mirrors what is sprayed: filled in and sprayed out again, the tank holds what it held", () => {
    fc.assert(
      fc.property(fc.bigInt(0n, 10n ** 15n), fc.bigInt(1n, 10n ** 15n), (rest, filled) => {
        const [before, after] = [fromAmount("volume", rest), fromAmount("volume", rest + filled)];
        const filledBetweenThem = valueOf(filledBetween({ before, after }));
        expect(valueOf(sprayedBetween({ by: "dip", before, after: before, filledBetween: filledBetweenThem }))).toEqual(filledBetweenThem);
      }),
    );
  });
});

/** 40 gal filled in at seven; the clock counts in hours. */
function fill(change: Partial<FillInBooks> = {}): FillInBooks {
  return { fillId: "one", number: 1, filledAt: 7, finished: gal(40n), lots: [], draws: [], rests: [], isPostedAway: false, ...change };
}
const draw = (volume: string, endedAt: number) => ({ visitId: String(endedAt), sprayed: gal(volume), endedAt, fillRestId: null });
const rest = (settledAt: number, left: string) => ({ fillRestId: String(settledAt), settledAt, inTheBooks: gal(40n), left: gal(left) });
const before = (fills: readonly FillInBooks[], change: Partial<TankAtFill> = {}) => inTheBooksBefore({ at: 10, fills, cleanedAt: undefined, lastFound: undefined, ...change });

describe("what the books have before a fill", () => {
  test("is what is left of all fills before it, those of the same minute too", () => {
    expect(before([fill({ draws: [draw("15", 8)] }), fill({ filledAt: 9 }), fill({ filledAt: 10 }), fill({ filledAt: 11 })])).toEqual(gal(105n));
    expect(before([fill({ isPostedAway: true })])).toEqual(gal(0n));
  });

  test("is what it was then where the fill is written down late", () => {
    expect(before([fill({ draws: [draw("15", 8), draw("25", 12)], isPostedAway: true })])).toEqual(gal(25n));
    expect(before([fill({ rests: [rest(9, "30"), rest(12, "5")] })])).toEqual(gal(30n));
    expect(before([fill({ rests: [rest(10, "30")] })])).toEqual(gal(30n));
  });

  test("is nothing from a clean-out on, and what was found in a tank of which no fill is on file", () => {
    expect(before([fill()], { cleanedAt: 8, lastFound: gal(3n) })).toEqual(gal(0n));
    expect(before([fill({ filledAt: 8 })], { cleanedAt: 8 })).toEqual(gal(40n));
    expect(before([], { lastFound: gal(3n) })).toEqual(gal(3n));
    expect(before([])).toEqual(gal(0n));
  });
});

describe("the readings beside the books", () => {
  const findings = (read: string, after = "90", inTheBooks = "40") =>
    gaugeFindings({ name: "Tank", before: gal(read), after: gal(after), inTheBooks: gal(inTheBooks), mark: exactly("gal", "0.1"), capacity: gal(102n) });

  test("less than a mark off is nothing to say, a mark or more either way is", () => {
    expect(findings("40")).toEqual([]);
    expect([...findings("39.91"), ...findings("40.09")]).toEqual([]);
    expect(findings("39.9")).toMatchObject([{ level: "take-care", rule: "gauge-not-as-books", source: "stock", figure: "39.9 gal were read; the books have 40 gal." }]);
    expect(findings("0")).toMatchObject([{ figure: "0 gal were read; the books have 40 gal." }]);
    expect(findings("40.1")).toMatchObject([{ rule: "gauge-not-as-books" }]);
  });

  test("more than tank, pump and hose hold is said", () => {
    expect(findings("40", "102")).toEqual([]);
    expect(findings("40", "600")).toMatchObject([
      { level: "take-care", rule: "fill-above-tank", source: "house", what: "Tank does not hold that much.", figure: "600 gal were read after filling; with pump and hose it holds 102 gal by what is on file." },
    ]);
    expect(findings("40", "102.001")).toMatchObject([{ figure: "102.001 gal were read after filling; with pump and hose it holds 102 gal by what is on file." }]);
  });
});
