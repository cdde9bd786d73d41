import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { booksBeforeFill, filledBetween, gaugeFindings, type GaugeBesideBooks, readAsBooks, type TankAtFill } from "#domain/mixing/fill-by-gauge";
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
const books = (fills: readonly FillInBooks[], change: Partial<TankAtFill> = {}) => booksBeforeFill({ at: 10, fills, cleanedAt: undefined, lastFound: undefined, ...change });
const before = (...asked: Parameters<typeof books>) => books(...asked).inTheBooks;

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

  test("the fills that have some left are named, not those used up, cleaned out or later", () => {
    const fills = [fill({ fillId: "used up", draws: [draw("40", 8)] }), fill({ fillId: "left", draws: [draw("15", 8)] }), fill({ fillId: "later", filledAt: 11 })];
    expect(books(fills).fillIds).toEqual(["left"]);
    expect(books(fills, { cleanedAt: 8 }).fillIds).toEqual([]);
  });

  test("what moved since the tank was looked into is the last fill and what was sprayed after it, or after a later reading", () => {
    const first = fill({ draws: [draw("15", 8), draw("5", 9.5), draw("20", 12)] });
    expect(books([first]).movedSince).toEqual(gal(60n));
    expect(books([first, fill({ filledAt: 9 })]).movedSince).toEqual(gal(45n));
    expect(books([{ ...first, rests: [rest(9, "25")] }]).movedSince).toEqual(gal(5n));
    expect(books([first], { cleanedAt: 8 }).movedSince).toEqual(gal(0n));
  });
});

test("a reading that in words is what the books have is what the books have, and no other is", () => {
  expect(readAsBooks(gal("0.554"), gal("0.55443"))).toEqual(gal("0.55443"));
  expect(readAsBooks(gal("0.55"), gal("0.55443"))).toEqual(gal("0.55"));
  expect(readAsBooks(gal("0"), gal("0.000001"))).toEqual(gal("0"));
});

describe("the readings beside the books", () => {
  const findings = (read: string, after = "90", change: Partial<GaugeBesideBooks> = {}) =>
    gaugeFindings({ ...{ name: "Tank", before: gal(read), after: gal(after), inTheBooks: gal(40n), movedSince: gal(0n), openStreets: [] }, mark: exactly("gal", "0.1"), capacity: gal(102n), ...change });

  test("less than a mark off is nothing to say, a mark or more either way is", () => {
    expect(findings("40")).toEqual([]);
    expect([...findings("39.91"), ...findings("40.09")]).toEqual([]);
    expect(findings("39.9")).toMatchObject([{ level: "take-care", rule: "gauge-not-as-books", source: "stock", figure: "39.9 gal were read; the books have 40 gal." }]);
    expect(findings("0")).toMatchObject([{ figure: "0 gal were read; the books have 40 gal." }]);
    expect(findings("40.1")).toMatchObject([{ rule: "gauge-not-as-books" }]);
  });

  test("two percent of what was filled in and sprayed since the last look are nothing to say beside a mark", () => {
    const moved = { movedSince: gal(60n) };
    expect([...findings("38.71", "90", moved), ...findings("41.29", "90", moved)]).toEqual([]);
    expect([...findings("38.7", "90", moved), ...findings("41.3", "90", moved)].map(({ level, rule }) => `${level} ${rule}`)).toEqual(["take-care gauge-not-as-books", "take-care gauge-not-as-books"]);
  });

  test("less than the books have is a note while visits of the fills below are not recorded, more is care all the same", () => {
    const open = { inTheBooks: gal(60n), openStreets: ["1 Elm St", "2 Oak St"] };
    expect(findings("0.5", "60.5", open)).toMatchObject([{ level: "note", rule: "gauge-before-records", figure: "½ gal were read; the books have 60 gal. Not recorded: 1 Elm St and 2 Oak St." }]);
    expect(findings("61", "90", open)).toMatchObject([{ level: "take-care", rule: "gauge-not-as-books" }]);
    expect(findings("60", "90", open)).toEqual([]);
  });

  test("more than tank, pump and hose hold is said", () => {
    expect(findings("40", "102")).toEqual([]);
    expect(findings("40", "600")).toMatchObject([
      { level: "take-care", rule: "fill-above-tank", source: "house", what: "Tank does not hold that much.", figure: "600 gal were read after filling; with pump and hose it holds 102 gal by what is on file." },
    ]);
    expect(findings("40", "102.001")).toMatchObject([{ figure: "102.001 gal were read after filling; with pump and hose it holds 102 gal by what is on file." }]);
  });
});
