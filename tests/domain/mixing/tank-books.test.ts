import fc from "fast-check";
import { expect, test } from "vitest";
import { addUpInBooks, type FillInBooks, goneBy, leftBy, lotsInTank, type RestOfFill, settleTank, sourceOfDraw } from "#domain/mixing/tank-books";
import { inTurn } from "#domain/mixing/fills-in-turn";
import { drawFromFill } from "#domain/mixing/tank-fill";
import { fromAmount, of, zero } from "#domain/quantities/quantity";

const gal = (value: string | bigint) => of("gal", value);
const ounces = (value: string | bigint) => of("fl oz", value).amount;

/** 40 gal with 40 fl oz, so that a gallon holds an ounce; the clock counts in hours. */
function fill(change: Partial<FillInBooks> = {}): FillInBooks {
  return { fillId: "one", number: 1, filledAt: 7, finished: gal(40n), lots: [{ lotId: "iron", amount: ounces(40n) }], draws: [], rests: [], isPostedAway: false, ...change };
}
const draw = (volume: string, endedAt: number, fillRestId: string | null = null) => ({ visitId: String(endedAt), sprayed: gal(volume), endedAt, fillRestId });
const rest = (settledAt: number, inTheBooks: string, left: string): RestOfFill => ({ fillRestId: `rest ${String(settledAt)}`, settledAt, inTheBooks: gal(inTheBooks), left: gal(left) });

test("by the books a fill has left what was not drawn, at any moment", () => {
  const drawn = fill({ draws: [draw("9", 8), draw("16", 9)] });
  expect([7, 8, 8.5, 9].map((at) => leftBy(drawn, at))).toEqual([gal(40n), gal(31n), gal(31n), gal(15n)]);
  expect(leftBy(fill({ draws: [draw("43", 8)] }), 9)).toEqual(gal(0n));
  expect(goneBy(fill({ draws: [draw("43", 8)] }), 9)).toBe(gal(43n).amount);
  expect(leftBy(fill({ isPostedAway: true }), 9)).toEqual(gal(0n));
});

test("from a reading on the books follow it: only what was sprayed since is taken from what was found", () => {
  const found = fill({ draws: [draw("9", 8), draw("4", 11)], rests: [rest(10, "31", "28")] });
  expect(leftBy(found, Infinity)).toEqual(gal(24n));
  expect(lotsInTank(found)).toEqual([{ lotId: "iron", amount: ounces(24n) }]);
  // A visit from before it that is written down later changes nothing of what is there.
  expect(leftBy({ ...found, draws: [...found.draws, draw("2", 9)] }, Infinity)).toEqual(gal(24n));
  expect(leftBy(fill({ rests: [rest(10, "40", "45")] }), Infinity)).toEqual(gal(45n));
});

test("a late draw comes out of what was missing, as far as that goes, and others out of the tank", () => {
  const found = fill({ draws: [draw("9", 8)], rests: [rest(10, "31", "28")] });
  expect(sourceOfDraw(found, 11)).toEqual({ from: "tank", drawn: gal(12n) });
  expect(sourceOfDraw(found, 10)).toEqual({ from: { fillRestId: "rest 10", missing: gal(3n) }, drawn: gal(9n) });
  const late = { ...found, draws: [...found.draws, draw("2", 9, "rest 10")] };
  expect(sourceOfDraw(late, 10)).toEqual({ from: { fillRestId: "rest 10", missing: gal(1n) }, drawn: gal(11n) });
  expect(sourceOfDraw({ ...late, draws: [...late.draws, draw("7", 9, "rest 10")] }, 9)).toMatchObject({ from: { missing: gal(0n) } });
  expect(sourceOfDraw(fill({ draws: [draw("9", 8)] }), 8)).toEqual({ from: "tank", drawn: gal(9n) });
});

test("a late draw explains what was missing the first time after it, and no later time", () => {
  const twice = fill({ draws: [draw("9", 8)], rests: [rest(10, "31", "20"), rest(12, "20", "2")] });
  expect([9, 10, 11, 12].map((endedAt) => sourceOfDraw(twice, endedAt).from)).toMatchObject([{ fillRestId: "rest 10", missing: gal(11n) }, { fillRestId: "rest 10" }, { fillRestId: "rest 12", missing: gal(18n) }, { fillRestId: "rest 12" }]);
  const late = { ...twice, draws: [...twice.draws, draw("11", 9, "rest 10")] };
  expect([9, 11].map((endedAt) => sourceOfDraw(late, endedAt).from)).toMatchObject([{ missing: gal(0n) }, { missing: gal(18n) }]);
  expect(sourceOfDraw(twice, 13).from).toBe("tank");
  expect(leftBy(late, Infinity)).toEqual(gal(2n));
});

test("a late draw takes of a fill no more than a reading before its visit left of it, and the rest of the next one", () => {
  const first = fill({ finished: gal(100n), rests: [rest(9, "100", "40"), rest(17, "40", "0")] });
  const second = fill({ fillId: "two", number: 2, filledAt: 10, finished: gal(50n), rests: [rest(17, "50", "0")] });
  const had = [first, second].map((one) => one.finished.amount - sourceOfDraw(one, 12).drawn.amount);
  expect(had).toEqual([gal(40n).amount, gal(50n).amount]);
  expect(inTurn(gal(60n), had)).toEqual([gal(40n), gal(20n)]);
  const late = { ...first, draws: [draw("15", 12, "rest 17")] };
  expect(sourceOfDraw(late, 13).drawn).toEqual(gal(75n));
  expect(sourceOfDraw(first, 8).drawn, "before any reading").toEqual(gal(0n));
});

test("a difference that was found and posted asks for nothing; more sprayed than was found does", () => {
  expect(addUpInBooks(fill({ draws: [draw("9", 8)] }))).toMatchObject({ left: gal(31n), difference: { kind: "not-measured" }, findings: [] });
  expect(addUpInBooks(fill({ draws: [draw("43", 8)] })).findings).toMatchObject([{ rule: "fill-does-not-add-up", figure: "The difference is 3 gal." }]);
  const found = fill({ draws: [draw("9", 8)], rests: [rest(10, "31", "28")] });
  expect(addUpInBooks(found)).toMatchObject({ left: gal(28n), difference: { kind: "missing", volume: gal(3n) }, findings: [] });
  const over = addUpInBooks({ ...found, draws: [...found.draws, draw("29", 11)] });
  expect(over).toMatchObject({ left: gal(0n), findings: [{ rule: "fill-does-not-add-up", figure: "The difference is 1 gal." }] });
});

test("what is missing is missing from the first fill first", () => {
  const two = [fill({ draws: [draw("30", 8)] }), fill({ fillId: "two", number: 2, filledAt: 9, lots: [{ lotId: "other", amount: ounces(20n) }] })];
  const settled = settleTank(two, 10, gal(45n), false);
  expect(settled).toMatchObject({ inTheBooks: gal(50n), ofNoFill: gal(0n), isFilledSince: false });
  expect(settled.fills).toEqual([
    { fillId: "one", number: 1, inTheBooks: gal(10n), left: gal(5n) },
    { fillId: "two", number: 2, inTheBooks: gal(40n), left: gal(40n) },
  ]);
  expect(settled.lotsNow).toEqual([{ lotId: "iron", amount: ounces(5n) }, { lotId: "other", amount: ounces(20n) }]);
  expect(settled.lotsBefore).toEqual([{ lotId: "iron", amount: ounces(10n) }, { lotId: "other", amount: ounces(20n) }]);
  expect(settleTank(two, 10, gal(30n), false).fills.map(({ left }) => left)).toEqual([gal(0n), gal(30n)]);
  expect(settleTank(two.toReversed(), 10, zero("volume"), false).lotsNow.map(({ amount }) => amount)).toEqual([0n, 0n]);
});

test("more than the books have is of the last fill at its mix, above what went in too", () => {
  const settled = settleTank([fill(), fill({ fillId: "two", number: 2, filledAt: 9 })], 10, gal(82n), false);
  expect(settled.fills.map(({ left }) => left)).toEqual([gal(40n), gal(42n)]);
  expect(settled.lotsNow).toEqual([{ lotId: "iron", amount: ounces(82n) }]);
  const after = fill({ rests: [rest(10, "40", "42")] });
  const { drawn } = sourceOfDraw(after, 11);
  expect(drawFromFill({ ...after, drawn }, gal(42n), "fill 1")).toMatchObject({ lots: [{ amount: ounces(42n) }], leftInTank: gal(0n), findings: [] });
});

test("a reading in the minute of a fill came before it, and one from earlier leaves what was drawn since out of it", () => {
  const sprayed = fill({ draws: [draw("9", 8), draw("4", 11)] });
  const settled = settleTank([sprayed, fill({ fillId: "two", number: 2, filledAt: 10 })], 10, gal(30n), false);
  expect(settled.fills).toEqual([{ fillId: "one", number: 1, inTheBooks: gal(31n), left: gal(30n) }]);
  expect(settled).toMatchObject({ isFilledSince: true, lotsThen: [{ amount: ounces(30n) }], lotsNow: [{ amount: ounces(66n) }], lotsBefore: [{ amount: ounces(67n) }] });
});

test("what is found in a tank without a fill, or since a clean-out, is of no fill", () => {
  expect(settleTank([], 10, gal(3n), false)).toMatchObject({ inTheBooks: gal(0n), ofNoFill: gal(3n), fills: [], lotsNow: [] });
  const cleaned = settleTank([fill({ rests: [rest(9, "40", "0")] })], 10, gal(3n), true);
  expect(cleaned).toMatchObject({ ofNoFill: gal(3n), fills: [], lotsNow: [{ amount: 0n }] });
  expect(settleTank([fill()], 10, gal(3n), true).fills).toMatchObject([{ inTheBooks: gal(40n), left: gal(0n) }]);
});

test("a fill that was found empty before is not written again; one of which something is found again is", () => {
  const empty = fill({ rests: [rest(9, "12", "0")] });
  expect(settleTank([empty], 10, zero("volume"), false).fills).toEqual([]);
  expect(settleTank([empty], 10, gal(2n), false).fills).toMatchObject([{ inTheBooks: gal(0n), left: gal(2n) }]);
});

test("draws, what was found missing and what is left are what went in, to the last canonical unit", () => {
  const volume = fc.bigInt(1n, 10n ** 12n);
  fc.assert(
    fc.property(fc.array(volume, { minLength: 1, maxLength: 6 }), volume, volume, fc.array(fc.bigInt(1n, 10n ** 15n), { minLength: 1, maxLength: 3 }), (sprayed, left, missing, amounts) => {
      const finished = fromAmount("volume", sprayed.reduce((total, one) => total + one, left + missing));
      const lots = amounts.map((amount, index) => ({ lotId: String(index), amount }));
      const drawn = fill({ finished, lots, draws: sprayed.map((amount, index) => ({ visitId: String(index), sprayed: fromAmount("volume", amount), endedAt: 8, fillRestId: null })) });
      let gone = 0n;
      const taken = amounts.map(() => 0n);
      for (const { sprayed: one } of drawn.draws) {
        drawFromFill({ finished, lots, drawn: fromAmount("volume", gone) }, one, "").lots.forEach(({ amount }, index) => (taken[index] = (taken[index] ?? 0n) + amount));
        gone += one.amount;
      }
      const { lotsBefore, lotsNow } = settleTank([drawn], 9, fromAmount("volume", left), false);
      expect(lots.map((_lot, index) => (taken[index] ?? 0n) + (lotsBefore[index]?.amount ?? 0n))).toEqual(amounts);
      expect(lotsNow.every(({ amount }, index) => amount >= 0n && amount <= (lotsBefore[index]?.amount ?? 0n))).toBe(true);
    }),
  );
});
