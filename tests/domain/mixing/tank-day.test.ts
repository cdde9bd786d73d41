import fc from "fast-check";
import { expect, test } from "vitest";
import { addUpFill, sprayedBetween } from "#domain/mixing/tank-day";
import { fromAmount, of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/crew";

const FILL = { name: "fill 7", finished: of("gal", 40n), lots: [{ lotId: "one", amount: of("fl oz", 40n).amount }] };
const draws = [{ visitId: "a", sprayed: of("gal", "9.2") }, { visitId: "b", sprayed: of("gal", "16.5") }];
const ironOf = (answer: ReturnType<typeof addUpFill>) => answer.visits.map(({ visitId, lots }) => [visitId, lots.reduce((total, { amount }) => total + amount, 0n)]);

test("a meter counts up, and a dip goes down but for what was filled in", () => {
  expect(valueOf(sprayedBetween({ by: "meter", before: of("gal", "1204.5"), after: of("gal", 1221n) }))).toEqual(of("gal", "16.5"));
  expect(valueOf(sprayedBetween({ by: "dip", before: of("gal", 30n), after: of("gal", 44n), filledBetween: of("gal", 40n) }))).toEqual(of("gal", 26n));
  expect(sprayedBetween({ by: "meter", before: of("gal", 10n), after: of("gal", 9n) })).toMatchObject({ ok: false, refusal: { field: "after", allowed: "10 gal or more" } });
  expect(sprayedBetween({ by: "dip", before: of("gal", 10n), after: of("gal", 11n), filledBetween: of("gal", 0n) })).toMatchObject({ ok: false, refusal: { allowed: "10 gal or less" } });
});

test("gallons times concentration is the product of a visit, in the unit that measures it", () => {
  expect(ironOf(addUpFill(FILL, draws, "not-measured"))).toEqual([["a", of("fl oz", "9.2").amount], ["b", of("fl oz", "16.5").amount]]);
});

test("what nobody measured is left by the books and is no claim", () => {
  expect(addUpFill(FILL, draws, "not-measured")).toMatchObject({ left: of("gal", "14.3"), difference: { kind: "not-measured" }, findings: [] });
  expect(addUpFill(FILL, [{ visitId: "a", sprayed: of("gal", 40n) }], "not-measured")).toMatchObject({ left: of("gal", 0n), difference: { kind: "none" }, findings: [] });
});

test("what is missing is said with its product and where to post it", () => {
  const added = addUpFill(FILL, draws, of("gal", 12n));
  expect(added.difference).toEqual({ kind: "missing", volume: of("gal", "2.3"), lots: [{ lotId: "one", amount: of("fl oz", "2.3").amount }] });
  expect(added.findings).toMatchObject([{ level: "take-care", rule: "fill-does-not-add-up", figure: "The difference is 2.3 gal." }]);
});

test("more than was mixed is an excess, with a dip and without", () => {
  expect(addUpFill(FILL, draws, of("gal", 15n))).toMatchObject({ difference: { kind: "excess", volume: of("gal", "0.7") } });
  const beyond = addUpFill(FILL, [...draws, { visitId: "c", sprayed: of("gal", 17n) }], "not-measured");
  expect(beyond).toMatchObject({ left: of("gal", 0n), difference: { kind: "excess", volume: of("gal", "2.7") }, findings: [{ rule: "fill-does-not-add-up" }] });
});

test("visits, rest and difference add up to every lot to the last canonical unit", () => {
  const volume = fc.bigInt(0n, 10n ** 12n);
  fc.assert(
    fc.property(fc.array(volume, { maxLength: 12 }), volume, volume, fc.array(fc.bigInt(1n, 10n ** 15n), { minLength: 1, maxLength: 3 }), (sprayed, left, missing, amounts) => {
      const finished = sprayed.reduce((total, one) => total + one, left + missing);
      fc.pre(finished > 0n);
      const lots = amounts.map((amount, index) => ({ lotId: String(index), amount }));
      const added = addUpFill({ name: "a fill", finished: fromAmount("volume", finished), lots }, sprayed.map((amount, index) => ({ visitId: String(index), sprayed: fromAmount("volume", amount) })), fromAmount("volume", left));
      const parts = [...added.visits.map((visit) => visit.lots), added.leftLots, ...(added.difference.kind === "missing" ? [added.difference.lots] : [])];
      expect(amounts.map((_amount, index) => parts.reduce((total, part) => total + (part[index]?.amount ?? 0n), 0n))).toEqual(amounts);
      expect(added.difference.kind).toBe(missing > 0n ? "missing" : "none");
    }),
  );
});
